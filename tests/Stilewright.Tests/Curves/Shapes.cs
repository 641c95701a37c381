using NetTopologySuite.Geometries;
using Stilewright.Curves;
using LineSegment = Stilewright.Curves.LineSegment;

namespace Stilewright.Tests.Curves;

/// <summary>What the tests of curves share: drawn arches, random chains, and the same shapes in NetTopologySuite.</summary>
internal static class Shapes
{
    public static ArchCurve Drawn(ArchResult result) => Assert.IsType<ArchResult.Drawn>(result).Curve;

    /// <summary>Length as the sum of thousands of chords: numeric integration that knows nothing of arcs.</summary>
    public static double LengthByChords(Chain chain, int chords = 20_000)
    {
        var sum = 0.0;
        foreach (var segment in chain.Segments)
        {
            var last = segment.Start;
            for (var i = 1; i <= chords; i++)
            {
                var next = segment.PointAt(segment.Length * i / chords);
                sum += last.DistanceTo(next);
                last = next;
            }
        }

        return sum;
    }

    public static Coordinate[] Coordinates(Chain chain, double tolerance) =>
        [.. chain.Flattened(tolerance).Select(point => new Coordinate(point.X, point.Y))];

    public static LineString Line(Chain chain, double tolerance) => new(Coordinates(chain, tolerance));

    public static Polygon Polygon(Chain chain, double tolerance)
    {
        var points = Coordinates(chain, tolerance);
        points[^1] = points[0];
        return new(new LinearRing(points));
    }

    /// <summary>A closed counter-clockwise chain round the origin that does not cross itself: corners at random distances, joined by
    /// lines and shallow arcs bent either way.</summary>
    public static Chain Blob(Random random, int corners)
    {
        while (true)
        {
            var chain = MaybeCrossing(random, corners);
            if (Polygon(chain, 1e-5).IsValid)
                return chain;
        }
    }

    private static Chain MaybeCrossing(Random random, int corners)
    {
        var points = Enumerable.Range(0, corners)
            .Select(i => CurvePoint.AtAngle(2 * Math.PI * (i + (0.5 * random.NextDouble())) / corners) * (2 + (6 * random.NextDouble()))).ToArray();
        return new(points.Select((point, i) => Joining(random, point, points[(i + 1) % corners])), isClosed: true);
    }

    /// <summary>An open chain that wanders to the right.</summary>
    public static Chain Path(Random random, int segments)
    {
        var points = Enumerable.Range(0, segments + 1).Select(i => new CurvePoint((2 * i) + random.NextDouble(), 4 * random.NextDouble())).ToArray();
        return new(Enumerable.Range(0, segments).Select(i => Joining(random, points[i], points[i + 1])), isClosed: false);
    }

    private static CurveSegment Joining(Random random, CurvePoint from, CurvePoint to)
    {
        if (random.Next(3) == 0)
            return new LineSegment(from, to);
        var chord = from.DistanceTo(to);
        var radius = chord * (1.2 + (3 * random.NextDouble()));
        var counterClockwise = random.Next(2) == 0;
        var middle = (from + to) * 0.5;
        var left = (to - from).TurnedLeft() * (Math.Sqrt((radius * radius) - (chord * chord / 4)) / chord);
        return ArcSegment.About(counterClockwise ? middle + left : middle - left, from, to, counterClockwise);
    }
}
