using System.Numerics;
using Fractions;

namespace Stilewright.Measure;

/// <summary>Reads lengths as people write them: <c>27 1/2</c>, <c>27½"</c>, <c>2' 3 1/2"</c>, <c>27,5</c>, <c>698 mm</c>.</summary>
/// <remarks>Only one reading of a text is ever accepted; a text that could be read two ways is refused with the fix.
/// A number after feet is in inches, with or without its unit. Nothing is rounded.</remarks>
public static partial class LengthReader
{
    /// <summary>The longest text read, in characters.</summary>
    public const int MostCharacters = 40;

    /// <summary>The longest length accepted, either way of zero: 120 in, well past any part that is cut in one piece.</summary>
    public static Length Limit { get; } = Length.FromInches(120);

    /// <summary>Reads <paramref name="text"/>; a bare number is in <paramref name="defaultUnit"/>. Never throws for a person's text.</summary>
    public static ParseResult<Length> Read(string text, LengthUnit defaultUnit, bool allowNegative = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new Scanner(text, defaultUnit, allowNegative).Read();
    }

    /// <summary>Reads a length that the program itself wrote.</summary>
    /// <exception cref="FormatException">The text is no length: a programmer's mistake.</exception>
    public static Length ReadOwn(string text, LengthUnit unit) => Read(text, unit) switch
    {
        ParseResult<Length>.Parsed parsed => parsed.Value,
        ParseResult<Length>.Failed failed => throw new FormatException(failed.Message),
        _ => throw new InvalidOperationException(),
    };

    private enum Unit
    {
        None,
        Inch,
        Foot,
        Millimetre,
        Centimetre,
        Metre,
    }

    /// <summary>A number as written. <c>FractionAt</c> is where its fraction starts, if it has one.</summary>
    private readonly record struct Figure(int Start, Fraction Value, bool IsDecimal, int? FractionAt)
    {
        public bool IsWhole => !IsDecimal && FractionAt is null;
    }

    /// <summary>One pass over one text. Each Try method moves past what it read, or sets the fault and returns false.</summary>
    private sealed class Scanner(string text, LengthUnit defaultUnit, bool allowNegative)
    {
        private const char PastEnd = '\0';
        private const char MinusSign = '\u2212';

        private int position;
        private ParseResult<Length>.Failed? fault;

        private bool AtEnd => position >= text.Length;
        private char Current => AtEnd ? PastEnd : text[position];
        private char Next => position + 1 < text.Length ? text[position + 1] : PastEnd;

        public ParseResult<Length> Read() => TryLength(out var length) ? new ParseResult<Length>.Parsed(length) : fault!;

