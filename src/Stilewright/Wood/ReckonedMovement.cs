using Fractions;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>What one width does between two moisture contents that were typed.</summary>
/// <param name="Change">Negative where it dries.</param>
/// <param name="After">The width it comes to.</param>
public sealed record ReckonedMovement(Species Species, RingOrientation Rings, Worked Width, Worked From, Worked To, Worked Change, Worked After)
{
    /// <param name="from">Moisture content, %, at which the width was measured.</param>
    /// <exception cref="ArgumentException">Nothing is known of how the species moves.</exception>
    public static ReckonedMovement Of(Species species, RingOrientation rings, Length width, Fraction from, Fraction to)
    {
        ArgumentNullException.ThrowIfNull(species);
        Given start = new("reckoner/width", "width", width, Origin.Typed);
        Given dry = new("reckoner/from", "moisture before", Dimension.Moisture, from, Origin.Typed), wet = new("reckoner/to", "moisture after", Dimension.Moisture, to, Origin.Typed);
        var change = Movement.Of(start, species, rings, dry, wet).As("change of the width", "reckoner/change");
        return new(species, rings, start, dry, wet, change, (start + change).As("width after", "reckoner/after"));
    }
}
