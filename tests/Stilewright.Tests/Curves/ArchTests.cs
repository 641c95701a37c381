using Stilewright.Curves;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Tests.Curves;

public class ArchTests
{
    // Circular segment, R = S²/8a + a/2 (Machinery's Handbook, 31st edition, page 79). Chord 12, rise 1 1/2: 12 3/4; 8 and 1 1/2: 6 1/12; 12 and 3/4: 24 3/8.
    [Theory]
    [InlineData(12, 1.5, 12.75)]
    [InlineData(8, 1.5, 73.0 / 12)]
    [InlineData(12, 0.75, 24.375)]
    [InlineData(96, 12, 102)]
    public void Eyebrow_radii(double span, double rise, double radius)
    {
        var arc = Assert.IsType<ArcSegment>(Assert.Single(Shapes.Drawn(ArchFamilies.Eyebrow(new(span, rise))).Chain.Segments));
        Assert.Equal(radius, arc.Radius, 10);
        Assert.Equal((span * span / (8 * rise)) + (rise / 2), arc.Radius, 10);
    }

    [Fact]
    public void Every_arch_spans_rises_and_turns_only_where_its_family_says()
    {
        var random = new Random(21);
        var drawn = new Dictionary<ArchFamily, int>();
        for (var i = 0; i < 6_000; i++)
        {
            var family = (ArchFamily)(i % (int)ArchFamily.Drawn);
            var span = 4 + (30 * random.NextDouble());
            var shoulder = i / 6 % 3 == 0 || family == ArchFamily.DoubleCurve ? 0 : span * 0.3 * random.NextDouble();
            var sizes = new ArchSizes(span, span * 0.6 * random.NextDouble(), shoulder) { ReverseToCrown = 0.2 + (3 * random.NextDouble()) };
            if (family == ArchFamily.HalfRound)
                sizes = sizes with { Rise = sizes.HalfWidth };
            if (ArchFamilies.Draw(family, sizes) is not ArchResult.Drawn(var arch))
                continue;
            drawn[family] = drawn.GetValueOrDefault(family) + 1;
            Assert.True(arch.Chain.Start.DistanceTo(new(-span / 2, 0)) < 1e-9);
            Assert.True(arch.Chain.End.DistanceTo(new(span / 2, 0)) < 1e-9);
            Assert.Equal(sizes.Rise, arch.Chain.Box.Top, 1e-9);
            Assert.Equal(0, arch.Chain.Box.Bottom, 1e-9);
            var corners = arch.Chain.Corners();
            Assert.Equal(arch.Corners.Count, corners.Count);
            Assert.All(corners.Zip(arch.Corners), pair => Assert.True(pair.First.Place.DistanceTo(pair.Second) < 1e-9));
            var mirrored = arch.Mirrored();
            for (var k = 0; k <= 20; k++)
                Assert.True(mirrored.Chain.PointAt(arch.Chain.Length * k / 20).DistanceTo(arch.Chain.PointAt(arch.Chain.Length * k / 20)) < 1e-8);
        }

        Assert.Equal(Enum.GetValues<ArchFamily>().Except([ArchFamily.Drawn]), drawn.Keys.Order());
        Assert.All(drawn.Values, count => Assert.True(count > 300));
    }

    [Fact]
    public void An_eyebrow_of_half_its_span_is_a_half_round()
    {
        var eyebrow = Shapes.Drawn(ArchFamilies.Eyebrow(new(10, 5)));
        var half = Shapes.Drawn(ArchFamilies.HalfRound(new(10, 5)));
        Assert.Equal(5 * Math.PI, eyebrow.Chain.Length, 10);
        Assert.Equal(half.Chain.Segments, eyebrow.Chain.Segments);
        Assert.IsType<ArchResult.Refused>(ArchFamilies.HalfRound(new(10, 4)));
    }

    [Fact]
    public void A_cathedral_whose_shoulders_vanish_meets_the_one_without()
    {
        var without = Shapes.Drawn(ArchFamilies.Cathedral(new(12, 3))).Chain;
        foreach (var shoulder in (double[])[1e-3, 1e-5, 1e-8])
        {
            var with = Shapes.Drawn(ArchFamilies.Cathedral(new(12, 3, shoulder))).Chain;
            Assert.True(Apart(with, without) <= 2 * shoulder);
        }
    }

    [Fact]
    public void A_cathedral_whose_reverse_arcs_vanish_meets_the_eyebrow_between_its_shoulders()
    {
        var eyebrow = Shapes.Drawn(ArchFamilies.Eyebrow(new(12, 2, 2))).Chain;
        foreach (var ratio in (double[])[1e-2, 1e-4, 1e-6])
            Assert.True(Apart(Shapes.Drawn(ArchFamilies.Cathedral(new(12, 2, 2) { ReverseToCrown = ratio })).Chain, eyebrow) < 10 * ratio);
    }

