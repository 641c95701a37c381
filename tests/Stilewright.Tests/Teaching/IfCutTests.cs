using CsCheck;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.IfCut;
using Stilewright.Testing;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Teaching;

/// <summary>What happens when parts are cut as a wrong list says. Common practice, no source; the arithmetic is by hand.</summary>
public class IfCutTests
{
    // A leaf of a pair 25 × 31 with overlay 1/2 and no gap: 13 × 32; stiles and rails 2 1/2, groove and tongue 3/8. Rails are
    // 13 − 5 + 3/4 = 8 3/4; the panel, with 1/16 at each edge, 13 − 5 + 3/4 − 1/8 = 8 5/8 by 32 − 5 + 3/4 − 1/8 = 27 5/8.
    private static Breakdown Door(string clearance = "1/16", Filling? filling = null, bool arched = false, string trim = "0", string gap = "0", bool glued = false) => Break(Course(
        Design() with { Panel = glued ? new(PanelKind.FlatSheet, "maple", "ply", GluedIn: true) : Raised, Stiles = new(In("2 1/2")), TopRail = In("2 1/2"), BottomRail = In("2 1/2"), TopArch = arched ? new(ArchFamily.Eyebrow, In("2")) : null },
        Set((Settings.Overlay, "1/2"), (Settings.GapOfPair, gap), (Settings.TrimWidth, trim), (Settings.TrimHeight, trim), (Settings.ClearanceAcross, clearance), (Settings.ClearanceAlong, clearance), (Settings.ClearanceAtArch, clearance)),
        Opening("25", "31", filling ?? Pair())));

    private static IReadOnlyList<Consequence> Cut(Breakdown breakdown, params (string Name, int Count, string Width, string Length)[] lines) => Cut(breakdown, CutStage.Finished, lines);

    private static IReadOnlyList<Consequence> Cut(Breakdown breakdown, CutStage stage, params (string Name, int Count, string Width, string Length)[] lines)
    {
        var project = breakdown.Projects[0];
        var key = ListKey.Of(project, project.Fronts.First().Leaves[0], stage);
        return Consequences.Of(ListCheck.Check(new(stage, [.. lines.Select((line, i) => new ListLine(i + 1, line.Name, line.Count, In(line.Width), In(line.Length)))]), key, LengthUnit.Inch), project);
    }

    private static string Words(Consequence one) => FindingText.Say(one.Words, LengthFormat.InchesTo32);

    private static Length L(string text) => In(text).Value;

    [Fact]
    public void A_right_list_has_no_consequences() =>
        Assert.Empty(Cut(Door(), ("stiles", 2, "2 1/2", "32"), ("rails", 2, "2 1/2", "8 3/4"), ("panel", 1, "8 5/8", "27 5/8")));

    // 8 3/4 − 8 = 3/4, half at each end; the tongue of 3/8 just does not reach. Drawn up, the panel has 1/8 of play and would bottom.
    [Fact]
    public void Rails_without_their_tongues_leave_each_joint_open()
    {
        var one = Assert.Single(Cut(Door(), ("stiles", 2, "2 1/2", "32"), ("rails", 2, "2 1/2", "8")));
        Assert.Equal((ConsequenceKind.JointOpen, L("3/8")), (one.Kind, one.Amount));
        Assert.Equal("The rails are 3/4 in short: with the stiles in place each joint stands open 3/8 in, and the tongue does not reach into the groove; they cannot be drawn up, for the raised panel bottoms before they close.", Words(one));
        Assert.Equal("(8 3/4 − 8) ÷ 2 = 3/8", WorkedText.Arithmetic(one.Working!, LengthFormat.InchesTo32));
        Assert.Equal(4, one.Faults.Count);
        Assert.All(one.Faults, fault => Assert.Equal((FaultKind.Open, true, L("3/8")), (fault.Kind, fault.IsAcross, fault.Amount)));
        Assert.Equal(["rail.bottom", "rail.top"], one.Parts.Select(part => part.Path.Split('/')[^1]).Order());
    }

