using System.Globalization;
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
    /// <param name="order">What glue-ups are planned from; null to leave them out.</param>
    public static Page Of(Selection selection, LengthFormat format, GlueUpOrder? order)
    {
        var figures = new TradeWords(format);
        var page = new Page();
        foreach (var chosen in selection.Fronts)
        {
            page.Title($"Bench {chosen.Project.Project.Bench}, {chosen.Piece.Piece.Name}: front {FrontWords.Name(chosen.Front)}");
            foreach (var leaf in chosen.Leaves)
                AddLeaf(page, leaf, figures, order);
            AddFront(page, chosen.Front, figures);
        }

        var total = WeightTotal.Of(selection.Fronts.SelectMany(chosen => chosen.Leaves));
        if (total.Leaves > 1)
            page.Title($"Together: {TradeWords.Count(total.Leaves, "leaf", "leaves")}, {WoodWords.Pounds(total.Pounds)}{WoodWords.Without(total.Unknown)}");
        return page.Footnotes();
    }

    private static void AddLeaf(Page page, SizedLeaf leaf, TradeWords figures, GlueUpOrder? order)
    {
        page.Heading($"Leaf {leaf.Label}, {leaf.Name}");
        if (leaf.IsWithheld)
        {
            page.Line(Remarks.Withheld, Tone.Danger, 2);
            return;
        }

        var moisture = ServiceMoisture.Of(leaf.Standard);
        page.Line(WoodWords.Moisture(moisture), Tone.Plain, 2);
        page.Line(WoodWords.MoistureSource(leaf.Standard), Tone.Quiet, 2);
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
            page.Line(WoodWords.MovementSource(fit.Wood.Species), Tone.Quiet, 2);
            WorkPage.AddSteps(page, [fit.Width, fit.Clearance, fit.PlayAtWettest, fit.EngagementAtDriest], figures);
        }

        foreach (var part in leaf.Parts.Where(part => order is not null && part.Work.Contains(EdgeWork.JoinStaves)))
            AddGlueUp(page, part, leaf, figures, order!);
        var weight = LeafWeight.Of(leaf);
        var centre = weight.Centre is { } at ? $"; centre of gravity {WoodWords.About(at.X, figures.Format)} from the left, {WoodWords.About(at.Y, figures.Format)} from below" : "";
        page.Line($"Weight {WoodWords.Pounds(weight.Pounds)}{WoodWords.Without(weight.Unknown)}{centre}; face {WoodWords.Area(weight.Area.Amount, figures.Format.Unit)}.", Tone.Plain, 2);
    }

    private static void AddGlueUp(Page page, Part part, SizedLeaf leaf, TradeWords figures, GlueUpOrder order)
    {
        page.Heading($"Glue-up of {part.Label}, {part.Name}");
        switch (GlueUp.Of(part, leaf.Standard, order))
        {
            case GlueUpResult.Planned(var glueUp):
                foreach (var caution in GlueUpCaution.Of(glueUp, leaf.Standard))
                    page.Line($"Caution: {FindingText.Say(caution.Problem, figures.Format)} Do: {FindingText.Say(caution.Advice, figures.Format)} Source: {caution.Source}.", Tone.Danger, 2);
                page.Grid([new("stave", true), new("rip to", true), new("jointed", true), new("face up"), new("section", true)],
                    glueUp.Staves.Select(IReadOnlyList<string> (stave) => [Text(stave.Number), figures.Of(stave.Rough), figures.Of(stave.Jointed), stave.BarkUp ? "bark side" : "heart side", Text(stave.Section)]));
                page.Line($"Together {figures.Of(glueUp.Width)} × {figures.Of(glueUp.Length)}, {figures.Of(glueUp.Waste)} over; {Text(glueUp.Clamps)} clamps, at most {figures.Of(glueUp.ClampSpacing)} apart.", Tone.Plain, 2);
                foreach (var (index, step) in glueUp.Steps.Index())
                    page.Line($"{Text(index + 1)}. {FindingText.Say(step, figures.Format)}", Tone.Plain, 2);
                page.Line($"Widths of staves, allowances and clamps: common practice, no source. {Remarks.Machines}", Tone.Quiet, 2);
                break;
            case GlueUpResult.NotEnough(var lacking):
                page.Line($"The boards are {figures.Of(lacking)} too narrow together, once they are jointed.", Tone.Plain, 2);
                break;
            case GlueUpResult.Refused(var problem, var advice):
                page.Line($"{FindingText.Say(problem, figures.Format)} {FindingText.Say(advice, figures.Format)}", Tone.Plain, 2);
                break;
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

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
