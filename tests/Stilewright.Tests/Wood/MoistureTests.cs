using System.Globalization;
using CsCheck;
using Fractions;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wood;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Wood;

public sealed class MoistureTests
{
    // FPL-GTR-190 (2010), Table 4-2, p. 4-4, 342 cells printed to 0.1 %. Its Equation 4-5 agrees within 0.056.
    private const double TableTolerance = 0.06;

    public static TheoryData<int> Temperatures => [.. Cells().Select(cell => cell.Fahrenheit).Distinct()];

    [Fact]
    public void The_table_has_all_its_cells() => Assert.Equal(342, Cells().Count());

    [Theory]
    [MemberData(nameof(Temperatures))]
    public void Wood_handbook_table_4_2_cell_by_cell(int fahrenheit)
    {
        foreach (var (_, humidity, percent) in Cells().Where(cell => cell.Fahrenheit == fahrenheit))
        {
            Assert.Equal(percent, EquilibriumMoisture.Percent(fahrenheit, humidity), TableTolerance);
            Assert.Equal(humidity, EquilibriumMoisture.Humidity(fahrenheit, EquilibriumMoisture.Percent(fahrenheit, humidity))!.Value, 1e-6);
        }
    }

    // USDA figures quoted for a heated room at 70 °F.
    [Theory]
    [InlineData(30, 6.2)]
    [InlineData(40, 7.7)]
    [InlineData(50, 9.2)]
    [InlineData(60, 11.0)]
    public void A_room_at_70_F(int humidity, double percent) => Assert.Equal(percent, EquilibriumMoisture.Percent(70, humidity), 0.05);

    // FPL report R1903-7 (1951): 10.9 % at 70 °F and 59 % RH, from other measurements.
    [Fact]
    public void An_independent_point() => Assert.Equal(10.9, EquilibriumMoisture.Percent(70, 59), 0.15);

    [Fact]
    public void The_inverse_finds_the_humidity_and_nothing_beyond_damp_air() =>
        Gen.Select(Gen.Double[20, 140], Gen.Double[0, 100]).Sample((fahrenheit, humidity) =>
        {
            var percent = EquilibriumMoisture.Percent(fahrenheit, humidity);
            return Math.Abs(EquilibriumMoisture.Humidity(fahrenheit, percent)!.Value - humidity) < 1e-6
                && EquilibriumMoisture.Humidity(fahrenheit, EquilibriumMoisture.Percent(fahrenheit, 100) + 0.1) is null
                && EquilibriumMoisture.Humidity(fahrenheit, -0.1) is null;
        });

    [Fact]
    public void Humidity_outside_its_range_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => EquilibriumMoisture.Percent(70, 101));

    [Fact]
    public void Celsius_and_Fahrenheit_are_two_words_for_one_heat()
    {
        Assert.Equal(EquilibriumMoisture.Percent(68, 45), EquilibriumMoisture.Percent(EquilibriumMoisture.Fahrenheit(20), 45), 1e-12);
        Assert.Equal(20, EquilibriumMoisture.Celsius(68), 1e-12);
    }

    // Between January at 20 % and July at 55 %, 70 °F: 4.5 and 10.1 %, in April half way.
    [Fact]
    public void Seasons_give_moisture_on_a_tenth_and_run_evenly_between()
    {
        var moisture = ServiceMoisture.Of(new StandardInForce(WithSeasons()));
        Assert.Equal(new Fraction(45, 10), moisture.Driest.Amount);
        Assert.Equal(new Fraction(101, 10), moisture.Wettest.Amount);
        Assert.Equal(new Fraction(73, 10), moisture.Months[3]);
        Assert.Equal(moisture.Months[3], moisture.Months[9]);
        Assert.Equal((moisture.Driest.Amount, moisture.Wettest.Amount), (moisture.Months[0], moisture.Months[6]));
    }

    [Fact]
    public void A_range_is_driest_in_January_and_wettest_in_July()
    {
        var moisture = ServiceMoisture.Of(new StandardInForce(ShippedStandards.Inch));
        Assert.Equal((6, 8, 10, 8), (moisture.Months[0], moisture.Months[3], moisture.Months[6], moisture.Months[9]));
        Assert.Contains("cosine", moisture.Assumption, StringComparison.Ordinal);
    }

    [Fact]
    public void Settings_of_the_ends_win_over_the_climate()
    {
        var standard = new StandardInForce(ShippedStandards.Inch).With(OriginKind.Course, "course", Set((Settings.Driest, "5"), (Settings.Moisture, "7.5 %")));
        var moisture = ServiceMoisture.Of(standard);
        Assert.Equal((5, new Fraction(15, 2), 10), (moisture.Driest.Amount, moisture.Making.Amount, moisture.Wettest.Amount));
    }

    // FPL-GTR-190 Fig. 13-1: averages 8, 6 and 11 %; the ranges are from memory and lie round them.
    [Fact]
    public void The_three_regions_ship_with_their_sources()
    {
        Assert.Equal(["most-areas", "dry-southwest", "damp-coast"], ClimateTable.Shipped.Select(climate => climate.Id));
        Assert.All(ClimateTable.Shipped, climate => Assert.Contains("from memory", climate.Source, StringComparison.Ordinal));
    }

    internal static HouseStandard WithSeasons() => ShippedStandards.Inch with
    {
        Climates = [new("attic", "Attic", null, null, [Season("winter", 1, 20), Season("summer", 7, 55)])],
        Settings = Set((Settings.Climate, "attic")),
    };

    private static Season Season(string name, int month, int humidity) => new(name, month, new("70 F", 70), new($"{humidity} %", humidity));

    private static IEnumerable<(int Fahrenheit, int Humidity, double Percent)> Cells() => Table.Read("emc-table.csv").Select(row => (
        int.Parse(row["temp_f"], CultureInfo.InvariantCulture), int.Parse(row["rh_pct"], CultureInfo.InvariantCulture), double.Parse(row["emc_pct"], CultureInfo.InvariantCulture)));
}
