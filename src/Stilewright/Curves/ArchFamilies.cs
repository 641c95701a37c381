using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Curves;

/// <summary>The arch families as curves over a span. What cannot be drawn is refused with the limit; only what is no number throws.</summary>
/// <remarks>x is half the width between the shoulders. Radii follow from chord and height of a circular segment,
/// R = (x² + a²) / 2a = S²/8a + a/2 (Machinery's Handbook, 31st edition, page 79: r = (c² + 4h²) / 8h).</remarks>
public static class ArchFamilies
{
    private const double LeastSpan = 8 * CurveTolerance.CrumbInches;

    public static ArchResult Draw(ArchFamily family, ArchSizes sizes) => family switch
    {
        ArchFamily.Eyebrow => Eyebrow(sizes),
        ArchFamily.HalfRound => HalfRound(sizes),
        ArchFamily.Pointed => Pointed(sizes),
        ArchFamily.Stepped => Stepped(sizes),
        ArchFamily.Cathedral => Cathedral(sizes),
        ArchFamily.DoubleCurve => DoubleCurve(sizes),
        ArchFamily.Drawn => Given(sizes.Drawn ?? throw new ArgumentException("A drawn arch has a curve.", nameof(sizes)), sizes.Span),
        _ => throw new ArgumentOutOfRangeException(nameof(family)),
    };

    /// <summary>No arch: the sight line of a straight rail.</summary>
    public static ArchResult Straight(double spanInches) => spanInches >= LeastSpan
        ? new ArchResult.Drawn(new(new([new LineSegment(new(-spanInches / 2, 0), new(spanInches / 2, 0))], isClosed: false), []))
        : NoSpan(new(spanInches, 0));

    /// <summary>One arc, R = (x² + a²) / 2a; with shoulders, a corner at each.</summary>
    public static ArchResult Eyebrow(ArchSizes sizes)
    {
        if (Unfit(sizes) is { } refused)
            return refused;
        if (Above(sizes.Rise, sizes.HalfWidth))
            return TooHigh("eyebrow", sizes, sizes.HalfWidth);
        var x = sizes.HalfWidth;
        return Between(sizes, [Over(new(-x, 0), new(x, 0), sizes.Rise)], sizes.Shoulder > 0 ? [new(-x, 0), new(x, 0)] : []);
    }

    /// <summary>Half a circle, a = x; a rise that was stated must be that.</summary>
    public static ArchResult HalfRound(ArchSizes sizes) => Unfit(sizes) is { } refused ? refused
        : Math.Abs(sizes.Rise - sizes.HalfWidth) <= CurveTolerance.MeetingInches ? Eyebrow(sizes with { Rise = sizes.HalfWidth })
        : new ArchResult.Refused(
            $"A half-round over {Shown(2 * sizes.HalfWidth)} rises {Shown(sizes.HalfWidth)}, not {Shown(sizes.Rise)}.",
            new(ArchMeasure.Rise, LimitSide.Exactly, sizes.HalfWidth));

    /// <summary>Two equal arcs that meet in a point. They must still rise where they meet, R > (x² + a²) / 2a, and must not lean
    /// out over the stiles, R ≥ (x² + a²) / 2x.</summary>
    public static ArchResult Pointed(ArchSizes sizes)
    {
        if (Unfit(sizes) is { } refused)
            return refused;
        var (x, a) = (sizes.HalfWidth, sizes.Rise);
        var square = (x * x) + (a * a);
        var upright = square / (2 * x);
        var level = square / (2 * a);
        var radius = sizes.PointRadius ?? (a > x ? upright : 2 * level);
        if (!(radius > level + CurveTolerance.CrumbInches) || Above(upright, radius))
        {
            var least = Math.Max(upright, level + (2 * CurveTolerance.CrumbInches));
            return new ArchResult.Refused(
                $"A pointed arch of rise {Shown(a)} over {Shown(2 * x)} cannot have arcs of radius {Shown(radius)}: radius at least {Shown(least, StepDirection.Up)}.",
                new(ArchMeasure.PointRadius, LimitSide.AtLeast, least));
        }

        // The centre lies on the chord's middle normal, to the right of someone walking up to the point.
        var fromChord = Math.Sqrt(Math.Max(0, (radius * radius) - (square / 4)));
        var toCentre = new CurvePoint(a, -x).Unit() * fromChord;
        var point = new CurvePoint(0, a);
        var left = ArcSegment.About(new CurvePoint(-x / 2, a / 2) + toCentre, new(-x, 0), point, counterClockwise: false);
        var right = left.Mirrored(0).Reversed();
        return Between(sizes, [left, right], sizes.Shoulder > 0 ? [new(-x, 0), point, new(x, 0)] : [point]);
    }

