using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Web.Drawings;

/// <summary>One leaf drawn for a page.</summary>
public static class LeafDrawings
{
    private const double WidthMillimetres = 170;
    private const double HeightMillimetres = 200;

    /// <returns>Null where there is nothing of the leaf to draw.</returns>
    public static Scene? Of(Breakdown breakdown, ProjectBreakdown project, SizedLeaf leaf, bool isBack, LengthFormat format)
    {
        if (leaf.Parts.Count == 0 || !leaf.Place.Width.IsPositive || !leaf.Place.Height.IsPositive)
            return null;
        var detail = LeafDetail.Of(breakdown.Course, project, leaf);
        return Fit.Largest(format.Unit, WidthMillimetres, HeightMillimetres,
            scale => isBack ? LeafFigure.Back(leaf, detail, scale, format) : LeafFigure.Front(leaf, detail, scale, format),
            (leaf.Place.Width, leaf.Place.Height)).Scene;
    }
}
