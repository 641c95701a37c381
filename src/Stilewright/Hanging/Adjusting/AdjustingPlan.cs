using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>A gap before and after.</summary>
/// <param name="Target">What it should be; where the reading named nothing, what makes all of its direction as even as they can be.</param>
public sealed record GapAfter(GapReading Reading, Length After, Length Target)
{
    public Length Miss => Length.Abs(After - Target);
}

/// <summary>A corner before and after.</summary>
public sealed record CornerAfter(ProudReading Reading, Length After)
{
    public Length Miss => Length.Abs(After);
}

/// <summary>Gaps and corners that one set of moves leaves.</summary>
public sealed record Hang(IReadOnlyList<LeafMoves> Moves, IReadOnlyList<GapAfter> Gaps, IReadOnlyList<CornerAfter> Corners)
{
    /// <summary>The farthest that any gap is from what it should be.</summary>
    public Length WorstGap => Gaps.Count == 0 ? default : Gaps.Max(gap => gap.Miss);

    /// <summary>The farthest that any corner is from its plane.</summary>
    public Length WorstCorner => Corners.Count == 0 ? default : Corners.Max(corner => corner.Miss);

    /// <summary>What moves, planed edges and other bumpers leave of a row as it was read.</summary>
    public static Hang Of(AdjustingTask task, IReadOnlyList<LeafMoves> moves, IReadOnlyList<EdgeTrim> trims, IReadOnlyList<BumperChange> bumpers)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(bumpers);
        var gaps = task.Gaps.Select(reading => (Reading: reading, After: GapModel.After(task, reading, moves) + GapModel.Planed(task, reading, trims))).ToList();
        var even = gaps.Where(gap => gap.Reading.Target is null).GroupBy(gap => gap.Reading.IsUpright)
            .ToDictionary(group => group.Key, group => (group.Min(gap => gap.After) + group.Max(gap => gap.After)) / 2);
        List<CornerAfter> corners = [];
        foreach (var (leaf, move) in task.Leaves.Zip(moves))
        {
            var readings = task.Corners.Where(corner => corner.Leaf == leaf.Label).ToList();
            var thicker = bumpers.FirstOrDefault(change => change.Leaf == leaf.Label)?.Thicker ?? default;
            corners.AddRange(readings.Zip(GapModel.After(leaf, readings, move), (reading, after) => new CornerAfter(reading, after.Proud + (reading.IsFree ? thicker : default))));
        }

        return new(moves, [.. gaps.Select(gap => new GapAfter(gap.Reading, gap.After, gap.Reading.Target ?? even[gap.Reading.IsUpright]))], corners);
    }
}

public enum RemedyKind
{
    /// <summary>Plates are moved, or packed, so that the screws need not reach so far.</summary>
    MovePlates,

    /// <summary>The stop or bumper that the free edge rests on is made thicker or thinner.</summary>
    SetBumper,

    /// <summary>Edges are planed.</summary>
    Trim,

    /// <summary>Some of each, where none of them does it alone.</summary>
    Together,
}

/// <summary>How far one hinge's plate goes beyond what its screws can do.</summary>
/// <param name="Hinge">Index from the bottom.</param>
/// <param name="Sideways">Away from the hinge side where positive, by packing; towards it by moving or letting in.</param>
/// <param name="Height">Up where positive.</param>
/// <param name="Depth">Out where positive.</param>
public sealed record PlateMove(string Leaf, int Hinge, Length Sideways, Length Height, Length Depth)
{
    public bool IsNone => Sideways.IsZero && Height.IsZero && Depth.IsZero;
}

/// <summary>What is planed off one edge: from nothing or little at one end to more at the other.</summary>
/// <param name="AtStart">At the bottom of an upright edge, at the left end of a level one.</param>
public sealed record EdgeTrim(string Leaf, Side Edge, Length AtStart, Length AtEnd);

/// <summary>How much thicker (positive) or thinner the stop of one leaf becomes.</summary>
public sealed record BumperChange(string Leaf, Length Thicker);

/// <summary>What else would bring the row nearer, beyond the range of its screws.</summary>
/// <param name="Hang">The moves that go with it, and what they leave.</param>
/// <param name="Does">Whether every gap and corner is then within the tolerance.</param>
public sealed record Remedy(
    RemedyKind Kind, Hang Hang, bool Does, IReadOnlyList<PlateMove> Plates, IReadOnlyList<EdgeTrim> Trims, IReadOnlyList<BumperChange> Bumpers);

/// <summary>The moves that bring a row nearest to even and flush, and what is left.</summary>
/// <param name="Before">The row as it was read.</param>
/// <param name="After">The row after the moves.</param>
/// <param name="IsWithin">Whether every gap and corner is within the tolerance after the moves.</param>
/// <param name="Remedies">What would do more, where it is not; those that do come first. Empty where the screws are enough.</param>
public sealed record AdjustingPlan(AdjustingTask Task, Hang Before, Hang After, bool IsWithin, IReadOnlyList<Remedy> Remedies);
