namespace Stilewright.Measure;

/// <summary>What became of a person's text: a value, or where reading stopped and what was expected there.</summary>
public abstract record ParseResult<T>
{
    private ParseResult()
    {
    }

    public sealed record Parsed(T Value) : ParseResult<T>;

    /// <param name="Text">The whole text as it was given.</param>
    /// <param name="Position">Characters before the fault, from 0.</param>
    /// <param name="Expected">What was expected, with the fix, as one plain sentence without a full stop.</param>
    public sealed record Failed(string Text, int Position, string Expected) : ParseResult<T>
    {
        private const int MostCharactersShown = 60;

        /// <summary>One line for a person: the text, the place and the fix. A very long text is cut short with <c>…</c>.</summary>
        public string Message => $"\"{Shown}\", at character {Position + 1}: {Expected}";

        /// <summary>Without line breaks and other control characters, which would break the line or the terminal.</summary>
        private string Shown
        {
            get
            {
                var start = Text.Length > MostCharactersShown ? Text[..MostCharactersShown] + "…" : Text;
                return string.Concat(start.Select(character => char.IsControl(character) ? ' ' : character));
            }
        }
    }
}
