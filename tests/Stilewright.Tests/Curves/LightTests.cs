using Stilewright.Curves;
using Stilewright.Projects;

namespace Stilewright.Tests.Curves;

public class LightTests
{
    // Follows from the geometry: panel and groove of a circular arch are concentric with it, R + d − c and R + d.
    [Fact]
    public void The_panel_of_an_eyebrow_is_concentric_with_it()
    {
        var light = Light(new(12, 1.5), ArchFamily.Eyebrow);
        var panel = LightCurves.PanelEdge(light);
        var arc = Assert.Single(panel.Segments.OfType<ArcSegment>());
        Assert.Equal(12.75 + 0.375, arc.Radius, 10);
        Assert.Equal(new CurvePoint(0, 1.5 - 12.75), arc.Centre);
        Assert.Equal(12 + 0.75, panel.Box.Width, 10);
        Assert.Equal(20 + 1.5 + 0.75, panel.Box.Height, 10);
        Assert.True(panel.Area > 0);
        Assert.Equal(12.75 + 0.4375, Assert.Single(LightCurves.GrooveBottom(light).Segments.OfType<ArcSegment>()).Radius, 10);
        Assert.Equal((12 * 20) + SegmentArea(12.75, 12), LightCurves.SightLine(light).Area, 9);
    }

    [Fact]
    public void Panels_of_every_family_are_their_clearances_from_the_groove()
    {
        var random = new Random(31);
        for (var i = 0; i < 500; i++)
        {
            var family = (ArchFamily)(i % (int)ArchFamily.Drawn);
            var span = 8 + (16 * random.NextDouble());
            var sizes = new ArchSizes(span, span * (0.05 + (0.2 * random.NextDouble())), family == ArchFamily.DoubleCurve ? 0 : span * 0.1);
            if (family == ArchFamily.HalfRound)
                sizes = sizes with { Rise = sizes.HalfWidth };
            var light = Light(sizes, family) with { ArchClearance = 0.03 + (0.1 * random.NextDouble()) };
            var panel = LightCurves.PanelEdge(light);
            var sight = light.Top.Chain;
            Assert.DoesNotContain(panel.Segments, segment => segment.Length < 1e-9);
            Assert.Equal(span + 0.75, panel.Box.Width, 8);
            for (var k = 0; k <= 100; k++)
            {
                // Over the span the arch is ca from the groove; corners are mitred, so there it may be further from the sight line.
                var place = panel.PointAt(panel.Length * k / 100);
                if (place.Y > 0.1 && Math.Abs(place.X) < (span / 2) - 0.5)
                    Assert.InRange(sight.ClosestTo(place).Distance, light.GrooveDepth - light.ArchClearance.Value - 1e-8, 1.5 * light.GrooveDepth);
            }
        }
    }

    [Fact]
    public void A_half_round_with_more_clearance_than_the_sides_steps_out_level()
    {
        var light = Light(new(10, 5), ArchFamily.HalfRound) with { ArchClearance = 0.1 };
        var panel = LightCurves.PanelEdge(light);
        Assert.Equal(10.75, panel.Box.Width, 10);
        Assert.Contains(panel.Segments, segment => segment is LineSegment { Start.Y: 0, End.Y: 0 } && Math.Abs(segment.Length - 0.0375) < 1e-9);
    }

    [Fact]
    public void Both_rails_may_be_arched()
    {
        var top = Shapes.Drawn(ArchFamilies.Cathedral(new(12, 2, 1.5)));
        var light = Light(new(12, 2, 1.5), ArchFamily.Cathedral) with { Bottom = top.TurnedOver() };
        var panel = LightCurves.PanelEdge(light);
        Assert.Equal(20 + 4 + 0.75, panel.Box.Height, 10);
        Assert.True(panel.Area > 0);
        Assert.Equal(-10.0, (panel.Box.Top + panel.Box.Bottom) / 2, 10);
    }

    [Fact]
    public void Field_and_raise_follow_the_edge_and_a_pattern_lies_by_the_difference_of_the_radii()
    {
        var light = Light(new(12, 2, 1.5), ArchFamily.Cathedral);
        var panel = LightCurves.PanelEdge(light);
        var field = LightCurves.Inward(panel, 1.25).Whole!;
        Assert.Equal(panel.Box.Width - 2.5, field.Box.Width, 9);
        Assert.Equal(panel.Box.Height - 2.5, field.Box.Height, 9);
        var pattern = LightCurves.PatternLine(light.Top.Chain, 0.75, 0.5).Whole!;
        Assert.Equal(2.25, pattern.Box.Top, 9);
        Assert.Equal(1.5, LightCurves.PatternLine(light.Top.Chain, 0.5, 1).Whole!.Box.Top, 9);
    }

