using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>How far wood moves across its grain when its moisture content changes. Along the grain it is taken as nothing.</summary>
/// <remarks>
/// FPL-GTR-190 (2010): Equation 13-2 (p. 13-15) where both moisture contents lie within 6 to 14 %, Equation 13-3 (p. 13-17) where one does not.
/// The shrinkage of Equation 13-3 is worked from the coefficient, so that both agree at 10 %. Moisture is reckoned up to where shrinkage starts.
/// </remarks>
public static class Movement
{
    private const string Table = "dimensional change coefficients";

    private static readonly Fraction LinearFrom = 6, LinearTo = 14;

    private static readonly FromTable Ten = new("moisture that coefficients hold at", "Equation 13-2", "10 %",
        Source.Published("FPL-GTR-190 (2010), Table 13-5: on the dimension at 10 %"), Dimension.Moisture, 10);

    /// <summary>A coefficient as it stands in its table.</summary>
    public static FromTable Coefficient(Species species, RingOrientation rings)
    {
        var movement = species.Movement ?? throw new ArgumentException($"Nothing is known of how {species.Name} moves.", nameof(species));
        var radial = rings == RingOrientation.Quarter;
        return new(radial ? "radial coefficient" : "tangential coefficient", Table, species.Name, Source.Published(movement.Source),
            Dimension.Ratio / Dimension.Moisture, radial ? movement.Radial : movement.Tangential);
    }

    /// <summary>What one unit of width gains from one moisture content to another; negative where the wood dries.</summary>
    /// <param name="from">Moisture content, %, at which the width was measured.</param>
    /// <exception cref="ArgumentException">Nothing is known of how the species moves.</exception>
    public static Worked GainPerWidth(Species species, RingOrientation rings, Worked from, Worked to) => PerWidth(species, rings, from, to, isGain: true);

    /// <summary>What one unit of width loses from one moisture content to another; negative where the wood takes up moisture.</summary>
    /// <exception cref="ArgumentException">Nothing is known of how the species moves.</exception>
    public static Worked LossPerWidth(Species species, RingOrientation rings, Worked from, Worked to) => PerWidth(species, rings, from, to, isGain: false);

    /// <summary>What a width gains from one moisture content to another; negative where the wood dries.</summary>
    /// <exception cref="ArgumentException">Nothing is known of how the species moves.</exception>
    public static Worked Of(Worked width, Species species, RingOrientation rings, Worked from, Worked to) => width * GainPerWidth(species, rings, from, to);

    /// <summary>What one unit of width gains, or loses, by Equation 13-3, whatever the moisture contents are.</summary>
    public static Worked ByShrinkage(Species species, RingOrientation rings, Worked from, Worked to, bool isGain = true)
    {
        var coefficient = Coefficient(species, rings);
        var start = new FromTable("start of shrinkage", Table, species.Name, Source.Published(species.Movement!.Source), Dimension.Moisture, species.Movement.ShrinkageStart);
        var hundred = new Number(100);
        var shrinkage = (hundred * coefficient * start / (new Number(1) + (coefficient * (start - Ten)))).As("total shrinkage, percent", "wood/shrinkage");
        var (wetFrom, wetTo) = (Below(from, start), Below(to, start));
        return (isGain ? wetTo - wetFrom : wetFrom - wetTo) / ((start * hundred / shrinkage) - start + wetFrom);
    }

    private static Worked PerWidth(Species species, RingOrientation rings, Worked from, Worked to, bool isGain) =>
        !IsLinear(from) || !IsLinear(to) ? ByShrinkage(species, rings, from, to, isGain)
            : Coefficient(species, rings) * (isGain ? to - from : from - to);

    private static bool IsLinear(Worked moisture) => moisture.Amount >= LinearFrom && moisture.Amount <= LinearTo;

    private static Worked Below(Worked moisture, Worked start) => moisture.Amount <= start.Amount ? moisture : new Least([moisture, start]);
}
