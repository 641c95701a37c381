using System.Globalization;
using System.Numerics;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Tests.Measure;

/// <summary>Calculates a printed line of figures again, from its notation alone. A figure marked ≈ is a range.</summary>
internal sealed class PrintedLine
{
    // Irrational roots are calculated in floating point; this covers their error many times over.
    private static readonly Fraction RootError = new(1, 1_000_000);

    private readonly string text;
    private readonly LengthFormat format;
    private int position;

    private PrintedLine(string text, LengthFormat format) => (this.text, this.format) = (text, format);

    /// <summary>All values that a printed expression can stand for; one where nothing was rounded.</summary>
    public readonly record struct Range(Fraction Least, Fraction Greatest)
    {
        public static Range operator +(Range left, Range right) => new(left.Least + right.Least, left.Greatest + right.Greatest);
        public static Range operator -(Range left, Range right) => new(left.Least - right.Greatest, left.Greatest - right.Least);
        public static Range operator *(Range left, Range right) => Over(left, right, (a, b) => a * b);
        public static Range operator /(Range left, Range right) => right.Least.IsPositive || right.Greatest.IsNegative
            ? Over(left, right, (a, b) => a / b) : throw new DivideByZeroException();

        private static Range Over(Range left, Range right, Func<Fraction, Fraction, Fraction> of)
        {
            Fraction[] ends = [of(left.Least, right.Least), of(left.Least, right.Greatest), of(left.Greatest, right.Least), of(left.Greatest, right.Greatest)];
            return new(ends.Min(), ends.Max());
        }
    }

    public static Range Evaluate(string expression, LengthFormat format)
    {
        var line = new PrintedLine(expression, format);
        var value = line.Phrase();
        return line.position == expression.Length ? value
            : throw new FormatException($"'{expression}' is not understood from '{expression[line.position..]}' on.");
    }

    /// <summary>Fails unless the left side comes to the printed right side: exactly, or within the rounding that ≈ admits.</summary>
    public static void AssertHolds(string line, LengthFormat format)
    {
        var sides = line.Split(" = ");
        var left = Evaluate(sides[0], format);
        if (sides.Length == 1)
            return;
        Assert.Equal(2, sides.Length);
        var right = Evaluate(sides[1], format);
        if (line.Contains('≈', StringComparison.Ordinal))
            Assert.True(left.Least <= right.Greatest + RootError && right.Least <= left.Greatest + RootError, $"{line} ({format.Unit})");
        else
            Assert.True(left.Least == right.Least && left.Greatest == right.Least, $"{line} ({format.Unit})");
    }

    private bool Take(string token)
    {
        if (string.CompareOrdinal(text, position, token, 0, token.Length) != 0)
            return false;
        position += token.Length;
        return true;
    }

    private Range Closed(Range value) => Take(")") ? value : throw new FormatException($"'{text}' lacks ) at {position}.");

    private Range Phrase()
    {
        var value = Sum();
        if (Take(", down to a whole "))
            return OnStep(value, Power(), Floor);
        if (Take(", up to a whole "))
            return OnStep(value, Power(), each => -Floor(-each));
        return Take(", to the nearest ")
            ? OnStep(value, Power(), each => each.IsNegative ? -Floor(-each + new Fraction(1, 2)) : Floor(each + new Fraction(1, 2))) : value;
    }

    private static Range OnStep(Range value, Range step, Func<Fraction, Fraction> round) => step.Least == step.Greatest
        ? new(round(value.Least / step.Least) * step.Least, round(value.Greatest / step.Least) * step.Least)
        : new(value.Least - step.Greatest, value.Greatest + step.Greatest);

    private static Fraction Floor(Fraction value)
    {
        var lowest = value.Reduce();
        var whole = BigInteger.DivRem(lowest.Numerator, lowest.Denominator, out var rest);
        return rest.Sign < 0 ? whole - 1 : whole;
    }

    private Range Sum()
    {
        var value = Product();
        while (true)
        {
            if (Take(" + "))
                value += Product();
            else if (Take(" − "))
                value -= Product();
            else
                return value;
        }
    }

    private Range Product()
    {
        var value = Power();
        while (true)
        {
            if (Take(" × "))
                value *= Power();
            else if (Take(" ÷ "))
                value /= Power();
            else
                return value;
        }
    }

    private Range Power()
    {
        var value = Primary();
        return Take("²") ? value * value : value;
    }

    private Range Primary()
    {
        if (Take("("))
            return Closed(Phrase());
        if (Take("√("))
            return Root(Closed(Phrase()));
        if (Take("the least of ("))
            return Closed(Listed((one, other) => new(Least(one.Least, other.Least), Least(one.Greatest, other.Greatest))));
        if (Take("the greatest of ("))
            return Closed(Listed((one, other) => new(Greatest(one.Least, other.Least), Greatest(one.Greatest, other.Greatest))));
        return Figure();

        static Fraction Least(Fraction one, Fraction other) => one < other ? one : other;
        static Fraction Greatest(Fraction one, Fraction other) => one > other ? one : other;
    }

    private Range Listed(Func<Range, Range, Range> gather)
    {
        var value = Sum();
        while (Take(", "))
            value = gather(value, Sum());
        return value;
    }

    private static Range Root(Range square)
    {
        if (square.Least == square.Greatest)
        {
            var lowest = square.Least.Reduce();
            var (top, bottom) = (WholeRoot(lowest.Numerator), WholeRoot(lowest.Denominator));
            if (top * top == lowest.Numerator && bottom * bottom == lowest.Denominator)
                return new(new(top, bottom), new(top, bottom));
        }

        var error = Fraction.FromDecimal(0.000_000_001m);
        var least = square.Least.IsNegative ? Fraction.Zero : Fraction.FromDouble(Math.Sqrt(square.Least.ToDouble())) - error;
        return new(least, Fraction.FromDouble(Math.Sqrt(square.Greatest.ToDouble())) + error);
    }

    private static BigInteger WholeRoot(BigInteger square)
    {
        var root = new BigInteger(Math.Sqrt((double)square));
        while (root * root > square)
            root--;
        while ((root + 1) * (root + 1) <= square)
            root++;
        return root;
    }

    private Range Figure()
    {
        var rounded = Take("≈");
        var negative = Take("−");
        var value = Digits();
        var half = format.Unit == LengthUnit.Millimetre ? new Fraction(1, 20) : new Fraction(1, 2 * format.FinestDenominator);
        if (Take("/"))
        {
            value /= Digits();
        }
        else if (Take("."))
        {
            var start = position;
            value += Digits() / Fraction.Pow(10, position - start);
            if (format.Unit == LengthUnit.Inch)
                half = new Fraction(1, 20_000);
        }
        else if (position + 1 < text.Length && text[position] == ' ' && char.IsAsciiDigit(text[position + 1]))
        {
            position++;
            var over = Digits();
            value += Take("/") ? over / Digits() : throw new FormatException($"'{text}' has two figures side by side at {position}.");
        }

        value = negative ? -value : value;
        return rounded ? new(value - half, value + half) : new(value, value);
    }

    private Fraction Digits()
    {
        var start = position;
        while (position < text.Length && char.IsAsciiDigit(text[position]))
            position++;
        return position > start ? BigInteger.Parse(text.AsSpan(start, position - start), NumberStyles.None, CultureInfo.InvariantCulture)
            : throw new FormatException($"'{text}' lacks a figure at {position}.");
    }
}