    // Follows from the geometry: a half-round's flank is upright at the spring, where the play is ca less the movement there.
    [Fact]
    public void Flank_play_of_a_half_round_is_its_clearance_less_the_movement_of_the_spring()
    {
        var light = Light(new(10, 5), ArchFamily.HalfRound);
        var growth = 0.05;
        var play = FlankPlay.Of(light, growth, GrainDirection.Vertical);
        Assert.Equal(0.0625 - (5.375 / 10.75 * growth), play.Least, 0.002);
        Assert.Null(play.ArchClearance);
    }

    // With level grain the crown moves by half of what the whole panel grows, and stands ca from the groove.
    [Fact]
    public void The_crown_of_a_panel_with_level_grain_moves_by_half_the_growth()
    {
        var light = Light(new(12, 1.5), ArchFamily.Eyebrow);
        Assert.Equal(0.0625 - 0.025, FlankPlay.Of(light, 0.05, GrainDirection.Horizontal).Least, 9);
        var bottoms = FlankPlay.Of(light with { ArchClearance = 0.03 }, 0.125, GrainDirection.Horizontal);
        Assert.Equal(0.03 - 0.0625, bottoms.Least, 9);
        Assert.Equal(0.0625, bottoms.ArchClearance!.Value, 6);
        Assert.Equal(1.5 + 0.4375 - 0.03, bottoms.Place.Y, 6);
        Assert.Equal(0.0625, FlankPlay.Of(light with { ArchClearance = 0.03, Bottom = light.Top.TurnedOver() }, 0.125, GrainDirection.Horizontal).ArchClearance!.Value, 6);
    }

    [Fact]
    public void Flank_play_is_never_below_nothing_after_its_own_correction()
    {
        var random = new Random(32);
        var corrected = new int[2];
        for (var i = 0; i < 400; i++)
        {
            var grain = (GrainDirection)(i / 2 % 2);
            var span = 8 + (16 * random.NextDouble());
            var family = i % 2 == 0 ? ArchFamily.Cathedral : ArchFamily.Stepped;
            var sizes = new ArchSizes(span, span * (0.1 + (0.25 * random.NextDouble())), span * 0.12);
            var light = Light(sizes, family);
            var growth = 0.5 * random.NextDouble();
            var play = FlankPlay.Of(light, growth, grain);
            if (play.Least >= 0)
            {
                Assert.Null(play.ArchClearance);
                continue;
            }

            if (play.ArchClearance is not { } enough)
                continue;
            corrected[(int)grain]++;
            Assert.InRange(FlankPlay.Of(light with { ArchClearance = enough }, growth, grain).Least, -1e-9, 1e-4);
            Assert.True(FlankPlay.Of(light with { ArchClearance = enough - 1e-4 }, growth, grain).Least < 0);
        }

        Assert.All(corrected, count => Assert.True(count > 50, $"{count}"));
    }

    [Fact]
    public void What_is_surely_free_to_grow_has_play_left()
    {
        var random = new Random(33);
        var (sure, bottoms) = (0, 0);
        for (var i = 0; i < 1_000; i++)
        {
            var family = (ArchFamily)(i % (int)ArchFamily.Drawn);
            var span = 6 + (20 * random.NextDouble());
            var shoulder = family == ArchFamily.DoubleCurve || family != ArchFamily.Stepped && i % 3 == 0 ? 0 : span * (0.02 + (0.3 * random.NextDouble()));
            var sizes = new ArchSizes(span, span * (0.03 + (0.25 * random.NextDouble())), shoulder) { ReverseToCrown = 0.3 + (3 * random.NextDouble()) };
            if (family == ArchFamily.HalfRound)
                sizes = sizes with { Rise = sizes.HalfWidth };
            if (ArchFamilies.Draw(family, sizes) is not ArchResult.Drawn(var curve))
                continue;
            var light = new ArchedLight(curve, 20, 0.4375, 0.125, 0.0625) { ArchClearance = 0.02 + (0.1 * random.NextDouble()) };
            var play = FlankPlay.Of(light, 0.25, GrainDirection.Vertical).Least;
            bottoms += play < 0 ? 1 : 0;
            if (!FlankPlay.SurelyNone(curve, shoulder, light.GrooveDepth, light.SideClearance, light.ArchClearance.Value, 0.25))
                continue;
            sure++;
            Assert.True(play >= -1e-9, $"{family} {sizes} with {light.ArchClearance}: {play}");
        }

        Assert.True(sure > 300 && bottoms > 300, $"{sure}, {bottoms}");
    }

