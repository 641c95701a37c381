using System.Globalization;
using CsvHelper;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Documents.Lists;

/// <summary>Reads a maker's cut list from comma-separated values, with or without headings.</summary>
/// <remarks>Commas, semicolons or tabs separate. An inch mark inside a cell is text. Without headings the columns are name, count, width,
/// length, or count first; a size may stand in one cell, as 2 1/4 × 32. The program's own cut list is read too.</remarks>
internal sealed class MakersListCsv
{
    private const int MostErrors = 200;
    private const int MostCells = 100;
    private const int LongestName = 120;
    private const string Headed = "head the columns part, count, width, length";
    private static readonly char[] Separators = ['\t', ';', ','];
    private static readonly string[] Crosses = ["×", "x", "X", "*", " by "];

    private readonly List<DocumentError> errors = [];
    private readonly List<Row> rows = [];
    private readonly List<ListLine> lines = [];
    private readonly LengthUnit unit;
    private readonly CutStage? asked;
    private LengthUnit? firstUnit;
    private CutStage? said;
    private int saidAt;

    private sealed record Row(int Line, string[] Cells)
    {
        public string this[int index] => index < Cells.Length ? Cells[index] : "";
    }

    /// <summary>A column that is read: where it stands and what errors call it.</summary>
    private sealed record Place(int Index, string Name, LengthUnit? Unit = null);

    private MakersListCsv(LengthUnit unit, CutStage? asked)
    {
        this.unit = unit;
        this.asked = asked;
    }

    public static DocumentResult<ReadList> Read(ReadOnlyMemory<byte> utf8, LengthUnit unit, CutStage? asked) => new MakersListCsv(unit, asked).Read(utf8);

    /// <summary>The lines that can be read, and the errors of the others.</summary>
    public static (ReadList Readable, IReadOnlyList<DocumentError> Errors) ReadReadable(ReadOnlyMemory<byte> utf8, LengthUnit unit, CutStage? asked)
    {
        var reading = new MakersListCsv(unit, asked);
        return (reading.ReadAll(utf8, keeping: true), reading.Told());
    }

    private DocumentResult<ReadList> Read(ReadOnlyMemory<byte> utf8)
    {
        var all = ReadAll(utf8, keeping: false);
        return errors.Count > 0 ? new DocumentResult<ReadList>.Refused(Told()) : new DocumentResult<ReadList>.Read(all);
    }

    private ReadList ReadAll(ReadOnlyMemory<byte> utf8, bool keeping)
    {
        ReadRows(utf8);
        if (rows.Count == 0 && errors.Count == 0)
            errors.Add(new("the list", "it holds no lines", "write a line for each part: name, count, width, length"));
        List<string> unread = [];
        if (errors.Count == 0 || keeping && rows.Count > 0)
            ReadLines(unread);
        return new(new(said ?? asked ?? CutStage.Finished, lines), firstUnit ?? unit, unread);
    }

    private List<DocumentError> Told()
    {
        var told = errors.OrderBy(error => error.Line).Take(MostErrors).ToList();
        if (errors.Count > MostErrors)
            told.Add(new("the list", $"{errors.Count - MostErrors} more errors are not listed", "mend these first, then read the list again"));
        return told;
    }

    private void ReadRows(ReadOnlyMemory<byte> utf8)
    {
        var separator = SeparatorOf(utf8.Span, out var start);
        var options = CsvReaderOptions.Default with
        {
            Separator = separator,
            HasHeader = false,
            TrackLineNumbers = true,
            TrimWhitespace = true,
            // One unbalanced quote spoils its own line only.
            AllowLineBreaksInQuotes = false,
            OnMalformedRecord = record =>
            {
                // A quote inside a cell is an inch mark.
                if (record.Reason != CsvMalformedReason.StrayQuote)
                    errors.Add(new("the line", $"its quotation marks do not pair: {Quote.Shown(record.RawRecord)}", "write a quotation mark inside quotation marks twice, or take them out", (int)record.LineNumber));
            },
        };
        using var csv = CsvReader.Create(utf8[start..], options);
        var skipped = start == 0 ? 0 : 1;
        while (csv.Read())
        {
            var line = (int)csv.LineNumber + skipped;
            if (csv.FieldCount > MostCells)
            {
                errors.Add(new("the line", $"it holds {csv.FieldCount} cells", "check that it is the right file", line));
                return;
            }

            var cells = new string[csv.FieldCount];
            for (var i = 0; i < cells.Length; i++)
                cells[i] = csv.GetString(i).Trim();
            if (cells.All(cell => cell.Length == 0))
                continue;
            if (rows.Count > MakersListReader.MostLines)
            {
                errors.Add(new("the list", $"it has more than {MakersListReader.MostLines} lines", "hand in the list of one leaf or one project", line));
                return;
            }

            rows.Add(new(line, cells));
        }
    }

