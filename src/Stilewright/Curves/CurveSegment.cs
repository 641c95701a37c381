namespace Stilewright.Curves;

/// <summary>A straight line or a circular arc with a direction, from its start to its end. Distances along it are in inches.</summary>
public abstract record CurveSegment
{
    private protected CurveSegment(CurvePoint start, CurvePoint end) => (Start, End) = (start, end);

    public CurvePoint Start { get; private protected init; }
    public CurvePoint End { get; private protected init; }

    /// <summary>Length along the curve, in.</summary>
    public abstract double Length { get; }

    public abstract CurveBox Box { get; }

    /// <summary>Half the integral of x dy − y dx, in²: over a closed counter-clockwise chain these add up to its area (Green).</summary>
    public abstract double AreaShare { get; }

    public abstract CurvePoint PointAt(double distanceInches);

    /// <summary>Unit step in the direction of travel.</summary>
    public abstract CurvePoint DirectionAt(double distanceInches);

    /// <summary>How far off the point is, and how far along the segment its closest place lies, in.</summary>
    public abstract (double Distance, double Along) ClosestTo(CurvePoint point);

    /// <summary>How far off the point is, in: that of <see cref="ClosestTo"/>, without the place.</summary>
    internal abstract double DistanceTo(CurvePoint point);

    /// <summary>Whether the endless line or whole circle passes within the distance of the point.</summary>
    internal abstract bool RunsBy(CurvePoint point, double withinInches);

    public abstract CurveSegment Reversed();
    public abstract CurveSegment Translated(CurvePoint by);
    public abstract CurveSegment Mirrored(double verticalLineX);

    /// <summary>This segment turned over about the X axis.</summary>
    public abstract CurveSegment TurnedOver();

    /// <summary>The curve parallel to this one, to the left by the distance; null where an arc has no radius left.</summary>
    internal abstract CurveSegment? Parallel(double leftInches);

    /// <summary>The same line or circle between two places of it, which become the exact ends.</summary>
    internal abstract CurveSegment Between(CurvePoint start, CurvePoint end);

    /// <summary>The same line or circle carried on from its end, by at most the distance and less than half a turn.</summary>
    internal abstract CurveSegment Beyond(double distanceInches);

    /// <summary>The same with ends moved by less than a rounding.</summary>
    internal CurveSegment Meeting(CurvePoint start, CurvePoint end) => this with { Start = start, End = end };

    /// <summary>The angle by which the segment turns round the point, in radians, counter-clockwise positive.</summary>
    internal abstract double TurnRound(CurvePoint point);

    private protected static double ChordTurn(CurvePoint start, CurvePoint end, CurvePoint point) =>
        Math.Atan2((start - point).Cross(end - point), (start - point).Dot(end - point));
}

/// <summary>A straight line.</summary>
public sealed record LineSegment : CurveSegment
{
    /// <exception cref="ArgumentException">The ends are one place, or are not numbers.</exception>
    public LineSegment(CurvePoint start, CurvePoint end) : base(start, end)
    {
        if (!double.IsFinite(Length) || Length <= 0)
            throw new ArgumentException($"A line from {start} to {end} has no length.");
    }

    public override double Length => Start.DistanceTo(End);
    public override CurveBox Box => CurveBox.Round(Start, End);
    public override double AreaShare => Start.Cross(End) / 2;
    public override CurvePoint PointAt(double distanceInches) => Start + (DirectionAt(distanceInches) * distanceInches);
    public override CurvePoint DirectionAt(double distanceInches) => (End - Start).Unit();

    public override (double Distance, double Along) ClosestTo(CurvePoint point)
    {
        var length = Length;
        var (along, off) = ((point - Start).Dot(End - Start) / length, (End - Start).Cross(point - Start) / length);
        return along <= 0 ? (point.DistanceTo(Start), 0) : along >= length ? (point.DistanceTo(End), length) : (Math.Abs(off), along);
    }

    internal override double DistanceTo(CurvePoint point) => ClosestTo(point).Distance;

    internal override bool RunsBy(CurvePoint point, double withinInches) =>
        Math.Abs((End - Start).Cross(point - Start)) <= withinInches * Length;

