using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

public class WorkedExampleTests
{
    // Common practice, no source: a pair without gap on 25 × 31, arched, with and without an allowance of 1/4.
    private static Breakdown ArchedPair(string trim) => Break(Course(
        Design() with { Stiles = new(In("2 1/2")), TopRail = In("2 1/2"), BottomRail = In("2 1/2"), TopArch = new(ArchFamily.Eyebrow, In("2")) },
        Set((Settings.Overlay, "1/2"), (Settings.GapOfPair, "0"), (Settings.TrimWidth, trim), (Settings.TrimHeight, trim),
            (Settings.ClearanceAcross, "1/8"), (Settings.ClearanceAlong, "1/16")),
        Opening("25", "31", Pair())));

    [Fact]
    public void Common_practice_no_source_overlay_front_and_pair()
    {
        var front = ArchedPair("0").Fronts.Single();
        Assert.Equal(26.Inches, front.Width!.Length);
        Assert.Equal(32.Inches, front.Height!.Length);
        Assert.All(front.Leaves, leaf => Assert.Equal((13.Inches, 32.Inches), (leaf.Width.Length, leaf.Height.Length)));
    }

    [Fact]
    public void Common_practice_no_source_parts_of_an_arched_leaf()
    {
        var breakdown = ArchedPair("0");
        IsSize("2 1/2", "32", breakdown.Part("hole/leaf.left/stile.left").Finished);
        IsSize("4 1/2", "8 3/4", breakdown.Part("hole/leaf.left/rail.top").Finished);
        IsSize("2 1/2", "8 3/4", breakdown.Part("hole/leaf.left/rail.bottom").Finished);
        // 8 3/4 × 27 3/4 before clearance: 1/8 per edge across the grain, 1/16 per edge along it.
        IsSize("8 1/2", "27 5/8", breakdown.Part("hole/leaf.left/panel").Finished);
    }

    // A 3/8 moulding cut back so that a butted rail meets the bare stile: 24 − 2 × 2 1/2 + 2 × 3/8 (geometry).
    [Theory]
    [InlineData(Construction.Dowelled)]
    [InlineData(Construction.LooseTenon)]
    public void A_butted_rail_is_longer_by_the_moulding_cut_back_on_both_stiles(Construction construction)
    {
        var rail = Break(Course(
            Design() with { Construction = construction, Stiles = new(In("2 1/2")), TopRail = In("2 1/2"), BottomRail = In("2 1/2"), CutBack = In("3/8") },
            Set((Settings.Overlay, "1/2")), Opening("23", "31", Single()))).Part("hole/leaf/rail.top");
        IsSize("2 1/2", "19 3/4", rail.Finished);
        Assert.Equal(rail.Finished.Length.Length, rail.Shoulder!.Length);
    }

    [Fact]
    public void Common_practice_no_source_trim_allowance_of_a_quarter()
    {
        var breakdown = ArchedPair("1/4");
        IsSize("2 5/8", "32 1/4", breakdown.Part("hole/leaf.left/stile.left").GlueUp);
        IsSize("4 5/8", "8 3/4", breakdown.Part("hole/leaf.left/rail.top").GlueUp);
        IsSize("2 5/8", "8 3/4", breakdown.Part("hole/leaf.left/rail.bottom").GlueUp);
        IsSize("8 1/2", "27 5/8", breakdown.Part("hole/leaf.left/panel").GlueUp);
        // Squaring takes half the allowance from every edge; what is left is the design width.
        foreach (var part in breakdown.Parts.Where(part => part.Kind is PartKind.Stile or PartKind.Rail))
            Assert.Equal(part.Finished.Width.Length, part.GlueUp.Width.Length - (1.Inches / 8));
    }

    [Fact]
    public void Pair_on_23_3_4_by_29_1_2_shows_its_work()
    {
        var standard = ShippedStandards.Inch with
        {
            Cutters = [.. ShippedStandards.Inch.Cutters.Select(set => set.Id == "cope-and-stick" ? set with { GrooveDepth = In("7/16"), CopeLength = In("7/16") } : set)],
        };
        var course = Course(Design(), Set((Settings.TrimWidth, "3/16"), (Settings.TrimHeight, "3/16"), (Settings.ClearanceAcross, "1/16"), (Settings.ClearanceAlong, "1/16")),
            Opening("23 3/4", "29 1/2", Pair()));
        var breakdown = Breakdown.Of(course, standard);
        IsSize("2 11/32", "30 7/16", breakdown.Part("hole/leaf.left/stile.left").GlueUp);
        IsSize("2 11/32", "8 9/16", breakdown.Part("hole/leaf.left/rail.top").GlueUp);
        IsSize("8 7/16", "26 1/2", breakdown.Part("hole/leaf.left/panel").GlueUp);
        var rail = breakdown.Part("hole/leaf.left/rail.top").Finished.Length;
        Assert.Equal("leaf width − 2 × stile width + 2 × cope length", WorkedText.Formula(rail));
        Assert.Equal("12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16", WorkedText.Arithmetic(rail, LengthFormat.InchesTo32));
        Assert.Equal("7·1L·TR", breakdown.Part("hole/leaf.left/rail.top").Label);
        Assert.All(breakdown.Leaves.SelectMany(leaf => leaf.CheckSums), sum => Assert.True(sum.Holds, sum.Text(LengthFormat.InchesTo32)));
    }

