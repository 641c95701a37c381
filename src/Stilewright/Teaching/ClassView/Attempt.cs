using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.ClassView;

/// <summary>What a mistake came from, as far as it is remembered.</summary>
/// <param name="Subject">The quantity it concerns, as of <see cref="Cause"/>.</param>
public readonly record struct MissedCause(SlipKind Kind, string Subject);

/// <summary>One check of a maker's own list, or the first marking of a worksheet, as it is remembered.</summary>
/// <param name="Maker">Tells makers apart; no name.</param>
/// <param name="Day">When it was checked, by the shop's calendar.</param>
/// <param name="Causes">What was missed, each once.</param>
/// <param name="RightFigures">Figures that were right, of all.</param>
/// <param name="IsRight">Whether all was right and nothing missing.</param>
public sealed record Attempt(
    string Maker, int Bench, DateOnly Day, IReadOnlyList<MissedCause> Causes, int RightFigures, int AllFigures, bool IsRight)
{
    /// <summary>The number of a worksheet's level; null for a list.</summary>
    public int? SheetLevel { get; init; }

    /// <summary>Mistakes that no known slip explains.</summary>
    public int Unexplained { get; init; }
}
