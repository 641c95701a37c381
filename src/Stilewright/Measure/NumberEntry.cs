using Fractions;

namespace Stilewright.Measure;

/// <summary>A number as a person typed it, beside its exact value. Equality is by value.</summary>
/// <param name="Text">The text as typed, kept in the document.</param>
/// <param name="Value">Its exact value: of a percent in percent, of a temperature in °F.</param>
public readonly record struct NumberEntry(string Text, Fraction Value)
{
    public bool Equals(NumberEntry other) => Value == other.Value;
    public override int GetHashCode() => Value.GetHashCode();
}
