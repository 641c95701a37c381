using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>One figure that a maker writes.</summary>
/// <param name="Id">Its address on the sheet: the letter of its line for the result, such as <c>c</c>, and <c>c1</c>, <c>c2</c> for figures put in their places.</param>
/// <param name="Label">What the figure is, such as "rail length".</param>
/// <param name="Quantity">The right figure, and how it is found.</param>
/// <param name="IsResult">False for a figure that is only put in its place.</param>
public sealed record Blank(string Id, string Label, Worked Quantity, bool IsResult);
