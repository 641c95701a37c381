using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>A known way to go wrong with fractions.</summary>
/// <remarks>
/// The first four are named in R. Siegler et al., "Developing effective fractions instruction for kindergarten through 8th grade",
/// NCEE 2010-4039, Institute of Education Sciences, 2010, recommendation 3, on misconceptions; put into inches here. Those of halving, rules and conversion are
/// common practice, no source.
/// </remarks>
public enum DrillSlipKind
{
    /// <summary>Numerators and denominators taken as whole numbers by themselves: 1/2 + 1/4 = 2/6.</summary>
    TopsAndBottoms,

    /// <summary>Numerators joined over the larger denominator, without a common one: 1/2 + 1/4 = 2/4.</summary>
    NoCommonDenominator,

    /// <summary>Only the whole numbers worked, one fraction kept or lost: 5 1/2 + 2 1/4 = 7 1/2.</summary>
    WholesOnly,

    /// <summary>The smaller fraction taken from the larger, whichever way round they stand: 5 1/4 − 2 1/2 = 3 1/4.</summary>
    SmallerFromLarger,

    /// <summary>The denominator halved or doubled the wrong way: half of 3/8 = 3/4.</summary>
    WrongWay,

    /// <summary>The whole number halved or doubled, the fraction left as it was: half of 5 1/4 = 2 1/2 1/4.</summary>
    FractionLeft,

    /// <summary>Marks of the rule counted as if they were one size finer or coarser.</summary>
    OtherMarks,

    /// <summary>Read from the next inch, backwards.</summary>
    FromTheOtherSide,

    /// <summary>An inch taken as 25 mm.</summary>
    RoundInch,
}

/// <summary>What a slip would have given for one item.</summary>
/// <param name="Written">As a person who slips so would write it, such as <c>13 2/12</c>.</param>
public sealed record DrillSlip(DrillSlipKind Kind, Length Answer, string Written)
{
    /// <summary>What went wrong and what to do, in one sentence.</summary>
    public string Advice => Kind switch
    {
        DrillSlipKind.TopsAndBottoms => "Numerators and denominators were worked by themselves; bring both to one denominator and work the numerators only.",
        DrillSlipKind.NoCommonDenominator => "The numerators were of different denominators; bring both to the finer one first.",
        DrillSlipKind.WholesOnly => "Only the whole inches were worked; the fractions belong to it.",
        DrillSlipKind.SmallerFromLarger => "The fraction was taken off the wrong way round; borrow an inch and write it as a fraction.",
        DrillSlipKind.WrongWay => "The denominator went the wrong way; twice the denominator is half the size.",
        DrillSlipKind.FractionLeft => "The whole inches were worked and the fraction left as it was.",
        DrillSlipKind.OtherMarks => "The marks were counted as another size; count how many make one inch, or one centimetre.",
        DrillSlipKind.FromTheOtherSide => "It was read from the next number backwards; read on from the one before.",
        DrillSlipKind.RoundInch => "An inch was taken as 25 mm; it is 25.4 mm.",
        _ => throw new InvalidOperationException(),
    };
}
