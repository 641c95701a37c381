using Stilewright.Shop;

namespace Stilewright.Documents.Rules;

internal static class HingeRules
{
    public static IEnumerable<RuleFault> SettingsNameWhatIsThere(HouseStandard standard, DocumentPath path) =>
        References.NotInTheStandard(standard.Settings, StandardInFull.ListsOf(standard))
            .Select(fault => new RuleFault(path.Field("settings").Field(fault.Setting.Key), $"{fault.Problem} in this standard", fault.Fix));

    public static IEnumerable<RuleFault> HingesNameTablesThatAreThere(HouseStandard standard, DocumentPath path)
    {
        var tables = StandardInFull.ListsOf(standard).HingeCounts.Select(table => table.Id).ToList();
        for (var i = 0; i < standard.Hinges.Count; i++)
        {
            if (standard.Hinges[i].CountTable is { } table && !tables.Contains(table))
                yield return new(path.Field("hinges").Item(i).Field("countTable"), $"no table of hinge numbers \"{Quote.Shown(table)}\" in this standard", Quote.Suggest(table, tables));
        }
    }

    public static IEnumerable<RuleFault> HingesTellTheirOverlay(HingeKind hinge, DocumentPath path)
    {
        var what = hinge.KeepsGap ? "gap" : "overlay";
        if (hinge is { Least: { } least, Greatest: { } greatest })
        {
            if (least.Value > greatest.Value)
                yield return new(path.Field("least"), $"the least {what} is more than the greatest", "exchange the two");
        }
        else if (hinge.Least is not null || hinge.Greatest is not null)
        {
            yield return new(path.Field(hinge.Least is null ? "least" : "greatest"), $"one end of the {what}s that the hinge gives is missing", "give both, the same length twice for a fixed one");
        }
        else if (!hinge.HasLaw)
        {
            yield return new(path.Field("least"), $"nothing says what {what} the hinge gives",
                $"give the least and the greatest {what}, or the constant of its cup{(hinge.KeepsGap ? " with its plates" : "")}, from the hinge's sheet");
        }
    }

    public static IEnumerable<RuleFault> CupsBelongToCupHinges(HingeKind hinge, DocumentPath path)
    {
        if (hinge.Style == HingeStyle.Cup && hinge.Cup is null)
            yield return new(path.Field("cup"), "a cup hinge has no cup", "give its cup: diameter, depth and range of boring distances");
        if (hinge.Style != HingeStyle.Cup && hinge.Cup is not null)
            yield return new(path.Field("cup"), "the hinge has a cup but is no cup hinge", "leave \"cup\" out, or let the style be cup");
    }

    public static IEnumerable<RuleFault> ThicknessesAreARange(HingeKind hinge, DocumentPath path)
    {
        if (hinge is { ThinnestLeaf: { } thin, ThickestLeaf: { } thick } && thin.Value > thick.Value)
            yield return new(path.Field("thinnestLeaf"), "the thinnest leaf is thicker than the thickest", "exchange the two");
    }

    public static IEnumerable<RuleFault> DistancesAreARange(CupBoring cup, DocumentPath path)
    {
        if (cup.LeastDistance.Value > cup.GreatestDistance.Value)
            yield return new(path.Field("leastDistance"), "the least boring distance is more than the greatest", "exchange the two");
    }

    public static IEnumerable<RuleFault> RowsRise(HingeCounts table, DocumentPath path)
    {
        if (table.ByHeight.Count == 0 && table.ByWeight.Count == 0)
            yield return new(path.Field("byHeight"), "the table has no rows", "give rows by height, by weight or both");
        for (var i = 1; i < table.ByHeight.Count; i++)
        {
            if (table.ByHeight[i].To.Value <= table.ByHeight[i - 1].To.Value || table.ByHeight[i].Count < table.ByHeight[i - 1].Count)
                yield return new(path.Field("byHeight").Item(i), "the row does not go on from the one before", "put the lowest leaves first, with no fewer hinges for higher ones");
        }

        for (var i = 1; i < table.ByWeight.Count; i++)
        {
            if (table.ByWeight[i].Below <= table.ByWeight[i - 1].Below || table.ByWeight[i].Count < table.ByWeight[i - 1].Count)
                yield return new(path.Field("byWeight").Item(i), "the row does not go on from the one before", "put the lightest leaves first, with no fewer hinges for heavier ones");
        }
    }

    public static IEnumerable<RuleFault> MachinesHaveStops(BoringMachine machine, DocumentPath path)
    {
        if (machine.Stops.Count == 0)
            yield return new(path.Field("stops"), "the machine has no row of stops", "give at least one row: its side, its first stop, its pitch and how many");
        if (machine is { LeastFence: { } least, GreatestFence: { } greatest } && least.Value > greatest.Value)
            yield return new(path.Field("leastFence"), "the least fence setting is more than the greatest", "exchange the two");
    }
}
