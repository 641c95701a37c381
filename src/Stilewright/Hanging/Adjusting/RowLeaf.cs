using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>A hinged leaf as it hangs on its plates, seen from the front.</summary>
/// <param name="Label">What readings call it, such as <c>7·2L</c>.</param>
/// <param name="Place">Where it should hang, from the bottom left of the row.</param>
/// <param name="HingedLeft">Whether its hinges are on its left edge; on its right edge else.</param>
/// <param name="Hinges">Centres of the hinges above the bottom of the leaf, from the bottom; two at least.</param>
/// <param name="Sideways">The screw that carries the leaf away from its hinge side (more) or towards it (less), at each hinge.</param>
/// <param name="Height">The screw that lifts (more) or lowers (less); all hinges of a leaf are set alike.</param>
/// <param name="Depth">The screw that carries the hinge edge out (more) or in (less), at each hinge.</param>
public sealed record RowLeaf(string Label, Rectangle Place, bool HingedLeft, IReadOnlyList<Length> Hinges, ScrewRange Sideways, ScrewRange Height, ScrewRange Depth)
{
    public Side HingeEdge => HingedLeft ? Side.Left : Side.Right;
    public Side FreeEdge => HingedLeft ? Side.Right : Side.Left;

    /// <summary>From the lowest hinge to the highest.</summary>
    public Length Spread => Hinges[^1] - Hinges[0];
}
