using Stilewright.Curves;
using Stilewright.Projects;

namespace Stilewright.Documents.Rules;

internal static class DesignRules
{
    public static IEnumerable<RuleFault> FramesHaveCuttersAndPanels(DoorDesign design, DocumentPath path)
    {
        if (design.Construction == Construction.Slab)
            yield break;
        if (design.Cutters is null)
            yield return new(path.Field("cutters"), "a framed door has no cutters", "add \"cutters\" with the id of a cutter set of the house standard");
        if (design.Panel is null)
            yield return new(path.Field("panel"), "a framed door has nothing in its lights", "add \"panel\"; its kind may be open");
    }

    public static IEnumerable<RuleFault> SlabsHaveNoFrame(DoorDesign design, DocumentPath path)
    {
        if (design.Construction != Construction.Slab)
            yield break;
        var given = new[]
        {
            design.Stiles is null ? null : "stiles", design.TopRail is null ? null : "topRail", design.BottomRail is null ? null : "bottomRail",
            design.MidRails is null ? null : "midRails", design.MidStiles.Count == 0 ? null : "midStiles", design.TopArch is null ? null : "topArch",
            design.BottomArch is null ? null : "bottomArch", design.Panel is null ? null : "panel", design.Lights.Count == 0 ? null : "lights",
            design.Tenon is null ? null : "tenon", design.CutBack is null ? null : "cutBack",
        };
        foreach (var key in given.OfType<string>())
            yield return new(path.Field(key), $"a slab has no frame, so {key} means nothing", $"leave \"{key}\" out, or choose a framed construction");
    }

    public static IEnumerable<RuleFault> MouldingsHaveAWidth(DoorDesign design, DocumentPath path)
    {
        if (design.EdgeDepth is not null && design.EdgeWidth is null)
            yield return new(path.Field("edgeDepth"), "the edge moulding has a depth and no width", "add \"edgeWidth\", how far it comes in over the face, or leave \"edgeDepth\" out");
    }

    /// <summary>Lights are counted row by row, so the rows and their mid stiles say how many there are.</summary>
    public static IEnumerable<RuleFault> RowsAndLightsExistOnce(DoorDesign design, DocumentPath path)
    {
        var rows = 1 + (design.MidRails is { } rails ? rails.Count ?? rails.Places.Count : 0);
        var lights = rows;
        for (var index = 0; index < design.MidStiles.Count; index++)
        {
            var row = design.MidStiles[index].Row;
            var place = path.Field("midStiles").Item(index).Field("row");
            if (row > rows)
                yield return new(place, $"row {row} has mid stiles, but the rows are {rows}", "count rows from the bottom; mid rails make them");
            else if (design.MidStiles.Take(index).Any(other => other.Row == row))
                yield return new(place, $"row {row} is listed twice", "list each row once");
            else
                lights += design.MidStiles[index].Count;
        }

        for (var index = 0; index < design.Lights.Count; index++)
        {
            var light = design.Lights[index].Light;
            var place = path.Field("lights").Item(index).Field("light");
            if (light > lights)
                yield return new(place, $"light {light} is filled, but the lights are {lights}", "count lights row by row from the bottom left");
            else if (design.Lights.Take(index).Any(other => other.Light == light))
                yield return new(place, $"light {light} is listed twice", "list each light once");
        }
    }

    public static IEnumerable<RuleFault> StilesAreOneWidthOrTwo(StileWidths stiles, DocumentPath path)
    {
        if (stiles is not ({ Both: not null, Hinge: null, Pull: null } or { Both: null, Hinge: not null, Pull: not null }))
            yield return new(path, "the stiles need one width for both, or two", "write \"both\", or \"hinge\" and \"pull\"");
    }

    public static IEnumerable<RuleFault> MidRailsAreCountedOrPlaced(MidRails rails, DocumentPath path)
    {
        if (rails.Count is null == (rails.Places.Count == 0))
            yield return new(path, rails.Count is null ? "the mid rails have neither count nor places" : "the mid rails have both a count and places", "write \"count\" for even lights, or \"places\"");
    }

