namespace Stilewright.Curves;

/// <summary>One light under an arch, with what its panel and its grooves are drawn from; all in inches.</summary>
/// <param name="Top">Sight line of the top rail; its ends stand on the side sight lines, X = 0 where it was drawn.</param>
/// <param name="SideHeight">From the bottom sight line at the stiles up to the spring line.</param>
/// <param name="GrooveDepth">d, of the groove round the light.</param>
/// <param name="SideClearance">c at the sides.</param>
/// <param name="EndClearance">c at top and bottom.</param>
public sealed record ArchedLight(ArchCurve Top, double SideHeight, double GrooveDepth, double SideClearance, double EndClearance)
{
    /// <summary>Sight line of an arched bottom rail, turned over; absent, it is straight.</summary>
    public ArchCurve? Bottom { get; init; }

    /// <summary>ca, square to the curve; the ends' unless stated.</summary>
    public double? ArchClearance { get; init; }

    internal double ArchOffset => GrooveDepth - (ArchClearance ?? EndClearance);
}
