using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Teaching.IfCut;

namespace Stilewright.Drawing.Figures;

/// <summary>What would happen to a leaf that is cut as a wrong list says, drawn so that it can be seen.</summary>
/// <remarks>
/// The leaf is to scale. What is open, over or short is drawn larger, by a number that the drawing states and that brings it to 2 mm on
/// paper, and is hatched and dimensioned with its true figure. Where a panel stands wrongly in its groove, a section beside the leaf
/// shows the groove to a scale of its own. The drawing tells right sizes.
/// </remarks>
public static class IfCutFigure
{
    public static Scene Draw(Consequence consequence, LeafDetail detail, Scale scale, LengthFormat format) => new IfCutDrawing(consequence, detail, scale, format).Draw();

    /// <summary>The drawing at the largest standard scale at which it fits.</summary>
    public static FittedScene Draw(Consequence consequence, LeafDetail detail, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(consequence);
        return Fit.Largest(format.Unit, widthMillimetres, heightMillimetres, scale => Draw(consequence, detail, scale, format), (consequence.Leaf.Width.Length, consequence.Leaf.Height.Length));
    }
}
