namespace Stilewright.Measure;

/// <summary>One named step of a working, ready to be read.</summary>
/// <param name="Quantity">The named quantity.</param>
/// <param name="Formula">The step in words: <c>leaf width − 2 × stile width + 2 × cope length</c>.</param>
/// <param name="Arithmetic">The step in figures, result included: <c>12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16</c>.</param>
/// <param name="Givens">What the step takes that was entered or looked up, each once.</param>
/// <param name="Reasons">Why a quantity was chosen among others, where one was.</param>
public sealed record WorkedStep(
    Named Quantity, string Formula, string Arithmetic, IReadOnlyList<Worked> Givens, IReadOnlyList<string> Reasons);
