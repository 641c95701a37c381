using System.Text.Json;
using System.Text.Json.Nodes;

namespace Stilewright.Documents.Tests;

/// <summary>Edits of trees by chance, of any place but ids and kinds. What comes out is a tree, not always a sound document.</summary>
internal sealed class RandomEdits(Random random)
{
    private static readonly string[] Fixed = ["id", "kind", "format", "version"];
    private int made;

    /// <summary>A copy with some edits anywhere.</summary>
    public JsonObject Some(JsonObject tree, int count)
    {
        var copy = (JsonObject)tree.DeepClone();
        for (var edit = 0; edit < count; edit++)
        {
            var places = Places(copy).ToList();
            if (places.Count > 0)
                Edit(places[random.Next(places.Count)]);
        }

        return copy;
    }

    /// <summary>Two copies, each with one edit, at places of which neither is inside the other.</summary>
    public (JsonObject Mine, JsonObject Theirs) Apart(JsonObject tree)
    {
        var (mine, theirs) = ((JsonObject)tree.DeepClone(), (JsonObject)tree.DeepClone());
        var places = Places(mine).ToList();
        var others = Places(theirs).ToList();
        int first, second;
        do
            (first, second) = (random.Next(places.Count), random.Next(places.Count));
        while (AreNested(places[first].GetPath(), places[second].GetPath()));
        Edit(places[first]);
        Edit(others[second]);
        return (mine, theirs);
    }

    private static bool AreNested(string one, string other) =>
        one == other || Starts(one, other) || Starts(other, one);

    private static bool Starts(string path, string with) =>
        path.StartsWith(with, StringComparison.Ordinal) && path[with.Length] is '.' or '[';

    private static IEnumerable<JsonNode> Places(JsonNode tree) => tree switch
    {
        JsonObject one => one.Where(field => !Fixed.Contains(field.Key) && field.Value is not null).SelectMany(field => Places(field.Value!).Prepend(field.Value!)),
        JsonArray items => items.OfType<JsonNode>().SelectMany(item => item is JsonValue ? [item] : Places(item)),
        _ => [],
    };

    private void Edit(JsonNode place)
    {
        switch (place)
        {
            case JsonArray { Count: > 0 } list when random.Next(4) is > 0 and var what:
                EditList(list, what);
                break;
            case JsonValue value when value.Parent is JsonArray or JsonObject && (value.Parent is JsonArray || random.Next(3) > 0):
                value.ReplaceWith(Other(value));
                break;
            default:
                TakeOut(place);
                break;
        }
    }

    private void EditList(JsonArray list, int what)
    {
        var at = random.Next(list.Count);
        switch (what)
        {
            case 1:
                list.RemoveAt(at);
                if (list.Count == 0)
                    TakeOut(list);
                break;
            case 2:
                var copy = list[at]!.DeepClone();
                Rename(copy);
                list.Insert(random.Next(list.Count + 1), copy);
                break;
            default:
                var item = list[at];
                list.RemoveAt(at);
                list.Insert(random.Next(list.Count + 1), item);
                break;
        }
    }

    /// <summary>Empty lists and settings are not written; other records may be empty.</summary>
    private static void TakeOut(JsonNode place)
    {
        if (place.Parent is not JsonObject parent)
            return;
        parent.Remove(place.GetPropertyName());
        if (parent.Count == 0 && parent.Parent is JsonObject && parent.GetPropertyName() is "overrides" or "settings")
            TakeOut(parent);
    }

    private JsonNode Other(JsonValue value) => value.GetValueKind() switch
    {
        JsonValueKind.Number => JsonValue.Create(value.GetValue<int>() + 1 + random.Next(5)),
        JsonValueKind.True => JsonValue.Create(false),
        JsonValueKind.False => JsonValue.Create(true),
        _ => JsonValue.Create($"{value.GetValue<string>()}{random.Next(10)}"),
    };

    private void Rename(JsonNode node)
    {
        if (node is JsonObject one)
        {
            if (one["id"] is { } id)
                one["id"] = $"{id.GetValue<string>()}-{++made}";
            foreach (var (_, inner) in one.ToList())
                Rename(inner!);
        }
        else if (node is JsonArray items)
        {
            foreach (var item in items)
                Rename(item!);
        }
    }
}
