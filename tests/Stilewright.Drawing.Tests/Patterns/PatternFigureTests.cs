using System.Globalization;
using System.Xml.Linq;
using Stilewright.Curves;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Tests.Writing;
using Stilewright.Drawing.Writing;
using Stilewright.Projects;

namespace Stilewright.Drawing.Tests.Patterns;

public sealed class PatternFigureTests : IDisposable
{
    private const double DotsPerInch = 300;

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_arched_rail_and_what_lies_under_it_has_a_pattern_that_says_what_it_is()
    {
        Assert.True(PatternSamples.Sample.Count >= 16, $"{PatternSamples.Sample.Count}");
        foreach (var (pattern, drawn) in PatternSamples.Sample)
        {
            var texts = string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
            Assert.Contains(pattern.Part.Label, texts, StringComparison.Ordinal);
            Assert.Contains("show face", texts, StringComparison.Ordinal);
            Assert.Contains(PatternSamples.Revision, texts, StringComparison.Ordinal);
            Assert.Contains("between the crosses", texts, StringComparison.Ordinal);
            Assert.Contains("rise", texts, StringComparison.Ordinal);
            Assert.Contains("With a trammel", texts, StringComparison.Ordinal);
            var whole = new PaperBox(0, 0, pattern.Scene.WidthMillimetres, pattern.Scene.HeightMillimetres);
            Assert.All(Drawn.Texts(pattern.Scene), text => Assert.True(whole.Holds(text.Box), $"{pattern.Scene.Title}: {text.Line.Text}"));

            // The white ground of texts covers neither the curve nor the groove.
            var grounds = pattern.Scene.Drawn.Where(one => one.Node is Shape { Fill: Tone.Paper }).Select(one => ((Shape)one.Node).Outline.Shifted(one.At).Bounds).ToList();
            Assert.Equal(2, grounds.Count);
            foreach (var line in pattern.Lines.Where(line => line.Name is not "finished rail"))
                Assert.All(line.Chain.Flattened(0.01).Select(pattern.At), point => Assert.DoesNotContain(grounds, ground => ground.Overlaps(new(point.X, point.Y, 0, 0))));

            // The crosses are as far apart as the dimension says, and it says a size of the part.
            Assert.Equal(Scale.FullSize.OnPaper(pattern.Overall), pattern.Crosses.From.DistanceTo(pattern.Crosses.To), 9);
            Assert.Contains(pattern.Overall, new[] { pattern.Part.VisibleBounds.Width, pattern.Part.Outline.Width, pattern.Part.Outline.Height });

            // The wide line is the curve of the leaf.
            var curve = drawn.Detail.Curves.Of(pattern.Part)?.Sight ?? drawn.Detail.Curves.Filling(pattern.Part)!.Edge;
            Assert.Equal(curve.Length, pattern.Lines[0].Chain.Length, 9);
            var wide = Drawn.Lines(pattern.Scene, LineStyle.Visible).Single();
            Assert.All(wide.Flattened(0.001), point => Assert.InRange(PatternSamples.Off(pattern, pattern.Lines[0].Chain, point), 0, 0.0011));
        }
    }

    // A trammel about each centre reaches both places that the centre stands between.
    [Fact]
    public void Radii_of_the_table_reach_from_their_centre_to_the_marks_on_both_sides()
    {
        foreach (var (pattern, _) in PatternSamples.Sample)
        {
            for (var i = 0; i < pattern.Trammel.Count; i++)
            {
                if (pattern.Trammel[i].RadiusInches is not { } radius)
                    continue;
                Assert.Equal(radius, pattern.Trammel[i].Place.DistanceTo(pattern.Trammel[i - 1].Place), 9);
                Assert.Equal(radius, pattern.Trammel[i].Place.DistanceTo(pattern.Trammel[i + 1].Place), 9);
            }

            Assert.Contains(pattern.Trammel, point => point.RadiusInches is not null);
        }
    }

    // Centre to centre the bearing and the cutter are one axis: the pattern's edge is bearing less cutter inside the wood.
    [Theory]
    [InlineData(ArchFamily.Eyebrow, "1/2", "3/8")]
    [InlineData(ArchFamily.Cathedral, "1/4", "3/8")]
    public void A_guide_for_a_bearing_lies_evenly_beside_the_edge(ArchFamily family, string bearing, string cutter)
    {
        var (_, drawn) = PatternSamples.Sample.First(each => each.Pattern.Part.Arch?.Family == family);
        var guide = new GuideBearing(Examples.In(bearing).Value, Examples.In(cutter).Value);
        var rail = drawn.Detail.Curves.Rails.First(curve => curve.Rail.Arch!.Family == family);
        var pattern = Assert.IsType<PatternResult.Drawn>(new PatternFigure(PatternSamples.Revision, drawn.Format).Of(rail, guide)).Pattern;
        var sight = pattern.Lines.Single(line => line.Name == "sight line").Chain;
        var line = pattern.Lines[0].Chain;
        Assert.Equal("guide line", pattern.Lines[0].Name);
        for (var i = 2; i < 19; i++)
            Assert.Equal(0.125, sight.ClosestTo(line.PointAt(line.Length * i / 20)).Distance, 8);
        Assert.Equal(guide.Inward.IsPositive, line.Box.Top > sight.Box.Top);
    }

