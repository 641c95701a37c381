using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>Which stop gives one boring.</summary>
/// <param name="Error">Where the stop puts it less where it should be, from the end that lies against the stop: positive is too far from that end.</param>
/// <param name="End">The end of the leaf that lies against the stop: top or bottom; of a level edge left or right, seen from the back.</param>
public sealed record StopFor(Bore Bore, Stop Stop, Side End, Length Error)
{
    // A hinge's screws move a leaf no further in height, on most sheets.
    internal static readonly Length Furthest = Length.FromInches(new(1, 16));

    /// <summary>Whether the stop can be used; else the place is marked and bored without one.</summary>
    public bool IsNear => Length.Abs(Error) <= Furthest;
}

/// <summary>One stop on each side that serves a whole batch.</summary>
/// <param name="Left">Null where the machine has none on the left.</param>
/// <param name="Right">Null where the machine has none on the right.</param>
/// <param name="Error">The worst that it puts an outer boring wrong by.</param>
public sealed record BatchStops(Stop? Left, Stop? Right, Length Error)
{
    /// <summary>Whether they can be used for all.</summary>
    public bool IsNear => Error <= StopFor.Furthest;
}

/// <summary>How a leaf is bored on a machine with stops: it lies face down, its hinge edge against the fence.</summary>
/// <remarks>A leaf hinged on its left has its top on the left, seen by who stands at the machine; one hinged on its right has it on the right.</remarks>
/// <param name="Fence">What the fence is set to.</param>
/// <param name="Cautions">What the machine cannot do.</param>
public sealed record StopPlan(BoringMachine Machine, BoringSheet Sheet, IReadOnlyList<StopFor> Stops, Worked Fence, IReadOnlyList<FormattableString> Cautions)
{
    public static StopPlan Of(BoringMachine machine, BoringSheet sheet)
    {
        var stops = Stop.Of(machine);
        var fence = (machine.Fence == FenceReading.CupCentre ? sheet.CupCentre : sheet.Distance).As("fence setting", "machine/fence");
        List<FormattableString> cautions = [];
        if (machine.LeastFence is { } least && fence.Length < least.Value)
            cautions.Add($"The fence of {machine.Name} goes down to {least.Value}, and {fence} is asked for.");
        if (machine.GreatestFence is { } most && fence.Length > most.Value)
            cautions.Add($"The fence of {machine.Name} goes up to {most.Value}, and {fence} is asked for.");
        if (machine.Bit is { } bit && bit.Value != sheet.Leaf.Hinge.Cup!.Diameter.Value)
            cautions.Add($"{machine.Name} has a bit of {bit.WithUnit}; the hinge's cup is {sheet.Leaf.Hinge.Cup!.Diameter.WithUnit}.");
        return new(machine, sheet, [.. sheet.Bores.Select(bore => Best(bore, sheet, stops)).OfType<StopFor>()], fence, cautions);
    }

    // The stop that comes nearest, from either end; of equal ones the first in the machine's own order.
    private static StopFor? Best(Bore bore, BoringSheet sheet, IReadOnlyList<Stop> stops) => stops
        .Select(stop => (Stop: stop, End: EndAt(sheet, stop.Side)))
        .Select(each => new StopFor(bore, each.Stop, each.End, each.Stop.Distance.Length - DistanceFrom(bore, sheet, each.Stop.Side).Length))
        .MinBy(choice => Length.Abs(choice.Error).Inches);

    /// <summary>One stop on each side for the outer borings of a batch: of each side the one whose worst error over all leaves is least.</summary>
    /// <returns>Null where the machine has no stops.</returns>
    public static BatchStops? ForBatch(BoringMachine machine, IReadOnlyList<BoringSheet> sheets)
    {
        var stops = Stop.Of(machine);
        var left = Choose(StopSide.Left);
        var right = Choose(StopSide.Right);
        return left is null && right is null ? null : new(left?.Stop, right?.Stop, Length.Greatest(left?.Error ?? default, right?.Error ?? default));

        (Stop Stop, Length Error)? Choose(StopSide side)
        {
            var outer = sheets.Select(sheet => Nearest(sheet, side)).ToList();
            var best = stops.Where(stop => stop.Side == side)
                .Select(stop => (Stop: stop, Error: outer.Select(at => Length.Abs(stop.Distance.Length - at)).DefaultIfEmpty().Max()))
                .MinBy(each => each.Error.Inches);
            return best.Stop is null ? null : best;
        }

        static Length Nearest(BoringSheet sheet, StopSide side) => sheet.Bores.Select(bore => DistanceFrom(bore, sheet, side).Length).MinBy(distance => distance.Inches);
    }

    // Who stands at the machine sees the back, the hinge edge furthest away.
    private static bool FirstIsLeft(BoringSheet sheet) => sheet.Hand is HingeSide.Left or HingeSide.Top;

    private static Worked DistanceFrom(Bore bore, BoringSheet sheet, StopSide side) => (side == StopSide.Left) == FirstIsLeft(sheet) ? bore.FromFirst : bore.FromOther;

    private static Side EndAt(BoringSheet sheet, StopSide side)
    {
        var isFirst = (side == StopSide.Left) == FirstIsLeft(sheet);
        return sheet.Hand is HingeSide.Left or HingeSide.Right ? isFirst ? Side.Top : Side.Bottom : isFirst ? Side.Left : Side.Right;
    }
}
