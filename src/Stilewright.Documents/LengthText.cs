using System.Globalization;
using System.Numerics;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Documents;

/// <summary>Lengths as they are written to files.</summary>
internal static class LengthText
{
    /// <summary>The longest text that is read as an exact length; sums of entries of many digits are long, but not so long.</summary>
    public const int MostCharacters = 1000;

    private static readonly LengthFormat Inches = new(LengthUnit.Inch, 64);
    private static readonly LengthFormat Millimetres = new(LengthUnit.Millimetre);

    /// <summary>The text as it was typed where it still reads as the value; otherwise the exact value with its unit.</summary>
    /// <remarks>They differ where a value was moved to a document whose bare numbers are in the other unit.</remarks>
    public static string Of(string? typed, Length value, LengthUnit unit) =>
        typed is not null && LengthReader.Read(typed, unit) is ParseResult<Length>.Parsed parsed && parsed.Value == value
            ? typed : Exact(value, unit);

    /// <summary>An exact length as it is written here, or null when it is anything else.</summary>
    /// <remarks>What is worked out may be longer, and of more digits, than what a person may type.</remarks>
    public static Length? ReadExact(string text)
    {
        if (text.Length > MostCharacters)
            return null;
        return text.Split(' ') switch
        {
            [var whole, var part, "in"] when ReadWhole(whole) is { } units && ReadFraction(part) is { } rest => Length.FromInches(units + rest),
            [var one, "in"] when (ReadFraction(one) ?? ReadWhole(one)) is { } inches => Length.FromInches(inches),
            [var one, "mm"] when (ReadDecimal(one) ?? ReadWhole(one)) is { } millimetres => Length.FromMillimetres(millimetres),
            _ => null,
        };
    }

    private static Fraction? ReadWhole(string text) =>
        BigInteger.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? new Fraction(number) : null;

    private static Fraction? ReadFraction(string text) =>
        text.Split('/') is [var top, var bottom] && ReadWhole(top) is { } numerator && ReadWhole(bottom) is { IsZero: false } denominator
            ? (numerator / denominator).Reduce() : null;

    private static Fraction? ReadDecimal(string text) =>
        text.Split('.') is [var whole, [var tenth]] && ReadWhole(whole) is { } units && char.IsAsciiDigit(tenth)
            ? (units + new Fraction(tenth - '0', 10)).Reduce() : null;

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
