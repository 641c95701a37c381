using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Hanging;

/// <summary>What is bored into one leaf, seen from the back as it lies face down.</summary>
/// <param name="Edge">The edge that is bored, seen from the back with the top up: the hinge side's mirror image.</param>
/// <param name="Bores">From the top down; from the left, seen from the back, where it is hinged at top or bottom.</param>
/// <param name="Distance">From that edge to the near edge of the cup.</param>
/// <param name="CupCentre">From that edge to the centre of the cup.</param>
public sealed record BoringSheet(HungLeaf Leaf, Side Edge, IReadOnlyList<Bore> Bores, Worked Distance, Worked CupCentre)
{
    /// <summary>The hinge side seen from the front, in a word for a label: which door it is.</summary>
    public HingeSide Hand => Leaf.Leaf.Hinge;

    internal static BoringSheet? Of(HungLeaf leaf)
    {
        if (leaf.Hinge.Cup is not { } cup)
            return null;
        var distance = leaf.Fit?.Distance ?? leaf.Standard.LengthOrWord(Shop.Settings.BoringDistance)
            ?? HingeFit.Entered(leaf.Hinge, "cup/leastDistance", "least boring distance", cup.LeastDistance).As("boring distance", "hinge/distance");
        var centre = leaf.Fit?.CupCentre ?? (distance + (HingeFit.Entered(leaf.Hinge, "cup/diameter", "cup", cup.Diameter) / 2)).As("centre of the cup from the edge", "hinge/cup.centre");
        return new(leaf, leaf.Edge, leaf.Bores, distance, centre);
    }

    /// <summary>The edge with the hinges, seen from the front.</summary>
    internal static Side EdgeOf(HingeSide hinge) => hinge switch
    {
        HingeSide.Left => Side.Left,
        HingeSide.Right => Side.Right,
        HingeSide.Top => Side.Top,
        _ => Side.Bottom,
    };

    /// <summary>A side as it is seen from the other face.</summary>
    internal static Side FromBack(Side side) => side switch
    {
        Side.Left => Side.Right,
        Side.Right => Side.Left,
        _ => side,
    };
}

/// <summary>One boring.</summary>
/// <param name="FromFirst">From the top of the leaf to its centre; from the left end seen from the back, on a level edge.</param>
/// <param name="FromOther">From the bottom of the leaf, or from the right end seen from the back.</param>
/// <param name="Why">Why it is not where it would be, as the end of a sentence; null where it is.</param>
public sealed record Bore(int Number, Worked FromFirst, Worked FromOther, string? Why = null);
