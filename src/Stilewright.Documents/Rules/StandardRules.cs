using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Rules;

internal static class StandardRules
{
    public static IEnumerable<RuleFault> CopeFitsTheGroove(CutterSet set, DocumentPath path)
    {
        if (set.CopeLength.Value > set.GrooveDepth.Value)
            yield return new(path.Field("copeLength"), "the cope is longer than the groove is deep", "measure both; the cope's tongue is at most as long as the groove is deep");
    }

    public static IEnumerable<RuleFault> GrooveFitsTheStock(CutterSet set, DocumentPath path)
    {
        if (set.GrooveFromFace.Value + set.GrooveWidth.Value >= set.ThickestStock.Value)
            yield return new(path.Field("grooveWidth"), "the groove would run out of the back of the thickest stock", "measure the groove's width and its distance from the face");
    }

    public static IEnumerable<RuleFault> StockRangeIsARange(CutterSet set, DocumentPath path)
    {
        if (set.ThinnestStock.Value > set.ThickestStock.Value)
            yield return new(path.Field("thinnestStock"), "the thinnest stock is thicker than the thickest", "exchange the two");
    }

    public static IEnumerable<RuleFault> PatternsHaveARangeAndACurve(RackPattern pattern, DocumentPath path)
    {
        if (pattern.LeastSpan.Value > pattern.GreatestSpan.Value)
            yield return new(path.Field("leastSpan"), "the least span is more than the greatest", "exchange the two");
        if (pattern.Family == ArchFamily.Drawn)
            yield return new(path.Field("family"), "the rack takes no drawn curves, since a pattern is told by family, rise and shoulder", "name its family, or leave the pattern out");
        else if (ArchFamilies.Draw(pattern.Family, pattern.Hard.Sizes) is ArchResult.Refused)
            yield return new(path.Field("rise"), "no arch of this family has this rise and these shoulders over the greatest span", "measure all three on the pattern");
    }

    public static IEnumerable<RuleFault> PatternsSayOnlyWhatTheirFamilyHas(RackPattern pattern, DocumentPath path)
    {
        if (pattern.ReverseToCrown is not null && pattern.Family is not (ArchFamily.Cathedral or ArchFamily.DoubleCurve))
            yield return new(path.Field("reverseToCrown"), "the pattern has no reverse arcs", "leave \"reverseToCrown\" out, or choose cathedral or double-curve");
    }

    public static IEnumerable<RuleFault> CoefficientsAreTwo(SpeciesEntry species, DocumentPath path)
    {
        if (species.Tangential is null != species.Radial is null)
            yield return new(path.Field(species.Tangential is null ? "tangential" : "radial"), "one of the two coefficients stands alone", "write both, or neither");
    }

    public static IEnumerable<RuleFault> ClimatesAreARangeOrSeasons(Climate climate, DocumentPath path)
    {
        if (climate.Seasons.Count == 0 && (climate.Driest is null || climate.Wettest is null))
            yield return new(path.Field(climate.Driest is null ? "driest" : "wettest"), "nothing says how dry or how wet wood gets there", "write \"driest\" and \"wettest\", or seasons");
        else if (climate.Seasons.Count > 0 && (climate.Driest is not null || climate.Wettest is not null))
            yield return new(path.Field("seasons"), "the moisture content is told twice, by seasons and by its ends", "keep the seasons or the ends");
        else if (climate is { Driest: { } driest, Wettest: { } wettest } && driest.Value > wettest.Value)
            yield return new(path.Field("driest"), "the driest is wetter than the wettest", "exchange the two");
        if (climate.Seasons.GroupBy(season => season.Month).FirstOrDefault(month => month.Count() > 1) is { } twice)
            yield return new(path.Field("seasons"), $"two seasons stand in month {twice.Key}", "give each its own month");
    }

    public static IEnumerable<RuleFault> SandingLeavesWood(Stock stock, DocumentPath path)
    {
        var left = stock.Planed.Value - (stock.FaceLoss?.Value ?? Length.Zero) - (stock.BackLoss?.Value ?? Length.Zero);
        if (!left.IsPositive)
            yield return new(path.Field("planed"), "sanding takes away the whole thickness", "check the planed thickness and what sanding takes");
    }

    public static IEnumerable<RuleFault> NominalThicknessIsKnown(Stock stock, DocumentPath path)
    {
        if (stock.Nominal is not { } nominal)
            yield break;
        if (ThicknessTable.Find(nominal) is not { } rough)
            yield return new(path.Field("nominal"), $"\"{Quote.Shown(nominal)}\" is no nominal thickness", Quote.Suggest(nominal, [.. ThicknessTable.Nominals]));
        else if (rough.Length < stock.Planed.Value)
            yield return new(path.Field("planed"), $"rough {nominal} stock cannot be planed to more than it has", "plane it thinner, or name thicker stock");
    }
}
