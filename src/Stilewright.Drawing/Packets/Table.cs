using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Packets;

/// <summary>How a column is set.</summary>
internal enum CellKind
{
    /// <summary>To the left, broken into lines where it must be.</summary>
    Words,

    /// <summary>To the right, never broken.</summary>
    Figure,

    /// <summary>Two figures, width × length, in line at the sign between them.</summary>
    Size,

    /// <summary>An empty box to be ticked at the bench; its cells are empty.</summary>
    Tick,
}

/// <summary>A column of a table.</summary>
internal readonly record struct Column(string Heading, CellKind Kind = CellKind.Words)
{
    public static Column Figure(string heading) => new(heading, CellKind.Figure);
    public static Column Size(string heading) => new(heading, CellKind.Size);
    public static Column Tick { get; } = new("", CellKind.Tick);
    public static implicit operator Column(string heading) => new(heading);
}

/// <summary>A row of a table, with a note below it over the whole width.</summary>
internal sealed record Row(IReadOnlyList<string> Cells)
{
    public string Note { get; init; } = "";
}

/// <summary>Lays tables: columns as wide as their content, light rules between rows, the head again on every sheet.</summary>
internal sealed class Table
{
    private const double LeastGap = 3;
    private const double MostGap = 9;
    private const double Padding = 1.1;
    private const double LeastColumn = 9;
    private const double TickSize = 3.2;
    private const double TickAbove = 0.4;

    // Words that are longer may as well be broken.
    private const double LongWords = 44;
    // Smaller figures than this are worse to read than broken words.
    private const double LeastUnbroken = 3.1;
    private const string Between = " × ";

    private readonly IReadOnlyList<Column> columns;
    private readonly double width;
    private TextStyle figures = TextStyle.Figure;
    private TextStyle words = TextStyle.Body;
    private double[] widths = [];
    private double[] befores = [];
    private readonly double gap;
    private readonly double most;
    private readonly bool hasNotes;

    /// <param name="most">The greatest height of a row in millimetres; a higher one is broken.</param>
    private Table(IReadOnlyList<Column> columns, IReadOnlyList<Row> rows, double width, double most)
    {
        this.columns = columns;
        this.width = width;
        this.most = most;
        hasNotes = rows.Any(row => row.Note.Length > 0);
        foreach (var size in Sizes)
        {
            (figures, words) = (new(size), new(Math.Min(size, TextStyle.Body.SizeMillimetres)));
            befores = new double[columns.Count];
            widths = Widths(rows, size == Sizes[^1], out var fits, out var breaksWords);
            if (fits && !breaksWords)
                break;
            if (size <= LeastUnbroken && fits)
                break;
        }

        // Some air between columns reads better; too much tears a row apart.
        gap = columns.Count == 1 ? 0 : Math.Clamp((width - widths.Sum()) / (columns.Count - 1), LeastGap, MostGap);
    }

    // Sizes of figures that are tried one after the other until a table fits.
    private static double[] Sizes { get; } = [TextStyle.Figure.SizeMillimetres, 3.5, 3.1, 2.8, 2.4];

    /// <summary>A table of the columns that hold anything; nothing where there are no rows.</summary>
    public static IEnumerable<Strip> Of(IReadOnlyList<Column> columns, IEnumerable<Row> rows, double width, double most)
    {
        Row[] all = [.. rows];
        if (all.Length == 0)
            return [];
        int[] kept = [.. Enumerable.Range(0, columns.Count).Where(i => Array.Exists(all, row => row.Cells[i].Length > 0) || columns[i].Kind == CellKind.Tick)];
        if (kept.Length == 0)
            return [];
        if (kept.Length < columns.Count)
        {
            columns = [.. kept.Select(i => columns[i])];
            all = [.. all.Select(row => row with { Cells = [.. kept.Select(i => row.Cells[i])] })];
        }

        return new Table(columns, all, width, most).Lay(all);
    }

    private IEnumerable<Strip> Lay(Row[] rows)
    {
        var head = Head();
        yield return head;
        Strip[] repeated = [head with { KeepWithNext = false, SpaceBefore = 0 }];
        for (var i = 0; i < rows.Length; i++)
        {
            // The last row does not stand alone on a sheet, nor the first.
            var keep = rows.Length > 2 && (i == 0 || i == rows.Length - 2);
            foreach (var strip in Lay(rows[i]))
                yield return strip with { Repeated = repeated, KeepWithNext = keep };
        }
    }

