using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Stilewright.Documents.Shapes;

namespace Stilewright.Documents.Changes;

/// <summary>Puts changes one after the other on a copy of a document.</summary>
internal sealed class ChangeMerge
{
    private readonly JsonObject tree;
    private readonly RecordShape root;
    private readonly TreeIndex index = new();

    private ChangeMerge(JsonObject head, RecordShape root)
    {
        tree = (JsonObject)head.DeepClone();
        this.root = root;
        index.Add(root, tree);
    }

    public static MergeResult Apply(JsonObject head, IReadOnlyList<Change> changes, RecordShape root)
    {
        ChangeMerge merge = new(head, root);
        List<Conflict> conflicts = [];
        List<Change> others = [];
        foreach (var change in changes)
        {
            if (merge.Put(change) is { } conflict)
                conflicts.Add(conflict);
            else
                others.Add(change);
        }

        conflicts.AddRange(merge.TakenTwice(others));
        if (conflicts.Count == 0)
            return new MergeResult.Merged(merge.tree);

        // Taking out a change may leave a later one without the record that it belongs to.
        others = [.. others.Except(conflicts.Select(conflict => conflict.Change), ReferenceEqualityComparer.Instance).Cast<Change>()];
        while (Apply(head, others, root) is MergeResult.Conflicts more)
        {
            conflicts.AddRange(more.Found);
            others = [.. more.Others];
        }

        return new MergeResult.Conflicts([.. changes.SelectMany(change => conflicts.Where(conflict => ReferenceEquals(conflict.Change, change)))], others);
    }

    private Conflict? Put(Change change) => change switch
    {
        FieldSet set => Set(set),
        RecordAdded added => Add(added),
        RecordRemoved removed => Remove(removed),
        RecordMoved moved => Move(moved),
        _ => throw new ArgumentException($"{change.GetType()} is no change of a document."),
    };

    private Conflict? Set(FieldSet set)
    {
        if (index.Find(set.Record) is not { } owner)
            return new(set, ConflictReason.DeletedSince, null);
        if (set.Path.Length == 0)
            return Replace(set, owner);

        Place place = new(owner.Shape, owner.Tree, null, default);
        foreach (var step in ChangePath.Steps(set.Path))
        {
            if (step.IsItem && place.Node is JsonArray items && items.Count != step.Of)
                return new(set, ConflictReason.ListChangedSince, items.DeepClone());
            if (place.Inside(step, tree) is not { } inside)
                return set.After is null ? null : new(set, ConflictReason.DeletedSince, null);
            place = inside;
        }

        var now = JsonParts.OrAbsent(place.Shape, place.Node);
        if (JsonParts.Same(now, set.After))
            return null;
        if (!JsonParts.Same(now, set.Before))
            return new(set, ConflictReason.ChangedSince, now?.DeepClone());
        if (set.After is null && place.Step.IsItem)
            throw new ArgumentException($"The change of {set.Record} leaves a gap in the list at {set.Path}.");
        if (set.After is null)
            TakeOut(place, set.Wraps);
        else if (!TryEnter(place, set.After.DeepClone()))
            return new(set, ConflictReason.DeletedSince, null);
        return null;
    }

    /// <summary>Replaces a whole record by one of another kind.</summary>
    private Conflict? Replace(FieldSet set, IndexedRecord owner)
    {
        if (JsonParts.Same(owner.Tree, set.After))
            return null;
        if (!JsonParts.Same(owner.Tree, set.Before))
            return new(set, ConflictReason.ChangedSince, owner.Tree.DeepClone());
        if (set.After is null || owner.Tree.Parent is not JsonArray items || Shape.Of(owner.Shape.Type.BaseType!) is not CaseSetShape kinds)
            throw new ArgumentException($"The change of {set.Record} puts no record of another kind in its place.");
        index.Remove(owner.Shape, owner.Tree);
        var copy = set.After.DeepClone();
        items[items.IndexOf(owner.Tree)] = copy;
        index.Add(kinds, copy);
        return null;
    }

    /// <returns>False where something that the value would stand in is gone and cannot be made for it.</returns>
    private bool TryEnter(Place place, JsonNode value)
    {
        var (entered, was) = (value, place);

        // Objects that stand only for what they hold are made from the inside out.
        while (place.Parent is { Node: null } parent)
        {
            if (parent.Shape is not (SettingsShape or RecordShape { MayBeEmpty: true, IdField: null }))
                return false;
            value = new JsonObject { [place.Step.Key] = value };
            place = parent;
        }

        if (place.Step.IsItem)
            ((JsonArray)place.Parent!.Node!)[place.Step.Index] = value;
        else
            FieldOrder.Put((JsonObject)place.Parent!.Node!, place.Parent.Shape!, place.Step.Key, value);
        if (was.Shape is { } shape)
        {
            index.Remove(shape, was.Node);
            index.Add(shape, entered);
        }

        return true;
    }

    private void TakeOut(Place place, int wraps)
    {
        if (place.Shape is { } shape)
            index.Remove(shape, place.Node);
        while (place.Parent is { Node: JsonObject parent } above)
        {
            parent.Remove(place.Step.Key);
            if (parent.Count > 0 || above.Parent is null || (above.Shape is not SettingsShape && --wraps < 0))
                break;
            place = above;
        }
    }

