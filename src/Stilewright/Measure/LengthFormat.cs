using System.Globalization;
using System.Numerics;
using Fractions;

namespace Stilewright.Measure;

/// <summary>How lengths are shown to a reader: unit and fineness. Halves of the finest step go away from zero.</summary>
public sealed record LengthFormat
{
    /// <summary>Stands before every figure that was rounded when it was printed.</summary>
    public const string RoundedMark = "≈";

    private const string MinusSign = "\u2212";
    private static readonly Length TenthOfMillimetre = Length.FromMillimetres(new Fraction(1, 10));

    private readonly Length step;

    /// <param name="unit">The reader's unit.</param>
    /// <param name="finestDenominator">The finest fraction of an inch shown: 8, 16, 32 or 64. Millimetres are shown to 0.1 mm whatever it is.</param>
    /// <exception cref="ArgumentOutOfRangeException">The unit or the denominator is none of those.</exception>
    public LengthFormat(LengthUnit unit, int finestDenominator = 32)
    {
        if (finestDenominator is not (8 or 16 or 32 or 64))
            throw new ArgumentOutOfRangeException(nameof(finestDenominator), finestDenominator, "The finest fraction of an inch is 8, 16, 32 or 64.");

        step = unit switch
        {
            LengthUnit.Inch => Length.FromInches(new Fraction(1, finestDenominator)),
            LengthUnit.Millimetre => TenthOfMillimetre,
            _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "The unit is inch or millimetre."),
        };
        Unit = unit;
        FinestDenominator = finestDenominator;
    }

    /// <summary>Inches down to 1/32 in.</summary>
    public static LengthFormat InchesTo32 { get; } = new(LengthUnit.Inch);

    /// <summary>Millimetres down to 0.1 mm.</summary>
    public static LengthFormat MillimetresToTenth { get; } = new(LengthUnit.Millimetre);

    public LengthUnit Unit { get; }

    /// <summary>The finest fraction of an inch shown: 8, 16, 32 or 64. Kept, unused, while millimetres are shown.</summary>
    public int FinestDenominator { get; }

    /// <summary>The finest length shown.</summary>
    public Length FinestStep => step;

    /// <summary>Whether this format shows the length without rounding it.</summary>
    public bool IsExact(Length length) => Rounded(length) == length;

    /// <summary>The length without its unit, such as <c>8 9/16</c>, <c>≈8 9/16</c> or <c>698.5</c>.</summary>
    public string Print(Length length)
    {
        var rounded = Rounded(length);
        var mark = rounded == length ? "" : RoundedMark;
        var sign = rounded.IsNegative ? MinusSign : "";
        var size = Length.Abs(rounded);
        return mark + sign + (Unit == LengthUnit.Inch ? MixedNumber(size.Inches) : OneDecimal(size.Millimetres));
    }

    /// <summary>The length with its unit, such as <c>8 9/16 in</c> or <c>698.5 mm</c>.</summary>
    public string PrintWithUnit(Length length) => Print(length) + (Unit == LengthUnit.Inch ? " in" : " mm");

    private Length Rounded(Length length) => length.OnStep(step, StepDirection.Nearest);

    private static string MixedNumber(Fraction value)
    {
        var lowest = value.Reduce();
        var whole = BigInteger.DivRem(lowest.Numerator, lowest.Denominator, out var rest);
        if (rest.IsZero)
            return whole.ToString(CultureInfo.InvariantCulture);

        // On the step the denominator is 64 at most; small integers print without being boxed.
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{(int)rest}/{(int)lowest.Denominator}");
        return whole.IsZero ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole.ToString(CultureInfo.InvariantCulture)} {fraction}");
    }

    private static string OneDecimal(Fraction value)
    {
        var whole = BigInteger.DivRem((value * 10).ToBigInteger(), 10, out var tenths);
        return tenths.IsZero
            ? whole.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{whole}.{tenths}");
    }
}
