namespace Stilewright.Cli.Tests;

public sealed class WoodTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Wood_tells_of_panels_that_fit_with_their_working_and_their_weight()
    {
        var ran = Ran.With("wood", folder.Sample(), "--bench", "1");
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Contains("Made at 8 %; in service 6 % to 10 %.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Widths that work at making: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("play in each groove at the wettest = (", ran.Output, StringComparison.Ordinal);
        Assert.Contains(" lb (", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_goes_through_the_whole_course()
    {
        var ran = Ran.With("wood", folder.Sample());
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("Together: ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Glue_ups_come_from_a_range_or_from_real_boards()
    {
        var sample = folder.Sample();
        var range = Ran.With("wood", sample, "--leaf", "1.2L", "--staves", "2..3");
        Assert.Contains("Glue-up of 1·2L·P", range.Output, StringComparison.Ordinal);
        Assert.Contains("push blocks", range.Output, StringComparison.Ordinal);
        Assert.Contains("29 CFR 1910.213", range.Output, StringComparison.Ordinal);
        // 4 1/2 + 4 1/4 + 3 1/2 less 1/8 each is 11 7/8, for 11 11/16: geometry.
        var boards = Ran.With("wood", sample, "--leaf", "1.2L", "--boards", "4 1/2, 5, 4 1/4, 3 1/2");
        Assert.Contains("Together 11 7/8 × 24, 3/16 over", boards.Output, StringComparison.Ordinal);
        Assert.Contains("too narrow together", Ran.With("wood", sample, "--leaf", "1.2L", "--boards", "4, 5").Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Glue-up", Ran.With("wood", sample, "--leaf", "1.2L").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--staves", "2")]
    [InlineData("--staves", "two..5")]
    [InlineData("--boards", "4, wide")]
    public void A_range_that_cannot_be_read_is_refused(string option, string text)
    {
        var ran = Ran.With("wood", folder.Sample(), option, text);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(option, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_exact_lengths_and_sources()
    {
        var ran = Ran.With("wood", folder.Sample(), "--bench", "1", "--glue-ups", "--json");
        using var json = System.Text.Json.JsonDocument.Parse(ran.Output);
        var leaf = json.RootElement.GetProperty("leaves").EnumerateArray().Single(each => each.GetProperty("label").GetString() == "1·2L");
        var panel = leaf.GetProperty("panels")[0];
        Assert.Equal("183/16", panel.GetProperty("width").GetString());
        Assert.Equal(12, panel.GetProperty("months").GetArrayLength());
        Assert.Contains("FPL-GTR-190", panel.GetProperty("source").GetString(), StringComparison.Ordinal);
        Assert.Contains("from memory", leaf.GetProperty("moisture").GetProperty("source").GetString(), StringComparison.Ordinal);
        Assert.Equal(3, leaf.GetProperty("glueUps")[0].GetProperty("staves").GetArrayLength());
        Assert.True(leaf.GetProperty("weight").GetProperty("pounds").GetDouble() > 0);
    }

    [Theory]
    [InlineData("panel-fit", "1.2L", "at making")]
    [InlineData("panel-play", "1.2L.P", "engagement")]
    [InlineData("glue-up", "1.2L", "glued up")]
    public void Panels_are_drawn(string view, string place, string told)
    {
        var sample = folder.Sample();
        var ran = Ran.With("draw", sample, place, "--view", view);
        Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Error));
        Assert.Contains(told, ran.Output, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(ExitCode.WrongUse, Ran.With("draw", sample, "1.2L.TR", "--view", view).Code);
    }
}
