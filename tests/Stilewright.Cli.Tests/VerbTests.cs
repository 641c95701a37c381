using System.Text.Json;
using CsvHelper;
using Stilewright.Documents;
using Stilewright.Findings;

namespace Stilewright.Cli.Tests;

public sealed class VerbTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Sample_is_written_once_and_replaced_only_when_asked()
    {
        var course = folder.Sample();
        Assert.IsType<DocumentResult<Projects.Course>.Read>(DocumentReader.ReadCourse(File.ReadAllBytes(course)));
        var inside = Path.GetDirectoryName(course)!;
        var again = Ran.With("sample", inside);
        Assert.Equal(ExitCode.FileFailed, again.Code);
        Assert.Contains("--replace", again.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("sample", inside, "--replace").Code);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("sizes")]
    [InlineData("sheet")]
    [InlineData("cutlist")]
    public void Every_bench_of_the_sample_is_told(string verb)
    {
        var ran = Ran.With(verb, folder.Sample());
        Assert.InRange(ran.Code, ExitCode.Good, ExitCode.CannotBuild);
        Assert.Empty(ran.Error);
        Assert.Contains("ench 1, ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("ench 8, ", ran.Output, StringComparison.Ordinal);
    }

    // Arithmetic: opening 23 3/4 × 29 1/2, 3/8 all round, 1/8 between; rails 12 3/16 − 2 × 2 1/4 + 2 × 7/16.
    [Fact]
    public void Sheet_tells_sizes_working_and_sums()
    {
        var ran = Ran.With("sheet", folder.Small());
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("front    24 1/2 × 30 1/4", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Leaf 7·1L, left door: 12 3/16 × 30 1/4; hinged left", ran.Output, StringComparison.Ordinal);
        Assert.Contains("2 1/4 × 8 9/16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("2 1/4 + 7 11/16 + 2 1/4 = 12 3/16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("29 CFR 1910.213", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("≈", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rounding_mark_is_explained_where_it_occurs()
    {
        var ran = Ran.With("sizes", folder.Small(), "--finest", "8");
        Assert.Contains("≈12 1/4 × 30 1/4", ran.Output, StringComparison.Ordinal);
        Assert.Contains(Stilewright.Wording.Remarks.Rounded, ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sizes_can_be_told_in_millimetres() =>
        Assert.Contains("front    622.3 × ≈768.4", Ran.With("sizes", folder.Small(), "--mm").Output, StringComparison.Ordinal);

    [Fact]
    public void One_leaf_is_told_without_the_summary()
    {
        var ran = Ran.With("sheet", folder.Small(), "--leaf", "7.1r");
        Assert.Contains("Leaf 7·1R", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Leaf 7·1L", ran.Output, StringComparison.Ordinal);
        Assert.StartsWith("Bench 7", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("7·1L·TR")]
    [InlineData("7.1l.tr")]
    [InlineData("hall-lower/leaf.left/rail.top")]
    public void Work_finds_a_part_by_label_or_path_and_says_where_figures_were_entered(string place)
    {
        var ran = Ran.With("work", folder.Small(), place, "--figure", "length");
        Assert.Contains("12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 9/16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("house standard, as shipped", ran.Output, StringComparison.Ordinal);
        Assert.Contains("hall-lower/readings/widthTop", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_does_not_list_the_corner_that_lengths_are_counted_from_as_entered()
    {
        var ran = Ran.With("work", folder.Sample(), "5.1");
        var sources = ran.Output[ran.Output.IndexOf("Where the figures come from", StringComparison.Ordinal)..];
        Assert.Contains("least of (bottom left corner,", ran.Output, StringComparison.Ordinal);
        Assert.Contains("rising diagonal", sources, StringComparison.Ordinal);
        Assert.DoesNotContain("bottom left corner", sources, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_suggests_the_nearest_place()
    {
        var ran = Ran.With("work", folder.Small(), "7.1L.TQ");
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains("Nearest: 7·1L·TR", ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public void Work_lists_the_figures_a_place_has()
    {
        var ran = Ran.With("work", folder.Small(), "7.1L", "--figure", "weight");
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains("It has: width, height.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Cut_list_gathers_identical_parts_over_a_bench_and_not_over_leaves()
    {
        var course = folder.Small();
        static int Stiles(string text) => text.Split('\n').Count(line => line.Contains("2 1/4 × 30 1/4", StringComparison.Ordinal));
        Assert.Equal(1, Stiles(Ran.With("cutlist", course).Output));
        Assert.Equal(2, Stiles(Ran.With("cutlist", course, "--by", "leaf").Output));
    }

    // RFC 4180: CRLF after every record, quotes doubled inside quoted fields, one header.
    [Fact]
    public void Csv_reads_back_with_its_columns()
    {
        var text = Ran.With("cutlist", folder.Small(), "--format", "csv").Output;
        Assert.EndsWith("\r\n", text, StringComparison.Ordinal);
        Assert.Equal(text.Count(character => character == '\n'), text.Split("\r\n").Length - 1);
        using var csv = CsvReader.FromText(text, CsvReaderOptions.Default);
        var count = 0;
        var rails = 0;
        while (csv.Read())
        {
            Assert.Equal("7", csv.GetString("bench"));
            Assert.Equal("Hall, lower", csv.GetString("project"));
            Assert.Equal("in", csv.GetString("unit"));
            count += int.Parse(csv.GetString("count"), System.Globalization.CultureInfo.InvariantCulture);
            if (csv.GetString("finished length") != "8 9/16")
                continue;
            rails++;
            Assert.Equal("8.5625", csv.GetString("finished length decimal inches"));
            Assert.Equal("2 1/4", csv.GetString("finished width"));
            Assert.Equal("horizontal", csv.GetString("grain"));
        }

        Assert.Equal(1, rails);
        Assert.Equal(10, count);
    }

    [Fact]
    public void Json_holds_exact_fractions()
    {
        using var json = JsonDocument.Parse(Ran.With("cutlist", folder.Small(), "--format", "json").Output);
        Assert.Equal("Small, \"quoted\"", json.RootElement.GetProperty("course").GetString());
        var lines = json.RootElement.GetProperty("lists")[0].GetProperty("lines").EnumerateArray().ToList();
        Assert.Equal(10, lines.Sum(line => line.GetProperty("count").GetInt32()));
        Assert.Contains(lines, line => line.GetProperty("finished").GetProperty("length").GetString() == "137/16");
    }

    [Fact]
    public void Cut_list_goes_to_a_file_that_is_not_replaced_unasked()
    {
        var course = folder.Small();
        var path = folder.File("cuts.csv");
        Assert.Equal(ExitCode.Good, Ran.With("cutlist", course, "--format", "csv", "--out", path).Code);
        Assert.StartsWith("bench,project,", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(ExitCode.FileFailed, Ran.With("cutlist", course, "--out", path).Code);
        Assert.Equal(ExitCode.Good, Ran.With("cutlist", course, "--out", path, "--replace").Code);
        Assert.Contains("into the clamps", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData]
    [InlineData("--mm")]
    public void Standard_is_written_in_full_and_reads_back(params string[] options)
    {
        var path = folder.File("shop.json");
        Assert.Equal(ExitCode.Good, Ran.With([.. new[] { "standard", "--out", path }, .. options]).Code);
        Assert.Equal(ExitCode.Good, Ran.With("check", path).Code);
        var read = Assert.IsType<DocumentResult<Shop.HouseStandard>.Read>(DocumentReader.ReadStandard(File.ReadAllBytes(path)));
        Assert.Equal(Shop.Settings.All.Count, read.Document.Settings.Values.Count);
    }

    [Fact]
    public void A_course_takes_the_standard_beside_it()
    {
        Assert.Equal(ExitCode.Good, Ran.With("standard", "--out", folder.File("shop.json")).Code);
        Assert.Contains("12 3/16 × 30 1/4", Ran.With("sizes", folder.Small("shop.json")).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("course")]
    [InlineData("standard")]
    public void Schema_is_json(string kind)
    {
        using var schema = JsonDocument.Parse(Ran.With("schema", kind).Output);
        Assert.Equal("object", schema.RootElement.GetProperty("type").GetString());
    }

    [Fact]
    public void Rules_lists_every_rule()
    {
        var text = Ran.With("rules").Output;
        Assert.All(Rules.All, rule => Assert.Contains(rule.Code, text, StringComparison.Ordinal));
    }
}
