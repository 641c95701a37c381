namespace Stilewright.Measure;

/// <summary>Reads lengths as people write them.</summary>
public static class LengthReader
{
    /// <summary>Reads <paramref name="text"/>; a bare number is in <paramref name="defaultUnit"/>. Never throws for a person's text.</summary>
    public static ParseResult<Length> Read(string text, LengthUnit defaultUnit, bool allowNegative = false) =>
        throw new NotSupportedException();
}
