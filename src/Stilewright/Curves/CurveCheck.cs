namespace Stilewright.Curves;

/// <summary>What of a curve was checked.</summary>
public enum CurveCheckKind
{
    /// <summary>A collar must fit every hollow of the edge that it follows.</summary>
    HollowForCollar,

    /// <summary>Wood between the groove and the outer edge of the rail, where the rail is narrowest.</summary>
    WoodAtCrown,

    /// <summary>Run of the grain in the ends of an arched rail.</summary>
    ShortGrain,

    /// <summary>Whether the raise leaves a field, and follows every curve of the edge.</summary>
    Field,

    /// <summary>Width of the board that the arched rail is sawn from.</summary>
    Blank,
}

/// <summary>One check with its numbers, in inches.</summary>
/// <param name="Measured">What there is.</param>
/// <param name="Limit">What there must be: at most that for <see cref="CurveCheckKind.Blank"/>, at least that for the others.</param>
/// <param name="Place">Where, on the curve; null where it is about the whole.</param>
/// <param name="Remedies">The nearest values that work, each by itself; empty when it passes.</param>
public sealed record CurveCheck(
    CurveCheckKind Kind, bool Passes, double Measured, double Limit, CurvePoint? Place, IReadOnlyList<ArchLimit> Remedies);
