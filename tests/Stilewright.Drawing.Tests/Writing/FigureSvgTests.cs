using System.Globalization;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using SkiaSharp;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Drawing.Tests.Writing;

/// <summary>Every kind of figure of the sample as a file that a page shows.</summary>
public sealed class FigureSvgTests : IDisposable
{
    // A browser shows 96 dots to the inch (CSS Values and Units 3, 5.2).
    private const double ScreenDotsPerInch = 96;
    private const double MillimetresPerDot = 25.4 / ScreenDotsPerInch;
    private const int CellDots = 20;

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-figures-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_figure_is_plain_XML_that_tells_what_it_shows_and_can_do_nothing()
    {
        foreach (var scene in Every())
        {
            using var text = new StringReader(SvgWriter.Text(scene));
            using var reader = XmlReader.Create(text, new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
            var svg = XDocument.Load(reader);
            var root = svg.Root!;
            Assert.Equal(SvgReading.Svg + "svg", root.Name);
            Assert.Equal(scene.Title, root.Element(SvgReading.Svg + "title")!.Value);
            Assert.Equal(scene.Description, root.Element(SvgReading.Svg + "desc")!.Value);
            Assert.NotEqual("", scene.Title.Trim());
            Assert.NotEqual("", scene.Description.Trim());

            string[] known = ["svg", "title", "desc", "g", "path", "text", "tspan"];
            Assert.All(svg.Descendants(), element =>
            {
                Assert.Equal(SvgReading.Svg, element.Name.Namespace);
                Assert.Contains(element.Name.LocalName, known);
            });
            Assert.All(svg.Descendants().Attributes(), attribute =>
            {
                Assert.NotEqual("href", attribute.Name.LocalName);
                Assert.False(attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.ToString());
                Assert.DoesNotContain("url(", attribute.Value, StringComparison.OrdinalIgnoreCase);
                Assert.DoesNotContain("javascript:", attribute.Value, StringComparison.OrdinalIgnoreCase);
            });
            var ids = svg.Descendants().Attributes("id").Select(id => id.Value).ToList();
            Assert.Equal(ids.Count, ids.Distinct(StringComparer.Ordinal).Count());
            Assert.All(ids, id => Assert.DoesNotContain(id, char.IsWhiteSpace));
        }
    }

    [Fact]
    public void A_page_shows_figures_with_their_ink_where_it_should_be()
    {
        const int Gap = 20;
        Scene[] scenes = [.. OneOfEachKind()];
        var (page, places) = (new StringBuilder("<!DOCTYPE html><title>Figures</title><body style=\"margin:0;background:white\">"), new List<(int Left, int Top)>());
        var (left, width, height) = (Gap, 0, 0);
        for (var i = 0; i < scenes.Length; i++)
        {
            using (var output = File.Create(Path.Combine(folder, $"{i}.svg")))
                SvgWriter.Write(scenes[i], output);
            places.Add((left, Gap));
            page.Append(CultureInfo.InvariantCulture, $"<img src=\"{i}.svg\" style=\"position:absolute;left:{left}px;top:{Gap}px\">");
            left += Dots(scenes[i].WidthMillimetres) + Gap;
            (width, height) = (left, Math.Max(height, Dots(scenes[i].HeightMillimetres) + 2 * Gap));
        }

        var html = Path.Combine(folder, "page.html");
        File.WriteAllText(html, page.ToString());
        var shot = Path.Combine(folder, "shot.png");
        Installed.Browser(folder, html, shot, width, height);
        using var theirs = SKBitmap.Decode(shot);
        Assert.True(theirs.Width >= width && theirs.Height >= height, $"The browser shows {theirs.Width} by {theirs.Height} dots of {width} by {height}.");
        for (var i = 0; i < scenes.Length; i++)
            Compare(scenes[i], theirs, places[i].Left, places[i].Top);
    }

    private static void Compare(Scene scene, SKBitmap theirs, int fromLeft, int fromTop)
    {
        using var picture = new MemoryStream();
        PngWriter.Write(scene, picture, ScreenDotsPerInch);
        using var ours = SKBitmap.Decode(picture.ToArray());
        PaperBox[] letters = [.. Drawn.Texts(scene).Select(text => text.Box.Grown(0.5))];
        var (inked, plain) = (0, 0);
        for (var top = 0; top + CellDots <= ours.Height; top += CellDots)
        {
            for (var left = 0; left + CellDots <= ours.Width; left += CellDots)
            {
                var (own, other) = (Darkness(ours, left, top), Darkness(theirs, fromLeft + left, fromTop + top));
                var cell = new PaperBox(left * MillimetresPerDot, top * MillimetresPerDot, CellDots * MillimetresPerDot, CellDots * MillimetresPerDot);
                // Where there are letters the browser may use another font.
                var hasLetters = letters.Any(box => box.Overlaps(cell));
                Assert.True(Math.Abs(own - other) < (hasLetters ? 0.2 : 0.03), $"{scene.Title}: the cell at {left}, {top} is {own:0.000} dark, in the browser {other:0.000}.");
                Assert.True(own < 0.05 || other > 0.02, $"{scene.Title}: the cell at {left}, {top} is {own:0.000} dark, but empty in the browser.");
                inked += own > 0.02 ? 1 : 0;
                plain += hasLetters ? 0 : 1;
            }
        }

        Assert.True(inked > 0 && plain > 0, $"{scene.Title}: nothing to compare.");
    }

    private static double Darkness(SKBitmap picture, int left, int top)
    {
        var sum = 0.0;
        for (var y = top; y < top + CellDots; y++)
        {
            for (var x = left; x < left + CellDots; x++)
                sum += 255 - picture.GetPixel(x, y).Green;
        }

        return sum / (255.0 * CellDots * CellDots);
    }

    private static int Dots(double millimetres) => (int)Math.Ceiling(millimetres / MillimetresPerDot);

    private static IEnumerable<Scene> Every()
    {
        var scale = new Scale(8);
        foreach (var project in Work().Projects)
        {
            var format = new LengthFormat(project.Project.Unit ?? LengthUnit.Inch, 32);
            foreach (var run in project.Runs)
                yield return RunElevation.Draw("Run", run, new(16), format);
            foreach (var face in project.Faces)
                yield return FaceElevation.Draw("Face", face, new(16), format, 180);
        }

        foreach (var drawn in Drawn.Sample())
        {
            yield return LeafFigure.Front(drawn.Leaf, drawn.Detail, scale, drawn.Format);
            yield return LeafFigure.Back(drawn.Leaf, drawn.Detail, scale, drawn.Format);
            foreach (var stick in StoryStick.Draw(drawn.Leaf, drawn.Detail, drawn.Format))
                yield return stick;
            foreach (var part in drawn.Leaf.Parts)
                yield return PartFigure.Draw(part, drawn.Detail, scale, drawn.Format);
        }

    }

    private static IEnumerable<Scene> OneOfEachKind()
    {
        var work = Work();
        var project = work.Projects.First(project => project.Runs.Any());
        var format = new LengthFormat(LengthUnit.Inch, 32);
        yield return RunElevation.Draw("Run", project.Runs.First(), new(24), format);
        yield return FaceElevation.Draw("Face", project.Faces.First(face => face.Frame is not null), new(16), format, 180);
        var drawn = Drawn.Sample().First(drawn => !drawn.Leaf.IsWithheld && drawn.Leaf.Parts.Any(part => part.Arch is not null));
        yield return LeafFigure.Front(drawn.Leaf, drawn.Detail, new(8), format);
        yield return LeafFigure.Back(drawn.Leaf, drawn.Detail, new(8), format);
        yield return PartFigure.Draw(drawn.Leaf.Parts.First(part => part.Arch is not null), drawn.Detail, new(4), format);
        yield return StoryStick.Draw(drawn.Leaf, drawn.Detail, format)[0];
    }

    private static Breakdown Work() => Breakdown.Of(Drawn.SampleCourse(), ShippedStandards.Inch);
}