    public static IEnumerable<RuleFault> ArchesHaveTheRiseTheyNeed(Arch arch, DocumentPath path)
    {
        if (arch.Family == ArchFamily.HalfRound && arch.Rise is not null)
            yield return new(path.Field("rise"), "a half-round arch rises by half its span and by nothing else", "leave \"rise\" out, or choose another family");
        else if (arch.Family == ArchFamily.Drawn && arch.Rise is not null)
            yield return new(path.Field("rise"), "a drawn curve rises to its highest point and nowhere else", "leave \"rise\" out");
        else if (arch.Family is not (ArchFamily.HalfRound or ArchFamily.Drawn) && arch.Rise is null)
            yield return new(path.Field("rise"), "the arch has no rise", "add \"rise\", the height above the spring line");
    }

    public static IEnumerable<RuleFault> ArchesSayOnlyWhatTheirFamilyHas(Arch arch, DocumentPath path)
    {
        if (arch.ReverseToCrown is not null && arch.Family is not (ArchFamily.Cathedral or ArchFamily.DoubleCurve))
            yield return new(path.Field("reverseToCrown"), "the arch has no reverse arcs", "leave \"reverseToCrown\" out, or choose cathedral or double-curve");
        if (arch.Shoulder is { Value.IsZero: false } && arch.Family == ArchFamily.DoubleCurve)
            yield return new(path.Field("shoulder"), "a double curve runs from stile to stile and has no shoulders", "leave \"shoulder\" out, or choose cathedral");
        if (arch.Shoulder is { Value.IsZero: false } && arch.Family == ArchFamily.Drawn)
            yield return new(path.Field("shoulder"), "a drawn curve has its shoulders among its steps", "leave \"shoulder\" out, and begin and end the curve with lines at y 0");
        if (arch.Family != ArchFamily.Drawn && arch.Curve is [_, ..])
            yield return new(path.Field("curve"), "only a drawn arch has a curve of its own", "leave \"curve\" out, or choose the family drawn");
        else if (arch.Family == ArchFamily.Drawn && arch.Curve is not [_, ..])
            yield return new(path.Field("curve"), "the drawn arch has no curve", "add \"curve\", a list of steps from the left sight line to the right");
    }

    public static IEnumerable<RuleFault> ArchesAcrossAPairAreOne(Arch arch, DocumentPath path)
    {
        if (arch.AcrossPair is null)
            yield break;
        if (arch.PerLight)
            yield return new(path.Field("acrossPair"), "an arch across a pair cannot repeat over each light", "leave \"acrossPair\" or \"perLight\" out");
        if (arch.AcrossPair == PairCrown.EachMeetingStile && arch.Family == ArchFamily.Drawn)
            yield return new(path.Field("acrossPair"), "a drawn curve has its crown where it was drawn", "write \"middle-of-pair\": the curve then runs from hinge stile to hinge stile");
    }

    public static IEnumerable<RuleFault> DrawnCurvesCanBeDrawn(Arch arch, DocumentPath path)
    {
        if (arch.Family != ArchFamily.Drawn || arch.Curve is not [_, ..] steps)
            yield break;
        foreach (var fault in DrawnCurve.Of(steps).Faults)
            yield return new(path.Field("curve").Item(fault.Index), fault.Problem, fault.Fix);
    }

    public static IEnumerable<RuleFault> WoodPanelsHaveStock(LightFilling filling, DocumentPath path)
    {
        var isWood = filling.Kind is PanelKind.Raised or PanelKind.FlatSolid or PanelKind.FlatSheet;
        if (isWood && filling.Stock is null)
            yield return new(path.Field("stock"), "a panel of wood has no stock", "add \"stock\" with the id of a stock of the house standard");
        else if (!isWood && filling.Stock is not null)
            yield return new(path.Field("stock"), "glass and open lights take no stock", "leave \"stock\" out");
    }

    public static IEnumerable<RuleFault> GlueAndGlazingAreWhereTheyCanBe(LightFilling filling, DocumentPath path)
    {
        if (filling.GluedIn && filling.Kind != PanelKind.FlatSheet)
            yield return new(path.Field("gluedIn"), "only a sheet panel may be glued in; solid wood moves", "leave \"gluedIn\" out");
        if (filling.SafetyGlazing is not null && filling.Kind != PanelKind.Glass)
            yield return new(path.Field("safetyGlazing"), "safety glazing is noted where there is no glass", "leave \"safetyGlazing\" out");
    }
}
