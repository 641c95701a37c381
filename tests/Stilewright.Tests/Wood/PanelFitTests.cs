using CsCheck;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wood;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Wood;

public sealed class PanelFitTests
{
    private static readonly string[] Woods = ["red oak", "hard maple", "cherry", "walnut", "poplar", "beech", "white pine", "basswood"];

    // Red oak, FPL-GTR-190 Table 13-5, by hand: light 11 1/2, groove 3/8, 1/8 in each groove: 12 wide at 8 %. To 10 % it gains
    // 12 × 0.00369 × 2 = 0.08856, to 6 % it loses as much.
    [Fact]
    public void A_red_oak_panel_by_hand()
    {
        var fit = Assert.Single(PanelFit.Of(Door("16", "24").Leaves.Single()));
        Assert.Equal(Length.FromInches(12), fit.Width.Length);
        Assert.Equal(Length.FromInches(new(1, 8)), fit.Clearance.Length);
        Assert.Equal(12.08856, fit.WidthAtWettest.Amount.ToDouble(), 1e-12);
        Assert.Equal(11.91144, fit.WidthAtDriest.Amount.ToDouble(), 1e-12);
        Assert.Equal(0.125 - 0.04428, fit.PlayAtWettest.Amount.ToDouble(), 1e-12);
        Assert.Equal(0.25 - 0.04428, fit.EngagementAtDriest.Amount.ToDouble(), 1e-12);
        Assert.True(fit.Fits);
        // (11 1/2 + 1/4) ÷ 0.99262 = 11.837, up to 11 27/32; (12 1/4 − 1/16) ÷ 1.00738 = 12.098, down to 12 3/32.
        var range = Assert.IsType<PanelRange.Some>(fit.Range);
        Assert.Equal((In("11 27/32").Value, In("12 3/32").Value), (range.Least.Length, range.Greatest.Length));

        var free = fit.Held(isPinned: false);
        Assert.Equal(0.25 - 0.08856, free.PlayAtWettest.Amount.ToDouble(), 1e-12);
        Assert.Equal(12 - 0.08856 - 11.5 - 0.375, free.EngagementAtDriest.Amount.ToDouble(), 1e-12);
        Assert.False(free.Fits);
    }

    [Fact]
    public void By_season_the_width_shows_its_working_and_the_clearance_follows()
    {
        var breakdown = Door("16", "24", null, (Settings.PanelPolicy, Settings.BySeason));
        var panel = breakdown.Part("hole/leaf/panel");
        Assert.Equal(In("12 3/32").Value, panel.Finished.Width.Length);
        Assert.Equal("(clear width + 2 × groove depth − 2 × air at the wettest) ÷ (1 + swelling for each unit of width), down to a whole cutting step", WorkedText.Formula(panel.Finished.Width));
        Assert.Equal((In("12 1/4").Value - In("12 3/32").Value) / 2, panel.VisibleBounds.X - panel.Outline.X is var into ? In("3/8").Value - into : default);
        // Along the grain nothing changes.
        Assert.Equal(Door("16", "24").Part("hole/leaf/panel").Finished.Length.Length, panel.Finished.Length.Length);
    }

    [Fact]
    public void A_level_panel_moves_up_and_down()
    {
        var breakdown = Door("16", "24", Design() with { Panel = Raised with { Grain = GrainDirection.Horizontal } }, (Settings.PanelPolicy, Settings.BySeason));
        var fit = Assert.Single(PanelFit.Of(breakdown.Leaves.Single()));
        Assert.Equal(In("19 1/2").Value, fit.Clear.Length);
        Assert.True(fit.Fits);
        Assert.Equal(breakdown.Part("hole/leaf/panel").Outline.Height, fit.Width.Length);
    }

    [Fact]
    public void A_wood_that_nobody_knows_keeps_the_standards_clearance()
    {
        var breakdown = Door("16", "24", Design() with { Panel = Raised with { Species = "moon wood" } }, (Settings.PanelPolicy, Settings.BySeason));
        Assert.Equal(Length.FromInches(12), breakdown.Part("hole/leaf/panel").Finished.Width.Length);
        Assert.Contains("Until then it has the clearance of the standard", Assert.Single(breakdown.Findings, finding => finding.Rule == Rules.SpeciesUnknown).AdviceText(LengthFormat.InchesTo32), StringComparison.Ordinal);
        Assert.Empty(PanelFit.Of(breakdown.Leaves.Single()));
    }

    // Each remedy is tried on the door that it makes.
    [Fact]
    public void What_is_said_to_help_helps()
    {
        (Setting, string)[] harsh = [(Settings.Wettest, "13 %"), (Settings.Driest, "5 %"), (Settings.PanelPolicy, Settings.BySeason)];
        var none = Assert.IsType<PanelRange.None>(Assert.Single(PanelFit.Of(Door("30", "24", null, harsh).Leaves.Single())).Range);
        var deeper = none.Remedies.Single(remedy => remedy.Kind == PanelRemedyKind.DeeperGroove).Amount!.Value;
        Assert.False(Works(Groove(deeper - In("1/32").Value)));
        Assert.True(Works(Groove(deeper)));
        Assert.Contains(none.Remedies, remedy => remedy.Kind == PanelRemedyKind.Quartersawn);
        Assert.True(Works(Door("30", "24", null, [.. harsh, (Settings.PanelRings, "quarter")])));
        Assert.Contains(none.Remedies, remedy => remedy.Kind == PanelRemedyKind.TwoLights);
        Assert.True(Works(Door("30", "24", Design() with { MidStiles = [new(1, 1)] }, harsh)));
        Assert.Equal(PanelRemedyKind.Sheet, none.Remedies[^1].Kind);

        Breakdown Groove(Length more) => Breakdown.Of(DoorOf("30", "24", Design(), harsh),
            Cutters(set => set with { GrooveDepth = new("deeper", set.GrooveDepth.Value + more) }));
        static bool Works(Breakdown breakdown) => PanelFit.Of(breakdown.Leaves.Single()).All(fit => fit.Range is PanelRange.Some);
    }

