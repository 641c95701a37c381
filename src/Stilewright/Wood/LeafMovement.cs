using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Wood;

/// <summary>How a leaf itself changes size over the year: a framed one by its stiles, a slab by its whole width across the grain.</summary>
/// <param name="IsSideways">Whether the leaf's width changes; else its height.</param>
/// <param name="Growth">From making to the wettest.</param>
/// <param name="Shrinkage">From making to the driest.</param>
/// <remarks>Stiles are taken as flatsawn, which overestimates them where they are not. A framed leaf keeps its height: its stiles run through.</remarks>
public sealed record LeafMovement(SizedLeaf Leaf, bool IsSlab, bool IsSideways, Worked Growth, Worked Shrinkage)
{
    /// <summary>Null where the leaf has no parts, or nothing is known of its wood.</summary>
    public static LeafMovement? Of(SizedLeaf leaf)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        if (leaf.Design is not { } design || leaf.Parts.Count == 0)
            return null;
        if (leaf.Parts is [{ Kind: PartKind.Slab } slab])
        {
            return PanelWood.Of(leaf.Standard, slab.Material) is not { } wood ? null
                : Made(leaf, true, slab.Grain == GrainDirection.Vertical, slab.Finished.Width, wood);
        }

        if (PanelWood.Of(leaf.Standard, design.Species, RingOrientation.Flat) is not { } frame)
            return null;
        List<Worked> stiles = [.. leaf.Parts.Where(part => part.Kind == PartKind.Stile).Select(part => part.Finished.Width)];
        // Of the row that is divided most.
        var row = leaf.Parts.Where(part => part.Kind == PartKind.MidStile).GroupBy(part => part.VisibleBounds.Y).MaxBy(each => each.Count());
        stiles.AddRange(row?.Select(part => part.Finished.Width) ?? []);
        return Made(leaf, false, true, Worked.Total(stiles).As("stiles together", "leaf/stiles"), frame);
    }

    /// <summary>How much of the growth shows at one side: all of it at the pull, none by the hinges, half where neither holds it.</summary>
    public Worked? GrowthAt(Side side) => At(side, Growth);

    /// <summary>How much of the shrinkage shows at one side.</summary>
    public Worked? ShrinkageAt(Side side) => At(side, Shrinkage);

    private Worked? At(Side side, Worked change)
    {
        if (side is Side.Left or Side.Right != IsSideways)
            return null;
        var held = !IsSideways ? null : Leaf.Hinge switch { HingeSide.Left => Side.Left, HingeSide.Right => Side.Right, _ => (Side?)null };
        return held is null ? change / 2 : held == side ? null : change;
    }

    private static LeafMovement Made(SizedLeaf leaf, bool isSlab, bool isSideways, Worked width, PanelWood wood) => new(
        leaf, isSlab, isSideways, (width * wood.Swelling).As("growth of the leaf by the wettest", "leaf/growth"), (width * wood.Shrinking).As("shrinkage of the leaf by the driest", "leaf/shrinkage"));
}
