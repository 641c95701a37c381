namespace Stilewright.Curves;

/// <summary>What an arch is drawn from, in inches.</summary>
/// <param name="Span">S, from sight line to sight line.</param>
/// <param name="Rise">a, of the crown above the spring line.</param>
/// <param name="Shoulder">f, the straight length at each end.</param>
public sealed record ArchSizes(double Span, double Rise, double Shoulder = 0)
{
    /// <summary>R1 : R2 of a cathedral or double curve, the reverse arc's radius over the crown's.</summary>
    public double ReverseToCrown { get; init; } = 1;

    /// <summary>Height of a stepped arch's square step; half the rise unless stated.</summary>
    public double? Step { get; init; }

    /// <summary>Radius of both arcs of a pointed arch. Unless stated, centres lie on the spring line where the arch is higher than
    /// half its span, and the radius is twice that of the eyebrow of this rise where it is lower.</summary>
    public double? PointRadius { get; init; }

    /// <summary>The curve of <see cref="Projects.ArchFamily.Drawn"/>, which has one span and rise only.</summary>
    public Chain? Drawn { get; init; }

    /// <summary>x, half the width between the shoulders.</summary>
    public double HalfWidth => (Span / 2) - Shoulder;
}
