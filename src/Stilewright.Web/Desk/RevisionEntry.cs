using Stilewright.Documents.Changes;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>One revision in a history.</summary>
/// <param name="MadeAt">UTC.</param>
/// <param name="By">The name of the maker.</param>
/// <param name="Of">The revision that was undone, done again or restored.</param>
public sealed record RevisionEntry(int Number, DateTime MadeAt, string By, RevisionCause Cause, int? Of, IReadOnlyList<Change> Changes)
{
    /// <summary>What the revision did, in a line.</summary>
    /// <param name="words">Knows the names of what was changed.</param>
    public string Words(ChangeWords words)
    {
        var first = Changes.Count == 0 ? "" : words.Of(Changes[0]) + (Changes.Count == 1 ? "" : FormattableString.Invariant($", and {Changes.Count - 1} more"));
        return Cause switch
        {
            RevisionCause.Import => "Imported",
            RevisionCause.Undo => $"Taken back: {first}",
            RevisionCause.Redo => $"Made again: {first}",
            RevisionCause.Restore => FormattableString.Invariant($"Restored revision {Of}"),
            _ => Changes.Count == 0 ? "Begun" : first,
        };
    }
}
