namespace Stilewright.Curves;

/// <summary>How an offset passes a corner that opens to its side.</summary>
public enum CornerJoin
{
    /// <summary>By an arc about the corner: every place is equally far from the curve.</summary>
    Round,

    /// <summary>Both sides run on, along their own line or circle, until they meet; rounded where they do not meet within ten
    /// times the offset, and beside an arc that was swallowed.</summary>
    Mitre,
}

/// <summary>An offset: one chain, or several where it falls apart, or none where nothing is left.</summary>
/// <param name="Swallowed">Segments of the curve that left no trace in the offset, in order.</param>
public sealed record OffsetResult(IReadOnlyList<Chain> Chains, IReadOnlyList<SwallowedSegment> Swallowed)
{
    /// <summary>The one chain of an offset that neither fell apart nor vanished, else null.</summary>
    public Chain? Whole => Chains.Count == 1 ? Chains[0] : null;
}

/// <summary>A line or arc that an offset swallowed.</summary>
/// <param name="Index">Its number in the chain, from 0.</param>
/// <param name="Along">Distance of its middle along the chain, in.</param>
/// <param name="Middle">Its middle.</param>
/// <param name="ByRadius">Whether its own radius is no longer than the offset; else its neighbours met before it.</param>
public sealed record SwallowedSegment(int Index, CurveSegment Segment, double Along, CurvePoint Middle, bool ByRadius);
