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
}
