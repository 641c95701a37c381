using System.Text.Json;
using System.Text.Json.Nodes;

namespace Stilewright.Documents.Changes;

/// <summary>Changes as JSON, to be kept beside the revision that they led to: one short object each, whose first key tells which change it is.</summary>
public static class ChangeJson
{
    private const string Set = "set", Add = "add", Remove = "remove", Move = "move";
    private const string At = "at", Was = "was", Is = "is", Wraps = "wraps", List = "list", Follows = "follows", Record = "record";

    public static JsonArray Write(IEnumerable<Change> changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return [.. changes.Select(Write)];
    }

    /// <exception cref="FormatException">The JSON is not what was written here.</exception>
    public static IReadOnlyList<Change> Read(JsonArray changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return [.. changes.Select((change, index) => change is JsonObject one && Read(one) is { } read ? read
            : throw new FormatException(FormattableString.Invariant($"Item {index + 1} of the changes is none that this program knows.")))];
    }

    private static JsonNode Write(Change change) => change switch
    {
        FieldSet set => Write(Set, set.Record, (At, set.Path), (Was, set.Before?.DeepClone()), (Is, set.After?.DeepClone()), (Wraps, set.Wraps == 0 ? null : set.Wraps)),
        RecordAdded added => Write(Add, added.Owner, (List, added.List), (Follows, added.Follows), (Record, added.Record.DeepClone())),
        RecordRemoved removed => Write(Remove, removed.Owner, (List, removed.List), (Follows, removed.Follows), (Record, removed.Record.DeepClone())),
        RecordMoved moved => Write(Move, moved.Owner, (List, moved.List), (Record, moved.Record), (Was, moved.Before), (Is, moved.After)),
        _ => throw new ArgumentException($"{change.GetType()} is no change of a document."),
    };

    private static JsonObject Write(string kind, string id, params (string Key, JsonNode? Value)[] fields)
    {
        JsonObject written = new() { [kind] = id };
        foreach (var (key, value) in fields)
        {
            if (value is not null)
                written[key] = value;
        }

        return written;
    }

    private static Change? Read(JsonObject change) => (change.FirstOrDefault().Key, JsonParts.TextOf(change.FirstOrDefault().Value), JsonParts.TextOf(change[List])) switch
    {
        (Set, { } id, _) when JsonParts.TextOf(change[At]) is { } path && ChangePath.IsPath(path) && CountOf(change[Wraps]) is { } wraps =>
            new FieldSet(id, path, change[Was]?.DeepClone(), change[Is]?.DeepClone(), wraps),
        (Add, { } owner, { } list) when ChangePath.IsPath(list) && change[Record] is JsonObject record && JsonParts.IdOf(record) is not null =>
            new RecordAdded(owner, list, JsonParts.TextOf(change[Follows]), (JsonObject)record.DeepClone()),
        (Remove, { } owner, { } list) when ChangePath.IsPath(list) && change[Record] is JsonObject record && JsonParts.IdOf(record) is not null =>
            new RecordRemoved(owner, list, JsonParts.TextOf(change[Follows]), (JsonObject)record.DeepClone()),
        (Move, { } owner, { } list) when ChangePath.IsPath(list) && JsonParts.TextOf(change[Record]) is { } id =>
            new RecordMoved(owner, list, id, JsonParts.TextOf(change[Was]), JsonParts.TextOf(change[Is])),
        _ => null,
    };

    private static int? CountOf(JsonNode? node) => node is null ? 0
        : node is JsonValue value && value.GetValueKind() == JsonValueKind.Number && value.TryGetValue<int>(out var count) && count > 0 ? count : null;
}
