using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>One stop of a boring machine.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Distance">From the centre of the bit: origin and so many times the pitch.</param>
public sealed record Stop(string Name, StopSide Side, Worked Distance)
{
    /// <summary>Every stop of a machine, in the order of its rows.</summary>
    public static IReadOnlyList<Stop> Of(BoringMachine machine) =>
    [
        .. machine.Stops.SelectMany((row, i) => Enumerable.Range(0, row.Count).Select(n => new Stop(row.NameOf(n), row.Side, At(machine, row, i, n)))),
    ];

    private static Worked At(BoringMachine machine, StopRow row, int index, int n)
    {
        Given Entered(string field, string label, LengthEntry entry) =>
            new($"machine/stops.{index}.{field}", label, entry.Value, new(OriginKind.Standard, $"standard/boringMachines/{machine.Id}/stops/{index}/{field}"));
        Worked origin = Entered("origin", "first stop", row.Origin);
        return (n == 0 ? origin : origin + (n == 1 ? Entered("pitch", "pitch", row.Pitch) : n * (Worked)Entered("pitch", "pitch", row.Pitch))).As($"stop {row.NameOf(n)}", $"machine/stop.{row.Side}.{row.NameOf(n)}");
    }
}