    // tan(θ/2) = a/x and R1 + R2 = (x² + a²)/2a: follows from the geometry; x = 4, a = 2, R1 = R2 = 2.5, θ = 53.13° (3-4-5).
    [Fact]
    public void A_cathedral_on_three_four_five()
    {
        var arch = Shapes.Drawn(ArchFamilies.Cathedral(new(11, 2, 1.5)));
        Assert.Equal(
            [TrammelMark.End, TrammelMark.Tangent, TrammelMark.Centre, TrammelMark.Tangent, TrammelMark.Centre, TrammelMark.Tangent, TrammelMark.Centre, TrammelMark.Tangent, TrammelMark.End],
            arch.Trammel().Select(row => row.Mark));
        var rows = arch.Trammel();
        Assert.True(rows[2].Place.DistanceTo(new(-4, 2.5)) < 1e-12);
        Assert.Equal(2.5, rows[2].RadiusInches!.Value, 12);
        Assert.True(rows[3].Place.DistanceTo(new(-2, 1)) < 1e-12);
        Assert.True(rows[4].Place.DistanceTo(new(0, -0.5)) < 1e-12);
    }

    // An equilateral arch: rise S √3/2, both radii equal to the span, centres at the springing. Common practice in Gothic drawing.
    [Fact]
    public void An_equilateral_pointed_arch_has_its_centres_at_the_springing()
    {
        var arch = Shapes.Drawn(ArchFamilies.Pointed(new(8, 4 * Math.Sqrt(3))));
        var left = Assert.IsType<ArcSegment>(arch.Chain.Segments[0]);
        Assert.Equal(8, left.Radius, 10);
        Assert.True(left.Centre.DistanceTo(new(4, 0)) < 1e-10);
        Assert.Equal(Math.PI / 3 * 8 * 2, arch.Chain.Length, 9);
    }

    [Fact]
    public void What_cannot_be_drawn_is_refused_with_a_limit_that_can()
    {
        Assert.Equal("A cathedral of rise 4 in over 10 in with shoulders 2 in cannot be drawn: rise at most 3 in.",
            Say(ArchFamilies.Cathedral(new(10, 4, 2))));
        Assert.Equal("An eyebrow of rise 6 in over 10 in with shoulders 0 in cannot be drawn: rise at most 5 in.", Say(ArchFamilies.Eyebrow(new(10, 6))));
        Assert.Equal("A half-round over 10 in rises 5 in, not 4 in.", Say(ArchFamilies.HalfRound(new(10, 4))));

        static string Say(ArchResult result) => FindingText.Say(Assert.IsType<ArchResult.Refused>(result).Problem, LengthFormat.InchesTo32);
    }

    [Fact]
    public void Every_limit_can_be_drawn_and_nothing_entered_throws()
    {
        var random = new Random(22);
        var refusals = 0;
        for (var i = 0; i < 5_000; i++)
        {
            var family = (ArchFamily)(i % (int)ArchFamily.Drawn);
            var sizes = new ArchSizes((30 * random.NextDouble()) - 1, (20 * random.NextDouble()) - 1, (10 * random.NextDouble()) - 1)
            {
                ReverseToCrown = (4 * random.NextDouble()) - 0.2,
                Step = i % 2 == 0 ? null : (6 * random.NextDouble()) - 1,
                PointRadius = i % 4 < 2 ? null : 40 * random.NextDouble(),
            };

            // Each refusal is followed once; a design has no more sizes than these to be wrong in.
            for (var tries = 0; ArchFamilies.Draw(family, sizes) is ArchResult.Refused(_, var limit); tries++)
            {
                refusals++;
                Assert.True(tries < 6, $"{family} {sizes} {limit}");
                sizes = limit.Measure switch
                {
                    ArchMeasure.Span => sizes with { Span = limit.Value },
                    ArchMeasure.Rise => sizes with { Rise = limit.Value },
                    ArchMeasure.Shoulder => sizes with { Shoulder = limit.Value },
                    ArchMeasure.Step => sizes with { Step = limit.Value },
                    ArchMeasure.PointRadius => sizes with { PointRadius = limit.Value },
                    ArchMeasure.ReverseToCrown => sizes with { ReverseToCrown = limit.Value },
                    _ => throw new InvalidOperationException($"{limit}"),
                };
                if (limit.Measure == ArchMeasure.Span)
                    sizes = sizes with { Shoulder = 0 };
            }
        }

        Assert.True(refusals > 1_000);
    }

