namespace Stilewright.Curves;

/// <summary>The true offset of a chain: the places to its left whose nearest place on it is exactly the offset away.</summary>
/// <remarks>
/// Every segment is moved by itself; corners that open to the side get an arc, or a mitre. All these pieces are cut where they
/// meet each other, and where they come as near to an open end as the offset. A cut piece is either wholly true or wholly false,
/// so its middle tells: it is dropped when it is nearer to the chain than the offset, or inside the wedge of a mitre. What
/// remains is joined end to start. Pieces are compared pairwise: time grows with the square of the number of segments.
/// </remarks>
internal sealed class ChainOffset
{
    private const double MitreLimit = 10;

    private readonly Chain chain;
    private readonly double offset;
    private readonly double tolerance;
    private readonly List<(CurveSegment Segment, int Source)> pieces = [];
    private readonly List<Chain> wedges = [];

    private ChainOffset(Chain chain, double offset)
    {
        (this.chain, this.offset) = (chain, offset);
        tolerance = CurveTolerance.Distance(offset + chain.Segments.Max(segment => segment is ArcSegment arc ? arc.Radius : segment.Length));
    }

    public static OffsetResult Of(Chain chain, double leftInches, CornerJoin join)
    {
        if (!double.IsFinite(leftInches))
            throw new ArgumentOutOfRangeException(nameof(leftInches), leftInches, "An offset is a number of inches.");
        if (leftInches == 0)
            return new([chain], []);
        if (leftInches > 0)
            return new ChainOffset(chain, leftInches).Find(join);

        var other = new ChainOffset(chain.Reversed(), -leftInches).Find(join);
        var last = chain.Segments.Count - 1;
        return new(
            [.. other.Chains.Select(each => each.Reversed()).Reverse()],
            [.. other.Swallowed.Select(each => each with
            {
                Index = last - each.Index, Segment = chain.Segments[last - each.Index], Along = chain.Length - each.Along,
            }).Reverse()]);
    }

    private OffsetResult Find(CornerJoin join)
    {
        Collect(join);
        var kept = Cut().Where(slice => IsTrue(slice.Segment)).ToList();
        var survived = new bool[chain.Segments.Count];
        foreach (var (segment, source) in kept)
        {
            if (source >= 0 && segment.Length > CurveTolerance.SamePlaceInches)
                survived[source] = true;
        }

        var swallowed = new List<SwallowedSegment>();
        for (var i = 0; i < survived.Length; i++)
        {
            var segment = chain.Segments[i];
            if (!survived[i])
            {
                swallowed.Add(new(i, segment, chain.StartOf(i) + (segment.Length / 2), segment.PointAt(segment.Length / 2),
                    segment is ArcSegment { SweepRadians: > 0 } arc && arc.Radius <= offset + CurveTolerance.SamePlaceInches));
            }
        }

        return new(Joined([.. kept.Select(slice => slice.Segment)]), swallowed);
    }

    // Parallel pieces in order, with what joins them at corners that open to the left.
    private void Collect(CornerJoin join)
    {
        var count = chain.Segments.Count;
        var parallel = chain.Segments.Select(segment => segment.Parallel(offset)).ToArray();
        var joins = new CurveSegment?[count];
        for (var i = 0; i < count; i++)
        {
            if (i == count - 1 && !chain.IsClosed)
                break;
            var next = (i + 1) % count;
            var (before, after) = (chain.Segments[i], chain.Segments[next]);
            var (arriving, leaving) = (before.DirectionAt(before.Length), after.DirectionAt(0));
            var turn = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
            if (Math.Abs(turn) * offset <= CurveTolerance.MeetingInches)
            {
                if (parallel[i] is { } one && parallel[next] is { } other)
                    parallel[next] = other.Meeting(one.End, next == i ? one.End : other.End);
            }
            else if (turn < 0 || turn >= Math.PI - CurveTolerance.CornerRadians)
            {
                var corner = before.End;
                if (join == CornerJoin.Round || !Mitred(parallel, i, next, corner))
                    joins[i] = ArcSegment.About(corner, corner + (arriving.TurnedLeft() * offset), corner + (leaving.TurnedLeft() * offset), counterClockwise: false);
            }
        }

        for (var i = 0; i < count; i++)
        {
            if (parallel[i] is { } segment)
                pieces.Add((segment, i));
            if (joins[i] is { } corner)
                pieces.Add((corner, -1));
        }
    }

    private bool Mitred(CurveSegment?[] parallel, int before, int after, CurvePoint corner)
    {
        if (before == after || parallel[before] is not { } one || parallel[after] is not { } other)
            return false;
        var reach = offset * MitreLimit;
        var (onward, backward) = (one.Beyond(reach), other.Reversed().Beyond(reach));
        var found = new List<Crossing>();
        SegmentCrossings.Find(onward, backward, found);
        found.RemoveAll(crossing => crossing.Place.DistanceTo(corner) > reach
            || Math.Min(crossing.OnFirst, crossing.OnSecond) <= CurveTolerance.SamePlaceInches);
        if (found.Count == 0)
            return false;

        var tip = found.MinBy(crossing => crossing.OnFirst).Place;
        wedges.Add(new(
            [
                new LineSegment(corner, one.End), onward.Between(one.End, tip),
                backward.Between(other.Start, tip).Reversed(), new LineSegment(other.Start, corner),
            ], isClosed: true));
        parallel[before] = one.Between(one.Start, tip);
        parallel[after] = other.Between(tip, other.End);
        return true;
    }

