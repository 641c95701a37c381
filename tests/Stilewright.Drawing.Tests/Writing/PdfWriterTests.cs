using System.Text;
using CsCheck;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Outline;

namespace Stilewright.Drawing.Tests.Writing;

public sealed class PdfWriterTests
{
    private const double PointsPerMillimetre = 72 / 25.4;

    // Single precision at 300 mm is 0.00003 mm; a thousandth of an inch is what a drawing must hold.
    private const double ToleranceMillimetres = 0.001;
    private const double LetterToleranceMillimetres = 0.01;

    private static readonly PdfFacts Facts = new(
        "Packet — bench 4 (left)", "Face frames & doors", "Ünal", "doors, cut list", "Stilewright 1.2.3",
        new(2026, 3, 1, 23, 30, 5, TimeSpan.FromHours(-5)));

    [Fact]
    public void Pages_letters_and_lines_stand_where_the_scene_has_them() => Gen.Int.Sample(
        seed =>
        {
            Scene[] scenes = [.. Enumerable.Range(0, 3).Select(i => RandomScene.Of(unchecked(seed + i)))];
            using var pdf = PdfDocument.Open(Written(scenes.Select(scene => new PdfPage(scene, []))));
            Assert.Equal(scenes.Length, pdf.NumberOfPages);
            for (var i = 0; i < scenes.Length; i++)
            {
                var (scene, page) = (scenes[i], pdf.GetPage(i + 1));
                Assert.Equal(scene.WidthMillimetres * PointsPerMillimetre, page.Width, 0.001);
                Assert.Equal(scene.HeightMillimetres * PointsPerMillimetre, page.Height, 0.001);
                PaperPoint Paper(PdfPoint point) => new(point.X / PointsPerMillimetre, (page.Height - point.Y) / PointsPerMillimetre);

                var letters = page.Letters;
                var runs = scene.Drawn.SelectMany(Runs).ToList();
                Assert.Equal(string.Concat(runs.Select(run => run.Run.Text)), string.Concat(letters.Select(letter => letter.Value)));
                var at = 0;
                foreach (var (run, place) in runs)
                {
                    Assert.InRange(Paper(letters[at].StartBaseLine).DistanceTo(place), 0, LetterToleranceMillimetres);
                    at += run.Text.Length;
                }

                var written = page.Paths.SelectMany(path => path).SelectMany(path => path.Commands).OfType<PdfSubpath.Line>()
                    .Select(line => (From: Paper(line.From), To: Paper(line.To))).ToList();
                foreach (var (from, to) in scene.Drawn.SelectMany(SolidLines))
                {
                    Assert.Contains(written, line =>
                        line.From.DistanceTo(from) < ToleranceMillimetres && line.To.DistanceTo(to) < ToleranceMillimetres);
                }
            }
        },
        iter: 25);

    [Fact]
    public void Dashed_lines_begin_and_end_in_dashes_as_wide_as_their_style() => Gen.Int.Sample(
        seed =>
        {
            var random = new Random(seed);
            PaperPoint Place() => new(random.NextDouble() * 180 + 10, random.NextDouble() * 180 + 10);
            var (from, to) = (Place(), Place());
            LineStyle[] styles = [.. Enum.GetValues<LineStyle>().Where(each => each.DashesMillimetres.Count > 0)];
            var style = styles[random.Next(styles.Length)];
            var dashes = DashFit.For(Outline.Line(from, to), style);
            var scene = new Scene("Line", "One line", 200, 200, [new Shape(Outline.Line(from, to), style)]);
            using var pdf = PdfDocument.Open(Written([new(scene, [])]));
            var page = pdf.GetPage(1);
            var whole = from.DistanceTo(to);
            var drawn = page.Paths.SelectMany(path => path).SelectMany(path => path.Commands).OfType<PdfSubpath.Line>().Select(line => (From: Paper(line.From), To: Paper(line.To))).ToList();
            Assert.NotEmpty(drawn);
            Assert.InRange(drawn[0].From.DistanceTo(from), 0, ToleranceMillimetres);
            Assert.InRange(drawn[^1].To.DistanceTo(to), 0, ToleranceMillimetres);

            // All lie on the line, in their order, each as long as it should be.
            var at = 0.0;
            for (var i = 0; i < drawn.Count; i++)
            {
                var length = dashes.Count == 0 ? whole : dashes[2 * i % dashes.Count];
                Assert.Equal(at, drawn[i].From.DistanceTo(from), ToleranceMillimetres);
                Assert.Equal(whole - at, drawn[i].From.DistanceTo(to), ToleranceMillimetres);
                Assert.Equal(length, drawn[i].From.DistanceTo(drawn[i].To), ToleranceMillimetres);
                at += dashes.Count == 0 ? length : length + dashes[(2 * i + 1) % dashes.Count];
            }

            PaperPoint Paper(PdfPoint point) => new(point.X / PointsPerMillimetre, (page.Height - point.Y) / PointsPerMillimetre);
        },
        iter: 100);

