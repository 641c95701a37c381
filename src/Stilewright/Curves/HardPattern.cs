using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>A hard pattern on the rack: one fixed curve that serves a range of spans. Sizes in inches.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Rise">Of the crown, where the pattern is used over its greatest span.</param>
/// <param name="LeastSpan">Below this the pattern's ends would be lost.</param>
/// <param name="GreatestSpan">What it was drawn for.</param>
/// <param name="Shoulder">Over the greatest span.</param>
/// <param name="ReverseToCrown">Radius of the reverse arcs over the crown's, in a family that has both; where nobody stated it, it is drawn one to one and not compared.</param>
/// <remarks>The crown stays in the middle. Over a narrower span both ends of the curve are cut off at the sight lines: shoulders
/// get shorter, and an eyebrow rises less.</remarks>
public sealed record HardPattern(string Name, ArchFamily Family, double Rise, double LeastSpan, double GreatestSpan, double Shoulder = 0, double? ReverseToCrown = null)
{
    public bool Fits(double spanInches) =>
        spanInches >= LeastSpan - CurveTolerance.MeetingInches && spanInches <= GreatestSpan + CurveTolerance.MeetingInches;

    /// <summary>The curve that the pattern leaves over a span, springing at Y = 0.</summary>
    public ArchResult CurveFor(double spanInches)
    {
        if (!Fits(spanInches))
        {
            var nearest = NearestSpan(spanInches);
            return new ArchResult.Refused(
                $"Pattern {Name} serves spans from {CurveLength.ToLength(LeastSpan, StepDirection.Nearest)} to {CurveLength.ToLength(GreatestSpan, StepDirection.Nearest)}, not {CurveLength.ToLength(spanInches, StepDirection.Nearest)}.",
                new(ArchMeasure.Span, spanInches < nearest ? LimitSide.AtLeast : LimitSide.AtMost, nearest));
        }

        var whole = ArchFamilies.Draw(Family, Sizes);
        if (whole is not ArchResult.Drawn(var curve) || spanInches >= GreatestSpan - CurveTolerance.MeetingInches)
            return whole;
        var half = spanInches / 2;
        var from = curve.Chain.CrossingsWithLine(new(-half, 0), new(0, 1))[0];
        var to = curve.Chain.CrossingsWithLine(new(half, 0), new(0, 1))[^1];
        var part = curve.Chain.Part(from.OnFirst, to.OnFirst).Translated(new(0, -from.Place.Y));
        return new ArchResult.Drawn(new(part,
            [.. curve.Corners.Where(corner => Math.Abs(corner.X) < half - CurveTolerance.SamePlaceInches).Select(corner => corner - new CurvePoint(0, from.Place.Y))]));
    }

    /// <summary>What it is drawn from.</summary>
    public ArchSizes Sizes => new(GreatestSpan, Rise, Shoulder) { ReverseToCrown = ReverseToCrown ?? 1 };

    /// <summary>The straight shoulder that the pattern leaves at each end over a span; none where it is cut off wholly.</summary>
    public double ShoulderOver(double spanInches) => Math.Max(0, Shoulder - ((GreatestSpan - spanInches) / 2));

    /// <summary>The span over which the pattern has a shoulder of that length; null where it serves none such.</summary>
    public double? SpanWithShoulder(double shoulderInches) =>
        GreatestSpan - (2 * (Shoulder - shoulderInches)) is var span && Fits(span) ? span : null;

    internal double NearestSpan(double spanInches) => Math.Clamp(spanInches, LeastSpan, GreatestSpan);
}
