using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Wording;

/// <summary>Fronts and leaves in words.</summary>
public static class FrontWords
{
    /// <summary>"7·2 Lower doors", or the label alone.</summary>
    public static string Name(SizedFront front) => front.Name.Length == 0 ? front.Label : $"{front.Label} {front.Name}";

    /// <summary>Size of the opening and why it is taken, or what of it is not read yet; null for a loose front.</summary>
    public static string? Opening(SizedFront front, TradeWords figures) =>
        front.Figure is { } figure ? $"{figures.Size(figure.Width, figure.Height)}, {figure.Reason}" : Unmeasured(front, figures);

    /// <summary>"not measured yet, height not read; width at the top 23 3/4"; null where the opening is measured.</summary>
    public static string? Unmeasured(SizedFront front, TradeWords figures)
    {
        if (front.Unmeasured is not { } opening)
            return null;
        var lacks = (opening.LacksWidth, opening.LacksHeight) switch
        {
            (true, true) => "width and height not read",
            (true, _) => "width not read",
            _ => "height not read",
        };
        return string.Join("; ", [$"not measured yet, {lacks}", .. opening.Read.Select(reading => $"{reading.Label} {figures.Of(reading)}")]);
    }

    /// <summary>How far an opening leans; null where it stands upright or was not measured so.</summary>
    public static string? Lean(SizedFront front, TradeWords figures) => front.Figure?.Lean is { } lean && !lean.Amount.IsZero
        ? $"its top stands {figures.Of(Length.Abs(lean.Length))} to the {(lean.Amount.IsNegative ? "left" : "right")} of its bottom" : null;

    /// <summary>Size of the front, how it sits and the gap of its leaves.</summary>
    public static string Size(SizedFront front, TradeWords figures) =>
        $"{(front is { Width: { } width, Height: { } height } ? figures.Size(width, height) : "size not known yet")}{(front.Mount is { } mount ? $", {TradeWords.Words(mount)}" : "")}"
        + $"{(front.Gap is { } gap ? $", {figures.Of(gap)} between its leaves" : "")}";

    /// <summary>Where the front stands on its face; null where no layout tells.</summary>
    public static string? Place(SizedFront front, TradeWords figures) => front.Place is { } place
        ? $"{figures.Of(place.X)} from the left and {figures.Of(place.Y)} up from the bottom of the face frame" : null;

    /// <summary>How far each edge is planed away from upright or level; empty where none is.</summary>
    public static string Tapers(SizedLeaf leaf, TradeWords figures) => string.Join(", ",
        leaf.Tapers.Where(taper => !taper.Value.IsZero).Select(taper => $"{TradeWords.Words(taper.Key)} {figures.Of(taper.Value)}"));

    /// <summary>Size, hinge, design and what is done to the edges.</summary>
    public static string Describe(SizedLeaf leaf, TradeWords figures)
    {
        List<string> words = [figures.Size(leaf.Width, leaf.Height)];
        if (!leaf.IsDrawerFront)
            words.Add(TradeWords.Hinge(leaf.Hinge));
        words.Add(leaf.DesignName);
        if (leaf.Rabbeted.Count > 0)
            words.Add($"rabbeted {string.Join(", ", leaf.Rabbeted.Select(side => TradeWords.Words(side)))}");
        if (Tapers(leaf, figures) is { Length: > 0 } tapers)
            words.Add($"planed to fit, taper {tapers}");
        return string.Join("; ", words);
    }

    /// <summary>What lies beyond an edge.</summary>
    /// <param name="labels">Labels of fronts by their paths.</param>
    public static string Beyond(EdgeReach edge, IReadOnlyDictionary<string, string> labels) => edge.Beyond switch
    {
        BeyondKind.Opening => $"front {string.Join(", ", edge.Neighbours.Select(id => labels.GetValueOrDefault(id, id)))}",
        BeyondKind.FrameEdge => "the edge of the frame",
        BeyondKind.Wall => "a wall",
        _ => "not known",
    };
}
