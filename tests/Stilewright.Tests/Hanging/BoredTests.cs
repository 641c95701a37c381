using CsCheck;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;
using static Stilewright.Tests.Hanging.Hinged;

namespace Stilewright.Tests.Hanging;

/// <summary>Leaves that are bored already: right or wrong, by which mistake, and what they can still be.</summary>
public class BoredTests
{
    private static readonly DoorDesign Arched = Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) };

    private static HangingPlan PairOf(DoorDesign design, params (Setting Setting, string Value)[] settings) =>
        Plan(Course(design, Set([(Settings.UsualHinge, Compact), .. settings]), Opening("30", "30", Pair())));

    private static BoredReading Right(HungLeaf leaf) => new(LeafFace.Back, leaf.Sheet!.Edge, Side.Top, [.. leaf.Sheet.Bores.Select(bore => bore.FromFirst.Length)], leaf.Sheet.Distance.Length);

    private static string Say(FormattableString words) => FindingText.Say(words, LengthFormat.InchesTo32);

    [Fact]
    public void What_its_sheet_says_is_right_however_it_is_read()
    {
        var plan = PairOf(Arched);
        foreach (var leaf in plan.Leaves)
        {
            var back = Right(leaf);
            var front = back with { SeenFrom = LeafFace.Front, Edge = leaf.Leaf.Hinge == HingeSide.Left ? Side.Left : Side.Right };
            var below = front with { MeasuredFrom = Side.Bottom, Distances = [.. leaf.Set.Places.Select(place => place.FromStart.Length)] };
            Assert.All(new[] { back, front, below }, reading =>
            {
                var told = BoredRight.Of(leaf, reading, plan);
                Assert.True(told.IsRight, Say(told.Words));
                Assert.Equal(leaf.Leaf.Hinge, told.Now);
                Assert.Empty(told.Remedies);
                Assert.Empty(BoringDiagnosis.Of(leaf, reading));
            });
        }
    }

    // Symmetrical doors may be bored from either end, others not: common practice, no source.
    [Fact]
    public void Bored_on_the_other_stile_a_symmetric_leaf_is_turned_and_an_arched_one_serves_its_mate()
    {
        var plain = PairOf(Design());
        var reading = Right(plain.Leaves[0]) with { Edge = Side.Left };
        var told = BoredRight.Of(plain.Leaves[0], reading, plain);
        Assert.False(told.IsRight);
        Assert.Equal(HingeSide.Right, told.Now);
        Assert.Equal(BoredRemedyKind.TurnEndForEnd, told.Remedies[0].Kind);
        Assert.Equal(BoredRemedyKind.PlugAndBore, told.Remedies[^1].Kind);

        var arched = PairOf(Arched);
        told = BoredRight.Of(arched.Leaves[0], Right(arched.Leaves[0]) with { Edge = Side.Left }, arched);
        Assert.Equal([BoredRemedyKind.ServeAnother, BoredRemedyKind.PlugAndBore], told.Remedies.Select(remedy => remedy.Kind));
        Assert.Equal("hole/leaf.right", told.Remedies[0].Serves);
        Assert.Contains("hinged on its right, seen from the front; 7·1L is hinged on its left", Say(told.Words), StringComparison.Ordinal);
    }

    [Fact]
    public void Half_an_arch_across_a_pair_serves_no_other_leaf()
    {
        var plan = PairOf(Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2"), AcrossPair: PairCrown.MiddleOfPair) });
        Assert.Equal(BoredRemedyKind.PlugAndBore, Assert.Single(BoredRight.Of(plan.Leaves[0], Right(plan.Leaves[0]) with { Edge = Side.Left }, plan).Remedies).Kind);
    }

    // A boring distance read as the centre's, or the reverse, is half of the cup: 17.5 mm (follows from the geometry).
    [Fact]
    public void Distance_and_centre_confused_are_half_a_cup()
    {
        var leaf = PairOf(Design(), (Settings.BoringDistance, "18 mm")).Leaves[0];
        var near = Assert.Single(BoringDiagnosis.Of(leaf, Right(leaf) with { Distance = Mm("0.5").Value }));
        Assert.Equal(BoringMistakeKind.DistanceTakenForCentre, near.Kind);
        Assert.Equal(Mm("17.5").Value, near.Right!.Length - near.Wrong!.Length);
        var far = Assert.Single(BoringDiagnosis.Of(leaf, Right(leaf) with { Distance = Mm("35.5").Value }));
        Assert.Equal(BoringMistakeKind.CentreTakenForDistance, far.Kind);
        Assert.Equal(Mm("17.5").Value, far.Wrong!.Length - far.Right!.Length);
    }

    [Fact]
    public void A_distance_that_is_off_moves_the_overlay_one_for_one()
    {
        var leaf = PairOf(Design(), (Settings.BoringDistance, "4 mm")).Leaves[0];
        var off = Assert.Single(BoringDiagnosis.Of(leaf, Right(leaf) with { Distance = Mm("5.5").Value }));
        Assert.Equal(BoringMistakeKind.DistanceOff, off.Kind);
        Assert.Contains("the overlay is 1.5 mm more", FindingText.Say(off.Words, LengthFormat.MillimetresToTenth), StringComparison.Ordinal);
        Assert.Contains("side screw", Say(off.Salvage), StringComparison.Ordinal);
        Assert.Contains("a plate that is 3 mm higher", FindingText.Say(Assert.Single(BoringDiagnosis.Of(leaf, Right(leaf) with { Distance = Mm("7").Value })).Salvage, LengthFormat.MillimetresToTenth), StringComparison.Ordinal);
    }

    private static HungLeaf Uneven(string from) => Assert.Single(Plan(Course(Design(), Set((Settings.UsualHinge, Compact), (Settings.HingeFrom, from)),
        Opening("15", "30", Single() with { Edges = new(Top: new FixedOverlay(In("1 1/4")), Bottom: new FixedOverlay(In("1/2"))) }))).Leaves);

    [Fact]
    public void Overlays_exchanged_are_off_by_their_difference()
    {
        var leaf = Uneven(Settings.FromOpening);
        // 3 1/8 + 1 1/4 at the top and 3 1/8 + 1/2 at the bottom, exchanged.
        var reading = Right(leaf) with { Distances = [In("3 5/8").Value, leaf.Leaf.Height.Length - In("4 3/8").Value] };
        var mistakes = BoringDiagnosis.Of(leaf, reading);
        // That is also what measuring from the other end gives.
        Assert.Equal([BoringMistakeKind.OtherEnd, BoringMistakeKind.OverlaysSwapped], mistakes.Select(mistake => mistake.Kind));
        Assert.Equal(In("3 5/8").Value, mistakes[1].Wrong!.Length);
        Assert.Contains("3/4 in too high", Say(mistakes[1].Words), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Settings.FromOpening, "3 1/8", "3 1/8")]
    [InlineData(Settings.FromDoor, "4 3/8", "3 5/8")]
    public void Leaf_and_opening_confused_are_off_by_the_overlays(string from, string top, string bottom)
    {
        var leaf = Uneven(from);
        var mistake = Assert.Single(BoringDiagnosis.Of(leaf, Right(leaf) with { Distances = [In(top).Value, leaf.Leaf.Height.Length - In(bottom).Value] }));
        Assert.Equal(BoringMistakeKind.OpeningForLeaf, mistake.Kind);
        Assert.Equal(In(top).Value, mistake.Wrong!.Length);
    }

    [Fact]
    public void All_shifted_alike_is_a_stop()
    {
        var leaf = PairOf(Design()).Leaves[0];
        var mistake = Assert.Single(BoringDiagnosis.Of(leaf, Right(leaf) with { Distances = [.. Right(leaf).Distances.Select(each => each + 32.Millimetres)] }));
        Assert.Equal(BoringMistakeKind.AllShifted, mistake.Kind);
        Assert.Contains("32 mm too low", FindingText.Say(mistake.Words, LengthFormat.MillimetresToTenth), StringComparison.Ordinal);
    }

    // Hung upside down: what was to be measured from the top was measured from the bottom.
    [Fact]
    public void Bored_from_the_other_end_is_mirrored()
    {
        var leaf = Assert.Single(Plan(Course(Arched, Set((Settings.UsualHinge, Compact), (Settings.HingeFrom, Settings.FromOpening)),
            Opening("15", "30", Single() with { Edges = new(Top: new FixedOverlay(In("1 1/4")), Bottom: new FixedOverlay(In("1/2"))) }))).Leaves);
        var mistakes = BoringDiagnosis.Of(leaf, Right(leaf) with { MeasuredFrom = Side.Bottom });
        Assert.Equal(BoringMistakeKind.OtherEnd, mistakes[0].Kind);
    }

    [Fact]
    public void The_other_stile_is_named() =>
        Assert.Equal(BoringMistakeKind.OtherEdge, Assert.Single(BoringDiagnosis.Of(PairOf(Arched).Leaves[0], Right(PairOf(Arched).Leaves[0]) with { Edge = Side.Left })).Kind);

    private static BoringMachine Machine(int origin, int pitch, int count, int otherCount) => new("borer", "the borer",
    [
        new(StopSide.Left, Mm($"{origin}"), Mm($"{pitch}"), count, 1, "L"), new(StopSide.Right, Mm($"{origin + 7}"), Mm($"{pitch}"), otherCount, 1, "R"),
    ], LeastFence: Mm("2"), GreatestFence: Mm("8"), Bit: Mm("35"));

    [Fact]
    public void Every_boring_gets_the_stop_with_the_least_error() => Gen.Select(Gen.Int[20, 120], Gen.Int[16, 64], Gen.Int[1, 40], Gen.Int[1, 40], Gen.Int[24, 90]).Sample((origin, pitch, count, otherCount, height) =>
    {
        foreach (var hinge in new[] { HingeSide.Left, HingeSide.Right })
        {
            var leaf = Assert.Single(Plan(Course(Design(), Set((Settings.UsualHinge, Compact)), Opening("15", $"{height}", Single(hinge)))).Leaves);
            var plan = StopPlan.Of(Machine(origin, pitch, count, otherCount), leaf.Sheet!);
            Assert.Equal(leaf.Sheet!.Bores.Count, plan.Stops.Count);
            foreach (var chosen in plan.Stops)
            {
                // With the top on the left for a door hinged on its left, else on the right.
                var fromTopSide = hinge == HingeSide.Left;
                var (left, right) = fromTopSide ? (chosen.Bore.FromFirst.Length, chosen.Bore.FromOther.Length) : (chosen.Bore.FromOther.Length, chosen.Bore.FromFirst.Length);
                var least = Enumerable.Range(0, count).Select(n => Length.Abs((origin + n * pitch).Millimetres - left))
                    .Concat(Enumerable.Range(0, otherCount).Select(n => Length.Abs((origin + 7 + n * pitch).Millimetres - right))).MinBy(error => error.Inches);
                Assert.Equal(least, Length.Abs(chosen.Error));
                var number = int.Parse(chosen.Stop.Name[1..], System.Globalization.CultureInfo.InvariantCulture);
                Assert.Equal((origin + (chosen.Stop.Side == StopSide.Right ? 7 : 0) + (number - 1) * pitch).Millimetres, chosen.Stop.Distance.Length);
                Assert.Equal((chosen.Stop.Side == StopSide.Left) == fromTopSide ? Side.Top : Side.Bottom, chosen.End);
            }
        }
    }, iter: 30);

    [Fact]
    public void One_stop_for_a_batch_has_the_least_worst_error()
    {
        var sheets = Plan(Course(Design(), Set((Settings.UsualHinge, Compact)), Opening("30", "30", Pair()),
            Opening("15", "24", Single(), "other") with { Overrides = Set((Settings.HingeFromEnd, "4")) })).Leaves.Select(leaf => leaf.Sheet!).ToList();
        var machine = Machine(60, 20, 6, 6);
        var batch = StopPlan.ForBatch(machine, sheets)!;
        Length[] outer = [In("3 1/8").Value, In("4").Value];
        Length Worst(int offset, int n) => outer.Select(at => Length.Abs((60 + offset + n * 20).Millimetres - at)).MaxBy(error => error.Inches);
        var (left, right) = (Enumerable.Range(0, 6).Select(n => Worst(0, n)).MinBy(error => error.Inches), Enumerable.Range(0, 6).Select(n => Worst(7, n)).MinBy(error => error.Inches));
        Assert.Equal(Length.Greatest(left, right), batch.Error);
        Assert.Equal(("L3", "R2"), (batch.Left!.Name, batch.Right!.Name));
    }

    [Fact]
    public void The_fence_is_set_to_the_cups_edge_or_its_centre()
    {
        var sheet = Leaf("15", "24", null, (Settings.BoringDistance, "5 mm")).Sheet!;
        var machine = Machine(60, 20, 6, 6);
        Assert.Equal(5.Millimetres, StopPlan.Of(machine, sheet).Fence.Length);
        Assert.Empty(StopPlan.Of(machine, sheet).Cautions);
        Assert.Equal(Mm("22.5").Value, StopPlan.Of(machine with { Fence = FenceReading.CupCentre }, sheet).Fence.Length);
        Assert.Equal(["The fence of the borer goes up to 8 mm, and 22.5 mm is asked for.", "the borer has a bit of 26 mm; the hinge's cup is 35 mm."],
            StopPlan.Of(machine with { Fence = FenceReading.CupCentre, Bit = Mm("26") }, sheet).Cautions.Select(caution => FindingText.Say(caution, LengthFormat.MillimetresToTenth)));
    }

    // The overlap at the bottom equals that at the top: common practice, no source.
    [Fact]
    public void A_ledger_stands_the_bottom_overlay_below_the_opening_and_shims_are_as_thick_as_the_gap()
    {
        var even = Assert.Single(Plan(Course(Design(), Set((Settings.UsualHinge, Compact)), Opening("15", "24", Single()))).Leaves);
        var ledger = HangingSteps.Support(even)!;
        Assert.Equal(In("3/8").Value, ledger.Amount!.Length);
        Assert.Contains("equals that at the top", Say(ledger.Words), StringComparison.Ordinal);
        var uneven = HangingSteps.Support(Uneven(Settings.FromDoor))!;
        Assert.Equal(In("1/2").Value, uneven.Amount!.Length);
        Assert.Contains("the overlap at the top comes to 1 1/4 in", Say(uneven.Words), StringComparison.Ordinal);
        var inset = Assert.Single(Plan(Course(Design(), Set((Settings.UsualHinge, InsetCup)), Opening("15", "24", Single(mount: Mount.Inset)))).Leaves);
        Assert.Equal(("Shims", In("3/32").Value), (HangingSteps.Support(inset)!.Title, HangingSteps.Support(inset)!.Amount!.Length));
    }

    [Fact]
    public void Boring_begins_with_its_caution_and_source_and_ends_with_bumpers()
    {
        var steps = HangingSteps.Of(Assert.Single(Plan(Course(Design(), Set((Settings.UsualHinge, Compact)), Opening("15", "24", Single()))).Leaves));
        Assert.True(steps[0].IsCaution);
        Assert.Contains("29 CFR 1910.213", steps[0].Source.Text, StringComparison.Ordinal);
        Assert.Equal("Bumpers", steps[^1].Title);
        Assert.Contains(steps, step => Say(step.Words).Contains("top and mark it", StringComparison.Ordinal));
        Assert.DoesNotContain(HangingSteps.Of(Leaf("15", "24", null, (Settings.UsualHinge, Wrap))), step => step.IsCaution);
    }
}
