using Fractions;

namespace Stilewright.Wood;

/// <summary>A wood and what is known of how it moves and what it weighs.</summary>
/// <param name="Name">As its table or the shop writes it.</param>
/// <param name="Movement">Null where no coefficients are known.</param>
/// <param name="Gravity">Null where it is not known.</param>
/// <param name="IsOwn">Whether the shop entered it.</param>
public sealed record Species(string Name, MovementCoefficients? Movement, SpecificGravity? Gravity, bool IsOwn = false);

/// <summary>Dimensional change coefficients: fraction of the width at 10 % moisture content per 1 % of change, from 6 to 14 %.</summary>
/// <param name="ShrinkageStart">The moisture content, %, at which the species starts to shrink: 30, or 22 for some.</param>
/// <param name="Source">Where they come from; says so where that is memory.</param>
/// <param name="Check">What they were held to.</param>
public sealed record MovementCoefficients(Fraction Tangential, Fraction Radial, int ShrinkageStart, string Source, string? Check)
{
    /// <summary>Total shrinkage from green to oven-dry, %, tangentially: what the coefficient follows from.</summary>
    public Fraction TangentialShrinkage => Shrinkage(Tangential);

    /// <summary>Total shrinkage from green to oven-dry, %, radially.</summary>
    public Fraction RadialShrinkage => Shrinkage(Radial);

    // C = (S / M0) / (100 − S (M0 − 10) / M0), solved for S; it agrees to 5 decimals with 101 of the 110 values that could be compared.
    private Fraction Shrinkage(Fraction coefficient) => 100 * coefficient * ShrinkageStart / (1 + (coefficient * (ShrinkageStart - 10)));
}

/// <summary>Weight of oven-dry wood over that of as much water as it fills at 12 % moisture content.</summary>
public sealed record SpecificGravity(Fraction AtTwelve, string Source);