    // What stands most often in the first line; a spreadsheet may say it in a line of its own.
    private static char SeparatorOf(ReadOnlySpan<byte> utf8, out int start)
    {
        start = 0;
        var trimmed = utf8.TrimStart(" \t\r\n"u8);
        var end = trimmed.IndexOfAny((byte)'\n', (byte)'\r');
        var first = end < 0 ? trimmed : trimmed[..end];
        if (first.Length == 5 && first[..4].SequenceEqual("sep="u8) && Separators.Contains((char)first[4]))
        {
            start = utf8.Length - trimmed.Length + first.Length;
            start += utf8[start..].StartsWith("\r\n"u8) ? 2 : start < utf8.Length ? 1 : 0;
            return (char)first[4];
        }

        var counts = new int[Separators.Length];
        var isQuoted = false;
        var atStart = true;
        foreach (var one in first)
        {
            if (one == '"' && (isQuoted || atStart))
                isQuoted = !isQuoted;
            var which = isQuoted ? -1 : Array.IndexOf(Separators, (char)one);
            if (which >= 0)
                counts[which]++;
            atStart = which >= 0 || atStart && one == ' ';
        }

        var most = counts.Max();
        return most == 0 ? ',' : Separators[Array.IndexOf(counts, most)];
    }

    private void ReadLines(List<string> unread)
    {
        var first = rows[0];
        var headings = first.Cells.Select(ListHeading.Of).ToArray();
        var isHeader = headings.Count(heading => heading is not null) >= 2 || first.Cells.Length > 1 && !first.Cells.Any(cell => cell.Any(char.IsDigit));
        var columns = isHeader ? Headings(first, headings, unread) : Unheaded(first);
        if (columns is null)
            return;
        foreach (var row in isHeader ? rows.Skip(1) : rows)
            ReadLine(row, columns, isHeader ? first.Cells.Length : columns.Count);
        if (lines.Count == 0 && errors.Count == 0)
            errors.Add(new("the list", "it has headings and no lines", "write a line for each part", first.Line));
    }

