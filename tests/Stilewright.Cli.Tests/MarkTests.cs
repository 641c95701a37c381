using System.Text.Json;
using System.Text.RegularExpressions;
using Stilewright.Cli.Files;
using Stilewright.Measure;

namespace Stilewright.Cli.Tests;

/// <summary>The leaf 7·1L of the small course: 12 3/16 × 30 1/4, stiles 2 1/4, so its rails are 12 3/16 − 4 1/2 + 2 × 7/16 = 8 9/16.</summary>
public sealed class MarkTests : IDisposable
{
    private const string Right = "part,count,width,length\nstiles,2,2 1/4,30 1/4\nrails,2,2 1/4,8 9/16\n";
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    private string Own(string leaf = "7.1L", string stage = "finished")
    {
        var path = folder.File("own.csv");
        Assert.Equal(0, Ran.With("cutlist", folder.Small(), "--leaf", leaf, "--format", "csv", "--out", path, "--replace").Code);
        Assert.Equal(0, Ran.With("mark", folder.Small(), path, "--leaf", leaf, "--stage", stage).Code);
        return path;
    }

    [Theory]
    [InlineData("finished")]
    [InlineData("clamps")]
    [InlineData("rough")]
    public void The_programs_own_list_is_all_right(string stage) => Own(stage: stage);

