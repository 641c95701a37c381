using System.Diagnostics;
using System.Text;
using CsCheck;
using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Testing;
using Stilewright.Wording;

namespace Stilewright.Documents.Tests;

/// <summary>Lists as people and spreadsheets write them; the forms are common practice, no source, unless one is named.</summary>
public class MakersListTests
{
    private static ReadList Read(string text, LengthUnit unit = LengthUnit.Inch, CutStage? stage = null) => MakersListReader.Read(text, unit, stage) switch
    {
        DocumentResult<ReadList>.Read read => read.Document,
        DocumentResult<ReadList>.Refused refused => throw new InvalidOperationException(string.Join('\n', refused.Errors)),
        _ => throw new InvalidOperationException(),
    };

    private static string[] Errors(string text, LengthUnit unit = LengthUnit.Inch, CutStage? stage = null) =>
        [.. Files.Errors(MakersListReader.Read(text, unit, stage)).Select(error => error.ToString())];

    private static string Told(ReadList list) => string.Join('\n', list.List.Lines.Select(line =>
        $"{line.Name}|{line.Count}|{Figure(line.Width)}|{Figure(line.Length)}|{line.Leaf}"));

    private static string Figure(LengthEntry? entry) => entry is { } told ? LengthFormat.InchesTo32.Print(told.Value) : "";

    [Fact]
    public void Of_a_list_with_bad_cells_the_other_lines_are_kept()
    {
        var (readable, errors) = MakersListReader.ReadReadable(Encoding.UTF8.GetBytes("part,count,width,length\nstile,2,2 1/4,30\nrail,two,2 1/4,8\n\"panel,1,8,x\"\nback rail,1,2 1/4,8 9/1o\nmid rail,1,2,8\n"), LengthUnit.Inch);
        Assert.Equal("stile|2|2 1/4|30|\nmid rail|1|2|8|", Told(readable));
        Assert.Equal([3, 4, 5], errors.Select(error => error.Line));
        Assert.Contains("\"two\" is no count of pieces", errors[0].Problem, StringComparison.Ordinal);

        (readable, errors) = MakersListReader.ReadReadable("rail,2,2 1/4,8"u8.ToArray(), LengthUnit.Inch);
        Assert.Equal("rail|2|2 1/4|8|", Told(readable));
        Assert.Empty(errors);

        foreach (var text in (string[])["", "{", "part,width\n", "\0", "one cell"])
        {
            (readable, errors) = MakersListReader.ReadReadable(Encoding.UTF8.GetBytes(text), LengthUnit.Inch);
            Assert.Empty(readable.List.Lines);
            Assert.NotEmpty(errors);
        }
    }

    [Theory]
    [InlineData("part,count,width,length\nrail,2,2 1/4,8 9/16\n")]
    [InlineData("\uFEFFLength;How many;Part;Width\r\n8 9/16;2;rail;2 1/4\r\n")]
    [InlineData("Qty\tPiece\tW\tHeight\n2\trail\t2-1/4\t8 9/16\"\n")]
    [InlineData("rail,2,2 1/4,8 9/16")]
    [InlineData("2;rail;2,25;8,5625")]
    [InlineData("2x, rail, 2 1/4\", 8 9/16\"")]
    [InlineData("rail,2,2 1/4 x 8 9/16")]
    [InlineData("part,qty,size\n\"rail\",\"2\",\"2¼ × 8 9/16\"\"\"")]
    [InlineData("sep=;\r\nname;number;size\r\nrail;2 pcs;2 1/4 by 8 9/16")]
    [InlineData("\n\npart,count,width (in),length in inches\n,,,\nrail,2,2.25,8 9/16\n\n")]
    [InlineData("""{ "format": "stilewright/makers-list", "version": 1, "unit": "in", "stage": "finished", "lines": [ { "part": "rail", "count": 2, "width": "2 1/4", "length": "8 9/16" } ] }""")]
    public void Two_rails_in_many_spellings(string text) => Assert.Equal("rail|2|2 1/4|8 9/16|", Told(Read(text)));

