using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("Where the work will stand: the lowest and highest moisture content of wood there, or its air by the season")]
public sealed record Climate(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("Moisture content at the driest of the year; absent where seasons tell"), Label("driest"), Counts(NumberKind.Percent), Between(0, 30)] NumberEntry? Driest = null,
    [Meaning("Moisture content at the wettest of the year; absent where seasons tell"), Label("wettest"), Counts(NumberKind.Percent), Between(0, 30)] NumberEntry? Wettest = null,
    [Meaning("The air of the rooms by the season; absent where driest and wettest tell"), Between(0, 12)] IReadOnlyList<Season>? Seasons = null,
    [Meaning("Where the figures come from")] string? Source = null)
{
    public IReadOnlyList<Season> Seasons { get; init; } = Seasons ?? [];
}

[Meaning("The air of a room in the middle of one month")]
public sealed record Season(
    [Meaning("What it is called, such as winter")] string Name,
    [Meaning("The month, 1 to 12"), Between(1, 12)] int Month,
    [Meaning("Temperature of the air"), Counts(NumberKind.Temperature), Between(-40, 130)] NumberEntry Temperature,
    [Meaning("Relative humidity of the air"), Label("humidity"), Counts(NumberKind.Percent), Between(0, 100)] NumberEntry Humidity);