    private Dictionary<ListColumn, Place>? Headings(Row first, ListHeading?[] headings, List<string> unread)
    {
        var before = errors.Count;
        SettleStage(first, headings);
        if (errors.Count > before)
            return null;
        var columns = new Dictionary<ListColumn, Place>();
        var used = new HashSet<int>();
        foreach (var column in Enum.GetValues<ListColumn>())
        {
            var stage = said ?? asked ?? CutStage.Finished;
            // The plainest heading of the stage; a repetition in decimals is only looked at where a figure was rounded.
            var fit = Enumerable.Range(0, headings.Length)
                .Where(i => headings[i] is { IsDecimal: false } heading && heading.Column == column && (heading.Stage is null || heading.Stage == stage))
                .OrderBy(i => headings[i]!.Stage is null).ThenBy(i => headings[i]!.Rank).ToList();
            if (fit.Count == 0)
                continue;
            if (fit.Count > 1 && headings[fit[0]] == headings[fit[1]])
                errors.Add(new(Quote.Shown(first[fit[1]]), "two columns have this heading", "keep one of them", first.Line));
            columns.Add(column, new(fit[0], Quote.Shown(first[fit[0]]), headings[fit[0]]!.Unit));
            used.Add(fit[0]);
        }

        decimals = Enumerable.Range(0, headings.Length).Where(i => headings[i] is { IsDecimal: true })
            .ToLookup(i => (headings[i]!.Column, headings[i]!.Stage));
        intoClamps = Enumerable.Range(0, headings.Length).Where(i => headings[i] is { IsDecimal: false, Stage: CutStage.IntoClamps })
            .ToLookup(i => headings[i]!.Column);
        unread.AddRange(Enumerable.Range(0, headings.Length).Where(i => !used.Contains(i) && first[i].Length > 0 && (headings[i] is not ({ Stage: not null } or { IsDecimal: true }) || IsLostThickness(i))).Select(i => Quote.Shown(first[i])));
        // A thickness of another stage than the list is of; a list of several stages says so itself.
        bool IsLostThickness(int i) => headings[i] is { Column: ListColumn.Thickness, Stage: not null, IsDecimal: false } && !columns.ContainsKey(ListColumn.Thickness)
            && !headings.Any(heading => heading is { Stage: not null, Column: ListColumn.Width or ListColumn.Length or ListColumn.Size });

        Require("no column has the names of the parts", ListColumn.Part);
        Require("no column has sizes", ListColumn.Width, ListColumn.Length, ListColumn.Size);
        return errors.Count > before ? null : columns;

        void Require(string problem, params ListColumn[] anyOf)
        {
            if (anyOf.Any(columns.ContainsKey))
                return;
            var words = anyOf.Select(Heading).ToList();
            var meant = unread.Select(heading => (Heading: heading, Word: NearestWord.Of(heading, words))).FirstOrDefault(guess => guess.Word is not null);
            errors.Add(new("the headings", $"{problem}; they are {Quote.List(first.Cells)}", meant.Word is null ? Headed : $"did you mean {meant.Word} by {meant.Heading}? {Headed}", first.Line));
        }
    }

    // A list that states one stage only is of that stage.
    private void SettleStage(Row first, ListHeading?[] headings)
    {
        var stated = headings.Where(heading => heading is { Stage: not null, Column: ListColumn.Width or ListColumn.Length or ListColumn.Size }).Select(heading => heading!.Stage!.Value).Distinct().ToList();
        var isPlain = headings.Any(heading => heading is { Stage: null, Column: ListColumn.Width or ListColumn.Length or ListColumn.Size });
        if (stated.Count == 0)
            return;
        if (asked is { } wanted && !stated.Contains(wanted) && !isPlain)
        {
            errors.Add(new("the headings", $"the list has no {MakersListReader.Words(wanted)} sizes; it has {string.Join(", ", stated.Select(MakersListReader.Words))}",
                "ask for a stage that the list is of", first.Line));
        }
        else if (asked is null && stated is [var only] && !isPlain)
        {
            said = only;
        }
    }

    private ILookup<(ListColumn, CutStage?), int> decimals = Array.Empty<int>().ToLookup(_ => default((ListColumn, CutStage?)));
    private ILookup<ListColumn, int> intoClamps = Array.Empty<int>().ToLookup(_ => default(ListColumn));

    private Dictionary<ListColumn, Place>? Unheaded(Row first)
    {
        var countFirst = rows.All(row => CountIn(row[0]) is not null) && rows.Any(row => CountIn(row[1]) is null);
        ListColumn[] order = [countFirst ? ListColumn.Count : ListColumn.Part, countFirst ? ListColumn.Part : ListColumn.Count];
        ListColumn[]? all = first.Cells.Length switch
        {
            2 => [ListColumn.Part, ListColumn.Size],
            3 when Split(first[2]).Length > 1 => [.. order, ListColumn.Size],
            3 => [ListColumn.Part, ListColumn.Width, ListColumn.Length],
            4 when Split(first[2]).Length > 1 => [.. order, ListColumn.Size, ListColumn.Leaf],
            4 => [.. order, ListColumn.Width, ListColumn.Length],
            5 => [.. order, ListColumn.Width, ListColumn.Length, ListColumn.Leaf],
            _ => null,
        };
        if (all is null)
        {
            errors.Add(new("the line", $"it holds {(first.Cells.Length == 1 ? "one cell" : $"{first.Cells.Length} cells")} and nothing says what they are: {Quote.Shown(string.Join(" | ", first.Cells))}",
                $"put name, count, width and length into cells of their own, or {Headed}", first.Line));
            return null;
        }

        return all.Select((column, index) => (column, index)).ToDictionary(each => each.column, each => new Place(each.index, Heading(each.column)));
    }