    /// <summary>Shoulders, a square step up, then an eyebrow over what rise is left.</summary>
    public static ArchResult Stepped(ArchSizes sizes)
    {
        if (Unfit(sizes) is { } refused)
            return refused;
        var (x, a) = (sizes.HalfWidth, sizes.Rise);
        if (sizes.Shoulder <= CurveTolerance.MeetingInches)
        {
            return new ArchResult.Refused($"A stepped arch has shoulders; state how long they are, less than {Shown(sizes.Span / 2)}.",
                new(ArchMeasure.Shoulder, LimitSide.AtLeast, 2 * CurveTolerance.MeetingInches));
        }

        var step = sizes.Step ?? a / 2;
        if (step <= CurveTolerance.MeetingInches || Above(step, a))
        {
            return new ArchResult.Refused($"A stepped arch of rise {Shown(a)} cannot step up {Shown(step)}: step more than nothing and at most {Shown(a)}.",
                new(ArchMeasure.Step, LimitSide.AtMost, a));
        }

        if (Above(a - step, x))
            return TooHigh("stepped arch", sizes, sizes.Step is { } fixedStep ? x + fixedStep : 2 * x);
        var (from, to) = (new CurvePoint(-x, step), new CurvePoint(x, step));
        CurveSegment top = a - step <= CurveTolerance.MeetingInches ? new LineSegment(from, to) : Over(from, to, a - step);

        // An eyebrow that is a half circle leaves the step smoothly.
        var smooth = Math.Abs(a - step - x) <= CurveTolerance.MeetingInches;
        return Between(sizes, [new LineSegment(new(-x, 0), from), top, new LineSegment(to, new(x, 0))],
            smooth ? [new(-x, 0), new(x, 0)] : [new(-x, 0), from, to, new(x, 0)]);
    }

    /// <summary>Shoulders, a reverse arc and a crown arc on each side, all of them tangent: tan(θ/2) = a / x,
    /// R1 + R2 = (x² + a²) / 2a.</summary>
    public static ArchResult Cathedral(ArchSizes sizes) => ReverseAndCrown("cathedral", sizes);

    /// <summary>The cathedral's arcs from stile to stile, without shoulders. Mostly in a bottom rail, which is then narrowest in the
    /// middle; drawn as in a top rail, like every family.</summary>
    public static ArchResult DoubleCurve(ArchSizes sizes) => sizes.Shoulder > CurveTolerance.MeetingInches
        ? new ArchResult.Refused($"A double curve runs from stile to stile; it has no shoulders of {Shown(sizes.Shoulder)}. With shoulders it is a cathedral.",
            new(ArchMeasure.Shoulder, LimitSide.AtMost, 0))
        : ReverseAndCrown("double curve", sizes);

    private static ArchResult ReverseAndCrown(string family, ArchSizes sizes)
    {
        if (Unfit(sizes) is { } refused)
            return refused;
        var (x, a) = (sizes.HalfWidth, sizes.Rise);
        if (Above(a, x))
            return TooHigh(family, sizes, x);
        if (!(sizes.ReverseToCrown > 0))
        {
            return new ArchResult.Refused($"The reverse arc of a {family} has a radius above nothing; state its share of the crown's above 0.",
                new(ArchMeasure.ReverseToCrown, LimitSide.AtLeast, CurveTolerance.CornerRadians));
        }

        var together = ((x * x) + (a * a)) / (2 * a);
        var crown = together / (1 + sizes.ReverseToCrown);
        var reverse = together - crown;
        var theta = 2 * Math.Atan2(a, x);
        var first = new CurvePoint(-x, reverse) + (new CurvePoint(Math.Sin(theta), -Math.Cos(theta)) * reverse);
        var left = ArcSegment.About(new(-x, reverse), new(-x, 0), first, counterClockwise: true);
        var top = ArcSegment.About(new(0, a - crown), first, first.MirroredIn(0), counterClockwise: false);
        return Between(sizes, [left, top, left.Mirrored(0).Reversed()], []);
    }

