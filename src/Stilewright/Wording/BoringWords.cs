using System.Globalization;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Wording;

/// <summary>What is said of hinges and boring, on paper, on screen and at the command line.</summary>
public static class BoringWords
{
    /// <summary>Which door it is, by the edge that it is hinged on, seen from the front.</summary>
    public static string Hand(HingeSide hinge) => hinge switch
    {
        HingeSide.Left => "left-hand door",
        HingeSide.Right => "right-hand door",
        HingeSide.Top => "door hinged at the top",
        HingeSide.Bottom => "door hinged at the bottom",
        _ => "fixed",
    };

    public static string Name(HungLeaf leaf) => $"{leaf.Leaf.Label}, {Hand(leaf.Leaf.Hinge)}";

    public static string DetailName(bool isFull) => isFull ? "Detail, full size" : "Detail, half size";

    public static string Detail(CupBoring cup, bool isFull, LengthFormat format)
    {
        FormattableString words = cup switch
        {
            { ScrewSpacing: null } => $"Cup of {cup.Diameter.WithUnit}, {cup.Depth.WithUnit} deep.",
            { ScrewSpacing: { } spacing, ScrewOffset: null } => $"Cup of {cup.Diameter.WithUnit}, {cup.Depth.WithUnit} deep; screw holes {spacing.WithUnit} apart.",
            { ScrewSpacing: { } spacing, ScrewOffset: { } behind } =>
                $"Cup of {cup.Diameter.WithUnit}, {cup.Depth.WithUnit} deep; screw holes {spacing.WithUnit} apart, {behind.WithUnit} behind its centre.",
        };
        return $"{DetailName(isFull)}. {FindingText.Say(words, format)}";
    }

    /// <summary>Whether the leaf has a top, and why.</summary>
    public static string Note(HungLeaf leaf, LengthFormat format)
    {
        var hand = leaf.Hand;
        return !hand.HasTop ? FindingText.Say(hand.Words, format)
            : $"{FindingText.Say(hand.Words, format)} Why: {string.Join("; ", hand.Reasons.Select(reason => FindingText.Say(reason, format)))}.";
    }

    /// <summary>The drawing in sentences, for those who cannot see it.</summary>
    public static string Describe(HungLeaf leaf, LengthFormat format)
    {
        var places = string.Join("; ", leaf.Bores.Select(bore => $"{format.Print(bore.FromFirst.Length)} from the {First(leaf)} and {format.Print(bore.FromOther.Length)} from the {Other(leaf)}"));
        var from = leaf.Sheet is { } sheet ? $" Boring distance {format.Print(sheet.Distance.Length)}, cup centre {format.Print(sheet.CupCentre.Length)} from that edge." : "";
        return $"{Name(leaf)}, seen from the back: its hinge edge is the {leaf.Edge.ToString().ToLowerInvariant()} one. Hinges at {places}.{from}";
    }

    /// <summary>The end that distances are told from first: the top, or the left of a level edge seen from the back.</summary>
    public static string First(HungLeaf leaf) => leaf.IsUpright ? "top" : "left";

    public static string Other(HungLeaf leaf) => leaf.IsUpright ? "bottom" : "right";

    /// <summary>Why a leaf gets as many hinges as it does: table, rows and their sources.</summary>
    public static string Why(HingeNumber number)
    {
        List<string> reasons = [];
        FromTable?[] rows = [number.ByHeight, number.ByWeight];
        foreach (var row in rows.OfType<FromTable>())
            reasons.Add($"{row.Label} {row.Row}: {row.Amount.ToString("G", CultureInfo.InvariantCulture)}");
        if (reasons.Count == 0)
            return number.ByTable is null ? "no table says more" : "by the table";
        var count = (int)number.Count.Amount;
        if (number.ByTable is { } told && told.Amount != count)
            reasons.Add($"the standard asks for {count.ToString(CultureInfo.InvariantCulture)}");
        else if (rows.OfType<FromTable>().Max(row => row.Amount) < count)
            reasons.Add("wider than the table is made for: 1 more");
        if (number.IsBeyond)
            reasons.Add("past the last row of the table");
        return $"{rows.OfType<FromTable>().First().Table}. {string.Join("; ", reasons)}";
    }

    /// <summary>Where the rows of <see cref="Why"/> come from.</summary>
    public static IReadOnlyList<Source> Sources(HingeNumber number) =>
        [.. new[] { number.ByHeight, number.ByWeight }.OfType<FromTable>().Select(row => row.Source).Distinct()];

    /// <summary>Which stop and how far it is off, such as "L1 from the top, 1/32 far".</summary>
    public static string Stop(StopFor choice, LengthFormat format)
    {
        var end = choice.End.ToString().ToLowerInvariant();
        return !choice.IsNear ? "no stop is near: mark it"
            : choice.Error.IsZero ? $"{choice.Stop.Name} from the {end}"
            : $"{choice.Stop.Name} from the {end}, {format.Print(Length.Abs(choice.Error))} too {(choice.Error.IsPositive ? "far" : "near")}";
    }

    /// <summary>What the hinge gives where that is not what the front was sized for; null where it is.</summary>
    public static string? Fit(HungLeaf leaf, LengthFormat format)
    {
        if (leaf.Fit is not { } fit || leaf.IsAsWanted)
            return null;
        var what = leaf.Hinge.KeepsGap ? "gap" : "overlay";
        return FindingText.Say($"The hinge gives {(what == "gap" ? "a gap" : "an overlay")} of {fit.Comes} where {fit.Wanted} is wanted; the side screw makes good {Length.Abs(fit.Error)}.", format);
    }

    /// <summary>What its boring rests on, each with its working: number, places, distance.</summary>
    public static IEnumerable<Worked> Quantities(HungLeaf leaf)
    {
        yield return leaf.Set.Number.Count;
        foreach (var bore in leaf.Bores)
        {
            yield return bore.FromFirst;
            yield return bore.FromOther;
        }

        if (leaf.Sheet is not { } sheet)
            yield break;
        yield return sheet.Distance;
        yield return sheet.CupCentre;
    }

    /// <summary>For a shop that sets one stop on each side for all leaves of a batch: which, and how far off the worst is. Upright leaves alone.</summary>
    public static IEnumerable<string> Batch(IReadOnlyList<HungLeaf> leaves, LengthFormat format)
    {
        BoringSheet[] sheets = [.. leaves.Where(leaf => leaf.IsUpright).Select(leaf => leaf.Sheet).OfType<BoringSheet>()];
        if (sheets.Length < 2)
            yield break;
        foreach (var machine in sheets[0].Leaf.Standard.Standard.BoringMachines)
        {
            if (StopPlan.ForBatch(machine, sheets) is not { } batch)
                continue;
            var stops = string.Join(" and ", new[] { batch.Left, batch.Right }.OfType<Stop>().Select(stop => stop.Name));
            var count = sheets.Length.ToString(CultureInfo.InvariantCulture);
            yield return batch.IsNear ? $"One setting for all {count} doors on {machine.Name}: {stops} for the outer hinges; the worst is {format.PrintWithUnit(batch.Error)} off."
                : $"No one setting of {machine.Name} serves all {count} doors: take each door's own stops.";
        }
    }
}
