using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum WeightUnit
{
    [Spelled("lb"), Label("lb")]
    Pound,

    [Spelled("kg"), Label("kg")]
    Kilogram,
}

[Meaning("How many hinges a leaf gets, by its height and by its weight; the larger number holds"), Label("table of hinge numbers")]
public sealed record HingeCounts(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("Numbers by height, the lowest leaves first"), Label("by height")] IReadOnlyList<CountByHeight> ByHeight,
    [Meaning("Numbers by weight, the lightest leaves first"), Label("by weight")] IReadOnlyList<CountByWeight> ByWeight,
    [Meaning("The unit of its weights")] WeightUnit Weights = WeightUnit.Pound,
    [Meaning("The widest leaf that it is made for; a wider one gets a hinge more"), Label("widest leaf", Absent = "any width"), Between(0, 120, Above = true)] LengthEntry? Widest = null,
    [Meaning("Where the figures come from")] string? Source = null);
