using System.Globalization;
using System.Text;
using CsvHelper;
using Stilewright.Doors;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;

namespace Stilewright.Documents.Lists;

/// <summary>The gaps and corners of hung leaves as comma-separated values: written with empty readings, filled in at the cabinet, and read back.</summary>
/// <remarks>A line is a place; its last column is what was read there. Lines without a reading are places that were not read. Corners are read as
/// how far they stand out of the plane, such as <c>1/16</c> for proud and <c>-1/16</c> for shy.</remarks>
public static class GapSheet
{
    /// <summary>The largest sheet read, in bytes.</summary>
    public const int MostBytes = 256 * 1024;

    private const string Corner = "corner", Frame = "frame";
    private static readonly string[] Headings = ["leaf", "place", "end", "beside", "should be", "reading"];

    /// <summary>Every place of a row, to be filled in.</summary>
    public static string Blank(IEnumerable<HungRow> rows, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(rows);
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(writer, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord(Headings);
            foreach (var row in rows)
            {
                foreach (var place in row.Places)
                    csv.WriteRecord([place.Leaf, PlaceWord(place.Edge), EndWord(place.Edge, place.At), place.Beyond ?? Frame, place.Target is { } target ? LengthText.Of(null, target, unit) : "", ""]);
                foreach (var leaf in row.Leaves)
                {
                    foreach (var corner in Enum.GetValues<LeafCorner>())
                        csv.WriteRecord([leaf.Label, Corner, CornerWord(corner), Frame, "flush", ""]);
                }
            }
        }

        return writer.ToString();
    }

    /// <summary>Reads a filled sheet against the places that it was made for. Never throws for what the file holds; a refusal lists every fault.</summary>
    /// <param name="unit">The unit of readings that name none.</param>
    public static DocumentResult<(IReadOnlyList<GapReading> Gaps, IReadOnlyList<ProudReading> Corners)> Read(byte[] bytes, IReadOnlyList<HungRow> rows, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(rows);
        List<DocumentError> errors = [];
        List<GapReading> gaps = [];
        List<ProudReading> corners = [];
        if (bytes.Length > MostBytes || bytes.Contains((byte)0))
            errors.Add(new("the sheet", "it is no sheet of readings", "save the sheet that the program wrote as CSV UTF-8"));
        else
            ReadLines(bytes, rows, unit, gaps, corners, errors);
        if (errors.Count == 0 && gaps.Count == 0 && corners.Count == 0)
            errors.Add(new("reading", "no line has a reading", "write what the gap is now into the last column"));
        return errors.Count > 0 ? new DocumentResult<(IReadOnlyList<GapReading>, IReadOnlyList<ProudReading>)>.Refused(errors)
            : new DocumentResult<(IReadOnlyList<GapReading>, IReadOnlyList<ProudReading>)>.Read((gaps, corners));
    }

    private static void ReadLines(byte[] bytes, IReadOnlyList<HungRow> rows, LengthUnit unit, List<GapReading> gaps, List<ProudReading> corners, List<DocumentError> errors)
    {
        var options = CsvReaderOptions.Default with { HasHeader = false, TrackLineNumbers = true, TrimWhitespace = true, AllowLineBreaksInQuotes = false, Separator = SeparatorOf(bytes), OnMalformedRecord = _ => { } };
        using var csv = CsvReader.Create(bytes.AsMemory(bytes.AsSpan().StartsWith("\uFEFF"u8) ? 3 : 0), options);
        int[]? columns = null;
        while (csv.Read())
        {
            var line = (int)csv.LineNumber;
            List<string> cells = [];
            for (var i = 0; i < csv.FieldCount; i++)
                cells.Add(csv.GetString(i).Trim());
            if (cells.All(cell => cell.Length == 0))
                continue;
            if (columns is null)
            {
                columns = [.. Headings.Select(heading => cells.FindIndex(cell => string.Equals(cell, heading, StringComparison.OrdinalIgnoreCase)))];
                foreach (var missing in Headings.Where((heading, index) => columns[index] < 0 && heading is "leaf" or "place" or "end" or "reading"))
                    errors.Add(new("the headings", $"there is no column \"{missing}\"", $"head the columns {string.Join(", ", Headings)}, as the blank sheet has them", line));
                if (errors.Count > 0)
                    return;
                continue;
            }

            string Cell(int column) => columns[column] is var at && at >= 0 && at < cells.Count ? cells[at] : "";
            if (Cell(5).Length > 0)
                ReadLine(Cell(0), Cell(1), Cell(2), Cell(3), Cell(5), line, rows, unit, gaps, corners, errors);
        }
    }