    // ISO 129-1: figures are read from the bottom or from the right of the sheet.
    [Fact]
    public void Turned_text_reads_from_bottom_to_top()
    {
        var line = Typesetter.Set("Rail 12 3/16 in", TextStyle.Figure);
        var scene = new Scene("Text", "Turned", 100, 100, [new Lettering(new(40, 80), line, IsUpright: false)]);
        using var pdf = PdfDocument.Open(Written([new(scene, [])]));
        var page = pdf.GetPage(1);
        var letters = page.Letters.ToList();
        Assert.Equal(string.Concat(line.Runs.Select(run => run.Text)), string.Concat(letters.Select(letter => letter.Value)));
        Assert.All(letters, letter => Assert.Equal(letter.StartBaseLine.X, letter.EndBaseLine.X, LetterToleranceMillimetres));
        Assert.All(letters.Zip(letters.Skip(1)), pair => Assert.True(pair.Second.StartBaseLine.Y > pair.First.StartBaseLine.Y));
        Assert.Equal(80 - line.Width, (page.Height - letters[^1].EndBaseLine.Y) / PointsPerMillimetre, 0.05);

        // Heads of letters lie to the left of the baseline.
        Assert.All(letters.Where(letter => letter.Value == "R"), letter =>
        {
            Assert.Equal(40, letter.StartBaseLine.X / PointsPerMillimetre, LetterToleranceMillimetres);
            Assert.InRange(letter.BoundingBox.Centroid.X / PointsPerMillimetre, 40 - line.Ascent, 40);
        });
    }

    [Fact]
    public void Bookmarks_have_their_titles_levels_and_pages()
    {
        var page = RandomScene.Of(1);
        PdfPage[] pages =
        [
            new(page, [new("Course (of) ’26\\", 1), new("Bench 1", 2)]),
            new(page, [new("Door left", 3)]),
            new(page, []),
            new(page, [new("Bench 2", 2), new("Straight to four", 4)]),
            new(page, [new("Sheets × stock", 1)]),
        ];
        using var pdf = PdfDocument.Open(Written(pages));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var found = bookmarks.GetNodes().Cast<DocumentBookmarkNode>().Select(node => (node.Title, node.Level, node.PageNumber));
        Assert.Equal(
            [
                ("Course (of) ’26\\", 0, 1), ("Bench 1", 1, 1), ("Door left", 2, 2), ("Bench 2", 1, 4), ("Straight to four", 2, 4),
                ("Sheets × stock", 0, 5),
            ],
            found);
    }

    [Fact]
    public void Bookmarks_lead_to_their_pages_however_many_there_are()
    {
        var scene = new Scene("Page", "Empty", 100, 100, []);
        using var pdf = PdfDocument.Open(Written(Enumerable.Range(1, 150).Select(i => new PdfPage(scene, [new($"Page {i}", 1)]))));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(
            Enumerable.Range(1, 150).Select(i => ($"Page {i}", i)),
            bookmarks.GetNodes().Cast<DocumentBookmarkNode>().Select(node => (node.Title, node.PageNumber)));
    }

