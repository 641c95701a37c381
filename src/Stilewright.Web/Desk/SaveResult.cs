using Stilewright.Documents;
using Stilewright.Documents.Changes;

namespace Stilewright.Web.Desk;

/// <summary>What became of a save.</summary>
public abstract record SaveResult
{
    private SaveResult()
    {
    }

    /// <param name="Course">The course as it stands now, with what others saved meanwhile.</param>
    public sealed record Saved(OpenCourse Course) : SaveResult;

    /// <summary>Someone else changed the same fields, or took away what was edited. Nothing was saved.</summary>
    public sealed record Conflicted(IReadOnlyList<Conflict> Conflicts, OpenCourse Course) : SaveResult;

    /// <summary>What would result is no sound document. Nothing was saved.</summary>
    /// <param name="Errors">At least one, each with its place and fix.</param>
    public sealed record Refused(IReadOnlyList<DocumentError> Errors) : SaveResult;
}
