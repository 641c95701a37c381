using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wording;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

public class PairArchTests
{
    private const double Tolerance = 1e-9;

    private static CutterSet CopeAndStick => ShippedStandards.Inch.Cutter("cope-and-stick")!;

    private static Course PairOf(string width, DoorDesign design, params LeafEntry[] leaves) => Course(
        design, Set((Settings.Overlay, "0")), Opening(width, "40", new DoorFilling(Mount.Overlay, leaves is [] ? [Leaf(HingeSide.Left), Leaf(HingeSide.Right)] : leaves, "plain")));

    private static DoorDesign Across(Arch arch) => Design() with { TopArch = arch with { AcrossPair = arch.AcrossPair ?? PairCrown.MiddleOfPair } };

    // Stiles 2 1/4 and 6 15/16 and a gap of 1/8: 44 1/2 gives two leaves of 22 3/16, each clear by 13, and S = 40. A rise of 10 makes
    // R = 40²/80 + 5 = 25; the meeting sight line is 1/16 + 6 15/16 = 7 from the crown, where √(25² − 7²) = 24, that is 9 over the spring line.
    [Fact]
    public void An_eyebrow_across_a_pair_gives_each_leaf_the_rise_at_its_meeting_stile()
    {
        var breakdown = Break(PairOf("44 1/2", Across(new(ArchFamily.Eyebrow, In("10"))) with { Stiles = new(null, In("2 1/4"), In("6 15/16")) }));
        foreach (var hand in new[] { "left", "right" })
        {
            var rail = breakdown.Part($"hole/leaf.{hand}/rail.top");
            Assert.Equal((In("40").Value, In("9").Value, In("10").Value, In("13").Value),
                (rail.Arch!.Span.Length, rail.Arch.Rise.Length, rail.Arch.WholeRise.Length, rail.Arch.SpanInLeaf.Length));
            Assert.True(rail.Arch.Rise.IsExact);

            // 2 1/4 + 9 wide, and 13 + 2 × 3/8 long; the panel 40 − 4 1/2 + 2 × 3/8 − 2 × 1/16 at the tallest point.
            IsSize("11 1/4", "13 3/4", rail.Finished);
            Assert.Equal(hand == "left" ? Side.Left : Side.Right, rail.Hand);
            IsSize("13 1/2", "36 1/8", breakdown.Part($"hole/leaf.{hand}/panel").Finished);
            Assert.Contains("eyebrow arch across the pair 10 high over 40, 9 high in this leaf, left hand".Replace("left hand", $"{hand} hand", StringComparison.Ordinal),
                new TradeWords(LengthFormat.InchesTo32).Work(rail), StringComparison.Ordinal);
        }

        Assert.All(breakdown.Leaves, leaf => Assert.All(leaf.CheckSums, sum => Assert.True(sum.Holds)));

        // Rails and panels of the two hands are not one piece of wood; stiles are.
        Assert.Equal([1, 1], CutList.Of(breakdown.Parts).Where(line => line.Part.Arch is not null).Select(line => line.Count));
        var (left, right) = (LeafCurves.Of(breakdown.Leaves.First(), CopeAndStick), LeafCurves.Of(breakdown.Leaves.Last(), CopeAndStick));
        var arc = Assert.IsType<ArcSegment>(Assert.Single(left.Rails[0].Sight.Segments));
        Assert.Equal(25, arc.Radius, 10);

        // The crown is over the middle of the gap: 22 3/16 + 1/16 from the left, at 40 − 2 1/4 + 1; the circle is 25 below.
        Assert.True(arc.Centre.DistanceTo(new(22.25, 38.75 - 25)) < Tolerance, $"{arc.Centre}");
        Assert.True(left.Rails[0].Sight.Start.DistanceTo(new(2.25, 28.75)) < Tolerance);
        Assert.True(left.Rails[0].Sight.End.DistanceTo(new(15.25, 37.75)) < Tolerance);
        IsMirrored(breakdown.Leaves.First(), left, right);
    }

