using Stilewright.Doors;
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
}
