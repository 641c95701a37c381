using Stilewright.Measure;

namespace Stilewright.Hanging;

public enum BoringMistakeKind
{
    /// <summary>The cups are on the other stile.</summary>
    OtherEdge,

    /// <summary>Distances were laid off from the other end.</summary>
    OtherEnd,

    /// <summary>The boring distance was set to the centre of the cup: the cup is half its diameter too near to the edge.</summary>
    DistanceTakenForCentre,

    /// <summary>The centre's distance was set as the boring distance: the cup is half its diameter too far in.</summary>
    CentreTakenForDistance,

    /// <summary>The boring distance is off by some amount, and the overlay with it.</summary>
    DistanceOff,

    /// <summary>What the leaf reaches past the opening at the top was taken at the bottom, and the reverse.</summary>
    OverlaysSwapped,

    /// <summary>Measured from the leaf's end instead of from the opening's, or the reverse.</summary>
    OpeningForLeaf,

    /// <summary>All are off by one amount: the stop or the rule's hook was off.</summary>
    AllShifted,
}

/// <summary>A mistake that gives the cups as they were measured.</summary>
/// <param name="Right">The figure as it should be.</param>
/// <param name="Wrong">The figure that the mistake gives, worked.</param>
/// <param name="Words">The mistake in a sentence.</param>
/// <param name="Salvage">What can be done.</param>
public sealed record BoringMistake(BoringMistakeKind Kind, Worked? Right, Worked? Wrong, FormattableString Words, FormattableString Salvage);
