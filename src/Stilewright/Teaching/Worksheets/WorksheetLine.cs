using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>One step of a worksheet.</summary>
/// <param name="Letter">Names the line on the sheet and in the drawing; empty for a line that only says what follows without arithmetic.</param>
/// <param name="Label">What is found, such as "rail length".</param>
/// <param name="Formula">In words: <c>leaf width − 2 × stile width + 2 × cope length</c>.</param>
/// <param name="Arithmetic">In figures, with the result, for the key.</param>
/// <param name="Reasons">Why a quantity was taken among others.</param>
/// <param name="Pieces">The line as it is printed with its blanks; empty where nothing is to be filled in.</param>
public sealed record WorksheetLine(
    string Letter, string Label, string Formula, string Arithmetic, IReadOnlyList<string> Reasons, IReadOnlyList<LinePiece> Pieces)
{
    /// <summary>The step; where several parts have it alike, the first of them.</summary>
    public required Named Quantity { get; init; }

    /// <summary>All steps that this line stands for: the same words and figures for several parts are asked once.</summary>
    public required IReadOnlyList<Named> Quantities { get; init; }

    /// <summary>The expression that the line shows.</summary>
    public required Worked Expression { get; init; }

    /// <summary>Every blank once, figures before the result.</summary>
    public IReadOnlyList<Blank> Blanks => [.. Pieces.OfType<LinePiece.ToFill>().Select(piece => piece.Blank).Distinct()];

    /// <summary>Whether the figures of the line earn a method mark besides the answer mark of its result.</summary>
    public bool HasMethodMark => Blanks.Any(blank => !blank.IsResult);

    public int Marks => Blanks.Count == 0 ? 0 : HasMethodMark ? 2 : 1;
}
