using System.Text.Json.Nodes;

namespace Stilewright.Documents.Changes;

/// <summary>What became of changes that were to be put on a document.</summary>
public abstract record MergeResult
{
    private MergeResult()
    {
    }

    /// <param name="Tree">The new document; it shares nothing with the old one.</param>
    public sealed record Merged(JsonObject Tree) : MergeResult;

    /// <summary>Nothing was done.</summary>
    /// <param name="Found">At least one, in the order of the changes.</param>
    /// <param name="Others">The changes that would merge without those in conflict, in their order.</param>
    public sealed record Conflicts(IReadOnlyList<Conflict> Found, IReadOnlyList<Change> Others) : MergeResult;
}
