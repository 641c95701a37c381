using Stilewright.Cli.Layout;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>How sizes were found: each step in words and figures, and where its figures were entered.</summary>
internal static class WorkPage
{
    /// <exception cref="RefusalException">A place has no figures, or not the one asked for.</exception>
    public static Page Of(IReadOnlyList<WorkPlace> places, string? figure, LengthFormat format)
    {
        var figures = new TradeWords(format);
        var page = new Page();
        foreach (var place in places)
        {
            if (place.Figures.Count == 0)
                throw new RefusalException(ExitCode.WrongUse, $"{place.Words} has no figures yet. `stilewright check` tells what is missing.");
            NamedFigure[] chosen = [.. place.Figures.Where(each => figure is null || string.Equals(each.Name, figure, StringComparison.OrdinalIgnoreCase))];
            if (chosen.Length == 0)
            {
                throw new RefusalException(ExitCode.WrongUse,
                    $"{place.Words} has no figure \"{figure}\". It has: {string.Join(", ", place.Figures.Select(each => each.Name))}.");
            }

            page.Title($"{place.Words}, {place.Path}: in {figures.Unit}");
            page.Grid(["figure", Column.Figure("result")], chosen.Select(each => (IReadOnlyList<string>)[each.Name, figures.Of(each.Quantity)]));
            Worked[] quantities = [.. chosen.Select(each => each.Quantity)];
            page.Heading("How they are found");
            AddSteps(page, quantities, figures);
            page.Heading("Where the figures come from");
            AddSources(page, quantities, figures);
        }

        return page.Footnotes();
    }

    /// <summary>Every step once, in an order in which it can be worked.</summary>
    public static void AddSteps(Page page, IReadOnlyList<Worked> quantities, TradeWords figures)
    {
        foreach (var line in WorkedOrder.Of(quantities, figures.Format))
        {
            page.Line(WorkedText.Line(line.Quantity, figures.Format), Tone.Plain, 2);
            foreach (var reason in line.Reasons)
                page.Line($"because {reason}", Tone.Quiet, 6);
        }
    }

    private static void AddSources(Page page, IReadOnlyList<Worked> quantities, TradeWords figures)
    {
        List<IReadOnlyList<string>> rows = [];
        HashSet<Worked> seen = [];
        foreach (var node in quantities.SelectMany(quantity => quantity.Distinct()).Where(seen.Add))
        {
            switch (node)
            {
                case Given { Origin.IsEntered: true } given:
                    rows.Add([given.Label, figures.Of(given), given.Origin.Words, given.Origin.Path]);
                    break;
                case FromTable looked:
                    rows.Add([looked.Label, figures.Of(looked), $"{looked.Table}, {looked.Row}", looked.Source.Text]);
                    break;
            }
        }

        page.Grid(["given", Column.Figure("figure"), "entered in", "at"], rows);
    }
}
