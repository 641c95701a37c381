using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Tests.Wood;

public sealed class SpeciesTableTests
{
    [Theory]
    [InlineData("red oak", "Red oak, commercial")]
    [InlineData("Red Oak", "Red oak, commercial")]
    [InlineData("  white  oak ", "White oak, commercial")]
    [InlineData("hard maple", "Maple, sugar")]
    [InlineData("Maple, sugar", "Maple, sugar")]
    [InlineData("sugar maple", "Maple, sugar")]
    [InlineData("soft maple", "Maple, red")]
    [InlineData("poplar", "Yellow-poplar")]
    [InlineData("yellow poplar", "Yellow-poplar")]
    [InlineData("black walnut", "Walnut, black")]
    [InlineData("beech", "Beech, American")]
    public void A_bench_name_finds_its_row(string name, string row) =>
        Assert.Equal(row, Assert.IsType<SpeciesMatch.Found>(SpeciesTable.Shipped.Find(name)).Species.Name);

    [Theory]
    [InlineData("chery", "cherry")]
    [InlineData("red oke", "red oak")]
    [InlineData("mahogony", "mahogany")]
    public void A_slip_of_the_pen_is_answered_with_the_nearest(string name, string nearest) =>
        Assert.Equal(nearest, Assert.IsType<SpeciesMatch.Unknown>(SpeciesTable.Shipped.Find(name)).Nearest[0]);

    [Fact]
    public void What_is_like_nothing_has_no_nearest() => Assert.Empty(Assert.IsType<SpeciesMatch.Unknown>(SpeciesTable.Shipped.Find("unobtainium xyz")).Nearest);

    [Fact]
    public void Every_row_is_found_by_its_own_name()
    {
        Assert.All(SpeciesTable.Shipped.All, species => Assert.Equal(species.Name, Assert.IsType<SpeciesMatch.Found>(SpeciesTable.Shipped.Find(species.Name)).Species.Name));
        Assert.Equal(126, SpeciesTable.Shipped.All.Count(species => Table.Read("dimensional-change.csv").Any(row => row["species"] == species.Name)));
    }

    [Fact]
    public void Every_figure_tells_its_source() => Assert.All(SpeciesTable.Shipped.All, species =>
    {
        Assert.True(species.Movement is null || species.Movement.Source.Length > 0);
        Assert.True(species.Gravity is null || species.Gravity.Source.Length > 0);
    });

    // 41 rows of the coefficient table are from memory and say so.
    [Fact]
    public void What_is_from_memory_says_so() => Assert.Equal(41, Table.Read("dimensional-change.csv").Count(row =>
        SpeciesTable.Shipped.All.First(species => species.Name == row["species"]).Movement!.Source.Contains("from memory", StringComparison.Ordinal)));

    [Fact]
    public void The_shops_own_wood_wins()
    {
        var standard = ShippedStandards.Inch with
        {
            Species = [new("our-oak", "Oak of the valley", ["red oak"], new("0.004", new(4, 1000)), new("0.002", new(2, 1000)), new("0.7", new(7, 10)), Source: "our own boards, 2024")],
        };
        var table = SpeciesTable.Of(standard);
        foreach (var name in new[] { "red oak", "oak of the valley", "our-oak" })
        {
            var own = Assert.IsType<SpeciesMatch.Found>(table.Find(name)).Species;
            Assert.True(own is { IsOwn: true, Movement.Source: "our own boards, 2024" });
        }

        Assert.Equal("Maple, sugar", Assert.IsType<SpeciesMatch.Found>(table.Find("hard maple")).Species.Name);
        Assert.False(Assert.IsType<SpeciesMatch.Found>(SpeciesTable.Shipped.Find("red oak")).Species.IsOwn);
    }
}
