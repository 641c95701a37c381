using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

public class WoodDocumentTests
{
    private const string Start = """{ "format": "stilewright/standard", "version": 1, "id": "shop", "name": "Shop", "unit": "in", "base": "in", """;

    [Fact]
    public void Woods_and_climates_are_read_and_written_as_they_were_typed()
    {
        var standard = Read(Start + """
            "settings": { "wood.climate": "attic", "wood.moisture": "7.5 %", "wood.driest": 5 },
            "species": [ { "id": "our-oak", "name": "Our oak", "aliases": ["valley oak"], "tangential": 0.00369, "radial": "0,00158", "specificGravity": 0.6, "source": "our boards" } ],
            "climates": [ { "id": "attic", "name": "Attic", "seasons": [
                { "name": "winter", "month": 1, "temperature": "68 F", "humidity": "30 %" }, { "name": "summer", "month": 7, "temperature": "25 °C", "humidity": 60 } ] } ] }
            """);
        var oak = Assert.Single(standard.Species);
        Assert.Equal((new Fractions.Fraction(369, 100000), new Fractions.Fraction(158, 100000)), (oak.Tangential!.Value.Value, oak.Radial!.Value.Value));
        Assert.Equal(77, standard.Climates[0].Seasons[1].Temperature.Value);
        Assert.Equal("7.5 %", standard.Settings.Find(Settings.Moisture)!.Text);
        var text = System.Text.Encoding.UTF8.GetString(DocumentWriter.Write(standard));
        Assert.Contains("\"25 °C\"", text, StringComparison.Ordinal);
        Assert.Contains("\"0,00158\"", text, StringComparison.Ordinal);
        Assert.Equal(text, System.Text.Encoding.UTF8.GetString(DocumentWriter.Write(Read(text))));
    }

    // A bare temperature is °C where lengths are millimetres, and stays what it was when it is written elsewhere.
    [Fact]
    public void A_temperature_without_its_letter_follows_the_unit()
    {
        const string Text = """{ "format": "stilewright/standard", "version": 1, "id": "shop", "name": "Shop", "unit": "mm", "base": "mm", "climates": [ { "id": "hall", "name": "Hall", "seasons": [ { "name": "all year", "month": 3, "temperature": 20, "humidity": 45 } ] } ] }""";
        var standard = Read(Text);
        Assert.Equal(68, standard.Climates[0].Seasons[0].Temperature.Value);
        var inches = Read(System.Text.Encoding.UTF8.GetString(DocumentWriter.Write(standard with { Unit = LengthUnit.Inch })));
        Assert.Equal(68, inches.Climates[0].Seasons[0].Temperature.Value);
    }

    [Theory]
    [InlineData("""  "settings": { "wood.moisture": "eight" } """, "$.settings['wood.moisture']", "cannot be read at character 1", "a percentage in digits, such as 8 % or 7.5")]
    [InlineData("""  "settings": { "wood.moisture": "80 %" } """, "$.settings['wood.moisture']", "80 % is too much", "write at most 30 %")]
    [InlineData("""  "settings": { "wood.driest": "dry" } """, "$.settings['wood.driest']", "cannot be read", ", or climate")]
    [InlineData("""  "settings": { "wood.climate": "most-area" } """, "$.settings['wood.climate']", "no climate in service \"most-area\" in this standard", "most-areas")]
    [InlineData("""  "species": [ { "id": "oak", "name": "Oak", "tangential": 0.004 } ] """, "$.species[0].radial", "one of the two coefficients stands alone", "write both, or neither")]
    [InlineData("""  "species": [ { "id": "oak", "name": "Oak", "tangential": "0.4 %", "radial": 0.002 } ] """, "$.species[0].tangential", "cannot be read at character 4", "a number in digits, such as 0.00369")]
    [InlineData("""  "species": [ { "id": "oak", "name": "Oak", "specificGravity": 63 } ] """, "$.species[0].specificGravity", "63 is outside the limits", "1.5")]
    [InlineData("""  "climates": [ { "id": "hall", "name": "Hall", "driest": 6 } ] """, "$.climates[0].wettest", "nothing says how dry or how wet", "write \"driest\" and \"wettest\", or seasons")]
    [InlineData("""  "climates": [ { "id": "hall", "name": "Hall", "driest": 9, "wettest": 6 } ] """, "$.climates[0].driest", "the driest is wetter than the wettest", "exchange the two")]
    public void What_cannot_be_meant_is_refused_with_its_field_and_its_fix(string fields, string path, string problem, string fix)
    {
        var refused = Assert.IsType<DocumentResult<HouseStandard>.Refused>(DocumentReader.ReadStandard(Start + fields + "}"));
        var error = Assert.Single(refused.Errors);
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.Contains(fix, error.Fix, StringComparison.Ordinal);
    }

    private static HouseStandard Read(string text) =>
        Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(text)).Document;
}