    private static Gen<PanelFit> Fits { get; } = Gen.Select(Gen.Int[8, 40], Gen.Int[0, Woods.Length - 1].Select(index => Woods[index]), Gen.Int[0, 10], Gen.Int[0, 8], Gen.Bool, Gen.Int[4, 12]).Select(
        (width, wood, dry, more, isFree, making) => Assert.Single(PanelFit.Of(Door($"{width}", "24", Design() with { Species = wood },
            (Settings.Driest, $"{dry} %"), (Settings.Wettest, $"{dry + more} %"), (Settings.Moisture, $"{making} %"), (Settings.PanelHeld, isFree ? Settings.Free : "pinned"),
            (Settings.LeastField, "0"), (Settings.PanelEngagement, "1/16")).Leaves.Single())));

    [Fact]
    public void Pinned_is_never_worse_than_free() => Fits.Sample(fit =>
    {
        var (pinned, free) = (fit.Held(true), fit.Held(false));
        // While it does not bottom; a free panel that bottoms on both sides has nowhere to go either.
        return (free.PlayAtWettest.Amount < 0 || pinned.EngagementAtDriest.Amount >= free.EngagementAtDriest.Amount)
            && pinned.Bottoms == free.Bottoms && (!free.Fits || pinned.Fits);
    }, iter: 200);

    [Fact]
    public void The_ends_of_the_range_fit_and_one_step_beyond_does_not() => Fits.Sample(fit =>
    {
        if (fit.Range is not PanelRange.Some(var least, var greatest))
            return !fit.Fits;
        var step = In("1/32").Value;
        return At(least.Length).Fits && At(greatest.Length).Fits && At(least.Length - step).IsLoose && At(greatest.Length + step).Bottoms
            && fit.Fits == (fit.Width.Amount >= least.Amount && fit.Width.Amount <= greatest.Amount);

        PanelFit At(Length width) => fit.AtWidth(new Given("tried", "tried width", width, Origin.Typed));
    }, iter: 200);

    [Fact]
    public void Engagement_falls_as_wood_dries_and_the_year_stays_between_its_ends() => Fits.Sample(fit =>
    {
        var months = fit.PlayOverYear();
        return months.OrderBy(month => month.Moisture).Zip(months.OrderBy(month => month.Moisture).Skip(1)).All(pair => pair.First.Engagement <= pair.Second.Engagement)
            && months.All(month => month.Width.Inches >= fit.WidthAtDriest.Amount && month.Width.Inches <= fit.WidthAtWettest.Amount
                && month.Engagement.Inches >= fit.EngagementAtDriest.Amount && month.Play.Inches >= fit.PlayAtWettest.Amount);
    }, iter: 100);

    [Fact]
    public void By_season_no_panel_rule_speaks_where_a_width_exists() => Gen.Select(Gen.Int[10, 40], Gen.Int[0, Woods.Length - 1].Select(index => Woods[index]), Gen.Int[2, 10], Gen.Int[0, 6], Gen.Bool).Sample((width, wood, dry, more, isFree) =>
    {
        var breakdown = Door($"{width}", "24", Design() with { Species = wood }, (Settings.PanelPolicy, Settings.BySeason),
            (Settings.Driest, $"{dry} %"), (Settings.Wettest, $"{dry + more} %"), (Settings.PanelHeld, isFree ? Settings.Free : "pinned"));
        var speaks = breakdown.Findings.Any(finding => finding.Rule == Rules.PanelBottoms || finding.Rule == Rules.PanelLoose);
        return breakdown.Leaves.Single().IsWithheld || speaks == (PanelFit.Of(breakdown.Leaves.Single()).Single().Range is PanelRange.None);
    }, iter: 300);

    // A flank rule that takes the season's swelling: a panel with little movement leaves its flanks alone, one with much does not.
    [Fact]
    public void Under_an_arch_the_flanks_take_the_seasons_swelling()
    {
        Assert.DoesNotContain(Arched("9 %").Findings, finding => finding.Rule == Rules.FlankBottoms);
        Assert.Contains(Arched("14 %").Findings, finding => finding.Rule == Rules.FlankBottoms);

        static Breakdown Arched(string wettest) => Door("24", "30", Design() with { TopArch = new(ArchFamily.Cathedral, In("4"), In("1")), TopRail = In("2 1/4") },
            (Settings.PanelPolicy, Settings.BySeason), (Settings.Wettest, wettest), (Settings.ClearanceAtArch, "1/32"));
    }
}
