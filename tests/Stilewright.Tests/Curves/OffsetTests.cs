using NetTopologySuite.Algorithm.Distance;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;
using Stilewright.Curves;
using LineSegment = Stilewright.Curves.LineSegment;

namespace Stilewright.Tests.Curves;

public class OffsetTests
{
    private const double FlatteningInches = 1e-4;
    private const int QuadrantSegments = 128;
    private const double SeparationFactor = 2e-3;

    // NetTopologySuite 2.6, buffer with round joins of the flattened chain: a fillet of 128 chords a quarter turn lies within
    // p (1 − cos(π/512)) of its arc, and its OffsetSegmentGenerator joins offset ends closer than p / 1000 without a fillet
    // (OFFSET_SEGMENT_SEPARATION_FACTOR), at either side of a chord. Both flattenings, each at most 1e-4 in, are allowed for.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.7)]
    [InlineData(1.6)]
    [InlineData(-0.3)]
    [InlineData(-1.1)]
    public void Offsets_are_the_buffers_of_NetTopologySuite(double inward)
    {
        var random = new Random(11);
        for (var i = 0; i < 300; i++)
        {
            var chain = Shapes.Blob(random, random.Next(3, 12));
            var expected = Shapes.Polygon(chain, FlatteningInches).Buffer(-inward, new BufferParameters(QuadrantSegments) { SimplifyFactor = 0 });
            var found = chain.Offset(inward, CornerJoin.Round);
            var error = (2 * FlatteningInches) + (Math.Abs(inward) * (1 - Math.Cos(Math.PI / 4 / QuadrantSegments) + SeparationFactor));
            Assert.All(found.Chains, each => Assert.True(each.IsClosed, $"chain {i} is open"));
            Assert.Equal(expected.Area, found.Chains.Sum(each => each.Area), error * (expected.Length + 1));
            if (expected.IsEmpty)
            {
                Assert.All(found.Chains, each => Assert.True(each.Area < 1e-3));
                continue;
            }

            var ours = new MultiLineString([.. found.Chains.Select(each => Shapes.Line(each, FlatteningInches))]);
            var distance = DiscreteHausdorffDistance.Distance(ours, expected.Boundary);
            Assert.True(distance < error || found.Chains.Count != expected.NumGeometries, $"chain {i}: {distance}");
        }
    }

    [Fact]
    public void Every_place_of_a_round_offset_is_the_offset_away()
    {
        var random = new Random(12);
        for (var i = 0; i < 1_000; i++)
        {
            var chain = i % 2 == 0 ? Shapes.Path(random, 5) : Shapes.Blob(random, 7);
            var by = (2 * random.NextDouble()) - 1;
            foreach (var each in chain.Offset(by, CornerJoin.Round).Chains)
            {
                for (var k = 0; k <= 40; k++)
                    Assert.Equal(Math.Abs(by), chain.ClosestTo(each.PointAt(each.Length * k / 40)).Distance, 1e-9);
            }
        }
    }

    // Two squares of 4 in joined by a neck 1 in wide. NetTopologySuite 2.6 gives the area.
    [Fact]
    public void A_figure_falls_apart_where_its_neck_is_narrower_than_twice_the_offset()
    {
        CurvePoint[] points =
        [
            new(0, 0), new(4, 0), new(4, 1.5), new(7, 1.5), new(7, 0), new(11, 0), new(11, 4), new(7, 4), new(7, 2.5), new(4, 2.5), new(4, 4), new(0, 4),
        ];
        var dumbbell = new Chain(points.Select((point, i) => new LineSegment(point, points[(i + 1) % points.Length])), isClosed: true);
        Assert.Single(dumbbell.Offset(0.4, CornerJoin.Round).Chains);
        var apart = dumbbell.Offset(0.6, CornerJoin.Round);
        Assert.Equal(2, apart.Chains.Count);
        Assert.Null(apart.Whole);
        Assert.Equal([2, 8], apart.Swallowed.Select(each => each.Index));
        var expected = Shapes.Polygon(dumbbell, FlatteningInches).Buffer(-0.6, new BufferParameters(QuadrantSegments));
        Assert.Equal(expected.Area, apart.Chains.Sum(chain => chain.Area), 1e-3);
    }

    [Fact]
    public void A_square_is_mitred_to_a_square_and_rounded_to_a_rounded_square()
    {
        var square = Square(2);
        var mitred = Assert.Single(square.Offset(-0.5).Chains);
        Assert.Equal(9, mitred.Area, 12);
        Assert.Equal(4, mitred.Segments.Count);
        var rounded = Assert.Single(square.Offset(-0.5, CornerJoin.Round).Chains);
        Assert.Equal(4 + 4 + (Math.PI / 4), rounded.Area, 12);
        Assert.Equal(1, Assert.Single(square.Offset(0.5).Chains).Area, 12);
        Assert.Empty(square.Offset(1.1).Chains);
        Assert.Equal(4, square.Offset(1.1).Swallowed.Count);
    }

