using System.Globalization;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Drawing.Worksheets;

/// <summary>Lays a worksheet: the problem with its drawings, the given figures, then the lines with room to write.</summary>
internal static class WorksheetStrips
{
    // Larger drawings are easier to read; a smaller one is taken where that saves a sheet.
    private static readonly double[] DrawingHeights = [100, 88, 78, 70];
    private const double UsualDrawing = 88;
    private const double LetterWidth = 8;
    private const double ResultWidth = 32;
    private const double FigureWidth = 20;
    private const double UnderLine = 1;
    private const double UnderCarried = 3.6;
    private const double BetweenLines = 3.2;
    private static readonly TextStyle Words = new(3.8);
    private static readonly TextStyle Signs = new(5);

    /// <param name="height">Of a sheet's print.</param>
    public static IEnumerable<Strip> Of(Worksheet sheet, double width, double height)
    {
        // Every height that is tried asks for the same scales.
        Dictionary<Scale, Scene> fronts = [], leaves = [];
        Figure[] figures =
        [
            new("The front over its opening", Extent(sheet).Width, Extent(sheet).Height, scale => Once(fronts, scale, WorksheetFigures.Front)),
            new($"{(sheet.Front.Leaves.Count > 1 ? "One leaf" : "The leaf")}, seen from the front", sheet.Leaf.Width.Length, sheet.Leaf.Height.Length,
                scale => Once(leaves, scale, WorksheetFigures.Leaf)),
        ];
        Strip[] lines = [.. sheet.Lines.SelectMany(line => Line(line, sheet.Format, width))];
        foreach (var drawing in DrawingHeights)
        {
            Strip[] strips = [.. Lay(sheet, width, drawing, figures, lines)];
            if (strips.Sum(strip => strip.SpaceBefore + strip.Height) <= height)
                return strips;
        }

        return Lay(sheet, width, UsualDrawing, figures, lines);

        Scene Once(Dictionary<Scale, Scene> drawn, Scale scale, Func<Worksheet, Scale, Scene> draw) =>
            drawn.TryGetValue(scale, out var scene) ? scene : drawn[scale] = draw(sheet, scale);
    }

    private static IEnumerable<Strip> Lay(Worksheet sheet, double width, double drawing, Figure[] figures, Strip[] lines)
    {
        var bench = string.Create(CultureInfo.InvariantCulture, $"Bench {sheet.Bench}");
        var what = sheet.Seed is null ? $"leaf {sheet.Leaf.Label}" : $"level {sheet.Level.Number.ToString(CultureInfo.InvariantCulture)}, {Lower(sheet.Level.Name)}";
        return
        [
            .. SheetTop.Of($"{bench}: {what}", string.Create(CultureInfo.InvariantCulture, $"of {sheet.Marks}"), width, new Bookmark(bench, 1)),
            .. Prose.Paragraph(sheet.Problem, width, new TextStyle(4), above: 3),
            .. Prose.Paragraph(Task(sheet.Level.Style), width, above: 1),
            .. FigureStrips.Beside(figures, sheet.Format.Unit, width, drawing),
            .. Prose.First(Prose.Led("Given", string.Join("; ", sheet.Givens.Select(given => $"{given.Label} {WorkedText.Figure(given.Quantity, sheet.Format)}")) + ".", Words, width), 4),
            .. lines,
        ];
    }

    private static (Length Width, Length Height) Extent(Worksheet sheet) => (
        Length.Greatest(sheet.Front.Figure!.Width.Length, sheet.Front.Width!.Length), Length.Greatest(sheet.Front.Figure.Height.Length, sheet.Front.Height!.Length));

