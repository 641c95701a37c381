using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>How the wood of one part moves across its grain, from making to the ends of the year.</summary>
/// <param name="Swelling">What one unit of width gains from making to the wettest, making itself among them: never negative.</param>
/// <param name="Shrinking">What one unit of width loses from making to the driest, making itself among them: never negative.</param>
public sealed record PanelWood(Species Species, RingOrientation Rings, ServiceMoisture Moisture, Worked Swelling, Worked Shrinking)
{
    /// <summary>What the handbook says about boards that are neither flat nor quartersawn; null for others.</summary>
    public string? Caution => Rings != RingOrientation.Mixed ? null
        : "Its rings are mixed, so its width is reckoned as flatsawn and likely moves less (FPL-GTR-190, p. 13-17).";

    /// <summary>The wood of that name where the standard holds; null where it, or how it moves, is not known.</summary>
    public static PanelWood? Of(StandardInForce standard, string species) => Of(standard, species, RingsIn(standard));

    /// <summary>The same with its rings lying otherwise than the standard says.</summary>
    public static PanelWood? Of(StandardInForce standard, string species, RingOrientation rings)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return standard.Once<Known>("wood", $"{rings}/{species}", () => new(Make(standard, species, rings))).Wood;
    }

    /// <summary>How the rings of solid panels lie, as the standard says.</summary>
    public static RingOrientation RingsIn(StandardInForce standard) => standard.Word(Settings.PanelRings) switch
    {
        "quarter" => RingOrientation.Quarter,
        "mixed" => RingOrientation.Mixed,
        _ => RingOrientation.Flat,
    };

    private static PanelWood? Make(StandardInForce standard, string name, RingOrientation rings)
    {
        if (SpeciesTable.Find(standard, name) is not SpeciesMatch.Found({ Movement: not null } species))
            return null;
        var moisture = ServiceMoisture.Of(standard);
        var wettest = moisture.Wettest.Amount >= moisture.Making.Amount ? moisture.Wettest : new Greatest([moisture.Wettest, moisture.Making]);
        var driest = moisture.Driest.Amount <= moisture.Making.Amount ? moisture.Driest : new Least([moisture.Driest, moisture.Making]);
        return new(species, rings, moisture,
            Movement.GainPerWidth(species, rings, moisture.Making, wettest).As("swelling for each unit of width", $"wood/{species.Name}.{rings}.swelling"),
            Movement.LossPerWidth(species, rings, moisture.Making, driest).As("shrinking for each unit of width", $"wood/{species.Name}.{rings}.shrinking"));
    }

    private sealed record Known(PanelWood? Wood);
}
