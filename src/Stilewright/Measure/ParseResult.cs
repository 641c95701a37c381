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
        /// <summary>One line for a person: the text, the place and the fix.</summary>
        public string Message => $"\"{Text}\", at character {Position + 1}: {Expected}";
    }
}
