using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("The shop's constants, cutters, machines and stock"), Label("standard")]
public sealed record HouseStandard(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("The unit of numbers that name none, and of print")] LengthUnit Unit,
    [Meaning("The shipped standard that holds for every setting not listed: inch or millimetre"), Label("shipped standard that it is based on")] LengthUnit Base,
    [Meaning("Settings by key, each a value or a value with its source"), Label("settings", IsSilent = true)] SettingValues Settings,
    IReadOnlyList<CutterSet> Cutters,
    IReadOnlyList<Machine> Machines,
    IReadOnlyList<Stock> Stocks,
    [Meaning("Hard patterns for arches; none ship"), Label("hard patterns")] IReadOnlyList<RackPattern>? Patterns = null)
{
    public IReadOnlyList<RackPattern> Patterns { get; init; } = Patterns ?? [];

    public CutterSet? Cutter(string id) => Cutters.FirstOrDefault(set => set.Id == id);
    public Stock? StockOf(string id) => Stocks.FirstOrDefault(stock => stock.Id == id);
}