    [Fact]
    public void A_collar_follows_every_hollow_or_the_nearest_values_that_let_it_are_named()
    {
        var sizes = new ArchSizes(12, 2.5, 1.5);
        var light = Light(sizes, ArchFamily.Cathedral);
        Chain Panel(ArchCurve arch) => LightCurves.PanelEdge(light with { Top = arch });
        var check = ArchChecks.Collar(ArchFamily.Cathedral, sizes, Panel, 2.5);
        Assert.False(check.Passes);

        // R1 = (4.5² + 2.5²) / 10 = 2.65 on the rail; d − c = 3/8 less on the panel.
        Assert.Equal(2.65 - 0.375, check.Measured, 10);
        Assert.Equal([ArchMeasure.CollarRadius, ArchMeasure.Rise, ArchMeasure.ReverseToCrown], check.Remedies.Select(remedy => remedy.Measure));
        Assert.True(ArchChecks.Collar(ArchFamily.Cathedral, sizes, Panel, check.Remedies[0].Value).Passes);
        Assert.True(ArchChecks.Collar(ArchFamily.Cathedral, sizes with { Rise = check.Remedies[1].Value }, Panel, 2.5).Passes);
        Assert.False(ArchChecks.Collar(ArchFamily.Cathedral, sizes with { Rise = check.Remedies[1].Value + 1e-4 }, Panel, 2.5).Passes);
        Assert.True(ArchChecks.Collar(ArchFamily.Cathedral, sizes with { ReverseToCrown = check.Remedies[2].Value }, Panel, 2.5).Passes);
        Assert.True(ArchChecks.Collar(ArchFamily.Cathedral, sizes, arch => arch.Chain, 2.5).Passes);
        Assert.Equal(0, ArchChecks.Collar(ArchFamily.Pointed, new(8, 4), arch => arch.Chain, 0.5).Measured);
    }

    [Fact]
    public void Short_grain_is_told_with_what_works()
    {
        var half = Shapes.Drawn(ArchFamilies.HalfRound(new(10, 5)));
        // x² = 25 − 0.75²: at 3/4 in the curve stands 0.0566 in from the stile; with a tongue of 7/16 the grain runs 0.494 in.
        var grain = ArchChecks.ShortGrain(half, 0, 0.4375, 0.75);
        Assert.False(grain.Passes);
        Assert.Equal(5 - Math.Sqrt(25 - 0.5625) + 0.4375, grain.Measured, 9);
        var longer = grain.Remedies[0].Value;
        Assert.True(ArchChecks.ShortGrain(Shapes.Drawn(ArchFamilies.HalfRound(new(10, 5 - longer, longer))), longer, 0.4375, 0.75).Passes);
        Assert.True(ArchChecks.ShortGrain(Shapes.Drawn(ArchFamilies.Eyebrow(new(12, 1.5))), 0, 0.4375, 0.75).Passes);
    }

    // Follows from the geometry: a raise on a bulge whose radius is less than the raise comes to a point.
    [Fact]
    public void A_field_that_closes_to_a_point_names_the_raise_that_fits()
    {
        var sizes = new ArchSizes(8, 2.5, 1.5) { ReverseToCrown = 3 };
        var panel = LightCurves.PanelEdge(Light(sizes, ArchFamily.Cathedral));
        var crown = panel.Segments.OfType<ArcSegment>().Min(arc => arc.SweepRadians > 0 ? arc.Radius : double.PositiveInfinity);
        var check = ArchChecks.Field(panel, 1.5, 1);
        Assert.False(check.Passes);
        Assert.Equal(crown, Assert.Single(check.Remedies).Value, 5);
        Assert.True(ArchChecks.Field(panel, check.Remedies[0].Value, 1).Passes);
        Assert.True(ArchChecks.Field(panel, 0.75, 1).Passes);

        var square = LightCurves.PanelEdge(Light(new(4, 0.5), ArchFamily.Eyebrow));
        Assert.Equal((square.Box.Width - 1) / 2, Assert.Single(ArchChecks.Field(square, 2, 1).Remedies).Value, 5);
    }

