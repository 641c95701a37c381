using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>Everything a maker needs for each leaf.</summary>
internal static class SheetPage
{
    public static Page Of(Selection selection, LengthFormat format)
    {
        var figures = new TradeWords(format);
        var findings = new FindingBlocks(selection.Breakdown, figures);
        var page = new Page();
        if (selection.IsWhole)
            AddSummary(page, selection.Breakdown, findings);
        foreach (var chosen in selection.Fronts)
        {
            AddFront(page, chosen, selection.Breakdown, figures, findings);
            foreach (var leaf in chosen.Leaves)
                AddLeaf(page, leaf, selection.Breakdown, figures, findings);
        }

        return page.Line("").Line(Remarks.Machines, Tone.Quiet).Footnotes();
    }

    private static void AddSummary(Page page, Breakdown breakdown, FindingBlocks findings)
    {
        page.Title(breakdown.Course.Name);
        page.Line($"House standard: {breakdown.Standard.Name}. {Sentence(FindingWords.Summary([.. breakdown.Findings]))}.");
        page.Grid(
            [Column.Figure("bench"), "project", Column.Figure("fronts"), Column.Figure("leaves"), Column.Figure("parts"), "findings"],
            breakdown.Projects.Select(project => (IReadOnlyList<string>)
            [
                Text(project.Project.Bench),
                project.Project.Name,
                Text(project.Fronts.Count()),
                Text(project.Fronts.Sum(front => front.Leaves.Count)),
                Text(project.Fronts.SelectMany(front => front.Leaves).Sum(leaf => leaf.Parts.Count)),
                FindingWords.Summary([.. breakdown.Findings.Where(finding => ProjectPaths.Holds(project, finding))]),
            ]));

        Finding[] general = [.. breakdown.Findings.Where(finding => !breakdown.Fronts.Any(front => finding.Concerns(front.Path)))];
        if (general.Length > 0)
        {
            page.Heading("Findings about no single front");
            findings.AddTo(page, general);
        }
    }

    private static void AddFront(Page page, ChosenFront chosen, Breakdown breakdown, TradeWords figures, FindingBlocks findings)
    {
        var front = chosen.Front;
        page.Title($"Bench {chosen.Project.Project.Bench}, {chosen.Piece.Piece.Name}: front {FrontWords.Name(chosen.Front)}");
        page.Line($"All sizes in {figures.Unit}. Fronts and leaves: width × height. Parts: width × length along the grain.");
        SizesPage.AddMeasures(page, front, figures);
        Finding[] own = [.. breakdown.FindingsAt(front.Path).Where(finding => !front.Leaves.Any(leaf => finding.Concerns(leaf.Path)))];
        if (own.Length > 0)
        {
            page.Heading("Findings about the front");
            findings.AddTo(page, own);
        }
    }

    private static void AddLeaf(Page page, SizedLeaf leaf, Breakdown breakdown, TradeWords figures, FindingBlocks findings)
    {
        page.Heading($"Leaf {leaf.Label}, {leaf.Name}: {FrontWords.Describe(leaf, figures)}");

        Finding[] own = [.. breakdown.FindingsAt(leaf.Path)];
        if (leaf.IsWithheld)
            page.Line(Remarks.Withheld, Tone.Danger, 2);

        AddParts(page, leaf, figures);
        if (leaf.CheckSums.Count > 0)
        {
            page.Heading($"{leaf.Label} adds up");
            foreach (var sum in leaf.CheckSums)
                page.Line($"{sum.Name}: {sum.Text(figures.Format)}{(sum.Holds ? "" : "  DOES NOT ADD UP")}", sum.Holds ? Tone.Plain : Tone.Danger, 2);
        }

        page.Heading($"How the sizes of {leaf.Label} are found");
        WorkPage.AddSteps(page, [leaf.Width, leaf.Height, .. leaf.Parts.SelectMany(NamedFigures.Of).Select(figure => figure.Quantity)], figures);
        if (own.Length > 0)
        {
            page.Heading($"Findings about {leaf.Label}");
            findings.AddTo(page, own);
        }
    }

    private static void AddParts(Page page, SizedLeaf leaf, TradeWords figures)
    {
        page.Grid(
            ["label", "part", Column.Figure("finished"), Column.Figure("into the clamps"), Column.Figure("rough"), Column.Figure("shoulder to shoulder"), "material", "grain", "work"],
            leaf.Parts.Select(part => (IReadOnlyList<string>)
            [
                part.Label,
                part.Name,
                figures.Of(part.Finished),
                figures.Of(part.GlueUp),
                figures.Of(part.Rough),
                figures.Of(part.Shoulder),
                part.Material,
                part.Grain is { } grain ? TradeWords.Words(grain) : "",
                figures.Work(part),
            ]));
        var thick = leaf.Parts.Where(part => part.Thickness is not null)
            .GroupBy(part => (part.Stock, Rough: figures.Of(part.Thickness!.Rough), Planed: figures.Of(part.Thickness.Planed), Final: figures.Of(part.Thickness.Final)));
        page.Grid(
            ["thickness of", Column.Figure("rough"), Column.Figure("planed"), Column.Figure("sanded"), "parts"],
            thick.Select(group => (IReadOnlyList<string>)
            [
                group.Key.Stock,
                group.Key.Rough,
                group.Key.Planed,
                group.Key.Final,
                string.Join(" ", group.Select(part => part.Label)),
            ]));
    }

    private static string Text(int count) => count.ToString(CultureInfo.InvariantCulture);

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
