using CsCheck;
using Fractions;
using Stilewright.Doors;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;

namespace Stilewright.Adjusting.Tests;

/// <summary>Rows of leaves to be adjusted, with every gap of theirs to be read.</summary>
internal static class Rows
{
    public static readonly Length Step = In(1, 64);
    public static readonly Length Tolerance = In(1, 32);
    public static readonly Length Gap = In(1, 8);

    /// <summary>Hinges adjust about 1/8 in each way: common practice, no source.</summary>
    public static readonly ScrewRange Eighth = new(In(1, 8), In(1, 8));

    public static Length In(int numerator, int denominator) => Length.FromInches(new Fraction(numerator, denominator));

    public static Length In(double inches) => Length.FromInches(Fraction.FromDoubleRounded(inches));

    public static double Of(Length length) => length.Inches.ToDouble();

    public static RowLeaf Leaf(string label, int left, int width, int height, bool hingedLeft, ScrewRange? range = null) =>
        new(label, new(left.Inches, default, width.Inches, height.Inches), hingedLeft, [3.Inches, (height - 3).Inches], range ?? Eighth, range ?? Eighth, range ?? Eighth);

    /// <summary>Leaves side by side, 1/8 apart, hinged left and right by turns, in a frame that leaves 1/8 all round.</summary>
    public static IReadOnlyList<RowLeaf> Side(int count, int width = 15, int height = 30, ScrewRange? range = null)
    {
        List<RowLeaf> leaves = [];
        Length left = default;
        for (var index = 0; index < count; index++)
        {
            leaves.Add(Leaf($"{index + 1}", 0, width, height, index % 2 == 0, range) with { Place = new(left, default, width.Inches, height.Inches) });
            left += width.Inches + Gap;
        }

        return leaves;
    }

    /// <summary>Both ends of every edge; of an edge beside another leaf once.</summary>
    public static IEnumerable<(string Leaf, Side Edge, EdgeEnd At, string? Beyond)> Places(IReadOnlyList<RowLeaf> leaves)
    {
        for (var index = 0; index < leaves.Count; index++)
        {
            foreach (var at in new[] { EdgeEnd.Start, EdgeEnd.End })
            {
                yield return (leaves[index].Label, Doors.Side.Top, at, null);
                yield return (leaves[index].Label, Doors.Side.Bottom, at, null);
                if (index == 0)
                    yield return (leaves[index].Label, Doors.Side.Left, at, null);
                yield return (leaves[index].Label, Doors.Side.Right, at, index + 1 < leaves.Count ? leaves[index + 1].Label : null);
            }
        }
    }

    /// <summary>A row whose leaves were moved by so much from where every gap is 1/8, and read with exact instruments.</summary>
    public static AdjustingTask Moved(IReadOnlyList<RowLeaf> leaves, IReadOnlyList<LeafMoves> moves, bool targets = true)
    {
        var even = new AdjustingTask(leaves, [.. Places(leaves).Select(place => new GapReading(place.Leaf, place.Edge, place.At, place.Beyond, Gap, targets ? Gap : null))], [], Step, Tolerance);
        return even with { Gaps = [.. even.Gaps.Select(reading => reading with { Gap = In(RigidRow.After(even, moves, reading)) })] };
    }

    public static Gen<Length> Travel(int sixtyFourths) => Gen.Int[-sixtyFourths, sixtyFourths].Select(count => In(count, 64));

    public static Gen<LeafMoves> Moves(int sixtyFourths) => Gen.Select(Travel(sixtyFourths), Travel(sixtyFourths), Travel(sixtyFourths),
        (top, bottom, height) => new LeafMoves(top, bottom, height, default, default));
}
