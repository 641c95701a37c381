namespace Stilewright.Documents;

/// <summary>Makes short ids that are not taken, such as <c>k7mp2x</c>. The same random numbers and the same taken ids give the same ids.</summary>
/// <remarks>No letter can be taken for a digit or another letter, and without vowels no words come about.</remarks>
public sealed class FreshIds(IEnumerable<string> taken, Random random)
{
    /// <summary>How many characters an id has.</summary>
    public const int Characters = 6;

    private const string Letters = "cdfhjkmnprtvwxy";
    private const string LettersAndDigits = Letters + "2346789";

    private readonly HashSet<string> taken = new(taken, StringComparer.Ordinal);

    /// <summary>Marks an id as taken, so that it is not given out.</summary>
    public void Take(string id) => taken.Add(id);

    /// <summary>An id that was neither taken nor given out before; it starts with a letter.</summary>
    public string Next()
    {
        string id;
        do
        {
            id = string.Create(Characters, random, static (text, random) =>
            {
                text[0] = Letters[random.Next(Letters.Length)];
                for (var index = 1; index < text.Length; index++)
                    text[index] = LettersAndDigits[random.Next(LettersAndDigits.Length)];
            });
        }
        while (!taken.Add(id));
        return id;
    }
}
