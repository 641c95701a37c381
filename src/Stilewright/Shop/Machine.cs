using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum MachineKind
{
    Shaper,
    Jointer,
    Planer,
    Sander,
}

[Meaning("A machine of the shop and what it may be fed by hand; its manual comes first")]
public sealed record Machine(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    MachineKind Kind,
    [Meaning("Shortest stock, along the feed"), Label("shortest stock"), Between(0, 120, Above = true)] LengthEntry? Shortest = null,
    [Meaning("Narrowest stock"), Label("narrowest stock"), Between(0, 120, Above = true)] LengthEntry? Narrowest = null,
    [Meaning("Widest stock"), Label("widest stock"), Between(0, 120, Above = true)] LengthEntry? Widest = null,
    [Meaning("Where the figures come from")] string? Source = null);
