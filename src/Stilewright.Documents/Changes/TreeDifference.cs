using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>Walks two trees of one document together and notes where they differ.</summary>
internal sealed class TreeDifference
{
    // Removals come first, so that a record can be put elsewhere without standing twice.
    private readonly List<Change> removals = [];
    private readonly List<Change> others = [];

    private TreeDifference()
    {
    }

    public static IReadOnlyList<Change> Between(JsonObject before, JsonObject after, RecordShape root)
    {
        var (was, now) = (JsonParts.IdOf(root, before), JsonParts.IdOf(root, after));
        if (was is null || was != now)
            throw new ArgumentException($"The trees are of different documents, \"{was}\" and \"{now}\".", nameof(after));
        TreeDifference difference = new();
        difference.Record(root, before, after, was, "", 0);
        return [.. difference.removals, .. difference.others];
    }

    /// <summary>Compares a record by its fields, at least one of the two standing; keys that it does not know are compared as they are.</summary>
    private void Record(RecordShape shape, JsonObject? before, JsonObject? after, string record, string path, int wraps)
    {
        foreach (var field in shape.Fields)
            Value(field.Shape, before?[field.Key], after?[field.Key], record, ChangePath.Field(path, field.Key), wraps);
        foreach (var key in Keys(before, after).Where(key => shape.PositionOf(key) is null))
            Set(before?[key], after?[key], record, ChangePath.Field(path, key), wraps);
    }

    private void Value(Shape shape, JsonNode? before, JsonNode? after, string record, string path, int wraps)
    {
        before = JsonParts.OrAbsent(shape, before);
        after = JsonParts.OrAbsent(shape, after);
        if (before is null && after is null)
            return;
        switch (shape)
        {
            case SettingsShape when before is null or JsonObject && after is null or JsonObject:
                foreach (var key in Keys(before as JsonObject, after as JsonObject).OrderBy(FieldOrder.OfSetting))
                    Set(before?[key], after?[key], record, ChangePath.Field(path, key), wraps);
                break;
            case ListShape { IsById: true } list when wraps == 0 && AreById(list, before) && AreById(list, after):
                Records(list, before as JsonArray ?? [], after as JsonArray ?? [], record, path);
                break;
            case ListShape list when before is JsonArray { Count: var count } was && after is JsonArray now && now.Count == count:
                for (var index = 0; index < count; index++)
                    Value(list.Item, was[index], now[index], record, ChangePath.Item(path, index, count), 0);
                break;
            case RecordShape { MayBeEmpty: true } one when (before, after) is (null, JsonObject { Count: > 0 }) or (JsonObject { Count: > 0 }, null):
                Record(one, before as JsonObject, after as JsonObject, record, path, wraps + 1);
                break;
            case RecordShape or CaseSetShape when shape.RecordOf(before) is { } one && shape.RecordOf(after) == one
                && JsonParts.IdOf(one, before) == JsonParts.IdOf(one, after):
                var id = JsonParts.IdOf(one, after);
                Record(one, (JsonObject)before!, (JsonObject)after!, id ?? record, id is null ? path : "", 0);
                break;
            default:
                Set(before, after, record, path, wraps);
                break;
        }
    }

    private void Set(JsonNode? before, JsonNode? after, string record, string path, int wraps)
    {
        if (!JsonParts.Same(before, after))
            others.Add(new FieldSet(record, path, before?.DeepClone(), after?.DeepClone(), wraps));
    }

    private void Records(ListShape list, JsonArray before, JsonArray after, string owner, string path)
    {
        var was = before.ToDictionary(item => JsonParts.IdOf(list.Item, item)!, item => (JsonObject)item!, StringComparer.Ordinal);
        var now = after.Select(item => JsonParts.IdOf(list.Item, item)!).ToList();
        var stays = now.ToHashSet(StringComparer.Ordinal);
        List<string> order = [.. was.Keys];
        foreach (var id in was.Keys.Where(id => !stays.Contains(id)))
        {
            removals.Add(new RecordRemoved(owner, path, Before(order, id), (JsonObject)was[id].DeepClone()));
            order.Remove(id);
        }

        var inPlace = LongestRising([.. now.Where(was.ContainsKey)], order);
        for (var index = 0; index < now.Count; index++)
        {
            var id = now[index];
            var follows = index == 0 ? null : now[index - 1];
            var record = (JsonObject)after[index]!;
            if (!was.TryGetValue(id, out var old))
            {
                others.Add(new RecordAdded(owner, path, follows, (JsonObject)record.DeepClone()));
                order.Insert(After(order, follows), id);
                continue;
            }

            if (!inPlace.Contains(id) && Before(order, id) is var from && from != follows)
            {
                others.Add(new RecordMoved(owner, path, id, from, follows));
                order.Remove(id);
                order.Insert(After(order, follows), id);
            }

            if (list.Item.RecordOf(old) is { } one && list.Item.RecordOf(record) == one)
                Record(one, old, record, id, "", 0);
            else
                Set(old, record, id, "", 0);
        }

        static string? Before(List<string> order, string id) => order.IndexOf(id) is > 0 and var at ? order[at - 1] : null;

        static int After(List<string> order, string? id) => id is null ? 0 : order.IndexOf(id) + 1;
    }

    /// <summary>As many as can stay where they are while the others are moved: the longest rising subsequence.</summary>
    private static HashSet<string> LongestRising(List<string> ids, List<string> order)
    {
        var places = order.Select((id, place) => (id, place)).ToDictionary(one => one.id, one => one.place, StringComparer.Ordinal);
        // ends[n] is the index of the id with the least place that ends a rising row of n + 1.
        List<int> ends = [];
        var previous = new int[ids.Count];
        for (var index = 0; index < ids.Count; index++)
        {
            var place = places[ids[index]];
            var (low, high) = (0, ends.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (places[ids[ends[middle]]] < place)
                    low = middle + 1;
                else
                    high = middle;
            }

            previous[index] = low == 0 ? -1 : ends[low - 1];
            if (low == ends.Count)
                ends.Add(index);
            else
                ends[low] = index;
        }

        HashSet<string> kept = new(StringComparer.Ordinal);
        for (var index = ends.Count == 0 ? -1 : ends[^1]; index >= 0; index = previous[index])
            kept.Add(ids[index]);
        return kept;
    }

    private static bool AreById(ListShape list, JsonNode? node)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        return node is null || (node is JsonArray items && items.All(item => JsonParts.IdOf(list.Item, item) is { } id && seen.Add(id)));
    }

    private static IEnumerable<string> Keys(JsonObject? before, JsonObject? after) =>
        (before ?? []).Select(field => field.Key).Union((after ?? []).Select(field => field.Key));
}