    [Theory]
    [InlineData("part,count,width,length,leaf\nrail,,2,8,7.2L", "rail||2|8|7.2L")]
    [InlineData("part,width\npanel,8", "panel||8||")]
    [InlineData("part,length,width\npanel,-,8", "panel||8||")]
    [InlineData("rail,2,8", "rail||2|8|")]
    [InlineData("rail,2,2,8,7.2L", "rail|2|2|8|7.2L")]
    [InlineData("part,width,length\nstile,57.15 mm,25.4 mm", "stile||2 1/4|1|")]
    [InlineData("part,width mm,length\nstile,57.15,8", "stile||2 1/4|8|")]
    [InlineData("part,size,unit\nstile,57.15 x 25.4,mm", "stile||2 1/4|1|")]
    [InlineData("part,size\nstile,57.15 x 25.4 mm", "stile||2 1/4|1|")]
    [InlineData("part,height,w\ndoor,32,13", "door||13|32|")]
    public void What_a_cell_means(string text, string told) => Assert.Equal(told, Told(Read(text)));

    [Theory]
    [InlineData("part,width,length,thickness\nrail,2,8,3/4", CutStage.Finished, "3/4")]
    [InlineData("part,W,L,T\nrail,2,8,", CutStage.Finished, "")]
    [InlineData("part,width,length,thick (mm)\nrail,2,8,19.05", CutStage.Finished, "3/4")]
    [InlineData("part,width,length,planed thickness,final thickness\nrail,2,8,13/16,3/4", CutStage.Finished, "3/4")]
    [InlineData("part,width,length,planed thickness,final thickness\nrail,2,8,13/16,3/4", CutStage.IntoClamps, "13/16")]
    [InlineData("""{ "format": "stilewright/makers-list", "version": 1, "unit": "in", "lines": [ { "part": "rail", "width": "2", "thickness": "3/4" } ] }""", CutStage.Finished, "3/4")]
    public void A_thickness_beside_the_sizes(string text, CutStage stage, string told)
    {
        var read = Read(text, stage: stage);
        Assert.Equal(told, Figure(Assert.Single(read.List.Lines).Thickness));
        Assert.Empty(read.Unread);
    }

    [Fact]
    public void A_thickness_of_another_stage_is_told_as_unread() =>
        Assert.Equal(["planed thickness"], Read("part,width,length,planed thickness\nrail,2,8,13/16").Unread);

    [Fact]
    public void Millimetres_are_the_unit_of_bare_numbers_where_they_are_the_lists() =>
        Assert.Equal("stile|2|2 1/4|1|", Told(Read("stile;2;57,15;25,4", LengthUnit.Millimetre)));

    [Fact]
    public void Columns_that_are_not_needed_are_named() =>
        Assert.Equal(["material", "notes"], Read("part,material,count,width,length,notes\nrail,oak,2,2,8,nice").Unread);

