using SkiaSharp;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>Draws scenes on a canvas whose unit is one millimetre: the one walk behind page and picture.</summary>
/// <remarks>
/// One painter serves one thread at a time. Painters of several threads may work at once: they share only the typefaces,
/// which nothing changes. Strokes end square at their ends (butt caps), so that a stroke is as long as what it stands for,
/// and meet in mitres, so that corners of wood look like corners.
/// </remarks>
internal sealed class ScenePainter : IDisposable
{
    // Skia is given thousandths of a millimetre, so that what it rounds is far below what a printer can show.
    private const double UnitsPerMillimetre = 1000;
    private static readonly SKColor Ink = SKColors.Black;

    private readonly Dictionary<TextStyle, SKFont> fonts = [];
    private readonly Dictionary<(string Text, TextStyle Style), SKTextBlob> blobs = [];
    private readonly Dictionary<LineStyle, SKPaint> solidLines = [];
    private readonly SKPaint inkFill = Fill(Ink);
    private readonly SKPaint tintFill = Fill(SKColor.Parse(Inks.Tint));
    private readonly SKPaint paperFill = Fill(SKColors.White);

    public void Paint(SKCanvas canvas, Scene scene)
    {
        canvas.Save();
        canvas.Scale((float)(1 / UnitsPerMillimetre));
        Paint(canvas, scene.Nodes, default);
        canvas.Restore();
    }

    private void Paint(SKCanvas canvas, IReadOnlyList<SceneNode> nodes, PaperPoint at)
    {
        foreach (var node in nodes)
        {
            switch (node)
            {
                case SceneGroup { Clip: { } clip } group:
                    canvas.Save();
                    var corner = group.At + at;
                    canvas.ClipRect(new(Units(corner.X + clip.Left), Units(corner.Y + clip.Top), Units(corner.X + clip.Right), Units(corner.Y + clip.Bottom)), antialias: true);
                    Paint(canvas, group.Children, corner);
                    canvas.Restore();
                    break;
                case SceneGroup group:
                    Paint(canvas, group.Children, group.At + at);
                    break;
                case Shape shape:
                    Paint(canvas, shape, at);
                    break;
                case Hatch hatch:
                    PaintLines(canvas, hatch, at);
                    break;
                case DimensionMark dimension:
                    using (var strokes = Path(dimension.Strokes, at))
                        canvas.DrawPath(strokes, SolidLine(LineStyle.Dimension));
                    Paint(canvas, dimension.Text, at);
                    break;
                case Lettering lettering:
                    Paint(canvas, lettering, at);
                    break;
                case CellGrid grid:
                    // As one path of a hundred bars Skia takes six times as long.
                    foreach (var bar in grid.Bars)
                    {
                        var box = bar.Bounds.Shifted(at.X, at.Y);
                        canvas.DrawRect(new(Units(box.Left), Units(box.Top), Units(box.Right), Units(box.Bottom)), inkFill);
                    }

                    break;
                default:
                    throw new ArgumentException($"A scene cannot hold a {node.GetType().Name}.", nameof(nodes));
            }
        }
    }

    public void Dispose()
    {
        foreach (var blob in blobs.Values)
            blob.Dispose();
        foreach (var font in fonts.Values)
            font.Dispose();
        foreach (var paint in solidLines.Values)
            paint.Dispose();
        inkFill.Dispose();
        tintFill.Dispose();
        paperFill.Dispose();
    }

    private void Paint(SKCanvas canvas, Shape shape, PaperPoint at)
    {
        if (shape.Fill != Tone.None)
        {
            using var path = Path(shape.Outline, at);
            canvas.DrawPath(path, shape.Fill switch
            {
                Tone.Paper => paperFill,
                Tone.Tint => tintFill,
                _ => inkFill,
            });
        }

        if (shape.Line is { } line)
            Stroke(canvas, shape.Outline, line, at);
    }

    private void PaintLines(SKCanvas canvas, Hatch hatch, PaperPoint at)
    {
        var paint = SolidLine(LineStyle.Hatch);
        foreach (var (from, to) in hatch.Lines)
            Line(canvas, from + at, to + at, paint);
    }

    private void Stroke(SKCanvas canvas, Outline outline, LineStyle style, PaperPoint at)
    {
        var paint = SolidLine(style);
        var dashes = DashFit.For(outline, style);
        if (dashes.Count > 0)
        {
            using var whole = Path(outline, at);
            using var dashed = Dashed(whole, dashes);
            canvas.DrawPath(dashed, paint);
            return;
        }

        if (outline is { IsClosed: false, Segments: [LineTo(var end)] })
        {
            Line(canvas, outline.Start + at, end + at, paint);
            return;
        }

        using var path = Path(outline, at);
        canvas.DrawPath(path, paint);
    }