    /// <summary>A curve the user gives, in inches from the middle of the span, moved so that it springs at Y = 0.</summary>
    public static ArchResult Given(Chain chain)
    {
        var fall = chain.End.Y - chain.Start.Y;
        if (chain.IsClosed || Math.Abs(fall) > CurveTolerance.MeetingInches || chain.End.X <= chain.Start.X)
        {
            return new ArchResult.Refused($"The curve begins at the left sight line and ends level with it at the right; its ends differ by {Shown(fall)} in height.",
                new(ArchMeasure.Span, LimitSide.Exactly, Math.Abs(chain.End.X - chain.Start.X)));
        }

        var box = chain.Box;
        if (Above(chain.Start.X, box.Left) || Above(box.Right, chain.End.X))
        {
            return new ArchResult.Refused($"The curve is {Shown(box.Width)} wide, wider than its span of {Shown(chain.End.X - chain.Start.X)}.",
                new(ArchMeasure.Span, LimitSide.AtLeast, box.Width));
        }

        var placed = chain.Translated(new(-(chain.Start.X + chain.End.X) / 2, -chain.Start.Y));
        return new ArchResult.Drawn(new(placed, [.. placed.Corners().Select(corner => corner.Place)]));
    }

    private static ArchResult Given(Chain chain, double spanInches)
    {
        var drawn = chain.End.X - chain.Start.X;
        return Math.Abs(drawn - spanInches) <= CurveTolerance.MeetingInches ? Given(chain) : new ArchResult.Refused(
            $"The curve was drawn for a span of {Shown(drawn)}; here the span is {Shown(spanInches)}.", new(ArchMeasure.Span, LimitSide.Exactly, drawn));
    }

    private static ArcSegment Over(CurvePoint from, CurvePoint to, double rise)
    {
        var half = from.DistanceTo(to) / 2;
        var radius = ((half * half) + (rise * rise)) / (2 * rise);
        return ArcSegment.About(new((from.X + to.X) / 2, from.Y + rise - radius), from, to, counterClockwise: false);
    }

    private static ArchResult.Drawn Between(ArchSizes sizes, List<CurveSegment> arch, List<CurvePoint> corners)
    {
        if (sizes.Shoulder > CurveTolerance.MeetingInches)
        {
            arch.Insert(0, new LineSegment(new(-sizes.Span / 2, 0), arch[0].Start));
            arch.Add(new LineSegment(arch[^1].End, new(sizes.Span / 2, 0)));
        }

        return new(new(new(arch, isClosed: false), corners));
    }

    private static ArchResult.Refused? Unfit(ArchSizes sizes)
    {
        if (!double.IsFinite(sizes.Span + sizes.Rise + sizes.Shoulder + sizes.ReverseToCrown + (sizes.Step ?? 0) + (sizes.PointRadius ?? 0)))
            throw new ArgumentException($"{sizes} has a size that is no number.", nameof(sizes));
        if (sizes.Span < LeastSpan)
            return NoSpan(sizes);
        if (sizes.Shoulder < 0)
            return new($"A shoulder is a length, 0 or more; this one is {Shown(sizes.Shoulder)}.", new(ArchMeasure.Shoulder, LimitSide.AtLeast, 0));
        if (sizes.HalfWidth <= CurveTolerance.CrumbInches)
        {
            return new($"Shoulders of {Shown(sizes.Shoulder)} leave no arch over a span of {Shown(sizes.Span)}: shoulders less than {Shown(sizes.Span / 2)}.",
                new(ArchMeasure.Shoulder, LimitSide.AtMost, (sizes.Span / 2) - (2 * CurveTolerance.CrumbInches)));
        }

        return sizes.Rise > CurveTolerance.CrumbInches ? null : new(
            $"An arch rises above its spring line; this one rises {Shown(sizes.Rise)}. For none, leave the arch out.",
            new(ArchMeasure.Rise, LimitSide.AtLeast, 2 * CurveTolerance.CrumbInches));
    }

    private static ArchResult.Refused NoSpan(ArchSizes sizes) => new(
        $"The stiles leave a span of {Shown(sizes.Span)} for the arch.", new(ArchMeasure.Span, LimitSide.AtLeast, LeastSpan));

    private static ArchResult.Refused TooHigh(string family, ArchSizes sizes, double most) => new(
        $"{(family[0] == 'e' ? "An" : "A")} {family} of rise {Shown(sizes.Rise)} over {Shown(sizes.Span)} with shoulders {Shown(sizes.Shoulder)} cannot be drawn: rise at most {Shown(most, StepDirection.Down)}.",
        new(ArchMeasure.Rise, LimitSide.AtMost, most));

    private static bool Above(double value, double most) => value > most + CurveTolerance.MeetingInches;

    private static Length Shown(double inches, StepDirection direction = StepDirection.Nearest) => CurveLength.ToLength(inches, direction);
}
