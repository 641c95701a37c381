using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum FenceReading
{
    [Meaning("From the leaf's edge to the near edge of the cup: the boring distance")]
    CupEdge,

    [Meaning("From the leaf's edge to the centre of the cup")]
    CupCentre,
}

[Meaning("A hinge-boring machine with numbered stops, as the shop describes it; its manual comes first"), Label("boring machine")]
public sealed record BoringMachine(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("Its rows of stops"), Label("rows of stops")] IReadOnlyList<StopRow> Stops,
    [Meaning("What its fence scale reads"), Label("fence reads")] FenceReading Fence = FenceReading.CupEdge,
    [Meaning("The least that its fence can be set to"), Label("least fence setting", Absent = "not checked"), Between(0, 12)] LengthEntry? LeastFence = null,
    [Meaning("The most that its fence can be set to"), Label("greatest fence setting", Absent = "not checked"), Between(0, 12)] LengthEntry? GreatestFence = null,
    [Meaning("Diameter of the cup bit in its insert"), Label("cup bit", Absent = "not checked"), Between(0, 3, Above = true)] LengthEntry? Bit = null,
    [Meaning("What is in its head, such as the cup bit with two bits for dowels")] string? Insert = null,
    [Meaning("Where the figures come from")] string? Source = null);
