using Stilewright.Doors;

namespace Stilewright.Teaching.IfCut;

/// <summary>A part as it was cut, where it would lie in the leaf.</summary>
/// <remarks>Of a panel or pane the edges are its own, in the groove; of other parts those of the visible face.</remarks>
public sealed record LaidPart(Part Part, LaidEdge Left, LaidEdge Right, LaidEdge Bottom, LaidEdge Top)
{
    /// <summary>The part in its right size and place.</summary>
    public static LaidPart InPlace(Part part)
    {
        var box = part.Kind is PartKind.Panel or PartKind.Glass ? part.Outline : part.VisibleBounds;
        return new(part, new(box.X, default), new(box.Right, default), new(box.Y, default), new(box.Top, default));
    }
}
