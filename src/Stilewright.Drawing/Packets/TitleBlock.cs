using System.Globalization;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Draws the ruled block at the foot of every sheet.</summary>
internal sealed class TitleBlock(Paper paper, BlockFacts facts)
{
    private const double RowHeight = 8.8;
    private const double Rows = 3;
    private const double NoteHeight = 4.6;
    private const double AboveBlock = 2;
    private const double Inner = 1.4;
    private static readonly TextStyle Caption = new(2.4);
    private static readonly double[] ValueSizes = [3.6, 3.2, 2.8, 2.4];

    /// <summary>What is left of a sheet's print for its content.</summary>
    /// <param name="hasNote">Whether some of the sheets are machine work, whose note stands over the block.</param>
    public static PaperBox Room(Paper paper, bool hasNote = true)
    {
        var printed = paper.Printed;
        return printed with { Height = printed.Height - Rows * RowHeight - (hasNote ? NoteHeight : 0) - AboveBlock };
    }

    /// <summary>The finished sheet.</summary>
    public Sheet Finish(LaidSheet sheet, int number, int count)
    {
        var printed = paper.Printed;
        var top = printed.Bottom - Rows * RowHeight;
        List<SceneNode> nodes = [.. sheet.Nodes];
        if (sheet.Head.IsMachineWork)
        {
            var note = Typesetter.Set(Remarks.Machines, TextStyle.Small);
            nodes.Add(Strip.Put(note, printed.Left, top - NoteHeight));
        }

        nodes.AddRange(Block(sheet, number, count, printed with { Top = top, Height = Rows * RowHeight }));
        var scale = MainScale(sheet);
        return new(
            new(facts.Title(sheet), $"Sheet {number} of {count}", paper.WidthMillimetres, paper.HeightMillimetres, nodes) { Scale = scale },
            sheet.Bookmarks);
    }

    private static Scale? MainScale(LaidSheet sheet) => sheet.Scales.Count > 0 ? sheet.Scales[0] : null;

    private static string ScaleWords(LaidSheet sheet) => sheet.Scales.Count == 0 ? "no drawing"
        : sheet.Scales[0] is not { } main ? "not to scale"
        : sheet.Scales.Any(scale => scale != main) ? $"{main}, others as noted" : main.ToString();

    private List<SceneNode> Block(LaidSheet sheet, int number, int count, PaperBox box)
    {
        List<SceneNode> nodes = [new Shape(Outline.Box(box), LineStyle.Visible)];
        var benchWidth = 0.0;
        if (facts.Bench is { } bench)
        {
            benchWidth = 20;
            nodes.Add(Strip.Put(Typesetter.Set("bench", Caption), box.Left + Inner, box.Top + 0.8));
            var large = Fitted(bench.ToString(CultureInfo.InvariantCulture), benchWidth - 2 * Inner, Weight.Strong, 15, 12, 9);
            nodes.Add(Strip.Put(large, box.Left + (benchWidth - large.Width) / 2, box.Top + 2.9 + (box.Height - 2.9 - large.Ascent - large.Descent) / 2));
            nodes.Add(Strip.Rule(box.Left + benchWidth, box.Top, box.Left + benchWidth, box.Bottom));
        }

        var rest = box with { Left = box.Left + benchWidth, Width = box.Width - benchWidth };
        IReadOnlyList<BlockCell>[] rows = [.. facts.Rows(sheet, ScaleWords(sheet))];
        rows[^1] = [.. rows[^1], new("", $"sheet {number} of {count}", BlockFacts.NumberShare)];
        for (var i = 0; i < rows.Length; i++)
        {
            var top = rest.Top + i * RowHeight;
            if (i > 0)
                nodes.Add(Strip.Rule(rest.Left, top, rest.Right, top));
            var left = rest.Left;
            foreach (var (caption, value, share) in rows[i])
            {
                var width = rest.Width * share;
                if (left > rest.Left)
                    nodes.Add(Strip.Rule(left, top, left, top + RowHeight));
                if (caption.Length > 0)
                    nodes.Add(Strip.Put(Typesetter.Set(caption, Caption), left + Inner, top + 0.8));
                nodes.AddRange(Value(value, left + Inner, top + 3.3, width - 2 * Inner, caption.Length == 0));
                left += width;
            }
        }

        return nodes;
    }

    // Long names become smaller, then two lines, and only then are cut short with a mark.
    private static IEnumerable<SceneNode> Value(string value, double left, double top, double width, bool strong)
    {
        foreach (var size in ValueSizes)
        {
            var line = Typesetter.Set(value, new(size, strong ? Weight.Strong : Weight.Regular));
            if (line.Width <= width)
                return [Strip.Put(line, left, top + 0.6 + (ValueSizes[0] - size) * 0.4)];
        }

        var smallest = new TextStyle(ValueSizes[^1]);
        var lines = Typesetter.Wrap(value, smallest, width);
        if (lines.Count <= 2)
            return lines.Select((line, i) => Strip.Put(line, left, top + i * 2.7));
        var second = lines[1].Text;
        while (second.Length > 0 && Typesetter.Set($"{second}…", smallest).Width > width)
            second = second[..^1];
        return [Strip.Put(lines[0], left, top), Strip.Put(Typesetter.Set($"{second}…", smallest), left, top + 2.7)];
    }

    private static SetLine Fitted(string text, double width, Weight weight, params double[] sizes)
    {
        foreach (var size in sizes)
        {
            if (Typesetter.Set(text, new(size, weight)) is var line && (line.Width <= width || size == sizes[^1]))
                return line;
        }

        throw new ArgumentException("No size is given.", nameof(sizes));
    }
}
