using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>A figure that a worksheet tells before its lines.</summary>
/// <param name="Label">What it is; where two have one name, with the lines it is for.</param>
public sealed record GivenFigure(string Label, Worked Quantity);
