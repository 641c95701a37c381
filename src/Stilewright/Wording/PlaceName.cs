namespace Stilewright.Wording;

/// <summary>Labels and paths as people type them.</summary>
public static class PlaceName
{
    private const int MostSuggestions = 3;

    /// <summary>Whether the typed text is the path, or the label with a full stop for its dot, in either case.</summary>
    public static bool Means(string typed, string path, string label) =>
        string.Equals(typed, path, StringComparison.OrdinalIgnoreCase) || string.Equals(Plain(typed), Plain(label), StringComparison.Ordinal);

    /// <summary>"Nearest: a, b, c." or nothing where there is nothing to suggest.</summary>
    public static string Suggest(string typed, IEnumerable<string> known)
    {
        var plain = Plain(typed);
        string[] nearest =
        [
            .. known.Distinct().Where(name => name.Contains('/', StringComparison.Ordinal) == typed.Contains('/', StringComparison.Ordinal))
                .OrderBy(name => Changes(plain, Plain(name))).ThenBy(name => name, StringComparer.Ordinal).Take(MostSuggestions),
        ];
        return nearest.Length == 0 ? "" : $"Nearest: {string.Join(", ", nearest)}.";
    }

    private static string Plain(string name) => name.Trim().Replace('.', '·').Replace('•', '·').ToUpperInvariant();

    /// <summary>Letters put in, taken out or replaced (Levenshtein), one row at a time.</summary>
    private static int Changes(string left, string right)
    {
        int[] row = [.. Enumerable.Range(0, right.Length + 1)];
        for (var i = 1; i <= left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var replaced = diagonal + (left[i - 1] == right[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
