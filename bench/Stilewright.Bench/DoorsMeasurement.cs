using System.Globalization;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Bench;

/// <summary>Ten thousand doors, broken down with every worked quantity, and every step told in words and figures.</summary>
internal static class DoorsMeasurement
{
    private const int Doors = 10_000;

    public static void Run()
    {
        var course = SampleCourses.Of(500, Doors);
        var words = Host.KeepToOneCore();
        var format = LengthFormat.InchesTo32;
        Breakdown? breakdown = null;

        var building = Timing.Of(3, 7, () => breakdown = Breakdown.Of(course, ShippedStandards.Inch));
        var leaves = breakdown!.Leaves.Count();
        var parts = breakdown.Parts.Count();
        if (leaves != Doors || breakdown.Leaves.Any(leaf => leaf.Parts.Count == 0))
            throw new InvalidOperationException("The course does not make 10,000 doors that can be built.");

        var steps = 0;
        var telling = Timing.Of(1, 5, () => steps = Tell(breakdown, format));
        var both = Timing.Of(0, 5, () => steps = Tell(Breakdown.Of(course, ShippedStandards.Inch), format));

        breakdown = null;
        var before = GC.GetTotalMemory(forceFullCollection: true);
        var allocatedBefore = GC.GetAllocatedBytesForCurrentThread();
        breakdown = Breakdown.Of(course, ShippedStandards.Inch);
        var allocated = GC.GetAllocatedBytesForCurrentThread() - allocatedBefore;
        var kept = GC.GetTotalMemory(forceFullCollection: true) - before;
        allocatedBefore = GC.GetAllocatedBytesForCurrentThread();
        Tell(breakdown, format);
        var told = GC.GetAllocatedBytesForCurrentThread() - allocatedBefore;
        GC.KeepAlive(breakdown);

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"doors: {leaves:N0} doors, {parts:N0} parts, {words}, warm"));
        Console.WriteLine($"  sizes, parts and worked quantities: {building.Against(1000)}; {building.Processor}");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  telling {steps:N0} steps in words and figures: {telling}; {telling.Processor}"));
        Console.WriteLine($"  both together: {both.Against(1000)}; {both.Processor}");
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"  bytes per door: {allocated / Doors:N0} allocated, {kept / Doors:N0} kept; telling allocates {told / Doors:N0} more"));
    }

    private static int Tell(Breakdown breakdown, LengthFormat format)
    {
        var steps = 0;
        foreach (var part in breakdown.Parts)
            steps += WorkedText.Steps(format, part.Quantities).Count;
        return steps;
    }
}
