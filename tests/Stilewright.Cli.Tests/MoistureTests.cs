using System.Text.Json;

namespace Stilewright.Cli.Tests;

public sealed class MoistureTests
{
    // FPL-GTR-190 (2010), Table 4-2: 70 °F and 45 % is 8.5 %, 70 °F and 65 % is 12.0 %.
    [Theory]
    [InlineData("70F", "45", "8.5 % moisture")]
    [InlineData("70", "65%", "12.0 % moisture")]
    [InlineData("21.1C", "45", "8.5 % moisture")]
    public void Air_tells_the_moisture_that_wood_comes_to(string temperature, string humidity, string told)
    {
        var ran = Ran.With("moisture", "--temperature", temperature, "--humidity", humidity);
        Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Error));
        Assert.Contains(told, ran.Output, StringComparison.Ordinal);
        Assert.Contains("Equation 4-5", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Moisture_tells_the_air_that_keeps_it_and_is_its_inverse()
    {
        var ran = Ran.With("moisture", "--temperature", "70F", "--moisture", "12", "--json");
        using var json = JsonDocument.Parse(ran.Output);
        // FPL-GTR-190, Table 4-2: 12.0 % stands at 65 %.
        Assert.Equal(65, json.RootElement.GetProperty("humidityPercent").GetDouble(), 0.5);
        Assert.Contains("FPL-GTR-190", json.RootElement.GetProperty("source").GetString(), StringComparison.Ordinal);
    }

    // FPL-GTR-190 (2010), p. 13-16: white fir, 9.15 in wide, flatsawn, from 8 to 11 %: 9.15 × 0.00245 × 3 = 0.067 in... as the handbook's example works it.
    [Fact]
    public void A_width_moves_as_in_the_handbook_s_example()
    {
        var ran = Ran.With("moisture", "--wood", "white fir", "--width", "9.15", "--from", "8", "--to", "11", "--json");
        Assert.Equal(ExitCode.Good, ran.Code);
        using var json = JsonDocument.Parse(ran.Output);
        Assert.Equal(9.15 * 0.00245 * 3, json.RootElement.GetProperty("changeInches").GetDouble(), 1e-4);
    }

    [Theory]
    [InlineData("--temperature 70F", "--humidity and --moisture")]
    [InlineData("--temperature 70F --humidity 120", "0 to 100")]
    [InlineData("--temperature warm --humidity 45", "--temperature")]
    [InlineData("--temperature 70F --moisture 60", "100 % humidity")]
    [InlineData("--wood oak --width 12", "go together")]
    [InlineData("--wood ironwod --width 12 --from 8 --to 12", "is not known")]
    [InlineData("--wood oak --width 12 --from 8 --to 12 --rings round", "--rings takes")]
    [InlineData("--wood oak --width twelve --from 8 --to 12", "--width")]
    [InlineData("--temperature 70F --humidity 45 --wood oak", "one at a time")]
    [InlineData("", "Give --temperature")]
    public void What_cannot_be_reckoned_is_told_with_the_fix(string options, string told)
    {
        var ran = Ran.With(["moisture", .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(told, ran.Error, StringComparison.Ordinal);
    }
}
