using System.Text;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Outline;

namespace Stilewright.Drawing.Tests.Packets;

/// <summary>The sample's packet as it is handed out, read by a reader that did not write it.</summary>
public sealed class PacketPdfTests
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const double ThousandthOfAnInch = 0.0254;
    private const double SamePlaceMillimetres = 0.005;

    private static readonly Breakdown Sample = Breakdown.Of(Drawn.SampleCourse(), ShippedStandards.Inch);
    private static readonly PdfFacts Facts = new(
        Sample.Course.Name, "Drawings, parts and working", null, "doors, cut list", "Stilewright 0.1.0", new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));

    private static readonly Dictionary<string, Lazy<Printed>> Packets = new[] { Paper.Letter, Paper.A4 }
        .ToDictionary(paper => paper.Name, paper => new Lazy<Printed>(() => Print(paper)));

    public static TheoryData<string> Papers { get; } = ["Letter", "A4"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Pages_facts_and_bookmarks_are_those_of_the_packet(string name)
    {
        var (paper, sheets, pdf, pages) = Packets[name].Value;
        Assert.Equal(sheets.Count, pdf.NumberOfPages);
        Assert.All(pages, page =>
        {
            Assert.Equal(paper.WidthMillimetres * PointsPerMillimetre, page.Width, 0.001);
            Assert.Equal(paper.HeightMillimetres * PointsPerMillimetre, page.Height, 0.001);
        });
        var facts = pdf.Information;
        Assert.Equal((Facts.Title, Facts.Subject, Facts.Keywords, Facts.Program), (facts.Title, facts.Subject, facts.Keywords, facts.Creator));
        Assert.Equal(Facts.Created, facts.GetCreatedDateTimeOffset());

        // One for every project and below it one for every leaf, each on a page of its own that begins with its title.
        var bookmarks = Bookmarks(pdf);
        Assert.Equal(Sample.Course.Name, bookmarks[0].Title);
        foreach (var project in Sample.Projects)
        {
            var own = Assert.Single(bookmarks, mark => mark.Level == 0 && mark.Title == $"Bench {project.Project.Bench}, {project.Project.Name}");
            Assert.Contains(Plain(own.Title), Text(pages[own.PageNumber - 1]), StringComparison.Ordinal);
            var leaves = bookmarks.SkipWhile(mark => mark != own).Skip(1).TakeWhile(mark => mark.Level > 0).ToList();
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves))
            {
                var mark = Assert.Single(leaves, mark => mark.Title == $"Leaf {leaf.Label}, {leaf.Name}");
                Assert.Contains(Plain(mark.Title), Text(pages[mark.PageNumber - 1]), StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_part_has_its_label_and_three_sizes_on_the_pages_of_its_leaf(string name)
    {
        var (_, _, pdf, pages) = Packets[name].Value;
        var bookmarks = Bookmarks(pdf);
        var count = 0;
        foreach (var project in Sample.Projects)
        {
            var words = new TradeWords(FormatOf(project));
            foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves).Where(leaf => !leaf.IsWithheld))
            {
                var mark = bookmarks.FindIndex(mark => mark.Title == $"Leaf {leaf.Label}, {leaf.Name}");
                var (first, next) = (bookmarks[mark].PageNumber, bookmarks.Skip(mark + 1).Select(after => after.PageNumber).FirstOrDefault(pdf.NumberOfPages + 1));
                var text = string.Concat(Enumerable.Range(first, next - first).Select(number => Text(pages[number - 1])));
                foreach (var part in leaf.Parts)
                {
                    Assert.Contains(Plain(part.Label), text, StringComparison.Ordinal);
                    Assert.Contains(Plain(words.Of(part.Finished)), text, StringComparison.Ordinal);
                    Assert.Contains(Plain(words.Of(part.GlueUp)), text, StringComparison.Ordinal);
                    Assert.Contains(Plain(words.Of(part.Rough)), text, StringComparison.Ordinal);
                    count++;
                }
            }
        }

        Assert.True(count > 100);
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_dimension_line_measures_its_length_at_the_scale_of_its_drawing(string name)
    {
        var (_, sheets, _, pages) = Packets[name].Value;
        var count = 0;
        for (var i = 0; i < sheets.Count; i++)
        {
            var marks = sheets[i].Scene.Drawn.Where(drawn => drawn.Node is DimensionMark).Select(drawn => (Mark: (DimensionMark)drawn.Node, drawn.At)).ToList();
            if (marks.Count == 0)
                continue;
            var page = pages[i];
            var lines = Lines(page).ToList();
            var text = Text(page);
            foreach (var (mark, at) in marks)
            {
                // Found by where it begins and which way it goes; how far it goes is what is asked.
                var (from, to) = (mark.From + at, mark.To + at);
                var found = lines.Where(line => line.From.DistanceTo(from) < SamePlaceMillimetres && IsSameWay(line.To - line.From, to - from))
                    .Select(line => line.From.DistanceTo(line.To) * mark.Scale.Reduction).ToList();
                var length = Scale.FullSize.OnPaper(mark.Value);
                Assert.True(found.Any(measured => Math.Abs(measured - length) < ThousandthOfAnInch),
                    $"Page {i + 1}: no line of {mark.Text.Line.Text} at {mark.Scale}; those there measure {string.Join(", ", found)} mm.");
                Assert.Contains(Plain(mark.Text.Line.Text), text, StringComparison.Ordinal);
                count++;
            }
        }

        Assert.True(count > 300, $"{count} dimensions");

        static bool IsSameWay(PaperPoint one, PaperPoint other) =>
            Math.Abs(one.X * other.Y - one.Y * other.X) < 0.01 * double.Hypot(one.X, one.Y) * double.Hypot(other.X, other.Y) && one.X * other.X + one.Y * other.Y > 0;
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Nothing_is_printed_outside_the_margins(string name)
    {
        var (paper, _, _, pages) = Packets[name].Value;
        var printed = paper.Printed.Grown(LineStyle.Heavy.WidthMillimetres);
        foreach (var page in pages)
        {
            Assert.NotEmpty(page.Letters);
            foreach (var letter in page.Letters)
                Assert.True(printed.Holds(Box(letter.BoundingBox, page)), $"Page {page.Number}: '{letter.Value}' at {Box(letter.BoundingBox, page)}");
            foreach (var path in page.Paths.Where(path => !path.IsClipping))
            {
                foreach (var bounds in path.Select(part => part.GetBoundingRectangle()).OfType<PdfRectangle>())
                    Assert.True(printed.Holds(Box(bounds, page)), $"Page {page.Number}: a line at {Box(bounds, page)}");
            }
        }
    }

    private static Printed Print(Paper paper)
    {
        var sheets = Packet.OfCourse(Sample, new(Fingerprint.Of(Sample), "0.1.0", new(2026, 11, 25)), new(paper)).ToList();
        using var output = new MemoryStream();
        PdfWriter.Write(output, Facts, sheets.Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)));
        var pdf = PdfDocument.Open(output.ToArray());
        return new(paper, sheets, pdf, [.. pdf.GetPages()]);
    }

    private static List<DocumentBookmarkNode> Bookmarks(PdfDocument pdf)
    {
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        return [.. bookmarks.GetNodes().Cast<DocumentBookmarkNode>()];
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Lines(Page page) => page.Paths.Where(path => path.IsStroked)
        .SelectMany(path => path).SelectMany(part => part.Commands).OfType<PdfSubpath.Line>().Select(line => (At(line.From, page), At(line.To, page)));

    private static PaperPoint At(PdfPoint point, Page page) => new(point.X / PointsPerMillimetre, (page.Height - point.Y) / PointsPerMillimetre);

    private static PaperBox Box(PdfRectangle box, Page page)
    {
        PaperPoint[] corners = [At(box.TopLeft, page), At(box.TopRight, page), At(box.BottomLeft, page), At(box.BottomRight, page)];
        return PaperBox.Between(new(corners.Min(at => at.X), corners.Min(at => at.Y)), new(corners.Max(at => at.X), corners.Max(at => at.Y)));
    }

    private static string Text(Page page) => Plain(string.Concat(page.Letters.Select(letter => letter.Value)));

    /// <summary>Without the spaces at which lines may be broken; those between figures, as in 12 3/16, stay.</summary>
    private static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is '\u2044')
                plain.Append('/');
            else if (!char.IsWhiteSpace(text[i]) || (i > 0 && i + 1 < text.Length && char.IsAsciiDigit(text[i - 1]) && char.IsAsciiDigit(text[i + 1])))
                plain.Append(text[i]);
        }

        return plain.ToString();
    }

    private static LengthFormat FormatOf(ProjectBreakdown project) => new(project.Project.Unit ?? Sample.Course.Unit, project.Standard.Format.FinestDenominator);

    private sealed record Printed(Paper Paper, List<Sheet> Sheets, PdfDocument Pdf, List<Page> Pages);
}
