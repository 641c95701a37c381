using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Worksheets;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Web.Features.Worksheets;

/// <summary>The drawings of a worksheet for a page.</summary>
public static class SheetDrawings
{
    private const double WidthMillimetres = 95;
    private const double HeightMillimetres = 110;

    /// <summary>The front over its opening, then the leaf, each at the largest scale that fits half a sheet.</summary>
    public static IReadOnlyList<Scene> Of(Worksheet sheet) =>
    [
        Fit.Largest(sheet.Format.Unit, WidthMillimetres, HeightMillimetres, scale => WorksheetFigures.Front(sheet, scale)).Scene,
        Fit.Largest(sheet.Format.Unit, WidthMillimetres, HeightMillimetres, scale => WorksheetFigures.Leaf(sheet, scale)).Scene,
    ];
}
