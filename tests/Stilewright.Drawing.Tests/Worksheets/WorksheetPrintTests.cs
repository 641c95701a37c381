using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Worksheets;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Drawing.Tests.Worksheets;

public sealed class WorksheetPrintTests
{
    private const double Shrunk = 0.05;
    private const double WritingRoom = 8;
    private static readonly DateTimeOffset Now = new(2026, 11, 28, 9, 0, 0, TimeSpan.Zero);

    public static TheoryData<LengthUnit, int, string> Levels
    {
        get
        {
            TheoryData<LengthUnit, int, string> data = [];
            foreach (var unit in Enum.GetValues<LengthUnit>())
            {
                foreach (var level in Teaching.Worksheets.Levels.For(unit))
                    data.Add(unit, level.Number, level.Number % 2 == 0 ? "Letter" : "A4");
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void Worksheets_and_their_key_are_clean(LengthUnit unit, int number, string paperName)
    {
        var paper = paperName == "A4" ? Paper.A4 : Paper.Letter;
        Worksheet[] sheets = [.. RandomWorksheets.Of(Teaching.Worksheets.Levels.For(unit)[number - 1], 5).Take(3)];
        var pages = WorksheetPrint.Of(sheets, paper, TeachingContents.SheetsAndKey, "0.1.0", Now).Pages.Select(page => page.Scene).ToList();
        Assert.All(pages, page => IsClean(page, paper));
        // Each bench has a sheet of its own, and the key comes after all of them.
        Assert.Equal(["Bench 1", "Bench 2", "Bench 3"], pages.Where(page => page.Title.StartsWith("Bench", StringComparison.Ordinal)).Select(page => page.Title.Split(',')[0]).Distinct());
        Assert.DoesNotContain(pages.SkipWhile(page => !page.Title.EndsWith(": key", StringComparison.Ordinal)), page => page.Title.StartsWith("Bench", StringComparison.Ordinal));
        var key = string.Join('\n', pages.Where(page => page.Title.EndsWith(": key", StringComparison.Ordinal)).SelectMany(Texts));
        foreach (var line in sheets.SelectMany(sheet => sheet.Lines.Where(line => line.Letter.Length > 0), (sheet, line) => WorkedText.Figure(line.Quantity, sheet.Format)))
            Assert.Contains(line, key, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Levels))]
    public void A_maker_has_room_to_write_and_is_told_no_result(LengthUnit unit, int number, string paperName)
    {
        var paper = paperName == "A4" ? Paper.A4 : Paper.Letter;
        foreach (var sheet in RandomWorksheets.Of(Teaching.Worksheets.Levels.For(unit)[number - 1], 6).Take(2))
        {
            var pages = WorksheetPrint.Of([sheet], paper, TeachingContents.SheetsOnly, "0.1.0", Now).Pages.Select(page => page.Scene).ToList();
            Assert.All(pages, HasWritingRoom);
            var lines = pages.Sum(page => WritingLines(page).Count);
            Assert.Equal(3 + sheet.Lines.Sum(line => line.Pieces.Count(piece => piece is LinePiece.ToFill or LinePiece.Carried)), lines);
            string[] told = [.. sheet.Givens.Select(given => WorkedText.Figure(given.Quantity, sheet.Format))];
            foreach (var mark in pages.SelectMany(page => page.Drawn).Select(drawn => drawn.Node).OfType<DimensionMark>())
                AssertAskedOrGiven(mark, sheet, told);
        }
    }

    [Fact]
    public void The_key_alone_is_the_key_of_the_whole_print()
    {
        Worksheet[] sheets = [.. RandomWorksheets.Of(Teaching.Worksheets.Levels.Inch[1], 5).Take(3)];
        string[] Titles(TeachingContents contents) => [.. WorksheetPrint.Of(sheets, Paper.A4, contents, "0.1.0", Now).Pages.Select(page => page.Scene.Title)];
        var (all, only, key) = (Titles(TeachingContents.SheetsAndKey), Titles(TeachingContents.SheetsOnly), Titles(TeachingContents.KeyOnly));
        Assert.NotEmpty(key);
        Assert.Equal(all, only.Concat(key));
        Drill[] drills = [.. Enumerable.Range(1, 2).Select(bench => DrillMaker.Of(new(LengthUnit.Inch, 16, [DrillKind.Add]), 3, bench))];
        Assert.Equal(3, DrillPrint.Of(drills, Paper.A4, TeachingContents.SheetsAndKey, "0.1.0", Now).Pages.Count());
        Assert.EndsWith(": key", Assert.Single(DrillPrint.Of(drills, Paper.A4, TeachingContents.KeyOnly, "0.1.0", Now).Pages).Scene.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void Dimensions_of_a_worksheet_bear_the_letters_of_its_lines()
    {
        var sheet = RandomWorksheets.Of(Teaching.Worksheets.Levels.Inch[2], 7).First();
        Scale scale = new(8);
        Assert.Equal(["a", "b", "c", "c", "opening 27 3/4", "opening 34", "1/4"], Letters(WorksheetFigures.Front(sheet, scale)));
        Assert.Equal(["b", "c", "e", "g", "2", "2", "2 1/4", "2 1/4"], Letters(WorksheetFigures.Leaf(sheet, scale)));
        Assert.DoesNotContain("14 1/4", WorksheetFigures.Leaf(sheet, scale).Description, StringComparison.Ordinal);

        static IEnumerable<string> Letters(Scene scene) => scene.Drawn.Select(drawn => drawn.Node).OfType<DimensionMark>().Select(mark => mark.Text.Line.Text)
            .OrderBy(text => text.Any(char.IsDigit)).ThenBy(text => !text.StartsWith("opening", StringComparison.Ordinal)).ThenBy(text => text, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(LengthUnit.Inch, 2)]
    [InlineData(LengthUnit.Inch, 16)]
    [InlineData(LengthUnit.Inch, 32)]
    [InlineData(LengthUnit.Millimetre, 1)]
    [InlineData(LengthUnit.Millimetre, 2)]
    public void Drills_and_their_key_are_clean(LengthUnit unit, int finest)
    {
        foreach (var paper in new[] { Paper.A4, Paper.Letter })
        {
            Drill[] drills = [.. Enumerable.Range(1, 3).Select(bench => DrillMaker.Of(new(unit, finest, Enum.GetValues<DrillKind>(), 7), 3, bench))];
            var pages = DrillPrint.Of(drills, paper, TeachingContents.SheetsAndKey, "0.1.0", Now).Pages.Select(page => page.Scene).ToList();
            Assert.All(pages, page => IsClean(page, paper));
            Assert.All(pages, HasWritingRoom);
            Assert.Equal(3 * (3 + drills[0].Items.Count), pages.Sum(page => WritingLines(page).Count));
        }
    }

    [Theory]
    [InlineData(LengthUnit.Inch, 8)]
    [InlineData(LengthUnit.Inch, 32)]
    [InlineData(LengthUnit.Millimetre, 2)]
    public void A_rule_is_true_and_its_arrow_stands_at_the_answer(LengthUnit unit, int finest)
    {
        foreach (var item in DrillMaker.Of(new(unit, finest, [DrillKind.ReadRule], 10), 9, 1).Items)
        {
            var scene = RuleFigure.Draw(item);
            var strokes = scene.Drawn.Select(drawn => drawn.Node).OfType<Shape>().Where(shape => shape.Line == LineStyle.Rule).Select(shape => shape.Outline).OrderBy(line => line.Start.X).ToList();
            // 25.4 mm on paper for every inch.
            var (count, step) = unit == LengthUnit.Inch ? (4 * finest, 25.4 / finest) : (100 * finest, 1.0 / finest);
            Assert.Equal(count + 1, strokes.Count);
            for (var i = 0; i <= count; i++)
                Assert.Equal(strokes[0].Start.X + i * step, strokes[i].Start.X, 1e-6);
            var answer = (unit == LengthUnit.Inch ? item.Answer.Inches.ToDouble() * 25.4 : item.Answer.Millimetres.ToDouble());
            var arrow = Assert.Single(scene.Drawn.Select(drawn => drawn.Node).OfType<Shape>(), shape => shape.Fill == Tone.Ink);
            Assert.Equal(strokes[0].Start.X + answer, arrow.Outline.Start.X, 1e-6);
            // A whole one is longest, and nothing is longer than what it divides.
            double Long(int i) => strokes[i].Bounds.Height;
            var whole = unit == LengthUnit.Inch ? finest : 10 * finest;
            Assert.All(Enumerable.Range(1, whole - 1), i => Assert.True(Long(i) < Long(0)));
            if (unit == LengthUnit.Inch)
                Assert.All(Enumerable.Range(1, whole - 1), i => Assert.Equal(Long(i) < Long(whole / 2), i != whole / 2));
        }

        Assert.Throws<ArgumentException>(() => RuleFigure.Draw(DrillMaker.Of(new(LengthUnit.Inch, 8, [DrillKind.Add], 1), 1, 1).Items[0]));
    }

    private static void AssertAskedOrGiven(DimensionMark mark, Worksheet sheet, string[] told)
    {
        var words = mark.Text.Line.Text;
        Assert.Equal(mark.Scale.OnPaper(mark.Value), mark.From.DistanceTo(mark.To), 1e-6);
        if (sheet.Lines.FirstOrDefault(line => line.Letter == words) is { } line)
            Assert.Equal(line.Quantity.Length, mark.Value);
        else
            Assert.Contains(words.Replace("opening ", "", StringComparison.Ordinal), told);
    }

    private static void IsClean(Scene page, Paper paper)
    {
        var printed = paper.Printed.Grown(LineStyle.Heavy.WidthMillimetres);
        Lettering[] texts = [.. Letterings(page)];
        Assert.All(texts, text => Assert.True(printed.Holds(text.Box), $"'{text.Line.Text}' leaves the print of {page.Title}, {page.Description}"));
        for (var i = 0; i < texts.Length; i++)
        {
            for (var j = i + 1; j < texts.Length; j++)
            {
                Assert.False(texts[i].Box.Grown(-Shrunk).Overlaps(texts[j].Box.Grown(-Shrunk)),
                    $"'{texts[i].Line.Text}' and '{texts[j].Line.Text}' overlap on {page.Title}, {page.Description}");
            }
        }
    }

    private static void HasWritingRoom(Scene page)
    {
        foreach (var line in WritingLines(page))
        {
            var room = new PaperBox(line.Left, line.Top - WritingRoom, line.Width, WritingRoom).Grown(-Shrunk);
            Assert.All(Letterings(page), text => Assert.False(text.Box.Overlaps(room), $"'{text.Line.Text}' stands where a figure is written, on {page.Title}, {page.Description}"));
        }
    }

    // Narrow level lines outside of the drawings.
    private static List<PaperBox> WritingLines(Scene page) =>
        [.. Outside(page.Nodes, default).Where(box => box.Height == 0 && box.Width >= 18)];

    private static IEnumerable<PaperBox> Outside(IEnumerable<SceneNode> nodes, PaperPoint at)
    {
        foreach (var node in nodes)
        {
            // Drawings say what they are.
            if (node is SceneGroup { Title: null } group)
            {
                foreach (var box in Outside(group.Children, at + group.At))
                    yield return box;
            }
            else if (node is Shape { Line: LineStyle.Edge, Outline.IsClosed: false } shape)
            {
                yield return shape.Outline.Shifted(at).Bounds;
            }
        }
    }

    private static IEnumerable<Lettering> Letterings(Scene page) => page.Drawn
        .Select(drawn => (Text: drawn.Node switch { Lettering text => text, DimensionMark mark => mark.Text, _ => null }, drawn.At))
        .Where(each => each.Text is { Line.Text.Length: > 0 }).Select(each => each.Text! with { At = each.Text.At + each.At });

    private static IEnumerable<string> Texts(Scene page) => Letterings(page).Select(text => text.Line.Text);
}
