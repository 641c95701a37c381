using Stilewright.Doors;
using Stilewright.Drawing.Letters;
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
    private const string HandWords = "dashed lines meet at the hinge side";

    /// <summary>The leaf as it is seen from in front of the piece.</summary>
    public static Scene Front(SizedLeaf leaf, LeafDetail detail, Scale scale, LengthFormat format) =>
        new LeafDrawing(leaf, detail, scale, format, isBack: false).Draw();

    /// <summary>The leaf as it lies face down: left and right change places, moulding and raise are out of sight, rabbets and glass stops are not.</summary>
    public static Scene Back(SizedLeaf leaf, LeafDetail detail, Scale scale, LengthFormat format) =>
        new LeafDrawing(leaf, detail, scale, format, isBack: true).Draw();

    /// <summary>Says what the dashed lines of a front mean.</summary>
    public static Scene HandLegend()
    {
        const double Air = 0.5;
        var leaf = new PaperBox(Air, Air, 9, 12);
        PaperPoint apex = new(leaf.Left, leaf.Centre.Y);
        var words = Typesetter.Set(HandWords, TextStyle.Small);
        var text = Drafting.Centred(words, new(leaf.Right + 2 + words.Width / 2, leaf.Centre.Y));
        return new("Hand of a leaf", $"A leaf hinged on its left: {HandWords}.", text.Box.Right + Air, leaf.Bottom + Air,
        [
            new Shape(Outline.Through(false, new(leaf.Right, leaf.Top), apex, new(leaf.Right, leaf.Bottom)), LineStyle.Hand),
            new Shape(Outline.Box(leaf), LineStyle.Visible),
            text,
        ]);
    }
}
