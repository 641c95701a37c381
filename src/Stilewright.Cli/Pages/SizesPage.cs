using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>For each front: the opening used, the front, its leaves, and what every edge and corner leaves.</summary>
internal static class SizesPage
{
    public static Page Of(Selection selection, LengthFormat format)
    {
        var figures = new TradeWords(format);
        var labels = selection.Breakdown.Fronts.GroupBy(front => front.Path).ToDictionary(group => group.Key, group => group.First().Label);
        var page = new Page().Title($"{selection.Breakdown.Course.Name}: sizes in {figures.Unit}, width × height, seen from the front");
        foreach (var chosen in selection.Fronts)
        {
            page.Heading($"{FrontWords.Name(chosen.Front)}, bench {chosen.Project.Project.Bench}, {chosen.Piece.Piece.Name}");
            AddFront(page, chosen, figures, labels);
        }

        return page.Footnotes();
    }

    /// <summary>The lines that tell the opening, the front and its place.</summary>
    public static void AddMeasures(Page page, SizedFront front, TradeWords figures)
    {
        if (FrontWords.Opening(front, figures) is { } opening)
            page.Line($"opening  {opening}", Tone.Plain, 2);
        if (FrontWords.Lean(front, figures) is { } lean)
            page.Line(lean, Tone.Plain, 2);
        page.Line($"front    {FrontWords.Size(front, figures)}", Tone.Plain, 2);
        if (FrontWords.Place(front, figures) is { } place)
            page.Line($"place    {place}", Tone.Plain, 2);
    }

    private static void AddFront(Page page, ChosenFront chosen, TradeWords figures, Dictionary<string, string> labels)
    {
        var front = chosen.Front;
        AddMeasures(page, front, figures);
        page.Grid(["label", "leaf", Column.Figure("size"), "hand", "design", "rabbeted", "taper"], chosen.Leaves.Select(leaf => (IReadOnlyList<string>)
        [
            leaf.Label,
            leaf.Name,
            figures.Size(leaf.Width, leaf.Height),
            leaf.IsDrawerFront ? "" : TradeWords.Hinge(leaf.Hinge),
            leaf.DesignName,
            string.Join(", ", leaf.Rabbeted.Select(side => TradeWords.Words(side))),
            FrontWords.Tapers(leaf, figures),
        ]));
        page.Grid(["edge", "leaves", "asked for", Column.Figure("frame seen"), "beyond"], front.Edges.Select(edge => (IReadOnlyList<string>)
        [
            TradeWords.Words(edge.Side),
            figures.Reach(edge.Reach, front.Mount),
            $"{WorkedText.Label(edge.Rule)} {figures.Of(edge.Rule)}",
            edge.Reveal is { } reveal ? figures.Of(reveal) : "",
            FrontWords.Beyond(edge, labels),
        ]));
        page.Grid(["corner", "sideways", "upright"], front.Corners.Select(corner => (IReadOnlyList<string>)
        [
            $"{(corner.Upper == Side.Top ? "upper" : "lower")} {TradeWords.Words(corner.Hand)}",
            figures.Reach(corner.Sideways, front.Mount),
            figures.Reach(corner.Upright, front.Mount),
        ]));
    }
}
