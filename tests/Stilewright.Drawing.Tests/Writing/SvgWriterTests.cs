using System.Text.RegularExpressions;
using System.Xml.Linq;
using CsCheck;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Tests.Writing;

public sealed partial class SvgWriterTests
{
    private const double ToleranceMillimetres = 0.0001;
    private const int Scenes = 150;

    [Fact]
    public void Places_read_back_are_those_of_the_scene() => Gen.Int.Sample(
        seed =>
        {
            var scene = RandomScene.Of(seed);
            var svg = XDocument.Parse(SvgWriter.Text(scene));
            var written = SvgReading.Paths(svg).SelectMany(path => path.Points).ToList();
            var drawn = scene.Drawn.SelectMany(PathPoints).ToList();
            AssertNear(drawn, written);
            AssertNear([.. scene.Drawn.SelectMany(RunPlaces)], [.. SvgReading.Runs(svg).Select(run => run.At)]);
        },
        iter: Scenes);

    [Fact]
    public void Arcs_keep_their_centres() => Gen.Int.Sample(
        seed =>
        {
            // A scene of one arc near a half turn, whose centre is lost when ends and radius are rounded.
            var radius = 1 + Math.Abs(seed % 50_000) / 1000.0;
            var start = new PaperPoint(60 - radius, 60);
            var scene = SceneOf(new Shape(new(start, [new ArcTo(new(60 + radius, 60), new(60, 60), seed % 2 == 0)], false), LineStyle.Visible));
            var (element, points) = SvgReading.Paths(XDocument.Parse(SvgWriter.Text(scene))).Single();
            var sweep = element.Attribute("d")!.Value.Split('A')[1].Split(' ')[4];
            Assert.Equal(seed % 2 == 0 ? "1" : "0", sweep[..1]);
            Assert.True(points.Count >= 3);
            for (var i = 1; i < points.Count; i++)
            {
                // The centre lies off the middle of the chord by what the radius leaves; which side, the sweep says.
                var (middle, chord) = ((points[i] + points[i - 1]) * 0.5, points[i] - points[i - 1]);
                var half = points[i].DistanceTo(points[i - 1]) / 2;
                var off = Math.Sqrt(radius * radius - half * half) / (2 * half) * (seed % 2 == 0 ? 1 : -1);
                var centre = middle + new PaperPoint(-chord.Y, chord.X) * off;
                Assert.InRange(centre.DistanceTo(new(60, 60)), 0, 3 * ToleranceMillimetres);
            }
        },
        iter: Scenes);

    [Fact]
    public void Ids_are_unique_and_every_path_is_told() => Gen.Int.Sample(
        seed =>
        {
            var scene = RandomScene.Of(seed);
            var svg = XDocument.Parse(SvgWriter.Text(scene));
            var ids = svg.Descendants().Attributes("id").Select(id => id.Value).ToList();
            Assert.Equal(ids.Count, ids.Distinct().Count());
            Assert.DoesNotContain(ids, id => id.Any(char.IsWhiteSpace));
            var paths = Groups(scene.Nodes).Select(group => group.Path).OfType<string>().ToHashSet();
            Assert.Superset(paths, ids.ToHashSet());
            Assert.Equal(paths, [.. svg.Descendants(SvgReading.Svg + "g")
                .Where(group => group.Attribute("class") is null).Attributes("data-path").Select(path => path.Value)]);
        },
        iter: Scenes);

    [Fact]
    public void Texts_read_well_by_themselves() => Gen.Int.Sample(
        seed =>
        {
            var scene = RandomScene.Of(seed);
            var svg = XDocument.Parse(SvgWriter.Text(scene), LoadOptions.PreserveWhitespace);
            Assert.Equal(scene.Title, svg.Root!.Element(SvgReading.Svg + "title")!.Value);
            Assert.Equal(scene.Description, svg.Root!.Element(SvgReading.Svg + "desc")!.Value);
            Assert.Equal(
                scene.Drawn.SelectMany(Letterings).Select(text => FractionPattern().Replace(text.Line.Text, "$1\u2044$2")),
                svg.Descendants(SvgReading.Svg + "text").Select(text => text.Value));
        },
        iter: Scenes);

    [Fact]
    public void A_mixed_number_keeps_its_space()
    {
        var svg = XDocument.Parse(SvgWriter.Text(SceneOf(new Lettering(new(10, 10), Typesetter.Set("12 3/16", TextStyle.Figure)))));
        Assert.Equal("12 3\u204416", svg.Descendants(SvgReading.Svg + "text").Single().Value);
    }

