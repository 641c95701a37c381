using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>How a solid panel or slab is glued up from staves.</summary>
/// <param name="Part">Its rough size is what is glued up; it is cut to its size into the clamps afterwards.</param>
/// <param name="Staves">From the left.</param>
/// <param name="Width">Of the staves together, jointed.</param>
/// <param name="Length">Of every stave.</param>
/// <param name="Waste">How much wider the staves are together than the rough size.</param>
/// <param name="Clamps">How many, over and under in turn; none for a single board.</param>
/// <param name="ClampSpacing">At most this from one to the next.</param>
/// <param name="Limit">The machine whose width makes it several sections; null where it goes through whole.</param>
/// <param name="Steps">The way from rough boards to the finished thickness, in order.</param>
/// <remarks>Clamps press through a fan of 45°, so they stand no further apart than twice an outer stave is wide, and 12 in at most: common practice, no source.</remarks>
public sealed record GlueUp(
    Part Part, IReadOnlyList<Stave> Staves, Length Width, Length Length, Length Waste, int Clamps, Length ClampSpacing, Machine? Limit, IReadOnlyList<FormattableString> Steps)
{
    private const int MostBoards = 24;

    private static readonly Length WidestSpacing = Length.FromInches(12);

    /// <summary>How many sections are surfaced on their own before they are joined.</summary>
    public int Sections => Staves[^1].Section;

    /// <exception cref="ArgumentException">The part is not glued up from staves.</exception>
    public static GlueUpResult Of(Part part, StandardInForce standard, GlueUpOrder order)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(standard);
        ArgumentNullException.ThrowIfNull(order);
        if (!part.Work.Contains(EdgeWork.JoinStaves) || part.Rough is not { } rough)
            throw new ArgumentException($"The {part.Name} is not glued up.", nameof(part));
        var joint = order.JointAllowance * 2;
        if (!order.GreatestStave.Inches.IsPositive || order.GreatestStave <= joint || order.LeastStave > order.GreatestStave)
            return new GlueUpResult.Refused($"Staves of {order.LeastStave} to {order.GreatestStave} leave nothing after {order.JointAllowance} is taken off each edge.", $"Give a range of stave widths, the lesser first.");
        if (order.Boards.Count > MostBoards)
            return new GlueUpResult.Refused($"{order.Boards.Count} boards are too many to choose from.", $"List at most {MostBoards}.");

        var needed = rough.Width.Length;
        var step = standard[Settings.Step].Length;
        var limit = standard.Standard.Machines.Where(machine => machine.Kind is MachineKind.Planer or MachineKind.Sander && machine.Widest is not null).MinBy(machine => machine.Widest!.Value.Value);
        var section = limit?.Widest!.Value.Value ?? needed;
        List<(Length Rough, Length Jointed)> widths;
        if (order.Boards.Count > 0)
        {
            if (Chosen([.. order.Boards], needed, joint, step) is not { } chosen)
                return new GlueUpResult.NotEnough(needed - order.Boards.Aggregate(default(Length), (sum, board) => sum + Length.Greatest(default, board - joint)));
            widths = [.. chosen.Select(board => (board, board - joint))];
        }
        else
        {
            var count = Math.Max(1, Whole(needed / (order.GreatestStave - joint)));
            // Of several sections each is made of whole staves.
            var sections = Math.Max(1, Whole(needed / section));
            if (sections > 1)
                count = Math.Max(sections, (count + sections - 1) / sections * sections);
            var jointed = (needed / count).OnStep(step, StepDirection.Up);
            if (count > 1 && jointed + joint < order.LeastStave)
                return new GlueUpResult.Refused($"{count} staves would be {jointed + joint} wide each, less than {order.LeastStave}.", $"Allow narrower or wider staves.");
            widths = [.. Enumerable.Repeat((jointed + joint, jointed), count)];
        }

        var staves = Placed(widths, section, order.AlternateRings);
        if (staves is null)
            return new GlueUpResult.Refused($"A board is wider than {limit!.Name} takes, {section}.", $"Rip it first.");
        var total = widths.Aggregate(default(Length), (sum, each) => sum + each.Jointed);
        var spacing = Length.Least(WidestSpacing, Length.Least(staves[0].Jointed, staves[^1].Jointed) * 2);
        var clamps = staves.Count == 1 ? 0 : Math.Max(2, Whole(rough.Length.Length / spacing));
        return new GlueUpResult.Planned(new(part, staves, total, rough.Length.Length, total - needed, clamps, spacing, staves[^1].Section > 1 ? limit : null,
            StepsOf(part, staves, limit, order)));
    }

    // Filled from the left as far as the machine takes, evenly where all staves are alike.
    private static List<Stave>? Placed(List<(Length Rough, Length Jointed)> widths, Length section, bool alternate)
    {
        if (widths.Any(each => each.Jointed > section))
            return null;
        var total = widths.Aggregate(default(Length), (sum, each) => sum + each.Jointed);
        var sections = total <= section ? 1 : Math.Max(2, Whole(total / section));
        var aim = total / sections;
        List<Stave> staves = [];
        var (number, width) = (1, default(Length));
        foreach (var (rough, jointed) in widths)
        {
            if (!width.IsZero && (width + jointed > section || sections > 1 && width + (jointed / 2) > aim))
                (number, width) = (number + 1, default);
            width += jointed;
            staves.Add(new(staves.Count + 1, rough, jointed, !alternate || staves.Count % 2 == 0, number));
        }

        return staves;
    }

    // The boards, in their order, that are wide enough together with the least over, and among those the fewest: every sum on the step, by what reaches it.
    private static List<Length>? Chosen(IReadOnlyList<Length> boards, Length needed, Length joint, Length step)
    {
        // Widths are put down to the step, as a board never grows.
        var target = Whole(needed / step);
        Dictionary<int, List<int>> best = new() { [0] = [] };
        for (var i = 0; i < boards.Count; i++)
        {
            var width = (int)((boards[i] - joint) / step).ToBigInteger();
            if (width <= 0)
                continue;
            foreach (var (sum, which) in best.Where(each => each.Key < target).ToList())
            {
                var reached = sum + width;
                if (!best.TryGetValue(reached, out var known) || known.Count > which.Count + 1)
                    best[reached] = [.. which, i];
            }
        }

        var enough = best.Where(each => each.Key >= target).OrderBy(each => each.Key).ThenBy(each => each.Value.Count).Select(each => each.Value).FirstOrDefault();
        return enough is null ? null : [.. enough.Select(index => boards[index])];
    }

    private static IReadOnlyList<FormattableString> StepsOf(Part part, List<Stave> staves, Machine? limit, GlueUpOrder order)
    {
        var sections = staves[^1].Section;
        var thickness = part.Thickness!;
        List<FormattableString> steps = [];
        if (thickness.Rough is { } rough)
            steps.Add($"Joint one face and plane the boards from {rough.Length} to a little over {thickness.Planed.Length}, all alike; let them rest a day.");
        steps.Add($"Joint both edges, {order.JointAllowance} off each{(staves.Count > 1 ? ", the mates of a joint with opposite faces to the fence" : "")}.");
        if (staves.Count > 1 && sections == 1)
            steps.Add($"Lay the staves by their numbers with the arrows one way, glue and clamp them flat.");
        if (sections > 1)
        {
            steps.Add($"Glue up {sections} sections on their own: {string.Join("; ", Enumerable.Range(1, sections).Select(number => Words(staves, number)))}. Each goes through {limit!.Name}, which takes {limit.Widest!.Value.Value}.");
            steps.Add($"Plane every section to {thickness.Planed.Length} at one setting, and sand it.");
            steps.Add($"Joint the edges between the sections and join them last, with cauls or splines that keep the faces flush; only that joint is then levelled by hand.");
        }
        else
        {
            steps.Add($"Plane it to {thickness.Planed.Length}.");
        }

        if (thickness.Final.Length != thickness.Planed.Length)
            steps.Add($"Sand it to {thickness.Final.Length}{(sections > 1 ? ", the last joint by hand" : "")}.");
        return steps;
    }

    private static string Words(List<Stave> staves, int section)
    {
        var own = staves.Where(stave => stave.Section == section).ToList();
        return own.Count == 1 ? $"stave {own[0].Number} alone" : $"staves {own[0].Number} to {own[^1].Number}";
    }

    // The least whole number that is not less.
    private static int Whole(Fraction count)
    {
        var whole = System.Numerics.BigInteger.DivRem(count.Numerator, count.Denominator, out var rest);
        return (int)(rest.IsZero ? whole : whole + 1);
    }
}
