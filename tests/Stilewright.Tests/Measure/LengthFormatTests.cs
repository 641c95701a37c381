using System.Globalization;
using CsCheck;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Tests.Measure;

public class LengthFormatTests
{
    private static readonly Gen<int> Finest = Gen.Int[3, 6].Select(power => 1 << power);

    [Theory]
    [InlineData(137, 16, "8 9/16")]
    [InlineData(3, 4, "3/4")]
    [InlineData(0, 1, "0")]
    [InlineData(12, 1, "12")]
    [InlineData(-1, 8, "−1/8")]
    [InlineData(-9, 8, "−1 1/8")]
    [InlineData(1, 3, "≈11/32")]
    [InlineData(-1, 9, "≈−1/8")]
    [InlineData(1, 64, "≈1/32")]
    [InlineData(-1, 64, "≈−1/32")]
    [InlineData(1, 65, "≈0")]
    [InlineData(-1, 65, "≈0")]
    [InlineData(511, 512, "≈1")]
    public void Inches_are_mixed_numbers_in_lowest_terms(int numerator, int denominator, string printed) =>
        Assert.Equal(printed, LengthFormat.InchesTo32.Print(Length.FromInches(new Fraction(numerator, denominator))));

    [Theory]
    [InlineData(6985, 10, "698.5")]
    [InlineData(12, 1, "12")]
    [InlineData(0, 1, "0")]
    [InlineData(1, 10, "0.1")]
    [InlineData(-1, 10, "−0.1")]
    [InlineData(1, 20, "≈0.1")]
    [InlineData(-1, 20, "≈−0.1")]
    [InlineData(1, 21, "≈0")]
    [InlineData(1999, 100, "≈20")]
    [InlineData(12_345, 10, "1234.5")]
    public void Millimetres_have_at_most_one_decimal(int numerator, int denominator, string printed) =>
        Assert.Equal(printed, LengthFormat.MillimetresToTenth.Print(Length.FromMillimetres(new Fraction(numerator, denominator))));

    [Fact]
    public void The_unit_follows_the_figure()
    {
        var length = Length.FromInches(new Fraction(55, 2));
        Assert.Equal("27 1/2 in", LengthFormat.InchesTo32.PrintWithUnit(length));
        Assert.Equal("698.5 mm", LengthFormat.MillimetresToTenth.PrintWithUnit(length));
        Assert.Equal("≈3/8 in", new LengthFormat(LengthUnit.Inch, 8).PrintWithUnit(1.Inches / 3));
    }

    [Theory]
    [InlineData(8, "≈3/8")]
    [InlineData(16, "≈5/16")]
    [InlineData(32, "≈11/32")]
    [InlineData(64, "≈21/64")]
    public void A_third_of_an_inch_goes_to_the_nearest_of_each_fineness(int denominator, string printed) =>
        Assert.Equal(printed, new LengthFormat(LengthUnit.Inch, denominator).Print(1.Inches / 3));

    [Fact]
    public void Inches_agree_with_decimal_arithmetic() =>
        Gen.Select(Gen.Int[-120_000, 120_000], Gen.Int[0, 127], Finest).Sample((thousandths, halfSteps, denominator) =>
        {
            var inches = thousandths / 1_000m;
            if (thousandths % 2 == 0)
                inches = decimal.Truncate(inches) + Math.Sign(inches) * halfSteps / 128m;
            Assert.Equal(
                InchesByDecimals(inches, denominator),
                new LengthFormat(LengthUnit.Inch, denominator).Print(Length.FromInches(Fraction.FromDecimal(inches))));
        }, iter: 2_000);

    [Fact]
    public void Millimetres_agree_with_decimal_arithmetic() => Gen.Int[-300_000, 300_000].Sample(hundredths =>
    {
        var millimetres = hundredths / 100m;
        var rounded = decimal.Round(millimetres, 1, MidpointRounding.AwayFromZero);
        var expected = (rounded == millimetres ? "" : "≈") + rounded.ToString("0.#;−0.#;0", CultureInfo.InvariantCulture);
        Assert.Equal(expected, LengthFormat.MillimetresToTenth.Print(Length.FromMillimetres(Fraction.FromDecimal(millimetres))));
    }, iter: 2_000);

    [Fact]
    public void The_rounded_mark_and_the_exactness_test_agree() =>
        Gen.Select(Gen.Int[-5_000, 5_000], Gen.Int[1, 700], Finest, Gen.Enum<LengthUnit>()).Sample(
            (numerator, denominator, finest, unit) =>
            {
                var length = Length.FromInches(new Fraction(numerator, denominator));
                var format = new LengthFormat(unit, finest);
                return format.IsExact(length) != format.Print(length).StartsWith(LengthFormat.RoundedMark, StringComparison.Ordinal);
            }, iter: 1_000);

    [Theory]
    [InlineData(0)]
    [InlineData(-8)]
    [InlineData(4)]
    [InlineData(10)]
    [InlineData(128)]
    public void Other_finenesses_are_refused(int denominator)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthFormat(LengthUnit.Inch, denominator));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthFormat(LengthUnit.Millimetre, denominator));
    }

    [Fact]
    public void Other_units_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LengthFormat((LengthUnit)7));

    [Fact]
    public void Formats_are_equal_by_unit_and_fineness()
    {
        Assert.Equal(new LengthFormat(LengthUnit.Inch), LengthFormat.InchesTo32);
        Assert.NotEqual(new LengthFormat(LengthUnit.Inch, 64), LengthFormat.InchesTo32);
    }

    private static string InchesByDecimals(decimal inches, int denominator)
    {
        var steps = (int)decimal.Round(Math.Abs(inches) * denominator, 0, MidpointRounding.AwayFromZero);
        var mark = steps == Math.Abs(inches) * denominator ? "" : "≈";
        var sign = inches < 0 && steps > 0 ? "−" : "";
        var (whole, over) = (steps / denominator, steps % denominator);
        while (over > 0 && over % 2 == 0)
            (over, denominator) = (over / 2, denominator / 2);
        return mark + sign + (whole, over) switch
        {
            (_, 0) => $"{whole}",
            (0, _) => $"{over}/{denominator}",
            _ => $"{whole} {over}/{denominator}",
        };
    }
}