    private static string Heading(ListColumn column) => column.ToString().ToLowerInvariant();

    private void ReadLine(Row row, Dictionary<ListColumn, Place> columns, int width)
    {
        if (Array.FindLastIndex(row.Cells, cell => cell.Length > 0) >= width)
        {
            errors.Add(new("the line", $"it has more cells than there are columns: {Quote.Shown(string.Join(" | ", row.Cells))}", "put a cell that holds the separator, such as a decimal comma, into quotation marks", row.Line));
            return;
        }

        string Cell(ListColumn column) => columns.TryGetValue(column, out var place) ? row[place.Index] : "";
        var before = errors.Count;
        var name = Cell(ListColumn.Part);
        if (name.Length == 0)
            Fault(row, columns[ListColumn.Part].Name, "the part has no name", "write what it is, such as top rail");
        else if (name.Length > LongestName || name.Any(char.IsControl))
            Fault(row, columns[ListColumn.Part].Name, $"\"{Quote.Shown(name)}\" is no name", $"write a name of at most {LongestName} letters");
        var count = ReadCount(row, columns.GetValueOrDefault(ListColumn.Count));
        var own = ReadUnit(row, columns.GetValueOrDefault(ListColumn.Unit));
        ReadStage(row, columns.GetValueOrDefault(ListColumn.Stage));
        LengthEntry? across, along;
        if (Cell(ListColumn.Size) is { Length: > 0 } size)
        {
            (across, along) = ReadSize(row, columns[ListColumn.Size], size, own);
        }
        else
        {
            across = ReadLength(row, columns.GetValueOrDefault(ListColumn.Width), ListColumn.Width, own);
            along = ReadLength(row, columns.GetValueOrDefault(ListColumn.Length), ListColumn.Length, own);
        }

        var thick = ReadLength(row, columns.GetValueOrDefault(ListColumn.Thickness), ListColumn.Thickness, own);
        if (across is null && along is null && errors.Count == before)
            Fault(row, "the line", $"\"{Quote.Shown(name)}\" has no size", "write its width and length, or take the line out");
        if (errors.Count == before)
            lines.Add(new(lines.Count + 1, name, count, across, along, LeafIn(Cell(ListColumn.Leaf)), thick));
    }

    private void Fault(Row row, string place, string problem, string fix) => errors.Add(new(place, problem, fix, row.Line));

    // Like parts of several leaves stand in one line of the program's own list.
    private static string? LeafIn(string cell) => cell.Length == 0 || cell.Split(' ') is [_, _, ..] labels && labels.All(label => label.Contains('·', StringComparison.Ordinal)) ? null : cell;

    private int? ReadCount(Row row, Place? place)
    {
        if (place is null || IsNothing(row[place.Index]))
            return null;
        var count = CountIn(row[place.Index]);
        if (count is null or < 1 or > MakersListReader.MostPieces)
            Fault(row, place.Name, $"\"{Quote.Shown(row[place.Index])}\" is no count of pieces", $"write a whole number from 1 to {MakersListReader.MostPieces}");
        return count;
    }

    // 2, 2x, ×2, 2 pcs, 2 off.
    private static int? CountIn(string cell)
    {
        var text = cell.Trim().TrimStart('x', 'X', '×').Trim();
        foreach (var tail in (string[])["x", "X", "×", "pcs", "pc", "pieces", "off", "ea"])
        {
            if (text.EndsWith(tail, StringComparison.Ordinal))
            {
                text = text[..^tail.Length].Trim();
                break;
            }
        }

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : null;
    }

