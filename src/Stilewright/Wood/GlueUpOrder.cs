using Fractions;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>What a glue-up is planned from.</summary>
/// <param name="LeastStave">The narrowest stave that is glued up.</param>
/// <param name="GreatestStave">The widest stave that is glued up; wider ones cup.</param>
/// <param name="JointAllowance">Taken off each edge of a stave when it is jointed.</param>
/// <param name="Boards">Widths of the boards there are, in the order in which they lie; empty where staves are ripped to suit.</param>
/// <param name="AlternateRings">Whether the bark side is up on every second stave; else it is up on all. Which is better is contested.</param>
/// <remarks>All defaults are common practice, no source.</remarks>
public sealed record GlueUpOrder(Length LeastStave, Length GreatestStave, Length JointAllowance, IReadOnlyList<Length> Boards, bool AlternateRings = true)
{
    /// <summary>Staves of 2 to 5 in, 1/16 in off each edge.</summary>
    public static GlueUpOrder Usual { get; } = new(Length.FromInches(2), Length.FromInches(5), Length.FromInches(new Fraction(1, 16)), []);
}
