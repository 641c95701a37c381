using Stilewright.Projects;

namespace Stilewright.Shop;

[Label("row by weight")]
public sealed record CountByWeight(
    [Meaning("Leaves below this weight, in whole units of the table; a leaf of just this weight takes the next row"), Between(1, 1000)] int Below,
    [Label("hinges"), Between(1, 20)] int Count,
    [Meaning("Where this row comes from, if not from where the table does")] string? Source = null);
