using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum StockKind
{
    [Meaning("Solid wood, planed and sanded in the shop")]
    Solid,

    [Meaning("Plywood or other sheet, used as bought")]
    Sheet,
}

[Meaning("A thickness of wood and the stages it goes through")]
public sealed record Stock(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    StockKind Kind,
    [Meaning("Thickness after planing, as it goes over the cutters; of a sheet, as bought"), Label("planed thickness"), Between(0, 4, Above = true)] LengthEntry Planed,
    [Meaning("Nominal thickness in quarters, such as 4/4, looked up for the rough thickness; solid only"), Label("nominal thickness")] string? Nominal = null,
    [Meaning("What sanding takes from the face"), Label("sanded off the face"), Between(0, 1)] LengthEntry? FaceLoss = null,
    [Meaning("What sanding takes from the back"), Label("sanded off the back"), Between(0, 1)] LengthEntry? BackLoss = null,
    [Meaning("The least final thickness"), Label("least thickness"), Between(0, 4, Above = true)] LengthEntry? Least = null,
    [Meaning("The widest board that comes of it; absent where it is not checked; solid only"), Label("widest board"), Between(0, 60, Above = true)] LengthEntry? WidestBoard = null,
    [Meaning("Where the figures come from")] string? Source = null);