    private double[] Widths(IReadOnlyList<Row> rows, bool isLast, out bool fits, out bool breaksWords)
    {
        var natural = new double[columns.Count];
        var least = new double[columns.Count];
        var heading = Heading;
        for (var i = 0; i < columns.Count; i++)
        {
            var headingLeast = Typesetter.WidestWord(columns[i].Heading, heading);
            natural[i] = least[i] = headingLeast;
            double before = 0, after = 0;
            foreach (var row in rows)
            {
                var cell = row.Cells[i];
                switch (columns[i].Kind)
                {
                    case CellKind.Tick:
                        natural[i] = least[i] = TickSize;
                        break;
                    case CellKind.Words:
                        natural[i] = Math.Max(natural[i], Typesetter.Set(cell, words).Width);
                        least[i] = Math.Max(least[i], Typesetter.WidestWord(cell, words));
                        break;
                    case CellKind.Size when cell.IndexOf(Between, StringComparison.Ordinal) is > 0 and var at:
                        before = Math.Max(before, Typesetter.Set(cell[..at], figures).Width);
                        after = Math.Max(after, Typesetter.Set(cell[at..], figures).Width);
                        break;
                    default:
                        natural[i] = least[i] = Math.Max(least[i], Typesetter.Set(cell, figures).Width);
                        break;
                }
            }

            if (before > 0)
            {
                befores[i] = Math.Max(before, natural[i] - after);
                natural[i] = least[i] = befores[i] + after;
            }

            if (columns[i].Kind == CellKind.Words)
                natural[i] = Math.Max(natural[i], Math.Min(Typesetter.Width(columns[i].Heading, heading), 30));
        }

        var room = width - LeastGap * (columns.Count - 1);
        (fits, breaksWords) = (true, false);
        if (natural.Sum() <= room)
            return natural;
        double[] modest = [.. natural.Select((each, i) => Math.Max(least[i], Math.Min(each, LongWords)))];
        breaksWords = modest.Sum() > room;
        // Words share what is left by what they would like to have, the long ones last.
        var (floor, wished) = breaksWords ? (least, modest) : (modest, natural);
        var spare = room - floor.Sum();
        if (spare >= 0)
        {
            var wish = wished.Sum() - floor.Sum();
            return [.. floor.Select((each, i) => each + (wished[i] - each) * spare / wish)];
        }

        fits = false;
        if (!isLast)
            return natural;
        // Nothing helps but to break words.
        var rigid = Enumerable.Range(0, columns.Count).Where(i => columns[i].Kind != CellKind.Words).Sum(i => least[i]);
        var soft = columns.Count(column => column.Kind == CellKind.Words);
        var each = soft == 0 ? 0 : Math.Max(LeastColumn, (room - rigid) / soft);
        return [.. Enumerable.Range(0, columns.Count).Select(i => columns[i].Kind == CellKind.Words ? each : least[i])];
    }

    private TextStyle Heading => new(Math.Min(figures.SizeMillimetres, TextStyle.Small.SizeMillimetres), Weight.Strong);

    private double Left(int column) => widths.Take(column).Sum() + column * gap;

    // With notes the rules run over the whole width, as the notes do.
    private double Total => hasNotes ? width : Math.Min(width, widths.Sum() + gap * (columns.Count - 1));

    private Strip Head()
    {
        var heading = Heading;
        IReadOnlyList<SetLine>[] cells = [.. columns.Select((column, i) => Typesetter.Wrap(column.Heading, heading, widths[i] + 0.02))];
        var lines = cells.Max(cell => cell.Count);
        var line = cells[0][0];
        var height = Padding + (lines - 1) * line.Pitch + line.Height + Padding;
        List<SceneNode> nodes = [];
        for (var i = 0; i < columns.Count; i++)
        {
            // Headings stand on the rule, however many lines they have.
            for (var j = 0; j < cells[i].Count; j++)
            {
                var at = columns[i].Kind is CellKind.Words or CellKind.Tick ? Left(i) : Left(i) + widths[i] - cells[i][j].Width;
                nodes.Add(Strip.Put(cells[i][j], at, Padding + (lines - cells[i].Count + j) * line.Pitch));
            }
        }

        nodes.Add(Strip.Rule(0, height, Total, height, LineStyle.Dimension));
        return new(height + 0.3, nodes) { KeepWithNext = true, SpaceBefore = 1.5 };
    }