    [Fact]
    public void Numbers_have_four_decimals_at_most_and_no_negative_zero()
    {
        var svg = SvgWriter.Text(SceneOf(
            new SceneGroup("a", null, [new Shape(Outline.Line(new(-0.00001, 1.0 / 3), new(1e-9, 20)), LineStyle.Edge)]) { At = new(0.1, -0.00004) }));
        Assert.DoesNotMatch(@"\d\.\d{5}|-0[^.]|\de-?\d", svg);
        Assert.Contains("""<g id="a" data-path="a" transform="translate(0.1 0)">""", svg, StringComparison.Ordinal);
        Assert.Contains("""d="M0 0.3333L0 20" """.Trim(), svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Characters_that_XML_cannot_hold_are_replaced()
    {
        var svg = XDocument.Parse(SvgWriter.Text(new Scene("a\u0001b", "c\ud800d", 50, 50, [new SceneGroup("p q", "\u000b", [])])));
        Assert.Equal("a\ufffdb", svg.Root!.Element(SvgReading.Svg + "title")!.Value);
        var group = svg.Descendants(SvgReading.Svg + "g").Single();
        Assert.Null(group.Attribute("id"));
        Assert.Equal("p q", group.Attribute("data-path")!.Value);
    }

    [Fact]
    public void The_same_scene_gives_the_same_bytes_with_line_feeds_only()
    {
        using var one = new MemoryStream();
        using var other = new MemoryStream();
        SvgWriter.Write(RandomScene.Of(7), one);
        SvgWriter.Write(RandomScene.Of(7), other);
        Assert.Equal(one.ToArray(), other.ToArray());
        Assert.DoesNotContain((byte)'\r', one.ToArray());
        Assert.Equal((byte)'<', one.ToArray()[0]);
    }

    [Fact]
    public void Nothing_is_loaded_or_run()
    {
        var svg = XDocument.Parse(SvgWriter.Text(RandomScene.Of(3)));
        Assert.Subset(
            new HashSet<string> { "svg", "g", "title", "desc", "path", "text", "tspan" }, svg.Descendants().Select(element => element.Name.LocalName).ToHashSet());
        Assert.DoesNotContain(svg.Descendants().Attributes(), attribute =>
            attribute.Name.LocalName is "href" or "src" || attribute.Value.Contains("url(", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(LineStyle.Hidden)]
    [InlineData(LineStyle.Centre)]
    [InlineData(LineStyle.Adjacent)]
    public void Broken_lines_begin_and_end_with_a_dash(LineStyle style) => Gen.Double[8, 200].Sample(extent =>
    {
        var dashes = DashFit.For(Outline.Line(new(0, 0), new(extent, 0)), style);
        if (dashes.Count == 0)
        {
            Assert.True(extent < 2 * style.DashesMillimetres.Sum());
            return;
        }

        var periods = (extent - dashes[0]) / dashes.Sum();
        Assert.Equal(Math.Round(periods), periods, 1e-6);
        Assert.InRange(dashes[0] / style.DashesMillimetres[0], 0.6, 1.6);
    });

    private static Scene SceneOf(params SceneNode[] nodes) => new("One", "One thing", 120, 120, nodes);

    private static IEnumerable<SceneGroup> Groups(IEnumerable<SceneNode> nodes) =>
        nodes.OfType<SceneGroup>().SelectMany(group => Groups(group.Children).Prepend(group));

    private static IEnumerable<PaperPoint> PathPoints((SceneNode Node, PaperPoint At) drawn)
    {
        IEnumerable<PaperPoint> points = drawn.Node switch
        {
            Shape { Line: null, Fill: Tone.None } => [],
            Shape shape => OutlinePoints(shape.Outline.WithShortArcs()),
            Hatch hatch => hatch.Lines.SelectMany(line => new[] { line.From, line.To }),
            CellGrid grid => grid.Bars.SelectMany(OutlinePoints),
            DimensionMark dimension => dimension.Strokes.SelectMany(OutlinePoints),
            _ => [],
        };
        return points.Select(point => point + drawn.At);
    }

    private static IEnumerable<PaperPoint> OutlinePoints(Outline outline) => outline.Segments
        .SelectMany(segment => segment is BezierTo curve ? [curve.FirstControl, curve.SecondControl, curve.End] : new[] { segment.End })
        .Prepend(outline.Start);

    private static IEnumerable<Lettering> Letterings((SceneNode Node, PaperPoint At) drawn) => drawn.Node switch
    {
        Lettering lettering => [lettering],
        DimensionMark dimension => [dimension.Text],
        _ => [],
    };

    private static IEnumerable<PaperPoint> RunPlaces((SceneNode Node, PaperPoint At) drawn) =>
        from lettering in Letterings(drawn)
        from run in lettering.Line.Runs
        select drawn.At + lettering.At + (lettering.IsUpright ? new(run.Right, -run.Up) : new PaperPoint(-run.Up, -run.Right));

    private static void AssertNear(IReadOnlyList<PaperPoint> expected, IReadOnlyList<PaperPoint> actual)
    {
        Assert.Equal(expected.Count, actual.Count);
        for (var i = 0; i < expected.Count; i++)
            Assert.InRange(expected[i].DistanceTo(actual[i]), 0, ToleranceMillimetres);
    }

    [GeneratedRegex(@"(?<![\w/.-])(\d+)/(\d+)(?![\w/-])")]
    private static partial Regex FractionPattern();
}