    // 1/16 short: open 1/32 at each end, 3/8 − 1/32 = 11/32 of the tongue left; the panel's 1/8 of play lets the leaf be drawn up.
    [Fact]
    public void Rails_a_little_short_can_be_drawn_up() => Assert.Equal(
        "The rails are 1/16 in short: with the stiles in place each joint stands open 1/32 in, and 11/32 in of the tongue is left in the groove instead of 3/8 in; drawn up, the leaf comes out 1/16 in narrow.",
        Words(Assert.Single(Cut(Door(), ("rails", 2, "2 1/2", "8 11/16")))));

    // One rail 1/4 long: the leaf is 1/4 wider there, the other rail's joints stand open 1/8, the panel has 1/4 more play: 3/8 − 3/8 = 0.
    [Fact]
    public void One_rail_too_long_holds_the_other_joints_open()
    {
        var all = Cut(Door(), ("top rail", 1, "2 1/2", "9"), ("bottom rail", 1, "2 1/2", "8 3/4"), ("panel", 1, "8 5/8", "27 5/8"));
        Assert.Equal([(ConsequenceKind.JointOpen, L("1/8")), (ConsequenceKind.LeafSize, L("1/4")), (ConsequenceKind.PanelFallsOut, L("0"))], all.Select(one => (one.Kind, one.Amount)));
        Assert.Equal(["rail.bottom"], all[0].Parts.Select(part => part.Path.Split('/')[^1]));
        Assert.Equal(ListMeasure.Length, Assert.Single(all[0].Numbers).Measure);
    }

    // With 1/16 at each edge, 1/8 more fills the grooves; 1/4 more is 1/8 too much, 1/16 at each joint.
    [Theory]
    [InlineData("8 11/16", ConsequenceKind.PanelTight, "1/16", "1/8 − (8 11/16 − 8 5/8) = 1/16")]
    [InlineData("8 3/4", ConsequenceKind.PanelTight, "0", "1/8 − (8 3/4 − 8 5/8) = 0")]
    [InlineData("8 7/8", ConsequenceKind.PanelBottoms, "1/16", "(8 7/8 − 8 5/8 − 1/8) ÷ 2 = 1/16")]
    [InlineData("8 19/32", ConsequenceKind.PanelLoose, "7/32", "3/8 − (1/8 + (8 5/8 − 8 19/32)) = 7/32")]
    [InlineData("8 13/32", ConsequenceKind.PanelShowsLight, "1/32", "3/8 − (1/8 + (8 5/8 − 8 13/32)) = 1/32")]
    [InlineData("8 3/8", ConsequenceKind.PanelFallsOut, "0", "3/8 − (1/8 + (8 5/8 − 8 3/8)) = 0")]
    [InlineData("8", ConsequenceKind.PanelFallsOut, "3/8", "3/8 − (1/8 + (8 5/8 − 8)) = −3/8")]
    public void A_panel_of_another_width(string width, ConsequenceKind kind, string amount, string work)
    {
        var one = Assert.Single(Cut(Door(), ("panel", 1, width, "27 5/8")));
        Assert.Equal((kind, L(amount)), (one.Kind, one.Amount));
        Assert.Equal(work, WorkedText.Arithmetic(one.Working!, LengthFormat.InchesTo32));
        Assert.Equal((L("3/8"), L("1/4"), true), (one.Fit!.Depth, one.Fit.RightReach, one.Fit.IsAcross));
    }