    private IEnumerable<Strip> Lay(Row row)
    {
        IReadOnlyList<SetLine>[] cells =
        [
            .. row.Cells.Select((cell, i) => columns[i].Kind == CellKind.Words
                ? Typesetter.Wrap(cell, words, widths[i] + 0.02) : [Typesetter.Set(cell, figures)]),
        ];
        var ascent = cells.Max(cell => cell[0].Ascent);
        var descent = cells.Max(cell => cell[0].Descent);
        var pitch = (ascent + descent) * 1.2;
        var note = row.Note.Length == 0 ? [] : Typesetter.Wrap(row.Note, TextStyle.Small, Total - NoteIndent);
        var all = cells.Max(cell => cell.Count);
        var perStrip = Math.Max(1, (int)((most - 2 * Padding) / pitch));
        for (var from = 0; from < all; from += perStrip)
        {
            var to = Math.Min(all, from + perStrip);
            var bottom = Padding + (to - from - 1) * pitch + ascent + descent;
            List<SceneNode> nodes = [];
            for (var i = 0; i < columns.Count; i++)
            {
                for (var j = from; j < Math.Min(to, cells[i].Count); j++)
                {
                    var baseline = Padding + (j - from) * pitch + ascent;
                    nodes.AddRange(Cell(row.Cells[i], i, cells[i][j], baseline));
                }
            }

            if (from == 0)
                nodes.AddRange(Ticks().Select(box => new Shape(Outline.Box(box), LineStyle.Edge)));

            var isEnd = to == all;
            if (isEnd && note.Count > 0 && bottom + note.Count * note[0].Pitch <= most)
            {
                // Right under the columns it runs below; another that was broken stands beside it.
                var noteTop = from > 0 ? bottom : Padding + (LinesOver(note, cells) - 1) * pitch + ascent + descent;
                foreach (var line in note)
                {
                    nodes.Add(Strip.Put(line, NoteIndent, noteTop + 0.9));
                    noteTop += line.Pitch;
                }

                bottom = Math.Max(bottom, noteTop + 0.3);
                note = [];
            }

            isEnd &= note.Count == 0;
            bottom += Padding;
            if (isEnd)
                nodes.Add(Strip.Rule(0, bottom, Total, bottom));
            yield return new(bottom, nodes);
        }

        // A note that is higher than a row may be goes on line by line.
        for (var i = 0; i < note.Count; i++)
        {
            List<SceneNode> nodes = [Strip.Put(note[i], NoteIndent, 0)];
            var height = note[i].Pitch;
            if (i == note.Count - 1)
            {
                height += Padding;
                nodes.Add(Strip.Rule(0, height, Total, height));
            }

            yield return new(height, nodes);
        }
    }

    // Under what the row is about: the column after its number.
    private double NoteIndent => columns.Count > 1 ? Left(columns[0].Kind == CellKind.Tick ? 2 : 1) : 0;

    private int LinesOver(IReadOnlyList<SetLine> note, IReadOnlyList<SetLine>[] cells)
    {
        var right = NoteIndent + note.Max(line => line.Width) + LeastGap;
        return Enumerable.Range(0, columns.Count).Where(i => Left(i) < right && Left(i) + widths[i] > NoteIndent).Max(i => cells[i].Count);
    }

    private IEnumerable<PaperBox> Ticks() => Enumerable.Range(0, columns.Count).Where(i => columns[i].Kind == CellKind.Tick)
        .Select(i => new PaperBox(Left(i) + LineStyle.Edge.WidthMillimetres, Padding + TickAbove, TickSize - 2 * LineStyle.Edge.WidthMillimetres, TickSize - 2 * LineStyle.Edge.WidthMillimetres));

    private IEnumerable<SceneNode> Cell(string cell, int i, SetLine line, double baseline)
    {
        switch (columns[i].Kind)
        {
            case CellKind.Words:
                yield return new Lettering(new(Left(i), baseline), line);
                break;
            case CellKind.Tick:
                break;
            case CellKind.Size when befores[i] > 0 && cell.IndexOf(Between, StringComparison.Ordinal) is > 0 and var at:
                yield return new Lettering(new(Left(i) + befores[i] - Typesetter.Set(cell[..at], figures).Width, baseline), line);
                break;
            default:
                yield return new Lettering(new(Left(i) + widths[i] - line.Width, baseline), line);
                break;
        }
    }
}
