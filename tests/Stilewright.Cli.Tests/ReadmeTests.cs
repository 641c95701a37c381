using System.Runtime.CompilerServices;

namespace Stilewright.Cli.Tests;

/// <summary>The answers that the README shows are what the program says.</summary>
public sealed class ReadmeTests
{
    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../.."));

    [Theory]
    [InlineData("tongues-forgotten", "finished", "hint")]
    [InlineData("tongues-forgotten", "finished", "all")]
    [InlineData("trim-too-much", "clamps", "all")]
    public void Answers_to_lists(string list, string stage, string tell)
    {
        var ran = Ran.With("mark", Path.Combine(Root(), "samples/evening-course.json"), Path.Combine(Root(), $"samples/lists/{list}.csv"), "--leaf", "1.2L", "--stage", stage, "--tell", tell);
        Assert.Equal((ExitCode.ListWrong, ""), (ran.Code, ran.Error));
        var readme = File.ReadAllLines(Path.Combine(Root(), "README.md")).Select(line => line.Trim()).ToHashSet();
        string[] shown = ["as worked:", "right:", "istake", "figures are right", .. tell == "hint" ? new[] { "what part of this piece" } : []];
        var told = ran.Output.Split('\n').Select(line => line.Trim()).Where(line => shown.Any(part => line.Contains(part, StringComparison.Ordinal))).ToList();
        Assert.InRange(told.Count, 3, 20);
        Assert.All(told, line => Assert.Contains(line, readme));
    }
}
