using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>What the screws of one leaf are turned by.</summary>
/// <param name="SidewaysTop">At the highest hinge, away from the hinge side where positive.</param>
/// <param name="SidewaysBottom">At the lowest hinge. Hinges between follow the line from one to the other.</param>
/// <param name="Height">Up where positive, at every hinge alike.</param>
/// <param name="DepthTop">At the highest hinge, out where positive.</param>
/// <param name="DepthBottom">At the lowest hinge.</param>
public sealed record LeafMoves(Length SidewaysTop, Length SidewaysBottom, Length Height, Length DepthTop, Length DepthBottom)
{
    public static LeafMoves None { get; } = new(default, default, default, default, default);

    public bool IsNone => this == None;

    /// <summary>All travel of the outer hinges added up.</summary>
    public Length Travel => Length.Abs(SidewaysTop) + Length.Abs(SidewaysBottom) + Length.Abs(Height) + Length.Abs(DepthTop) + Length.Abs(DepthBottom);

    /// <summary>How far a hinge is moved sideways; one between the outer two follows them.</summary>
    public Length SidewaysAt(RowLeaf leaf, int hinge) => Between(leaf, leaf.Hinges[hinge], SidewaysBottom, SidewaysTop);

    /// <summary>How far a hinge is moved out; one between the outer two follows them.</summary>
    public Length DepthAt(RowLeaf leaf, int hinge) => Between(leaf, leaf.Hinges[hinge], DepthBottom, DepthTop);

    private static Length Between(RowLeaf leaf, Length height, Length bottom, Length top) =>
        bottom + (top - bottom) * ((height - leaf.Hinges[0]) / leaf.Spread);
}
