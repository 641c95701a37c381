using Fractions;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>Figures of curves as patterns print them: to 1/64 in, or to 0.1 mm.</summary>
public sealed class FineWords(LengthFormat format)
{
    // Curves are known to 1e-9 in, so that a figure closer than that to a fraction is that fraction.
    private static readonly Length Known = Length.FromInches(new Fraction(1, 1_000_000_000));

    private readonly LengthFormat fine = format.Unit == LengthUnit.Inch ? new(LengthUnit.Inch, 64) : format;

    public LengthUnit Unit => format.Unit;

    public string Of(double inches) => fine.Print(Length.FromInches(Fraction.FromDouble(inches)).OnStep(Known, StepDirection.Nearest));

    public string Of(Length length) => fine.Print(length);

    public string WithUnit(Length length) => fine.PrintWithUnit(length);

    /// <summary>"left 3 1/2", "right 3 1/2" or "0".</summary>
    public string Sideways(double inches) => Of(Math.Abs(inches)) is var size && size is "0" or "≈0" ? "0" : $"{(inches < 0 ? "left" : "right")} {size}";
}