    [Fact]
    public void Every_bad_cell_is_told_with_its_line_its_column_and_a_fix()
    {
        var errors = Errors("part,count,width,length\nrail,two,2 1/4,8 9/\n\n,2,2,8\nstile,0,2 1/4,32\npanel,1,≈8 3/4,0\ntop,1,,\nstile,2,2 1/4,1/2,3,4\n");
        Assert.Collection(errors,
            error => Assert.Equal("line 2, count: \"two\" is no count of pieces; write a whole number from 1 to 400", error),
            error => Assert.StartsWith("line 2, length: the length \"8 9/\" cannot be read at character 5; expected:", error, StringComparison.Ordinal),
            error => Assert.Equal("line 4, part: the part has no name; write what it is, such as top rail", error),
            error => Assert.StartsWith("line 5, count: \"0\" is no count", error, StringComparison.Ordinal),
            error => Assert.StartsWith("line 6, width: the length \"≈8 3/4\" cannot be read at character 1; expected: a rounded figure", error, StringComparison.Ordinal),
            error => Assert.StartsWith("line 6, length: the length \"0\" is nothing", error, StringComparison.Ordinal),
            error => Assert.StartsWith("line 7, the line: \"top\" has no size", error, StringComparison.Ordinal),
            error => Assert.StartsWith("line 8, the line: it has more cells than there are columns", error, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("part,count,widht,lenght\nrail,2,2,8", "no column has sizes", "did you mean width by widht?")]
    [InlineData("thing;width;length\nrail;2;8", "no column has the names of the parts", "head the columns")]
    [InlineData("part,width,length,width\nrail,2,8,2", "two columns have this heading", "keep one")]
    [InlineData("two rails 2 by 8", "it holds one cell", "cells of their own")]
    [InlineData("part,size\nrail,3/4 x 2 1/4 x 8", "not one width and one length", "2 1/4 x 32")]
    [InlineData("part,width,length\n\"rail,2,8\nstile,2,8", "quotation marks do not pair", "twice")]
    [InlineData("part,width,length\nrail,698,8", "the length \"698\"", "did you mean 698 mm?")]
    [InlineData("part,width,length,unit\nrail,2,8,furlong", "no unit known here", "in or mm")]
    [InlineData("part,width,length,stage\nrail,2,8,rough\nstile,2,8,finished", "line 2 is of another stage", "one list for each stage")]
    [InlineData("part,width,length", "headings and no lines", "a line for each part")]
    [InlineData(",,,\n,,", "holds no lines", "a line for each part")]
    [InlineData("   \n", "the list is empty", "name, count, width, length")]
    [InlineData("PK\u0003\u0004\0\0", "holds no text", "CSV UTF-8")]
    public void What_cannot_be_read_is_told_with_its_fix(string text, string problem, string fix)
    {
        var error = Assert.Single(Errors(text));
        Assert.Contains(problem, error, StringComparison.Ordinal);
        Assert.Contains(fix, error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_of_another_stage_than_asked_for_is_refused()
    {
        const string rough = """{ "format": "stilewright/makers-list", "version": 1, "unit": "in", "stage": "rough", "lines": [ { "part": "rail", "width": "3" } ] }""";
        Assert.Equal(CutStage.Rough, Read(rough).List.Stage);
        Assert.Contains("the list says that its sizes are rough, and clamps was asked for", Assert.Single(Errors(rough, stage: CutStage.IntoClamps)), StringComparison.Ordinal);
        Assert.Equal(CutStage.Rough, Read("part,rough width,rough length\nrail,3,9").List.Stage);
        Assert.Contains("the list has no finished sizes; it has rough", Assert.Single(Errors("part,rough width,rough length\nrail,3,9", stage: CutStage.Finished)), StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_a_json_list_name_the_field()
    {
        var errors = Errors("""{ "format": "stilewright/makers-list", "version": 1, "unit": "in", "lines": [ { "part": "rail", "count": 0, "width": "two" }, { "part": "", "lenght": 3 } ] }""");
        Assert.Equal(4, errors.Length);
        Assert.Contains(errors, error => error.StartsWith("$.lines[0].width (line 1, column ", StringComparison.Ordinal));
        Assert.Contains(errors, error => error.Contains("did you mean length?", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hostile_list_is_refused_politely()
    {
        Assert.Contains("larger than 1024 KB", Assert.Single(Errors(new string('x', MakersListReader.MostBytes + 1))), StringComparison.Ordinal);
        var many = "part,width,length\n" + string.Concat(Enumerable.Repeat("r,2,8\n", 100_000));
        Assert.Contains("more than 400 lines", Assert.Single(Errors(many)), StringComparison.Ordinal);
        Assert.Contains("cells", Assert.Single(Errors(new string(',', 500_000) + "1")), StringComparison.Ordinal);
        Assert.Single(Errors("part,width,length\n" + new string('r', 500) + ",2,8"));
        Assert.True(Errors("part,width,length\n" + string.Concat(Enumerable.Repeat(",x,y\n", 400))).Length <= 201);
        Assert.Contains("not UTF-8", Assert.Single(Files.Errors(MakersListReader.Read([0x70, 0xBD, 0x2C], LengthUnit.Inch))).Problem, StringComparison.Ordinal);
    }

    // Each leaf's own cut list, read as if a maker had handed it in, is all right at every stage and in either unit.
    [Fact]
    public void The_programs_own_cut_list_is_read_back_and_is_all_right()
    {
        var (lists, numbers) = (0, 0);
        OfRandomCourses((course, project, format, seed) =>
        {
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves).Where(leaf => !leaf.IsWithheld && leaf.Parts.Count > 0))
            {
                var csv = CutListCsv.Of([CutListGroup.Of(leaf.Label, leaf.Parts, CutListGroup.Owners([project]))], format);
                foreach (var stage in Enum.GetValues<CutStage>())
                {
                    var found = ListCheck.Check(Read(csv, course.Unit, stage).List, ListKey.Of(project, leaf, stage), course.Unit);
                    Assert.True(found.IsRight, $"seed {seed}, {leaf.Label}, {stage}: missing {string.Join(", ", found.Missing.Select(item => item.Label))}; wrong {string.Join("; ", found.Lines.Where(line => !line.IsRight).Select(line => $"{line.Line.Name} {line.Line.Count}/{line.RightCount} {line.Line.Width?.Text} × {line.Line.Length?.Text}"))}");
                    Interlocked.Increment(ref lists);
                    Interlocked.Add(ref numbers, found.Numbers.Count());
                }
            }
        });
        Assert.True(lists > 100 && numbers > 4 * lists, $"only {lists} lists with {numbers} numbers");
    }

    // A whole project's list comes back line by line; a figure that was rounded comes from its decimals, to six places of an inch.
    [Fact]
    public void Nothing_of_the_programs_own_cut_list_is_lost() => OfRandomCourses((course, project, format, _) =>
    {
        var group = CutListGroup.Of("project", project.Fronts.SelectMany(front => front.Leaves).SelectMany(leaf => leaf.Parts), CutListGroup.Owners([project]));
        if (group.Rows.Count == 0)
            return;
        foreach (var stage in Enum.GetValues<CutStage>())
        {
            var read = Read(CutListCsv.Of([group], format), course.Unit, stage);
            Assert.Equal((stage, group.Rows.Count), (read.List.Stage, read.List.Lines.Count));
            foreach (var (row, line) in group.Rows.Zip(read.List.Lines))
            {
                var size = stage == CutStage.Finished ? row.Part.Finished : stage == CutStage.IntoClamps ? row.Part.GlueUp : row.Part.Rough ?? row.Part.GlueUp;
                Assert.Equal((row.Name, (int?)row.Line.Count), (line.Name, line.Count));
                Assert.Equal(row.Line.Leaves.Count == 1 ? row.Line.Leaves[0] : null, line.Leaf);
                Assert.True(Length.Abs(line.Width!.Value.Value - size.Width.Length) < Length.FromInches(new(1, 1_000_000)));
                Assert.True(Length.Abs(line.Length!.Value.Value - size.Length.Length) < Length.FromInches(new(1, 1_000_000)));
            }
        }
    });

    private static void OfRandomCourses(Action<Projects.Course, ProjectBreakdown, LengthFormat, int> check) => Gen.Select(Gen.Int, Gen.Int[1, 2]).Sample((seed, size) =>
    {
        var course = RandomCourse.Of(seed, size);
        foreach (var project in Breakdown.Of(course, ShippedStandards.For(course.Unit)).Projects)
            check(course, project, seed % 2 == 0 ? LengthFormat.InchesTo32 : LengthFormat.MillimetresToTenth, seed);
    }, iter: 40);

    [Fact]
    public void Two_thousand_damaged_lists_are_read_or_refused_with_reasons()
    {
        FuzzedFiles files = new(5);
        var (read, refused) = (0, 0);
        for (var number = 0; number < 2000; number++)
        {
            var file = files.ListCase(number);
            var started = Stopwatch.GetTimestamp();
            var result = MakersListReader.Read(file, LengthUnit.Inch);
            Assert.True(Stopwatch.GetElapsedTime(started) < TimeSpan.FromSeconds(5), $"case {number} took too long");
            if (result is DocumentResult<ReadList>.Read { Document.List.Lines: var lines })
            {
                read++;
                Assert.NotEmpty(lines);
                Assert.All(lines, line => Assert.True(line.Name.Length > 0 && (line.Width is not null || line.Length is not null), $"case {number}"));
                continue;
            }

            refused++;
            Assert.NotEmpty(Files.Errors(result));
            Assert.All(Files.Errors(result), error =>
            {
                Assert.True(error.Path.Length > 0 && error.Problem.Length > 0 && error.Fix.Length > 0);
                Assert.True(error.Problem.Length + error.Fix.Length < 2000);
                Assert.DoesNotContain(error.ToString(), char.IsControl);
            });
        }

        Assert.InRange(read, 100, 1900);
        Assert.InRange(refused, 100, 1900);
    }

    [Fact]
    public void A_json_list_is_written_and_read_again()
    {
        var list = new WrittenList(LengthUnit.Millimetre, [new("rail", 2, new("57", 57.Millimetres), new("217.5", Length.FromMillimetres(new(435, 2))), "7.2L")], ListStage.Clamps);
        var text = Encoding.UTF8.GetString(DocumentWriter.Write(list));
        var read = Read(text);
        Assert.Equal(CutStage.IntoClamps, read.List.Stage);
        Assert.Equal((LengthUnit.Millimetre, list.Lines[0].Length, "7.2L"), (read.Unit, read.List.Lines[0].Length, read.List.Lines[0].Leaf));
        Assert.Equal(DocumentFormat.MakersList, DocumentReader.FormatOf(Encoding.UTF8.GetBytes(text)));
    }
}
