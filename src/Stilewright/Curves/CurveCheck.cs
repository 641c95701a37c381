namespace Stilewright.Curves;

/// <summary>What of a curve was checked.</summary>
public enum CurveCheckKind
{
    /// <summary>A collar must fit every hollow of the edge that it follows.</summary>
    HollowForCollar,

    /// <summary>Run of the grain in the ends of an arched rail.</summary>
    ShortGrain,

    /// <summary>Whether the raise leaves a field, and follows every curve of the edge.</summary>
    Field,
}

/// <summary>One check with its numbers, in inches.</summary>
/// <param name="Measured">What there is.</param>
/// <param name="Limit">What there must be at least.</param>
/// <param name="Place">Where, on the curve; null where it is about the whole.</param>
/// <param name="Remedies">The nearest values that work, each by itself; empty when it passes.</param>
public sealed record CurveCheck(
    CurveCheckKind Kind, bool Passes, double Measured, double Limit, CurvePoint? Place, IReadOnlyList<ArchLimit> Remedies);