    [Fact]
    public void A_double_curve_is_the_cathedral_from_stile_to_stile_and_has_no_shoulders()
    {
        // x = 6, a = 2: R1 + R2 = (6² + 2²) / 4 = 10, which 2 : 3 divides into 4 and 6.
        var sizes = new ArchSizes(12, 2) { ReverseToCrown = 2.0 / 3 };
        var curve = Shapes.Drawn(ArchFamilies.Draw(ArchFamily.DoubleCurve, sizes));
        Assert.Equal(new CurveBox(-6, 0, 6, 2), curve.Chain.Box);
        Assert.Empty(curve.Chain.Corners());
        Assert.Equal([4, 6, 4], curve.Chain.Segments.Select(segment => Math.Round(((ArcSegment)segment).Radius, 9)));
        Assert.Equal(Shapes.Drawn(ArchFamilies.Cathedral(sizes)).Chain.Segments, curve.Chain.Segments);
        Assert.Equal(new(ArchMeasure.Shoulder, LimitSide.AtMost, 0), Assert.IsType<ArchResult.Refused>(ArchFamilies.DoubleCurve(sizes with { Shoulder = 3 })).Limit);
    }

    [Fact]
    public void A_users_curve_keeps_its_corners_and_one_that_leans_out_is_refused()
    {
        var given = new Chain([new LineSegment(new(0, 3), new(4, 5)), new LineSegment(new(4, 5), new(8, 3))], isClosed: false);
        var arch = Shapes.Drawn(ArchFamilies.Given(given));
        Assert.Equal([new CurvePoint(0, 2)], arch.Corners);
        Assert.Equal(new CurveBox(-4, 0, 4, 2), arch.Chain.Box);
        var leaning = new Chain([new LineSegment(new(0, 0), new(-1, 2)), new LineSegment(new(-1, 2), new(8, 0))], isClosed: false);
        Assert.Equal(ArchMeasure.Span, Assert.IsType<ArchResult.Refused>(ArchFamilies.Given(leaning)).Limit.Measure);
        Assert.IsType<ArchResult.Refused>(ArchFamilies.Given(given.Reversed()));
    }

    [Fact]
    public void Halves_of_a_pair_are_mirrored_and_meet_the_whole_arch()
    {
        var sizes = new ArchSizes(24, 3);
        var whole = Shapes.Drawn(ArchFamilies.Eyebrow(sizes));
        var (left, right) = (PairArch.LeftPart(whole, 12 - 2.3125), PairArch.RightPart(whole, 12 - 2.3125));
        Assert.Equal((-9.6875 / 2, 9.6875 / 2), (left.Chain.Start.X, left.Chain.End.X));
        // R = 24² / 24 + 1 1/2 = 25 1/2, and the curve lies √(25 1/2² − 2 5/16²) − 22 1/2 over the spring line there.
        Assert.Equal(Math.Sqrt((25.5 * 25.5) - (2.3125 * 2.3125)) - 22.5, left.Chain.End.Y, 10);
        Assert.True(Apart(right.Mirrored().Chain, left.Chain) < 1e-9);
        Assert.True(Apart(left.Chain.Translated(new((9.6875 / 2) - 12, 0)), whole.Chain.Part(0, whole.Chain.CrossingsWithLine(new(-2.3125, 0), new(0, 1))[0].OnFirst)) < 1e-9);

        // Cut at its crown, a cathedral ends level; cut in its shoulder, it is straight; at its width, it is whole.
        var crowned = Shapes.Drawn(ArchFamilies.Cathedral(sizes with { Shoulder = 1 }));
        var half = PairArch.LeftPart(crowned, 12);
        Assert.Equal(3, half.Chain.End.Y, 10);
        Assert.True((half.Chain.DirectionAt(half.Chain.Length) - new CurvePoint(1, 0)).Length < 1e-9);
        Assert.Single(PairArch.LeftPart(crowned, 0.75).Chain.Segments);
        Assert.Equal(crowned.Chain.Length, PairArch.RightPart(crowned, 24).Chain.Length, 9);

        // Up to its step, a stepped arch is straight.
        var stepped = Shapes.Drawn(ArchFamilies.Stepped(sizes with { Shoulder = 1 }));
        Assert.Equal(0, PairArch.LeftPart(stepped, 1).Chain.Box.Top);
        Assert.Equal([new CurvePoint(1 - 5.0, 0), new(1 - 5.0, 1.5)], PairArch.LeftPart(stepped, 10).Corners);
    }

    private static double Apart(Chain one, Chain other) => Enumerable.Range(0, 201)
        .Max(k => Math.Max(other.ClosestTo(one.PointAt(one.Length * k / 200)).Distance, one.ClosestTo(other.PointAt(other.Length * k / 200)).Distance));
}
