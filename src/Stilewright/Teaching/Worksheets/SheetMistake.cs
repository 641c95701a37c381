using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Worksheets;

/// <summary>Wrong blanks of a worksheet that one explanation accounts for.</summary>
/// <param name="Explanations">The likeliest first; empty where no slip that is known explains them.</param>
public sealed record SheetMistake(IReadOnlyList<MarkedBlank> Blanks, IReadOnlyList<Explanation> Explanations);
