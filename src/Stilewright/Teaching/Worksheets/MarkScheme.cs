namespace Stilewright.Teaching.Worksheets;

/// <summary>How worksheets are marked, in words for the key.</summary>
/// <remarks>
/// Method marks (M), answer marks (A) and follow through (ft) are used as in the glossary of AQA's mark schemes for GCSE Mathematics
/// (8300): M for a right method, A for a right answer, ft for right working after a mistake in an earlier step. Two things differ, so
/// that one slip costs one mark: an answer rightly worked from figures wrongly put in earns its A, and M needs every figure of its line.
/// </remarks>
public static class MarkScheme
{
    /// <summary>Each a sentence.</summary>
    public static IReadOnlyList<string> Rules { get; } =
    [
        "M1: every figure of the line stands in its place. A figure carried over from an earlier line counts as that line has it, right or wrong.",
        "A1 ft: the result is right, or it is rightly worked from the figures that stand in the line (follow-through).",
        "So one slip costs one mark. Fractions may be written in any equal form; 8/16 is as good as 1/2.",
    ];

    /// <summary>The marks of one line, such as <c>M1 A1 ft</c>.</summary>
    public static string Of(WorksheetLine line) => line.Marks switch
    {
        0 => "",
        1 => "A1 ft",
        _ => "M1 A1 ft",
    };
}
