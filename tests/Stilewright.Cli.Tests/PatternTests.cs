using System.Globalization;
using Stilewright.Documents;
using Stilewright.Shop;

namespace Stilewright.Cli.Tests;

public sealed class PatternTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Arched_parts_are_listed()
    {
        var ran = Ran.With("pattern", folder.Sample());
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("1·2L·TR", ran.Output, StringComparison.Ordinal);
        Assert.Contains("cathedral", ran.Output, StringComparison.Ordinal);
        Assert.Contains("No leaf of this course has an arch", Ran.With("pattern", folder.Small()).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_patterns_of_a_leaf_are_printed_on_any_paper()
    {
        var course = folder.Sample();
        foreach (var (paper, words) in new[] { ("letter", "2 patterns on "), ("a3", "2 patterns on ") })
        {
            var ran = Ran.With("pattern", course, "1.2L", "--paper", paper, "--out", folder.File($"{paper}.pdf"));
            Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Output));
            Assert.Contains(words, ran.Error, StringComparison.Ordinal);
            Assert.StartsWith("%PDF-", File.ReadAllText(folder.File($"{paper}.pdf")), StringComparison.Ordinal);
        }

        Assert.Contains("2 patterns on 1 sheet", Ran.With("pattern", course, "1.2L", "--roll", "36", "--out", folder.File("roll.pdf")).Error, StringComparison.Ordinal);
    }

    // Points within 0.001 in of the curve that the arcs tell: each lies on one of them, and no step between two is further off.
    [Theory]
    [InlineData("--in", 1)]
    [InlineData("--mm", 25.4)]
    public void Points_and_arcs_tell_the_same_curve(string unit, double perInch)
    {
        var ran = Ran.With("pattern", folder.Sample(), "1.2L.TR", unit, "--points", folder.File("points.csv"), "--arcs", folder.File("arcs.csv"));
        Assert.Equal(ExitCode.Good, ran.Code);
        var arcs = Rows("arcs.csv").Where(row => row[1] == "sight line").ToList();
        var points = Rows("points.csv").Where(row => row[1] == "sight line").Select(row => (X: Number(row[3]), Y: Number(row[4]))).ToList();
        Assert.Equal(3, arcs.Count(row => row[3] == "arc"));
        Assert.True(points.Count > 20);
        var within = 0.001 * perInch;
        var middles = points.Zip(points.Skip(1), (one, next) => ((one.X + next.X) / 2, (one.Y + next.Y) / 2));
        foreach (var (x, y) in points.Concat(middles))
        {
            Assert.Contains(arcs, row => row[3] == "arc"
                ? Math.Abs(double.Hypot(x - Number(row[8]), y - Number(row[9])) - Number(row[10])) < within
                : Math.Abs(y - Number(row[5])) < within && x >= Number(row[4]) - within && x <= Number(row[6]) + within);
        }

        Assert.Equal((Number(arcs[0][4]), Number(arcs[^1][6])), (points[0].X, points[^1].X));
        Assert.Equal(10.8125 * perInch, points[^1].X - points[0].X, 4);

        List<string[]> Rows(string name) => [.. File.ReadAllLines(folder.File(name)).Skip(1).Select(line => line.Split(','))];
        static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
    }

    [Fact]
    public void An_svg_holds_one_part_and_a_guide_is_another_line()
    {
        var course = folder.Sample();
        var refused = Ran.With("pattern", course, "1.2L", "--out", folder.File("x.svg"));
        Assert.Equal(ExitCode.WrongUse, refused.Code);
        Assert.Contains("1·2L·TR, 1·2L·P", refused.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "1.2L.TR", "--out", folder.File("x.svg")).Code);
        Assert.Equal(ExitCode.FileFailed, Ran.With("pattern", course, "1.2L.TR", "--out", folder.File("x.svg")).Code);
        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "1.2L.TR", "--bearing", "1/4", "--cutter", "3/8", "--out", folder.File("g.svg")).Code);
        Assert.Contains("Guides a bearing of radius", File.ReadAllText(folder.File("g.svg")), StringComparison.Ordinal);
        var far = Ran.With("pattern", course, "1.2L.TR", "--bearing", "6", "--cutter", "3/8", "--out", folder.File("far.svg"));
        Assert.Equal(ExitCode.WrongUse, far.Code);
        Assert.Contains("their radii must differ by less than", far.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_measured_printer_corrects_the_next_print()
    {
        var (course, file) = (folder.Sample(), folder.File("office.json"));
        var first = Ran.With("calibrate", file, "--feed", "short", "--across", "149.2 mm", "--along", "150.4 mm", "--name", "Office laser");
        Assert.Equal(ExitCode.Good, first.Code);
        Assert.Contains("+0.54 % across and −0.27 % along", first.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("calibrate", file, "--feed", "short", "--across", "6 1/64 in", "--along", "6 in").Code);
        var printer = Assert.IsType<DocumentResult<Printer>.Read>(DocumentReader.ReadPrinter(File.ReadAllBytes(file))).Document;
        Assert.Equal(("Office laser", "149.2 mm", "6 in"), (printer.Name, printer.Measured[0].Across.Text, printer.Measured[1].Nominal.Text));
        Assert.Contains("2 prints measured", Ran.With("check", file).Output, StringComparison.Ordinal);

        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "1.2L", "--printer", file, "--feed", "short", "--out", folder.File("p.pdf")).Code);
        var other = Ran.With("pattern", course, "1.2L", "--printer", file, "--feed", "long", "--out", folder.File("q.pdf"));
        Assert.Contains("this one is not corrected", other.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_svg_is_corrected_only_for_a_printer_that_is_named_and_says_so()
    {
        var (course, file) = (folder.Sample(), folder.File("office.json"));
        Assert.Equal(ExitCode.Good, Ran.With("calibrate", file, "--feed", "short", "--across", "149.2 mm", "--along", "150.4 mm").Code);
        Assert.Contains("no correction for the printer", Ran.With("pattern", course, "1.2L.TR", "--out", folder.File("p.svg")).Error, StringComparison.Ordinal);
        Assert.Contains("no correction for the printer", File.ReadAllText(folder.File("p.svg")), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "1.2L.TR", "--printer", file, "--feed", "short", "--out", folder.File("q.svg")).Code);
        Assert.Contains("+0.54 % across and −0.27 % along", File.ReadAllText(folder.File("q.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void One_pattern_and_whole_panels_are_asked_for_by_options()
    {
        var course = folder.Sample();
        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "1.2L.P", "--one-pattern", "--out", folder.File("p.svg")).Code);
        Assert.Contains("One pattern for rail and panel", File.ReadAllText(folder.File("p.svg")), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "1.2L.P", "--whole", "--out", folder.File("w.svg")).Code);
        Assert.DoesNotContain("One pattern for rail and panel", File.ReadAllText(folder.File("w.svg")), StringComparison.Ordinal);
        Assert.DoesNotContain("Ends at a line", File.ReadAllText(folder.File("w.svg")), StringComparison.Ordinal);
        var both = Ran.With("pattern", course, "7.3.P", "--out", folder.File("x.svg"));
        Assert.Equal(ExitCode.WrongUse, both.Code);
        Assert.Contains("give --whole for both in one", both.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Good, Ran.With("pattern", course, "7.3.P", "--whole", "--out", folder.File("x.svg")).Code);
    }

    [Fact]
    public void A_print_that_was_fitted_to_the_paper_is_not_recorded()
    {
        var ran = Ran.With("calibrate", folder.File("office.json"), "--feed", "long", "--across", "144 mm", "--along", "144 mm");
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains("Print at 100 %", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("office.json")));
    }

    [Theory]
    [InlineData("Name what to write", "1.2L")]
    [InlineData("Name the leaf or the part", "--out", "x.pdf")]
    [InlineData("ends in .pdf or .svg", "1.2L", "--out", "x.dxf")]
    [InlineData("--paper takes letter, legal, a4 or a3", "1.2L", "--out", "x.pdf", "--paper", "a5")]
    [InlineData("Give --paper or --roll", "1.2L", "--out", "x.pdf", "--paper", "a4", "--roll", "24")]
    [InlineData("--roll takes a width of 100 mm or more", "1.2L", "--out", "x.pdf", "--roll", "2")]
    [InlineData("--roll takes a length", "1.2L", "--out", "x.pdf", "--roll", "wide")]
    [InlineData("--printer and --feed go together", "1.2L", "--out", "x.pdf", "--feed", "short")]
    [InlineData("--bearing and --cutter go together", "1.2L", "--out", "x.pdf", "--bearing", "1/4")]
    [InlineData("1.1 has no arch", "1.1", "--out", "x.pdf")]
    [InlineData("There is no leaf or part 9.9L", "9.9L", "--out", "x.pdf")]
    public void Wrong_use_is_told_with_the_fix(string words, params string[] arguments)
    {
        var ran = Ran.With(["pattern", folder.Sample(), .. arguments]);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists("x.pdf"));
    }
}
