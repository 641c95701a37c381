using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>One part face up on the bench: finished, as it goes into the clamps, and as a rough blank.</summary>
/// <remarks>
/// Members lie level, their top end to the right; so do panels much longer than wide. Blanks are drawn as outlines prior to
/// forming (ISO 128-2, line 05.1): the trim of outer members along their outer edge, all other allowances half on each side.
/// </remarks>
public static class PartFigure
{
    public static Scene Draw(Part part, LeafDetail detail, Scale scale, LengthFormat format) => new PartDrawing(part, detail, scale, format).Draw();
}
