namespace Stilewright.Documents;

/// <summary>Finds the word that was probably meant.</summary>
internal static class NearestWord
{
    private const int LongestCompared = 60;

    /// <summary>The known word with the fewest letters changed, when they are few for its length; otherwise null.</summary>
    public static string? Of(string wrong, IEnumerable<string> known)
    {
        if (wrong.Length > LongestCompared)
            return null;
        string? nearest = null;
        var least = Math.Max(2, wrong.Length / 3) + 1;
        foreach (var word in known)
        {
            var changes = Changes(wrong.ToUpperInvariant(), word.ToUpperInvariant());
            // A word that is changed in every letter is another word.
            if (changes < least && changes < word.Length)
            {
                least = changes;
                nearest = word;
            }
        }

        return nearest;
    }

    /// <summary>Letters put in, taken out, replaced or swapped with their neighbour: optimal string alignment.</summary>
    private static int Changes(string left, string right)
    {
        var table = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
            table[i, 0] = i;
        for (var j = 0; j <= right.Length; j++)
            table[0, j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            for (var j = 1; j <= right.Length; j++)
            {
                var replaced = table[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                table[i, j] = Math.Min(replaced, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
            }
        }

        return table[left.Length, right.Length];
    }
}
