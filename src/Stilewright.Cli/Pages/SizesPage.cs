using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Cli.Pages;

/// <summary>For each front: the opening used, the front, its leaves, and what every edge and corner leaves.</summary>
internal static class SizesPage
{
    public static Page Of(Selection selection, LengthFormat format)
    {
        var figures = new Figures(format);
        var labels = selection.Breakdown.Fronts.GroupBy(front => front.Path).ToDictionary(group => group.Key, group => group.First().Label);
        var page = new Page().Title($"{selection.Breakdown.Course.Name}: sizes in {figures.Unit}, width × height, seen from the front");
        foreach (var chosen in selection.Fronts)
        {
            page.Heading($"{FrontName(chosen)}, bench {chosen.Project.Project.Bench}, {chosen.Piece.Piece.Name}");
            AddFront(page, chosen, figures, labels);
        }

        return page.Footnotes();
    }

    /// <summary>"7·2 Lower doors", or the label alone.</summary>
    public static string FrontName(ChosenFront chosen) =>
        chosen.Front.Name.Length == 0 ? chosen.Front.Label : $"{chosen.Front.Label} {chosen.Front.Name}";

    /// <summary>The lines that tell the opening, the front and its place.</summary>
    public static void AddMeasures(Page page, SizedFront front, Figures figures)
    {
        if (front.Figure is { } figure)
        {
            page.Line($"opening  {figures.Size(figure.Width, figure.Height)}, {figure.Reason}", Tone.Plain, 2);
            if (figure.Lean is { } lean && !lean.Amount.IsZero)
                page.Line($"its top stands {figures.Of(Length.Abs(lean.Length))} to the {(lean.Amount.IsNegative ? "left" : "right")} of its bottom", Tone.Plain, 2);
        }

        page.Line($"front    {figures.Size(front.Width, front.Height)}{(front.Mount is { } mount ? $", {Figures.Words(mount)}" : "")}"
            + $"{(front.Gap is { } gap ? $", {figures.Of(gap)} between its leaves" : "")}", Tone.Plain, 2);
        if (front.Place is { } place)
            page.Line($"place    {figures.Of(place.X)} from the left and {figures.Of(place.Y)} up from the bottom of the face frame", Tone.Plain, 2);
    }

    private static void AddFront(Page page, ChosenFront chosen, Figures figures, Dictionary<string, string> labels)
    {
        var front = chosen.Front;
        AddMeasures(page, front, figures);
        page.Grid(["label", "leaf", Column.Figure("size"), "hand", "design", "rabbeted", "taper"], chosen.Leaves.Select(leaf => (IReadOnlyList<string>)
        [
            leaf.Label,
            leaf.Name,
            figures.Size(leaf.Width, leaf.Height),
            leaf.IsDrawerFront ? "" : Figures.Hinge(leaf.Hinge),
            leaf.DesignName,
            string.Join(", ", leaf.Rabbeted.Select(side => Figures.Words(side))),
            Tapers(leaf, figures),
        ]));
        page.Grid(["edge", "leaves", "asked for", Column.Figure("frame seen"), "beyond"], front.Edges.Select(edge => (IReadOnlyList<string>)
        [
            Figures.Words(edge.Side),
            figures.Reach(edge.Reach, front.Mount),
            $"{WorkedText.Label(edge.Rule)} {figures.Of(edge.Rule)}",
            edge.Reveal is { } reveal ? figures.Of(reveal) : "",
            Beyond(edge, labels),
        ]));
        page.Grid(["corner", "sideways", "upright"], front.Corners.Select(corner => (IReadOnlyList<string>)
        [
            $"{(corner.Upper == Side.Top ? "upper" : "lower")} {Figures.Words(corner.Hand)}",
            figures.Reach(corner.Sideways, front.Mount),
            figures.Reach(corner.Upright, front.Mount),
        ]));
    }

    /// <summary>How far each edge is planed away from upright or level.</summary>
    public static string Tapers(SizedLeaf leaf, Figures figures) => string.Join(", ",
        leaf.Tapers.Where(taper => !taper.Value.IsZero).Select(taper => $"{Figures.Words(taper.Key)} {figures.Of(taper.Value)}"));

    private static string Beyond(EdgeReach edge, Dictionary<string, string> labels) => edge.Beyond switch
    {
        BeyondKind.Opening => $"front {string.Join(", ", edge.Neighbours.Select(id => labels.GetValueOrDefault(id, id)))}",
        BeyondKind.FrameEdge => "edge of the frame",
        BeyondKind.Wall => "wall",
        _ => "not known",
    };
}
