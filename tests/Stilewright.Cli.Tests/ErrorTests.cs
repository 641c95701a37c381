namespace Stilewright.Cli.Tests;

public sealed class ErrorTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Exit_code_tells_the_worst_finding()
    {
        // Rails of 8 9/16 are short for coping; the standard's shaper takes none under 12.
        Assert.Equal(ExitCode.HazardsOpen, Ran.With("check", folder.Small()).Code);
        const string accepted = """[ { "rule": "rail.short-for-coping", "place": "hall-lower", "reason": "In the sled." } ]""";
        var ran = Ran.With("check", folder.Small(accepted: accepted));
        Assert.Contains("Accepted by the instructor: In the sled.", ran.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Equal(ExitCode.Good, Ran.With("check", folder.Small(width: "36")).Code);
        Assert.Equal(ExitCode.CannotBuild, Ran.With("check", folder.Small(width: "8")).Code);
    }

    [Fact]
    public void Leaves_that_cannot_be_built_are_named_where_parts_are_left_out()
    {
        var course = folder.Small(width: "8");
        Assert.Contains("Left out because they cannot be built: 7·1L, 7·1R", Ran.With("cutlist", course).Output, StringComparison.Ordinal);
        var csv = Ran.With("cutlist", course, "--format", "csv");
        Assert.Contains("7·1L, 7·1R", csv.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("7·1L", csv.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("missing.json", null, "is not there")]
    [InlineData("empty.json", "", "is empty")]
    [InlineData("binary.json", "PK\0\0", "holds no text")]
    [InlineData("other.json", "hello", "$ (line 1")]
    [InlineData("list.json", "[]", "cannot be used")]
    public void Files_that_cannot_be_used_are_refused_in_a_line_or_two(string name, string? content, string problem)
    {
        if (content is not null)
            folder.Write(name, content);
        var ran = Ran.With("sheet", folder.File(name));
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains(problem, ran.Error, StringComparison.Ordinal);
        Assert.InRange(ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length, 1, 3);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public void A_folder_is_no_file() =>
        Assert.Contains("is a folder", Ran.With("check", Path.GetDirectoryName(folder.File("x"))!).Error, StringComparison.Ordinal);

    [Theory]
    [InlineData("../inch.json")]
    [InlineData("/etc/passwd")]
    [InlineData("..")]
    public void A_standard_outside_the_folder_is_refused(string name)
    {
        var ran = Ran.With("check", folder.Small(name));
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains("$.standard", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_standard_that_is_not_there_is_named() =>
        Assert.Contains("shop.json is not beside this file", Ran.With("check", folder.Small("shop.json")).Error, StringComparison.Ordinal);

    [Fact]
    public void Every_error_of_a_file_is_told()
    {
        var ran = Ran.With("check", folder.Small(width: "wide", height: "high"));
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains("readings.widthTop", ran.Error, StringComparison.Ordinal);
        Assert.Contains("readings.heightLeft", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("frobnicate")]
    [InlineData("sizes")]
    [InlineData("sizes", "FILE", "--finest", "10")]
    [InlineData("sizes", "FILE", "--in", "--mm")]
    [InlineData("sizes", "FILE", "--bench", "q")]
    [InlineData("sizes", "FILE", "--bench", "99")]
    [InlineData("sizes", "FILE", "--unknown")]
    [InlineData("sheet", "FILE", "--leaf", "9.9")]
    [InlineData("cutlist", "FILE", "--by", "week")]
    [InlineData("cutlist", "FILE", "--format", "xml")]
    [InlineData("schema", "door")]
    public void Wrong_use_is_told_with_its_own_exit_code(params string[] arguments)
    {
        var course = folder.Small();
        var ran = Ran.With([.. arguments.Select(argument => argument == "FILE" ? course : argument)]);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.NotEmpty(ran.Error);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public void Help_tells_verbs_examples_and_exit_codes()
    {
        var help = Ran.With("--help").Output;
        Assert.Contains("stilewright sheet evening-course.json --bench 3", help, StringComparison.Ordinal);
        Assert.Contains("64  wrong use of the command line", help, StringComparison.Ordinal);
        Assert.Contains("--figure", Ran.With("work", "--help").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_of_a_file_do_not_reach_the_terminal()
    {
        using var writer = new StringWriter();
        Layout.PageWriter.WritePlain(new Layout.Page().Line("a\u001b[2Jb"), writer);
        Assert.Equal("a [2Jb\n", writer.ToString());
    }
}
