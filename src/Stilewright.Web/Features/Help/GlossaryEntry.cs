using System.Text;

namespace Stilewright.Web.Features.Help;

/// <summary>A word of the trade.</summary>
/// <param name="Meaning">In a sentence or two.</param>
/// <param name="See">Other words of the glossary.</param>
public sealed record GlossaryEntry(string Word, string Meaning, params IReadOnlyList<string> See)
{
    /// <summary>Its anchor on the glossary's page.</summary>
    public string Id
    {
        get
        {
            var id = new StringBuilder();
            foreach (var letter in Word.ToLowerInvariant())
                id.Append(char.IsAsciiLetterOrDigit(letter) ? letter : '-');
            return string.Join('-', id.ToString().Split('-', StringSplitOptions.RemoveEmptyEntries));
        }
    }

    public string Address => $"/help/glossary#{Id}";
}
