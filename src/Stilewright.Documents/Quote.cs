namespace Stilewright.Documents;

/// <summary>Texts of a file as errors quote them.</summary>
internal static class Quote
{
    public const int MostCharacters = 60;

    private const int MostKnown = 12;

    /// <summary>The text on one line, cut short when it is long.</summary>
    public static string Shown(string text)
    {
        var start = text.Length > MostCharacters ? text[..MostCharacters] + "…" : text;
        return string.Concat(start.Select(character => char.IsControl(character) ? ' ' : character));
    }

    /// <summary>The words after one another, the first few when there are many.</summary>
    public static string List(IReadOnlyCollection<string> words) => words.Count == 0 ? "none"
        : string.Join(", ", words.Take(MostKnown).Select(Shown)) + (words.Count > MostKnown ? $" and {words.Count - MostKnown} more" : "");

    /// <summary>"did you mean …? " when a known word is near, then all that are known.</summary>
    public static string Suggest(string wrong, IReadOnlyCollection<string> known) =>
        (NearestWord.Of(wrong, known) is { } near ? $"did you mean {near}? " : "") + $"known here: {List(known)}";
}
