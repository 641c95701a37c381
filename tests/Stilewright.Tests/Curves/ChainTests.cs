using NetTopologySuite.Geometries;
using Stilewright.Curves;
using LineSegment = Stilewright.Curves.LineSegment;

namespace Stilewright.Tests.Curves;

public class ChainTests
{
    private const double FlatteningInches = 1e-5;

    // Machinery's Handbook, 31st edition (2020), page 79, segment of a circle: r = (c² + 4h²) / 8h; chord 16, height 6: 8 1/3.
    // Radius 60, height 8: chord 59.86 (59.867, cut off in print, which moves the radius by 0.012).
    [Fact]
    public void Machinery_s_Handbook_page_79_segments_of_circles()
    {
        var arch = Shapes.Drawn(ArchFamilies.Eyebrow(new(16, 6)));
        Assert.Equal(25.0 / 3, Assert.IsType<ArcSegment>(arch.Chain.Segments[0]).Radius, 12);

        var low = Shapes.Drawn(ArchFamilies.Eyebrow(new(59.86, 8)));
        Assert.Equal(60, Assert.IsType<ArcSegment>(low.Chain.Segments[0]).Radius, 0.013);
    }

    // MatheAss help, "Circular Sections", worked example: chord 21, arrow height 6 give radius 12.1875, angle 118.97953°,
    // arc 25.308373, segment area 89.254148.
    [Fact]
    public void MatheAss_worked_example_of_a_circular_section()
    {
        var arch = Shapes.Drawn(ArchFamilies.Eyebrow(new(21, 6))).Chain;
        var arc = Assert.IsType<ArcSegment>(arch.Segments[0]);
        Assert.Equal(12.1875, arc.Radius, 12);
        Assert.Equal(118.97953, -arc.SweepRadians * 180 / Math.PI, 5);
        Assert.Equal(25.308373, arch.Length, 6);
        var segment = new Chain([.. arch.Segments, new LineSegment(arch.End, arch.Start)], isClosed: true);
        Assert.Equal(89.254148, -segment.Area, 6);
    }

    [Fact]
    public void Ends_that_do_not_meet_are_named()
    {
        var thrown = Assert.Throws<ArgumentException>(() => new Chain(
            [new LineSegment(new(0, 0), new(1, 0)), new LineSegment(new(1, 2e-9), new(2, 0))], isClosed: false));
        Assert.Contains("Segment 1 ends at", thrown.Message, StringComparison.Ordinal);
        Assert.Contains("segment 2 begins", thrown.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => new Chain([new LineSegment(new(0, 0), new(1, 0))], isClosed: true));
        Assert.Throws<ArgumentException>(() => new Chain([], isClosed: false));
        Assert.NotNull(new Chain([new LineSegment(new(0, 0), new(1, 0)), new LineSegment(new(1, 0.9e-9), new(2, 0))], isClosed: false));
    }

    [Fact]
    public void Lengths_are_those_of_many_small_chords()
    {
        var random = new Random(1);
        for (var i = 0; i < 20; i++)
        {
            var chain = Shapes.Path(random, 4);
            Assert.Equal(Shapes.LengthByChords(chain), chain.Length, 1e-7);
        }
    }

    // NetTopologySuite 2.6: area of the flattened chain; the arcs' slivers are at most two thirds of the flattening times the length.
    [Fact]
    public void Areas_and_boxes_are_those_of_NetTopologySuite()
    {
        var random = new Random(2);
        for (var i = 0; i < 1_000; i++)
        {
            var chain = Shapes.Blob(random, random.Next(3, 12));
            var polygon = Shapes.Polygon(chain, FlatteningInches);
            Assert.Equal(polygon.Area, chain.Area, FlatteningInches * chain.Length);
            Assert.Equal(polygon.EnvelopeInternal.MaxX, chain.Box.Right, FlatteningInches);
            Assert.Equal(polygon.EnvelopeInternal.MinY, chain.Box.Bottom, FlatteningInches);
            Assert.Equal(-chain.Area, chain.Reversed().Area, 1e-9);
            Assert.Equal(-chain.Area, chain.Mirrored(3).Area, 1e-9);
        }
    }

    // NetTopologySuite 2.6: distance, and point in polygon, of the flattened chain.
    [Fact]
    public void Closest_places_and_insides_are_those_of_NetTopologySuite()
    {
        var random = new Random(3);
        for (var i = 0; i < 1_000; i++)
        {
            var chain = Shapes.Blob(random, random.Next(3, 12));
            var point = new CurvePoint((20 * random.NextDouble()) - 10, (20 * random.NextDouble()) - 10);
            var polygon = Shapes.Polygon(chain, FlatteningInches);
            var outside = new Point(point.X, point.Y);
            var closest = chain.ClosestTo(point);
            Assert.Equal(polygon.ExteriorRing.Distance(outside), closest.Distance, FlatteningInches);
            Assert.True(chain.PointAt(closest.Along).DistanceTo(closest.Place) < 1e-9);
            if (closest.Distance > FlatteningInches)
                Assert.Equal(polygon.Contains(outside), chain.Contains(point));
        }
    }