    // Two panels beside a mid stile, alike and alike wrong: one drawing for both, with both shown.
    [Fact]
    public void Like_panels_that_are_alike_wrong_are_told_once()
    {
        var design = Design() with { Panel = Raised, MidStiles = [new(1, 1, null)] };
        var door = Break(Course(design, Set((Settings.Overlay, "1/2"), (Settings.MidStile, "2")), Opening("25", "31", Single())));
        var panels = door.Projects[0].Fronts.First().Leaves[0].Parts.Where(part => part.Kind == PartKind.Panel).ToList();
        Assert.Equal(2, panels.Count);
        string Less(int i, string by) => $"{(panels[i].Finished.Width.Length - L(by)).Inches}";
        string High(int i) => $"{panels[i].Finished.Length.Length.Inches}";
        var one = Assert.Single(Cut(door, ("panel", 2, Less(0, "1"), High(0))));
        Assert.Equal((2, ConsequenceKind.PanelFallsOut), (one.Count, one.Kind));
        Assert.Equal(panels, one.Parts);
        Assert.Equal(2, one.Laid.Count(laid => panels.Contains(laid.Part)));
        Assert.EndsWith($"The same goes for {panels[1].Label}.", Words(one), StringComparison.Ordinal);
        // Otherwise wrong, they are two.
        Assert.Equal(2, Cut(door, ("left panel", 1, Less(0, "1"), High(0)), ("right panel", 1, Less(1, "3/4"), High(1))).Count);
    }

    [Fact]
    public void A_panel_without_clearance_has_no_play() => Assert.Equal((ConsequenceKind.PanelBottoms, L("1/32")),
        Assert.Single(Cut(Door(glued: true), ("panel", 1, "8 13/16", "27 3/4"))) is var one ? (one.Kind, one.Amount) : default);

    // The bottom rail 1/4 wider leaves the light 1/4 lower: the panel, right as it is, is 1/4 − 1/8 too high.
    [Fact]
    public void A_wider_rail_makes_a_right_panel_bottom()
    {
        var all = Cut(Door(), ("top rail", 1, "2 1/2", "8 3/4"), ("bottom rail", 1, "2 3/4", "8 3/4"));
        Assert.Equal([(ConsequenceKind.PanelBottoms, L("1/16")), (ConsequenceKind.MemberWidth, L("1/4"))], all.Select(one => (one.Kind, one.Amount)));
        Assert.Equal("The raised panel is right, but its light comes out 1/4 in smaller: it takes up the whole 1/8 in of play and bottoms in the grooves, which holds the rails above and below 1/16 in out of place.", Words(all[0]));
    }

    // All that lies between the stiles 1/2 narrow goes together; the gap of the pair grows by as much.
    [Fact]
    public void Parts_of_a_narrower_leaf_go_together()
    {
        var one = Assert.Single(Cut(Door(), ("stiles", 2, "2 1/2", "32"), ("rails", 2, "2 1/2", "8 1/4"), ("panel", 1, "8 1/8", "27 5/8")));
        Assert.Equal((ConsequenceKind.LeafSize, L("1/2")), (one.Kind, one.Amount));
        Assert.Equal("The left door comes out 1/2 in narrower, 12 1/2 instead of 13 in: the gap between the leaves becomes 1/2 instead of 0 in.", Words(one));
    }

    // Each leaf of the pair forgets its share of a gap of 1/8: 1/16 wider.
    [Theory]
    [InlineData("1/8", "13", "the gap between the leaves becomes 1/16 instead of 1/8 in")]
    [InlineData("1/8", "13 1/8", "the 1/8 in between the leaves is gone, and they bind by 1/16 in")]
    public void A_leaf_of_a_pair_too_wide(string gap, string width, string then)
    {
        var one = Assert.Single(Cut(Door(gap: gap), ("door", 1, width, "32")));
        Assert.Equal(ConsequenceKind.LeafSize, one.Kind);
        Assert.Contains(then, Words(one), StringComparison.Ordinal);
    }

