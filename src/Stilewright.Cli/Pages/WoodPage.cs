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
            page.Title($"Together: {TradeWords.Count(total.Leaves, "leaf", "leaves")}, {WoodWords.Pounds(total.Pounds)}{WoodWords.Without(total.Unknown)}");
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
        page.Line(WoodWords.Moisture(moisture), Tone.Plain, 2);
        foreach (var part in leaf.Parts.Where(part => part.Groove is not null))
        {
            if (PanelFit.Of(part, leaf.Standard) is not { } fit)
            {
                page.Line($"{Capital(part.Name)}: nothing is known of how {part.Material} moves.", Tone.Plain, 2);
                continue;
            }

            page.Line($"{Capital(part.Name)}, {fit.Wood.Species.Name}, {WoodWords.Rings(fit.Wood.Rings)}, {WoodWords.Held(fit.IsPinned)}: {WoodWords.Judged(fit)}", Tone.Plain, 2);
            page.Line(WoodWords.Range(fit, figures), Tone.Plain, 2);
            if (fit.Wood.Caution is { } caution)
                page.Line(caution, Tone.Plain, 2);
            WorkPage.AddSteps(page, [fit.Width, fit.Clearance, fit.PlayAtWettest, fit.EngagementAtDriest], figures);
        }

        var weight = LeafWeight.Of(leaf);
        page.Line($"Weight {WoodWords.Pounds(weight.Pounds)}{WoodWords.Without(weight.Unknown)}.", Tone.Plain, 2);
    }

    private static void AddFront(Page page, SizedFront front, TradeWords figures)
    {
        var movement = FrontMovement.Of(front);
        foreach (var gap in movement.Gaps)
            page.Line($"{Capital(gap.Words)}: {figures.Of(gap.AtMaking)} at making, {figures.Of(gap.AtWettest)} at the wettest.", Tone.Plain, 2);
        foreach (var overlay in movement.Overlays)
            page.Line($"Overlay on the {overlay.Side.ToString().ToLowerInvariant()}: {figures.Of(overlay.AtMaking)} at making, {figures.Of(overlay.AtDriest)} at the driest.", Tone.Plain, 2);
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