    [Fact]
    public void A_wrong_length_is_told_with_a_code_of_its_own_and_gives_no_size_away()
    {
        var course = folder.Small();
        var list = folder.Write("list.csv", Right.Replace("8 9/16", "7 11/16", StringComparison.Ordinal));
        foreach (var ran in new[] { Ran.With("mark", course, list, "--leaf", "7.1L"), Ran.With("mark", course, list, "--leaf", "7.1L", "--json") })
        {
            Assert.Equal(ExitCode.ListWrong, ran.Code);
            Assert.Empty(ran.Error);
            Assert.Contains("not right", ran.Output, StringComparison.Ordinal);
            // The right length, the groove that was forgotten, and what is missing are not told.
            Assert.DoesNotContain("9/16", ran.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("8.5", ran.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("137/16", ran.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("7/8", ran.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("groove", ran.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_list_that_was_right_by_an_earlier_file_is_told_so()
    {
        var earlier = folder.Write("earlier.json", File.ReadAllText(folder.Small()));
        var list = Own();
        var now = folder.Small(width: "24 11/16");
        var ran = Ran.With("mark", now, list, "--leaf", "7.1L", "--tell", "rule", "--earlier", earlier);
        Assert.Equal(ExitCode.ListWrong, ran.Code);
        Assert.Contains("an earlier measurement", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("an earlier measurement", Ran.With("mark", now, list, "--leaf", "7.1L", "--tell", "rule").Output, StringComparison.Ordinal);

        var other = folder.Write("other.json", File.ReadAllText(now).Replace("\"id\": \"small\"", "\"id\": \"other\"", StringComparison.Ordinal));
        var refused = Ran.With("mark", now, list, "--leaf", "7.1L", "--earlier", other);
        Assert.Equal(ExitCode.FileFailed, refused.Code);
        Assert.Contains("name an earlier file of the same course", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_equals_what_was_handed_out_is_told_so()
    {
        var packet = folder.File("packet.pdf");
        Assert.Equal(0, Ran.With("packet", folder.Small(), "--out", packet).Code);
        var told = HandedOutFile.Beside(packet);
        var list = Own();
        var now = folder.Small(width: "24 11/16");
        var ran = Ran.With("mark", now, list, "--leaf", "7.1L", "--tell", "rule", "--earlier", told);
        Assert.Equal(ExitCode.ListWrong, ran.Code);
        Assert.Matches(@"This is what was handed out on \d{4}-\d\d-\d\d", ran.Output);
        Assert.DoesNotContain("Mistake 2", ran.Output, StringComparison.Ordinal);

        var other = folder.Write("other.json", File.ReadAllText(told).Replace("\"course\": \"small\"", "\"course\": \"other\"", StringComparison.Ordinal));
        var refused = Ran.With("mark", now, list, "--leaf", "7.1L", "--earlier", other);
        Assert.Equal(ExitCode.FileFailed, refused.Code);
        Assert.Contains("was handed out of the course other", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thickness_is_looked_at_where_the_list_states_one()
    {
        var list = folder.Write("thick.csv", "part,count,width,length,thickness\nstiles,2,2 1/4,30 1/4,3/4\nrails,2,2 1/4,8 9/16,5/8\n");
        var ran = Ran.With("mark", folder.Small(), list, "--leaf", "7.1L");
        Assert.Equal(ExitCode.ListWrong, ran.Code);
        Assert.Contains("thickness not right", ran.Output, StringComparison.Ordinal);
    }

    // Every length of every leaf of the sample is 1 1/16 too long: none of the right ones is given away.
    [Fact]
    public void No_right_size_of_the_sample_is_given_away()
    {
        var course = folder.Sample();
        var format = LengthFormat.InchesTo32;
        var (leaves, sizes) = (0, 0);
        foreach (var leaf in CourseFile.Open(course).Fronts.SelectMany(front => front.Leaves.Take(1)).Where(leaf => !leaf.IsWithheld))
        {
            var list = folder.Write("list.csv", "part,count,width,length\n" + string.Concat(leaf.Parts.Select(part =>
                $"{part.Name.Replace(',', ' ')},1,{Plain(part.Finished.Width.Length)},{Plain(part.Finished.Length.Length + Length.FromInches(new(17, 16)))}\n")));
            string[] right = [.. leaf.Parts.Select(part => format.Print(part.Finished.Length.Length)).Distinct().Where(figure => !Holds(File.ReadAllText(list), figure))];
            foreach (var tell in new[] { "right-or-wrong", "rule" })
            {
                foreach (var json in new[] { false, true })
                {
                    var ran = Ran.With(["mark", course, list, "--leaf", leaf.Path, "--unit", "in", "--in", "--tell", tell, .. json ? ["--json"] : Array.Empty<string>()]);
                    Assert.Equal((ExitCode.ListWrong, ""), (ran.Code, ran.Error));
                    Assert.All(right, figure => Assert.False(Holds(ran.Output, figure), $"{leaf.Label} at {tell}: {figure} in\n{ran.Output}"));
                }
            }

            (leaves, sizes) = (leaves + 1, sizes + right.Length);
        }

        Assert.True(leaves > 10 && sizes > 2 * leaves, $"only {sizes} sizes of {leaves} leaves");

        static string Plain(Length length) => LengthFormat.InchesTo32.Print(length).TrimStart('≈');
        static bool Holds(string text, string figure) => Regex.IsMatch(text, $@"(?<![\d/] ?){Regex.Escape(figure)}(?![\d/]| \d)");
    }

    [Theory]
    [InlineData("hint")]
    [InlineData("rule")]
    public void Hint_and_rule_show_no_right_size(string tell)
    {
        var list = folder.Write("list.csv", Right.Replace("8 9/16", "7 11/16", StringComparison.Ordinal));
        foreach (var json in new[] { false, true })
        {
            var ran = Ran.With(["mark", folder.Small(), list, "--leaf", "7.1L", "--tell", tell, .. json ? ["--json"] : Array.Empty<string>()]);
            Assert.Equal(ExitCode.ListWrong, ran.Code);
            Assert.DoesNotContain("8 9/16", ran.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void All_shows_the_right_size_and_what_is_missing()
    {
        var list = folder.Write("list.csv", Right.Replace("8 9/16", "7 11/16", StringComparison.Ordinal));
        var ran = Ran.With("mark", folder.Small(), list, "--leaf", "7.1L", "--tell", "all");
        Assert.Contains("2 1/4 × 8 9/16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Missing: sheet panel", ran.Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Ran.With("mark", folder.Small(), list, "--leaf", "7.1L", "--tell", "all", "--json").Output);
        var figure = json.RootElement.GetProperty("lines")[1].GetProperty("figures").EnumerateArray().Single(figure => figure.GetProperty("measure").GetString() == "length" && figure.GetProperty("of").GetString() == "7·1L·TR");
        Assert.Equal(("7 11/16", "8 9/16"), (figure.GetProperty("told").GetString(), figure.GetProperty("right").GetString()));
    }

    // 9 − 8 9/16 = 7/16 off, and at 8 9/16 nothing is coped anew on the shaper as shipped.
    [Fact]
    public void Wood_that_is_cut_is_turned_to_account_within_the_machines_limits()
    {
        var list = folder.Write("list.csv", Right.Replace("8 9/16", "9", StringComparison.Ordinal));
        string[] ask = ["mark", folder.Small(), list, "--leaf", "7.1L", "--tell", "all", "--already-cut"];
        var ran = Ran.With([.. ask, "--worked"]);
        Assert.Contains("Line 2, rails 2 1/4 × 9, worked: what the wood can still become", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Make it again: Cut it again at 2 1/4 × 8 9/16 in", ran.Output, StringComparison.Ordinal);
        Assert.Contains("The sizes would also allow, and a machine does not:", ran.Output, StringComparison.Ordinal);
        Assert.Contains("It would be 8 9/16 in long when it is coped; the shaper takes nothing under 12 in", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Rule rail.short-for-coping; source: two shaper owner's manuals", ran.Output, StringComparison.Ordinal);
        const string accepted = """[ { "rule": "rail.short-for-coping", "place": "hall-lower", "reason": "In the sled." } ]""";
        folder.Small(accepted: accepted);
        Assert.Contains("Length: 9 − 8 9/16 = 7/16 in off from one end. Then cope the new end.", Ran.With([.. ask, "--worked"]).Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Ran.With([.. ask, "--json"]).Output);
        Assert.Equal("remake", json.RootElement.GetProperty("reuse")[0].GetProperty("options").EnumerateArray().Last().GetProperty("as").GetString());
    }

    [Fact]
    public void Every_bad_cell_is_told()
    {
        var list = folder.Write("list.csv", "part;count;width;length\nrail;two;2 1/4;8 9/\n;2;2;8\n");
        var ran = Ran.With("mark", folder.Small(), list, "--leaf", "7.1L");
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains("list.csv cannot be used: 3 errors.", ran.Error, StringComparison.Ordinal);
        Assert.Contains("line 2, count: \"two\" is no count of pieces", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("part,width,length,leaf\nrail,2,8,7.1X", ExitCode.FileFailed, "there is no leaf 7.1X; Nearest: 7·1", "--bench", "7")]
    [InlineData(Right, ExitCode.WrongUse, "There is no leaf 9.9L here", "--leaf", "9.9L")]
    [InlineData(Right, ExitCode.WrongUse, "--stage takes finished, clamps or rough", "--stage", "sanded")]
    [InlineData(Right, ExitCode.WrongUse, "--tell takes", "--tell", "everything")]
    [InlineData(Right, ExitCode.WrongUse, "--unit takes in or mm", "--unit", "cm")]
    [InlineData("part,rough width,rough length\nrail,2,8", ExitCode.FileFailed, "the list has no finished sizes", "--stage", "finished")]
    public void Wrong_use_is_told_with_the_way_out(string text, int code, string words, string option, string value)
    {
        var ran = Ran.With("mark", folder.Small(), folder.Write("list.csv", text), option, value);
        Assert.Equal((code, true), (ran.Code, ran.Error.Contains(words, StringComparison.Ordinal)));
    }

    [Fact]
    public void Reuse_is_told_only_to_who_may_see_the_sizes()
    {
        var list = folder.Write("list.csv", Right);
        Assert.Contains("give --tell all with it", Ran.With("mark", folder.Small(), list, "--already-cut").Error, StringComparison.Ordinal);
        Assert.Contains("--worked goes with --already-cut", Ran.With("mark", folder.Small(), list, "--worked").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_in_millimetres_is_read_as_such()
    {
        // 30 1/4 in is 768.35 mm; a step is 1/32 in, so 768.4 is right.
        var list = folder.Write("list.csv", "stile;2;57,2;768,4\n");
        Assert.DoesNotContain("not right", Ran.With("mark", folder.Small(), list, "--leaf", "7.1L", "--unit", "mm").Output, StringComparison.Ordinal);
        Assert.Contains("over 120 in", Ran.With("mark", folder.Small(), list, "--leaf", "7.1L").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_schema_and_help_know_it()
    {
        var list = folder.Write("list.json", """{ "format": "stilewright/makers-list", "version": 1, "unit": "in", "lines": [ { "part": "stile", "count": 2, "width": "2 1/4", "length": "30 1/4" } ] }""");
        Assert.Contains("sound cut list of a maker: 1 line.", Ran.With("check", list).Output, StringComparison.Ordinal);
        Assert.Contains("stilewright/makers-list", Ran.With("schema", "makers-list").Output, StringComparison.Ordinal);
        Assert.Contains("5   mark: the list is not right", Ran.With("mark", "--help").Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.ListWrong, Ran.With("mark", folder.Small(), list).Code);
    }

    // Rails of 7 11/16 lack both tongues of 7/16, and so each joint stands open by one.
    [Fact]
    public void What_would_happen_is_drawn_where_all_is_told()
    {
        var course = folder.Small();
        var list = folder.Write("list.csv", Right.Replace("8 9/16", "7 11/16", StringComparison.Ordinal));
        var (svg, pdf) = (folder.File("if-cut.svg"), folder.File("answer.pdf"));
        foreach (var tell in new[] { "right-or-wrong", "hint", "rule" })
        {
            var refused = Ran.With("mark", course, list, "--leaf", "7.1L", "--tell", tell, "--draw", svg);
            Assert.Equal(ExitCode.WrongUse, refused.Code);
            Assert.Contains("--draw shows right sizes: give --tell all with it.", refused.Error, StringComparison.Ordinal);
            Assert.False(File.Exists(svg));
        }

        var ran = Ran.With("mark", course, list, "--leaf", "7.1L", "--tell", "all", "--draw", svg, "--pdf", pdf, "--paper", "a4");
        Assert.Equal(ExitCode.ListWrong, ran.Code);
        Assert.Contains("joints open", ran.Error, StringComparison.Ordinal);
        Assert.Contains(": the answer on ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("What would happen if the list were cut: joints open", File.ReadAllText(svg), StringComparison.Ordinal);
        Assert.Equal("%PDF", System.Text.Encoding.ASCII.GetString(File.ReadAllBytes(pdf)[..4]));
        Assert.Equal(ExitCode.FileFailed, Ran.With("mark", course, list, "--leaf", "7.1L", "--tell", "all", "--pdf", pdf).Code);
        Assert.Equal(ExitCode.ListWrong, Ran.With("mark", course, list, "--leaf", "7.1L", "--tell", "hint", "--pdf", pdf, "--replace").Code);
        Assert.Contains("--paper is that of the PDF", Ran.With("mark", course, list, "--paper", "a4").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_right_list_has_nothing_to_draw()
    {
        var svg = folder.File("if-cut.svg");
        var ran = Ran.With("mark", folder.Small(), folder.Write("list.csv", Right), "--leaf", "7.1L", "--tell", "all", "--draw", svg);
        Assert.Contains("is not written: nothing would happen", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(svg));
    }
}
