using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>What is wrong with a task, where, and what mends it.</summary>
/// <param name="Place">The leaf, or the leaf and its edge or corner.</param>
public sealed record TaskProblem(string Place, string Problem, string Fix);

/// <summary>A single leaf, a pair or a row as it hangs, and the gaps and corners read on it.</summary>
/// <param name="Step">The finest travel told of a screw whose thread is not known. Must be positive.</param>
/// <param name="Tolerance">How far a gap may be from what it should be, and a corner from its plane, and still pass. Not negative.</param>
public sealed record AdjustingTask(
    IReadOnlyList<RowLeaf> Leaves, IReadOnlyList<GapReading> Gaps, IReadOnlyList<ProudReading> Corners, Length Step, Length Tolerance)
{
    /// <summary>1/64 in or 0.2 mm: what an eye still sees between two gaps. Common practice, no source.</summary>
    public static Length UsualStep(LengthUnit unit) => unit == LengthUnit.Inch ? Length.FromInches(new(1, 64)) : Length.FromMillimetres(new(1, 5));

    /// <summary>1/32 in or 0.8 mm either way of a gap.</summary>
    /// <remarks>A door 1/16 out can be hidden, 1/8 is the edge of what can: common practice, no source; half of the first.</remarks>
    public static Length UsualTolerance(LengthUnit unit) => unit == LengthUnit.Inch ? Length.FromInches(new(1, 32)) : Length.FromMillimetres(new(4, 5));

    /// <exception cref="KeyNotFoundException">No leaf has that label.</exception>
    public int IndexOf(string label)
    {
        for (var index = 0; index < Leaves.Count; index++)
        {
            if (Leaves[index].Label == label)
                return index;
        }

        throw new KeyNotFoundException(label);
    }

    /// <summary>Gaps and corners as they were read.</summary>
    public Hang AsRead() => Hang.Of(this, [.. Leaves.Select(_ => LeafMoves.None)], [], []);

    /// <summary>Everything that keeps the task from being reckoned; empty where nothing does.</summary>
    public IReadOnlyList<TaskProblem> Problems()
    {
        List<TaskProblem> problems = [];
        var labels = Leaves.Select(leaf => leaf.Label).ToHashSet();
        foreach (var twice in Leaves.GroupBy(leaf => leaf.Label).Where(group => group.Count() > 1))
            problems.Add(new(twice.Key, "two leaves have this label", "give each leaf a label of its own"));
        foreach (var leaf in Leaves)
        {
            if (leaf.Hinges.Count < 2 || leaf.Hinges.Zip(leaf.Hinges.Skip(1)).Any(pair => pair.First >= pair.Second))
                problems.Add(new(leaf.Label, "it does not have two hinges, from the bottom to the top", "give the height of each hinge above the bottom of the leaf"));
            if (leaf.Hinges.Any(at => !at.IsPositive || at >= leaf.Place.Height))
                problems.Add(new(leaf.Label, "a hinge is not on the leaf", "measure each hinge from the bottom of the leaf"));
            if (new[] { leaf.Sideways, leaf.Height, leaf.Depth }.Any(range => range.Less.IsNegative || range.More.IsNegative || range.PerTurn is { IsPositive: false }))
                problems.Add(new(leaf.Label, "a screw has a range or a thread below zero", "take them from the hinge's own sheet"));
        }

        if (Gaps.Count == 0 && Corners.Count == 0)
            problems.Add(new("readings", "nothing is read", "read the gaps at the ends of each edge, or how proud the corners stand"));
        foreach (var reading in Gaps)
        {
            var place = PlaceOf(reading);
            foreach (var unknown in new[] { reading.Leaf, reading.Beyond }.OfType<string>().Where(label => !labels.Contains(label)).Distinct())
                problems.Add(new(place, $"there is no leaf {unknown}", $"use one of {string.Join(", ", Leaves.Select(leaf => leaf.Label))}"));
            if (reading.Beyond == reading.Leaf)
                problems.Add(new(place, "the leaf is beside itself", "name the other leaf, or none for the frame"));
        }

        foreach (var twice in Gaps.GroupBy(reading => (reading.Leaf, reading.Edge, reading.At, reading.Beyond)).Where(group => group.Count() > 1))
            problems.Add(new(PlaceOf(twice.First()), "this gap is read twice", "keep one reading"));
        foreach (var group in Corners.GroupBy(reading => reading.Leaf))
        {
            if (!labels.Contains(group.Key))
                problems.Add(new(group.Key, $"there is no leaf {group.Key}", $"use one of {string.Join(", ", Leaves.Select(leaf => leaf.Label))}"));
            if (group.GroupBy(reading => reading.Corner).Any(same => same.Count() > 1))
                problems.Add(new(group.Key, "a corner is read twice", "keep one reading"));
            if (group.Count(reading => reading.IsFree) == 1)
                problems.Add(new(group.Key, "one corner of the free edge is read and the other is not", "read both: the leaf rests on the one that touches first"));
        }

        return problems;
    }

    private static string PlaceOf(GapReading reading) => $"{reading.Leaf} {reading.Edge.ToString().ToLowerInvariant()} edge";
}
