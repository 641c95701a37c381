using CsCheck;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Tests.Measure;

public class LengthTests
{
    private static readonly Gen<int> Finest = Gen.Int[3, 6].Select(power => 1 << power);

    private static readonly Gen<Fraction> Factors =
        Gen.Select(Gen.Int[-5_000, 5_000], Gen.Int[1, 960], (numerator, denominator) => new Fraction(numerator, denominator));

    private static readonly Gen<Length> Lengths = Factors.Select(Length.FromInches);

    // International yard and pound agreement, 1959: one yard is exactly 0.9144 m, so one inch is exactly 25.4 mm.
    [Fact]
    public void International_yard_and_pound_agreement_1959_one_inch_is_25_4_mm()
    {
        Assert.Equal(new Fraction(254, 10), 1.Inches.Millimetres);
        Assert.Equal(Length.FromMillimetres(new Fraction(9144, 10)), 36.Inches);
    }

    [Fact]
    public void The_default_length_is_zero()
    {
        Assert.Equal(0.Inches, default);
        Assert.Equal(0.Inches.GetHashCode(), default(Length).GetHashCode());
        Assert.Equal(1.Inches, default(Length) + 1.Inches);
        Assert.Equal(Fraction.Zero, default(Length).Millimetres);
        Assert.True(Length.Zero is { IsZero: true, IsPositive: false, IsNegative: false });
    }

    [Fact]
    public void A_third_of_an_inch_three_times_is_an_inch()
    {
        var third = 1.Inches / 3;
        Assert.Equal(1.Inches, third + third + third);
    }

    [Fact]
    public void Equal_lengths_from_different_writings_have_one_hash()
    {
        Assert.Equal(Length.FromInches(new Fraction(1, 2)), Length.FromMillimetres(new Fraction(127, 10)));
        Assert.Equal(
            Length.FromInches(new Fraction(1, 2)).GetHashCode(), Length.FromMillimetres(new Fraction(127, 10)).GetHashCode());
        Assert.Equal(Length.FromInches(new Fraction(2, 4, normalize: false)), Length.FromInches(new Fraction(1, 2)));
        Assert.Equal(
            Length.FromInches(new Fraction(2, 4, normalize: false)).GetHashCode(), Length.FromInches(new Fraction(1, 2)).GetHashCode());
    }

    [Fact]
    public void Adding_then_taking_away_gives_the_length_back() => Gen.Select(Lengths, Lengths).Sample((left, right) =>
        left + right - right == left && left + right == right + left && left - right == -(right - left));

    [Fact]
    public void Dividing_undoes_multiplying() => Gen.Select(Lengths, Factors.Where(factor => !factor.IsZero)).Sample((length, factor) =>
        length * factor / factor == length && factor * length == length * factor
        && (length.IsZero || length * factor / length == factor));

    [Fact]
    public void Millimetres_and_back_is_the_same_length() => Lengths.Sample(length =>
        Length.FromMillimetres(length.Millimetres) == length);

    [Fact]
    public void Order_is_that_of_cross_multiplied_whole_numbers() =>
        Gen.Select(Gen.Int[-5_000, 5_000], Gen.Int[1, 960], Gen.Int[-5_000, 5_000], Gen.Int[1, 960]).Sample((a, b, c, d) =>
        {
            var left = Length.FromInches(new Fraction(a, b));
            var right = Length.FromInches(new Fraction(c, d));
            var (first, second) = ((long)a * d, (long)c * b);
            return left < right == first < second && left > right == first > second
                && left <= right == first <= second && left >= right == first >= second
                && Length.Least(left, right) == (first <= second ? left : right)
                && Length.Greatest(left, right) == (first >= second ? left : right);
        });

    [Fact]
    public void The_absolute_length_is_the_greater_of_both_signs() => Lengths.Sample(length =>
        Length.Abs(length) == Length.Greatest(length, -length));

    [Fact]
    public void On_step_moves_nearest_by_at_most_half_a_step_and_others_by_less_than_one_their_own_way() =>
        Gen.Select(Lengths, Lengths.Where(step => step.IsPositive)).Sample((length, step) =>
        {
            var nearest = length.OnStep(step, StepDirection.Nearest) - length;
            var down = length - length.OnStep(step, StepDirection.Down);
            var up = length.OnStep(step, StepDirection.Up) - length;
            return Length.Abs(nearest) * 2 <= step
                && !down.IsNegative && down < step && !up.IsNegative && up < step
                && (length.OnStep(step, StepDirection.Nearest) / step).Reduce().Denominator.IsOne;
        });

    [Theory]
    [InlineData(StepDirection.Nearest, MidpointRounding.AwayFromZero)]
    [InlineData(StepDirection.Down, MidpointRounding.ToNegativeInfinity)]
    [InlineData(StepDirection.Up, MidpointRounding.ToPositiveInfinity)]
    public void On_step_agrees_with_rounding_of_decimals(StepDirection direction, MidpointRounding mode) =>
        Gen.Select(Gen.Int[-100_000, 100_000], Finest).Sample((thousandths, denominator) =>
        {
            // Eighths of a thousandth, so that halves of a step come up.
            var inches = thousandths / 1_000m + thousandths % 8 / 128m;
            var length = Length.FromInches(Fraction.FromDecimal(inches));
            var steps = decimal.Round(inches * denominator, 0, mode);
            return length.OnStep(1.Inches / denominator, direction) == Length.FromInches(new Fraction((int)steps, denominator));
        }, iter: 1_000);

    [Theory]
    [InlineData(1, 64, StepDirection.Nearest, 1, 32)]
    [InlineData(-1, 64, StepDirection.Nearest, -1, 32)]
    [InlineData(-1, 64, StepDirection.Down, -1, 32)]
    [InlineData(-1, 64, StepDirection.Up, 0, 1)]
    [InlineData(1, 64, StepDirection.Down, 0, 1)]
    [InlineData(3, 32, StepDirection.Up, 3, 32)]
    public void Half_a_step_goes_away_from_zero_or_the_way_asked(
        int numerator, int denominator, StepDirection direction, int steppedNumerator, int steppedDenominator) =>
        Assert.Equal(
            Length.FromInches(new Fraction(steppedNumerator, steppedDenominator)),
            Length.FromInches(new Fraction(numerator, denominator)).OnStep(1.Inches / 32, direction));

    [Fact]
    public void Mistakes_of_the_programmer_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => 1.Inches.OnStep(default, StepDirection.Nearest));
        Assert.Throws<ArgumentOutOfRangeException>(() => 1.Inches.OnStep(-1.Inches, StepDirection.Nearest));
        Assert.Throws<ArgumentOutOfRangeException>(() => 1.Inches.OnStep(1.Inches, (StepDirection)9));
        Assert.Throws<DivideByZeroException>(() => 1.Inches / 0);
        Assert.Throws<DivideByZeroException>(() => 1.Inches / Length.Zero);
    }
}