    private Conflict? Add(RecordAdded added)
    {
        if (index.Find(added.Owner) is not { } owner || PlaceOf(owner, added.List) is not { Shape: ListShape list } place)
            return new(added, ConflictReason.DeletedSince, null);
        var items = place.Node as JsonArray;
        var id = JsonParts.IdOf(list.Item, added.Record) ?? throw new ArgumentException("A record that is added has no id.");
        if (items is not null && ItemOf(list, items, id) is { } there)
            return JsonParts.Same(there, added.Record) ? null : new(added, ConflictReason.IdTaken, there.DeepClone());
        if (items is null)
        {
            items = [];
            if (!TryEnter(place, items))
                return new(added, ConflictReason.DeletedSince, null);
        }

        var copy = (JsonObject)added.Record.DeepClone();
        items.Insert(IndexAfter(list, items, added.Follows), copy);
        index.Add(list.Item, copy);
        return null;
    }

    private Conflict? Remove(RecordRemoved removed)
    {
        var id = JsonParts.IdOf(removed.Record) ?? throw new ArgumentException("A record that is removed has no id.");
        if (!TryList(removed.Owner, removed.List, out var place, out var list, out var items) || ItemOf(list, items, id) is not { } item)
        {
            // Deleted already; but what was put elsewhere meanwhile was not.
            return index.Find(id) is { } elsewhere ? new(removed, ConflictReason.ChangedSince, elsewhere.Tree.DeepClone()) : null;
        }

        if (!JsonParts.Same(item, removed.Record))
            return new(removed, ConflictReason.ChangedSince, item.DeepClone());
        index.Remove(list.Item, item);
        items.Remove(item);
        if (items.Count == 0)
            TakeOut(place, 0);
        return null;
    }

    private Conflict? Move(RecordMoved moved)
    {
        if (!TryList(moved.Owner, moved.List, out _, out var list, out var items) || ItemOf(list, items, moved.Record) is not { } item)
            return new(moved, ConflictReason.DeletedSince, null);
        items.Remove(item);
        items.Insert(IndexAfter(list, items, moved.After), item);
        return null;
    }

    private bool TryList(string ownerId, string path, [NotNullWhen(true)] out Place? place, [NotNullWhen(true)] out ListShape? list, [NotNullWhen(true)] out JsonArray? items)
    {
        place = index.Find(ownerId) is { } owner ? PlaceOf(owner, path) : null;
        list = place?.Shape as ListShape;
        items = place?.Node as JsonArray;
        return list is not null && items is not null;
    }

    private Place? PlaceOf(IndexedRecord owner, string path)
    {
        Place? place = new(owner.Shape, owner.Tree, null, default);
        foreach (var step in ChangePath.Steps(path))
            place = place?.Inside(step, tree);
        return place;
    }

    private static JsonNode? ItemOf(ListShape list, JsonArray items, string id) =>
        items.FirstOrDefault(item => JsonParts.IdOf(list.Item, item) == id);

    private static int IndexAfter(ListShape list, JsonArray items, string? id)
    {
        if (id is null)
            return 0;
        return ItemOf(list, items, id) is { } item ? items.IndexOf(item) + 1 : items.Count;
    }

    /// <summary>Changes that have put an id into the tree which stands there elsewhere too.</summary>
    private IEnumerable<Conflict> TakenTwice(IReadOnlyList<Change> applied)
    {
        var entered = applied.Select(change => (Change: change, Tree: change switch
        {
            RecordAdded added => added.Record,
            FieldSet { After: { } after } => after,
            _ => null,
        })).Where(one => one.Tree is JsonObject or JsonArray).ToList();
        if (entered.Count == 0)
            return [];

        var twice = TreeIndex.Within(root, tree).GroupBy(one => one.Id).Where(group => group.Skip(1).Any()).ToDictionary(group => group.Key, group => group.First().Record.Tree);
        if (twice.Count == 0)
            return [];
        return entered.Select(one => (one.Change, Id: IdsIn(one.Tree).FirstOrDefault(twice.ContainsKey))).Where(one => one.Id is not null)
            .Select(one => new Conflict(one.Change, ConflictReason.IdTaken, twice[one.Id!].DeepClone()));

        static IEnumerable<string> IdsIn(JsonNode? node) => node switch
        {
            JsonObject one => one.SelectMany(field => IdsIn(field.Value)).Prepend(JsonParts.IdOf(one) ?? ""),
            JsonArray items => items.SelectMany(IdsIn),
            _ => [],
        };
    }

    /// <summary>A place in the tree that may be empty: what stands there, its form where it is known, and where it stands itself.</summary>
    private sealed record Place(Shape? Shape, JsonNode? Node, Place? Parent, PathStep Step)
    {
        /// <summary>The place inside this one; null where the records here have no such place.</summary>
        public Place? Inside(PathStep step, JsonObject root)
        {
            if (step.IsItem)
                return Shape is ListShape list && Node is JsonArray items ? new(list.Item, items[step.Index], this, step) : null;
            if (Shape is SettingsShape && Node is null or JsonObject)
                return new(null, Node?[step.Key], this, step);
            var record = Node is null ? Shape as RecordShape : Shape?.RecordOf(Node);
            var field = record?.PositionOf(step.Key) is { } position ? record.Fields[position].Shape : null;
            if (record is null || (field is null && Node != root))
                return null;
            return new(field, Node?[step.Key], this with { Shape = record }, step);
        }
    }
}
