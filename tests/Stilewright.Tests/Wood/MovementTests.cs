using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Fractions;
using Stilewright.Measure;
using Stilewright.Wood;

namespace Stilewright.Tests.Wood;

public sealed partial class MovementTests
{
    // FPL-GTR-190 (2010), p. 13-15 to 13-17: a white fir board, flat-grained, 9.15 in wide, from 8 to 11 %: 0.067 in, to 9.217 in.
    [Fact]
    public void The_handbooks_worked_example()
    {
        var width = new Given("board", "width", Dimension.Length, new Fraction(915, 100), Origin.Typed);
        var fir = Find("white fir");
        var gain = Movement.Of(width, fir, RingOrientation.Flat, Percent(8), Percent(11));
        Assert.Equal(0.067, gain.Amount.ToDouble(), 0.0005);
        Assert.Equal(9.217, (width + gain).Amount.ToDouble(), 0.0005);
        Assert.Equal(0.067, (width * Movement.ByShrinkage(fir, RingOrientation.Flat, Percent(8), Percent(11))).Amount.ToDouble(), 0.001);
        // The thickness of that board moves radially, CR = 0.00112.
        Assert.Equal(0.00112 * 3, Movement.GainPerWidth(fir, RingOrientation.Quarter, Percent(8), Percent(11)).Amount.ToDouble(), 1e-12);
    }

    // Published on one page, after the Wood Handbook's coefficients: 12 in flatsawn over 4 %, and how wide 1/4 in of play allows.
    [Theory]
    [InlineData("red oak", 0.00369, 0.00158, 0.177, 16.9)]
    [InlineData("white oak", 0.00365, 0.00180, 0.175, 17.1)]
    [InlineData("hard maple", 0.00353, 0.00165, 0.169, 17.7)]
    [InlineData("soft maple", 0.00289, 0.00137, 0.139, 21.6)]
    [InlineData("cherry", 0.00248, 0.00126, 0.119, 25.2)]
    [InlineData("walnut", 0.00274, 0.00190, 0.132, 22.8)]
    [InlineData("white ash", 0.00274, 0.00169, 0.132, 22.8)]
    [InlineData("yellow birch", 0.00338, 0.00256, 0.162, 18.5)]
    [InlineData("red alder", 0.00256, 0.00151, 0.123, 24.4)]
    public void Twelve_inches_over_four_percent(string wood, double tangential, double radial, double gain, double widest)
    {
        var species = Find(wood);
        Assert.Equal((tangential, radial), (species.Movement!.Tangential.ToDouble(), species.Movement.Radial.ToDouble()));
        var each = Movement.GainPerWidth(species, RingOrientation.Flat, Percent(6), Percent(10)).Amount.ToDouble();
        Assert.Equal(gain, 12 * each, 0.0006);
        Assert.Equal(widest, 0.25 / each, 0.06);
        Assert.True(Movement.GainPerWidth(species, RingOrientation.Mixed, Percent(6), Percent(10)).Amount.ToDouble() == each, "mixed rings are reckoned as flat");
    }

    // FPL-GTR-190 p. 13-15: taking shrinkage as linear can miss the true change by about 5 %; within 6 to 14 % the two agree closer than that.
    [Fact]
    public void Both_equations_agree_where_both_hold() => Gen.Select(Gen.Int[0, Moving.Count - 1], Gen.Int[60, 140], Gen.Int[60, 140], Gen.Bool).Sample((which, from, to, quarter) =>
    {
        var rings = quarter ? RingOrientation.Quarter : RingOrientation.Flat;
        var (one, other) = (Percent(new Fraction(from, 10)), Percent(new Fraction(to, 10)));
        var linear = Movement.GainPerWidth(Moving[which], rings, one, other).Amount.ToDouble();
        return Math.Abs(Movement.ByShrinkage(Moving[which], rings, one, other).Amount.ToDouble() - linear) <= Math.Abs(linear) * 0.05;
    });

    [Fact]
    public void The_shrinkage_form_gives_the_coefficient_at_ten_percent()
    {
        foreach (var species in Moving)
        {
            foreach (var rings in new[] { RingOrientation.Flat, RingOrientation.Quarter })
                Assert.Equal(Movement.Coefficient(species, rings).Amount, Movement.ByShrinkage(species, rings, Percent(10), Percent(11)).Amount);
        }
    }

