using Fractions;
using Stilewright.Measure;

namespace Stilewright.Curves;

/// <summary>The crossings between exact lengths and the inches of curves.</summary>
public static class CurveLength
{
    /// <summary>Limits are told on this step, 1/1024 in, so that what is told can be built.</summary>
    private static readonly Length Step = Length.FromInches(new Fraction(1, 1024));

    /// <summary>The nearest double, in.</summary>
    public static double Inches(Length length) => length.Inches.ToDouble();

    /// <summary>A length on 1/1024 in; one within 1e-9 in of a step is taken as that step, whatever the direction.</summary>
    public static Length ToLength(double inches, StepDirection direction)
    {
        var nearest = Length.FromInches(Fraction.FromDouble(inches)).OnStep(Step, StepDirection.Nearest);
        return Math.Abs(Inches(nearest) - inches) <= CurveTolerance.MeetingInches
            ? nearest : Length.FromInches(Fraction.FromDouble(inches)).OnStep(Step, direction);
    }
}
