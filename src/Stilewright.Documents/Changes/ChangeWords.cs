using System.Globalization;
using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Changes;

/// <summary>Tells changes in plain sentences without a full stop; lengths stand as they were typed.</summary>
/// <param name="root">The record that the trees hold. Of a course, the bench is told too.</param>
/// <param name="trees">The document before and after the change, or as it is now; what is in none of them is told without its name.</param>
public sealed class ChangeWords(Type root, params IEnumerable<JsonObject> trees)
{
    private readonly KnownRecords known = new(DocumentChanges.RootShape(root), trees);

    private readonly RecordShape rootShape = DocumentChanges.RootShape(root);

    /// <summary>"Opening 2 “Lower”, bead: none → 1/4", "Bench 7: opening “Top drawer” added".</summary>
    public string Of(Change change)
    {
        ArgumentNullException.ThrowIfNull(change);
        switch (change)
        {
            case FieldSet set:
                var place = PlaceOf(set);
                var (was, now) = (Told(place, set.Before), Told(place, set.After));
                return $"{Start(place)}: " + (was == now ? $"{now}, changed in its details" : $"{was} → {now}");
            case RecordAdded added:
                return $"{Start(added)} added";
            case RecordRemoved removed:
                return $"{Start(removed)} {(IsBench(removed) ? "cleared" : "removed")}";
            case RecordMoved moved:
                return $"{Start(moved)} moved {(moved.After is null ? "to the first place" : $"behind {NameOf(moved.After)}")}";
            default:
                throw new ArgumentException($"{change.GetType()} is no change of a document.");
        }
    }

    /// <summary>Tells what stands against a change, and both values where there are two.</summary>
    public string Of(Conflict conflict)
    {
        ArgumentNullException.ThrowIfNull(conflict);
        var place = conflict.Change is FieldSet field ? PlaceOf(field) : null;
        var start = place is null ? Start(conflict.Change) : Start(place);
        return conflict switch
        {
            { Reason: ConflictReason.ChangedSince, Change: FieldSet set } =>
                $"{start}: you put {Told(place!, set.After)}, but {Told(place!, conflict.Theirs)} stands there now; it was {Told(place!, set.Before)}",
            { Reason: ConflictReason.ChangedSince } => $"{start}: you removed it, but someone else has changed it since",
            { Reason: ConflictReason.DeletedSince, Change: FieldSet set } => $"{start}: you put {Told(place!, set.After)}, but what it belongs to has been deleted",
            { Reason: ConflictReason.DeletedSince, Change: RecordAdded } => $"{start}: you added it, but what it belongs to has been deleted",
            { Reason: ConflictReason.DeletedSince } => $"{start}: you moved it, but it has been deleted",
            { Reason: ConflictReason.ListChangedSince, Change: FieldSet set } => $"{start}: you put {Told(place!, set.After)}, but the list it stands in has more or fewer items now",
            _ => $"{start}: it stands in the document already, and is not the same",
        };
    }

    private bool IsBench(RecordRemoved removed) => rootShape.Type == typeof(Course) && removed.List == CourseTree.ProjectsKey;

    private string Start(Change change) => change switch
    {
        RecordAdded added => Start(added.Owner, added.List, added.Record),
        RecordRemoved removed => Start(removed.Owner, removed.List, removed.Record),
        RecordMoved moved => Sentence(known.BenchOf(known.Find(moved.Record)), ": ", NameOf(moved.Record)),
        _ => throw new ArgumentException($"{change.GetType()} is no change of a document."),
    };

    private string Start(string owner, string list, JsonObject record)
    {
        var found = known.Find(owner);
        var shape = found is null ? null : Walk(found, list).Shape is ListShape one ? one.Item.RecordOf(record) : null;
        var name = shape is not null ? known.Name(shape, record, owner)
            : JsonParts.TextOf(record["name"]) is { } text ? $"“{Quote.Shown(text)}”" : "something";
        var bench = found?.Shape.Type == typeof(Project) && found.Shape != rootShape ? known.Name(found, isShort: true) : known.BenchOf(found);
        return Sentence(bench, ": ", name);
    }