    // Cope-and-stick joints, magazine article; arched and cathedral door template instructions: d = 3/8, s = 2-1/4, c = 1/8.
    [Theory]
    [InlineData("12", "8 1/4", "8")]
    [InlineData("15", "11 1/4", "11")]
    [InlineData("18", "14 1/4", "14")]
    public void Template_instructions_rail_and_panel_of_a_door(string door, string rail, string panel)
    {
        var breakdown = Break(Course(Design(), Set((Settings.Overlay, "0"), (Settings.ClearanceAlong, "1/8")), Opening(door, "24", Single())));
        Assert.Equal(In(rail).Value, breakdown.Part("hole/leaf/rail.top").Finished.Length.Length);
        Assert.Equal(In(panel).Value, breakdown.Part("hole/leaf/panel").Finished.Width.Length);
    }

    // Arched and cathedral door template instructions: opening 11 × 22, 1/2 overlay all round, a 12 × 23 door.
    [Fact]
    public void Template_instructions_11_by_22_opening()
    {
        var front = Break(Course(Design(), Set((Settings.Overlay, "1/2")), Opening("11", "22", Single()))).Fronts.Single();
        Assert.Equal((12.Inches, 23.Inches), (front.Leaves[0].Width.Length, front.Leaves[0].Height.Length));
    }

    // Arched raised panels, woodworking magazine: 2-1/2 + 1-1/2 + 1/4 waste = 4-1/4 for the rough top rail.
    [Fact]
    public void Magazine_arched_rail_blank()
    {
        var breakdown = Break(Course(Design() with { TopRail = In("2 1/2"), BottomRail = In("2 1/2"), TopArch = new(ArchFamily.Eyebrow, In("1 1/2")) },
            Set((Settings.TrimWidth, "0"), (Settings.TrimHeight, "0"), (Settings.RoughWidth, "1/4")), Opening("15", "24", Single())));
        Assert.Equal(In("4 1/4").Value, breakdown.Part("hole/leaf/rail.top").Rough!.Width.Length);
    }

    // Public trade thread on inset cabinet door clearance, 2006: single deduct 3/16, pair deduct 9/32 in all.
    [Fact]
    public void Trade_thread_inset_deductions()
    {
        var single = Break(Course(Design(), SettingValues.None, Opening("15", "24", Single(mount: Mount.Inset)))).Leaves.Single();
        Assert.Equal(In("14 13/16").Value, single.Width.Length);
        var pair = Break(Course(Design(), SettingValues.None, Opening("30 9/32", "24", Pair(Mount.Inset)))).Leaves;
        Assert.All(pair, leaf => Assert.Equal(15.Inches, leaf.Width.Length));
    }

    // Partial-inset measuring guide: 3/8 lip with 1/8 clearance a side gives opening + 1/2.
    [Fact]
    public void Measuring_guide_lipped_door()
    {
        var leaf = Break(Course(Design(), SettingValues.None, Opening("15", "24", Single(mount: Mount.Lipped)))).Leaves.Single();
        Assert.Equal((In("15 1/2").Value, In("24 1/2").Value), (leaf.Width.Length, leaf.Height.Length));
    }

    // Minimum door and drawer front dimensions, supplier sheet: r 1-1/2, raise 1-1/4, d 3/8, c 1/8, 1 in of field: 6.0.
    [Fact]
    public void Supplier_sheet_least_height_of_a_raised_drawer_front()
    {
        var design = Design() with { TopRail = In("1 1/2"), BottomRail = In("1 1/2") };
        Breakdown Front(string height) => Break(Course(design, Set((Settings.Overlay, "0"), (Settings.ClearanceAlong, "1/8")),
            Opening("20", height, new DrawerFilling(Mount.Overlay, "plain"))));
        Assert.DoesNotContain(Front("6").Findings, finding => finding.Rule.Code == "drawer.too-low");
        var low = Front("5 31/32");
        var finding = Assert.Single(low.Findings, finding => finding.Rule.Code == "drawer.too-low");
        Assert.Contains("at least 6 in", finding.ProblemText(LengthFormat.InchesTo32), StringComparison.Ordinal);
        Assert.Empty(low.Parts);
    }

    // Same sheet: least door width 2 s + 2 w + F + 2 c − 2 d; s = 2-1/4, w = 1-1/4: 7-1/2.
    [Fact]
    public void Supplier_sheet_least_width_of_a_raised_door()
    {
        Breakdown Door(string width) => Break(Course(Design(), Set((Settings.Overlay, "0")), Opening(width, "24", Single())));
        Assert.DoesNotContain(Door("7 1/2").Findings, finding => finding.Rule.Code == "panel.no-field");
        Assert.Contains(Door("7 15/32").Findings, finding => finding.Rule.Code == "panel.no-field");
    }

    // Common practice, no source: frames that start at 7/8 are not sanded below 0.8.
    [Fact]
    public void Common_practice_no_source_final_thickness()
    {
        var design = Design() with { Stock = "full-four-quarter" };
        Assert.DoesNotContain(Break(Course(design, SettingValues.None, Opening("15", "24", Single()))).Findings, finding => finding.Rule.Code == "stock.final-too-thin");
        var standard = ShippedStandards.Inch with
        {
            Stocks = [.. ShippedStandards.Inch.Stocks.Select(stock => stock.Id == "full-four-quarter" ? stock with { BackLoss = In("3/64") } : stock)],
        };
        var breakdown = Breakdown.Of(Course(design, SettingValues.None, Opening("15", "24", Single())), standard);
        Assert.Contains(breakdown.Findings, finding => finding.Rule.Code == "stock.final-too-thin");
    }
}