    // S = 30 1/8 − 4 1/2 = 25 5/8 and a = 3: R = S²/8a + a/2, and y = √(R² − m²) − (R − a) at m = 1/16 + 2 1/4, which no fraction is.
    [Fact]
    public void A_rise_that_is_no_fraction_is_marked_and_the_narrowest_width_stays_exact()
    {
        var breakdown = Break(PairOf("30 1/8", Across(new(ArchFamily.Eyebrow, In("3")))));
        var rail = breakdown.Part("hole/leaf.left/rail.top");
        var radius = (25.625 * 25.625 / 24) + 1.5;
        Assert.Equal(Math.Sqrt((radius * radius) - (2.3125 * 2.3125)) - (radius - 3), rail.Arch!.Rise.Amount.ToDouble(), 12);
        Assert.False(rail.Arch.Rise.IsExact);
        Assert.False(rail.Finished.Width.IsExact);
        Assert.StartsWith("≈", WorkedText.Figure(rail.Finished.Width, LengthFormat.InchesTo32), StringComparison.Ordinal);
        Assert.Equal(In("2 1/4").Value, rail.VisibleBounds.Height);
        IsSize("11", "36 1/8", breakdown.Part("hole/leaf.left/panel").Finished);
        Assert.Equal(37.75, LeafCurves.Of(breakdown.Leaves.First(), CopeAndStick).Rails[0].Sight.Box.Top, 10);
    }

    [Theory]
    [InlineData(ArchFamily.Eyebrow, "3", null)]
    [InlineData(ArchFamily.Eyebrow, "3", "1 1/2")]
    [InlineData(ArchFamily.HalfRound, null, null)]
    [InlineData(ArchFamily.HalfRound, null, "4")]
    [InlineData(ArchFamily.Pointed, "4", "1")]
    [InlineData(ArchFamily.Pointed, "15", null)]
    [InlineData(ArchFamily.Pointed, "12 13/16", null)]
    [InlineData(ArchFamily.Stepped, "2", "1")]
    [InlineData(ArchFamily.Cathedral, "2 1/2", "2")]
    [InlineData(ArchFamily.Cathedral, "1 1/2", "9")]
    [InlineData(ArchFamily.DoubleCurve, "2", null)]
    public void The_worked_rise_is_that_of_the_curve_and_the_right_leaf_is_the_left_one_turned_over(ArchFamily family, string? rise, string? shoulder)
    {
        foreach (var crown in Enum.GetValues<PairCrown>())
        {
            var arch = new Arch(family, rise is null ? null : In(rise), shoulder is null ? null : In(shoulder), AcrossPair: crown);
            var breakdown = Break(PairOf("30 1/8", Design() with { TopArch = arch, BottomArch = family is ArchFamily.HalfRound ? null : arch with { Rise = In("1") } }));
            Assert.DoesNotContain(breakdown.Findings, finding => finding.Severity == Severity.CannotBuild);
            var leaves = breakdown.Leaves.ToList();
            var (left, right) = (LeafCurves.Of(leaves[0], CopeAndStick), LeafCurves.Of(leaves[1], CopeAndStick));
            var top = left.Rails[^1];
            Assert.Equal(37.75, top.Sight.Box.Top, 9);
            Assert.Equal(CurveLength.Inches(top.Spring) + CurveLength.Inches(top.Rail.Arch!.Rise.Length), top.Sight.End.Y, 9);
            Assert.Equal(crown == PairCrown.EachMeetingStile, top.Rail.Arch.Rise.Length == top.Rail.Arch.WholeRise.Length);
            Assert.True(top.Rail.Arch.OfPair!.IsMirrored);
            IsMirrored(leaves[0], left, right);
        }
    }

