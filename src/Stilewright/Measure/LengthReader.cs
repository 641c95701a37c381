namespace Stilewright.Measure;

/// <summary>Reads lengths as people write them.</summary>
public static class LengthReader
{
    /// <summary>Reads <paramref name="text"/>; a bare number is in <paramref name="defaultUnit"/>. Never throws for a person's text.</summary>
    public static ParseResult<Length> Read(string text, LengthUnit defaultUnit, bool allowNegative = false) =>
        throw new NotSupportedException();

    /// <summary>Reads a length that the program itself wrote.</summary>
    /// <exception cref="FormatException">The text is no length: a programmer's mistake.</exception>
    public static Length ReadOwn(string text, LengthUnit unit) => Read(text, unit) switch
    {
        ParseResult<Length>.Parsed parsed => parsed.Value,
        ParseResult<Length>.Failed failed => throw new FormatException(failed.Message),
        _ => throw new InvalidOperationException(),
    };
}
