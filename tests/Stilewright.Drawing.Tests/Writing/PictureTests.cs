using SkiaSharp;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Tests.Writing;

public sealed class PictureTests : IDisposable
{
    // A browser shows 96 dots to the inch (CSS Values and Units 3, 5.2).
    private const double ScreenDotsPerInch = 96;
    private const int CellDots = 20;

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-picture-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_browser_shows_an_SVG_as_the_picture_has_it()
    {
        var scene = Sampler();
        var svg = Path.Combine(folder, "scene.svg");
        using (var output = File.Create(svg))
            SvgWriter.Write(scene, output);
        var shot = Path.Combine(folder, "shot.png");
        Installed.Browser(folder, svg, shot, 800, 600);

        using var picture = new MemoryStream();
        PngWriter.Write(scene, picture, ScreenDotsPerInch);
        using var ours = SKBitmap.Decode(picture.ToArray());
        using var theirs = SKBitmap.Decode(shot);
        Assert.NotNull(theirs);
        Assert.True(theirs.Width >= ours.Width && theirs.Height >= ours.Height);

        const double millimetres = 25.4 / ScreenDotsPerInch;
        PaperBox[] letters = [.. scene.Drawn.Select(drawn => drawn.Node).OfType<Lettering>().Select(lettering => lettering.Box.Grown(0.5))];
        var (differences, cells) = (0.0, 0);
        for (var top = 0; top + CellDots <= ours.Height; top += CellDots)
        {
            for (var left = 0; left + CellDots <= ours.Width; left += CellDots)
            {
                var (own, other) = (Darkness(ours, left, top), Darkness(theirs, left, top));

                // Where there are letters the browser may use another font; a narrow line right through a cell makes it 0.05 dark.
                var hasLetters = letters.Any(box => box.Overlaps(new(left * millimetres, top * millimetres, CellDots * millimetres, CellDots * millimetres)));
                Assert.True(Math.Abs(own - other) < (hasLetters ? 0.2 : 0.025), $"The cell at {left}, {top} is {own:0.000} dark, in the browser {other:0.000}.");
                Assert.True(own < 0.05 || other > 0.02, $"The cell at {left}, {top} is {own:0.000} dark, but empty in the browser.");
                differences += Math.Abs(own - other);
                cells++;
            }
        }

        Assert.InRange(differences / cells, 0, 0.01);
    }

    [Fact]
    public void A_picture_has_its_ink_where_the_scene_has_it()
    {
        var scene = new Scene("Box", "A black box", 25.4, 50.8, [new SceneGroup(null, null,
            [new Shape(Outline.Box(new(0, 0, 5.08, 5.08)), null, Tone.Ink)]) { At = new(10.16, 20.32) }]);
        using var output = new MemoryStream();
        PngWriter.Write(scene, output, 100);
        using var picture = SKBitmap.Decode(output.ToArray());
        Assert.Equal((100, 200), (picture.Width, picture.Height));
        for (var y = 0; y < picture.Height; y++)
        {
            for (var x = 0; x < picture.Width; x++)
                Assert.Equal(x is >= 40 and < 60 && y is >= 80 and < 100 ? SKColors.Black : SKColors.White, picture.GetPixel(x, y));
        }
    }

    private static Scene Sampler()
    {
        List<SceneNode> nodes = [];
        var down = 8.0;
        foreach (var style in Enum.GetValues<LineStyle>())
        {
            nodes.Add(new Shape(Outline.Line(new(5, down), new(70, down)), style));
            nodes.Add(new Lettering(new(75, down + 1), Typesetter.Set($"{style} & <3/16>", TextStyle.Small)));
            down += 6;
        }

        foreach (var style in new[] { TextStyle.Body, TextStyle.Figure, TextStyle.Title })
        {
            down += 10;
            nodes.Add(new Lettering(new(5, down), Typesetter.Set("12 3/16 × 127 31/32 in ≈ 3250.4 mm", style)));
        }

        var box = Outline.Box(new(110, 5, 30, 20));
        var arch = new Outline(new(0, 15), [new ArcTo(new(30, 15), new(15, 15), true), new LineTo(new(30, 30)), new LineTo(new(0, 30))], true);
        nodes.Add(new SceneGroup("b/leaf/rail.top", "Top rail", [new Shape(box, LineStyle.Visible, Tone.Tint), new Hatch(box, 45, 2)]));
        nodes.Add(new SceneGroup("b/leaf/panel", null, [new Shape(arch, LineStyle.Visible, Tone.Paper)]) { At = new(110, 30) });
        nodes.Add(new Shape(new(new(110, 75), [new BezierTo(new(120, 60), new(130, 90), new(140, 75))], false), LineStyle.Heavy));
        nodes.Add(new Lettering(new(150, 60), Typesetter.Set("24 11/16 in", TextStyle.Title), IsUpright: false));
        return new("Sampler", "Every line style, text and hatch", 155, 110, nodes);
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
}