    private static string Start(ToldPlace place) =>
        Sentence(place.Bench, ", ", string.Join(", ", (string[])[place.Subject, .. place.Labels]));

    private static string Sentence(string? bench, string between, string rest)
    {
        var text = bench is null ? rest : bench + between + rest;
        return char.ToUpperInvariant(text[0]) + text[1..];
    }

    private string NameOf(string id) => known.Find(id) is { } record ? known.Name(record) : "something that is gone";

    private ToldPlace PlaceOf(FieldSet set)
    {
        if (known.Find(set.Record) is not { } record)
            return new(null, "something that is gone", [.. ChangePath.Steps(set.Path).Where(step => !step.IsItem).Select(step => Spelling.InWords(step.Key)).TakeLast(1)], null, null, ValueWords.Absent(null));
        var subject = known.Name(record, isShort: record.Shape.Type == typeof(Project));
        if (set.Path.Length == 0)
            return new(known.BenchOf(record), subject, [], Shape.Of(record.Shape.Type.BaseType!) as CaseSetShape, null, ValueWords.Absent(null));
        var (shape, field, labels, isSetting) = Walk(record, set.Path);
        var absent = !isSetting ? ValueWords.Absent(field) : rootShape.Type == typeof(HouseStandard) ? "as shipped" : ValueWords.AsTheStandardSays;
        return new(known.BenchOf(record), subject, labels, shape, isSetting ? null : field, absent);
    }

    private string Told(ToldPlace place, JsonNode? value) => value is null ? place.Absent : new ValueWords(known).Of(place.Shape, place.Field, value);

    /// <summary>Follows a path by the forms of records; the tree tells kinds, where it still has what the path leads through.</summary>
    private static (Shape? Shape, FieldShape? Field, IReadOnlyList<string> Labels, bool IsSetting) Walk(KnownRecord record, string path)
    {
        Shape? shape = record.Shape;
        JsonNode? node = record.Tree;
        FieldShape? field = null;
        var isSetting = false;
        List<(string Label, bool IsSilent)> labels = [];
        foreach (var step in ChangePath.Steps(path))
        {
            if (step.IsItem)
            {
                // The item is named in place of its list.
                var listLabel = labels.Count > 0 ? labels[^1].Label : "";
                if (labels.Count > 0)
                    labels.RemoveAt(labels.Count - 1);
                var list = shape as ListShape;
                labels.Add((string.Create(CultureInfo.InvariantCulture, $"{(list is null ? "item" : ValueWords.ItemLabel(list, listLabel))} {step.Index + 1}"), false));
                node = node is JsonArray items && step.Index < items.Count ? items[step.Index] : null;
                (shape, field) = (list?.Item, null);
                continue;
            }

            if (shape is SettingsShape)
            {
                labels.Add((Settings.Find(step.Key)?.Label ?? step.Key.Replace('.', ' '), false));
                (shape, field, isSetting) = (null, null, true);
            }
            else
            {
                field = FieldOf(shape, node, step.Key);
                shape = field?.Shape;
                labels.Add((field?.Label ?? Spelling.InWords(step.Key), field?.IsSilent ?? false));
            }

            node = (node as JsonObject)?[step.Key];
        }

        return (shape, field, [.. labels.Where((label, index) => !label.IsSilent || index == labels.Count - 1).Select(label => label.Label)], isSetting);
    }

    private static FieldShape? FieldOf(Shape? shape, JsonNode? node, string key)
    {
        IEnumerable<RecordShape> records = shape switch
        {
            RecordShape record => [record],
            CaseSetShape set when set.RecordOf(node) is { } record && record.PositionOf(key) is not null => [record],
            CaseSetShape set => set.Cases.Select(one => one.Shape),
            _ => [],
        };
        return records.SelectMany(record => record.Fields).FirstOrDefault(field => field.Key == key);
    }

    /// <param name="Bench">The bench, where it is told.</param>
    /// <param name="Labels">What the place is called, from the outside in.</param>
    private sealed record ToldPlace(string? Bench, string Subject, IReadOnlyList<string> Labels, Shape? Shape, FieldShape? Field, string Absent);
}
