using System.Globalization;
using Stilewright.Documents.Lists;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Web.Features.CheckList;

/// <summary>One line of a list as it stands in the fields of a page.</summary>
public sealed class TypedLine(int id)
{
    private const int LongestWords = 120;
    private readonly Dictionary<ListColumn, string> texts = [];
    private readonly Dictionary<ListColumn, string> problems = [];

    /// <summary>Tells its fields from those of other lines, also after one before it was taken out.</summary>
    public int Id { get; } = id;

    /// <summary>What was read from a file, to stand in the fields as if it had been typed.</summary>
    public IReadOnlyDictionary<ListColumn, string> Begins { get; private init; } = new Dictionary<ListColumn, string>();

    public bool IsEmpty => texts.Values.All(text => text.Length == 0);

    public string this[ListColumn column] => texts.GetValueOrDefault(column, "");

    /// <summary>Why what is typed cannot be taken; null where it can, or nobody has looked yet.</summary>
    public string? ProblemOf(ListColumn column) => problems.GetValueOrDefault(column);

    /// <summary>A line that was read from a file.</summary>
    /// <param name="unit">The unit in which bare numbers of the page are.</param>
    public static TypedLine Of(int id, ListLine line, LengthUnit unit)
    {
        Dictionary<ListColumn, string> begins = new()
        {
            [ListColumn.Part] = line.Name,
            [ListColumn.Count] = line.Count?.ToString(CultureInfo.InvariantCulture) ?? "",
            [ListColumn.Width] = TextOf(line.Width, unit),
            [ListColumn.Length] = TextOf(line.Length, unit),
            [ListColumn.Thickness] = TextOf(line.Thickness, unit),
            [ListColumn.Leaf] = line.Leaf ?? "",
        };
        var made = new TypedLine(id) { Begins = begins };
        foreach (var (column, text) in begins)
            made.texts[column] = text;
        return made;
    }

    public void Typed(ListColumn column, string text)
    {
        texts[column] = text.Trim();
        problems.Remove(column);
    }

    /// <summary>Looks at what is typed in one field.</summary>
    public void Look(ListColumn column, LengthUnit unit)
    {
        problems.Remove(column);
        _ = column switch
        {
            ListColumn.Count => (object?)ReadCount(),
            ListColumn.Width or ListColumn.Length or ListColumn.Thickness => ReadLength(column, unit),
            _ => null,
        };
    }

    /// <summary>The line for the checker; null where something in it cannot be taken, which its fields then say.</summary>
    /// <param name="number">Its place in the list, from 1.</param>
    public ListLine? Read(int number, LengthUnit unit)
    {
        problems.Clear();
        var name = this[ListColumn.Part];
        if (name.Length is 0 or > LongestWords)
            problems[ListColumn.Part] = name.Length == 0 ? "What is it? Write its name, such as top rail." : FormattableString.Invariant($"Write a name of at most {LongestWords} letters.");
        var count = ReadCount();
        var (width, length, thickness) = (ReadLength(ListColumn.Width, unit), ReadLength(ListColumn.Length, unit), ReadLength(ListColumn.Thickness, unit));
        if (problems.Count == 0 && width is null && length is null)
            problems[ListColumn.Width] = "Write its width, its length or both.";
        return problems.Count > 0 ? null : new(number, name, count, width, length, this[ListColumn.Leaf] is { Length: > 0 } leaf ? leaf : null, thickness);
    }

    /// <summary>Says of a line that its leaf is not here.</summary>
    public void HasStrayLeaf(IEnumerable<string> leaves) => problems[ListColumn.Leaf] = $"There is no leaf {this[ListColumn.Leaf]}; here are {string.Join(", ", leaves)}.";

    private int? ReadCount()
    {
        var text = this[ListColumn.Count];
        if (text.Length == 0)
            return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= MakersListReader.MostPieces)
            return count;
        problems[ListColumn.Count] = FormattableString.Invariant($"Write a whole number from 1 to {MakersListReader.MostPieces}.");
        return null;
    }

    private LengthEntry? ReadLength(ListColumn column, LengthUnit unit)
    {
        var text = this[column];
        if (text.Length == 0)
            return null;
        switch (LengthReader.Read(text, unit))
        {
            case ParseResult<Length>.Parsed { Value: { IsPositive: true } length }:
                return new(text, length);
            case ParseResult<Length>.Failed(_, var position, var expected):
                problems[column] = FormattableString.Invariant($"Cannot be read at character {position + 1}: expected {expected}.");
                return null;
            default:
                problems[column] = "Write a length above zero.";
                return null;
        }
    }

    // The text of a file says the same here, or is given its unit.
    private static string TextOf(LengthEntry? entry, LengthUnit unit)
    {
        if (entry is not { } told)
            return "";
        return ((string[])[told.Text, $"{told.Text} in", $"{told.Text} mm"]).First(text => LengthReader.Read(text, unit) is ParseResult<Length>.Parsed(var length) && length == told.Value);
    }
}
