namespace Stilewright.Drawing.Scenes;

/// <summary>One stretch of an outline, from where the one before it ends.</summary>
public abstract record Segment(PaperPoint End);

public sealed record LineTo(PaperPoint End) : Segment(End);

/// <summary>A circular arc, less than a full turn.</summary>
/// <param name="Clockwise">Its sense as it is seen on paper.</param>
public sealed record ArcTo(PaperPoint End, PaperPoint Centre, bool Clockwise) : Segment(End);

public sealed record BezierTo(PaperPoint FirstControl, PaperPoint SecondControl, PaperPoint End) : Segment(End);

/// <summary>A path of lines, arcs and cubic Béziers.</summary>
public sealed record Outline(PaperPoint Start, IReadOnlyList<Segment> Segments, bool IsClosed)
{
    public static Outline Line(PaperPoint from, PaperPoint to) => new(from, [new LineTo(to)], false);

    /// <param name="points">At least two.</param>
    public static Outline Through(bool isClosed, params IReadOnlyList<PaperPoint> points) =>
        new(points[0], [.. points.Skip(1).Select(point => new LineTo(point))], isClosed);

    public static Outline Box(PaperBox box) => Through(true,
        new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom));

    /// <summary>The outline with its arcs as cubics of at most 30° each, whose error is below 2e-7 of the radius.</summary>
    /// <remarks>Control points at 4/3 tan(angle / 4) of the radius along the tangents, which meets the arc at ends and middle.</remarks>
    public Outline WithArcsAsBeziers()
    {
        if (!Segments.Any(segment => segment is ArcTo))
            return this;
        List<Segment> segments = [];
        var from = Start;
        foreach (var segment in Segments)
        {
            if (segment is ArcTo arc)
                segments.AddRange(Cubics(from, arc));
            else
                segments.Add(segment);
            from = segment.End;
        }

        return this with { Segments = segments };
    }

    /// <summary>The outline with its arcs in pieces of at most a quarter turn.</summary>
    /// <remarks>A short arc is well told by its ends and radius; one near a half or a full turn is not once these are rounded.</remarks>
    public Outline WithShortArcs()
    {
        if (!Segments.Any(segment => segment is ArcTo))
            return this;
        List<Segment> segments = [];
        var from = Start;
        foreach (var segment in Segments)
        {
            if (segment is ArcTo arc)
            {
                var (radius, start, turn) = (from.DistanceTo(arc.Centre), Angle(arc.Centre, from), Turn(from, arc));
                var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(turn) / (Math.PI / 2) - 1e-9));
                for (var i = 1; i < count; i++)
                    segments.Add(arc with { End = At(arc.Centre, radius, start + turn * i / count) });
            }

            segments.Add(segment);
            from = segment.End;
        }

        return this with { Segments = segments };
    }

    /// <summary>The smallest upright box round the outline.</summary>
    public PaperBox Bounds
    {
        get
        {
            var box = new PaperBox(Start.X, Start.Y, 0, 0);
            var from = Start;
            foreach (var segment in Segments)
            {
                foreach (var point in Extremes(from, segment))
                    box = box.With(new(point.X, point.Y, 0, 0));
                from = segment.End;
            }

            return box;
        }
    }

    /// <summary>The outline as points, curves within the given error in millimetres.</summary>
    public IReadOnlyList<PaperPoint> Flattened(double toleranceMillimetres)
    {
        List<PaperPoint> points = [Start];
        var from = Start;
        foreach (var segment in Segments)
        {
            switch (segment)
            {
                case ArcTo arc:
                    var radius = from.DistanceTo(arc.Centre);
                    var step = 2 * Math.Acos(Math.Clamp(1 - toleranceMillimetres / radius, -1, 1));
                    var turn = Turn(from, arc);
                    var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(turn) / Math.Max(step, 1e-3)));
                    for (var i = 1; i < count; i++)
                        points.Add(At(arc.Centre, radius, Angle(arc.Centre, from) + turn * i / count));
                    break;
                case BezierTo curve:
                    var pieces = 4 + (int)(from.DistanceTo(curve.FirstControl) + curve.FirstControl.DistanceTo(curve.SecondControl) + curve.SecondControl.DistanceTo(curve.End));
                    for (var i = 1; i < pieces; i++)
                        points.Add(OnBezier(from, curve, (double)i / pieces));
                    break;
            }

            points.Add(segment.End);
            from = segment.End;
        }

        return points;
    }

    /// <summary>The outline on a print that is stretched by these factors; arcs, which become parts of ellipses, as cubics.</summary>
    public Outline Stretched(double across, double down)
    {
        PaperPoint Stretch(PaperPoint point) => new(point.X * across, point.Y * down);
        return new(Stretch(Start),
            [
                .. WithArcsAsBeziers().Segments.Select(segment => (Segment)(segment switch
                {
                    BezierTo curve => new BezierTo(Stretch(curve.FirstControl), Stretch(curve.SecondControl), Stretch(curve.End)),
                    _ => new LineTo(Stretch(segment.End)),
                })),
            ], IsClosed);
    }

    public Outline Shifted(PaperPoint by) => this with
    {
        Start = Start + by,
        Segments =
        [
            .. Segments.Select(segment => (Segment)(segment switch
            {
                ArcTo arc => arc with { End = arc.End + by, Centre = arc.Centre + by },
                BezierTo curve => new BezierTo(curve.FirstControl + by, curve.SecondControl + by, curve.End + by),
                _ => new LineTo(segment.End + by),
            })),
        ],
    };

    private static IEnumerable<BezierTo> Cubics(PaperPoint from, ArcTo arc)
    {
        var radius = from.DistanceTo(arc.Centre);
        var start = Angle(arc.Centre, from);
        var turn = Turn(from, arc);
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(turn) / (Math.PI / 6) - 1e-9));
        var each = turn / count;
        var reach = 4.0 / 3.0 * Math.Tan(each / 4) * radius;
        for (var i = 0; i < count; i++)
        {
            var (one, other) = (start + each * i, start + each * (i + 1));
            var begin = At(arc.Centre, radius, one);
            var end = i == count - 1 ? arc.End : At(arc.Centre, radius, other);
            yield return new(
                begin + new PaperPoint(-Math.Sin(one), Math.Cos(one)) * reach,
                end - new PaperPoint(-Math.Sin(other), Math.Cos(other)) * reach, end);
        }
    }

    // Y goes down, so a growing angle turns clockwise as it is seen.
    private static double Turn(PaperPoint from, ArcTo arc)
    {
        var turn = Angle(arc.Centre, arc.End) - Angle(arc.Centre, from);
        if (arc.Clockwise && turn <= 0)
            turn += 2 * Math.PI;
        if (!arc.Clockwise && turn >= 0)
            turn -= 2 * Math.PI;
        return turn;
    }

    private static double Angle(PaperPoint centre, PaperPoint point) => Math.Atan2(point.Y - centre.Y, point.X - centre.X);

    private static PaperPoint At(PaperPoint centre, double radius, double angle) =>
        new(centre.X + radius * Math.Cos(angle), centre.Y + radius * Math.Sin(angle));

    private static PaperPoint OnBezier(PaperPoint from, BezierTo curve, double t)
    {
        var s = 1 - t;
        return from * (s * s * s) + curve.FirstControl * (3 * s * s * t) + curve.SecondControl * (3 * s * t * t) + curve.End * (t * t * t);
    }

    private static IEnumerable<PaperPoint> Extremes(PaperPoint from, Segment segment)
    {
        yield return segment.End;
        switch (segment)
        {
            case ArcTo arc:
                var start = Angle(arc.Centre, from);
                var turn = Turn(from, arc);
                var radius = from.DistanceTo(arc.Centre);
                for (var quarter = -8; quarter <= 8; quarter++)
                {
                    var along = (quarter * Math.PI / 2 - start) / turn;
                    if (along is > 0 and < 1)
                        yield return At(arc.Centre, radius, quarter * Math.PI / 2);
                }

                break;
            case BezierTo curve:
                foreach (var t in Roots(from.X, curve.FirstControl.X, curve.SecondControl.X, curve.End.X)
                    .Concat(Roots(from.Y, curve.FirstControl.Y, curve.SecondControl.Y, curve.End.Y)))
                {
                    yield return OnBezier(from, curve, t);
                }

                break;
        }
    }

    // Where one coordinate of a cubic turns: the zeros of its derivative, a quadratic.
    private static IEnumerable<double> Roots(double p0, double p1, double p2, double p3)
    {
        var a = -p0 + 3 * p1 - 3 * p2 + p3;
        var b = 2 * (p0 - 2 * p1 + p2);
        var c = p1 - p0;
        double[] roots = Math.Abs(a) < 1e-12
            ? Math.Abs(b) < 1e-12 ? [] : [-c / b]
            : b * b - 4 * a * c is >= 0 and var discriminant
                ? [(-b + Math.Sqrt(discriminant)) / (2 * a), (-b - Math.Sqrt(discriminant)) / (2 * a)] : [];
        return roots.Where(t => t is > 0 and < 1);
    }
}
