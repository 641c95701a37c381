using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>The cut list as a table.</summary>
internal static class CutListPage
{
    public static Page Of(Selection selection, IReadOnlyList<CutListGroup> groups, LengthFormat format)
    {
        var figures = new TradeWords(format);
        var page = new Page().Title($"{selection.Breakdown.Course.Name}: cut list in {figures.Unit}, width × length along the grain");
        foreach (var group in groups)
        {
            page.Heading(group.Heading);
            if (group.Rows.Count == 0)
                page.Line("nothing to cut", Tone.Plain, 2);
            page.Grid(
                [
                    Column.Figure("count"), "part", Column.Figure("finished"), Column.Figure("into the clamps"), Column.Figure("rough"),
                    "material", "stock", Column.Figure("planed"), Column.Figure("sanded"), "grain", "labels",
                ],
                group.Rows.Select(row => (IReadOnlyList<string>)
                [
                    row.Line.Count.ToString(CultureInfo.InvariantCulture),
                    row.Name,
                    figures.Of(row.Part.Finished),
                    figures.Of(row.Part.GlueUp),
                    figures.Of(row.Part.Rough),
                    row.Part.Material,
                    row.Part.Stock,
                    figures.Of(row.Part.Thickness?.Planed),
                    figures.Of(row.Part.Thickness?.Final),
                    row.Part.Grain is { } grain ? TradeWords.Words(grain) : "",
                    row.Labels,
                ]));
        }

        if (selection.Withheld.Count > 0)
            page.Line("").Line($"Left out because they cannot be built: {string.Join(", ", selection.Withheld)}. `stilewright check` says why.", Tone.Danger);
        return page.Line("").Line(Remarks.Machines, Tone.Quiet).Footnotes();
    }
}