    // Leaves of 20 and 10 with 1/8 between: S = 30 1/8 − 4 1/2 = 25 5/8, the crown 12 13/16 from each hinge stile, within the left
    // leaf's 15 1/2. The right one, clear by 5 1/2, ends 7 5/16 from the crown.
    [Fact]
    public void In_unequal_leaves_the_curve_runs_on_from_one_into_the_other()
    {
        var breakdown = Break(PairOf("30 1/8", Across(new(ArchFamily.Eyebrow, In("3"))), Leaf(HingeSide.Left) with { Width = In("20") }, Leaf(HingeSide.Right)));
        var (left, right) = (breakdown.Part("hole/leaf.left/rail.top"), breakdown.Part("hole/leaf.right/rail.top"));
        Assert.Equal(In("3").Value, left.Arch!.Rise.Length);
        IsSize("5 1/4", "16 1/4", left.Finished);
        var radius = (25.625 * 25.625 / 24) + 1.5;
        var rise = Math.Sqrt((radius * radius) - (7.3125 * 7.3125)) - (radius - 3);
        Assert.Equal(rise, right.Arch!.Rise.Amount.ToDouble(), 10);
        Assert.Equal(2.25 + 3 - rise, CurveLength.Inches(right.VisibleBounds.Height), 10);
        Assert.Equal(5.25, CurveLength.Inches(right.Finished.Width.Length), 10);
        Assert.False(left.Arch.OfPair!.IsMirrored);
        Assert.All(breakdown.Leaves, leaf => Assert.All(leaf.CheckSums, sum => Assert.True(sum.Holds)));

        // One circle, wherever its leaf stands.
        var (one, other) = (Circle(0), Circle(1));
        Assert.True(one.DistanceTo(other) < Tolerance);

        CurvePoint Circle(int leaf) => Assert.IsType<ArcSegment>(Assert.Single(LeafCurves.Of(breakdown.Leaves.ElementAt(leaf), CopeAndStick).Rails[0].Sight.Segments))
            .Centre + new CurvePoint(CurveLength.Inches(breakdown.Leaves.ElementAt(leaf).Place.X), 0);
    }

    // Lapped by the standard's lap, a pair is narrower by it, and so is the span.
    [Fact]
    public void Where_the_meeting_edges_are_lapped_the_span_is_shorter_by_the_lap()
    {
        var course = PairOf("30", Across(new(ArchFamily.Eyebrow, In("3"))));
        var lapped = Break(course with
        {
            Projects = [course.Projects[0] with { Pieces = [new("piece", "Cupboard", [new("face", FaceSide.Front, null, [Opening("30", "40", Pair() with { Lapped = true })], [])])] }],
        });
        Assert.Equal(In("25 1/2").Value, lapped.Part("hole/leaf.left/rail.top").Arch!.Span.Length);
    }

    // Over S = 25 5/8: up 1, level to 11 and so past 10 1/2, where the left leaf ends, then up to 3 at 20, and down. The left leaf rises 1, the right one,
    // which begins at 15 1/8, 3; each shows one corner.
    [Fact]
    public void A_drawn_curve_across_a_pair_is_seen_as_it_was_drawn()
    {
        Arch arch = new(ArchFamily.Drawn, Curve:
        [
            new LineStep(In("1"), In("1")), new LineStep(In("11"), In("1")), new LineStep(In("20"), In("3")), new LineStep(In("25 5/8"), In("0")),
        ]);
        var breakdown = Break(PairOf("30 1/8", Across(arch)));
        var (left, right) = (breakdown.Part("hole/leaf.left/rail.top"), breakdown.Part("hole/leaf.right/rail.top"));
        Assert.Equal((In("1").Value, In("3").Value), (left.Arch!.Rise.Length, right.Arch!.Rise.Length));
        Assert.Equal((In("4 1/4").Value, In("2 1/4").Value), (left.VisibleBounds.Height, right.VisibleBounds.Height));
        Assert.Equal(left.Finished.Width.Length, right.Finished.Width.Length);
        Assert.False(left.Arch.OfPair!.IsMirrored);
        Assert.Equal([1, 1], new[] { 0, 1 }.Select(leaf => LeafCurves.Of(breakdown.Leaves.ElementAt(leaf), CopeAndStick).Rails[0].Sight.Corners().Count));
    }

    // Over 10 1/2, its highest point 3 from the hinge stile: on the left leaf at 2 1/4 + 3, on the right one mirrored.
    [Fact]
    public void A_drawn_curve_of_each_leaf_goes_by_the_hinges()
    {
        Arch arch = new(ArchFamily.Drawn, Curve: [new LineStep(In("3"), In("2")), new LineStep(In("10 1/2"), In("0"))]);
        var breakdown = Break(PairOf("30 1/8", Design() with { TopArch = arch }));
        var leaves = breakdown.Leaves.ToList();
        var (left, right) = (LeafCurves.Of(leaves[0], CopeAndStick), LeafCurves.Of(leaves[1], CopeAndStick));
        Assert.Equal((5.25, 9.75), (Assert.Single(left.Rails[0].Sight.Corners()).Place.X, Assert.Single(right.Rails[0].Sight.Corners()).Place.X));
        Assert.Equal([Side.Left, Side.Right], leaves.Select(leaf => leaf.Parts.Single(part => part.Arch is not null).Hand!.Value));
        IsMirrored(leaves[0], left, right);

        // One that is its own mirror image has no hand.
        Arch even = new(ArchFamily.Drawn, Curve: [new LineStep(In("5 1/4"), In("2")), new LineStep(In("10 1/2"), In("0"))]);
        Assert.All(Break(PairOf("30 1/8", Design() with { TopArch = even })).Parts, part => Assert.Null(part.Hand));
    }

