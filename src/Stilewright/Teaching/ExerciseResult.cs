using Stilewright.Measure;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Drills;

namespace Stilewright.Teaching;

/// <summary>What an exercise was.</summary>
public enum ExerciseKind
{
    Worksheet,
    Drill,
}

/// <summary>What became of one worksheet or drill when it was marked. With seed, level and bench the sheet itself can be drawn again.</summary>
/// <param name="Bench">The bench whose sheet it was.</param>
/// <param name="Level">As its maker chose it, such as "level 3: A pair" or "drill to 1/16 in".</param>
/// <param name="Seed">Null for a door of a project.</param>
/// <param name="Earned">Marks earned.</param>
/// <param name="Marks">Marks that could be earned.</param>
/// <param name="Slips">What cost a mark, each in words, in the order of the sheet.</param>
public sealed record ExerciseResult(
    ExerciseKind Kind, int Bench, string Level, LengthUnit Unit, ulong? Seed, int Earned, int Marks, IReadOnlyList<string> Slips)
{
    /// <summary>The number of a worksheet's level; null for a drill.</summary>
    public int? LevelNumber { get; init; }

    /// <summary>Figures that are right, or rightly worked from wrong ones before them.</summary>
    public int RightFigures { get; init; }

    /// <summary>Figures that were written and could be read.</summary>
    public int AllFigures { get; init; }

    /// <summary>What a worksheet missed, each once.</summary>
    public IReadOnlyList<MissedCause> Causes { get; init; } = [];

    /// <summary>Mistakes of a worksheet that no known slip explains.</summary>
    public int Unexplained { get; init; }

    /// <summary>How each kind of a drill's items went.</summary>
    public IReadOnlyList<DrillShare> Shares { get; init; } = [];
}
