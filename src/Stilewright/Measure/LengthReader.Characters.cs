using Fractions;

namespace Stilewright.Measure;

/// <content>The characters and unit names people use.</content>
public static partial class LengthReader
{
    private const string SuperscriptDigits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string SubscriptDigits = "₀₁₂₃₄₅₆₇₈₉";

    private static bool IsSuperscript(char character) => SuperscriptDigits.Contains(character, StringComparison.Ordinal);

    private static bool StartsSmallFraction(char character) => IsSuperscript(character) || !VulgarFraction(character).IsZero;

    private static bool StartsFigure(char character) =>
        char.IsAsciiDigit(character) || IsDecimalMark(character) || StartsSmallFraction(character);

    private static bool IsDecimalMark(char character) => character is '.' or ',';

    /// <summary>Solidus, fraction slash and division slash.</summary>
    private static bool IsSlash(char character) => character is '/' or '\u2044' or '\u2215';

    /// <summary>Hyphens and the en dash, which people put between a whole number and its fraction.</summary>
    private static bool IsJoiningDash(char character) => character is '-' or '\u2010' or '\u2011' or '\u2013';

    /// <summary>Joining dashes, and the em dash and minus sign, which join nothing.</summary>
    private static bool IsDash(char character) => IsJoiningDash(character) || character is '\u2014' or '\u2212';

    /// <summary>Apostrophe, prime and closing single quote.</summary>
    private static bool IsFootMark(char character) => character is '\'' or '\u2032' or '\u2019';

    /// <summary>Quotation mark, double prime and closing double quote.</summary>
    private static bool IsInchMark(char character) => character is '"' or '\u2033' or '\u201D';

    private static Unit NamedUnit(string word) => word.ToUpperInvariant() switch
    {
        "IN" or "INCH" or "INCHES" => Unit.Inch,
        "FT" or "FOOT" or "FEET" => Unit.Foot,
        "MM" or "MILLIMETRE" or "MILLIMETRES" or "MILLIMETER" or "MILLIMETERS" => Unit.Millimetre,
        "CM" or "CENTIMETRE" or "CENTIMETRES" or "CENTIMETER" or "CENTIMETERS" => Unit.Centimetre,
        "M" or "METRE" or "METRES" or "METER" or "METERS" => Unit.Metre,
        _ => Unit.None,
    };

    /// <summary>The value of a one-character fraction; zero for any other character.</summary>
    private static Fraction VulgarFraction(char character) => character switch
    {
        '½' => new(1, 2),
        '⅓' => new(1, 3),
        '⅔' => new(2, 3),
        '¼' => new(1, 4),
        '¾' => new(3, 4),
        '⅕' => new(1, 5),
        '⅖' => new(2, 5),
        '⅗' => new(3, 5),
        '⅘' => new(4, 5),
        '⅙' => new(1, 6),
        '⅚' => new(5, 6),
        '⅐' => new(1, 7),
        '⅛' => new(1, 8),
        '⅜' => new(3, 8),
        '⅝' => new(5, 8),
        '⅞' => new(7, 8),
        '⅑' => new(1, 9),
        '⅒' => new(1, 10),
        _ => Fraction.Zero,
    };
}