    private void Paint(SKCanvas canvas, Lettering lettering, PaperPoint at)
    {
        var place = lettering.At + at;
        if (lettering.IsUpright)
        {
            Letters(canvas, lettering.Line, place);
            return;
        }

        canvas.Save();
        canvas.Translate(Units(place.X), Units(place.Y));
        canvas.RotateDegrees(-90);
        Letters(canvas, lettering.Line, default);
        canvas.Restore();
    }

    private void Letters(SKCanvas canvas, SetLine line, PaperPoint at)
    {
        foreach (var run in line.Runs)
            canvas.DrawText(Blob(run), Units(at.X + run.Right), Units(at.Y - run.Up), inkFill);
    }

    private static void Line(SKCanvas canvas, PaperPoint from, PaperPoint to, SKPaint paint) =>
        canvas.DrawLine(Point(from), Point(to), paint);

    private static SKPath Path(Outline outline, PaperPoint at) => Path([outline], at);

    private static SKPath Path(IEnumerable<Outline> outlines, PaperPoint at)
    {
        using var path = new SKPathBuilder();
        foreach (var outline in outlines)
            Add(path, outline, at);
        return path.Detach();
    }

    private static void Add(SKPathBuilder path, Outline outline, PaperPoint at)
    {
        path.MoveTo(Point(outline.Start + at));
        foreach (var segment in outline.WithArcsAsBeziers().Segments)
        {
            if (segment is BezierTo curve)
                path.CubicTo(Point(curve.FirstControl + at), Point(curve.SecondControl + at), Point(curve.End + at));
            else
                path.LineTo(Point(segment.End + at));
        }

        if (outline.IsClosed)
            path.Close();
    }

    // Skia's PDF writes letters as one run only where each stands, to the last bit, at the sum of the advances before it: whole units
    // of the font, scaled. Its own measuring differs in the last bits, so that it would place every letter by itself.
    private SKTextBlob Blob(LetterRun run)
    {
        if (blobs.TryGetValue((run.Text, run.Style), out var known))
            return known;
        var font = Font(run.Style);
        using var design = new SKFont(font.Typeface, font.Typeface!.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        var glyphs = font.GetGlyphs(run.Text);
        var advances = design.GetGlyphWidths(glyphs);
        var scale = font.Size / design.Size;
        var places = new float[glyphs.Length];
        for (var i = 1; i < places.Length; i++)
            places[i] = places[i - 1] + scale * MathF.Round(advances[i - 1]);
        using var builder = new SKTextBlobBuilder();
        builder.AddHorizontalRun(glyphs, font, places, 0);
        return blobs[(run.Text, run.Style)] = builder.Build()!;
    }

    private SKFont Font(TextStyle style)
    {
        if (!fonts.TryGetValue(style, out var font))
        {
            fonts[style] = font = new SKFont(Typesetter.Face(style.Weight), Units(style.SizeMillimetres))
            {
                Subpixel = true,
                Hinting = SKFontHinting.None,
                LinearMetrics = true,
                Edging = SKFontEdging.Antialias,
            };
        }

        return font;
    }

    private SKPaint SolidLine(LineStyle style)
    {
        if (!solidLines.TryGetValue(style, out var paint))
            solidLines[style] = paint = LinePaint(style);
        return paint;
    }

    // Skia writes its own dashes as filled outlines, which take four times the room of strokes and many times the time.
    private static SKPath Dashed(SKPath path, IReadOnlyList<double> dashes)
    {
        using var measure = new SKPathMeasure(path);
        using var dashed = new SKPathBuilder();
        var begin = 0.0;
        for (var i = 0; begin < measure.Length; i = (i + 1) % dashes.Count)
        {
            var end = begin + dashes[i] * UnitsPerMillimetre;
            if (i % 2 == 0)
                measure.GetSegment((float)begin, (float)end, dashed, startWithMoveTo: true);
            begin = end;
        }

        return dashed.Detach();
    }

    // To a tenth of a unit: digits beyond would only make pages larger.
    private static float Units(double millimetres) => (float)Math.Round(millimetres * UnitsPerMillimetre, 1);

    private static SKPoint Point(PaperPoint point) => new(Units(point.X), Units(point.Y));

    private static SKPaint LinePaint(LineStyle style) => new()
    {
        Style = SKPaintStyle.Stroke,
        StrokeWidth = Units(style.WidthMillimetres),
        StrokeCap = SKStrokeCap.Butt,
        StrokeJoin = SKStrokeJoin.Miter,
        StrokeMiter = Inks.MitreLimit,
        Color = Ink,
        IsAntialias = true,
    };

    private static SKPaint Fill(SKColor colour) => new() { Style = SKPaintStyle.Fill, Color = colour, IsAntialias = true };
}