    private static string Lower(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static string Task(BlankStyle style) => style switch
    {
        BlankStyle.Results => "Work out each line. Where a small letter stands under a line, carry your own result of that line over.",
        BlankStyle.Figures => "Put every figure in its place, in the order of the words, and work out the result.",
        _ => "Find each size. Show your working beside it or on a sheet of its own.",
    };

    private static IEnumerable<Strip> Line(WorksheetLine line, LengthFormat format, double width)
    {
        if (line.Pieces.Count == 0)
        {
            foreach (var strip in Prose.Paragraph($"{line.Label} = {line.Formula}", width - LetterWidth, Words, above: BetweenLines))
                yield return strip.Within(LetterWidth, 0, strip.Height);
            yield break;
        }

        if (line.Pieces is [LinePiece.ToFill])
        {
            yield return Question(line, width);
            yield break;
        }

        var marks = Typesetter.Set(MarksOf(line), TextStyle.Small);
        var letter = Typesetter.Set(line.Letter, Words.Bold);
        var first = true;
        foreach (var strip in Prose.Wrapped($"{line.Label} = {line.Formula}", Words, width - LetterWidth - marks.Width - 4, 0, 0))
        {
            yield return strip with
            {
                Nodes =
                [
                    .. first ? [Strip.Put(letter, 0, 0), Strip.Put(marks, width - marks.Width, 0)] : Array.Empty<SceneNode>(),
                    new SceneGroup(null, null, strip.Nodes) { At = new(LetterWidth, 0) },
                ],
                SpaceBefore = first ? BetweenLines : 0,
                KeepWithNext = true,
            };
            first = false;
        }

        foreach (var strip in Figures(line, format, width))
            yield return strip;
    }

    private static string MarksOf(WorksheetLine line) => line.Marks == 1 ? "1 mark" : "2 marks";

    private static Strip Question(WorksheetLine line, double width)
    {
        const double WordsShare = 0.42;
        var letter = Typesetter.Set(line.Letter, Words.Bold);
        var lines = Typesetter.Wrap(line.Label, Words, width * WordsShare - LetterWidth - 2);
        var marks = Typesetter.Set(MarksOf(line), TextStyle.Small);
        var height = Math.Max(SheetTop.WritingHeight, lines.Sum(each => each.Pitch));
        List<SceneNode> nodes = [Strip.Put(letter, 0, height - lines.Sum(each => each.Pitch))];
        var top = height - lines.Sum(each => each.Pitch);
        foreach (var each in lines)
        {
            nodes.Add(Strip.Put(each, LetterWidth, top));
            top += each.Pitch;
        }

        nodes.Add(SheetTop.Line(width * WordsShare, width - marks.Width - 4, height));
        nodes.Add(Strip.Put(marks, width - marks.Width, height - marks.Height));
        return new(height + 1, nodes) { SpaceBefore = 1.5 };
    }

    // A piece is never broken; a line that is too long goes on below, before the sign that does not fit.
    private static IEnumerable<Strip> Figures(WorksheetLine line, LengthFormat format, double width)
    {
        List<SceneNode> nodes = [];
        var left = LetterWidth;
        List<Strip> rows = [];
        for (var i = 0; i < line.Pieces.Count; i++)
        {
            var needed = WidthOf(line.Pieces[i], format) + (line.Pieces[i] is LinePiece.Words && i + 1 < line.Pieces.Count ? WidthOf(line.Pieces[i + 1], format) : 0);
            if (left > LetterWidth && left + needed > width)
            {
                rows.Add(Row());
                left = LetterWidth * 2;
            }

            Put(line.Pieces[i]);
        }

        rows.Add(Row());
        for (var i = 0; i < rows.Count; i++)
            yield return rows[i] with { KeepWithNext = i + 1 < rows.Count };

        Strip Row()
        {
            var row = new Strip(SheetTop.WritingHeight + (line.Pieces.Any(piece => piece is LinePiece.Carried) ? UnderCarried : UnderLine), nodes);
            nodes = [];
            return row;
        }

        void Put(LinePiece piece)
        {
            var pieceWidth = WidthOf(piece, format);
            switch (piece)
            {
                case LinePiece.Words or LinePiece.Told:
                    var set = Set(piece, format);
                    nodes.Add(new Lettering(new(left, SheetTop.WritingHeight - 1), set));
                    break;
                case LinePiece.Carried carried:
                    nodes.Add(SheetTop.Line(left, left + pieceWidth, SheetTop.WritingHeight));
                    var under = Typesetter.Set(carried.Letter, TextStyle.Small);
                    nodes.Add(Strip.Put(under, left + (pieceWidth - under.Width) / 2, SheetTop.WritingHeight + 0.4));
                    break;
                default:
                    nodes.Add(SheetTop.Line(left, left + pieceWidth, SheetTop.WritingHeight));
                    break;
            }

            left += pieceWidth;
        }
    }

    private static double WidthOf(LinePiece piece, LengthFormat format) => piece switch
    {
        LinePiece.ToFill { Blank.IsResult: true } => ResultWidth,
        LinePiece.ToFill or LinePiece.Carried => FigureWidth,
        _ => Set(piece, format).Width,
    };

    private static SetLine Set(LinePiece piece, LengthFormat format) => Typesetter.Set(piece switch
    {
        LinePiece.Words words => words.Text,
        LinePiece.Told told => WorkedText.Figure(told.Quantity, format),
        _ => throw new ArgumentOutOfRangeException(nameof(piece)),
    }, Signs);
}