    [Fact]
    public void A_bearing_that_cannot_follow_the_curve_is_refused_with_the_radius_that_can()
    {
        var (pattern, drawn) = PatternSamples.Sample.First(each => each.Pattern.Part.Arch?.Family == ArchFamily.Cathedral);
        var rail = drawn.Detail.Curves.Of(pattern.Part)!;
        var refused = Assert.IsType<PatternResult.Refused>(new PatternFigure(PatternSamples.Revision, drawn.Format)
            .Of(rail, new GuideBearing(Examples.In("5").Value, Examples.In("1/2").Value)));
        Assert.Contains("their radii must differ by less than", refused.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_and_crosses_of_the_svg_are_where_they_are_computed()
    {
        foreach (var (pattern, _) in PatternSamples.Sample)
        {
            var svg = XDocument.Parse(SvgWriter.Text(pattern.Scene));
            Assert.Equal(pattern.Scene.WidthMillimetres, double.Parse(svg.Root!.Attribute("width")!.Value[..^2], CultureInfo.InvariantCulture), 0.0001);
            Assert.EndsWith("mm", svg.Root.Attribute("width")!.Value, StringComparison.Ordinal);
            var paths = SvgReading.Paths(svg).ToList();
            var (element, points) = paths.Single(path => path.Element.Attribute("class")?.Value == "visible");
            Assert.All(points, point => Assert.InRange(PatternSamples.Off(pattern, pattern.Lines[0].Chain, point), 0, PatternSamples.HeldMillimetres));

            // Arcs are told by their radii as well.
            var radii = pattern.Lines[0].Chain.Segments.OfType<ArcSegment>().Select(arc => arc.Radius * 25.4).ToList();
            var written = element.Attribute("d")!.Value.Split('A').Skip(1).Select(arc => double.Parse(arc.Split(' ')[0], CultureInfo.InvariantCulture)).ToList();
            Assert.NotEmpty(written);
            Assert.All(written, radius => Assert.Contains(radii, each => Math.Abs(each - radius) < PatternSamples.HeldMillimetres));
            var places = paths.Where(path => path.Element.Parent!.Attribute("class")?.Value == "dimension").SelectMany(path => path.Points).ToList();
            foreach (var cross in new[] { pattern.Crosses.From, pattern.Crosses.To })
                Assert.Contains(places, point => Math.Abs(point.DistanceTo(cross) - 4) < PatternSamples.HeldMillimetres);
        }
    }

    // 300 dots to the inch: the middle of the line, six dots wide, is found within a dot.
    [Theory]
    [InlineData(ArchFamily.Eyebrow)]
    [InlineData(ArchFamily.Cathedral)]
    [InlineData(ArchFamily.HalfRound)]
    [InlineData(ArchFamily.Pointed)]
    public void Printed_curves_lie_where_they_are_computed(ArchFamily family)
    {
        var pattern = PatternSamples.Rail(family);
        var file = Path.Combine(folder, "pattern.pdf");
        File.WriteAllBytes(file, PatternSamples.Pdf([pattern.Scene]));
        Installed.Run(["pdftoppm"], "-gray", "-singlefile", "-r", DotsPerInch.ToString(CultureInfo.InvariantCulture), file, Path.Combine(folder, "pattern"));
        var page = GreyPicture.Read(File.ReadAllBytes(Path.Combine(folder, "pattern.pgm")));
        Assert.Equal(pattern.Scene.WidthMillimetres / 25.4 * DotsPerInch, page.Width, 1.0);

        var chain = pattern.Lines[0].Chain;
        List<double> errors = [];
        for (var i = 0; i < 10; i++)
        {
            var along = chain.Length * (i + 0.37) / 10;
            var (place, normal) = (chain.PointAt(along), chain.DirectionAt(along).TurnedLeft());
            errors.Add(MiddleOfLine(pattern, page, place, normal));
        }

        Assert.All(errors, error => Assert.InRange(error, -1, 1));
    }

    // Along the normal, from the middle out to both sides until it is white; in dots.
    private static double MiddleOfLine(FullSizePattern pattern, GreyPicture page, CurvePoint place, CurvePoint normal)
    {
        const double Step = 0.1;
        return (Edge(1) - Edge(-1)) / 2;

        double Edge(int way)
        {
            var reach = 0.0;
            while (IsDark(reach * way) && reach < 20)
                reach += Step;
            Assert.InRange(reach, 0.5, 19);
            return reach;
        }

        bool IsDark(double dots)
        {
            var at = pattern.At(place + (normal * (dots / DotsPerInch)));
            var (x, y) = ((int)(at.X / 25.4 * DotsPerInch), (int)(at.Y / 25.4 * DotsPerInch));
            return page.Dots[y * page.Width + x] < 128;
        }
    }
}
