using System.Globalization;
using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;
using Stilewright.Projects;

namespace Stilewright.Documents.Changes;

/// <summary>The records of some trees by id, with what people call them.</summary>
internal sealed class KnownRecords
{
    private readonly Dictionary<string, KnownRecord> records = new(StringComparer.Ordinal);
    private readonly RecordShape root;

    /// <param name="trees">Of one document; a record is looked up in the first that holds it.</param>
    public KnownRecords(RecordShape root, IEnumerable<JsonObject> trees)
    {
        this.root = root;
        foreach (var tree in trees)
        {
            List<KnownRecord> numbered = [];
            Visit(root, tree, null, null, 1, numbered);
            foreach (var bench in numbered.GroupBy(record => record.Project))
                Number([.. bench]);
        }
    }

    public KnownRecord? Find(string id) => records.GetValueOrDefault(id);

    /// <summary>"bench 7" of a course where something stands in a project of it; nothing otherwise.</summary>
    public string? BenchOf(KnownRecord? record) =>
        root.Type != typeof(Project) && record is { Project: { } id, Shape: var shape } && shape.Type != typeof(Project) && Find(id) is { } project ? Name(project, isShort: true) : null;

    /// <summary>"opening 2 “Lower”", "design “Cathedral”", "front of piece “Case”".</summary>
    /// <param name="isShort">Whether the number is enough where there is one.</param>
    public string Name(KnownRecord record, bool isShort = false)
    {
        if (record.Shape == root && root.Type != typeof(Project))
            return root.Label;
        if (record.Shape.Type == typeof(Face))
            return Side(record) + (record.Owner is not null && Find(record.Owner) is { } piece ? $" of {Name(piece)}" : "");
        var label = record.Shape.Fields.FirstOrDefault(field => field.Unique is not null && field.IsRequired)?.Unique!.What ?? record.Shape.Label;
        var name = JsonParts.TextOf(record.Tree["name"]) is { } text ? $" “{Quote.Shown(text)}”" : "";
        if (record.Number is { } number)
            return string.Create(CultureInfo.InvariantCulture, $"{label} {number}{(isShort ? "" : name)}");
        return name.Length > 0 || record.Position is null ? label + name : string.Create(CultureInfo.InvariantCulture, $"{label} {record.Position}");
    }

    /// <summary>The same of a record that stands in a change.</summary>
    /// <param name="owner">The id of the record that it stands in.</param>
    public string Name(RecordShape shape, JsonObject tree, string owner) =>
        Name(JsonParts.IdOf(tree) is { } id && Find(id) is { } known && known.Shape == shape ? known with { Tree = tree }
            : new(shape, tree, owner, null, null) { Number = OwnNumber(shape, tree) });

    private static string Side(KnownRecord face)
    {
        var shape = (WordShape)face.Shape.Fields.First(field => field.Shape is WordShape { Type: var type } && type == typeof(FaceSide)).Shape;
        var word = JsonParts.TextOf(face.Tree["side"]);
        return shape.Words.FirstOrDefault(one => one.Word == word)?.Label ?? face.Shape.Label;
    }

    private void Visit(Shape shape, JsonNode? node, string? owner, string? project, int? position, List<KnownRecord> numbered)
    {
        if (node is null || !shape.HoldsIds)
            return;
        if (shape is ListShape list)
        {
            var place = 1;
            foreach (var item in node as JsonArray ?? [])
                Visit(list.Item, item, owner, project, place++, numbered);
            return;
        }

        if (shape.RecordOf(node) is not { } record)
            return;
        if (JsonParts.IdOf(record, node) is { } id)
        {
            project = record.Type == typeof(Project) ? id : project;
            KnownRecord known = new(record, (JsonObject)node, owner, project, position) { Number = OwnNumber(record, (JsonObject)node) };
            records.TryAdd(id, known);
            if (record.Fields.Any(field => field.Unique is not null))
                numbered.Add(known);
            owner = id;
        }

        foreach (var field in record.Fields)
        {
            if (field.Shape.HoldsIds)
                Visit(field.Shape, node[field.Key], owner, project, null, numbered);
        }
    }

    /// <summary>Gives fronts without a number of their own the next that is free, as they are counted on labels: in the order of the document.</summary>
    private static void Number(IReadOnlyList<KnownRecord> ofProject)
    {
        var fronts = ofProject.Where(record => record.Shape.Type != typeof(Project)).ToList();
        var taken = fronts.Select(record => record.Number).OfType<int>().ToHashSet();
        var next = 1;
        foreach (var front in fronts.Where(front => front.Number is null))
        {
            while (!taken.Add(next))
                next++;
            front.Number = next;
        }
    }

    private static int? OwnNumber(RecordShape shape, JsonObject tree) =>
        shape.Fields.FirstOrDefault(field => field.Unique is not null) is { } field
        && tree[field.Key] is JsonValue value && value.TryGetValue<int>(out var number) ? number : null;
}

/// <summary>A record with an id in a tree, and where it stands.</summary>
/// <param name="Owner">The id of the record that it stands in; null for the root.</param>
/// <param name="Project">The id of the project that it stands in, or is.</param>
/// <param name="Position">Its place in its list, from 1; null where it stands in none.</param>
internal sealed record KnownRecord(RecordShape Shape, JsonObject Tree, string? Owner, string? Project, int? Position)
{
    /// <summary>Its own number, or the one by which it is counted; null for records that are not numbered.</summary>
    public int? Number { get; set; }
}
