using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

public enum StopSide
{
    Left,
    Right,
}

[Meaning("A row of stops on one side of the cup bit, seen by who stands at the machine with the fence beyond the work"), Label("row of stops")]
public sealed record StopRow(
    StopSide Side,
    [Meaning("From the bit's centre to the first stop"), Label("first stop"), Between(0, 120, Above = true)] LengthEntry Origin,
    [Meaning("From one stop to the next"), Between(0, 60, Above = true)] LengthEntry Pitch,
    [Label("stops"), Between(1, 99)] int Count,
    [Meaning("The number on the first stop"), Label("number of the first"), Between(0, 999)] int First = 1,
    [Meaning("What stands before the number, such as L"), Label("mark", Absent = "none")] string? Mark = null)
{
    /// <summary>What the shop calls a stop of the row.</summary>
    /// <param name="index">From 0, the nearest to the bit.</param>
    public string NameOf(int index) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Mark}{First + index}");
}
