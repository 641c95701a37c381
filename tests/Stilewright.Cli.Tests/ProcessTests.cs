namespace Stilewright.Cli.Tests;

public sealed class ProcessTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Piped_output_is_plain_and_not_wrapped()
    {
        var ran = Ran.AsProcess("sheet", folder.Small());
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.DoesNotContain('\u001b', ran.Output);
        Assert.DoesNotContain(ran.Output, character => character is >= '\u2500' and <= '\u257f');
        Assert.Contains(ran.Output.Split('\n'), line => line.Length > 100);
        Assert.Contains("12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Errors_go_to_standard_error()
    {
        var ran = Ran.AsProcess("check", folder.File("missing.json"));
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Single(ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void A_hazard_shows_in_the_exit_code() =>
        Assert.Equal(ExitCode.HazardsOpen, Ran.AsProcess("check", folder.Small()).Code);
}