    // Shoulders of 3 are beside the hinge stiles alone: a mid stile of 1 stands there from 1 to 2 of the left leaf's 10 1/2, and not on the other side.
    [Fact]
    public void A_mid_stile_may_stand_under_the_shoulder_beside_the_hinges_only()
    {
        var design = Across(new(ArchFamily.Cathedral, In("2"), In("6"))) with { MidStiles = [new(1, 1, In("1"))] };
        var breakdown = Break(PairOf("30 1/8", design));
        Assert.DoesNotContain(breakdown.Findings, finding => finding.Rule == Rules.MidStileUnderArch);
        Assert.Equal([false, true, true, false], breakdown.Parts.Where(part => part.Kind == PartKind.Panel).Select(part => part.TopArch is not null));
        var leaves = breakdown.Leaves.ToList();
        IsMirrored(leaves[0], LeafCurves.Of(leaves[0], CopeAndStick), LeafCurves.Of(leaves[1], CopeAndStick));
        var narrow = Break(PairOf("30 1/8", Across(new(ArchFamily.Cathedral, In("2"), In("5"))) with { MidStiles = [new(1, 1, In("1"))] }));
        Assert.Equal(2, narrow.Findings.Count(finding => finding.Rule == Rules.MidStileUnderArch));
    }

    // A pattern for 25 5/8 serves; one made for 24 would serve a span narrower by 1 5/8, each door by half of it.
    [Fact]
    public void The_rack_is_asked_for_the_span_of_the_pair()
    {
        var course = PairOf("30 1/8", Across(new(ArchFamily.Eyebrow, In("3"))));
        var fits = Breakdown.Of(course, Rack("20", "25 5/8")).Findings.First(finding => finding.Rule == Rules.PatternFits);
        Assert.Contains("leaves the curve that the design says", fits.Advice.ToString(), StringComparison.Ordinal);
        var none = Breakdown.Of(course, Rack("20", "24")).Findings.First(finding => finding.Rule == Rules.NoPatternFits);
        Assert.Contains($"{In("14 3/16").Value} wide for pattern Long", none.Advice.ToString(), StringComparison.Ordinal);

        static HouseStandard Rack(string least, string greatest) => ShippedStandards.Inch with
        {
            Patterns = [new("long", "Long", ArchFamily.Eyebrow, In("3"), In(least), In(greatest))],
        };
    }

    private static void IsMirrored(SizedLeaf leaf, LeafCurves left, LeafCurves right)
    {
        var middle = CurveLength.Inches(leaf.Width.Length) / 2;
        foreach (var (one, other) in left.Rails.Zip(right.Rails))
        {
            IsSame(one.Sight.Mirrored(middle), other.Sight);
            IsSame(one.Groove!.Mirrored(middle), other.Groove!);
            IsSame(one.Outline.Mirrored(middle), other.Outline);
        }

        foreach (var one in left.Panels)
        {
            var other = right.Panels.MinBy(panel => Math.Abs(panel.Edge.Box.Left + one.Edge.Box.Right - (2 * middle)))!;
            IsSame(one.Edge.Mirrored(middle), other.Edge);
            IsSame(one.Sight.Mirrored(middle), other.Sight);
            if (one.Field is { } field)
                IsSame(field.Mirrored(middle), other.Field!);
        }
    }

    private static void IsSame(Chain one, Chain other)
    {
        Assert.Equal(one.Length, other.Length, Tolerance);
        for (var k = 0; k <= 200; k++)
            Assert.InRange(other.ClosestTo(one.PointAt(one.Length * k / 200)).Distance, 0, Tolerance);
    }
}
