namespace Stilewright.Measure;

/// <summary>A length as a person typed it, beside its exact value. Equality is by value: 27.5 and 27 1/2 are the same entry.</summary>
/// <param name="Text">The text as typed, kept in the document.</param>
/// <param name="Value">Its exact value.</param>
public readonly record struct LengthEntry(string Text, Length Value)
{
    /// <summary>An entry written the way the program writes it, in the given unit.</summary>
    public static LengthEntry Of(Length value, LengthUnit unit)
    {
        var amount = unit == LengthUnit.Inch ? value.Inches : value.Millimetres;
        return new(unit == LengthUnit.Inch
            ? new LengthFormat(LengthUnit.Inch, 64).IsExact(value) ? new LengthFormat(LengthUnit.Inch, 64).Print(value) : $"{amount} in"
            : $"{amount.ToDecimal()} mm", value);
    }

    public bool Equals(LengthEntry other) => Value == other.Value;
    public override int GetHashCode() => Value.GetHashCode();
}