    // NetTopologySuite 2.6: every crossing found lies on both flattened chains, and every crossing it finds is found.
    [Fact]
    public void Crossings_are_those_of_NetTopologySuite_on_thousands_of_chains()
    {
        var random = new Random(4);
        var crossings = 0;
        for (var i = 0; i < 3_000; i++)
        {
            var one = Shapes.Path(random, random.Next(1, 5));
            var other = Shapes.Path(random, random.Next(1, 5)).Translated(new(0.3, 0.2));
            var found = one.CrossingsWith(other);
            crossings += found.Count;
            foreach (var crossing in found)
            {
                Assert.Equal(0, one.PointAt(crossing.OnFirst).DistanceTo(crossing.Place), 1e-8);
                Assert.Equal(0, other.PointAt(crossing.OnSecond).DistanceTo(crossing.Place), 1e-8);
            }

            Assert.True(found.Zip(found.Skip(1)).All(pair => pair.First.OnFirst <= pair.Second.OnFirst));
            var theirs = Shapes.Line(one, FlatteningInches).Intersection(Shapes.Line(other, FlatteningInches));
            foreach (var coordinate in theirs.Coordinates)
            {
                // A shallow crossing moves along the curve by the root of the flattening.
                var nearest = found.Min(crossing => crossing.Place.DistanceTo(new(coordinate.X, coordinate.Y)));
                Assert.True(nearest < 4 * Math.Sqrt(FlatteningInches), $"chain {i}: {coordinate} is {nearest} away");
            }
        }

        Assert.True(crossings > 2_000, $"{crossings}");
    }

    [Fact]
    public void Flattening_keeps_within_its_tolerance_and_not_needlessly_so()
    {
        var random = new Random(5);
        for (var i = 0; i < 200; i++)
        {
            var chain = Shapes.Path(random, 3);
            foreach (var tolerance in (double[])[1e-2, 1e-4])
            {
                var coarse = Shapes.Line(chain, tolerance);
                var away = chain.Flattened(1e-7).Max(point => coarse.Distance(new Point(point.X, point.Y)));
                Assert.InRange(away, 0, tolerance * 1.0001);
            }
        }

        // A quarter circle of radius 1 to 0.01: φ = 2 acos(0.99) = 16.26°, six chords.
        var quarter = new Chain([new ArcSegment(new(0, 0), 1, 0, Math.PI / 2)], isClosed: false);
        Assert.Equal(7, quarter.Flattened(0.01).Count);
    }

    [Fact]
    public void Splitting_gives_two_parts_that_meet_and_add_up()
    {
        var random = new Random(6);
        for (var i = 0; i < 500; i++)
        {
            var chain = Shapes.Path(random, 4);
            var at = chain.Length * (0.01 + (0.98 * random.NextDouble()));
            var (before, after) = chain.SplitAt(at);
            Assert.Equal(at, before.Length, 1e-9);
            Assert.Equal(chain.Length - at, after.Length, 1e-9);
            Assert.Equal(before.End, after.Start);
            Assert.True(before.End.DistanceTo(chain.PointAt(at)) < 1e-9);
            Assert.True((before.DirectionAt(before.Length) - after.DirectionAt(0)).Length < 1e-6 || chain.Corners().Any(corner => Math.Abs(corner.Along - at) < 1e-6));
        }

        var open = Shapes.Path(random, 2);
        Assert.Throws<ArgumentOutOfRangeException>(() => open.SplitAt(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => open.SplitAt(open.Length + 1));
    }

    [Fact]
    public void Mirrored_twice_and_reversed_twice_is_the_same_curve()
    {
        var random = new Random(7);
        for (var i = 0; i < 200; i++)
        {
            var chain = Shapes.Blob(random, 6);
            AssertSame(chain, chain.Mirrored(1.25).Mirrored(1.25));
            AssertSame(chain, chain.Reversed().Reversed());
            AssertSame(chain, chain.TurnedOver().TurnedOver());
            AssertSame(chain, chain.Translated(new(3, -2)).Translated(new(-3, 2)));
        }

        static void AssertSame(Chain one, Chain other)
        {
            for (var k = 0; k <= 50; k++)
                Assert.True(one.PointAt(one.Length * k / 50).DistanceTo(other.PointAt(other.Length * k / 50)) < 1e-9);
        }
    }

    [Fact]
    public void Corners_are_where_the_direction_breaks()
    {
        var square = new Chain(
            [
                new LineSegment(new(0, 0), new(2, 0)), new ArcSegment(new(2, 1), 1, -Math.PI / 2, Math.PI),
                new LineSegment(new(2, 2), new(0, 2)), new LineSegment(new(0, 2), new(0, 0)),
            ], isClosed: true);
        Assert.Equal([new CurvePoint(0, 0), new CurvePoint(0, 2)], square.Corners().Select(corner => corner.Place));
        Assert.All(square.Corners(), corner => Assert.Equal(Math.PI / 2, corner.TurnRadians, 12));
        Assert.Equal(4 + (Math.PI / 2), square.Area, 12);
        Assert.Equal(new CurveBox(0, 0, 3, 2), square.Box);
    }

    [Fact]
    public void A_line_meets_a_chain_in_order_along_it()
    {
        var chain = new Chain([new ArcSegment(new(0, 0), 2, Math.PI, -Math.PI)], isClosed: false);
        var found = chain.CrossingsWithLine(new(-50, 1), new(3, 0));
        Assert.Equal(2, found.Count);
        Assert.Equal(-Math.Sqrt(3), found[0].Place.X, 9);
        Assert.Equal(Math.Sqrt(3), found[1].Place.X, 9);
        Assert.Single(chain.CrossingsWithLine(new(7, 2), new(1, 0)));
        Assert.Empty(chain.CrossingsWithLine(new(0, 2.001), new(1, 0)));
    }
}
