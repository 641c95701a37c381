using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wood;

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
    [Meaning("Hard patterns for arches; none ship"), Label("hard patterns")] IReadOnlyList<RackPattern>? Patterns = null,
    [Meaning("Kinds of hinges; those that ship are examples, not products")] IReadOnlyList<HingeKind>? Hinges = null,
    [Meaning("Tables of how many hinges a leaf gets"), Label("tables of hinge numbers")] IReadOnlyList<HingeCounts>? HingeCounts = null,
    [Meaning("Machines that bore for hinges; the one that ships is an example"), Label("boring machines")] IReadOnlyList<BoringMachine>? BoringMachines = null,
    [Meaning("Woods of the shop's own; they win over those that ship")] IReadOnlyList<SpeciesEntry>? Species = null,
    [Meaning("Where work will stand; they win over the regions that ship")] IReadOnlyList<Climate>? Climates = null)
{
    public IReadOnlyList<RackPattern> Patterns { get; init; } = Patterns ?? [];
    public IReadOnlyList<HingeKind> Hinges { get; init; } = Hinges ?? [];
    public IReadOnlyList<HingeCounts> HingeCounts { get; init; } = HingeCounts ?? [];
    public IReadOnlyList<BoringMachine> BoringMachines { get; init; } = BoringMachines ?? [];
    public IReadOnlyList<SpeciesEntry> Species { get; init; } = Species ?? [];
    public IReadOnlyList<Climate> Climates { get; init; } = Climates ?? [];

    public CutterSet? Cutter(string id) => Cutters.FirstOrDefault(set => set.Id == id);
    public Stock? StockOf(string id) => Stocks.FirstOrDefault(stock => stock.Id == id);
    public HingeKind? Hinge(string id) => Hinges.FirstOrDefault(hinge => hinge.Id == id);
    public HingeCounts? CountTable(string id) => HingeCounts.FirstOrDefault(table => table.Id == id);

    /// <summary>What people call a word of a setting: the name of the record where it names one.</summary>
    public string NameOf(Setting setting, string word) => setting.Names switch
    {
        SettingNames.Hinge => Hinge(word)?.Name,
        SettingNames.CountTable => CountTable(word)?.Name,
        SettingNames.Climate => ClimateTable.Of(this).FirstOrDefault(climate => climate.Id == word)?.Name,
        _ => null,
    } ?? word;

    /// <summary>Every word that a setting may have under this standard, lengths aside: its choices, and what it may name.</summary>
    public IReadOnlyList<string> WordsOf(Setting setting) =>
    [
        .. setting.Choices ?? [],
        .. setting.Names switch
        {
            SettingNames.Hinge => Hinges.Select(hinge => hinge.Id),
            SettingNames.CountTable => HingeCounts.Select(table => table.Id),
            SettingNames.Climate => ClimateTable.Of(this).Select(climate => climate.Id),
            _ => [],
        },
    ];
}
