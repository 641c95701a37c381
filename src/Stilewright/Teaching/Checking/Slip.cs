namespace Stilewright.Teaching.Checking;

/// <summary>What kind of slip makes a wrong number. The order is that of the trade's working, then of reading and writing.</summary>
public enum SlipKind
{
    /// <summary>A term is left out.</summary>
    LeftOut,

    /// <summary>A term is taken off that should be added, or added that should be taken off.</summary>
    SignTurned,

    /// <summary>Once instead of twice, or of more.</summary>
    CountedOnce,

    /// <summary>Twice as often as it belongs.</summary>
    CountedTwice,

    /// <summary>Once more than it belongs, such as three stiles.</summary>
    OneTooMany,

    /// <summary>Once less than it belongs, such as one gap of two.</summary>
    OneTooFew,

    /// <summary>Everything was reckoned for one side only.</summary>
    OneSideOnly,

    /// <summary>A whole step was left out: its first figure was taken as it is.</summary>
    StepLeftOut,

    /// <summary>A like quantity of the same leaf was taken.</summary>
    LikeQuantity,

    /// <summary>A term was added or taken off that has no place here.</summary>
    DoesNotBelong,

    /// <summary>Not divided.</summary>
    NotDivided,

    /// <summary>Divided before everything was taken off.</summary>
    DividedTooEarly,

    /// <summary>Divided by one more or one less.</summary>
    DividedByAnother,

    /// <summary>Another of several quantities was taken.</summary>
    AnotherOfSeveral,

    /// <summary>The size at another stage of the wood.</summary>
    AnotherStage,

    /// <summary>The size of an earlier revision, such as before the opening was measured again.</summary>
    EarlierSize,

    /// <summary>The whole trim allowance came off one side, so that opposite members differ by it.</summary>
    TrimmedOneSide,

    /// <summary>Width and height were exchanged.</summary>
    Exchanged,

    /// <summary>The size of another part.</summary>
    AnotherPart,

    /// <summary>Rounded more coarsely than the shop cuts.</summary>
    RoundedCoarsely,

    /// <summary>A tape read from its first inch, or a hook lost.</summary>
    TapeFromOne,

    /// <summary>One fraction for another that looks or lies near.</summary>
    FractionMisread,

    /// <summary>The fraction was left off.</summary>
    FractionDropped,

    /// <summary>Numerator and denominator were read as decimals.</summary>
    FractionAsDecimal,

    /// <summary>Two digits changed places.</summary>
    DigitsTransposed,

    /// <summary>Inches for millimetres or the other way round.</summary>
    UnitExchanged,

    /// <summary>Each cut's kerf was lost along a chain of pieces.</summary>
    KerfLost,

    /// <summary>A panel thinner than its groove is wide: it is loose.</summary>
    ThinnerThanGroove,

    /// <summary>A panel that goes into its groove as it is, and is thicker than the groove is wide.</summary>
    ThickerThanGroove,

    /// <summary>The stock of the frame for that of the panel, or the other way round.</summary>
    AnotherStock,

    /// <summary>A slip of reckoning at one step, which no rule explains.</summary>
    Reckoning,
}

/// <summary>One way to go wrong at one place of the working.</summary>
/// <param name="Cause">What is missed; slips with one cause are one mistake.</param>
/// <param name="Step">The step of the working in which it happens, an index into the table.</param>
/// <param name="Edits">What it does to the working.</param>
/// <param name="Cost">How rare it is; the commonest cost about 1.</param>
internal sealed record Slip(Cause Cause, int Step, Edit[] Edits, double Cost);
