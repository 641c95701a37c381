using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wording;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

public class LeafCurvesTests
{
    private const double Tolerance = 1e-9;

    private static CutterSet CopeAndStick => ShippedStandards.Inch.Cutter("cope-and-stick")!;

    // R = S²/8a + a/2 (Machinery's Handbook, 31st edition, page 79, as r = (c² + 4h²) / 8h); the panel's arc is concentric,
    // R + d − c = R + 3/8 − 1/16, and the groove's R + 3/8.
    [Fact]
    public void An_eyebrow_of_1_1_2_over_10_13_16_has_the_radius_of_its_segment()
    {
        var leaf = Door("15 5/16", "26 3/4", Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) }).Leaves.Single();
        var curves = LeafCurves.Of(leaf, CopeAndStick);
        var rail = Assert.Single(curves.Rails);
        var arc = Assert.IsType<ArcSegment>(Assert.Single(rail.Sight.Segments));
        var radius = (10.8125 * 10.8125 / 12) + 0.75;
        Assert.Equal(10.4925130208, radius, 10);
        Assert.Equal(radius, arc.Radius, 10);
        IsAt(15.3125 / 2, 24.5 - radius, arc.Centre);
        IsAt(2.25, 23, rail.Sight.Start);
        IsAt(13.0625, 23, rail.Sight.End);
        Assert.Equal(24.5, rail.Sight.Box.Top, 10);
        Assert.Equal(radius + 0.375, Assert.IsType<ArcSegment>(Assert.Single(rail.Groove!.Segments)).Radius, 10);

        // 10 13/16 + 2 × 3/8 wide, 2 1/4 + 1 1/2 high, less the wood under the arc.
        var under = (radius * radius * Math.Asin(10.8125 / 2 / radius)) - (10.8125 / 2 * (radius - 1.5));
        Assert.Equal((11.5625 * 3.75) - under, rail.Outline.Area, 9);

        var panel = Assert.Single(curves.Panels);
        var edge = Assert.Single(panel.Edge.Segments.OfType<ArcSegment>());
        Assert.Equal(radius + 0.3125, edge.Radius, 10);
        IsAt(arc.Centre.X, arc.Centre.Y, edge.Centre);
        Assert.Equal(edge.Radius - 1.25, Assert.Single(panel.Field!.Segments.OfType<ArcSegment>()).Radius, 9);
        Assert.Null(LeafCurves.Of(leaf, null).Rails[0].Groove);
    }

    // x = 5 1/4, a = 1 1/2: R1 + R2 = (5 1/4² + 1 1/2²) / 3 = 159/16, of which 1 to 2 leaves the crown two thirds.
    [Fact]
    public void A_double_curve_in_a_bottom_rail_has_the_stated_radii_and_is_told_with_them()
    {
        var leaf = Door("15", "24", Design() with { BottomArch = new(ArchFamily.DoubleCurve, In("1 1/2"), ReverseToCrown: new(2, 4)) }).Leaves.Single();
        var rail = Assert.Single(LeafCurves.Of(leaf, CopeAndStick).Rails);
        Assert.Equal([3.3125, 6.625, 3.3125], rail.Sight.Segments.Select(segment => Math.Round(((ArcSegment)segment).Radius, 9)));
        IsAt(2.25, 3.75, rail.Sight.Start);
        Assert.Equal(2.25, rail.Sight.Box.Bottom, 10);
        Assert.Equal(3.75, rail.Sight.Box.Top, 10);
        Assert.Contains("double curve arch 1 1/2 high over 10 1/2, reverse to crown 1 : 2", new TradeWords(LengthFormat.InchesTo32).Work(rail.Rail), StringComparison.Ordinal);
    }

    // Over 15 − 4 1/2 = 10 1/2: 1 up, an arc from there through (5 1/4, 3) to the other side, 1 down.
    // Its chord is 10 1/2 and its height 2: R = 10 1/2² / 16 + 1 = 7.890625.
    [Fact]
    public void A_drawn_curve_stands_over_its_span_as_it_was_drawn()
    {
        var design = Design() with { TopArch = Drawn(new LineStep(In("0"), In("1")), new ArcStep(In("5 1/4"), In("3"), In("10 1/2"), In("1")), new LineStep(In("10 1/2"), In("0"))) };
        var breakdown = Door("15", "24", design);
        var leaf = breakdown.Leaves.Single();
        var rail = Assert.Single(LeafCurves.Of(leaf, CopeAndStick).Rails);
        Assert.Equal(7.890625, Assert.Single(rail.Sight.Segments.OfType<ArcSegment>()).Radius, 10);
        IsAt(2.25, 18.75, rail.Sight.Start);
        IsAt(12.75, 18.75, rail.Sight.End);
        Assert.Equal(21.75, rail.Sight.Box.Top, 10);
        Assert.Equal(In("3").Value, rail.Rail.Arch!.Rise.Length);
        IsSize("5 1/4", "11 1/4", breakdown.Part("hole/leaf/rail.top").Finished);
        RailFits(rail);
        Assert.True(PanelFits(Assert.Single(LeafCurves.Of(leaf, CopeAndStick).Panels)) > 10);
    }

    // The circle through (0, 0), (2, 1) and (10, 0) has its centre at (5, −7 1/2) and R² = 5² + 7 1/2² = 81 1/4: it is highest at
    // x = 5, which no step states.
    [Fact]
    public void A_drawn_curve_rises_to_its_highest_point()
    {
        var curve = DrawnCurve.Of([new ArcStep(In("2"), In("1"), In("10"), In("0"))]);
        Assert.Equal(Math.Sqrt(81.25) - 7.5, Inches(curve.Rise), 12);
        Assert.Equal(In("10").Value, curve.Span);
    }

    [Fact]
    public void Every_step_of_a_drawn_curve_that_is_at_fault_is_named()
    {
        var curve = DrawnCurve.Of(
        [
            new LineStep(In("0"), In("1")), new LineStep(In("0"), In("1")), new ArcStep(In("1"), In("1"), In("2"), In("1")),
            new LineStep(In("1"), In("1")), new ArcStep(In("4"), In("2"), In("3"), In("1")), new LineStep(In("8"), In("1")),
        ]);
        Assert.Null(curve.Chain);
        Assert.Equal([1, 2, 3, 4, 5], curve.Faults.Select(fault => fault.Index));
        Assert.Contains("below the spring line", Assert.Single(DrawnCurve.Of(
            [new LineStep(In("0"), In("1")), new ArcStep(In("1"), In("0"), In("8"), In("1")), new LineStep(In("8"), In("0"))]).Faults).Problem, StringComparison.Ordinal);
        Assert.Contains("rises nowhere", Assert.Single(DrawnCurve.Of([new LineStep(In("8"), In("0"))]).Faults).Problem, StringComparison.Ordinal);
        Assert.Contains("no steps", Assert.Single(DrawnCurve.Of([]).Faults).Problem, StringComparison.Ordinal);
    }

    private static Arch Drawn(params CurveStep[] steps) => new(ArchFamily.Drawn, Curve: steps);

    [Fact]
    public void Curves_of_leaves_made_by_chance_fit_their_parts()
    {
        var random = new Random(41);
        HashSet<ArchFamily> families = [];
        var (onArches, several, ofPairs) = (0, 0, 0);
        for (var i = 0; i < 600; i++)
        {
            var (course, standard) = new CourseMaker([.. Enumerable.Range(0, 240).Select(_ => random.Next(10_000))]).Make();
            foreach (var leaf in Breakdown.Of(course, standard).Leaves)
            {
                var curves = LeafCurves.Of(leaf, null);
                Assert.Equal(leaf.Parts.Count(part => part.Arch is not null), curves.Rails.Count);
                Assert.Equal(
                    leaf.Parts.Where(part => (part.TopArch ?? part.BottomArch) is not null).Select(part => part.Path).Except(curves.Panels.Select(curve => curve.Panel.Path)), []);
                foreach (var curve in curves.Rails)
                {
                    families.Add(curve.Rail.Arch!.Family);
                    several += curve.Rail.Arch.Repeats > 1 ? 1 : 0;
                    ofPairs += curve.Rail.Arch.OfPair is null ? 0 : 1;
                    RailFits(curve);
                }

                foreach (var curve in curves.Panels)
                    onArches += PanelFits(curve);
            }
        }

        // A drawn curve fits one span only, which chance does not find.
        Assert.Equal(Enum.GetValues<ArchFamily>().Except([ArchFamily.Drawn]), families.Order());
        Assert.True(onArches > 5000 && several > 10 && ofPairs > 10,
            $"{onArches} places on arches, {several} rails with several arches, {ofPairs} across pairs");
    }

    // Both leaves show parts of one curve, whatever their widths; where each has its crown at the meeting stile, they end level.
    [Fact]
    public void Curves_across_pairs_made_by_chance_run_on_from_leaf_to_leaf()
    {
        var random = new Random(42);
        Dictionary<(ArchFamily, PairCrown), int> found = [];
        var (onArches, unequal) = (0, 0);
        for (var i = 0; i < 900; i++)
        {
            var family = (ArchFamily)random.Next((int)ArchFamily.Drawn);
            var crown = (PairCrown)random.Next(2);
            Arch arch = new(family, family == ArchFamily.HalfRound ? null : Sixteenths(8, 80),
                family is not (ArchFamily.DoubleCurve or ArchFamily.HalfRound) && (family == ArchFamily.Stepped || random.Next(2) == 0) ? Sixteenths(8, 64) : null,
                ReverseToCrown: family is ArchFamily.Cathedral or ArchFamily.DoubleCurve ? new(random.Next(1, 4), random.Next(1, 4)) : null, AcrossPair: crown);
            var isTop = random.Next(3) > 0;
            var design = Design() with
            {
                TopArch = isTop ? arch : null,
                BottomArch = isTop ? null : arch,
                Stiles = random.Next(2) == 0 ? null : new(null, Sixteenths(30, 48), Sixteenths(24, 48)),
                Panel = new(PanelKind.FlatSheet, Stock: "ply"),
            };
            var width = random.Next(2) == 0 ? null : (LengthEntry?)Sixteenths(14 * 16, 30 * 16);
            var breakdown = Break(Course(design, SettingValues.None, Opening("40", "44",
                new DoorFilling(Mount.Overlay, [Leaf(HingeSide.Left) with { Width = width }, Leaf(HingeSide.Right)], "plain") { Lapped = random.Next(5) == 0 })));
            if (breakdown.Leaves.Any(leaf => leaf.IsWithheld))
                continue;
            found[(family, crown)] = found.GetValueOrDefault((family, crown)) + 1;
            unequal += width is null ? 0 : 1;
            var drawn = breakdown.Leaves.Select(leaf => (Leaf: leaf, Curves: LeafCurves.Of(leaf, CopeAndStick))).ToList();
            foreach (var (leaf, curves) in drawn)
            {
                RailFits(Assert.Single(curves.Rails));
                onArches += PanelFits(Assert.Single(curves.Panels));
                Assert.All(leaf.CheckSums, sum => Assert.True(sum.Holds));
            }

            var (left, right) = (drawn[0].Curves.Rails[0], drawn[1].Curves.Rails[0]);
            Assert.Equal(left.Spring, right.Spring);
            Assert.Equal(left.Rail.Finished.Width.Amount.ToDouble(), right.Rail.Finished.Width.Amount.ToDouble(), Tolerance);
            if (crown == PairCrown.EachMeetingStile)
            {
                // Half-rounds of unequal leaves rise unequally.
                if (family != ArchFamily.HalfRound)
                    Assert.Equal(left.Sight.End.Y, right.Sight.Start.Y, Tolerance);
                continue;
            }

            var shape = left.Rail.Arch!;
            var whole = Assert.IsType<ArchResult.Drawn>(ArchFamilies.Draw(family, new(Inches(shape.Span.Length), Inches(shape.WholeRise.Length), Inches(shape.Shoulder?.Length ?? default))
            {
                ReverseToCrown = shape.ReverseToCrown.ToDouble(),
            })).Curve.Chain;
            Assert.Equal(shape.Span.Amount, right.Rail.Arch!.Span.Amount);
            var placed = (isTop ? whole : whole.TurnedOver()).Translated(new(left.Sight.Start.X - whole.Start.X, Inches(left.Spring)));
            Assert.Equal(placed.End.X, right.Sight.End.X + Inches(drawn[1].Leaf.Place.X - drawn[0].Leaf.Place.X), Tolerance);
            foreach (var sight in new[] { left.Sight, right.Sight.Translated(new(Inches(drawn[1].Leaf.Place.X - drawn[0].Leaf.Place.X), 0)) })
                Assert.All(Enumerable.Range(0, 41), k => Assert.InRange(placed.ClosestTo(sight.PointAt(sight.Length * k / 40)).Distance, 0, Tolerance));
        }

        Assert.Equal(2 * (int)ArchFamily.Drawn, found.Count);
        Assert.True(found.Values.Min() > 5 && onArches > 5000 && unequal > 100, $"{string.Join(", ", found)}, {onArches} places, {unequal} unequal");

        LengthEntry Sixteenths(int from, int to) => In($"{random.Next(from, to)}/16");
    }

    private static void RailFits(RailCurve curve)
    {
        var (seen, whole) = (curve.Rail.VisibleBounds, curve.Rail.Outline);
        // Across a pair, the curve springs at the hinge stile alone.
        var meeting = curve.Rail.Arch!.OfPair?.Meeting;
        IsAt(Inches(seen.X), meeting == Side.Left ? curve.Sight.Start.Y : Inches(curve.Spring), curve.Sight.Start);
        IsAt(Inches(seen.Right), meeting == Side.Right ? curve.Sight.End.Y : Inches(curve.Spring), curve.Sight.End);
        var isTop = curve.Crown > curve.Spring;
        Assert.Equal(Inches(isTop ? seen.Y : seen.Top), isTop ? curve.Sight.Box.Top : curve.Sight.Box.Bottom, Tolerance);
        IsBox(whole, curve.Outline.Box);
        IsBox(seen with { Y = isTop ? curve.Spring : seen.Y, Height = curve.Rail.Finished.Width.Length }, curve.Seen.Box);
        Assert.True(curve.Outline.Area > 0 && curve.Seen.Area > 0);
        Assert.Equal(curve.Rail.Arch!.Repeats > 1 ? curve.Rail.Arch.Repeats : curve.Arches.Count, curve.Arches.Count);

        // One pattern saws every arch of the rail.
        var radii = curve.Arches.Select(arch => arch.Chain.Segments.OfType<ArcSegment>().Select(arc => Math.Round(arc.Radius, 6)).ToList()).Where(arcs => arcs.Count > 0).ToList();
        Assert.All(radii, each => Assert.Equal(radii[0], each));
    }

    // The edge is d − c from the sight line wherever a place of the arch, and no corner, is the nearest.
    private static int PanelFits(PanelCurve curve)
    {
        var (seen, whole) = (curve.Panel.VisibleBounds, curve.Panel.Outline);
        IsBox(whole, curve.Edge.Box);
        IsBox(seen, curve.Sight.Box);
        Assert.True(curve.Sight.Area > 0 && curve.Edge.Area > curve.Sight.Area);
        var corners = curve.Sight.Corners();
        var (top, bottom, found) = (Inches(whole.Top - seen.Top), Inches(seen.Y - whole.Y), 0);
        foreach (var arc in curve.Edge.Segments.OfType<ArcSegment>())
        {
            for (var k = 0; k <= 20; k++)
            {
                var place = arc.PointAt(arc.Length * k / 20);
                if (place.X < Inches(seen.X) || place.X > Inches(seen.Right))
                    continue;
                var nearest = curve.Sight.ClosestTo(place);
                if (corners.Any(corner => corner.Place.DistanceTo(nearest.Place) < 1e-6))
                    continue;
                Assert.Equal(nearest.Place.Y >= Inches(curve.Light.Box.Top) - Tolerance ? top : bottom, nearest.Distance, Tolerance);
                found++;
            }
        }

        return found;
    }

    // Clear by 19 1/2 at the crown, d = 3/8: 19 1/2 + 3/4 − 1/16 − 3/32 = 20 3/32; the panel's arc is R + 3/8 − 3/32.
    [Fact]
    public void A_clearance_of_its_own_at_the_arch_shows_in_size_working_and_curve()
    {
        var design = Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) };
        var breakdown = Door("15", "24", design, (Settings.ClearanceAtArch, "3/32"));
        var panel = breakdown.Part("hole/leaf/panel");
        IsSize("11", "20 3/32", panel.Finished);
        Assert.Equal("19 1/2 + 2 × 3/8 − 1/16 − 3/32 = 20 3/32", WorkedText.Arithmetic(panel.Finished.Length, LengthFormat.InchesTo32));
        Assert.EndsWith("− clearance along the grain − clearance at an arch", WorkedText.Formula(panel.Finished.Length), StringComparison.Ordinal);
        Assert.Equal((In("5/16").Value, In("9/32").Value), (panel.VisibleBounds.Y - panel.Outline.Y, panel.Outline.Top - panel.VisibleBounds.Top));
        var curve = Assert.Single(LeafCurves.Of(breakdown.Leaves.Single(), CopeAndStick).Panels);
        Assert.Equal((10.5 * 10.5 / 12) + 0.75 + 0.28125, Assert.Single(curve.Edge.Segments.OfType<ArcSegment>()).Radius, 9);
        Assert.Equal(In("2 1/4").Value - In("5/16").Value, Length.FromInches(Fractions.Fraction.FromDoubleRounded(curve.Edge.Box.Bottom, 9)));

        // As at the ends, under no arch, and in sheet, it says nothing.
        Assert.Equal("19 1/2 + 2 × 3/8 − 2 × 1/16 = 20 1/8", WorkedText.Arithmetic(Door("15", "24", design).Part("hole/leaf/panel").Finished.Length, LengthFormat.InchesTo32));
        IsSize("11", "20 1/8", Door("15", "24", Design(), (Settings.ClearanceAtArch, "3/32")).Part("hole/leaf/panel").Finished);
        IsSize("11 1/8", "20 1/8", Door("15", "24", design with { Panel = new(PanelKind.FlatSheet, Stock: "ply") }, (Settings.ClearanceAtArch, "3/32")).Part("hole/leaf/panel").Finished);
    }

    // A panel of c = ca = 3/32 and one of 1/16 and 1/8 have one size, and different curves.
    [Fact]
    public void Panels_that_differ_by_the_clearance_at_the_arch_alone_are_two_lines_of_a_cut_list()
    {
        var design = Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) };
        Part Panel(string along, string atArch) =>
            Door("15", "24", design, (Settings.ClearanceAlong, along), (Settings.ClearanceAtArch, atArch)).Part("hole/leaf/panel");
        Part[] panels = [Panel("3/32", "ends"), Panel("1/16", "1/8"), Panel("3/32", "3/32")];
        Assert.All(panels, panel => Assert.Equal(panels[0].Finished.Length.Amount, panel.Finished.Length.Amount));
        Assert.Equal([2, 1], CutList.Of(panels).Select(line => line.Count));
    }

    [Fact]
    public void The_clearance_that_is_told_leaves_no_flank_without_play()
    {
        var random = new Random(51);
        var corrected = new int[2];
        string Sixteenths(int least, int most) => $"{random.Next(least, most)}/16 in";
        for (var i = 0; i < 300; i++)
        {
            var grain = (GrainDirection)(i % 2);
            ArchFamily[] families = [ArchFamily.Cathedral, ArchFamily.Stepped, ArchFamily.HalfRound, ArchFamily.DoubleCurve, ArchFamily.Pointed];
            var family = families[random.Next(families.Length)];
            var arch = new Arch(family, family == ArchFamily.HalfRound ? null : In(Sixteenths(24, 70)), family == ArchFamily.DoubleCurve ? null : In(Sixteenths(8, 30)));
            var design = Design() with { TopArch = arch, BottomArch = i % 3 == 0 ? arch : null, Panel = Raised with { Grain = grain } };
            Breakdown Tried(string clearance, string across) => Door($"{220 + (i % 7 * 16)}/16 in", "30", design, (Settings.ClearanceAcross, across), (Settings.ClearanceAtArch, clearance));
            var (across, clearance) = (Sixteenths(2, 5), $"{random.Next(2, 8)}/64 in");
            foreach (var finding in Tried(clearance, across).Findings.Where(finding => finding.Rule == Rules.FlankBottoms))
            {
                if (finding.Advice.GetArguments() is not [Length told])
                    continue;
                corrected[(int)grain]++;
                Assert.DoesNotContain(Tried($"{LengthFormat.InchesTo32.Print(told)} in", across).Findings, other => other.Rule == Rules.FlankBottoms && other.Place == finding.Place
                    && other.Problem.GetArguments()[2]!.Equals(finding.Problem.GetArguments()[2]));
            }
        }

        Assert.All(corrected, count => Assert.True(count > 50, $"{count}"));
    }

    // Stiles of 2 1/2 and 2 and lights that the cutting step leaves unequal, once for each hand.
    [Fact]
    public void A_mirrored_leaf_has_the_mirrored_curve()
    {
        var design = Design() with
        {
            Stiles = new(null, In("2 1/2"), In("2")),
            TopArch = new(ArchFamily.Cathedral, In("1"), In("1/2"), PerLight: true),
            BottomArch = new(ArchFamily.Eyebrow, In("3/4")),
            MidRails = new(1, null, []),
            MidStiles = [new(2, 2, In("1"))],
            Panel = new(PanelKind.FlatSheet, Stock: "ply"),
        };
        var leaves = Break(Course(design, SettingValues.None, Opening("40", "36", Pair()))).Leaves.ToList();
        var (left, right) = (LeafCurves.Of(leaves[0], CopeAndStick), LeafCurves.Of(leaves[1], CopeAndStick));
        Assert.Equal(leaves[0].Width.Length, leaves[1].Width.Length);
        Assert.NotEqual(left.Lights[1].Box.Width, left.Lights[3].Box.Width);
        Assert.Equal(4, left.Panels.Count);
        var middle = Inches(leaves[0].Width.Length) / 2;
        for (var i = 0; i < left.Rails.Count; i++)
        {
            IsSame(left.Rails[i].Sight.Mirrored(middle), right.Rails[i].Sight);
            IsSame(left.Rails[i].Groove!.Mirrored(middle), right.Rails[i].Groove!);
            IsSame(left.Rails[i].Outline.Mirrored(middle), right.Rails[i].Outline);
        }

        foreach (var (one, other) in new[] { (0, 0), (1, 3), (2, 2), (3, 1) })
            IsSame(left.Panels[one].Edge.Mirrored(middle), right.Panels[other].Edge);

        static void IsSame(Chain one, Chain other)
        {
            Assert.Equal(one.Length, other.Length, Tolerance);
            for (var k = 0; k <= 200; k++)
                Assert.InRange(other.ClosestTo(one.PointAt(one.Length * k / 200)).Distance, 0, Tolerance);
        }
    }

    // 33 1/2 − 4 1/2 = 29 is three lights of 9 and two mid stiles of 1, which stand under shoulders of 10; the arch rises 2 over the middle one.
    [Fact]
    public void Lights_under_a_straight_shoulder_end_at_the_spring_line()
    {
        var breakdown = Door("33 1/2", "24", Design() with { TopArch = new(ArchFamily.Cathedral, In("2"), In("10")), MidStiles = [new(1, 2, In("1"))] });
        var leaf = breakdown.Leaves.Single();

        // 24 − 4 1/2 + 2 × 3/8 − 2 × 1/16 = 20 1/8 at the crown.
        IsSize("9 1/2", "18 1/8", breakdown.Part("hole/leaf/panel.1").Finished);
        IsSize("9 1/2", "20 1/8", breakdown.Part("hole/leaf/panel.2").Finished);
        IsSize("9 1/2", "18 1/8", breakdown.Part("hole/leaf/panel.3").Finished);
        Assert.Equal([false, true, false], leaf.Parts.Where(part => part.Kind == PartKind.Panel).Select(part => part.TopArch is not null));
        var curves = LeafCurves.Of(leaf, CopeAndStick);
        Assert.Equal([0, 3, 0], curves.Rails[0].Arches.Select(arch => arch.Chain.Segments.Count(segment => segment is ArcSegment)));
        Assert.Equal(In("17 1/2").Value, curves.SeenOf(breakdown.Part("hole/leaf/stile.mid.1")).Height);
        Assert.Equal(In("19 3/4").Value, curves.Lights[0].Box.Top);
    }

    private static double Inches(Length length) => CurveLength.Inches(length);

    private static void IsAt(double x, double y, CurvePoint point) =>
        Assert.True(point.DistanceTo(new(x, y)) <= Tolerance, $"{point} is not at ({x}, {y}).");

    private static void IsBox(Rectangle place, CurveBox box)
    {
        Assert.Equal(Inches(place.X), box.Left, Tolerance);
        Assert.Equal(Inches(place.Right), box.Right, Tolerance);
        Assert.Equal(Inches(place.Y), box.Bottom, Tolerance);
        Assert.Equal(Inches(place.Top), box.Top, Tolerance);
    }
}