    // 26 × 32 over 25 × 31; 24 leaves half an inch of the opening uncovered at each edge.
    [Theory]
    [InlineData(Mount.Overlay, "25 1/2", "it laps 1/4 over the frame at each edge instead of 1/2 in.", "1/4")]
    [InlineData(Mount.Overlay, "24", "it leaves 1/2 in of the opening uncovered at each edge.", "-1/2")]
    public void A_single_door_of_another_width(Mount mount, string width, string then, string reach)
    {
        var one = Assert.Single(Cut(Door(filling: Single(mount: mount)), ("door", 1, width, "32")));
        Assert.EndsWith(then, Words(one), StringComparison.Ordinal);
        var expected = reach.StartsWith('-') ? -L(reach[1..]) : L(reach);
        Assert.Equal([(Side.Left, expected), (Side.Right, expected)], one.Edges.Select(edge => (edge.Side, edge.IfCut)));
    }

    // Into an opening of 25 with 3/32 at each edge: 24 13/16. As wide as the opening, no gap is left; 25 1/16 does not go in.
    [Theory]
    [InlineData("25", "a gap of 0 is left at each edge instead of 3/32 in.")]
    [InlineData("25 1/16", "it does not go into the opening, being 1/16 in too large.")]
    public void An_inset_door_too_wide(string width, string then) =>
        Assert.EndsWith(then, Words(Assert.Single(Cut(Door(filling: Single(mount: Mount.Inset)), ("door", 1, width, "30 13/16")))), StringComparison.Ordinal);

    // Stiles 31 1/2: the leaf is half an inch low, 1/4 less at top and bottom; the panel is right, and the light half an inch lower.
    [Fact]
    public void Short_stiles_make_a_low_leaf()
    {
        var all = Cut(Door(filling: Single()), ("stiles", 2, "2 1/2", "31 1/2"));
        Assert.Equal([(ConsequenceKind.LeafSize, L("1/2")), (ConsequenceKind.PanelBottoms, L("3/16"))], all.Select(one => (one.Kind, one.Amount)));
        Assert.Equal("The door comes out 1/2 in lower, 31 1/2 instead of 32 in: it laps 1/4 over the frame at each edge instead of 1/2 in.", Words(all[0]));
    }

    // A blank of 2 1/2 for an arch of 2 under which 2 1/2 belong: 4 1/2 − 2 = 2 1/2; the maker left the rise out.
    [Theory]
    [InlineData("2 1/2", ConsequenceKind.CrownWood, "1/2", "2 1/2 − 2 = 1/2")]
    [InlineData("1 3/4", ConsequenceKind.CrownBrokenThrough, "-1/4", "1 3/4 − 2 = −1/4")]
    public void A_blank_without_its_rise(string width, ConsequenceKind kind, string wood, string work)
    {
        var one = Cut(Door(arched: true), ("top rail", 1, width, "8 3/4"), ("bottom rail", 1, "2 1/2", "8 3/4"), ("stiles", 2, "2 1/2", "32")).Single(one => one.Kind is ConsequenceKind.CrownWood or ConsequenceKind.CrownBrokenThrough);
        Assert.Equal((kind, wood.StartsWith('-') ? -L(wood[1..]) : L(wood)), (one.Kind, one.Amount));
        Assert.Equal(work, WorkedText.Arithmetic(one.Working!, LengthFormat.InchesTo32));
        Assert.Equal(one.Working!.Length, one.Amount);
    }

    [Fact]
    public void Stiles_that_differ_put_the_light_off_the_middle()
    {
        // 2 5/8 and 2 3/8: the leaf keeps its width, its light is 1/8 to the right.
        var one = Assert.Single(Cut(Door(), ("left stile", 1, "2 5/8", "32"), ("right stile", 1, "2 3/8", "32")));
        Assert.Equal((ConsequenceKind.LightOffMiddle, L("1/8")), (one.Kind, one.Amount));
        Assert.EndsWith("what they frame sits 1/8 in off to the right.", Words(one), StringComparison.Ordinal);
    }

