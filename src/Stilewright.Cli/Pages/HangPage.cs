using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Findings;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>How many hinges each leaf gets and why, where they go, and what is bored.</summary>
internal static class HangPage
{
    public static Page Of(IReadOnlyList<HungLeaf> leaves, LengthFormat format, bool showsWork, bool showsSteps)
    {
        var figures = new TradeWords(format);
        var page = new Page();
        foreach (var bench in leaves.GroupBy(leaf => leaf.Project))
        {
            page.Title($"Bench {bench.Key.Bench.ToString(CultureInfo.InvariantCulture)}, {bench.Key.Name}: hinges and boring, in {figures.Unit}");
            foreach (var leaf in bench)
                AddLeaf(page, leaf, figures, showsWork, showsSteps);
            foreach (var line in BoringWords.Batch([.. bench], format))
                page.Line(line);
        }

        return page.Footnotes();
    }

    private static void AddLeaf(Page page, HungLeaf leaf, TradeWords figures, bool showsWork, bool showsSteps)
    {
        var format = figures.Format;
        page.Heading($"{BoringWords.Name(leaf)}: {leaf.Hinge.Name}");
        page.Line($"{TradeWords.Count(leaf.Bores.Count, "hinge", "hinges")}. {BoringWords.Why(leaf.Set.Number)}.", Tone.Plain, 2);
        foreach (var source in BoringWords.Sources(leaf.Set.Number))
            page.Line($"Source: {source.Text}", Tone.Quiet, 2);
        page.Line($"Seen from the back its hinge edge is the {TradeWords.Words(leaf.Edge)} one. {BoringWords.Note(leaf, format)}", Tone.Plain, 2);
        if (leaf.Sheet is { } sheet)
            page.Line($"Boring distance {figures.Of(sheet.Distance)}, centre of the cup {figures.Of(sheet.CupCentre)} from that edge.{(leaf.Fit is { Plate: { } plate } ? $" Plates {figures.Of(plate)} high." : "")}", Tone.Plain, 2);
        if (BoringWords.Fit(leaf, format) is { } fit)
            page.Line(fit, Tone.Plain, 2);
        var plans = leaf.StopPlans;
        page.Grid(
            ["hinge", Column.Figure($"from the {BoringWords.First(leaf)}"), Column.Figure($"from the {BoringWords.Other(leaf)}"), .. plans.Select(plan => (Column)plan.Machine.Name), "moved because"],
            leaf.Bores.Select(bore => (IReadOnlyList<string>)
            [
                bore.Number.ToString(CultureInfo.InvariantCulture), figures.Of(bore.FromFirst), figures.Of(bore.FromOther),
                .. plans.Select(plan => plan.Stops.FirstOrDefault(stop => stop.Bore.Number == bore.Number) is { } stop ? BoringWords.Stop(stop, format) : ""), bore.Why ?? "",
            ]));
        foreach (var plan in plans)
        {
            page.Line($"Fence of {plan.Machine.Name}: {figures.Of(plan.Fence)}.", Tone.Plain, 2);
            foreach (var caution in plan.Cautions)
                page.Line(FindingText.Say(caution, format), Tone.Danger, 2);
        }

        if (showsWork)
            WorkPage.AddSteps(page, [.. BoringWords.Quantities(leaf)], figures);
        if (!showsSteps)
            return;
        foreach (var step in HangingSteps.Of(leaf))
        {
            page.Line($"{step.Title}: {FindingText.Say(step.Words, format)}", step.IsCaution ? Tone.Danger : Tone.Plain, 2);
            page.Line($"Source: {step.Source.Text}", Tone.Quiet, 6);
        }
    }
}
