using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>The widths across the grain, at making, that fit through the whole year.</summary>
public abstract record PanelRange
{
    private PanelRange()
    {
    }

    /// <param name="Least">The narrowest, on the cutting step, that stays in its grooves at the driest.</param>
    /// <param name="Greatest">The widest, on the cutting step, that keeps its air at the wettest.</param>
    public sealed record Some(Worked Least, Worked Greatest) : PanelRange;

    /// <param name="ShortBy">What the widest that keeps its air lacks of the narrowest that stays in.</param>
    /// <param name="Remedies">What would make room, each whole and on its own.</param>
    public sealed record None(Worked Least, Worked Greatest, Worked ShortBy, IReadOnlyList<PanelRemedy> Remedies) : PanelRange;
}

public enum PanelRemedyKind
{
    PinIt,
    DeeperGroove,
    Quartersawn,
    TwoLights,
    Sheet,
}

/// <summary>One change that lets a panel fit.</summary>
/// <param name="Amount">How much deeper the grooves must be; null for what has no amount.</param>
/// <param name="Advice">What to do, without a full stop.</param>
public sealed record PanelRemedy(PanelRemedyKind Kind, Length? Amount, FormattableString Advice);
