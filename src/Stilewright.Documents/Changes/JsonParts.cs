using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>Small questions about trees.</summary>
internal static class JsonParts
{
    /// <summary>Whether both are the same, whatever the order of keys. Numbers are compared digit by digit, since a length stays as it was typed.</summary>
    public static bool Same(JsonNode? left, JsonNode? right) => (left, right) switch
    {
        (null, null) => true,
        (JsonObject one, JsonObject other) => one.Count == other.Count
            && one.All(field => other.TryGetPropertyValue(field.Key, out var value) && Same(field.Value, value)),
        (JsonArray one, JsonArray other) => one.Count == other.Count && !one.Where((item, index) => !Same(item, other[index])).Any(),
        (JsonValue one, JsonValue other) => one.GetValueKind() == other.GetValueKind() && one.GetValueKind() switch
        {
            JsonValueKind.String => one.GetValue<string>() == other.GetValue<string>(),
            JsonValueKind.Number => one.ToJsonString() == other.ToJsonString(),
            _ => true,
        },
        _ => false,
    };

    public static string? TextOf(JsonNode? node) =>
        node is JsonValue value && value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : null;

    /// <summary>The id of a record in a tree; null where the record has none.</summary>
    public static string? IdOf(Shape shape, JsonNode? node) => shape.RecordOf(node) is { IdField: not null } ? IdOf((JsonObject)node!) : null;

    /// <summary>The id of an object; null where it has none.</summary>
    public static string? IdOf(JsonObject record) => TextOf(record[RecordShape.IdKey]);

    /// <summary>The value, or null where it says no more than an absent key does.</summary>
    public static JsonNode? OrAbsent(Shape? shape, JsonNode? node) => (shape, node) switch
    {
        (ListShape, JsonArray { Count: 0 }) => null,
        (SettingsShape, JsonObject { Count: 0 }) => null,
        _ => node,
    };
}