    // Into the clamps stiles are 32 1/4 long: 32 3/8 loses 3/8, 32 1/8 only 1/8, and 31 7/8 makes a leaf 1/8 low.
    [Theory]
    [InlineData("32 3/8", ConsequenceKind.WithinAllowance, "The stiles can still be made: 3/8 in comes off where 1/4 in was allowed.")]
    [InlineData("32 1/8", ConsequenceKind.WithinAllowance, "The stiles can still be made, with 1/8 in left to come off where 1/4 in was allowed.")]
    [InlineData("31 7/8", ConsequenceKind.LeafSize, "The left door comes out 1/8 in lower, 31 7/8 instead of 32 in: it laps 7/16 over the frame at each edge instead of 1/2 in.")]
    public void Trim_takes_off_and_makes_up(string length, ConsequenceKind kind, string words)
    {
        var one = Cut(Door(trim: "1/4"), CutStage.IntoClamps, ("stiles", 2, "2 5/8", length))[0];
        Assert.Equal((kind, words), (one.Kind, Words(one)));
    }

    [Fact]
    public void A_mistake_finds_what_comes_of_it()
    {
        var project = Door().Projects[0];
        var found = ListCheck.Check(new(CutStage.Finished, [new(1, "rails", 2, In("2 1/2"), In("8")), new(2, "stiles", 2, In("2 1/2"), In("31"))]), ListKey.Of(project, project.Fronts.First().Leaves[0], CutStage.Finished), LengthUnit.Inch);
        var all = Consequences.Of(found, project);
        Assert.Equal(2, found.Mistakes.Count);
        Assert.Equal([["JointOpen"], ["LeafSize", "PanelBottoms"]], found.Mistakes.Select(mistake => all.Where(one => one.IsOf(mistake)).Select(one => $"{one.Kind}").ToArray()).OrderBy(kinds => kinds.Length));
    }

    // Whatever is wrong: figures are consistent among themselves, each tells of a figure that is wrong, and every wrong figure of a part is told.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Random_lists_are_told_whole(bool two)
    {
        var told = 0;
        foreach (var planted in two ? PlantedLists.TwoSlips(250, 40) : PlantedLists.OneSlip(250, 900))
        {
            var found = planted.Check();
            var all = Consequences.Of(found, planted.Project);
            foreach (var one in all)
            {
                told++;
                Assert.NotEmpty(one.Numbers);
                Assert.All(one.Numbers, number => Assert.NotEqual(NumberStanding.Right, number.Standing));
                Assert.False(one.Amount.IsNegative && one.Kind != ConsequenceKind.CrownBrokenThrough);
                Assert.EndsWith(".", Words(one), StringComparison.Ordinal);
                Assert.All(one.Faults, fault => Assert.True(fault.High > fault.Low && fault.Amount.IsPositive, $"{one.Kind}: {Words(one)}"));
                if (one.Working is { } working)
                    Assert.Equal(one.Amount, one.Kind == ConsequenceKind.PanelFallsOut ? -working.Length : working.Length);
                if (one.Kind is ConsequenceKind.JointOpen or ConsequenceKind.HeldApart)
                    Assert.All(one.Faults, fault => Assert.Equal(one.Amount, fault.Amount));
            }

            var quiet = found.Numbers.Where(number => number.Standing != NumberStanding.Right && !number.Difference.IsZero && !all.Any(one => one.Numbers.Contains(number))).ToList();
            Assert.True(quiet.Count == 0 || GoTogether(quiet, found), string.Join("; ", quiet.Select(number => $"{number.Item.Label} {number.Measure} {number.Difference}")));
        }

        Assert.True(told > 200, $"{told}");

        // A panel that is off by as much as its light fits it, and is told with the light's members.
        static bool GoTogether(IReadOnlyList<CheckedNumber> quiet, CheckedList found) =>
            quiet.All(number => number.Item.Kind is ItemKind.Panel or ItemKind.Glass or ItemKind.MidStile or ItemKind.Rail or ItemKind.MidRail) && found.Numbers.Count(number => number.Standing != NumberStanding.Right) > quiet.Count;
    }
}
