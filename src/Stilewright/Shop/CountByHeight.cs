using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Label("row by height")]
public sealed record CountByHeight(
    [Meaning("Leaves up to this height"), Between(0, 240, Above = true)] LengthEntry To,
    [Label("hinges"), Between(1, 20)] int Count,
    [Meaning("Where this row comes from, if not from where the table does")] string? Source = null);
