using CsCheck;
using Stilewright.Doors;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Tests.Doors;
using static Stilewright.Tests.Doors.Samples;
using static Stilewright.Tests.Hanging.Hinged;

namespace Stilewright.Tests.Hanging;

/// <summary>Where hinges go, and what is bored.</summary>
public class HingePlaceTests
{
    private static readonly Gen<int[]> Choices = Gen.Int[0, 9999].Array[240];

    // 80 mm or 3 1/8 in from the ends: one of several figures in public threads and articles.
    [Fact]
    public void Outer_hinges_stand_at_the_shops_distance_and_inner_ones_evenly_between()
    {
        Assert.Equal(["3 1/8", "20 7/8"], FromStart(Leaf("15", "24")));
        Assert.Equal(["3 1/8", "30", "56 7/8"], FromStart(Leaf("15", "60", Design() with { MidRails = new(2, null, []) })));
        // (80 − 2 × 3 1/8) ÷ 4 = 18 7/16.
        Assert.Equal(["3 1/8", "21 9/16", "40", "58 7/16", "76 7/8"], FromStart(Leaf("15", "80", Design(), (Settings.UsualHinge, Wrap))));
        Assert.Equal("80", LengthFormat.MillimetresToTenth.Print(Assert.Single(Plan(
            DoorOf("15", "24", Design(), (Settings.UsualHinge, Wrap)), ShippedStandards.Millimetre).Leaves).Set.Places[0].FromStart.Length.OnStep(1.Millimetres, StepDirection.Nearest)));
    }

    [Fact]
    public void From_the_opening_the_overlay_is_added()
    {
        Course Of(Mount mount) => Course(Design(), Set((Settings.UsualHinge, Compact), (Settings.HingeFrom, Settings.FromOpening)),
            Opening("15", "24", Single(mount: mount) with { Edges = mount == Mount.Overlay ? new(Bottom: new FixedOverlay(In("1/2")), Top: new FixedOverlay(In("1/4"))) : null }));
        var overlay = Assert.Single(Plan(Of(Mount.Overlay)).Leaves);
        Assert.Equal("3 5/8", FromStart(overlay)[0]);
        Assert.Equal("3 3/8", FromEnd(overlay)[^1]);
        // 3 1/8 − 3/32.
        Assert.Equal("3 1/32", FromStart(Assert.Single(Plan(Of(Mount.Inset)).Leaves))[0]);
    }

    // A shelf 10 in up, 3/4 thick, kept clear of by 3/4: 8 1/2 to 10 3/4 from the bottom of the leaf.
    [Theory]
    [InlineData("10", "8 3/4", "8 1/2")]
    [InlineData("10", "10 1/2", "10 3/4")]
    [InlineData("10", "8 1/2", "8 1/2")]
    public void A_hinge_moves_off_a_shelf_by_the_least(string shelf, string at, string place)
    {
        var course = Course(Design(), Set((Settings.UsualHinge, Wrap), (Settings.Overlay, "0"), (Settings.HingeFromEnd, at)),
            Opening("12", "40", Single()) with { Shelves = [new(In(shelf), In("3/4"))] });
        var leaf = Assert.Single(Plan(course).Leaves);
        Assert.Equal(place, FromStart(leaf)[0]);
        Assert.Equal(place == at ? null : "it keeps clear of a shelf", leaf.Set.Places[0].Why);
    }

    [Fact]
    public void A_middle_hinge_keeps_off_a_mid_rail_in_the_middle()
    {
        // Mid rail from 18 7/8 to 21 1/8; 3/4 beside it is as far down as up, and the lower place is taken.
        var leaf = Leaf("15", "40", Design() with { MidRails = new(1, null, []) });
        Assert.Equal(["3 1/8", "18 1/8", "36 7/8"], FromStart(leaf));
        Assert.Equal("it keeps clear of the joint of a mid rail", leaf.Set.Places[1].Why);
        Assert.Equal("20", FromStart(Leaf("15", "40", Design() with { MidRails = new(1, null, []) }, (Settings.UsualHinge, Wrap)))[1]);
    }

    // A tenon reaches into the stile beside the cup; a cope's tongue does not.
    [Fact]
    public void A_cup_keeps_off_a_tenoned_rail()
    {
        var coped = Design() with { BottomRail = In("3 1/2") };
        Assert.Equal("3 1/8", FromStart(Leaf("15", "24", coped))[0]);
        Assert.Equal("4 1/4", FromStart(Leaf("15", "24", coped with { Construction = Construction.MortiseAndTenon }))[0]);
    }

