using System.Text.Json;
using System.Xml.Linq;

namespace Stilewright.Cli.Tests;

/// <summary>The pair 7·1 of the small course on cup hinges: 24 1/2 × 30 1/4 with 1/8 between its leaves.</summary>
public sealed class AdjustTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    private string Course() => folder.Write("hung.json", File.ReadAllText(folder.Small())
        .Replace("\"unit\": \"in\"", "\"unit\": \"in\", \"overrides\": { \"hinge.usual\": \"example-cup-plate\" }", StringComparison.Ordinal));

    private string Blank(string course)
    {
        var path = folder.File("readings.csv");
        Assert.Equal(0, Ran.With("adjust", course, "--blank", path, "--replace").Code);
        return path;
    }

    /// <summary>The sheet with readings written into its last column, by the leaf, place and end of the line.</summary>
    private string Filled(string course, params (string Line, string Reading)[] readings)
    {
        var lines = File.ReadAllLines(Blank(course));
        foreach (var (start, reading) in readings)
        {
            var at = Array.FindIndex(lines, line => line.StartsWith(start, StringComparison.Ordinal));
            Assert.True(at > 0, start);
            lines[at] += reading;
        }

        return folder.Write("filled.csv", string.Join('\n', lines));
    }

    [Fact]
    public void A_blank_sheet_holds_every_gap_once_and_every_corner()
    {
        var lines = File.ReadAllLines(Blank(Course()));

        Assert.Equal("leaf,place,end,beside,should be,reading", lines[0]);
        Assert.Equal(14 + 8, lines.Length - 1);
        Assert.Contains("7·1L,right edge,top,7·1R,1/8 in,", lines);
        Assert.DoesNotContain(lines, line => line.StartsWith("7·1R,left edge", StringComparison.Ordinal));
    }

    [Fact]
    public void A_leaf_that_hangs_low_is_lifted_and_a_gap_that_tapers_is_made_even()
    {
        var course = Course();
        var sheet = Filled(course, ("7·1L,right edge,top", "3/32"), ("7·1L,right edge,bottom", "5/32"), ("7·1L,top edge,left", "13/16"), ("7·1L,bottom edge,left", "11/16"));
        var ran = Ran.With("adjust", course, sheet, "--draw", folder.File("row.svg"));

        Assert.Equal(0, ran.Code);
        Assert.Contains("The screws do it", ran.Output, StringComparison.Ordinal);
        Assert.Contains("lift the leaf", ran.Output, StringComparison.Ordinal);
        Assert.Contains("between 7·1L and 7·1R, at the top", ran.Output, StringComparison.Ordinal);
        foreach (var word in new[] { "before", "after" })
            Assert.Contains("Gaps are drawn", XDocument.Load(folder.File($"row-{word}.svg")).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_screws_cannot_do_has_a_code_of_its_own_and_a_remedy()
    {
        var course = Course();
        var sheet = Filled(course, ("7·1L,right edge,top", "-3/8"), ("7·1L,right edge,bottom", "-3/8"));
        var ran = Ran.With("adjust", course, sheet, "--json");

        Assert.Equal(ExitCode.NotEven, ran.Code);
        var row = JsonDocument.Parse(ran.Output).RootElement.GetProperty("rows")[0];
        Assert.False(row.GetProperty("isEven").GetBoolean());
        Assert.Contains(row.GetProperty("remedies").EnumerateArray(), remedy => remedy.GetProperty("does").GetBoolean() && remedy.GetProperty("kind").GetString() == "move plates");
    }

    [Theory]
    [InlineData("7.1L,right edge,top,7·1R,,wide", "line 2, reading", "\"wide\"")]
    [InlineData("7.3L,right edge,top,7·1R,,1/8", "line 2, leaf", "Nearest: 7·1L")]
    [InlineData("7.1L,right edge,side,7·1R,,1/8", "line 2, place", "right edge, top")]
    [InlineData("7.1L,corner,free,frame,,1/8", "line 2, end", "free top")]
    [InlineData("7.1L,right edge,top,7·1R,,", "reading: no line has a reading", "last column")]
    public void A_bad_line_is_told_with_its_place_and_fix(string line, string place, string fix)
    {
        var ran = Ran.With("adjust", Course(), folder.Write("bad.csv", $"leaf,place,end,beside,should be,reading\n{line}\n"));

        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains(place, ran.Error, StringComparison.Ordinal);
        Assert.Contains(fix, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_free_edge_and_doors_without_hinges_are_told()
    {
        var course = Course();
        var half = Ran.With("adjust", course, Filled(course, ("7·1L,corner,free top", "1/16")));
        Assert.Equal(ExitCode.FileFailed, half.Code);
        Assert.Contains("read both", half.Error, StringComparison.Ordinal);

        var none = Ran.With("adjust", folder.Small(), "--blank", folder.File("none.csv"));
        Assert.Equal(ExitCode.WrongUse, none.Code);
        Assert.Contains("hinge.usual", none.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sample_goes_into_a_folder_that_is_not_there()
    {
        Assert.Equal(0, Ran.With("sample", folder.File("class")).Code);
        Assert.True(File.Exists(Path.Combine(folder.File("class"), "evening-course.json")));
    }
}
