using Fractions;

namespace Stilewright.Measure;

/// <summary>An exact length: one inch is exactly 127/5 mm, and a third of an inch stays a third.</summary>
/// <remarks>The default value is zero. Only members whose names say so ever round.
/// Source of the conversion: international yard and pound agreement, 1959.</remarks>
public readonly record struct Length : IComparable<Length>
{
    private static readonly Fraction InchesPerMillimetre = new(5, 127);
    private static readonly Fraction MillimetresPerInch = new(127, 5);

    private Length(Fraction inches) => Inches = inches;

    /// <summary>This length in inches (in), exactly.</summary>
    public Fraction Inches { get; }

    /// <summary>This length in millimetres (mm), exactly.</summary>
    public Fraction Millimetres => Inches * MillimetresPerInch;

    public bool IsZero => Inches.IsZero;
    public bool IsNegative => Inches.IsNegative;
    public bool IsPositive => Inches.IsPositive;

    public static Length Zero => default;

    public static Length FromInches(Fraction value) => new(value);
    public static Length FromMillimetres(Fraction value) => new(value * InchesPerMillimetre);

    public static Length operator +(Length left, Length right) => new(left.Inches + right.Inches);
    public static Length operator -(Length left, Length right) => new(left.Inches - right.Inches);
    public static Length operator -(Length length) => new(-length.Inches);
    public static Length operator *(Length length, Fraction factor) => new(length.Inches * factor);
    public static Length operator *(Fraction factor, Length length) => new(length.Inches * factor);

    /// <exception cref="DivideByZeroException"><paramref name="divisor"/> is zero.</exception>
    public static Length operator /(Length length, Fraction divisor) => divisor.IsZero
        ? throw new DivideByZeroException() : new(length.Inches / divisor);

    /// <summary>How many times <paramref name="right"/> goes into <paramref name="left"/>, exactly.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="right"/> is zero.</exception>
    public static Fraction operator /(Length left, Length right) => right.IsZero
        ? throw new DivideByZeroException() : left.Inches / right.Inches;

    public static bool operator <(Length left, Length right) => left.CompareTo(right) < 0;
    public static bool operator >(Length left, Length right) => left.CompareTo(right) > 0;
    public static bool operator <=(Length left, Length right) => left.CompareTo(right) <= 0;
    public static bool operator >=(Length left, Length right) => left.CompareTo(right) >= 0;

    public int CompareTo(Length other) => Inches.CompareTo(other.Inches);

    public static Length Least(Length left, Length right) => left <= right ? left : right;
    public static Length Greatest(Length left, Length right) => left >= right ? left : right;
    public static Length Abs(Length length) => length.IsNegative ? -length : length;

    /// <summary>The whole multiple of <paramref name="step"/> in the given direction; a half step goes away from zero.</summary>
    /// <param name="step">The finest mark on the measure in use, such as 1/64 in. Must be positive.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="step"/> is zero or negative.</exception>
    public Length OnStep(Length step, StepDirection direction)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(step, default);
        var mode = direction switch
        {
            StepDirection.Nearest => MidpointRounding.AwayFromZero,
            StepDirection.Down => MidpointRounding.ToNegativeInfinity,
            StepDirection.Up => MidpointRounding.ToPositiveInfinity,
            _ => throw new ArgumentOutOfRangeException(nameof(direction)),
        };
        return step * Fraction.Round(this / step, 0, mode);
    }

    /// <summary>For debugging and logs: exact inches. People are shown lengths by <see cref="LengthFormat"/>.</summary>
    public override string ToString() => $"{Inches} in";
}

/// <summary>Which way a length is moved to reach a step. Nearest sends halves away from zero; down and up follow the number line.</summary>
public enum StepDirection
{
    Nearest,
    Down,
    Up,
}

/// <summary>Literal lengths: <c>8.Inches</c>, <c>450.Millimetres</c>, <c>"3/8"</c> being read by <see cref="LengthReader"/>.</summary>
public static class LengthLiterals
{
    extension(int count)
    {
        public Length Inches => Length.FromInches(count);
        public Length Millimetres => Length.FromMillimetres(count);
    }
}
