using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>Tells values of documents shortly, in the words of the trade and never as JSON.</summary>
internal sealed class ValueWords(KnownRecords known)
{
    public const string AsTheStandardSays = "as the standard says";

    private const int MostDetails = 5;
    private const int MostItems = 6;
    private const string AbsentWord = "absent, ";

    /// <summary>What holds where nothing is entered.</summary>
    public static string Absent(FieldShape? field)
    {
        if (field?.AbsentLabel is { } label)
            return label;
        if (field?.Meaning is { } meaning && meaning.LastIndexOf(AbsentWord, StringComparison.OrdinalIgnoreCase) is >= 0 and var at)
            return meaning[(at + AbsentWord.Length)..];
        return (field?.Shape, field?.Absent) switch
        {
            (WordShape words, { } word) => words.Words.First(one => one.Word == words.WordOf(word)).Label,
            (YesNoShape, _) => "no",
            (CountShape, int count) => count.ToString(CultureInfo.InvariantCulture),
            _ => "none",
        };
    }

    /// <param name="shape">The value's form; null where it is not known, as of a key that is no more.</param>
    /// <param name="field">The field that it is the value of; null for an item of a list.</param>
    public string Of(Shape? shape, FieldShape? field, JsonNode value) => (shape, value) switch
    {
        (RecordShape or CaseSetShape, JsonObject one) when shape.RecordOf(one) is { } record => Record(shape, record, one),
        (SettingsShape, JsonObject settings) => Count(settings.Count, "setting", "settings"),
        (null, JsonObject setting) => (setting["value"] is { } inner ? Of(null, null, inner) : "no value")
            + (JsonParts.TextOf(setting["source"]) is { } source ? $" (from “{Quote.Shown(source)}”)" : ""),
        (ListShape list, JsonArray items) => List(list, field, items),
        (WordShape words, JsonValue word) => words.Words.FirstOrDefault(one => one.Word == Text(word))?.Label ?? Text(word),
        (TextShape, JsonValue text) when field?.RefersTo is not null => Reference(Text(text)),
        (TextShape, JsonValue text) => $"“{Quote.Shown(Text(text))}”",
        (_, JsonValue plain) => Text(plain),
        (_, JsonArray items) => Count(items.Count, "item", "items"),
        _ => "something",
    };

    /// <summary>What one item of a list is called: "leaf", "width".</summary>
    public static string ItemLabel(ListShape list, string listLabel) => list.Item switch
    {
        RecordShape record => record.Label,
        CaseSetShape set => set.Label,
        _ => listLabel.EndsWith('s') ? listLabel[..^1] : listLabel,
    };

    public static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");

    private string Record(Shape shape, RecordShape record, JsonObject one)
    {
        List<string> details = [];
        foreach (var field in record.Fields)
        {
            if (one[field.Key] is { } value && !field.IsId && Detail(field, value) is { Length: > 0 } detail)
                details.Add(detail);
        }

        if (details.Count > MostDetails)
            details = [.. details.Take(MostDetails), "…"];
        if (shape is not CaseSetShape)
            return details.Count == 0 ? "nothing said" : string.Join(", ", details);
        return details.Count == 0 ? record.Label : $"{record.Label} ({string.Join(", ", details)})";
    }

    private string Detail(FieldShape field, JsonNode value) => field.Shape switch
    {
        WordShape => Of(field.Shape, field, value),
        YesNoShape => Text(value) == "yes" ? field.Label : "",
        ListShape { Item: RecordShape or CaseSetShape } or SettingsShape => Of(field.Shape, field, value),
        RecordShape or CaseSetShape => $"with {field.Label}",
        TextShape when field.Key == "name" => Of(field.Shape, field, value),
        _ when Of(field.Shape, field, value) is var told => told.StartsWith(field.Label, StringComparison.Ordinal) ? told : $"{field.Label} {told}",
        _ => "",
    };

    private string List(ListShape list, FieldShape? field, JsonArray items)
    {
        var many = field?.Label ?? "items";
        if (list.Item is RecordShape or CaseSetShape || items.Count > MostItems)
            return Count(items.Count, ItemLabel(list, many), many);
        return string.Join(", ", items.OfType<JsonNode>().Select(item => Of(list.Item, null, item)));
    }

    /// <summary>The name where the record has one, since the field says what it is.</summary>
    private string Reference(string id) => known.Find(id) is not { } record ? id
        : JsonParts.TextOf(record.Tree["name"]) is { } name && record.Number is null ? $"“{Quote.Shown(name)}”" : known.Name(record);

    private static string Text(JsonNode value) => value.GetValueKind() switch
    {
        JsonValueKind.String => Quote.Shown(value.GetValue<string>()),
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        _ => value.ToJsonString(),
    };
}