    public override CurveSegment Reversed() => new LineSegment(End, Start);
    public override CurveSegment Translated(CurvePoint by) => new LineSegment(Start + by, End + by);
    public override CurveSegment Mirrored(double verticalLineX) => new LineSegment(Start.MirroredIn(verticalLineX), End.MirroredIn(verticalLineX));
    public override CurveSegment TurnedOver() => new LineSegment(Start with { Y = -Start.Y }, End with { Y = -End.Y });
    internal override CurveSegment Parallel(double leftInches) => Translated(DirectionAt(0).TurnedLeft() * leftInches);
    internal override CurveSegment Between(CurvePoint start, CurvePoint end) => new LineSegment(start, end);
    internal override CurveSegment Beyond(double distanceInches) => new LineSegment(End, End + (DirectionAt(0) * distanceInches));
    internal override double TurnRound(CurvePoint point) => ChordTurn(Start, End, point);
}

/// <summary>A circular arc; its ends are kept as they were given, so that neighbours meet exactly.</summary>
public sealed record ArcSegment : CurveSegment
{
    private const double FullTurn = 2 * Math.PI;
    private static readonly CurvePoint[] Axes = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];

    /// <param name="startRadians">Angle of the start seen from the centre, counter-clockwise from the X axis.</param>
    /// <param name="sweepRadians">Angle travelled, counter-clockwise positive; at most a full turn either way.</param>
    /// <exception cref="ArgumentException">The radius is not positive, the sweep is zero or more than a turn, or one is no number.</exception>
    public ArcSegment(CurvePoint centre, double radiusInches, double startRadians, double sweepRadians)
        : this(centre, radiusInches, startRadians, sweepRadians,
            centre + (CurvePoint.AtAngle(startRadians) * radiusInches), centre + (CurvePoint.AtAngle(startRadians + sweepRadians) * radiusInches))
    {
    }

    private ArcSegment(CurvePoint centre, double radiusInches, double startRadians, double sweepRadians, CurvePoint start, CurvePoint end)
        : base(start, end)
    {
        if (!double.IsFinite(centre.X + centre.Y + radiusInches + startRadians) || radiusInches <= 0)
            throw new ArgumentException($"An arc of radius {radiusInches} in about {centre} cannot be drawn.");
        if (!(Math.Abs(sweepRadians) is > 0 and <= FullTurn))
            throw new ArgumentException($"An arc cannot sweep {sweepRadians} rad; it travels up to one turn either way.");
        (Centre, Radius, StartRadians, SweepRadians) = (centre, radiusInches, startRadians, sweepRadians);
    }

    public CurvePoint Centre { get; }

    /// <summary>In inches.</summary>
    public double Radius { get; }

    public double StartRadians { get; }

    /// <summary>Counter-clockwise positive.</summary>
    public double SweepRadians { get; }

    /// <summary>The arc about a centre from one place to another, which become its exact ends; less than a full turn.</summary>
    /// <exception cref="ArgumentException">The places are one, or differ in their distance from the centre by more than 1e-6 in.</exception>
    public static ArcSegment About(CurvePoint centre, CurvePoint start, CurvePoint end, bool counterClockwise)
    {
        const double RoundnessInches = 1e-6;
        var radius = start.DistanceTo(centre);
        if (!(Math.Abs(radius - end.DistanceTo(centre)) <= RoundnessInches))
            throw new ArgumentException($"{start} and {end} are not on one circle about {centre}.");
        var from = Math.Atan2(start.Y - centre.Y, start.X - centre.X);
        var sweep = Math.Atan2((start - centre).Cross(end - centre), (start - centre).Dot(end - centre));
        if (counterClockwise && sweep < 0)
            sweep += FullTurn;
        if (!counterClockwise && sweep > 0)
            sweep -= FullTurn;
        return new(centre, radius, from, sweep, start, end);
    }

    public override double Length => Radius * Math.Abs(SweepRadians);

    public override CurveBox Box
    {
        get
        {
            var box = CurveBox.Round(Start, End);
            foreach (var outward in Axes)
            {
                if (Passes(outward))
                    box = box.With(Centre + (outward * Radius));
            }

            return box;
        }
    }

    public override double AreaShare => ((Radius * Radius * SweepRadians) + Centre.Cross(End - Start)) / 2;

    public override CurvePoint PointAt(double distanceInches) => Centre + (CurvePoint.AtAngle(AngleAt(distanceInches)) * Radius);

    public override CurvePoint DirectionAt(double distanceInches) => CurvePoint.AtAngle(AngleAt(distanceInches)).TurnedLeft() * Math.Sign(SweepRadians);

    public override (double Distance, double Along) ClosestTo(CurvePoint point)
    {
        var outward = point - Centre;
        var turn = TurnTo(Math.Atan2(outward.Y, outward.X));
        if (turn <= Math.Abs(SweepRadians))
            return (Math.Abs(outward.Length - Radius), Radius * turn);
        var (fromStart, fromEnd) = (point.DistanceTo(Start), point.DistanceTo(End));
        return fromStart <= fromEnd ? (fromStart, 0) : (fromEnd, Length);
    }

    internal override double DistanceTo(CurvePoint point) => point - Centre is var outward && Passes(outward)
        ? Math.Abs(outward.Length - Radius) : Math.Min(point.DistanceTo(Start), point.DistanceTo(End));

    internal override bool RunsBy(CurvePoint point, double withinInches) => Math.Abs(point.DistanceTo(Centre) - Radius) <= withinInches;

    /// <summary>Whether the arc passes in that direction from its centre, told by its ends and without an angle.</summary>
    internal bool Passes(CurvePoint outward)
    {
        var (start, end, turn) = (Start - Centre, End - Centre, Math.Sign(SweepRadians));
        var (afterStart, beforeEnd) = (start.Cross(outward) * turn >= 0, outward.Cross(end) * turn >= 0);
        return Math.Abs(SweepRadians) >= FullTurn || (Math.Abs(SweepRadians) <= Math.PI ? afterStart && beforeEnd : afterStart || beforeEnd);
    }

    /// <summary>The highest place of the arc.</summary>
    internal CurvePoint Top => TurnTo(Math.PI / 2) <= Math.Abs(SweepRadians)
        ? Centre + new CurvePoint(0, Radius) : Start.Y >= End.Y ? Start : End;

    public override CurveSegment Reversed() => new ArcSegment(Centre, Radius, StartRadians + SweepRadians, -SweepRadians, End, Start);

    public override CurveSegment Translated(CurvePoint by) => new ArcSegment(Centre + by, Radius, StartRadians, SweepRadians, Start + by, End + by);

    public override CurveSegment Mirrored(double verticalLineX) => new ArcSegment(
        Centre.MirroredIn(verticalLineX), Radius, Math.PI - StartRadians, -SweepRadians, Start.MirroredIn(verticalLineX), End.MirroredIn(verticalLineX));

    public override CurveSegment TurnedOver() => new ArcSegment(
        Centre with { Y = -Centre.Y }, Radius, -StartRadians, -SweepRadians, Start with { Y = -Start.Y }, End with { Y = -End.Y });

    internal override CurveSegment? Parallel(double leftInches)
    {
        var radius = Radius - (Math.Sign(SweepRadians) * leftInches);
        return radius <= CurveTolerance.SamePlaceInches ? null : new ArcSegment(Centre, radius, StartRadians, SweepRadians,
            Start + (DirectionAt(0).TurnedLeft() * leftInches), End + (DirectionAt(Length).TurnedLeft() * leftInches));
    }

    internal override CurveSegment Between(CurvePoint start, CurvePoint end) => About(Centre, start, end, SweepRadians > 0);

    internal override CurveSegment Beyond(double distanceInches) => new ArcSegment(
        Centre, Radius, StartRadians + SweepRadians, Math.CopySign(Math.Min(distanceInches / Radius, 0.9 * Math.PI), SweepRadians));

    internal override double TurnRound(CurvePoint point)
    {
        var chord = ChordTurn(Start, End, point);
        var between = point.DistanceTo(Centre) < Radius
            && (Math.Abs(SweepRadians) >= FullTurn || (End - Start).Cross(point - Start) * Math.Sign(SweepRadians) < 0);
        return between ? chord + (FullTurn * Math.Sign(SweepRadians)) : chord;
    }

    /// <summary>Angle travelled from the start until the direction seen from the centre is reached, from 0 to a full turn.</summary>
    internal double TurnTo(double angleRadians)
    {
        var turn = Math.IEEERemainder((angleRadians - StartRadians) * Math.Sign(SweepRadians), FullTurn);
        return turn < 0 ? turn + FullTurn : turn;
    }

    private double AngleAt(double distanceInches) => StartRadians + (Math.Sign(SweepRadians) * distanceInches / Radius);
}
