using System.Text.Json.Nodes;

namespace Stilewright.Documents.Changes;

/// <summary>A change that cannot be put on a document without losing what someone else entered.</summary>
/// <param name="Change">What was to be done, with the place.</param>
/// <param name="Theirs">What stands at the place now; null where nothing does.</param>
public sealed record Conflict(Change Change, ConflictReason Reason, JsonNode? Theirs)
{
    /// <summary>What stood there when the change was made; null where nothing did.</summary>
    public JsonNode? Base => Change switch
    {
        FieldSet set => set.Before,
        RecordRemoved removed => removed.Record,
        _ => null,
    };

    /// <summary>What the change would put there; null where it takes something out.</summary>
    public JsonNode? Mine => Change switch
    {
        FieldSet set => set.After,
        RecordAdded added => added.Record,
        _ => null,
    };
}
