using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("A wood that the shop adds to those that ship, or knows better"), Label("species")]
public sealed record SpeciesEntry(
    [Id] string Id,
    [Meaning("What designs call it")] string Name,
    [Meaning("Other names that designs may call it by"), Label("other names")] IReadOnlyList<string>? Aliases = null,
    [Meaning("Fraction of the width, flatsawn, that it gains per 1 % of moisture"), Label("tangential coefficient"), Between(0, 0.01, Above = true)] NumberEntry? Tangential = null,
    [Meaning("Fraction of the width, quartersawn, that it gains per 1 % of moisture"), Label("radial coefficient"), Between(0, 0.01, Above = true)] NumberEntry? Radial = null,
    [Meaning("Weight over that of as much water, of oven-dry wood by its volume at 12 %"), Label("specific gravity"), Between(0, 1.5, Above = true)] NumberEntry? SpecificGravity = null,
    [Meaning("Moisture content, %, at which it starts to shrink"), Label("start of shrinkage"), Between(15, 35)] int ShrinkageStart = 30,
    [Meaning("Where the figures come from")] string? Source = null)
{
    public IReadOnlyList<string> Aliases { get; init; } = Aliases ?? [];
}
