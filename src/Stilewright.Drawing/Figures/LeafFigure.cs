using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>Views of one finished leaf at a scale, with its members, joints, panels, hand and sizes.</summary>
/// <remarks>
/// Arches are drawn true; rails and lights are dimensioned at the crown.
/// Parts bear the short end of their labels. A leaf whose parts are withheld shows its outline, hand and size alone.
/// </remarks>
public static class LeafFigure
{
    /// <summary>The leaf as it is seen from in front of the piece.</summary>
    /// <param name="change">Makes other rows of the dimensions, such as one with letters for figures; null to leave them.</param>
    public static Scene Front(SizedLeaf leaf, LeafDetail detail, Scale scale, LengthFormat format, Func<DimensionRow, DimensionRow>? change = null) =>
        new LeafDrawing(leaf, detail, scale, format, isBack: false).Draw(change);

    /// <summary>The leaf as it lies face down: left and right change places, moulding and raise are out of sight, rabbets and glass stops are not.</summary>
    public static Scene Back(SizedLeaf leaf, LeafDetail detail, Scale scale, LengthFormat format) =>
        new LeafDrawing(leaf, detail, scale, format, isBack: true).Draw();
}
