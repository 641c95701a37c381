using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>The records of a tree by their ids. While a tree is being altered an id may stand twice; then the later one is found.</summary>
internal sealed class TreeIndex
{
    private readonly Dictionary<string, IndexedRecord> records = new(StringComparer.Ordinal);

    public IndexedRecord? Find(string id) => records.GetValueOrDefault(id);

    public void Add(Shape shape, JsonNode? node)
    {
        foreach (var (id, record) in Within(shape, node))
            records[id] = record;
    }

    public void Remove(Shape shape, JsonNode? node)
    {
        foreach (var (id, record) in Within(shape, node))
        {
            if (records.TryGetValue(id, out var known) && ReferenceEquals(known.Tree, record.Tree))
                records.Remove(id);
        }
    }

    /// <summary>Every record with an id in the order of the tree, the outer before the inner.</summary>
    public static IEnumerable<(string Id, IndexedRecord Record)> Within(Shape shape, JsonNode? node)
    {
        List<(string, IndexedRecord)> found = [];
        Visit(shape, node);
        return found;

        void Visit(Shape shape, JsonNode? node)
        {
            if (node is null || !shape.HoldsIds)
                return;
            if (shape is ListShape list)
            {
                foreach (var item in node as JsonArray ?? [])
                    Visit(list.Item, item);
                return;
            }

            if (shape.RecordOf(node) is not { } record)
                return;
            if (JsonParts.IdOf(record, node) is { } id)
                found.Add((id, new(record, (JsonObject)node)));
            foreach (var field in record.Fields)
            {
                if (field.Shape.HoldsIds)
                    Visit(field.Shape, node[field.Key]);
            }
        }
    }
}

/// <summary>A record with an id in a tree.</summary>
internal sealed record IndexedRecord(RecordShape Shape, JsonObject Tree);
