using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

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
    /// <summary>What is assumed of a hinge whose sheet does not say: about 1/8 in each way. Common practice, no source.</summary>
    public static ScrewRange Usual { get; } = new(Length.FromInches(new(1, 8)), Length.FromInches(new(1, 8)));

    /// <summary>A leaf as it hangs by a hanging plan; null where it has fewer than two hinges, or lies on its side.</summary>
    public static RowLeaf? Of(HungLeaf hung)
    {
        ArgumentNullException.ThrowIfNull(hung);
        if (hung.Leaf.Hinge is not (HingeSide.Left or HingeSide.Right) || hung.Set.Places.Count < 2)
            return null;
        // A hinge's own sheet counts more overlay on the hinge side as plus, which is towards the hinges.
        var adjustment = hung.Hinge.Adjustment;
        return new(hung.Leaf.Label, hung.Leaf.Place, hung.Leaf.Hinge == HingeSide.Left, [.. hung.Set.Places.Select(place => place.FromStart.Length)],
            Range(adjustment?.Sideways, true), Range(adjustment?.Height, false), Range(adjustment?.Depth, false));

        ScrewRange Range(ScrewTravel? travel, bool turned) => adjustment is null ? Usual
            : travel is null ? ScrewRange.Fixed
            : new(turned ? travel.Plus.Value : travel.Minus.Value, turned ? travel.Minus.Value : travel.Plus.Value, travel.Pitch?.Value);
    }

    public Side HingeEdge => HingedLeft ? Side.Left : Side.Right;
    public Side FreeEdge => HingedLeft ? Side.Right : Side.Left;

    /// <summary>From the lowest hinge to the highest.</summary>
    public Length Spread => Hinges[^1] - Hinges[0];
}