    [Fact]
    public void A_rack_gives_the_pattern_that_fits_or_the_spans_that_would()
    {
        var small = new HardPattern("A", ArchFamily.Cathedral, 1.5, 8, 12, 2.5);
        var large = new HardPattern("B", ArchFamily.Cathedral, 2, 14, 18, 2.5, 0.5);
        var rack = new PatternRack([large, small, new("C", ArchFamily.Eyebrow, 1, 6, 20)]);
        Assert.Equal([new PatternFit(small, null, null, null)], Assert.IsType<PatternChoice.Fitting>(rack.Choose(ArchFamily.Cathedral, new(10, 1.5, 1.5))).Patterns);
        var other = Assert.Single(Assert.IsType<PatternChoice.Fitting>(rack.Choose(ArchFamily.Cathedral, new(10, 2, 1))).Patterns);
        Assert.Equal(1.5, other.Rise!.Value, 12);
        Assert.Equal(1.5, other.Shoulder);
        var none = Assert.IsType<PatternChoice.NoneFits>(rack.Choose(ArchFamily.Cathedral, new(13, 1.5, 1.5)));
        Assert.Equal([new PatternSpan(small, 12), new PatternSpan(large, 14)], none.Nearest);
        Assert.Empty(Assert.IsType<PatternChoice.NoneFits>(rack.Choose(ArchFamily.Stepped, new(13, 1.5, 1.5))).Nearest);

        // Of two that serve, the one like the design comes first; a ratio is compared where the rack states it.
        var wide = small with { Name = "D", GreatestSpan = 16, Shoulder = 4.5 };
        Assert.Equal(["D", "A"], Assert.IsType<PatternChoice.Fitting>(new PatternRack([small with { Rise = 1.25 }, wide]).Choose(ArchFamily.Cathedral, new(10, 1.5, 1.5))).Patterns.Select(fit => fit.Pattern.Name));
        Assert.Equal(0.5, Assert.Single(Assert.IsType<PatternChoice.Fitting>(rack.Choose(ArchFamily.Cathedral, new(16, 2, 1.5))).Patterns).ReverseToCrown);
        Assert.Null(Assert.Single(Assert.IsType<PatternChoice.Fitting>(rack.Choose(ArchFamily.Cathedral, new(16, 2, 1.5) { ReverseToCrown = 0.5 })).Patterns).ReverseToCrown);

        // Shoulders of 2 1/2 over 12 are 2 over 11, and 1/4 over no span that it serves.
        Assert.Equal(11, small.SpanWithShoulder(2));
        Assert.Null(small.SpanWithShoulder(0.25));

        // Over 10 in the shoulders lose 1 in each and the crown stays.
        var cut = Shapes.Drawn(small.CurveFor(10));
        var drawn = Shapes.Drawn(ArchFamilies.Cathedral(new(10, 1.5, 1.5)));
        Assert.All(Enumerable.Range(0, 51), k => Assert.True(cut.Chain.ClosestTo(drawn.Chain.PointAt(drawn.Chain.Length * k / 50)).Distance < 1e-9));

        // The eyebrow drawn for 20 in keeps its radius of 50.5 in.
        var low = Shapes.Drawn(rack.Patterns[2].CurveFor(12));
        Assert.Equal(50.5, Assert.IsType<ArcSegment>(low.Chain.Segments[0]).Radius, 9);
        Assert.Equal(50.5 - Math.Sqrt((50.5 * 50.5) - 36), low.Chain.Box.Top, 9);
        Assert.Equal(new(ArchMeasure.Span, LimitSide.AtMost, 12), Assert.IsType<ArchResult.Refused>(small.CurveFor(13)).Limit);
    }

    // Follows from the geometry: an arc of radius R lifted by u stands u from itself at the crown, and
    // √(R² + 2Ru sin α + u²) − R where the arc's radius is at α from level.
    [Fact]
    public void A_balanced_set_down_lies_as_far_below_as_above_the_true_engagement()
    {
        var arch = Shapes.Drawn(ArchFamilies.Eyebrow(new(12, 1.5)));
        var set = SetDown.Balanced(arch, 0.4375, 0.0625);
        Assert.Equal(0.375, (set.Least + set.Greatest) / 2, 6);
        Assert.Equal(set.Lift, set.Greatest, 9);
        Assert.Equal(0.4375 - set.Lift, set.Inches, 12);
        Assert.False(set.Bottoms);
        var level = (12.75 - 1.5) / 12.75;
        Assert.Equal(Math.Sqrt((12.75 * 12.75) + (2 * 12.75 * set.Lift * level) + (set.Lift * set.Lift)) - 12.75, set.Least, 4);

        // A published trace offset of 3/16 in for a groove of 3/8 in (a woodworking magazine on arched raised panels): it never bottoms,
        // and engages at most 3/16 in, so it leaves as much play as engagement.
        var traced = SetDown.Of(arch, 0.1875, 0.375, 0.09375);
        Assert.False(traced.Bottoms);
        Assert.Equal(0.1875, traced.Greatest, 9);
        Assert.InRange(traced.Least, 0.16, 0.1875);
        Assert.Equal(0.28125, traced.True, 12);
        Assert.True(SetDown.Of(arch, 0.375, 0.375, 0.09375).Bottoms);
    }

    private static ArchedLight Light(ArchSizes sizes, ArchFamily family) =>
        new(Shapes.Drawn(ArchFamilies.Draw(family, sizes)), 20, 0.4375, 0.0625, 0.0625);

    private static double SegmentArea(double radius, double chord)
    {
        var angle = 2 * Math.Asin(chord / (2 * radius));
        return radius * radius * (angle - Math.Sin(angle)) / 2;
    }
}
