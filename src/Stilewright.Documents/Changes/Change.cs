using System.Text.Json.Nodes;

namespace Stilewright.Documents.Changes;

/// <summary>One change of a document, addressed by the ids of its records.</summary>
/// <remarks>A path goes from a record to a value inside it: keys, and <c>0:2</c> for the first item of a list of two without ids,
/// joined by <c>/</c>. Trees in a change belong to it and may not be altered. Equality is by reference of trees; do not rely on it.</remarks>
public abstract record Change
{
    private protected Change()
    {
    }

    /// <summary>The change that takes this one back.</summary>
    internal abstract Change Inverse { get; }
}

/// <summary>A value that was replaced, entered or taken out.</summary>
/// <param name="Record">The id of the record that the path starts from.</param>
/// <param name="Path">The value's path; empty where the whole record was replaced by one of another kind.</param>
/// <param name="Before">Null where nothing stood.</param>
/// <param name="After">Null where nothing stands any more.</param>
/// <param name="Wraps">How many of the nested records right above the value stand only for what they hold: they are
/// made when the value is entered, and taken out with it when nothing else is left in them.</param>
public sealed record FieldSet(string Record, string Path, JsonNode? Before, JsonNode? After, int Wraps = 0) : Change
{
    internal override Change Inverse => this with { Before = After, After = Before };
}

/// <summary>A record with an id that was put into a list.</summary>
/// <param name="Owner">The id of the record that the list belongs to.</param>
/// <param name="List">The list's path under its owner.</param>
/// <param name="Follows">The id of the record before it; null where it is the first.</param>
public sealed record RecordAdded(string Owner, string List, string? Follows, JsonObject Record) : Change
{
    internal override Change Inverse => new RecordRemoved(Owner, List, Follows, Record);
}

/// <summary>A record with an id that was taken out of a list, whole, so that it can be put back.</summary>
/// <inheritdoc cref="RecordAdded" path="/param"/>
public sealed record RecordRemoved(string Owner, string List, string? Follows, JsonObject Record) : Change
{
    internal override Change Inverse => new RecordAdded(Owner, List, Follows, Record);
}

/// <summary>A record with an id that has another place in its list.</summary>
/// <param name="Owner">The id of the record that the list belongs to.</param>
/// <param name="List">The list's path under its owner.</param>
/// <param name="Record">The id of what was moved.</param>
/// <param name="Before">The id of the record that it followed; null where it was the first.</param>
/// <param name="After">The id of the record that it follows; null where it is the first.</param>
public sealed record RecordMoved(string Owner, string List, string Record, string? Before, string? After) : Change
{
    internal override Change Inverse => this with { Before = After, After = Before };
}
