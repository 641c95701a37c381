using System.Globalization;
using Fractions;
using Stilewright.Doors;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;

namespace Stilewright.Wording;

/// <summary>Moves of screws, gaps and remedies as the person with the screwdriver reads them.</summary>
public sealed class AdjustingWords(AdjustingPlan plan, LengthFormat format)
{
    /// <summary>What is done before any screw is turned, and after. Common practice, no source.</summary>
    public const string BeforeTurning = "Close every leaf. Slacken the screw that locks an adjustment before you turn it, hold the leaf while it is loose, and tighten it again after each move. The hinge's own sheet says which screw is which.";

    /// <summary>"between 7·2L and 7·2R, at the top".</summary>
    public static string Place(string leaf, Side edge, EdgeEnd at, string? beyond)
    {
        var end = (edge is Side.Left or Side.Right, at) switch
        {
            (true, EdgeEnd.Start) => "at the bottom",
            (true, EdgeEnd.End) => "at the top",
            (false, EdgeEnd.Start) => "at its left end",
            (false, EdgeEnd.End) => "at its right end",
            _ => "in the middle",
        };
        return beyond is not null ? $"between {leaf} and {beyond}, {end}" : edge switch
        {
            Side.Left => $"left of {leaf}, {end}",
            Side.Right => $"right of {leaf}, {end}",
            Side.Top => $"above {leaf}, {end}",
            _ => $"below {leaf}, {end}",
        };
    }

    public static string Place(GapReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Place(reading.Leaf, reading.Edge, reading.At, reading.Beyond);
    }

    public static string Corner(LeafCorner corner) => corner switch
    {
        LeafCorner.HingeTop => "top corner at the hinges",
        LeafCorner.HingeBottom => "bottom corner at the hinges",
        LeafCorner.FreeTop => "top corner of the free edge",
        _ => "bottom corner of the free edge",
    };

    /// <summary>"1/16 proud", "1/32 shy", or "flush" where what is left prints as nothing.</summary>
    public static string Proud(Length proud, LengthFormat format)
    {
        ArgumentNullException.ThrowIfNull(format);
        var size = format.Print(Length.Abs(proud));
        return size is "0" or LengthFormat.RoundedMark + "0" ? "flush" : $"{size} {(proud.IsPositive ? "proud" : "shy")}";
    }

    /// <summary>One sentence: what the screws do, and what is left.</summary>
    public string Summary()
    {
        if (plan.IsWithin && plan.After.Moves.All(moves => moves.IsNone))
            return $"Nothing needs to be turned: every gap and corner is within {format.PrintWithUnit(plan.Task.Tolerance)}.";
        if (plan.After.Moves.All(moves => moves.IsNone))
            return $"Turning screws brings it no nearer. {Left(plan.After)}";
        return plan.IsWithin
            ? $"The screws do it: afterwards every gap and corner is within {format.PrintWithUnit(plan.Task.Tolerance)}."
            : $"The screws bring it nearer, not all the way. {Left(plan.After)}";
    }

    /// <summary>The moves of one leaf in the order they are made: height first, then sideways, then depth. Empty where nothing is turned.</summary>
    /// <remarks>The order is common practice, no source: lifting a leaf moves all its gaps, depth none of them.</remarks>
    public IReadOnlyList<string> Moves(int index)
    {
        var leaf = plan.Task.Leaves[index];
        var moves = plan.After.Moves[index];
        List<string> lines = [];
        if (!moves.Height.IsZero)
            lines.Add($"Height, at every hinge alike: {(moves.Height.IsPositive ? "lift" : "lower")} the leaf {Travel(moves.Height, leaf.Height)}.");
        Outer(lines, leaf, "Sideways", moves.SidewaysTop, moves.SidewaysBottom, leaf.Sideways, travel =>
            $"carry the leaf {Travel(travel, leaf.Sideways)} {(travel.IsPositive ? "away from" : "towards")} its hinge side, to the {(travel.IsPositive == leaf.HingedLeft ? "right" : "left")}");
        Outer(lines, leaf, "Depth", moves.DepthTop, moves.DepthBottom, leaf.Depth, travel => $"bring the leaf {(travel.IsPositive ? "out" : "in")} by {Travel(travel, leaf.Depth)}");
        return lines;
    }

    /// <summary>What else would do it, and by how much.</summary>
    public IReadOnlyList<string> Lines(Remedy remedy)
    {
        ArgumentNullException.ThrowIfNull(remedy);
        List<string> lines = [Title(remedy)];
        foreach (var plate in remedy.Plates)
        {
            List<string> parts = [];
            if (!plate.Sideways.IsZero)
                parts.Add($"{Size(plate.Sideways)} {(plate.Sideways.IsPositive ? "away from the hinge side, by packing behind it" : "towards the hinge side, by letting it in or boring anew")}");
            if (!plate.Height.IsZero)
                parts.Add($"{Size(plate.Height)} {(plate.Height.IsPositive ? "higher" : "lower")}, in new screw holes");
            if (!plate.Depth.IsZero)
                parts.Add($"{(plate.Depth.IsPositive ? "out" : "in")} by {Size(plate.Depth)}");
            lines.Add($"{plate.Leaf}, plate of the {HingeName(Leaf(plate.Leaf), plate.Hinge)}: {string.Join("; ", parts)}.");
        }

        foreach (var trim in remedy.Trims)
        {
            var edge = trim.Edge.ToString().ToLowerInvariant();
            var (start, end) = trim.Edge is Side.Left or Side.Right ? ("at the bottom", "at the top") : ("at the left", "at the right");
            lines.Add(trim.AtStart == trim.AtEnd ? $"{trim.Leaf}, {edge} edge: plane {Size(trim.AtStart)} off its whole length."
                : $"{trim.Leaf}, {edge} edge: plane it from {Planed(trim.AtStart)} {start} to {Planed(trim.AtEnd)} {end}.");
        }

        lines.AddRange(remedy.Bumpers.Select(change =>
            $"{change.Leaf}: {(change.Thicker.IsPositive ? "a thicker bumper, or the stop further out, by" : "a thinner bumper, or the stop set back, by")} {Size(change.Thicker)}."));
        lines.Add(Left(remedy.Hang));
        return lines;
    }