        private bool TryLength(out Length length)
        {
            length = default;
            if (text.Length > MostCharacters)
                return Fail(MostCharacters, $"at most {MostCharacters} characters; write the length alone, such as 27 1/2 in or 698 mm");

            SkipSpaces();
            if (AtEnd)
                return Fail(0, "nothing is written here; write a length, such as 27 1/2 in or 698 mm");

            var start = position;
            var isNegative = Current is '-' or MinusSign;
            if (isNegative)
            {
                if (!allowNegative)
                    return Fail(position, "this length cannot be negative; leave out the minus sign");
                position++;
                SkipSpaces();
            }

            if (!TryFigure(out var figure))
                return false;
            var end = position;
            SkipSpaces();
            if (!TryUnit(out var unit) || !TryFractionSuitsUnit(figure, unit))
                return false;

            length = InUnit(figure.Value, unit);
            SkipSpaces();
            if (unit == Unit.Foot && !AtEnd)
            {
                if (!TryInchesAfterFeet(figure, out var inches))
                    return false;
                length += inches;
            }

            if (!AtEnd)
                return Fail(position, unit == Unit.None
                    ? "a unit or nothing more; the units are in, ft, mm, cm and m"
                    : "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"");
            if (length > Limit)
                return Fail(figure.Start, OverLimit(figure, unit, text[start..end]));

            length = isNegative ? -length : length;
            return true;
        }

        private string OverLimit(Figure figure, Unit unit, string asWritten) =>
            unit == Unit.None && defaultUnit == LengthUnit.Inch && figure.FractionAt is null
                && Length.FromMillimetres(figure.Value) <= Limit
                    ? $"over 120 in; did you mean {asWritten} mm?"
                    : "over 120 in (3048 mm); check the number and its unit";

        private bool TryFractionSuitsUnit(Figure figure, Unit unit) => (figure.FractionAt, unit, defaultUnit) switch
        {
            (null, _, _) => true,
            (int at, Unit.None, LengthUnit.Millimetre) => Fail(at, "millimetres are written with decimals; did you mean inches? Then add in"),
            (int at, Unit.Millimetre or Unit.Centimetre or Unit.Metre, _) => Fail(at, "metric lengths are written with decimals, such as 27.5 mm; for a fraction use inches"),
            _ => true,
        };

        private bool TryInchesAfterFeet(Figure feet, out Length inches)
        {
            inches = default;
            if (IsDash(Current))
            {
                // 2'-3 1/2" is how building plans write it; with a space about the dash it may be a subtraction.
                if (!IsJoiningDash(Current) || IsSpaceAt(position - 1) || IsSpaceAt(position + 1))
                    return FailAsAmbiguousDash();
                position++;
            }

            if (!StartsFigure(Current))
                return Fail(position, "inches or nothing more after the feet, as in 2' 3 1/2\"");
            if (!feet.IsWhole)
                return Fail(position, "no inches after feet that have a fraction of their own; write 2' 6\" or 2.5'");
            if (!TryFigure(out var figure))
                return false;
            SkipSpaces();
            var unitAt = position;
            if (!TryUnit(out var unit))
                return false;
            if (unit is not (Unit.Inch or Unit.None))
                return Fail(unitAt, "only inches can follow feet, as in 2' 3 1/2\"");
            if (figure.Value >= 12)
                return Fail(figure.Start, "less than 12 in after the feet; 2' 14\" is written 3' 2\"");

            SkipSpaces();
            inches = Length.FromInches(figure.Value);
            return true;
        }

        private bool TryFigure(out Figure figure)
        {
            figure = default;
            var start = position;
            if (Current is '≈' or '~')
                return Fail(position, "a rounded figure; enter the exact one");
            if (IsSlash(Current))
                return Fail(position, "a number before the slash, such as 11/16");
            if (!StartsFigure(Current))
                return Fail(position, "a number, such as 27 1/2 or 698");

            if (StartsSmallFraction(Current))
            {
                if (!TryFraction(out var fraction))
                    return false;
                figure = new Figure(start, fraction, IsDecimal: false, FractionAt: start);
            }
            else
            {
                var whole = ReadDigits();
                if (IsSlash(Current))
                {
                    position = start;
                    if (!TryFraction(out var fraction))
                        return false;
                    figure = new Figure(start, fraction, IsDecimal: false, FractionAt: start);
                }
                else if (IsDecimalMark(Current))
                {
                    if (!TryDecimals(start, whole, out var value))
                        return false;
                    figure = new Figure(start, value, IsDecimal: true, FractionAt: null);
                }
                else if (!TryFractionAfterWhole(start, whole, out figure))
                {
                    return false;
                }
            }

            return TryEndOfFigure(figure);
        }

        /// <summary>Refuses what looks like one more piece of the number.</summary>
        private bool TryEndOfFigure(Figure figure)
        {
            var ahead = position;
            while (IsSpaceAt(ahead))
                ahead++;
            var following = ahead < text.Length ? text[ahead] : PastEnd;
            if (IsSlash(following))
                return Fail(ahead, figure.IsWhole
                    ? "no space about the slash; write 11/16"
                    : "one slash, with a whole number on each side, such as 11/16");
            if (StartsFigure(following) || IsDash(following))
                return Fail(ahead, figure.IsDecimal
                    ? "only a unit after a decimal; write 27.5 or 27 1/2"
                    : "only a unit after the number, such as 27 1/2 in");
            return true;
        }

        private bool TryDecimals(int start, BigInteger whole, out Fraction value)
        {
            value = default;
            var markAt = position;
            var mark = Current;
            position++;
            var decimalsAt = position;
            var decimals = ReadDigits();
            var decimalCount = position - decimalsAt;
            if (decimalCount == 0)
                return Fail(markAt, mark == '.' ? "digits after the point, such as 27.5" : "digits after the comma, such as 27,5");
            if (IsDecimalMark(Current))
                return Fail(position, Current == mark
                    ? "one decimal mark only, and no mark between thousands"
                    : "a comma or a point, not both; write 1200.5");
            if (mark == ',' && decimalCount == 3 && markAt - start is >= 1 and <= 3 && text[start] != '0')
                return Fail(markAt, "a comma before three digits may mean thousands; write 1200 or 1.2");

            value = whole + new Fraction(decimals, BigInteger.Pow(10, decimalCount));
            return true;
        }

        private bool TryFractionAfterWhole(int start, BigInteger whole, out Figure figure)
        {
            figure = new Figure(start, whole, IsDecimal: false, FractionAt: null);
            var end = position;
            SkipSpaces();
            var isSpaced = position > end;
            var isDashed = IsDash(Current);
            if (isDashed)
            {
                if (isSpaced || !IsJoiningDash(Current) || IsSpaceAt(position + 1))
                    return FailAsAmbiguousDash();
                position++;
            }

            var fractionAt = position;
            if (char.IsAsciiDigit(Current))
            {
                ReadDigits();
                if (!IsSlash(Current))
                    return Fail(fractionAt, isDashed
                        ? "a fraction after the dash, such as 27-1/2"
                        : "no space inside a number; write 1200, or a fraction as in 27 1/2");
                position = fractionAt;
            }
            else if (!StartsSmallFraction(Current))
            {
                if (isDashed)
                    return Fail(position, "a fraction after the dash, such as 27-1/2");
                position = end;
                return true;
            }

            if (!TryFraction(out var fraction))
                return false;
            if (fraction >= 1)
                return Fail(fractionAt, "a fraction below 1 after a whole number, such as 27 1/2");
            figure = new Figure(start, whole + fraction, IsDecimal: false, FractionAt: fractionAt);
            return true;
        }

        /// <summary>Reads <c>11/16</c>, <c>⁹⁄₁₆</c> or <c>½</c>.</summary>
        private bool TryFraction(out Fraction value)
        {
            value = VulgarFraction(Current);
            if (!value.IsZero)
            {
                position++;
                return true;
            }

            var numerator = IsSuperscript(Current) ? ReadDigits(SuperscriptDigits) : ReadDigits();
            if (!IsSlash(Current))
                return Fail(position, "a slash and the number below it, such as ⁹⁄₁₆ or 9/16");
            position++;
            if (IsSlash(Current))
                return Fail(position, "one slash only, such as 11/16");
            if (IsSpaceAt(position))
                return Fail(position, "no space about the slash; write 11/16");

            var denominatorAt = position;
            var denominator = SubscriptDigits.Contains(Current, StringComparison.Ordinal) ? ReadDigits(SubscriptDigits) : ReadDigits();
            if (position == denominatorAt)
                return Fail(position, "a whole number after the slash, such as 11/16");
            if (denominator.IsZero)
                return Fail(denominatorAt, "a number other than zero below the slash");
            if (IsSlash(Current))
                return Fail(position, "one slash only, such as 11/16");
            if (IsDecimalMark(Current))
                return Fail(position, "whole numbers above and below the slash, such as 11/16");

            value = new Fraction(numerator, denominator);
            return true;
        }

        private bool TryUnit(out Unit unit)
        {
            unit = Unit.None;
            if (IsFootMark(Current))
            {
                unit = IsFootMark(Next) ? Unit.Inch : Unit.Foot;
                position += unit == Unit.Inch ? 2 : 1;
                return true;
            }

            if (IsInchMark(Current))
            {
                unit = Unit.Inch;
                position++;
                return true;
            }

            if (!char.IsLetter(Current))
                return true;

            var start = position;
            while (char.IsLetter(Current))
                position++;
            var word = text[start..position];
            if (word is "e" or "E" && (char.IsAsciiDigit(Current) || Current is '+' or '-' or MinusSign))
                return Fail(start, "a plain number without an exponent");
            unit = NamedUnit(word);
            if (unit == Unit.None)
                return Fail(start, "this is not a unit of length; the units are in, ft, mm, cm and m");
            if (Current == '.')
                position++;
            return true;
        }

        private Length InUnit(Fraction value, Unit unit) => unit switch
        {
            Unit.Inch => Length.FromInches(value),
            Unit.Foot => Length.FromInches(value * 12),
            Unit.Millimetre => Length.FromMillimetres(value),
            Unit.Centimetre => Length.FromMillimetres(value * 10),
            Unit.Metre => Length.FromMillimetres(value * 1000),
            _ => defaultUnit == LengthUnit.Inch ? Length.FromInches(value) : Length.FromMillimetres(value),
        };

        private BigInteger ReadDigits(string digits = "0123456789")
        {
            var value = BigInteger.Zero;
            for (; !AtEnd && digits.IndexOf(Current, StringComparison.Ordinal) is >= 0 and var digit; position++)
                value = value * 10 + digit;
            return value;
        }

        private void SkipSpaces()
        {
            while (IsSpaceAt(position))
                position++;
        }

        private bool IsSpaceAt(int index) => index >= 0 && index < text.Length && char.IsWhiteSpace(text[index]);

        private bool FailAsAmbiguousDash() =>
            Fail(position, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction");

        private bool Fail(int at, string expected)
        {
            fault = new ParseResult<Length>.Failed(text, at, expected);
            return false;
        }
    }
}
