using Fractions;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>A curve that the user drew step by step, from the left sight line at the spring line to the right sight line.</summary>
/// <param name="Chain">In inches from the left sight line and the spring line; null where a step is at fault.</param>
/// <param name="Faults">Every step that cannot be drawn where it stands.</param>
public sealed record DrawnCurve(Chain? Chain, IReadOnlyList<StepFault> Faults)
{
    private const int Compared = 64;

    /// <summary>Its highest point: exact where a step ends there, otherwise the exact value of the nearest double.</summary>
    public Length Rise { get; private init; }

    /// <summary>Where the last step ends.</summary>
    public Length Span { get; private init; }

    /// <summary>The same curve as it is seen in a mirror; null where a step is at fault.</summary>
    public Chain? Mirrored => Chain?.Mirrored(CurveLength.Inches(Span) / 2).Reversed();

    private IReadOnlyList<CurveStep> Steps { get; init; } = [];

    /// <summary>A height of the curve: exact where a step states it, otherwise the exact value of the double.</summary>
    public Length HeightAt(double inches) => Exactly(Steps, inches);

    /// <summary>Whether a curve from side to side is its own mirror image.</summary>
    public static bool IsSymmetric(Chain chain)
    {
        var mirrored = chain.Mirrored((chain.Start.X + chain.End.X) / 2).Reversed();
        return Enumerable.Range(0, Compared + 1).Select(i => mirrored.PointAt(mirrored.Length * i / Compared))
            .All(place => chain.ClosestTo(place).Distance <= CurveTolerance.MeetingInches);
    }

    public static DrawnCurve Of(IReadOnlyList<CurveStep> steps)
    {
        if (steps.Count == 0)
            return new(null, [new(0, "the curve has no steps", "add steps from the left sight line to the right")]);
        List<CurveSegment> segments = [];
        List<StepFault> faults = [];
        var from = new CurvePoint(0, 0);
        for (var i = 0; i < steps.Count; i++)
        {
            var to = End(steps[i]);
            if (Segment(steps[i], from, to) is not { } segment)
            {
                faults.Add(from.DistanceTo(to) <= CurveTolerance.MeetingInches
                    ? new(i, "the step ends where it begins", "give the place where it ends, or leave the step out")
                    : new(i, "the three points of the arc lie in one line, or two of them are one", "move the point it goes through, or make it a line"));
            }
            else
            {
                segments.Add(segment);
                var box = segment.Box;
                if (box.Bottom < -CurveTolerance.MeetingInches)
                    faults.Add(new(i, "the step falls below the spring line", "let it end, and its arc run, at the spring line or above it"));

                // Rail and panel are pushed together along the stiles, so nothing of the curve may hook over.
                if (box.Left < from.X - CurveTolerance.MeetingInches || box.Right > to.X + CurveTolerance.MeetingInches)
                    faults.Add(new(i, "the step runs back to the left, so that the rail would not go over its panel", "let x grow from step to step, and no arc bulge past its ends"));
            }

            from = to;
        }

        if (Math.Abs(from.Y) > CurveTolerance.MeetingInches)
            faults.Add(new(steps.Count - 1, "the last step does not end at the spring line", "end it at the right sight line with y 0"));
        if (faults.Count > 0)
            return new(null, faults);
        var chain = new Chain(segments, isClosed: false);
        var top = chain.Box.Top;
        if (top <= CurveTolerance.CrumbInches)
            return new(null, [new(steps.Count - 1, "the curve rises nowhere above the spring line", "let a step rise, or leave the arch out")]);
        return new(chain, []) { Span = Places(steps[^1]).X.Value, Rise = Exactly(steps, top), Steps = steps };
    }

    private static CurveSegment? Segment(CurveStep step, CurvePoint from, CurvePoint to)
    {
        if (from.DistanceTo(to) <= CurveTolerance.MeetingInches)
            return null;
        if (step is not ArcStep arc)
            return new LineSegment(from, to);

        // Three points closer to one line than a rounding make no circle that could be drawn.
        var (over, chord) = (new CurvePoint(CurveLength.Inches(arc.ViaX.Value), CurveLength.Inches(arc.ViaY.Value)) - from, to - from);
        var twice = 2 * over.Cross(chord);
        if (Math.Abs(twice) <= CurveTolerance.CrumbInches * chord.Length)
            return null;
        var centre = new CurvePoint(
            ((chord.Y * over.Dot(over)) - (over.Y * chord.Dot(chord))) / twice, ((over.X * chord.Dot(chord)) - (chord.X * over.Dot(over))) / twice);
        return ArcSegment.About(from + centre, from, to, counterClockwise: twice > 0);
    }

    private static Length Exactly(IReadOnlyList<CurveStep> steps, double top)
    {
        foreach (var step in steps)
        {
            foreach (var y in step is ArcStep arc ? (Length[])[arc.ViaY.Value, arc.Y.Value] : [Places(step).Y.Value])
            {
                if (Math.Abs(CurveLength.Inches(y) - top) <= CurveTolerance.MeetingInches)
                    return y;
            }
        }

        return Length.FromInches(Fraction.FromDouble(top));
    }

    private static CurvePoint End(CurveStep step) => new(CurveLength.Inches(Places(step).X.Value), CurveLength.Inches(Places(step).Y.Value));

    private static (LengthEntry X, LengthEntry Y) Places(CurveStep step) => step switch
    {
        LineStep line => (line.X, line.Y),
        ArcStep arc => (arc.X, arc.Y),
        _ => throw new ArgumentOutOfRangeException(nameof(step)),
    };
}

/// <summary>A step of a drawn curve that is at fault.</summary>
/// <param name="Index">Counted from 0.</param>
public sealed record StepFault(int Index, string Problem, string Fix);
