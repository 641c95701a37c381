using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>A house standard with nothing left to the shipped standard it is based on.</summary>
public static class StandardInFull
{
    /// <summary>The same standard with every setting written out, those it does not list as shipped, with their sources.</summary>
    public static HouseStandard Of(HouseStandard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return ListsOf(standard) with
        {
            Settings = new(Settings.All.ToDictionary(setting => setting, setting => standard.Settings.Find(setting) ?? Shipped(setting, standard))),
        };
    }

    /// <summary>The standard with the shipped cutters, machines, stocks, hinges and tables of hinge numbers where it lists none.</summary>
    internal static HouseStandard ListsOf(HouseStandard standard)
    {
        var shipped = ShippedStandards.For(standard.Base);
        return standard with
        {
            Cutters = OrShipped(standard.Cutters, shipped.Cutters),
            Machines = OrShipped(standard.Machines, shipped.Machines),
            Stocks = OrShipped(standard.Stocks, shipped.Stocks),
            Hinges = OrShipped(standard.Hinges, shipped.Hinges),
            HingeCounts = OrShipped(standard.HingeCounts, shipped.HingeCounts),
        };
    }

    /// <summary>The same, for a standard that was read: refused where its ids meet those of the shipped lists.</summary>
    internal static DocumentResult<HouseStandard> WithShippedLists(HouseStandard standard)
    {
        var shipped = ShippedStandards.For(standard.Base);
        List<DocumentError> errors = [];
        var taken = IdsOf(
            standard.Cutters.Count == 0 ? shipped.Cutters : [],
            standard.Machines.Count == 0 ? shipped.Machines : [],
            standard.Stocks.Count == 0 ? shipped.Stocks : [],
            standard.Hinges.Count == 0 ? shipped.Hinges : [],
            standard.HingeCounts.Count == 0 ? shipped.HingeCounts : []).Select(one => one.Id).ToHashSet();
        foreach (var (path, id) in IdsOf(standard.Cutters, standard.Machines, standard.Stocks, standard.Hinges, standard.HingeCounts)
            .Concat(standard.Patterns.Select((pattern, index) => ($"$.patterns[{index}].id", pattern.Id)))
            .Concat(standard.BoringMachines.Select((machine, index) => ($"$.boringMachines[{index}].id", machine.Id)))
            .Concat(standard.Species.Select((species, index) => ($"$.species[{index}].id", species.Id)))
            .Concat(standard.Climates.Select((climate, index) => ($"$.climates[{index}].id", climate.Id))).Prepend(("$.id", standard.Id)))
        {
            if (taken.Contains(id))
                errors.Add(new(path, $"the id \"{id}\" is already used in the shipped standard, whose lists hold where yours are empty", "choose another id"));
        }

        return errors.Count == 0 ? new DocumentResult<HouseStandard>.Read(ListsOf(standard)) : new DocumentResult<HouseStandard>.Refused(errors);
    }

    private static SettingValue Shipped(Setting setting, HouseStandard standard)
    {
        var text = standard.Base == LengthUnit.Inch ? setting.Inch : setting.Metric;
        if (setting.Kind != SettingKind.Length || setting.IsWord(text))
            return new(text, Length.Zero, setting.Source.Text);
        var amount = LengthReader.ReadOwn(text, standard.Base);
        return new(LengthText.Of(text, amount, standard.Unit), amount, setting.Source.Text);
    }

    private static IReadOnlyList<T> OrShipped<T>(IReadOnlyList<T> own, IReadOnlyList<T> shipped) => own.Count == 0 ? shipped : own;

    private static IEnumerable<(string Path, string Id)> IdsOf(
        IReadOnlyList<CutterSet> cutters, IReadOnlyList<Machine> machines, IReadOnlyList<Stock> stocks, IReadOnlyList<HingeKind> hinges, IReadOnlyList<HingeCounts> counts) =>
        cutters.Select((set, index) => ($"$.cutters[{index}].id", set.Id))
            .Concat(machines.Select((machine, index) => ($"$.machines[{index}].id", machine.Id)))
            .Concat(stocks.Select((stock, index) => ($"$.stocks[{index}].id", stock.Id)))
            .Concat(hinges.Select((hinge, index) => ($"$.hinges[{index}].id", hinge.Id)))
            .Concat(counts.Select((table, index) => ($"$.hingeCounts[{index}].id", table.Id)));
}