    [Fact]
    public void Facts_survive_the_list_of_contents()
    {
        var bytes = Written([new(RandomScene.Of(2), [new("One", 1)])]);
        using var pdf = PdfDocument.Open(bytes);
        var facts = pdf.Information;
        Assert.Equal((Facts.Title, Facts.Subject, Facts.Author, Facts.Keywords, Facts.Program),
            (facts.Title, facts.Subject, facts.Author, facts.Keywords, facts.Creator));
        Assert.StartsWith("SkiaSharp", facts.Producer, StringComparison.Ordinal);
        Assert.Equal(Facts.Created, facts.GetCreatedDateTimeOffset());

        var catalog = pdf.Structure.Catalog.CatalogDictionary.ToString();
        var text = Encoding.Latin1.GetString(bytes);
        Assert.Contains("/Lang (en)", text, StringComparison.Ordinal);
        Assert.Contains("Lang", catalog, StringComparison.Ordinal);
        Assert.Contains("/ViewerPreferences <</DisplayDocTitle true /PrintScaling /None>>", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_font_is_embedded_and_both_weights_are_told_apart()
    {
        var scene = new Scene("Fonts", "Two weights", 100, 50,
        [
            new Lettering(new(10, 10), Typesetter.Set("Regular", TextStyle.Body)),
            new Lettering(new(10, 20), Typesetter.Set("Strong", TextStyle.Body.Bold)),
        ]);
        var bytes = Written([new(scene, [])]);
        var text = Encoding.Latin1.GetString(bytes);
        Assert.Equal(2, text.Split("/Type /FontDescriptor").Length - 1);
        Assert.Equal(2, text.Split("/FontFile2 ").Length - 1);
        using var pdf = PdfDocument.Open(bytes);
        var names = pdf.GetPage(1).Letters.Select(letter => letter.FontName).Distinct().ToList();
        Assert.Equal(2, names.Count);
        Assert.All(names, name => Assert.Contains("SourceSans3", name, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_pages_give_the_same_bytes()
    {
        PdfPage[] pages = [.. Enumerable.Range(0, 12).Select(i => new PdfPage(RandomScene.Of(i), [new($"Page {i}", 1 + i % 3)]))];
        var alone = Written(pages);
        var together = new byte[4][];
        Parallel.For(0, together.Length, i => together[i] = Written(pages));
        Assert.All(together, bytes => Assert.Equal(alone, bytes));
    }

    [Fact]
    public void An_output_that_cannot_be_sought_gets_the_same_bytes()
    {
        PdfPage[] pages = [new(RandomScene.Of(5), [new("Five", 1)])];
        using var kept = new MemoryStream();
        using (var oneWay = new System.IO.Compression.BrotliStream(kept, System.IO.Compression.CompressionLevel.Fastest, leaveOpen: true))
            PdfWriter.Write(oneWay, Facts, pages);
        kept.Position = 0;
        using var back = new System.IO.Compression.BrotliStream(kept, System.IO.Compression.CompressionMode.Decompress);
        using var plain = new MemoryStream();
        back.CopyTo(plain);
        Assert.Equal(Written(pages), plain.ToArray());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    public void Cancelling_stops_before_the_next_page(int after)
    {
        using var source = new CancellationTokenSource();
        var progress = new Counted(count =>
        {
            if (count == after)
                source.Cancel();
        });
        if (after == 0)
            source.Cancel();
        var (asked, isDisposed) = (0, false);
        IEnumerable<PdfPage> Pages()
        {
            try
            {
                while (true)
                {
                    asked++;
                    yield return new(RandomScene.Of(asked), []);
                }
            }
            finally
            {
                isDisposed = true;
            }
        }

        using var output = new MemoryStream();
        Assert.ThrowsAny<OperationCanceledException>(() => PdfWriter.Write(output, Facts, Pages(), progress, source.Token));
        Assert.Equal(after, progress.Last);

        // The pages written, the one that was looked at and let go, those held ahead and the one that waits for room.
        Assert.InRange(asked, after, after + 1 + PdfWriter.PagesAhead + 1);
        Assert.True(isDisposed);
        Assert.DoesNotContain("%%EOF", Encoding.Latin1.GetString(output.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void A_failing_page_comes_through()
    {
        static IEnumerable<PdfPage> Pages()
        {
            yield return new(RandomScene.Of(1), []);
            throw new InvalidDataException("the third door");
        }

        using var output = new MemoryStream();
        Assert.Throws<InvalidDataException>(() => PdfWriter.Write(output, Facts, Pages()));
    }

    [Fact]
    public void A_document_without_pages_is_refused()
    {
        using var output = new MemoryStream();
        Assert.Throws<ArgumentException>(() => PdfWriter.Write(output, Facts, []));
    }

    [Fact]
    public void A_document_of_another_form_is_refused()
    {
        using var other = new MemoryStream(Encoding.Latin1.GetBytes("%PDF-1.7\ntrailer\n<</Root 1 0 R>>\nstartxref\n9\n%%EOF\n"));
        var refusal = Assert.Throws<InvalidDataException>(() => PdfUpdate.Append(other, 0, [], []));
        Assert.Contains("trailer", refusal.Message, StringComparison.Ordinal);
    }

    private static byte[] Written(IEnumerable<PdfPage> pages)
    {
        using var output = new MemoryStream();
        PdfWriter.Write(output, Facts, pages);
        return output.ToArray();
    }

    private static IEnumerable<(LetterRun Run, PaperPoint At)> Runs((SceneNode Node, PaperPoint At) drawn)
    {
        Lettering? lettering = drawn.Node switch
        {
            Lettering text => text,
            DimensionMark dimension => dimension.Text,
            _ => null,
        };
        return lettering is null ? [] : lettering.Line.Runs.Select(run => (run, drawn.At + lettering.At
            + (lettering.IsUpright ? new(run.Right, -run.Up) : new PaperPoint(-run.Up, -run.Right))));
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> SolidLines((SceneNode Node, PaperPoint At) drawn)
    {
        IEnumerable<(PaperPoint From, PaperPoint To)> lines = drawn.Node switch
        {
            Hatch hatch => hatch.Lines,
            DimensionMark dimension => dimension.Strokes.Select(stroke => (stroke.Start, stroke.Segments[0].End)),
            Shape { Line: { } style } shape when DashFit.For(shape.Outline, style).Count == 0 => StraightSegments(shape.Outline),
            _ => [],
        };
        return lines.Select(line => (line.From + drawn.At, line.To + drawn.At));
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> StraightSegments(Outline outline)
    {
        var from = outline.Start;
        foreach (var segment in outline.Segments)
        {
            if (segment is LineTo)
                yield return (from, segment.End);
            from = segment.End;
        }
    }

    private sealed class Counted(Action<int> onPage) : IProgress<int>
    {
        public int Last { get; private set; }

        public void Report(int value)
        {
            Last = value;
            onPage(value);
        }
    }
}
