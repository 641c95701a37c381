using Stilewright.Measure;

namespace Stilewright.Hanging.Adjusting;

/// <summary>How far one screw of a hinge carries the leaf from where it stands now, either way.</summary>
/// <param name="Less">How far the less way: towards the hinge side, down, or in. Not negative.</param>
/// <param name="More">How far the more way: away from the hinge side, up, or out. Not negative.</param>
/// <param name="PerTurn">Travel of one turn of the screw; null where it is not known.</param>
public sealed record ScrewRange(Length Less, Length More, Length? PerTurn = null)
{
    /// <summary>No such screw.</summary>
    public static ScrewRange Fixed { get; } = new(default, default);

    public bool IsFixed => Less.IsZero && More.IsZero;

    /// <summary>The travel put on what a hand can turn: a quarter of a turn where the thread is known, else <paramref name="step"/>; within the range.</summary>
    /// <param name="step">The finest travel worth telling. Must be positive.</param>
    public Length OnScrew(Length travel, Length step)
    {
        var grain = PerTurn is { } turn ? turn / 4 : step;
        var told = travel.OnStep(grain, StepDirection.Nearest);
        return told > More ? More.OnStep(grain, StepDirection.Down) : -told > Less ? -Less.OnStep(grain, StepDirection.Down) : told;
    }
}
