using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>A leaf with its hinge, where its hinges go and what is bored.</summary>
/// <param name="Standard">The standard in force at its opening.</param>
/// <param name="Fit">How the hinge gives the overlay or the gap; null for a leaf that hangs on another leaf or closes no opening.</param>
public sealed record HungLeaf(
    Project Project, SizedFront Front, SizedLeaf Leaf, DoorDesign? Design, HingeKind Hinge, StandardInForce Standard, HingeFit? Fit, HingeSet Set)
{
    /// <summary>Whether it has a top; worked out when it is asked for.</summary>
    public LeafHand Hand => LeafHand.Of(Leaf);

    /// <summary>What is bored into it; null for a hinge without a cup.</summary>
    public BoringSheet? Sheet => BoringSheet.Of(this);

    /// <summary>Whether the hinge gives what the front was sized for, or differs by less than can be laid off on the cutting step.</summary>
    public bool IsAsWanted => Fit is null || Length.Abs(Fit.Error) < Standard[Settings.Step].Length / 2;

    /// <summary>The hinge edge seen from the back with the top up: the hinge side's mirror image.</summary>
    public Side Edge => BoringSheet.FromBack(BoringSheet.EdgeOf(Leaf.Hinge));

    /// <summary>Whether its hinge edge stands upright, so that it is a left-hand or a right-hand door.</summary>
    public bool IsUpright => Edge is Side.Left or Side.Right;

    /// <summary>The places of its hinges from the top down; from the left, seen from the back, where it is hinged at top or bottom.</summary>
    // Seen from the back a level edge has its right end, seen from the front, on the left.
    public IReadOnlyList<Bore> Bores => [.. Set.Places.Reverse().Select((place, i) => new Bore(i + 1, place.FromEnd, place.FromStart, place.Why))];

    /// <summary>How it is bored on each machine of the shop that has stops; none for a hinge without a cup.</summary>
    public IReadOnlyList<StopPlan> StopPlans => Sheet is { } sheet ? [.. Standard.Standard.BoringMachines.Select(machine => StopPlan.Of(machine, sheet))] : [];
}
