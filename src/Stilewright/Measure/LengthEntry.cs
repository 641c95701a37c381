namespace Stilewright.Measure;

/// <summary>A length as a person typed it, beside its exact value. Equality is by value: 27.5 and 27 1/2 are the same entry.</summary>
/// <param name="Text">The text as typed, kept in the document.</param>
/// <param name="Value">Its exact value.</param>
public readonly record struct LengthEntry(string Text, Length Value)
{
    /// <summary>For a sentence: as it was typed where that names its unit, since a bit of 35 mm is called so in every shop; else the length.</summary>
    public object WithUnit => Text.EndsWith("mm", StringComparison.Ordinal) || Text.EndsWith("in", StringComparison.Ordinal) ? Text : Value;

    public bool Equals(LengthEntry other) => Value == other.Value;
    public override int GetHashCode() => Value.GetHashCode();
}
