namespace Stilewright.Measure;

/// <summary>How lengths are shown to a reader: unit and fineness.</summary>
/// <param name="Unit">The reader's unit.</param>
/// <param name="FinestDenominator">For inches, the finest fraction shown: 8, 16, 32 or 64. Millimetres are shown to 0.1 mm.</param>
public sealed record LengthFormat(LengthUnit Unit, int FinestDenominator = 32)
{
    /// <summary>Stands before every figure that was rounded when it was printed.</summary>
    public const string RoundedMark = "≈";

    /// <summary>The length without its unit, such as <c>8 9/16</c>, <c>≈8 9/16</c> or <c>698.5</c>.</summary>
    public string Print(Length length) => throw new NotSupportedException(length.ToString());

    /// <summary>The length with its unit, such as <c>8 9/16 in</c> or <c>698.5 mm</c>.</summary>
    public string PrintWithUnit(Length length) => throw new NotSupportedException(length.ToString());

    /// <summary>Whether the figure shows the length without rounding.</summary>
    public bool IsExact(Length length) => throw new NotSupportedException(length.ToString());
}