    private static void ReadLine(string leaf, string place, string end, string beside, string reading, int line, IReadOnlyList<HungRow> rows, LengthUnit unit,
        List<GapReading> gaps, List<ProudReading> corners, List<DocumentError> errors)
    {
        var found = LengthReader.Read(reading, unit, allowNegative: true);
        if (found is ParseResult<Length>.Failed failed)
        {
            errors.Add(new("reading", $"{Quote.Shown(reading)} is no length: {failed.Message}", "write it as on the tape, such as 3/32 or 2.5 mm", line));
            return;
        }

        var length = ((ParseResult<Length>.Parsed)found).Value;
        var labels = rows.SelectMany(row => row.Leaves).Select(each => each.Label).ToList();
        if (labels.FirstOrDefault(label => Wording.PlaceName.Means(leaf, label, label)) is not { } label)
        {
            errors.Add(new("leaf", $"there is no hinged leaf {Quote.Shown(leaf)}", Wording.PlaceName.Suggest(leaf, labels).TrimEnd('.'), line));
            return;
        }

        if (string.Equals(place, Corner, StringComparison.OrdinalIgnoreCase))
        {
            if (Enum.GetValues<LeafCorner>().Where(corner => Same(CornerWord(corner), end)).ToList() is not [var corner])
                errors.Add(new("end", $"there is no corner {Quote.Shown(end)}", $"write one of {string.Join(", ", Enum.GetValues<LeafCorner>().Select(CornerWord))}", line));
            else if (corners.Any(each => each.Leaf == label && each.Corner == corner))
                errors.Add(new("end", $"the {end} corner of {label} is read twice", "keep one reading", line));
            else
                corners.Add(new(label, corner, length));
            return;
        }

        var places = rows.SelectMany(row => row.Places).Where(each => each.Leaf == label).ToList();
        var matching = places.Where(each => Same(PlaceWord(each.Edge), place) && Same(EndWord(each.Edge, each.At), end)).ToList();
        if (matching.Count > 1)
            matching = [.. matching.Where(each => Wording.PlaceName.Means(beside, each.Beyond ?? Frame, each.Beyond ?? Frame))];
        if (matching is not [var one])
            errors.Add(new("place", $"no gap of {label} is read at {Quote.Shown($"{place}, {end}")}", $"its places are {string.Join("; ", places.Select(each => $"{PlaceWord(each.Edge)}, {EndWord(each.Edge, each.At)}"))}", line));
        else if (gaps.Any(each => each.Leaf == label && each.Edge == one.Edge && each.At == one.At && each.Beyond == one.Beyond))
            errors.Add(new("place", $"the gap of {label} at {place}, {end} is read twice", "keep one reading", line));
        else
            gaps.Add(one.Read(length));
    }

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);

    private static char SeparatorOf(byte[] bytes)
    {
        var first = Encoding.UTF8.GetString(bytes.AsSpan()[..(bytes.AsSpan().IndexOf((byte)'\n') is var at && at < 0 ? bytes.Length : at)]);
        return ((char[])['\t', ';', ',']).MaxBy(mark => first.Count(letter => letter == mark));
    }

    private static string PlaceWord(Side edge) => string.Create(CultureInfo.InvariantCulture, $"{edge.ToString().ToLowerInvariant()} edge");

    private static string EndWord(Side edge, EdgeEnd at) => (edge is Side.Left or Side.Right, at) switch
    {
        (_, EdgeEnd.Middle) => "middle",
        (true, EdgeEnd.Start) => "bottom",
        (true, _) => "top",
        (_, EdgeEnd.Start) => "left",
        _ => "right",
    };

    private static string CornerWord(LeafCorner corner) => corner switch
    {
        LeafCorner.HingeTop => "hinge top",
        LeafCorner.HingeBottom => "hinge bottom",
        LeafCorner.FreeTop => "free top",
        _ => "free bottom",
    };
}
