using Stilewright.Drawing.Scenes;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Drawings;

/// <summary>A field that stands on a drawing in the place of a dimension's figure.</summary>
/// <param name="Mark">The dimension.</param>
/// <param name="X">Middle of the figure, as a share of the drawing's width.</param>
/// <param name="Y">Middle of the figure, as a share of its height.</param>
public sealed record DrawnEntry(DimensionMark Mark, double X, double Y, LengthField Field);
