namespace Stilewright.Curves;

/// <summary>What a mark is for when a curve is drawn with a trammel and a straightedge.</summary>
public enum TrammelMark
{
    /// <summary>An end of the curve.</summary>
    End,

    /// <summary>Where the trammel's foot stands for the arc between the marks before and after it.</summary>
    Centre,

    /// <summary>Where one radius, or a straight, passes smoothly into the next.</summary>
    Tangent,

    /// <summary>Where the direction breaks.</summary>
    Corner,
}

/// <summary>One row of a trammel table, in inches; the radius stands at centres only.</summary>
public sealed record TrammelPoint(TrammelMark Mark, CurvePoint Place, double? RadiusInches);
