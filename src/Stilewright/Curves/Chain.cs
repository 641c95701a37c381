namespace Stilewright.Curves;

/// <summary>Lines and arcs, each beginning where the one before ends; a closed chain also ends where it begins.</summary>
/// <remarks>All lengths are inches. A chain never changes. The left is that of someone who walks along it.</remarks>
public sealed class Chain
{
    private readonly CurveSegment[] segments;
    private readonly double[] starts;
    private CurveBox[]? boxes;

    /// <exception cref="ArgumentException">There is no segment, or two neighbours are more than 1e-9 in apart; the message names the place.</exception>
    public Chain(IEnumerable<CurveSegment> segments, bool isClosed)
    {
        this.segments = [.. segments];
        IsClosed = isClosed;
        if (this.segments.Length == 0)
            throw new ArgumentException("A chain has at least one segment.", nameof(segments));

        starts = new double[this.segments.Length + 1];
        for (var i = 0; i < this.segments.Length; i++)
        {
            starts[i + 1] = starts[i] + this.segments[i].Length;
            var next = i + 1 < this.segments.Length ? i + 1 : 0;
            if (next == 0 && !isClosed)
                break;
            var gap = this.segments[i].End.DistanceTo(this.segments[next].Start);
            if (gap > CurveTolerance.MeetingInches)
            {
                throw new ArgumentException(
                    $"Segment {i + 1} ends at {this.segments[i].End}, but segment {next + 1} begins at {this.segments[next].Start}, {gap} in away.", nameof(segments));
            }
        }
    }

    public IReadOnlyList<CurveSegment> Segments => segments;
    public bool IsClosed { get; }
    public CurvePoint Start => segments[0].Start;
    public CurvePoint End => segments[^1].End;

    /// <summary>Length along the curve, in.</summary>
    public double Length => starts[^1];

    public CurveBox Box
    {
        get
        {
            var box = Boxes[0];
            foreach (var other in Boxes)
                box = box.With(other);
            return box;
        }
    }

    /// <summary>Area of a closed chain that does not cross itself, in²: positive when it runs counter-clockwise.</summary>
    /// <exception cref="InvalidOperationException">The chain is open.</exception>
    public double Area => IsClosed ? segments.Sum(segment => segment.AreaShare) : throw new InvalidOperationException("An open chain has no area.");

    // Most chains are steps on the way to another, and nobody asks for their boxes.
    private CurveBox[] Boxes => boxes ??= Array.ConvertAll(segments, segment => segment.Box);

    /// <summary>Distance along the chain at which a segment begins, in.</summary>
    public double StartOf(int segment) => starts[segment];

    public CurvePoint PointAt(double distanceInches)
    {
        var (segment, along) = Locate(distanceInches);
        return segments[segment].PointAt(along);
    }

    /// <summary>Unit step in the direction of travel; at a corner, that of the segment which begins there.</summary>
    public CurvePoint DirectionAt(double distanceInches)
    {
        var (segment, along) = Locate(distanceInches);
        return segments[segment].DirectionAt(along);
    }

    /// <summary>The place of the chain that is closest to a point; the first of several.</summary>
    public ClosestPlace ClosestTo(CurvePoint point)
    {
        var (nearest, best) = (segments[0].ClosestTo(point), 0);
        for (var i = 1; i < segments.Length; i++)
        {
            if (segments[i].ClosestTo(point) is var closest && closest.Distance < nearest.Distance)
                (nearest, best) = (closest, i);
        }

        return new(nearest.Distance, starts[best] + nearest.Along, segments[best].PointAt(nearest.Along));
    }

    /// <summary>Whether every place of the chain is at least so far from a point, in.</summary>
    internal bool KeepsOff(CurvePoint point, double distanceInches)
    {
        for (var i = 0; i < segments.Length; i++)
        {
            if (!Boxes[i].KeepsOff(point, distanceInches) && segments[i].DistanceTo(point) < distanceInches)
                return false;
        }

        return true;
    }

    /// <summary>Whether a closed chain runs round the point; on the chain itself the answer may be either.</summary>
    /// <exception cref="InvalidOperationException">The chain is open.</exception>
    public bool Contains(CurvePoint point) => IsClosed
        ? Math.Abs(segments.Sum(segment => segment.TurnRound(point))) > Math.PI
        : throw new InvalidOperationException("An open chain contains nothing.");

    public Chain Reversed()
    {
        var reversed = new CurveSegment[segments.Length];
        for (var i = 0; i < segments.Length; i++)
            reversed[^(i + 1)] = segments[i].Reversed();
        return new(reversed, IsClosed);
    }

    public Chain Translated(CurvePoint by) => new(Array.ConvertAll(segments, segment => segment.Translated(by)), IsClosed);

    /// <summary>Mirrored in a vertical line, and still travelled from its own start to its own end.</summary>
    public Chain Mirrored(double verticalLineX) => new(Array.ConvertAll(segments, segment => segment.Mirrored(verticalLineX)), IsClosed);

    /// <summary>Turned over about the X axis, as an arch is for a bottom rail.</summary>
    public Chain TurnedOver() => new(Array.ConvertAll(segments, segment => segment.TurnedOver()), IsClosed);

    /// <summary>Two open chains, before and after a place that is neither end.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The place is not between the ends.</exception>
    public (Chain Before, Chain After) SplitAt(double distanceInches) => (Part(0, distanceInches), Part(distanceInches, Length));