    /// <summary>What is said where neither screws nor remedies bring everything within the tolerance.</summary>
    public string? LastResort() => plan.IsWithin || plan.Remedies.Any(remedy => remedy.Does) ? null
        : plan.After.WorstCorner > plan.Task.Tolerance
            ? "A twisted leaf or frame cannot be adjusted away, only shared between the corners: sight over the frame with winding sticks, then over the leaf."
            : "The leaf does not suit its opening: measure both again before more is cut.";

    public static string HingeName(RowLeaf leaf, int hinge)
    {
        ArgumentNullException.ThrowIfNull(leaf);
        return hinge == 0 ? "bottom hinge" : hinge == leaf.Hinges.Count - 1 ? "top hinge"
            : leaf.Hinges.Count == 3 ? "middle hinge" : string.Create(CultureInfo.InvariantCulture, $"hinge {hinge + 1} from the bottom");
    }

    private static string Title(Remedy remedy) => (remedy.Kind, remedy.Does) switch
    {
        (RemedyKind.MovePlates, true) => "Moving plates does it:",
        (RemedyKind.MovePlates, false) => "Moving plates helps, but does not do it:",
        (RemedyKind.SetBumper, true) => "Other bumpers or stops do it:",
        (RemedyKind.SetBumper, false) => "Other bumpers or stops help, but do not do it:",
        (RemedyKind.Trim, true) => "Planing does it:",
        (RemedyKind.Trim, false) => "Planing helps, but does not do it:",
        (_, true) => "Together this does it:",
        _ => "Together this comes nearest:",
    };

    private static void Outer(List<string> lines, RowLeaf leaf, string axis, Length top, Length bottom, ScrewRange range, Func<Length, string> say)
    {
        if (range.IsFixed || (top.IsZero && bottom.IsZero))
            return;
        if (top == bottom)
        {
            lines.Add($"{axis}, at every hinge alike: {say(top)}.");
            return;
        }

        foreach (var (hinge, travel) in new[] { (leaf.Hinges.Count - 1, top), (0, bottom) })
        {
            if (!travel.IsZero)
                lines.Add($"{axis}, {HingeName(leaf, hinge)}: {say(travel)}.");
        }

        if (leaf.Hinges.Count > 2)
            lines.Add($"{axis}, the {(leaf.Hinges.Count == 3 ? "middle hinge" : "hinges between")}: slacken, and let it follow before you tighten it.");
    }

    private RowLeaf Leaf(string label) => plan.Task.Leaves[plan.Task.IndexOf(label)];

    private string Travel(Length travel, ScrewRange range) => range.PerTurn is { } turn ? $"{Size(travel)}, {Turns(Length.Abs(travel) / turn)}" : Size(travel);

    private static string Turns(Fraction turns)
    {
        var quarters = (int)Fraction.Round(turns * 4, 0, MidpointRounding.AwayFromZero);
        var whole = quarters / 4;
        var part = (quarters % 4) switch { 1 => "1/4", 2 => "1/2", 3 => "3/4", _ => "" };
        var count = whole == 0 ? part : part.Length == 0 ? whole.ToString(CultureInfo.InvariantCulture) : $"{whole} {part}";
        return $"{count} {(quarters <= 4 ? "turn" : "turns")}";
    }

    private string Planed(Length length) => length.IsZero ? "nothing" : Size(length);

    private string Size(Length length) => format.PrintWithUnit(Length.Abs(length));

    private string Left(Hang hang)
    {
        List<string> parts = [];
        if (hang.Gaps.Count > 0)
        {
            var worst = hang.Gaps.MaxBy(gap => gap.Miss)!;
            parts.Add(worst.Miss.IsZero ? "every gap is as it should be" : $"the worst gap, {Place(worst.Reading)}, is then {format.PrintWithUnit(worst.After)} and should be {format.PrintWithUnit(worst.Target)}");
        }

        if (hang.Corners.Count > 0)
        {
            var worst = hang.Corners.MaxBy(corner => corner.Miss)!;
            parts.Add(worst.Miss.IsZero ? "every corner is flush" : $"the worst corner, the {Corner(worst.Reading.Corner)} of {worst.Reading.Leaf}, stands {Proud(worst.After, format)}");
        }

        var text = string.Join("; ", parts);
        return text.Length == 0 ? "" : char.ToUpperInvariant(text[0]) + text[1..] + ".";
    }
}
