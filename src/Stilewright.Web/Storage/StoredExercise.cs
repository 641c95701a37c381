using Stilewright.Measure;
using Stilewright.Teaching;
using Stilewright.Teaching.Drills;

namespace Stilewright.Web.Storage;

/// <summary>The first marking of a worksheet by a maker, or a finished drill. No answer is kept.</summary>
public sealed class StoredExercise : IStoredResult
{
    public long Key { get; init; }
    public required long CourseKey { get; init; }

    /// <summary>The maker who answered.</summary>
    public required string AuthorId { get; init; }

    public required ExerciseKind Kind { get; init; }

    /// <summary>Tells the sheet from every other of its course: bench or leaf, level, unit, seed.</summary>
    public required string Sheet { get; init; }

    /// <summary>As its maker chose it, such as "level 3: A pair".</summary>
    public required string Level { get; init; }

    /// <summary>The number of a worksheet's level; null for a drill.</summary>
    public int? LevelNumber { get; init; }

    public required int Bench { get; init; }
    public required LengthUnit Unit { get; init; }

    /// <summary>When it was marked, UTC.</summary>
    public required DateTime MadeAt { get; init; }

    public required int Earned { get; init; }
    public required int Marks { get; init; }
    public required int RightFigures { get; init; }
    public required int AllFigures { get; init; }

    /// <summary>Mistakes of a worksheet that no known slip explains.</summary>
    public required int Unexplained { get; init; }

    /// <summary>What a worksheet missed, each once.</summary>
    public List<StoredCause> Causes { get; init; } = [];

    /// <summary>How each kind of a drill's items went.</summary>
    public List<StoredShare> Shares { get; init; } = [];
}

/// <summary>How one kind of a drill's items went.</summary>
public sealed class StoredShare
{
    public long Key { get; init; }
    public required DrillKind Kind { get; init; }
    public required int Asked { get; init; }
    public required int Right { get; init; }
}