    // From green to oven-dry a board loses its total shrinkage, by the definition of shrinkage (FPL-GTR-190, chapter 4).
    [Fact]
    public void Green_to_oven_dry_is_the_total_shrinkage()
    {
        foreach (var species in Moving)
        {
            var loss = Movement.LossPerWidth(species, RingOrientation.Flat, Percent(30), Percent(0));
            Assert.Equal(species.Movement!.TangentialShrinkage / 100, loss.Amount);
        }
    }

    // FPL-GTR-190 Table 4-3 prints shrinkage to 0.1 %: the checks beside the data tell it where it was read or implied.
    [Fact]
    public void Coefficients_agree_with_shrinkage()
    {
        var compared = 0;
        foreach (var row in Table.Read("dimensional-change.csv"))
        {
            if (Implied().Match(row["check"]) is not { Success: true } implied)
                continue;
            var movement = SpeciesTable.Shipped.All.First(species => species.Name == row["species"]).Movement!;
            Assert.Equal(double.Parse(implied.Groups[1].Value, CultureInfo.InvariantCulture), movement.RadialShrinkage.ToDouble(), 0.051);
            Assert.Equal(double.Parse(implied.Groups[2].Value, CultureInfo.InvariantCulture), movement.TangentialShrinkage.ToDouble(), 0.051);
            compared++;
        }

        Assert.True(compared >= 40, $"only {compared} rows were compared");
    }

    // FPL-GTR-190 Table 4-3, p. 4-6, figures read there: black cherry 3.7 / 7.1, sugar maple 4.8 / 9.9,
    // black walnut 5.5 / 7.8, yellow-poplar 4.6 / 8.2.
    [Theory]
    [InlineData("cherry", 3.7, 7.1)]
    [InlineData("hard maple", 4.8, 9.9)]
    [InlineData("walnut", 5.5, 7.8)]
    [InlineData("poplar", 4.6, 8.2)]
    public void Shrinkage_of_cabinet_woods(string wood, double radial, double tangential)
    {
        var movement = Find(wood).Movement!;
        Assert.Equal(radial, movement.RadialShrinkage.ToDouble(), 0.051);
        Assert.Equal(tangential, movement.TangentialShrinkage.ToDouble(), 0.051);
    }

    [Fact]
    public void Wood_above_the_start_of_shrinkage_does_not_move()
    {
        var oak = Find("red oak");
        Assert.True(Movement.GainPerWidth(oak, RingOrientation.Flat, Percent(30), Percent(40)).Amount.IsZero);
        Assert.Equal(Movement.GainPerWidth(oak, RingOrientation.Flat, Percent(8), Percent(30)).Amount, Movement.GainPerWidth(oak, RingOrientation.Flat, Percent(8), Percent(50)).Amount);
    }

    [Fact]
    public void A_movement_shows_its_row_and_its_arithmetic()
    {
        var gain = Movement.Of(new Given("panel", "panel width", Length.FromInches(12), Origin.Typed), Find("red oak"), RingOrientation.Flat, Percent(8), Percent(10));
        Assert.Equal("12 × (0.00369 × (10 − 8)) = ≈3/32", WorkedText.Arithmetic(gain, LengthFormat.InchesTo32));
        Assert.Contains(gain.Distinct().OfType<FromTable>(), row => row.Row == "Red oak, commercial" && row.Source.Text.Contains("Table 13-5", StringComparison.Ordinal));
    }

    private static IReadOnlyList<Species> Moving { get; } = [.. SpeciesTable.Shipped.All.Where(species => species.Movement is not null)];

    private static Species Find(string name) => Assert.IsType<SpeciesMatch.Found>(SpeciesTable.Shipped.Find(name)).Species;

    private static Given Percent(Fraction value) => new("moisture", "moisture", Dimension.Moisture, value, Origin.Typed);

    [GeneratedRegex(@"implied shrinkage R ([\d.]+) T ([\d.]+)")]
    private static partial Regex Implied();
}
