using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>How much a gap grows for each inch that a leaf's screws carry it.</summary>
/// <param name="Leaf">Index of the leaf.</param>
public readonly record struct GapShare(int Leaf, Fraction SidewaysTop, Fraction SidewaysBottom, Fraction Height);

/// <summary>Gaps and corners as linear functions of what the screws are turned by.</summary>
/// <remarks>
/// A leaf is rigid and turns by little: one inch in sixteen over its height leaves out less than 0.002 in of any gap, the square of the turn.
/// Sideways, each point of an edge moves by the line through what the outer hinges move; the free edge rises or falls by the same turn, times
/// its distance from the hinge edge. Source: geometry of small turns of a rigid body.
/// </remarks>
public static class GapModel
{
    /// <summary>The shares of the leaves beside a gap, in its change.</summary>
    public static IReadOnlyList<GapShare> Shares(AdjustingTask task, GapReading reading)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(reading);
        var index = task.IndexOf(reading.Leaf);
        var along = Along(task, reading);
        var own = Share(task, index, reading.Edge, along);
        return reading.Beyond is null ? [own] : [own, Share(task, task.IndexOf(reading.Beyond), Opposite(reading.Edge), along)];
    }

    /// <summary>What the gap will be after the moves.</summary>
    public static Length After(AdjustingTask task, GapReading reading, IReadOnlyList<LeafMoves> moves)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(moves);
        var gap = reading.Gap;
        foreach (var share in Shares(task, reading))
        {
            var move = moves[share.Leaf];
            gap += move.SidewaysTop * share.SidewaysTop + move.SidewaysBottom * share.SidewaysBottom + move.Height * share.Height;
        }

        return gap;
    }

    /// <summary>How the corners of a leaf stand after its moves, in the order they were read.</summary>
    /// <remarks>The free edge comes to rest where it rested before: on the corner that touches first.</remarks>
    public static IReadOnlyList<ProudReading> After(RowLeaf leaf, IReadOnlyList<ProudReading> corners, LeafMoves moves)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        ArgumentNullException.ThrowIfNull(corners);
        ArgumentNullException.ThrowIfNull(moves);
        var top = AtCorner(leaf, true, moves.DepthTop, moves.DepthBottom);
        var bottom = AtCorner(leaf, false, moves.DepthTop, moves.DepthBottom);
        var free = corners.Where(reading => reading.IsFree).ToList();
        var swing = free.Count == 0 ? default
            : free.Min(reading => reading.Proud) - free.Min(reading => reading.Proud + (reading.IsTop ? top : bottom));
        return [.. corners.Select(reading => reading with { Proud = reading.Proud + (reading.IsTop ? top : bottom) + (reading.IsFree ? swing : default) })];
    }

    /// <summary>How far the hinge edge moves out at the top or bottom corner, which lie beyond the outer hinges.</summary>
    public static Length AtCorner(RowLeaf leaf, bool top, Length depthTop, Length depthBottom)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        var share = TopShare(leaf, top ? leaf.Place.Height : default);
        return depthTop * share + depthBottom * (1 - share);
    }

    /// <summary>Share of the highest hinge in what a point of the hinge edge moves.</summary>
    /// <param name="height">Above the bottom of the leaf.</param>
    public static Fraction TopShare(RowLeaf leaf, Length height)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        return (height - leaf.Hinges[0]) / leaf.Spread;
    }

    private static GapShare Share(AdjustingTask task, int index, Side edge, Length along)
    {
        var leaf = task.Leaves[index];
        if (edge is Side.Left or Side.Right)
        {
            var top = TopShare(leaf, along - leaf.Place.Y);
            var sign = edge == leaf.HingeEdge ? Fraction.One : Fraction.MinusOne;
            return new(index, sign * top, sign * (1 - top), Fraction.Zero);
        }

        // The free edge falls where the top is carried further from the hinges than the bottom.
        var reach = leaf.HingedLeft ? along - leaf.Place.X : leaf.Place.Right - along;
        var fall = reach / leaf.Spread;
        var growth = edge == Side.Bottom ? Fraction.One : Fraction.MinusOne;
        return new(index, -growth * fall, growth * fall, growth);
    }

    /// <summary>What planing adds to a gap.</summary>
    public static Length Planed(AdjustingTask task, GapReading reading, IReadOnlyList<EdgeTrim> trims)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(trims);
        var along = Along(task, reading);
        Length planed = default;
        foreach (var trim in trims)
        {
            if ((trim.Leaf == reading.Leaf && trim.Edge == reading.Edge) || (trim.Leaf == reading.Beyond && trim.Edge == Opposite(reading.Edge)))
                planed += trim.AtStart + (trim.AtEnd - trim.AtStart) * ShareOfEnd(task.Leaves[task.IndexOf(trim.Leaf)], trim.Edge, along);
        }

        return planed;
    }

    /// <summary>Where a gap is read: above the bottom of the row for an upright edge, from its left for a level one.</summary>
    public static Length Along(AdjustingTask task, GapReading reading)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(reading);
        var place = task.Leaves[task.IndexOf(reading.Leaf)].Place;
        var (start, size) = reading.IsUpright ? (place.Y, place.Height) : (place.X, place.Width);
        return reading.At switch
        {
            EdgeEnd.Start => start,
            EdgeEnd.Middle => start + size / 2,
            _ => start + size,
        };
    }

    /// <summary>Share of an edge's end, at the top or the right, in what lies at a place along it.</summary>
    public static Fraction ShareOfEnd(RowLeaf leaf, Side edge, Length along)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        return edge is Side.Left or Side.Right ? (along - leaf.Place.Y) / leaf.Place.Height : (along - leaf.Place.X) / leaf.Place.Width;
    }

    public static Side Opposite(Side edge) => edge switch
    {
        Side.Left => Side.Right,
        Side.Right => Side.Left,
        Side.Top => Side.Bottom,
        _ => Side.Top,
    };
}
