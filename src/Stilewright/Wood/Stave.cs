using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>One board of a glue-up.</summary>
/// <param name="Number">From the left, as the face is seen; chalked on it beside an arrow along the grain.</param>
/// <param name="Rough">Width before its edges are jointed.</param>
/// <param name="Jointed">Width into the glue-up.</param>
/// <param name="BarkUp">Whether its bark side, where the rings bulge to, is on the face.</param>
/// <param name="Section">Which of the sections it belongs to, from 1.</param>
public sealed record Stave(int Number, Length Rough, Length Jointed, bool BarkUp, int Section);