    private List<(CurveSegment Segment, int Source)> Cut()
    {
        var boxes = pieces.Select(piece => piece.Segment.Box).ToArray();
        var cuts = new List<(double Along, CurvePoint Place)>[pieces.Count];
        var found = new List<Crossing>();
        for (var i = 0; i < pieces.Count; i++)
            cuts[i] = [];
        for (var i = 0; i < pieces.Count; i++)
        {
            for (var j = i + 1; j < pieces.Count; j++)
            {
                if (!boxes[i].Touches(boxes[j], CurveTolerance.MeetingInches))
                    continue;
                found.Clear();
                SegmentCrossings.Find(pieces[i].Segment, pieces[j].Segment, found);
                foreach (var crossing in found)
                {
                    cuts[i].Add((crossing.OnFirst, crossing.Place));
                    cuts[j].Add((crossing.OnSecond, crossing.Place));
                }
            }
        }

        if (!chain.IsClosed)
        {
            CutRound(chain.Start, cuts, boxes);
            CutRound(chain.End, cuts, boxes);
        }

        var slices = new List<(CurveSegment, int)>();
        for (var i = 0; i < pieces.Count; i++)
        {
            var (piece, source) = pieces[i];
            var (from, at) = (piece.Start, 0.0);
            cuts[i].Sort((one, other) => one.Along.CompareTo(other.Along));
            foreach (var (along, place) in cuts[i])
            {
                if (along - at <= CurveTolerance.SamePlaceInches || piece.Length - along <= CurveTolerance.SamePlaceInches)
                    continue;
                slices.Add((piece.Between(from, place), source));
                (from, at) = (place, along);
            }

            slices.Add((at == 0 ? piece : piece.Between(from, piece.End), source));
        }

        return slices;
    }

    private void CutRound(CurvePoint end, List<(double Along, CurvePoint Place)>[] cuts, CurveBox[] boxes)
    {
        var circle = new ArcSegment(end, offset, 0, 2 * Math.PI);
        var box = circle.Box;
        var found = new List<Crossing>();
        for (var i = 0; i < pieces.Count; i++)
        {
            if (!boxes[i].Touches(box, CurveTolerance.MeetingInches))
                continue;
            found.Clear();
            SegmentCrossings.Find(pieces[i].Segment, circle, found);
            cuts[i].AddRange(found.Select(crossing => (crossing.OnFirst, crossing.Place)));
        }
    }

    private bool IsTrue(CurveSegment slice)
    {
        var middle = slice.PointAt(slice.Length / 2);
        return chain.KeepsOff(middle, offset - tolerance) && !wedges.Exists(wedge => IsInside(wedge, middle));
    }

    private static bool IsInside(Chain wedge, CurvePoint point) =>
        wedge.Contains(point) && wedge.ClosestTo(point).Distance > CurveTolerance.MeetingInches;

    // Runs begin where nothing leads in; what is left then are closed ones.
    private static List<Chain> Joined(List<CurveSegment> slices)
    {
        const double Near = 3 * CurveTolerance.SamePlaceInches;
        var chains = new List<Chain>();
        var free = new bool[slices.Count];
        var led = new bool[slices.Count];
        for (var i = 0; i < slices.Count; i++)
        {
            free[i] = true;
            for (var j = 0; j < slices.Count && !led[i]; j++)
                led[i] = slices[j].End.DistanceTo(slices[i].Start) <= Near;
        }

        for (var i = 0; i < slices.Count; i++)
        {
            if (!led[i])
                Run(i);
        }

        for (var i = 0; i < slices.Count; i++)
        {
            if (free[i])
                Run(i);
        }

        return chains;

        void Run(int first)
        {
            var run = new List<CurveSegment>();
            for (var next = first; next >= 0; next = Follower(next))
            {
                free[next] = false;
                run.Add(run.Count == 0 ? slices[next] : slices[next].Meeting(run[^1].End, slices[next].End));
            }

            var closed = run[^1].End.DistanceTo(run[0].Start) <= Near && (run.Count > 1 || run[0] is ArcSegment);
            if (closed)
                run[^1] = run[^1].Meeting(run[^1].Start, run[0].Start);
            if (run.Sum(each => each.Length) > CurveTolerance.CrumbInches)
                chains.Add(new(run, closed));
        }

        int Follower(int slice)
        {
            var (best, nearest) = (-1, Near);
            for (var i = 0; i < slices.Count; i++)
            {
                var next = (slice + 1 + i) % slices.Count;
                if (free[next] && slices[next].Start.DistanceTo(slices[slice].End) is var distance && distance <= nearest)
                    (best, nearest) = (next, distance);
                if (nearest == 0)
                    break;
            }

            return best;
        }
    }
}