    private LengthUnit ReadUnit(Row row, Place? place)
    {
        if (place is null || IsNothing(row[place.Index]))
            return unit;
        LengthUnit? own = row[place.Index].ToUpperInvariant() switch
        {
            "IN" or "INCH" or "INCHES" or "\"" => LengthUnit.Inch,
            "MM" => LengthUnit.Millimetre,
            _ => null,
        };
        if (own is null)
            Fault(row, place.Name, $"\"{Quote.Shown(row[place.Index])}\" is no unit known here", "write in or mm");
        return own ?? unit;
    }

    private void ReadStage(Row row, Place? place)
    {
        if (place is null || IsNothing(row[place.Index]))
            return;
        CutStage? own = row[place.Index].ToUpperInvariant() switch
        {
            "FINISHED" => CutStage.Finished,
            "CLAMPS" or "INTO THE CLAMPS" => CutStage.IntoClamps,
            "ROUGH" => CutStage.Rough,
            _ => null,
        };
        if (own is null)
            Fault(row, place.Name, $"\"{Quote.Shown(row[place.Index])}\" is no stage", "write finished, clamps or rough");
        else if (asked is { } wanted && wanted != own)
            errors.Add(MakersListReader.StagesDiffer(place.Name, own.Value, wanted, row.Line));
        else if (said is { } before && before != own)
            Fault(row, place.Name, $"line {saidAt} is of another stage", "write one list for each stage");
        else if (said is null)
            (said, saidAt) = (own, row.Line);
    }

    private static bool IsNothing(string cell) => cell is "" or "-" or "–" or "—";

    private static string[] Split(string cell)
    {
        foreach (var cross in Crosses)
        {
            if (cell.Contains(cross, StringComparison.Ordinal))
                return cell.Split(cross, StringSplitOptions.TrimEntries);
        }

        return [cell];
    }

    private (LengthEntry? Across, LengthEntry? Along) ReadSize(Row row, Place place, string size, LengthUnit own)
    {
        if (Split(size) is [var first, var second])
        {
            // A unit behind the second number is that of both: 57 x 813 mm.
            var both = second.EndsWith("mm", StringComparison.OrdinalIgnoreCase) ? LengthUnit.Millimetre : place.Unit ?? own;
            return (ReadLength(row, place.Name, first, both), ReadLength(row, place.Name, second, both));
        }

        Fault(row, place.Name, $"\"{Quote.Shown(size)}\" is not one width and one length", "write width × length, such as 2 1/4 x 32");
        return (null, null);
    }

    private LengthEntry? ReadLength(Row row, Place? place, ListColumn column, LengthUnit own)
    {
        if (place is null)
            return null;
        var cell = row[place.Index];
        var stage = said ?? asked ?? CutStage.Finished;
        // Sheet and glass have no rough blank: the program's own list leaves the cell empty, and they are cut to size.
        if (IsNothing(cell) && stage == CutStage.Rough && intoClamps[column].Any())
        {
            cell = row[intoClamps[column].First()];
            stage = CutStage.IntoClamps;
        }

        if (IsNothing(cell))
            return null;
        // The program's own list repeats in decimals what it had to round.
        if (cell.StartsWith(LengthFormat.RoundedMark, StringComparison.Ordinal) && decimals[(column, stage)].Any())
            return ReadLength(row, place.Name, row[decimals[(column, stage)].First()], LengthUnit.Inch);
        return ReadLength(row, place.Name, cell, place.Unit ?? own);
    }

    private LengthEntry? ReadLength(Row row, string place, string cell, LengthUnit own)
    {
        switch (LengthReader.Read(cell, own))
        {
            case ParseResult<Length>.Parsed { Value: { IsPositive: true } length }:
                firstUnit ??= own;
                return new(cell, length);
            case ParseResult<Length>.Parsed:
                Fault(row, place, $"the length \"{Quote.Shown(cell)}\" is nothing", "write a length above zero");
                return null;
            case ParseResult<Length>.Failed failed:
                Fault(row, place, $"the length \"{Quote.Shown(failed.Text)}\" cannot be read at character {failed.Position + 1}", $"expected: {failed.Expected}");
                return null;
            default:
                throw new InvalidOperationException();
        }
    }
}
