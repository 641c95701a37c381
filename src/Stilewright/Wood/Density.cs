using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>What materials weigh for their volume, in pounds per cubic inch.</summary>
public static class Density
{
    private static readonly Dimension PoundsPerCubicInch = Dimension.Weight / Dimension.Volume;

    private static readonly Source Handbook = Source.Published("FPL-GTR-190 (2010), Equation 4-12, p. 4-10: at 12 % the water adds 12 % to the weight");

    /// <summary>Water, 62.4 lb in a cubic foot of 1728 in³.</summary>
    private static readonly FromTable Water = new("weight of water", "density", "62.4 lb/ft³", Source.Published("62.4 lb/ft³: USDA species tables"), PoundsPerCubicInch, new Fraction(624, 17280));

    private static readonly FromTable WithWater = new("weight with 12 % of water", "density", "12 %", Handbook, Dimension.Ratio, new Fraction(112, 100));

    // 2.5 g/cm³ = 2.5 × 16.387064 g/in³ ÷ 453.59237 g/lb.
    private static readonly FromTable OfGlass = new("density of glass", "density", "2.5 g/cm³", Source.Published("soda-lime glass, 2.5 g/cm³: from memory"),
        PoundsPerCubicInch, new Fraction(5, 2) * new Fraction(16387064, 1000000) * new Fraction(100000, 45359237));

    private static readonly FromTable OfPlywood = PerCubicFoot("density of plywood", 36, "hardwood plywood, about 36 lb/ft³: from memory");

    private static readonly FromTable OfFibreboard = PerCubicFoot("density of fibreboard", 48, "medium-density fibreboard, about 48 lb/ft³: from memory");

    public static Worked Glass => OfGlass;

    /// <summary>Sheet, by the words it is named with: fibreboard where they say MDF or fibreboard, else plywood.</summary>
    public static Worked Sheet(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string[] fibreboard = ["mdf", "fibreboard", "fiberboard"];
        return fibreboard.Any(word => name.Contains(word, StringComparison.OrdinalIgnoreCase)) ? OfFibreboard : OfPlywood;
    }

    /// <summary>Solid wood at 12 % moisture content; null where its specific gravity is not known.</summary>
    public static Worked? Solid(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species.Gravity is not { } gravity ? null
            : (Water * new FromTable("specific gravity", "specific gravity of woods", species.Name, Source.Published(gravity.Source), Dimension.Ratio, gravity.AtTwelve) * WithWater)
                .As($"density of {species.Name}", $"density/{species.Name}");
    }

    private static FromTable PerCubicFoot(string label, int pounds, string source) =>
        new(label, "density", $"{pounds} lb/ft³", Source.Published(source), PoundsPerCubicInch, new Fraction(pounds, 1728));
}
