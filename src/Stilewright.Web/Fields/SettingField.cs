using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Fields;

/// <summary>The value of a setting: a length, a count, a word of its choices, or a word that stands instead of a length.</summary>
/// <param name="Name">The same on every screen and after a reload.</param>
/// <param name="Get">What the document says; null where it says nothing.</param>
/// <param name="Set">The document with another value; null takes it out.</param>
public sealed record SettingField<TDocument>(
    string Name, Setting Setting, Func<TDocument, SettingValue?> Get, Func<TDocument, SettingValue?, TDocument> Set) : Field<TDocument>(Name, Setting.Label)
{
    /// <summary>The words that it may have: its choices, and what the standard has where it names a record there.</summary>
    public IReadOnlyList<string> Words { get; init; } = Setting.Choices ?? [];

    public override bool IsFigure => Setting.Kind is not (SettingKind.Choice or SettingKind.Reference);

    public override string TextIn(TDocument document, FieldText text) => Get(document) is { } value ? TextOf(value, text) : "";

    /// <summary>A value of the setting as a field shows it.</summary>
    public string TextOf(SettingValue value, FieldText text) =>
        Setting.Kind != SettingKind.Length || Setting.IsWord(value.Text) ? value.Text : text.Of(new LengthEntry(value.Text, value.Amount));

    public override FieldReading<TDocument> Read(string typed, FieldText text)
    {
        var words = typed.Trim();
        if (Setting.Kind == SettingKind.Percent && !Setting.IsWord(words))
        {
            return NumberReader.Read(words, NumberKind.Percent, LengthUnit.Inch) switch
            {
                ParseResult<Fractions.Fraction>.Failed failed => new(null, failed.Message),
                ParseResult<Fractions.Fraction>.Parsed(var percent) when percent > Setting.MostMoisture => new(null, $"{Setting.Label} is at most {Setting.MostMoisture} %, where wood stops to swell."),
                _ => Taken(new(words, default)),
            };
        }

        if (Setting.Kind is SettingKind.Choice or SettingKind.Count or SettingKind.Reference)
        {
            return Words.Contains(words) ? Taken(new(words, default))
                : new(null, $"{Setting.Label} is one of {string.Join(", ", Words)}.");
        }

        if (Setting.IsWord(words))
            return Taken(new(words, default));
        return text.Read(words) switch
        {
            ParseResult<LengthEntry>.Failed failed => new(null, failed.Message),
            ParseResult<LengthEntry>.Parsed(var entry) when entry.Value.IsNegative => new(null, $"{Setting.Label} cannot be less than nothing."),
            ParseResult<LengthEntry>.Parsed(var entry) when entry.Value.IsZero && !Setting.MayBeZero => new(null, $"{Setting.Label} must be more than nothing."),
            ParseResult<LengthEntry>.Parsed(var entry) => Taken(new(entry.Text, entry.Value)),
            _ => throw new InvalidOperationException("Text is read or not."),
        };

        FieldReading<TDocument> Taken(SettingValue value) => new(document => Set(document, value), null);
    }

    public override TDocument Without(TDocument document) => Set(document, null);
}