    [Fact]
    public void A_radius_that_is_swallowed_is_named_with_its_place()
    {
        var stadium = new Chain(
            [
                new LineSegment(new(0, 0), new(4, 0)), new ArcSegment(new(4, 0.5), 0.5, -Math.PI / 2, Math.PI / 2),
                new LineSegment(new(4.5, 0.5), new(4.5, 4)), new LineSegment(new(4.5, 4), new(0, 4)), new LineSegment(new(0, 4), new(0, 0)),
            ], isClosed: true);
        var swallowed = Assert.Single(stadium.Offset(0.75).Swallowed);
        Assert.Equal((1, true), (swallowed.Index, swallowed.ByRadius));
        Assert.Equal(4 + (0.5 * Math.Sqrt(0.5)), swallowed.Middle.X, 12);
        Assert.Equal(4 + (Math.PI / 8), swallowed.Along, 12);
        Assert.Empty(stadium.Offset(0.25).Swallowed);

        // Travelled the other way and offset to the right it is the same place.
        var other = Assert.Single(stadium.Reversed().Offset(-0.75).Swallowed);
        Assert.True(other.Middle.DistanceTo(swallowed.Middle) < 1e-12);
        Assert.Equal(3, other.Index);
    }

    [Fact]
    public void There_and_back_is_the_curve_where_nothing_was_swallowed()
    {
        var random = new Random(13);
        var checkedCount = 0;
        for (var i = 0; i < 2_000; i++)
        {
            var chain = Shapes.Blob(random, random.Next(3, 9));
            var by = (0.6 * random.NextDouble()) - 0.3;
            var there = chain.Offset(by);
            // Beyond ten times the offset a mitre is rounded, so sharper tips do not come back.
            if (chain.Corners().Any(corner => Math.Abs(corner.TurnRadians) > 2.2) || there.Swallowed.Count > 0 || there.Whole is not { } moved || moved.Segments.Count != chain.Segments.Count)
                continue;
            var back = moved.Offset(-by);
            if (back.Swallowed.Count > 0 || back.Whole is not { } returned)
                continue;
            checkedCount++;
            for (var k = 0; k <= 60; k++)
            {
                Assert.True(returned.ClosestTo(chain.PointAt(chain.Length * k / 60)).Distance < 1e-8, $"chain {i}");
                Assert.True(chain.ClosestTo(returned.PointAt(returned.Length * k / 60)).Distance < 1e-8, $"chain {i}");
            }
        }

        Assert.True(checkedCount > 1_000, $"{checkedCount}");
    }

    [Fact]
    public void An_open_curve_that_comes_back_on_itself_is_trimmed_where_its_offsets_meet()
    {
        // A hairpin 1 in wide: 0.4 inside it leaves a hairpin 0.2 wide, 0.6 leaves nothing inside.
        var hairpin = new Chain(
            [
                new LineSegment(new(0, 0), new(5, 0)), new ArcSegment(new(5, 0.5), 0.5, -Math.PI / 2, Math.PI), new LineSegment(new(5, 1), new(0, 1)),
            ], isClosed: false);
        Assert.Equal((2 * 5) + (0.1 * Math.PI), Assert.Single(hairpin.Offset(0.4).Chains).Length, 9);
        Assert.Empty(hairpin.Offset(0.6).Chains);
        Assert.Equal(3, hairpin.Offset(0.6).Swallowed.Count);
        Assert.Equal((2 * 5) + (1.1 * Math.PI), Assert.Single(hairpin.Offset(-0.6).Chains).Length, 9);
    }

    [Fact]
    public void Mitres_carry_arcs_on_round_their_circles()
    {
        // Two quarter circles that meet in a point at (0, 1), centres at (±1, 0) turned: a lens's tip.
        var left = ArcSegment.About(new(1, 0), new(-1, 0), new(0, Math.Sqrt(3)), counterClockwise: false);
        var arch = new Chain([left, left.Mirrored(0).Reversed()], isClosed: false);
        var moved = Assert.Single(arch.Offset(0.5).Chains);
        Assert.Equal(2, moved.Segments.Count);
        Assert.Equal(new CurvePoint(1, 0), Assert.IsType<ArcSegment>(moved.Segments[0]).Centre);
        Assert.Equal(2.5, Assert.IsType<ArcSegment>(moved.Segments[0]).Radius, 12);
        Assert.Equal(Math.Sqrt((2.5 * 2.5) - 1), moved.Segments[0].End.Y, 9);
    }

    private static Chain Square(double side) => new(
        [
            new LineSegment(new(0, 0), new(side, 0)), new LineSegment(new(side, 0), new(side, side)),
            new LineSegment(new(side, side), new(0, side)), new LineSegment(new(0, side), new(0, 0)),
        ], isClosed: true);
}
