using System.Globalization;
using Fractions;
using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wood;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>How the wood of each leaf moves over the year, and what the leaf weighs.</summary>
internal static class WoodPage
{
    public static Page Of(Selection selection, LengthFormat format)
    {
        var figures = new TradeWords(format);
        var page = new Page();
        foreach (var chosen in selection.Fronts)
        {
            page.Title($"Bench {chosen.Project.Project.Bench}, {chosen.Piece.Piece.Name}: front {FrontWords.Name(chosen.Front)}");
            foreach (var leaf in chosen.Leaves)
                AddLeaf(page, leaf, figures);
            AddFront(page, chosen.Front, figures);
        }

        var total = WeightTotal.Of(selection.Fronts.SelectMany(chosen => chosen.Leaves));
        if (total.Leaves > 1)
            page.Title($"Together: {TradeWords.Count(total.Leaves, "leaf", "leaves")}, {Pounds(total.Pounds)}{Without(total.Unknown)}");
        return page.Footnotes();
    }

    private static void AddLeaf(Page page, SizedLeaf leaf, TradeWords figures)
    {
        page.Heading($"Leaf {leaf.Label}, {leaf.Name}");
        if (leaf.IsWithheld)
        {
            page.Line(Remarks.Withheld, Tone.Danger, 2);
            return;
        }

        var moisture = ServiceMoisture.Of(leaf.Standard);
        page.Line($"Made at {Percent(moisture.Making.Amount)}; in service {Percent(moisture.Driest.Amount)} to {Percent(moisture.Wettest.Amount)}.", Tone.Plain, 2);
        foreach (var part in leaf.Parts.Where(part => part.Groove is not null))
        {
            if (PanelFit.Of(part, leaf.Standard) is not { } fit)
            {
                page.Line($"{Capital(part.Name)}: nothing is known of how {part.Material} moves.", Tone.Plain, 2);
                continue;
            }

            page.Line($"{Capital(part.Name)}, {fit.Wood.Species.Name}, {fit.Wood.Rings.ToString().ToLowerInvariant()}, {(fit.IsPinned ? "pinned" : "free")}: {Judged(fit)}", Tone.Plain, 2);
            page.Line(fit.Range switch
            {
                PanelRange.Some(var least, var greatest) => $"Widths that work at making: {figures.Of(least)} to {figures.Of(greatest)}.",
                PanelRange.None none => $"No width works: short by {figures.Of(none.ShortBy)}. What would: {string.Join("; ", none.Remedies.Select(remedy => FindingText.Say(remedy.Advice, figures.Format)))}.",
                _ => throw new InvalidOperationException("A range is some or none."),
            }, Tone.Plain, 2);
            if (fit.Wood.Caution is { } caution)
                page.Line(caution, Tone.Plain, 2);
            WorkPage.AddSteps(page, [fit.Width, fit.Clearance, fit.PlayAtWettest, fit.EngagementAtDriest], figures);
        }

        var weight = LeafWeight.Of(leaf);
        page.Line($"Weight {Pounds(weight.Pounds)}{Without(weight.Unknown)}.", Tone.Plain, 2);
    }

    private static void AddFront(Page page, SizedFront front, TradeWords figures)
    {
        var movement = FrontMovement.Of(front);
        foreach (var gap in movement.Gaps)
            page.Line($"{Capital(gap.Words)}: {figures.Of(gap.AtMaking)} at making, {figures.Of(gap.AtWettest)} at the wettest.", Tone.Plain, 2);
        foreach (var overlay in movement.Overlays)
            page.Line($"Overlay on the {overlay.Side.ToString().ToLowerInvariant()}: {figures.Of(overlay.AtMaking)} at making, {figures.Of(overlay.AtDriest)} at the driest.", Tone.Plain, 2);
    }

    private static string Judged(PanelFit fit) => fit switch
    {
        { Bottoms: true, IsLoose: true } => "too wide at the wettest and too narrow at the driest.",
        { Bottoms: true } => "too wide at the wettest.",
        { IsLoose: true } => "too narrow at the driest.",
        { Wedges: true } => "its tongue is flat for less than its edge enters.",
        _ => "fits through the year.",
    };

    private static string Percent(Fraction percent) => $"{percent.ToDecimal().ToString("0.#", CultureInfo.InvariantCulture)} %";

    private static string Pounds(Fraction pounds) => $"{pounds.ToDecimal().ToString("0.0", CultureInfo.InvariantCulture)} lb ({(pounds.ToDecimal() * 0.45359237m).ToString("0.00", CultureInfo.InvariantCulture)} kg)";

    private static string Without(IReadOnlyList<string> unknown) => unknown.Count == 0 ? "" : $", without {string.Join(" and ", unknown)}, of which nothing is known";

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
