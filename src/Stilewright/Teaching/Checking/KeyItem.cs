using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>One thing whose size a list may state: a part, a leaf or the front of an opening.</summary>
/// <param name="Path">Its path, such as <c>hall-lower/leaf.left/rail.top</c>.</param>
/// <param name="Label">What is chalked on it, or the front's label.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Leaf">The label of the leaf or front it belongs to.</param>
/// <param name="Kind">What words may mean it.</param>
/// <param name="Width">The right size across the grain; of a leaf, front, pane its width.</param>
/// <param name="Length">The right size along the grain; of a leaf, front, pane its height.</param>
/// <param name="Part">Null for a leaf or front.</param>
public sealed record KeyItem(
    string Path, string Label, string Name, string Leaf, ItemKind Kind, Worked Width, Worked Length, Part? Part)
{
    /// <summary>Whether a list that leaves it out is incomplete: a cut list must have every part, but need not repeat leaf and front.</summary>
    public bool MustBeListed => Part is not null;

    /// <summary>The right thickness at the stage of the list; null for glass, a leaf or a front.</summary>
    public Worked? Thickness { get; init; }

    /// <summary>Of a panel the width of the groove it stands in; null for anything else.</summary>
    public Worked? Groove { get; init; }

    /// <summary>The right figure of a measure; null where it has none.</summary>
    public Worked? Of(ListMeasure measure) => measure switch
    {
        ListMeasure.Width => Width,
        ListMeasure.Length => Length,
        _ => Thickness,
    };
}
