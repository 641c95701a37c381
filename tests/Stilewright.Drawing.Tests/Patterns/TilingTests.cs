using System.Globalization;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Tests.Writing;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Stilewright.Drawing.Tests.Patterns;

public sealed class TilingTests : IDisposable
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const double CrossMillimetres = 8;

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("letter")]
    [InlineData("legal")]
    [InlineData("a4")]
    [InlineData("a3")]
    public void Sheets_laid_together_by_their_crosses_are_the_pattern(string paperName)
    {
        var paper = PatternPaper.All.Single(each => each.Name == paperName);
        ArchFamily[] families = [ArchFamily.Eyebrow, ArchFamily.Cathedral, ArchFamily.Pointed, ArchFamily.HalfRound];
        foreach (var pattern in families.SelectMany(family => new[] { PatternSamples.Rail(family), PatternSamples.Panel(family) }))
        {
            var tiled = new Tiling(paper, PrintCorrection.None, LengthUnit.Inch).Lay([pattern], "bench 1").First().Tiled;
            using var pdf = PdfDocument.Open(PatternSamples.Pdf(tiled.Sheets));
            var sheets = pdf.GetPages().Select(Sheet.Of).ToList();
            Assert.Equal(tiled.Rows * tiled.Columns, sheets.Count);

            // Where each sheet lies against the first, from cross to cross; both crosses of an overlap agree.
            PaperPoint?[] shifts = new PaperPoint?[sheets.Count];
            shifts[0] = new PaperPoint(0, 0);
            for (var i = 1; i < sheets.Count; i++)
            {
                var (row, column) = Math.DivRem(i, tiled.Columns);
                foreach (var before in new[] { column > 0 ? i - 1 : -1, row > 0 ? i - tiled.Columns : -1 }.Where(each => each >= 0))
                {
                    var common = sheets[before].Crosses.Keys.Intersect(sheets[i].Crosses.Keys).ToList();
                    Assert.Equal(2, common.Count);
                    foreach (var name in common)
                    {
                        var shift = shifts[before]!.Value + sheets[before].Crosses[name] - sheets[i].Crosses[name];
                        shifts[i] ??= shift;
                        Assert.InRange(shifts[i]!.Value.DistanceTo(shift), 0, 0.002);
                    }
                }
            }

            // The overall dimension's crosses, on whatever sheets they are, and the wide line on every sheet.
            var places = sheets.SelectMany((sheet, i) => sheet.Strokes.Select(stroke => (From: stroke.From + shifts[i]!.Value, To: stroke.To + shifts[i]!.Value))).ToList();
            var ends = CrossesIn(places).ToList();
            var (from, to) = pattern.Crosses;
            var first = ends.Where(cross => ends.Exists(other => (other - cross).DistanceTo(to - from) < PatternSamples.HeldMillimetres)).ToList();
            Assert.NotEmpty(first);
            var origin = first[0] - from;
            Assert.True(sheets.Sum(sheet => sheet.Wide.Count) >= 9);
            for (var i = 0; i < sheets.Count; i++)
            {
                foreach (var point in sheets[i].Wide)
                    Assert.InRange(PatternSamples.Off(pattern, pattern.Lines[0].Chain, point + shifts[i]!.Value - origin), 0, PatternSamples.HeldMillimetres);
            }
        }
    }

    // Nothing has to be taped to read it: tables, what is told of the set-down, and what the pattern says of itself.
    [Theory]
    [InlineData("letter")]
    [InlineData("legal")]
    [InlineData("a4")]
    [InlineData("a3")]
    public void Every_text_of_a_table_or_a_label_is_whole_on_one_sheet(string paperName)
    {
        var paper = PatternPaper.All.Single(each => each.Name == paperName);
        var patterns = PatternSamples.Printed.Concat(PatternSamples.Sample).Select(each => each.Pattern).ToList();
        var severalSheets = 0;
        foreach (var pattern in patterns)
        {
            var sheets = new Tiling(paper, PrintCorrection.None, LengthUnit.Inch).Lay([pattern], "bench 1").SelectMany(laid => laid.Tiled.Sheets).ToList();
            severalSheets += sheets.Count > 2 ? 1 : 0;
            var whole = sheets.SelectMany(Whole).ToHashSet(StringComparer.Ordinal);
            var wanted = pattern.Layers.Blocks.SelectMany(block => block.Nodes).Concat(pattern.Layers.Label);
            Assert.All(Drawn.Texts(new Scene("", "", 0, 0, [.. wanted])), text => Assert.True(whole.Contains(text.Line.Text), $"{pattern.Scene.Title}: {text.Line.Text}"));
        }

        Assert.True(severalSheets > 3);
    }

    [Fact]
    public void Narrow_patterns_stand_side_by_side_on_a_roll()
    {
        var narrow = PatternSamples.Printed.Where(each => each.Pattern.Scene.WidthMillimetres < 180).Select(each => each.Pattern).Take(3).ToList();
        var one = Assert.Single(new Tiling(PatternPaper.Roll(610), PrintCorrection.None, LengthUnit.Inch).Lay(narrow, "bench 1"));
        Assert.Equal(narrow.Select(pattern => pattern.Scene.Title), one.Titles);
        var sheet = Assert.Single(one.Tiled.Sheets);
        var wide = Drawn.Lines(sheet, LineStyle.Visible).Select(line => line.Bounds).OrderBy(box => box.Left).ToList();
        Assert.Equal(3, wide.Count);
        Assert.All(wide.Zip(wide.Skip(1)), pair => Assert.True(pair.First.Right + 10 < pair.Second.Left));
        Assert.Equal(narrow.Select(pattern => pattern.Lines[0].Chain.Box.Width * 25.4), wide.Select(box => box.Width), (was, now) => Math.Abs(was - now) < PatternSamples.HeldMillimetres);
        // On a roll that is too narrow for two each has a stretch of its own.
        Assert.Equal(3, new Tiling(PatternPaper.Roll(215), PrintCorrection.None, LengthUnit.Inch).Lay(narrow, "bench 1").Count());
    }

    private static IEnumerable<string> Whole(Scene sheet)
    {
        return Walk(sheet.Nodes, default, new(0, 0, sheet.WidthMillimetres, sheet.HeightMillimetres));

        static IEnumerable<string> Walk(IEnumerable<SceneNode> nodes, PaperPoint at, PaperBox shown) => nodes.SelectMany(node => node switch
        {
            SceneGroup group => Walk(group.Children, at + group.At, group.Clip is { } clip ? clip.Shifted(at.X + group.At.X, at.Y + group.At.Y) : shown),
            Lettering text when shown.Holds(text.Box.Shifted(at.X, at.Y)) => [text.Line.Text],
            _ => Enumerable.Empty<string>(),
        });
    }

    [Fact]
    public void A_correction_stretches_every_length_by_itself()
    {
        PrintCorrection correction = new(1.005, 0.9975);
        foreach (var pattern in new[] { PatternSamples.Rail(ArchFamily.Eyebrow), PatternSamples.Panel(ArchFamily.Eyebrow) })
        {
            var sheet = Assert.Single(new Tiling(PatternPaper.Roll(1100), correction, LengthUnit.Millimetre).Lay(pattern.Scene, "bench 1").Sheets);
            using var pdf = PdfDocument.Open(PatternSamples.Pdf([sheet]));
            var ends = CrossesIn(Sheet.Of(pdf.GetPage(1)).Strokes, correction).ToList();
            var wanted = pattern.Crosses.To - pattern.Crosses.From;
            PaperPoint stretched = new(wanted.X * correction.Across, wanted.Y * correction.Along);
            Assert.Contains(ends, cross => ends.Exists(other => (other - cross).DistanceTo(stretched) < PatternSamples.HeldMillimetres));
            Assert.Contains("corrected for the printer by +0.50 % across and −0.25 % along",
                string.Join(' ', Drawn.Texts(sheet).Select(text => text.Line.Text)), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("letter", 1)]
    [InlineData("legal", 1.02)]
    [InlineData("a4", 0.98)]
    [InlineData("a3", 1.02)]
    public void Margins_are_kept_clear_on_every_sheet(string paperName, double factor)
    {
        const double DotsPerMillimetre = 4;
        var paper = PatternPaper.All.Single(each => each.Name == paperName);
        var tiling = new Tiling(paper, new(factor, factor), LengthUnit.Inch);
        var file = Path.Combine(folder, "pattern.pdf");
        File.WriteAllBytes(file, PatternSamples.Pdf(new[] { PatternSamples.Rail(ArchFamily.Cathedral), PatternSamples.Panel(ArchFamily.Cathedral) }
            .SelectMany(pattern => tiling.Lay([pattern], "bench 12, kitchen of the workshop, revision 1a2b3c4d").SelectMany(laid => laid.Tiled.Sheets))));
        Installed.Run(["pdftoppm"], "-gray", "-r", (DotsPerMillimetre * 25.4).ToString(CultureInfo.InvariantCulture), file, Path.Combine(folder, "page"));
        var pictures = Directory.GetFiles(folder, "*.pgm");
        Assert.True(pictures.Length >= 2);
        foreach (var picture in pictures)
        {
            var page = GreyPicture.Read(File.ReadAllBytes(picture));
            var margin = (int)(PatternPaper.Margin * DotsPerMillimetre) - 1;
            var dark = Enumerable.Range(0, page.Dots.Length).Count(i => page.Dots[i] < 250
                && (i % page.Width < margin || i % page.Width >= page.Width - margin || i / page.Width < margin || i / page.Width >= page.Height - margin));
            Assert.Equal(0, dark);
        }
    }

    [Theory]
    [InlineData(LengthUnit.Inch, 152.4)]
    [InlineData(LengthUnit.Millimetre, 150)]
    public void Every_sheet_has_a_long_rule_along_both_edges(LengthUnit unit, double millimetres)
    {
        foreach (var paper in PatternPaper.All.Append(PatternPaper.Roll(610)))
        {
            foreach (var sheet in new Tiling(paper, PrintCorrection.None, unit).Lay([PatternSamples.Rail(ArchFamily.Eyebrow)], "bench 1").SelectMany(laid => laid.Tiled.Sheets))
            {
                using var pdf = PdfDocument.Open(PatternSamples.Pdf([sheet]));
                var strokes = Sheet.Of(pdf.GetPage(1)).Strokes;
                Assert.Contains(strokes, stroke => stroke.From.Y == stroke.To.Y && Math.Abs(stroke.From.DistanceTo(stroke.To) - millimetres) < 0.001);
                Assert.Contains(strokes, stroke => stroke.From.X == stroke.To.X && Math.Abs(stroke.From.DistanceTo(stroke.To) - millimetres) < 0.001);
            }
        }
    }

    [Fact]
    public void Corrections_come_from_the_prints_that_were_measured()
    {
        var printer = new Printer("office", "Office", LengthUnit.Millimetre,
        [
            new(PaperFeed.ShortEdge, new("150", Length.FromMillimetres(150)), new("149.2", Length.FromMillimetres(new(1492, 10))), new("150.4", Length.FromMillimetres(new(1504, 10)))),
        ]);
        var correction = PrintCorrection.Of(printer, PaperFeed.ShortEdge);
        Assert.Equal((150 / 149.2, 150 / 150.4), (correction.Across, correction.Along), (one, other) => Math.Abs(one.Item1 - other.Item1) + Math.Abs(one.Item2 - other.Item2) < 1e-12);
        Assert.Equal(PrintCorrection.None, PrintCorrection.Of(printer, PaperFeed.LongEdge));
    }

    private static IEnumerable<PaperPoint> CrossesIn(IReadOnlyList<(PaperPoint From, PaperPoint To)> strokes, PrintCorrection? correction = null)
    {
        var (across, along) = (CrossMillimetres * (correction?.Across ?? 1), CrossMillimetres * (correction?.Along ?? 1));
        var level = strokes.Where(stroke => Math.Abs(stroke.From.Y - stroke.To.Y) < 0.002 && Math.Abs(stroke.From.DistanceTo(stroke.To) - across) < 0.005).ToList();
        var upright = strokes.Where(stroke => Math.Abs(stroke.From.X - stroke.To.X) < 0.002 && Math.Abs(stroke.From.DistanceTo(stroke.To) - along) < 0.005).ToList();
        return from one in level
               let middle = (one.From + one.To) * 0.5
               where upright.Exists(other => ((other.From + other.To) * 0.5).DistanceTo(middle) < 0.005)
               select middle;
    }

    /// <summary>A page as another program reads it, in millimetres from its top left corner.</summary>
    private sealed record Sheet(
        IReadOnlyDictionary<string, PaperPoint> Crosses, IReadOnlyList<(PaperPoint From, PaperPoint To)> Strokes, IReadOnlyList<PaperPoint> Wide)
    {
        public static Sheet Of(Page page)
        {
            PaperPoint Paper(PdfPoint point) => new(point.X / PointsPerMillimetre, (page.Height - point.Y) / PointsPerMillimetre);
            var strokes = page.Paths.SelectMany(path => path).SelectMany(path => path.Commands).OfType<PdfSubpath.Line>()
                .Select(line => (From: Paper(line.From), To: Paper(line.To))).ToList();
            var stroked = page.Paths.Where(path => path.IsStroked).ToList();
            var widest = stroked.Max(path => path.LineWidth);
            List<PaperPoint> wide = [];
            foreach (var command in stroked.Where(path => path.LineWidth > widest * 0.99).SelectMany(path => path).SelectMany(path => path.Commands))
            {
                switch (command)
                {
                    case PdfSubpath.Line line:
                        wide.AddRange([Paper(line.From), Paper(line.To)]);
                        break;
                    case PdfSubpath.CubicBezierCurve curve:
                        for (var i = 0; i <= 8; i++)
                            wide.Add(OnCurve(Paper(curve.StartPoint), Paper(curve.FirstControlPoint), Paper(curve.SecondControlPoint), Paper(curve.EndPoint), i / 8.0));
                        break;
                }
            }

            // Each cross is named right below it.
            var words = page.GetWords().ToList();
            Dictionary<string, PaperPoint> crosses = [];
            foreach (var cross in CrossesIn(strokes))
            {
                var below = words.Where(word => Paper(word.BoundingBox.Centroid) is var at && Math.Abs(at.X - cross.X) < 6 && at.Y - cross.Y is > 3 and < 8).ToList();
                var name = string.Join(' ', below.OrderBy(word => word.BoundingBox.Left).Select(word => word.Text));
                if (name.Contains('-', StringComparison.Ordinal))
                    crosses[name] = cross;
            }

            return new(crosses, strokes, wide);
        }

        private static PaperPoint OnCurve(PaperPoint from, PaperPoint first, PaperPoint second, PaperPoint to, double t)
        {
            var s = 1 - t;
            return from * (s * s * s) + first * (3 * s * s * t) + second * (3 * s * t * t) + to * (t * t * t);
        }
    }
}
