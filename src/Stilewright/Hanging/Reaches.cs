using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Hanging;

/// <summary>What the edges of a front leave, as quantities that show their work.</summary>
internal static class Reaches
{
    /// <summary>How far the leaf laps over the frame on a side, or the gap that an inset one keeps there; never negative.</summary>
    public static Worked Left(SizedFront front, SizedLeaf leaf, Side side)
    {
        var edge = front.Edges.First(one => one.Side == side);
        var left = Length.Abs(edge.Reach);
        if (edge.Rule.Length == left)
            return edge.Rule;
        var (words, isInset) = (side.ToString().ToLowerInvariant(), front.Mount == Mount.Inset);
        // What the cutting step leaves over goes to the top.
        if (side == Side.Top && front.Figure is { } figure)
        {
            var bottom = front.Edges.First(one => one.Side == Side.Bottom).Rule;
            var top = isInset ? figure.Height - leaf.Height - bottom : leaf.Height - figure.Height - bottom;
            if (top.Length == left)
                return top.As(isInset ? "gap left at the top" : "overlay left at the top", "front/edge.top.left");
        }

        return new Given($"front/edge.{words}.left", $"{words} {(isInset ? "gap" : "overlay")} that is left", left, new(OriginKind.Opening, $"{front.Path}/edges/{words}"));
    }
}
