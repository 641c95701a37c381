using Stilewright.Measure;

namespace Stilewright.Documents;

/// <summary>Lengths as they are written to files.</summary>
internal static class LengthText
{
    private static readonly LengthFormat Inches = new(LengthUnit.Inch, 64);
    private static readonly LengthFormat Millimetres = new(LengthUnit.Millimetre);

    /// <summary>The text as it was typed where it still reads as the value; otherwise the exact value with its unit.</summary>
    /// <remarks>They differ where a value was moved to a document whose bare numbers are in the other unit.</remarks>
    public static string Of(string? typed, Length value, LengthUnit unit) =>
        typed is not null && LengthReader.Read(typed, unit) is ParseResult<Length>.Parsed parsed && parsed.Value == value
            ? typed : Exact(value, unit);

    private static string Exact(Length value, LengthUnit unit)
    {
        var (first, second) = unit == LengthUnit.Inch ? (Inches, Millimetres) : (Millimetres, Inches);
        if (first.IsExact(value))
            return first.PrintWithUnit(value);
        if (second.IsExact(value))
            return second.PrintWithUnit(value);
        var inches = value.Inches.Reduce();
        return $"{inches.Numerator}/{inches.Denominator} in";
    }
}