    [Fact]
    public void Leaves_with_a_line_in_common_share_their_places()
    {
        var shelved = Hole(Single(), "one") with { Shelves = [new(In("3 1/2"))] };
        var space = new Space(Columns: new([new(Opening: shelved), new(Opening: Hole(Single(HingeSide.Right), "two"))], In("2"), []));
        var plan = Plan(Faces(Set((Settings.UsualHinge, Wrap)), Face("face", Layout("40", "30", space))));
        Assert.Equal(FromStart(plan.Leaves[0]), FromStart(plan.Leaves[1]));
        // 3 1/2 and the overlay of 3/8, less 3/4.
        Assert.Equal("3 1/8", FromStart(plan.Leaves[0])[0]);
        var higher = Plan(Faces(Set((Settings.UsualHinge, Wrap)), Face("face", Layout("40", "30", new(Columns: new(
            [new(Opening: shelved with { Shelves = [new(In("3"))] }), new(Opening: Hole(Single(HingeSide.Right), "two"))], In("2"), []))))));
        Assert.Equal("2 5/8", FromStart(higher.Leaves[0])[0]);
        Assert.Equal("2 5/8", FromStart(higher.Leaves[1])[0]);
        Assert.Equal("it lines up with 7·1, which keeps clear of a shelf", higher.Leaves[1].Set.Places[0].Why);
    }

    [Fact]
    public void A_lift_up_has_its_hinges_across_and_drawer_fronts_have_none()
    {
        Assert.Equal(["3 1/8", "20 7/8"], FromStart(Assert.Single(Plan(Course(Design(), Set((Settings.UsualHinge, Wrap), (Settings.Overlay, "0")), Opening("24", "15", Single(HingeSide.Top)))).Leaves)));
        Assert.Empty(Plan(Course(Design(), Set((Settings.UsualHinge, Wrap)), Opening("24", "15", new DrawerFilling(Mount.Overlay, "plain")))).Leaves);
    }

    [Fact]
    public void Nothing_is_hung_where_no_hinge_is_chosen() => Assert.Empty(Plan(DoorOf("15", "24", Design())).Leaves);

    private static void Hold(Action<HangingPlan, HouseStandard> property) => Choices.Sample(choices =>
    {
        var (course, standard) = new CourseMaker(choices).Make();
        var hinge = standard.Hinges[choices[0] % standard.Hinges.Count].Id;
        property(Plan(With(course, (Settings.UsualHinge, hinge), (Settings.HingeNumber, choices[1] % 3 == 0 ? "4" : Settings.ByTable),
            (Settings.HingeFrom, choices[2] % 2 == 0 ? Settings.FromDoor : Settings.FromOpening)), standard), standard);
    }, iter: 60);

    private static Course With(Course course, params (Setting Setting, string Value)[] settings) => course with
    {
        Overrides = new(course.Overrides.Values.Concat(Set(settings).Values).ToDictionary(each => each.Key, each => each.Value)),
    };

    [Fact]
    public void Places_are_in_order_inside_the_leaf_and_on_the_step() => Hold((plan, standard) => Assert.All(plan.Leaves, leaf =>
    {
        var (places, step) = (leaf.Set.Places, leaf.Standard[Settings.Step].Length);
        Assert.Equal(leaf.Set.Number.Count.Amount, places.Count);
        Assert.All(places, place => Assert.Equal(leaf.Set.Along.Length, place.FromStart.Length + place.FromEnd.Length));
        Assert.True(places[0].FromStart.Length.Inches.IsPositive && places[^1].FromEnd.Length.Inches.IsPositive);
        Assert.All(places.Zip(places.Skip(1)), pair => Assert.True(pair.First.FromStart.Length < pair.Second.FromStart.Length, $"{leaf.Leaf.Path}: {string.Join(", ", FromStart(leaf))}"));
        Assert.All(places.SkipLast(1), place => Assert.Equal(place.FromStart.Length, place.FromStart.Length.OnStep(step, StepDirection.Nearest)));
        Assert.Equal(places[^1].FromEnd.Length, places[^1].FromEnd.Length.OnStep(step, StepDirection.Nearest));
        if (places.All(place => place.Why is null))
        {
            var gaps = places.Zip(places.Skip(1)).Select(pair => (pair.Second.FromStart - pair.First.FromStart).Length).ToList();
            Assert.True(gaps.Max(gap => gap.Inches) - gaps.Min(gap => gap.Inches) <= step.Inches * 2);
        }
    }));

