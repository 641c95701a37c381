using System.Globalization;
using Fractions;

namespace Stilewright.Measure;

/// <summary>Reads numbers that are no lengths: <c>0.00369</c>, <c>8 %</c>, <c>8,5</c>, <c>70 F</c>, <c>21 °C</c>.</summary>
public static class NumberReader
{
    /// <summary>The longest text read, in characters.</summary>
    public const int MostCharacters = 40;

    /// <param name="unit">The unit of lengths in the same document, which says what a temperature without F or C is.</param>
    public static ParseResult<Fraction> Read(string text, NumberKind kind, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MostCharacters)
            return new ParseResult<Fraction>.Failed(text, MostCharacters, $"write it in at most {MostCharacters} characters");
        var end = text.Length;
        while (end > 0 && char.IsWhiteSpace(text[end - 1]))
            end--;
        var isCelsius = unit == LengthUnit.Millimetre;
        if (kind == NumberKind.Percent && end > 0 && text[end - 1] == '%')
        {
            end--;
        }
        else if (kind == NumberKind.Temperature && end > 0 && text[end - 1] is 'F' or 'f' or 'C' or 'c')
        {
            isCelsius = text[end - 1] is 'C' or 'c';
            end--;
            if (end > 0 && text[end - 1] == '°')
                end--;
        }

        var start = 0;
        while (start < end && char.IsWhiteSpace(text[start]))
            start++;
        while (end > start && char.IsWhiteSpace(text[end - 1]))
            end--;
        var isNegative = kind == NumberKind.Temperature && start < end && text[start] is '-' or '−';
        if (isNegative)
            start++;
        var (digits, marks) = (0, 0);
        for (var i = start; i < end; i++)
        {
            if (char.IsAsciiDigit(text[i]))
                digits++;
            else if (text[i] is '.' or ',' && marks == 0)
                marks++;
            else
                return new ParseResult<Fraction>.Failed(text, i, Expected(kind));
        }

        if (digits == 0)
            return new ParseResult<Fraction>.Failed(text, start, Expected(kind));
        var value = Fraction.FromString(text[start..end].Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        if (isNegative)
            value = -value;
        return new ParseResult<Fraction>.Parsed(kind == NumberKind.Temperature && isCelsius ? (value * new Fraction(9, 5)) + 32 : value);
    }

    /// <summary>Reads a number that the program wrote or has read before.</summary>
    /// <exception cref="FormatException">The text is no number: a programmer's mistake.</exception>
    public static Fraction ReadOwn(string text, NumberKind kind) => Read(text, kind, LengthUnit.Inch) switch
    {
        ParseResult<Fraction>.Parsed(var value) => value,
        ParseResult<Fraction>.Failed failed => throw new FormatException(failed.Message),
        _ => throw new InvalidOperationException(),
    };

    private static string Expected(NumberKind kind) => kind switch
    {
        NumberKind.Percent => "a percentage in digits, such as 8 % or 7.5",
        NumberKind.Temperature => "a temperature in digits, such as 70 F or 21 C",
        _ => "a number in digits, such as 0.00369",
    };
}
