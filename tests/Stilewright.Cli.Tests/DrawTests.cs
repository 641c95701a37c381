using System.Runtime.CompilerServices;
using System.Xml.Linq;

namespace Stilewright.Cli.Tests;

public sealed class DrawTests : IDisposable
{
    private static readonly string Root = FindRoot();
    private static readonly string Sample = Path.Combine(Root, "samples/evening-course.json");
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>The drawings that the README shows are what the program makes.</summary>
    [Theory]
    [InlineData("docs/drawings/elevation.svg", "hall-front")]
    [InlineData("docs/drawings/leaf.svg", "1.2L")]
    [InlineData("docs/drawings/rail.svg", "1.2L.TR")]
    public void Drawings_of_the_readme_are_checked_in(string path, string place)
    {
        var drawn = Ran.With("draw", Sample, place);
        Assert.Equal((ExitCode.Good, ""), (drawn.Code, drawn.Error));
        var file = Path.Combine(Root, path);
        if (Environment.GetEnvironmentVariable("STILEWRIGHT_WRITE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, drawn.Output);
        }

        Assert.True(File.Exists(file) && File.ReadAllText(file) == drawn.Output, $"{path} is stale; run this test once with STILEWRIGHT_WRITE=1 and commit the file.");
        Assert.Contains(Path.GetFileName(path), File.ReadAllText(Path.Combine(Root, "README.md")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hall-front", "front")]
    [InlineData("wall-run", "front")]
    [InlineData("7.1L", "front")]
    [InlineData("7.1L", "back")]
    [InlineData("7.1L", "stick-across")]
    [InlineData("7.1L", "stick-up")]
    [InlineData("7·1L·TR", "front")]
    [InlineData("wall-three/leaf.left/rail.top", "front")]
    public void Everything_that_is_listed_can_be_drawn(string place, string view)
    {
        var path = folder.File("drawing.svg");
        var ran = Ran.With("draw", Sample, place, "--view", view, "--out", path);
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("drawing.svg", ran.Error, StringComparison.Ordinal);
        var svg = XDocument.Load(path).Root!;
        Assert.Equal("svg", svg.Name.LocalName);
        Assert.NotEmpty(svg.Elements().First(element => element.Name.LocalName == "desc").Value);
    }

    [Fact]
    public void Without_a_place_all_that_can_be_drawn_is_listed()
    {
        var ran = Ran.With("draw", Sample);
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.All(["hall-front", "wall-run", "3·1L", "8·2"], name => Assert.Contains(name, ran.Output, StringComparison.Ordinal));
    }

    // Geometry: 15 5/16 in at 1:8 is 48.6 mm, at 1:4 97.2 mm; dimensions stand outside of that.
    [Theory]
    [InlineData("8", 48.6, 97.2)]
    [InlineData("4", 97.2, 194.5)]
    public void A_given_scale_is_kept(string scale, double least, double most)
    {
        var svg = XDocument.Parse(Ran.With("draw", Sample, "1.2L", "--scale", scale).Output).Root!;
        var width = double.Parse(svg.Attribute("width")!.Value.Replace("mm", "", StringComparison.Ordinal), System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(width, least, most);
    }

    [Theory]
    [InlineData("There is no face, run, leaf or part 1.9Q", "1.9Q")]
    [InlineData("--view takes front, back, stick-across, stick-up, boring, panel-fit, panel-play, glue-up, not \"side\"", "1.2L", "--view", "side")]
    [InlineData("The view back is of a leaf, and hall-front is none", "hall-front", "--view", "back")]
    [InlineData("--scale takes a whole number from 1 to 5000, not \"0\"", "1.2L", "--scale", "0")]
    [InlineData("--width takes a whole number from 20 to 5000, not \"wide\"", "1.2L", "--width", "wide")]
    public void Wrong_use_is_told_with_the_fix(string words, params string[] arguments)
    {
        var ran = Ran.With(["draw", Sample, .. arguments]);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public void A_drawing_that_fits_at_no_scale_is_drawn_at_the_smallest_and_says_so()
    {
        var ran = Ran.With("draw", Sample, "2.1", "--width", "20", "--height", "20");
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("give more room with --width and --height", ran.Error, StringComparison.Ordinal);
        Assert.NotNull(XDocument.Parse(ran.Output).Root);
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        var above = Path.GetDirectoryName(here)!;
        while (!File.Exists(Path.Combine(above, "Stilewright.slnx")))
            above = Path.GetDirectoryName(above) ?? throw new InvalidOperationException("The solution file is not above the tests.");
        return above;
    }
}
