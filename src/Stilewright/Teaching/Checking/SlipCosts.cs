using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>How rare each slip is, by which explanations are ranked: about 1 for the commonest, and as much more as it is rarer. Sums of two slips are compared with these too.</summary>
/// <remarks>Common practice, no source: figures set so that of slips which give the same list the one that beginners make more often is told first.</remarks>
internal static class SlipCosts
{
    // At a step of the working.
    public const double LeftOut = 1;
    public const double SignTurned = 1.3;
    public const double CountedOnce = 1.15;
    public const double CountedTwice = 1.5;
    public const double OneTooMany = 1.8;
    public const double OneTooFew = 1.5;
    public const double OneSideOnly = 1.6;
    public const double StepLeftOut = 1.25;
    public const double LikeQuantity = 1.6;
    public const double NotDivided = 1.3;
    public const double DividedTooEarly = 1.3;
    public const double DividedByOneMore = 1.8;
    public const double DividedByOneLess = 1.5;
    public const double AnotherOfSeveral = 1.4;
    public const double Reckoning = 3.2;

    // A term that does not belong: the trim allowance strays most, and what strays is seldom taken off.
    public const double TrimStrays = 1.25;
    public const double TermStrays = 1.75;
    public const double StrayTakenOff = 0.45;

    // Of a whole line or piece.
    public const double Exchanged = 0.8;
    public const double TrimmedOneSide = 1;
    public const double EarlierSize = 1.2;
    public const double AnotherStage = 1.35;
    public const double AnotherPart = 1.65;
    public const double KerfLost = 1.7;

    // Of a thickness. Where a panel is as thick as the frame, that is what went wrong, and that it does not enter its groove follows.
    public const double ThinnerThanGroove = 1.2;
    public const double ThickerThanGroove = 1.5;
    public const double GrooveForSheet = 1;
    public const double AnotherStock = 1;

    // Of writing a figure down.
    public const double RoundedToNextFraction = 1.3;
    public const double RoundedCoarsely = 1.6;
    public const double TapeFromFirstInch = 1.5;
    public const double TapeFromFirstInchAdded = 1.6;
    public const double TapeFromFirstCentimetre = 1.6;
    public const double TapeFromFirstDecimetre = 1.7;
    public const double FractionDropped = 1.8;
    public const double FractionAsDecimal = 1.8;
    public const double NumeratorAsDecimal = 2.1;
    public const double FractionMisread = 2;

    // Of reading a figure that the working takes, more than of writing the result down: a figure looked up, or a result carried over.
    public const double ReadForWorking = 0.6;
    public const double CarriedOver = 0.9;

    // Of putting several together.
    public const double AnotherPlace = 0.1;
    public const double HarmedFigure = 0.8;
    public const int MostHarmCounted = 3;
    public const double SecondCause = 0.5;
    public const double MostOfPair = 4.6;

    /// <summary>Explanations whose costs differ by less are told as about as likely.</summary>
    public const double AboutAsLikely = 0.3;

    public static double DigitsTransposed(LengthUnit unit) => unit == LengthUnit.Inch ? 2 : 1.9;

    public static double UnitExchanged(LengthUnit unit) => unit == LengthUnit.Inch ? 1.9 : 2;
}
