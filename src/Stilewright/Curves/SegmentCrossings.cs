namespace Stilewright.Curves;

/// <summary>Where two lines or arcs meet: crossings and touches, and the ends of one that lie on the other, so that two that
/// run together meet where they begin and cease to.</summary>
internal static class SegmentCrossings
{
    public static void Find(CurveSegment first, CurveSegment second, List<Crossing> into)
    {
        var before = into.Count;
        switch (first, second)
        {
            case (LineSegment one, LineSegment other):
                Lines(one, other, into);
                break;
            case (LineSegment line, ArcSegment arc):
                LineAndCircle(line, arc, into, before, lineFirst: true);
                break;
            case (ArcSegment arc, LineSegment line):
                LineAndCircle(line, arc, into, before, lineFirst: false);
                break;
            case (ArcSegment one, ArcSegment other):
                Circles(one, other, into, before);
                break;
        }

        if (TouchedAt(second, first.Start) is { } startOfFirst)
            Add(new(0, startOfFirst, first.Start), into, before);
        if (TouchedAt(second, first.End) is { } endOfFirst)
            Add(new(first.Length, endOfFirst, first.End), into, before);
        if (TouchedAt(first, second.Start) is { } startOfSecond)
            Add(new(startOfSecond, 0, second.Start), into, before);
        if (TouchedAt(first, second.End) is { } endOfSecond)
            Add(new(endOfSecond, second.Length, second.End), into, before);
    }

    // How far along a segment an end of the other touches it.
    private static double? TouchedAt(CurveSegment segment, CurvePoint end) =>
        segment.RunsBy(end, CurveTolerance.TouchInches) && segment.ClosestTo(end) is var (distance, along) && distance <= CurveTolerance.TouchInches ? along : null;

    private static void Lines(LineSegment one, LineSegment other, List<Crossing> into)
    {
        var (along, across) = (one.End - one.Start, other.End - other.Start);
        var slant = along.Cross(across);
        if (slant == 0)
            return;
        var between = other.Start - one.Start;
        var (onOne, onOther) = (between.Cross(across) / slant, between.Cross(along) / slant);
        if (onOne is >= 0 and <= 1 && onOther is >= 0 and <= 1)
            into.Add(new(onOne * along.Length, onOther * across.Length, one.Start + (along * onOne)));
    }

    private static void LineAndCircle(LineSegment line, ArcSegment arc, List<Crossing> into, int before, bool lineFirst)
    {
        var direction = line.DirectionAt(0);
        var toCentre = arc.Centre - line.Start;
        var foot = toCentre.Dot(direction);
        var away = Math.Abs(toCentre.Cross(direction));
        if (away > arc.Radius + CurveTolerance.MeetingInches)
            return;
        var half = Math.Sqrt(Math.Max(0, (arc.Radius - away) * (arc.Radius + away)));
        Try(foot - half);
        Try(foot + half);

        void Try(double distance)
        {
            if (distance < 0 || distance > line.Length)
                return;
            var place = line.Start + (direction * distance);
            if (Along(arc, place) is not { } onArc)
                return;
            Add(lineFirst ? new(distance, onArc, place) : new(onArc, distance, place), into, before);
        }
    }

    private static void Circles(ArcSegment one, ArcSegment other, List<Crossing> into, int before)
    {
        var apart = other.Centre - one.Centre;
        var distance = apart.Length;
        if (distance <= CurveTolerance.MeetingInches
            || distance > one.Radius + other.Radius + CurveTolerance.MeetingInches
            || distance < Math.Abs(one.Radius - other.Radius) - CurveTolerance.MeetingInches)
        {
            return;
        }

        // Written with sums and differences of radii, so that large circles that nearly touch keep their digits.
        var foot = (distance + ((one.Radius - other.Radius) * (one.Radius + other.Radius) / distance)) / 2;
        var half = Math.Sqrt(Math.Max(0, (one.Radius - foot) * (one.Radius + foot)));
        var direction = apart.Unit();
        Try(one.Centre + (direction * foot) + (direction.TurnedLeft() * half));
        Try(one.Centre + (direction * foot) - (direction.TurnedLeft() * half));

        void Try(CurvePoint place)
        {
            if (Along(one, place) is { } onOne && Along(other, place) is { } onOther)
                Add(new(onOne, onOther, place), into, before);
        }
    }

    private static double? Along(ArcSegment arc, CurvePoint place)
    {
        var outward = place - arc.Centre;
        if (!arc.Passes(outward))
            return null;
        var turn = arc.TurnTo(Math.Atan2(outward.Y, outward.X));
        return turn <= Math.Abs(arc.SweepRadians) ? turn * arc.Radius : null;
    }

    private static void Add(Crossing crossing, List<Crossing> into, int before)
    {
        for (var i = before; i < into.Count; i++)
        {
            if (into[i].Place.DistanceTo(crossing.Place) <= CurveTolerance.MeetingInches)
                return;
        }

        into.Add(crossing);
    }
}