    [Fact]
    public void A_left_sheet_is_the_mirror_image_of_a_right_one() => Choices.Sample(choices =>
    {
        var design = Random(choices);
        var course = Course(design, Set((Settings.UsualHinge, Compact)), Opening("30", $"{24 + choices[0] % 60}", Pair()));
        foreach (var (left, right) in Plan(course).SheetsInPairs)
        {
            Assert.NotNull(right);
            Assert.Equal((Side.Right, Side.Left), (left.Edge, right.Edge));
            Assert.Equal(left.Bores.Select(Places), right.Bores.Select(Places));
            Assert.Equal(left.CupCentre.Length, right.CupCentre.Length);
            Assert.Equal(left.Leaf.Hand.HasTop, right.Leaf.Hand.HasTop);
        }
    }, iter: 40);

    // The same door made from a design turned end for end.
    [Fact]
    public void Turning_a_symmetric_leaf_end_for_end_leaves_its_sheet_unchanged()
    {
        var (alike, unlike) = (0, 0);
        Choices.Sample(choices =>
        {
            var (design, height) = (Random(choices), $"{24 + choices[0] % 60}");
            var turned = design with
            {
                TopRail = design.BottomRail,
                BottomRail = design.TopRail,
                TopArch = design.BottomArch,
                BottomArch = design.TopArch,
                Stiles = design.Stiles is { Hinge: not null } stiles ? stiles with { Hinge = stiles.Pull, Pull = stiles.Hinge } : design.Stiles,
            };
            var (one, other) = (Leaf("15", height, design), Leaf("15", height, turned));
            Assert.Equal(one.Hand.HasTop, other.Hand.HasTop);
            var differs = design.TopRail != design.BottomRail || design.TopArch != design.BottomArch || design.Stiles is { Hinge: { } hinge, Pull: { } pull } && hinge != pull;
            Assert.Equal(differs, one.Hand.HasTop);
            Assert.Equal(differs, one.Hand.Reasons.Count > 0);
            if (!one.Hand.HasTop)
            {
                Assert.Equal(one.Sheet!.Edge, other.Sheet!.Edge);
                Assert.Equal(one.Sheet.Bores.Select(Places), other.Sheet.Bores.Select(Places));
                Interlocked.Increment(ref alike);
            }
            else
            {
                Interlocked.Increment(ref unlike);
            }
        }, iter: 60);
        Assert.True(alike > 5 && unlike > 5, $"{alike} alike, {unlike} unlike");
    }

    private static (Length, Length) Places(Bore bore) => (bore.FromFirst.Length, bore.FromOther.Length);

    private static DoorDesign Random(int[] choices)
    {
        LengthEntry? Rail(int choice) => (choice % 3) switch { 0 => null, 1 => In("2 1/2"), _ => In("3") };
        var arch = choices[3] % 4 == 0 ? new Arch(ArchFamily.Eyebrow, In("1 1/2")) : null;
        return Design() with
        {
            TopRail = Rail(choices[1]),
            BottomRail = choices[2] % 2 == 0 ? Rail(choices[1]) : Rail(choices[2]),
            TopArch = arch,
            BottomArch = choices[4] % 2 == 0 ? arch : null,
            Stiles = choices[5] % 3 == 0 ? new(null, In("2 1/2"), choices[6] % 2 == 0 ? In("2 1/2") : In("2 1/4")) : null,
        };
    }

    [Fact]
    public void What_has_a_top_says_why()
    {
        string Why(DoorDesign design) => string.Join("; ", Leaf("15", "30", design).Hand.Reasons.Select(reason => Stilewright.Findings.FindingText.Say(reason, LengthFormat.InchesTo32)));
        Assert.Equal("", Why(Design()));
        Assert.Equal("its rails are 2 1/4 in at the top and 3 1/2 in at the bottom", Why(Design() with { BottomRail = In("3 1/2") }));
        Assert.Equal("its arch is at the top", Why(Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) }));
        Assert.Equal("its stiles are 2 1/2 in at the hinges and 2 1/4 in at the pull", Why(Design() with { Stiles = new(null, In("2 1/2"), In("2 1/4")) }));
        Assert.Equal("a mid rail is off its middle", Why(Design() with { MidRails = new(null, null, [new(In("10"))]) }));
        Assert.Equal("", Why(Design() with { MidRails = new(null, null, [new(In("15"))]) }));
        Assert.Equal("its lights or their filling differ from end to end", Why(Design() with { MidRails = new(null, null, [new(In("15"))]), Lights = [new(2, new(PanelKind.Glass))] }));
        var half = Plan(Course(Design() with { TopArch = new(ArchFamily.Eyebrow, In("1 1/2"), AcrossPair: PairCrown.MiddleOfPair) }, Set((Settings.UsualHinge, Compact)), Opening("30", "30", Pair())));
        Assert.All(half.Leaves, leaf => Assert.Equal("it has half of an arch across a pair", Assert.Single(leaf.Hand.Reasons).ToString()));
    }
}
