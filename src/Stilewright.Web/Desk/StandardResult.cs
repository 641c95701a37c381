using Stilewright.Documents;
using Stilewright.Documents.Changes;

namespace Stilewright.Web.Desk;

/// <summary>What became of a save of a house standard.</summary>
public abstract record StandardResult
{
    private StandardResult()
    {
    }

    /// <param name="Standard">The standard as it stands now, with what others saved meanwhile.</param>
    public sealed record Saved(OpenStandard Standard) : StandardResult;

    /// <summary>Someone else changed the same values. Nothing was saved.</summary>
    public sealed record Conflicted(IReadOnlyList<Conflict> Conflicts, OpenStandard Standard) : StandardResult;

    /// <summary>What would result is no sound standard, or a course that uses it would no longer be. Nothing was saved.</summary>
    /// <param name="Errors">At least one, each with its place and fix.</param>
    public sealed record Refused(IReadOnlyList<DocumentError> Errors) : StandardResult;
}
