using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Doors;

internal sealed partial class LeafBreakdown
{
    private bool climateTold;

    private bool BySeason => standard.Word(Settings.PanelPolicy) == Settings.BySeason;

    /// <summary>How the wood of a solid part moves; null, told once, where that is not known.</summary>
    private PanelWood? WoodOf(string species, string? segment)
    {
        var wood = PanelWood.Of(standard, species);
        if (wood is null)
        {
            var match = SpeciesTable.Find(standard, species);
            var near = match is SpeciesMatch.Unknown { Nearest: { Count: > 0 } names } ? $" {char.ToUpperInvariant(names[0][0])}{names[0][1..]} is known{(names.Count > 1 ? $", and {string.Join(" and ", names.Skip(1))}" : "")}." : "";
            Report(Rules.SpeciesUnknown,
                match is SpeciesMatch.Unknown ? $"No wood is known by the name '{species}', so nobody can say how far it moves." : (FormattableString)$"How far {species} moves is not known.",
                $"Correct its name, or add it to the house standard.{near}{(BySeason && segment is not null ? " Until then it has the clearance of the standard." : "")}", "species", segment);
        }

        if (!climateTold && standard.Find(Settings.Climate).Value.Text is var named && ServiceMoisture.Of(standard).Climate is null)
        {
            climateTold = true;
            Report(Rules.ClimateUnknown, $"The house standard has no climate '{named}'; the usual region is taken.",
                $"Name one of {string.Join(", ", ClimateTable.Of(standard.Standard).Select(climate => climate.Id))}.", $"overrides/{Settings.Climate.Key}");
        }

        return wood;
    }

    // The panel's width across its grain by the season, where the policy asks for it and the wood is known.
    private Worked? SeasonWidth(PanelWood? wood, Worked clear, Worked depth) =>
        wood is null || !BySeason ? null : PanelFit.Greatest(clear, depth, wood, standard);

    // What the whole panel grows until the wettest: as reckoned by the season, else what its clearance is made for.
    private Length GrowthOf(Part panel) => BySeason && PanelWood.Of(standard, panel.Material) is { } wood
        ? Length.FromInches(panel.Finished.Width.Amount * wood.Swelling.Amount) : standard[Settings.ClearanceAcross].Length * 2;

    private void CheckFit(Part panel, PanelWood wood, string segment)
    {
        // Most panels fit, which takes no formulas to see.
        var (groove, width) = (panel.Groove!, panel.Finished.Width.Amount);
        var room = groove.Clear.Amount + (2 * groove.Depth.Amount);
        var wet = width * (Fraction.One + wood.Swelling.Amount);
        var dry = width * (Fraction.One - wood.Shrinking.Amount);
        var isPinned = standard.Word(Settings.PanelHeld) != Settings.Free;
        if (room - wet >= 2 * standard[Settings.PanelAir].Amount
            && (isPinned ? (dry - groove.Clear.Amount) / 2 : dry - groove.Clear.Amount - groove.Depth.Amount) >= standard[Settings.PanelEngagement].Amount
            && (groove.TongueFlat is null || groove.TongueFlat.Amount >= groove.Depth.Amount))
        {
            return;
        }

        var fit = PanelFit.Of(panel, standard)!;
        var held = fit.IsPinned ? "pinned in its middle" : "free";
        if (fit.Bottoms)
        {
            Report(Rules.PanelBottoms,
                fit.PlayAtWettest.Amount.IsNegative
                    ? $"At {Percent(wood.Moisture.Wettest)} % it is {Rounded(fit.WidthAtWettest)} wide, {Rounded(fit.WidthAtWettest.Length - groove.Clear.Length - (groove.Depth.Length * 2))} more than the light and its grooves."
                    : (FormattableString)$"At {Percent(wood.Moisture.Wettest)} % {Rounded(room - wet)} of play is left in both grooves; {standard[Settings.PanelAir].Length} in each is the least.",
                Way(fit), "overrides/panel.clearance-across", segment);
        }

        if (fit.IsLoose)
        {
            Report(Rules.PanelLoose,
                fit.EngagementAtDriest.Amount.IsNegative
                    ? $"At {Percent(wood.Moisture.Driest)} % an edge of the panel, {held}, can come {Rounded(-fit.EngagementAtDriest.Amount)} out of its groove."
                    : (FormattableString)$"At {Percent(wood.Moisture.Driest)} % an edge of the panel, {held}, can stand only {Rounded(fit.EngagementAtDriest)} in its groove; {fit.LeastEngagement.Length} is the least.",
                Way(fit), "overrides/panel.clearance-across", segment);
        }

        if (fit.Wedges)
        {
            Report(Rules.TongueShort, $"Its edge stands up to {Rounded(fit.FlatNeeded!)} in the groove, and its tongue is flat for {fit.TongueFlat!.Length} only.",
                $"Raise it with a wider flat on the tongue, or {(fit.IsPinned ? "leave it more play" : "pin it in the middle")}.", "cutters", segment);
        }
    }

    private static FormattableString Way(PanelFit fit) => fit.Range switch
    {
        PanelRange.Some(var least, var greatest) => $"Cut it {least.Length} to {greatest.Length} wide across the grain.",
        PanelRange.None(_, _, var lacking, var remedies) => $"No width works, by {Rounded(lacking)}: {Joined("; or ", remedies.Select(remedy => remedy.Advice))}.",
        _ => throw new InvalidOperationException(),
    };

    private static FormattableString Percent(Worked moisture) => $"{moisture.Amount}";

    private static Length Rounded(Worked length) => Rounded(length.Length);

    private static Length Rounded(Fraction inches) => Rounded(Length.FromInches(inches));

    // Movement is known to a few per cent, so a figure to 1/64 in says all there is.
    private static Length Rounded(Length length) => length.OnStep(Length.FromInches(new Fraction(1, 64)), StepDirection.Nearest);
}
