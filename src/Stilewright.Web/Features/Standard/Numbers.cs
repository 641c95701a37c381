using Fractions;
using Stilewright.Measure;

namespace Stilewright.Web.Features.Standard;

internal static class Numbers
{
    /// <exception cref="ArgumentException">The text is no number.</exception>
    public static NumberEntry Entry(string text, NumberKind kind, LengthUnit unit) => NumberReader.Read(text, kind, unit) is ParseResult<Fraction>.Parsed(var value)
        ? new(text, value) : throw new ArgumentException($"{text} is no number.", nameof(text));
}
