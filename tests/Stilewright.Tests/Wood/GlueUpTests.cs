using CsCheck;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wood;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Wood;

public sealed class GlueUpTests
{
    // A panel 12 wide and 1/4 over in the rough, from staves of 5 at most less 1/8 of jointing: 12 1/4 / 4 7/8 → 3 of 4 3/32.
    [Fact]
    public void A_panel_from_a_range_of_staves()
    {
        var plan = Planned(Panel("16"), GlueUpOrder.Usual);
        Assert.Equal(3, plan.Staves.Count);
        Assert.All(plan.Staves, stave => Assert.Equal((In("4 7/32").Value, In("4 3/32").Value), (stave.Rough, stave.Jointed)));
        Assert.Equal(In("1/32").Value, plan.Waste);
        Assert.Equal([true, false, true], plan.Staves.Select(stave => stave.BarkUp));
        Assert.Equal(1, plan.Sections);
        // 21 1/8 long in the rough, clamps at most 2 × 4 3/32 apart.
        Assert.Equal((3, In("8 3/16").Value), (plan.Clamps, plan.ClampSpacing));
        Assert.All(Planned(Panel("16"), GlueUpOrder.Usual with { AlternateRings = false }).Staves, stave => Assert.True(stave.BarkUp));
    }

    // 26 wide goes through neither planer (20) nor sander (25): two sections, each of whole staves.
    [Fact]
    public void What_is_wider_than_a_machine_is_made_in_sections_and_joined_last()
    {
        var plan = Planned(Panel("30"), GlueUpOrder.Usual);
        Assert.Equal(("the planer", 2), (plan.Limit!.Name, plan.Sections));
        Assert.All(plan.Staves.GroupBy(stave => stave.Section), section => Assert.True(section.Aggregate(default(Length), (sum, stave) => sum + stave.Jointed) <= In("20").Value));
        var steps = plan.Steps.Select(step => Stilewright.Findings.FindingText.Say(step, LengthFormat.InchesTo32)).ToList();
        Assert.Contains(steps, step => step.Contains("2 sections on their own: staves 1 to 3; staves 4 to 6", StringComparison.Ordinal));
        Assert.Contains(steps, step => step.Contains("join them last", StringComparison.Ordinal));
    }

    // Boards of 6, 5, 4 1/2, 3 and 2 for 12 1/4: jointed 5 7/8, 4 7/8, 4 3/8, 2 7/8, 1 7/8; the nearest sums are 12 5/8 (5 7/8 + 4 7/8 + 1 7/8),
    // 13 1/8 and, with 4 3/8 + 5 7/8 + 1 7/8 = 12 1/8, too little; 4 7/8 + 2 7/8 + 4 3/8 = 12 1/8 too.
    [Fact]
    public void Real_boards_are_chosen_with_the_least_over()
    {
        var plan = Planned(Panel("16"), GlueUpOrder.Usual with { Boards = [.. new[] { "6", "5", "4 1/2", "3", "2" }.Select(width => In(width).Value)] });
        Assert.Equal([In("6").Value, In("5").Value, In("2").Value], plan.Staves.Select(stave => stave.Rough));
        Assert.Equal(In("3/8").Value, plan.Waste);
    }

    [Fact]
    public void Boards_that_do_not_reach_say_by_how_much()
    {
        var lacking = Assert.IsType<GlueUpResult.NotEnough>(Of(Panel("16"), GlueUpOrder.Usual with { Boards = [In("6").Value, In("5").Value] }));
        Assert.Equal(In("1 1/2").Value, lacking.ShortBy);
    }

    [Fact]
    public void Orders_that_make_no_staves_are_refused()
    {
        Assert.IsType<GlueUpResult.Refused>(Of(Panel("16"), GlueUpOrder.Usual with { GreatestStave = In("1/8").Value }));
        Assert.IsType<GlueUpResult.Refused>(Of(Panel("16"), GlueUpOrder.Usual with { LeastStave = In("5").Value, GreatestStave = In("5").Value }));
        Assert.IsType<GlueUpResult.Refused>(Of(Panel("30"), GlueUpOrder.Usual with { Boards = [In("22").Value, In("22").Value] }));
        Assert.Throws<ArgumentException>(() => Of(Door("16", "24").Part("hole/leaf/stile.left"), GlueUpOrder.Usual));
    }

    [Fact]
    public void Staves_reach_the_width_with_less_than_a_stave_over() => Gen.Select(Gen.Int[10, 60], Gen.Int[3, 8]).Sample((width, greatest) =>
    {
        var part = Panel($"{width}");
        return Of(part, GlueUpOrder.Usual with { GreatestStave = In($"{greatest}").Value }) is not GlueUpResult.Planned(var plan)
            || (plan.Width >= part.Rough!.Width.Length && plan.Waste < In("1").Value && plan.Staves.All(stave => stave.Rough <= In($"{greatest}").Value + In("1/32").Value)
                && plan.Staves.GroupBy(stave => stave.Section).All(section => section.Aggregate(default(Length), (sum, stave) => sum + stave.Jointed) <= In("20").Value));
    }, iter: 200);

    // Against every subset of the boards.
    [Fact]
    public void The_choice_of_boards_is_the_best_of_all() => Gen.Int[16, 80].Array[1, 9].Sample(sixteenths =>
    {
        var part = Panel("16");
        var boards = sixteenths.Select(width => Length.FromInches(new(width, 16))).ToList();
        Length? best = null;
        for (var subset = 1; subset < 1 << boards.Count; subset++)
        {
            var sum = boards.Where((_, index) => (subset >> index & 1) == 1).Aggregate(default(Length), (total, board) => total + board - In("1/8").Value);
            if (sum >= part.Rough!.Width.Length && (best is null || sum < best))
                best = sum;
        }

        return Of(part, GlueUpOrder.Usual with { Boards = boards }) switch
        {
            GlueUpResult.Planned(var plan) => plan.Width == best,
            GlueUpResult.NotEnough => best is null,
            _ => false,
        };
    }, iter: 200);

    private static Part Panel(string door) => Door(door, "24", Design() with { Panel = Raised with { Kind = PanelKind.FlatSolid } }).Part("hole/leaf/panel");

    private static GlueUpResult Of(Part part, GlueUpOrder order) => GlueUp.Of(part, new StandardInForce(ShippedStandards.Inch), order);

    private static GlueUp Planned(Part part, GlueUpOrder order) => Assert.IsType<GlueUpResult.Planned>(Of(part, order)).GlueUp;
}
