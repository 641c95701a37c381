using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wood;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Wood;

public sealed class LeafWeightTests
{
    // US Forest Service, FIA REF_SPECIES after FPL-GTR-113 (1999): red oak, northern, 43.3 lb/ft³ at 12 %; a slab of
    // 24 × 36 × 3/4 is 0.375 ft³.
    [Fact]
    public void A_red_oak_slab_weighs_its_volume_times_the_tables_density()
    {
        var slab = Door("24", "36", Design() with { Construction = Construction.Slab, Cutters = null, Panel = null }, (Settings.TrimWidth, "0"));
        var weight = LeafWeight.Of(slab.Leaves.Single());
        Assert.True(weight.IsWhole);
        Assert.Equal(0.375 * DensityOf("Red oak, northern"), weight.Pounds.ToDouble(), 0.02);
        Assert.Equal((12.0, 18.0), weight.Centre);
        Assert.Equal(24 * 36, weight.Area.Amount);
    }

    // Every row of the specific gravity table: 62.4 × SG × 1.12 is the density the table prints, to its rounding.
    [Fact]
    public void Densities_agree_with_the_specific_gravity_table()
    {
        var checkedRows = 0;
        foreach (var row in Table.Read("specific-gravity.csv"))
        {
            if (SpeciesTable.Shipped.All.FirstOrDefault(species => species.Name == row["species"]) is not { } species)
                continue;
            Assert.Equal(double.Parse(row["density12_lb_ft3"], System.Globalization.CultureInfo.InvariantCulture), Density.Solid(species)!.Amount.ToDouble() * 1728, 0.051);
            checkedRows++;
        }

        Assert.True(checkedRows > 80, $"only {checkedRows} rows were found");
    }

    // By hand, without any curve: frame of 2 1/4 members round a raised panel, 16 × 24, cutters as shipped.
    [Fact]
    public void A_framed_door_loses_its_grooves_mouldings_and_raise()
    {
        var leaf = Door("16", "24").Leaves.Single();
        var weight = LeafWeight.Of(leaf);
        const double thick = 0.75, profile = (0.375 * 0.25) + (0.375 * 0.25 / 2);
        var stile = (2.25 * 24 * thick) - (profile * 24);
        var rail = (2.25 * 11.5 * thick) - (profile * 11.5) + (2 * 0.375 * 0.25 * 2.25);
        Assert.Equal(stile, VolumeOf("stile.left"), 0.002);
        Assert.Equal(rail, VolumeOf("rail.top"), 0.002);

        // The panel in strips of 1/1000 in from the edge inward.
        var panel = leaf.Parts.Single(part => part.Kind == PartKind.Panel);
        var (w, h) = (panel.Finished.Width.Length.Inches.ToDouble(), panel.Finished.Length.Length.Inches.ToDouble());
        var final = panel.Thickness!.Final.Length.Inches.ToDouble();
        var taken = 0.0;
        for (var s = 0.0005; s < 1.25; s += 0.001)
        {
            var deep = (final - 0.25) * (s < 0.375 ? 1 : (1.25 - s) / (1.25 - 0.375));
            taken += deep * 0.001 * ((2 * (w + h)) - (8 * s));
        }

        Assert.Equal((w * h * final) - taken, VolumeOf("panel"), 0.05);
        Assert.Equal((8.0, 12.0), (Math.Round(weight.Centre!.Value.X, 9), Math.Round(weight.Centre.Value.Y, 9)));

        double VolumeOf(string segment) => weight.Parts.Single(each => each.Part.Path.EndsWith($"/{segment}", StringComparison.Ordinal)).Volume.Amount.ToDouble();
    }

    [Fact]
    public void An_arch_takes_wood_from_the_top_and_lowers_the_centre()
    {
        var plain = LeafWeight.Of(Door("16", "24", Design() with { Panel = new(PanelKind.Open) }).Leaves.Single());
        var arched = LeafWeight.Of(Door("16", "24", Design() with { Panel = new(PanelKind.Open), TopArch = new(ArchFamily.Eyebrow, In("2")) }).Leaves.Single());
        Assert.True(arched.Pounds > plain.Pounds, "an arched rail has its shoulders besides its narrowest width");
        Assert.True(arched.Centre!.Value.Y > plain.Centre!.Value.Y);
        // Area between chord and arc of rise 2 over 11 1/2: R²(θ − sin θ) / 2.
        var radius = ((5.75 * 5.75) + 4) / 4;
        var angle = 2 * Math.Asin(5.75 / radius);
        var segment = radius * radius * (angle - Math.Sin(angle)) / 2;
        var rail = arched.Parts.Single(each => each.Part.Arch is not null);
        var straight = plain.Parts.Single(each => each.Part.Path.EndsWith("/rail.top", StringComparison.Ordinal));
        const double profile = (0.375 * 0.25) + (0.375 * 0.25 / 2);
        var more = (((11.5 * 2) - segment) * 0.75) - (profile * ((radius * angle) - 11.5)) + (2 * 0.375 * 0.25 * 2);
        Assert.Equal(straight.Volume.Amount.ToDouble() + more, rail.Volume.Amount.ToDouble(), 0.01);
    }

    [Fact]
    public void Glass_weighs_two_and_a_half_times_water()
    {
        var leaf = Door("16", "24", Design() with { Panel = new(PanelKind.Glass, SafetyGlazing: "tempered") }).Leaves.Single();
        var pane = LeafWeight.Of(leaf).Parts.Single(each => each.Part.Kind == PartKind.Glass);
        var size = pane.Part.Finished;
        Assert.Equal(2.5 * 62.428 / 1728 * (size.Width.Amount * size.Length.Amount).ToDouble() * 3 / 32, pane.Weight!.Amount.ToDouble(), 0.003);
    }

    [Fact]
    public void A_wood_of_unknown_density_is_left_out_and_named()
    {
        var weight = LeafWeight.Of(Door("16", "24", Design() with { Panel = Raised with { Species = "moon wood" } }).Leaves.Single());
        Assert.Equal(["moon wood"], weight.Unknown);
        Assert.False(weight.IsWhole);
        Assert.True(weight.Pounds > 0);
    }

    private static double DensityOf(string row) => double.Parse(
        Table.Read("specific-gravity.csv").Single(each => each["species"] == row)["density12_lb_ft3"], System.Globalization.CultureInfo.InvariantCulture);
}
