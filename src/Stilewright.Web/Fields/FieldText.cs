using Stilewright.Measure;

namespace Stilewright.Web.Fields;

/// <summary>Lengths in fields: shown in the reader's unit where that is exact, and kept as they were typed.</summary>
/// <param name="own">The unit of the document, which numbers without a unit are in.</param>
/// <param name="shown">The reader's unit and fineness.</param>
public sealed class FieldText(LengthUnit own, LengthFormat shown)
{
    /// <summary>What the field says: as typed in the document's own unit, else the same length in the reader's unit.</summary>
    public string Of(LengthEntry? entry)
    {
        if (entry is not { } length)
            return "";
        if (own == shown.Unit)
            return length.Text;
        return shown.IsExact(length.Value) ? shown.Print(length.Value) : WithUnit(length.Text, own);
    }

    /// <summary>Reads what was typed; a number without a unit is in the reader's.</summary>
    public ParseResult<LengthEntry> Read(string text) => LengthReader.Read(text, shown.Unit) switch
    {
        ParseResult<Length>.Parsed(var length) => new ParseResult<LengthEntry>.Parsed(new(own == shown.Unit ? text.Trim() : WithUnit(text.Trim(), shown.Unit), length)),
        ParseResult<Length>.Failed(var given, var position, var expected) => new ParseResult<LengthEntry>.Failed(given, position, expected),
        _ => throw new InvalidOperationException("Text is read or not."),
    };

    // A text without a unit of its own gets one, so that it means the same in a document of another unit.
    private static string WithUnit(string text, LengthUnit unit) =>
        text.Any(character => char.IsAsciiLetter(character) || character is '"' or '\'' or '″' or '′') ? text : $"{text} {(unit == LengthUnit.Inch ? "in" : "mm")}";
}