    /// <summary>The open chain between two places.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The places are not in order on the chain, or are less than 1e-9 in apart.</exception>
    public Chain Part(double fromInches, double toInches)
    {
        if (!(fromInches >= 0 && toInches <= Length + CurveTolerance.MeetingInches && toInches - fromInches > CurveTolerance.MeetingInches))
            throw new ArgumentOutOfRangeException(nameof(toInches), toInches, $"The part from {fromInches} to {toInches} in is not on a chain {Length} in long.");

        var part = new List<CurveSegment>();
        for (var i = 0; i < segments.Length; i++)
        {
            var (from, to) = (Math.Max(0, fromInches - starts[i]), Math.Min(segments[i].Length, toInches - starts[i]));
            if (to - from <= CurveTolerance.MeetingInches)
                continue;
            var whole = from == 0 && to >= segments[i].Length - CurveTolerance.MeetingInches;
            part.Add(whole ? segments[i] : segments[i].Between(
                from == 0 ? segments[i].Start : segments[i].PointAt(from),
                to >= segments[i].Length - CurveTolerance.MeetingInches ? segments[i].End : segments[i].PointAt(to)));
        }

        return new(part, isClosed: false);
    }

    /// <summary>Where the chain meets another, in order along this one.</summary>
    public IReadOnlyList<Crossing> CrossingsWith(Chain other)
    {
        var all = new List<Crossing>();
        var found = new List<Crossing>();
        for (var i = 0; i < segments.Length; i++)
        {
            for (var j = 0; j < other.segments.Length; j++)
            {
                if (!Boxes[i].Touches(other.Boxes[j], CurveTolerance.MeetingInches))
                    continue;
                found.Clear();
                SegmentCrossings.Find(segments[i], other.segments[j], found);
                all.AddRange(found.Select(crossing => crossing with { OnFirst = starts[i] + crossing.OnFirst, OnSecond = other.starts[j] + crossing.OnSecond }));
            }
        }

        all.Sort((one, next) => one.OnFirst.CompareTo(next.OnFirst));
        for (var i = all.Count - 1; i > 0; i--)
        {
            // Where two segments join, both report the one place.
            if (all[i].Place.DistanceTo(all[i - 1].Place) <= CurveTolerance.SamePlaceInches && all[i].OnFirst - all[i - 1].OnFirst <= CurveTolerance.SamePlaceInches)
                all.RemoveAt(i);
        }

        return all;
    }

    /// <summary>Where the chain meets the endless line through a place, in order along the chain.</summary>
    public IReadOnlyList<Crossing> CrossingsWithLine(CurvePoint through, CurvePoint direction)
    {
        var unit = direction.Unit();
        var box = Box;
        var reach = through.DistanceTo(new((box.Left + box.Right) / 2, (box.Bottom + box.Top) / 2)) + box.Width + box.Height + 1;
        return CrossingsWith(new([new LineSegment(through - (unit * reach), through + (unit * reach))], isClosed: false));
    }

    /// <summary>Places where the direction breaks, in order; an open chain's ends are none.</summary>
    public IReadOnlyList<Corner> Corners()
    {
        var corners = new List<Corner>();
        for (var i = 0; i < segments.Length; i++)
        {
            if (i == 0 && !IsClosed)
                continue;
            var before = segments[i == 0 ? ^1 : i - 1];
            var (arriving, leaving) = (before.DirectionAt(before.Length), segments[i].DirectionAt(0));
            var turn = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
            if (Math.Abs(turn) > CurveTolerance.CornerRadians)
                corners.Add(new(starts[i], segments[i].Start, turn));
        }

        return corners;
    }

    /// <summary>Points on the curve whose straight connections stay within the tolerance of it (the height of each arc over its chord).</summary>
    /// <param name="toleranceInches">Greatest distance of chord and arc. Positive.</param>
    public IReadOnlyList<CurvePoint> Flattened(double toleranceInches)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(toleranceInches);
        var points = new List<CurvePoint> { Start };
        foreach (var segment in segments)
        {
            if (segment is ArcSegment arc)
            {
                // Height over a chord that subtends φ: R (1 − cos(φ/2)).
                var each = 2 * Math.Acos(Math.Max(0, 1 - (toleranceInches / arc.Radius)));
                var count = (int)Math.Ceiling(Math.Abs(arc.SweepRadians) / each);
                for (var i = 1; i < count; i++)
                    points.Add(arc.PointAt(arc.Length * i / count));
            }

            points.Add(segment.End);
        }

        return points;
    }

    /// <summary>The curve at an even distance to the left (to the right when negative), as every place would be reached from its nearest.</summary>
    /// <param name="join">What becomes of corners that open to that side.</param>
    /// <remarks>See <see cref="ChainOffset"/>. An offset of nothing is the chain itself.</remarks>
    public OffsetResult Offset(double leftInches, CornerJoin join = CornerJoin.Mitre) => ChainOffset.Of(this, leftInches, join);

    private (int Segment, double Along) Locate(double distanceInches)
    {
        var found = Array.BinarySearch(starts, 0, segments.Length, distanceInches);
        var segment = Math.Clamp(found >= 0 ? found : ~found - 1, 0, segments.Length - 1);
        return (segment, Math.Clamp(distanceInches - starts[segment], 0, segments[segment].Length));
    }
}

/// <summary>A place of a chain that is closest to a point: how far off, and how far along, in.</summary>
public readonly record struct ClosestPlace(double Distance, double Along, CurvePoint Place);

/// <summary>A break in direction: distance along the chain, in, and the turn, to the left positive.</summary>
public readonly record struct Corner(double Along, CurvePoint Place, double TurnRadians);
