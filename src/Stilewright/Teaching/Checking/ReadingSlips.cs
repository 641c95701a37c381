using System.Globalization;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>What a length becomes by a slip of reading a tape or of writing a figure down.</summary>
/// <remarks>
/// Fractions are taken for others of like numerator or for the next mark, and a fraction's two numbers are written as decimals, as
/// learners do who see numerator and denominator as two whole numbers (both cited from memory): Y. Ni, Y.-D. Zhou, "Teaching and Learning Fraction and
/// Rational Numbers: The Origins and Implications of Whole Number Bias", Educational Psychologist 40 (2005); R. S. Siegler, C. A. Thompson,
/// M. Schneider, "An integrated theory of whole number and fractions development", Cognitive Psychology 62 (2011). A tape read from
/// its first inch or centimetre, transposed digits and exchanged units: common practice, no source.
/// </remarks>
internal static class ReadingSlips
{
    private const double MillimetresPerInch = 25.4;

    public readonly record struct Variant(SlipKind Kind, double Value, double Cost);

    /// <summary>The wrong values of a length, in inches.</summary>
    public static IReadOnlyList<Variant> Of(double inches, LengthUnit unit)
    {
        if (inches <= 0 || double.IsNaN(inches))
            return [];
        List<Variant> variants = [];
        if (unit == LengthUnit.Inch)
            Inch(inches, variants);
        else
            Millimetre(inches, variants);
        variants.RemoveAll(variant => variant.Value <= 0 || Math.Abs(variant.Value - inches) < 1e-9);
        return variants;
    }

    private static void Inch(double inches, List<Variant> variants)
    {
        if (inches > 2)
        {
            variants.Add(new(SlipKind.TapeFromOne, inches - 1, SlipCosts.TapeFromFirstInch));
            variants.Add(new(SlipKind.TapeFromOne, inches + 1, SlipCosts.TapeFromFirstInchAdded));
        }

        variants.Add(new(SlipKind.UnitExchanged, inches * MillimetresPerInch, SlipCosts.UnitExchanged(LengthUnit.Inch)));
        variants.Add(new(SlipKind.UnitExchanged, inches / MillimetresPerInch, SlipCosts.UnitExchanged(LengthUnit.Inch)));

        const int finest = 64;
        var marks = (long)Math.Round(inches * finest);
        if (Math.Abs(inches * finest - marks) > 1e-6)
            return;
        var (whole, rest) = (marks / finest, (int)(marks % finest));
        foreach (var swapped in Transposed(whole))
            variants.Add(new(SlipKind.DigitsTransposed, swapped + rest / (double)finest, SlipCosts.DigitsTransposed(LengthUnit.Inch)));
        if (rest == 0)
            return;
        var fraction = new Fraction(rest, finest).Reduce();
        var (n, d) = ((int)fraction.Numerator, (int)fraction.Denominator);
        if (whole > 0)
            variants.Add(new(SlipKind.FractionDropped, whole, SlipCosts.FractionDropped));
        // 8 3/4 keyed or written as 8.34, 8.3 or 8.4.
        variants.Add(new(SlipKind.FractionAsDecimal, whole + Digits($"{n}{d}"), SlipCosts.FractionAsDecimal));
        variants.Add(new(SlipKind.FractionAsDecimal, whole + Digits($"{n}"), SlipCosts.NumeratorAsDecimal));
        foreach (var other in Near(n, d))
            variants.Add(new(SlipKind.FractionMisread, whole + other, SlipCosts.FractionMisread));
    }

    // The same numerator over the next denominators, and the marks beside it.
    private static IEnumerable<double> Near(int n, int d)
    {
        List<double> near = [];
        foreach (var other in (int[])[d * 2, d / 2])
        {
            if (other is > 1 and <= 32 && n < other)
                near.Add((double)n / other);
        }

        if (d <= 8)
            near.AddRange([(double)n / d + 0.25, (double)n / d - 0.25]);
        if (d <= 16)
            near.AddRange([(double)n / d + 0.125, (double)n / d - 0.125]);
        near.AddRange([(double)n / d + 0.0625, (double)n / d - 0.0625]);
        return near.Where(value => value is >= 0 and <= 1).Distinct();
    }

    private static void Millimetre(double inches, List<Variant> variants)
    {
        var millimetres = inches * MillimetresPerInch;
        void Add(SlipKind kind, double value, double cost) => variants.Add(new(kind, value / MillimetresPerInch, cost));
        if (millimetres > 30)
        {
            Add(SlipKind.TapeFromOne, millimetres - 10, SlipCosts.TapeFromFirstCentimetre);
            Add(SlipKind.TapeFromOne, millimetres + 10, SlipCosts.TapeFromFirstCentimetre);
        }

        if (millimetres > 200)
        {
            Add(SlipKind.TapeFromOne, millimetres - 100, SlipCosts.TapeFromFirstDecimetre);
            Add(SlipKind.TapeFromOne, millimetres + 100, SlipCosts.TapeFromFirstDecimetre);
        }

        Add(SlipKind.UnitExchanged, millimetres * MillimetresPerInch, SlipCosts.UnitExchanged(LengthUnit.Millimetre));
        Add(SlipKind.UnitExchanged, millimetres / MillimetresPerInch, SlipCosts.UnitExchanged(LengthUnit.Millimetre));
        // Centimetres read as millimetres, or the other way round.
        Add(SlipKind.UnitExchanged, millimetres * 10, SlipCosts.UnitExchanged(LengthUnit.Millimetre));
        Add(SlipKind.UnitExchanged, millimetres / 10, SlipCosts.UnitExchanged(LengthUnit.Millimetre));
        var whole = (long)Math.Floor(millimetres + 1e-6);
        foreach (var swapped in Transposed(whole))
            Add(SlipKind.DigitsTransposed, swapped + (millimetres - whole), SlipCosts.DigitsTransposed(LengthUnit.Millimetre));
        if (millimetres - whole > 1e-6)
            Add(SlipKind.FractionDropped, whole, SlipCosts.FractionDropped);
    }

    private static double Digits(string digits) => double.Parse($"0.{digits}", CultureInfo.InvariantCulture);

    /// <summary>The number with two neighbouring digits exchanged, every way that gives another number of as many digits.</summary>
    private static IEnumerable<long> Transposed(long whole)
    {
        var digits = whole.ToString(CultureInfo.InvariantCulture);
        for (var i = 0; i + 1 < digits.Length; i++)
        {
            if (digits[i] == digits[i + 1] || i == 0 && digits[1] == '0')
                continue;
            var swapped = digits.ToCharArray();
            (swapped[i], swapped[i + 1]) = (swapped[i + 1], swapped[i]);
            yield return long.Parse(swapped, CultureInfo.InvariantCulture);
        }
    }
}
