using Stilewright.Teaching.Checking;

namespace Stilewright.Web.Storage;

/// <summary>One check of a maker's own list. Neither the list nor any size of it is kept.</summary>
public sealed class StoredAttempt : IStoredResult
{
    public long Key { get; init; }
    public required long CourseKey { get; init; }

    /// <summary>The maker whose list it was.</summary>
    public required string AuthorId { get; init; }

    /// <summary>The id of the project's record, which stays when its bench is another.</summary>
    public required string ProjectId { get; init; }

    public required int Bench { get; init; }

    /// <summary>The label of the leaf; null for the list of a whole project.</summary>
    public string? Leaf { get; init; }

    /// <summary>When it was checked, UTC.</summary>
    public required DateTime MadeAt { get; init; }

    public required CutStage Stage { get; init; }
    public required int RightFigures { get; init; }
    public required int AllFigures { get; init; }

    /// <summary>Whether all was right and nothing missing.</summary>
    public required bool IsRight { get; init; }

    /// <summary>Mistakes that no known slip explains.</summary>
    public required int Unexplained { get; init; }

    /// <summary>What was missed, each once.</summary>
    public List<StoredCause> Causes { get; init; } = [];
}

/// <summary>One thing that a list or worksheet missed.</summary>
public sealed class StoredCause
{
    public long Key { get; init; }
    public required SlipKind Kind { get; init; }

    /// <summary>The quantity it concerns, such as <c>groove</c>; cut off at 80 characters.</summary>
    public required string Subject { get; init; }
}
