using Stilewright.Documents.Changes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Features.Standard;

/// <summary>What is typed about a house standard, as fields. Their names are the paths by which figures tell where they were entered.</summary>
public static class StandardFields
{
    private static readonly LengthEntry Zero = new("0", default);

    /// <summary>The value of a setting; taken out, the shipped one holds.</summary>
    public static SettingField<HouseStandard> Value(Setting setting, string shipped) => new(
        $"standard/settings/{setting.Key}", setting, standard => ValueOf(standard, setting),
        (standard, value) => With(standard, setting, value is null ? null : value with { Source = OwnSource(standard, setting) }))
    {
        Otherwise = shipped,
    };

    /// <summary>Where the shop's own value comes from.</summary>
    public static WordField<HouseStandard> Source(Setting setting) => new(
        $"standard/settings/{setting.Key}/source", "Where the shop's value comes from", standard => OwnSource(standard, setting),
        (standard, words) => With(standard, setting, ValueOf(standard, setting) with { Source = words }));

    /// <summary>The value in force in the standard, in the unit of its own numbers.</summary>
    public static SettingValue ValueOf(HouseStandard standard, Setting setting)
    {
        if (standard.Settings.Find(setting) is { } own)
            return own;
        var shipped = StandardInForce.ShippedValue(setting, standard.Base);
        return setting.Kind != SettingKind.Length || setting.IsWord(shipped.Text) ? shipped
            : shipped with { Text = SettingEntries.Of(shipped, standard.Unit).Text };
    }

    public static bool IsShipped(HouseStandard standard, Setting setting) =>
        new StandardInForce(standard).Find(setting).Origin.Kind == OriginKind.Shipped;

    public static IReadOnlyList<Field<HouseStandard>> Cutter(string id)
    {
        return
        [
            Words<CutterSet>("cutters", id, "name", AllCutters, set => set.Name, (set, words) => set with { Name = words ?? set.Name }, isOptional: false),
            Needed("grooveDepth", set => set.GrooveDepth, (set, entry) => set with { GrooveDepth = entry }),
            Needed("copeLength", set => set.CopeLength, (set, entry) => set with { CopeLength = entry }),
            Needed("grooveWidth", set => set.GrooveWidth, (set, entry) => set with { GrooveWidth = entry }),
            Needed("grooveFromFace", set => set.GrooveFromFace, (set, entry) => set with { GrooveFromFace = entry }),
            Needed("stickingWidth", set => set.StickingWidth, (set, entry) => set with { StickingWidth = entry }),
            Needed("thinnestStock", set => set.ThinnestStock, (set, entry) => set with { ThinnestStock = entry }),
            Needed("thickestStock", set => set.ThickestStock, (set, entry) => set with { ThickestStock = entry }),
            Free("raiseWidth", "raises no panels", set => set.RaiseWidth, (set, entry) => set with { RaiseWidth = entry }),
            Free("collarRadius", "not checked", set => set.CollarRadius, (set, entry) => set with { CollarRadius = entry }),
            Free("raiseCollarRadius", "not checked", set => set.RaiseCollarRadius, (set, entry) => set with { RaiseCollarRadius = entry }),
            Free("backCutCollarRadius", "not checked", set => set.BackCutCollarRadius, (set, entry) => set with { BackCutCollarRadius = entry }),
            Free("tongueFlat", "as deep as the groove", set => set.TongueFlat, (set, entry) => set with { TongueFlat = entry }),
            Words<CutterSet>("cutters", id, "source", AllCutters, set => set.Source, (set, words) => set with { Source = words }),
        ];

        LengthField<HouseStandard> Needed(string key, Func<CutterSet, LengthEntry> get, Func<CutterSet, LengthEntry, CutterSet> set) =>
            LengthOf<CutterSet>("cutters", id, key, AllCutters, each => get(each), (each, entry) => set(each, entry ?? Zero), null, isOptional: false);

        LengthField<HouseStandard> Free(string key, string otherwise, Func<CutterSet, LengthEntry?> get, Func<CutterSet, LengthEntry?, CutterSet> set) =>
            LengthOf("cutters", id, key, AllCutters, get, set, otherwise, isOptional: true);
    }

    public static IReadOnlyList<Field<HouseStandard>> Machine(string id)
    {
        return
        [
            Words<Machine>("machines", id, "name", AllMachines, machine => machine.Name, (machine, words) => machine with { Name = words ?? machine.Name }, isOptional: false),
            Free("shortest", machine => machine.Shortest, (machine, entry) => machine with { Shortest = entry }),
            Free("narrowest", machine => machine.Narrowest, (machine, entry) => machine with { Narrowest = entry }),
            Free("widest", machine => machine.Widest, (machine, entry) => machine with { Widest = entry }),
            Words<Machine>("machines", id, "source", AllMachines, machine => machine.Source, (machine, words) => machine with { Source = words }),
        ];

        LengthField<HouseStandard> Free(string key, Func<Machine, LengthEntry?> get, Func<Machine, LengthEntry?, Machine> set) =>
            LengthOf("machines", id, key, AllMachines, get, set, "no limit", isOptional: true);
    }

    public static IReadOnlyList<Field<HouseStandard>> Stock(string id, StockKind kind)
    {
        List<Field<HouseStandard>> fields =
        [
            Words<Stock>("stocks", id, "name", AllStocks, stock => stock.Name, (stock, words) => stock with { Name = words ?? stock.Name }, isOptional: false),
            LengthOf<Stock>("stocks", id, "planed", AllStocks, stock => stock.Planed, (stock, entry) => stock with { Planed = entry ?? Zero }, null, isOptional: false),
        ];
        if (kind == StockKind.Solid)
        {
            fields.Add(Words<Stock>("stocks", id, "nominal", AllStocks, stock => stock.Nominal, (stock, words) => stock with { Nominal = words }) with
            {
                Check = words => Doors.ThicknessTable.Nominals.Contains(words) ? null : $"It is one of {string.Join(", ", Doors.ThicknessTable.Nominals)}.",
                Otherwise = "not said",
            });
            fields.Add(Free("faceLoss", "nothing", stock => stock.FaceLoss, (stock, entry) => stock with { FaceLoss = entry }));
            fields.Add(Free("backLoss", "nothing", stock => stock.BackLoss, (stock, entry) => stock with { BackLoss = entry }));
            fields.Add(Free("widestBoard", "not checked", stock => stock.WidestBoard, (stock, entry) => stock with { WidestBoard = entry }));
        }

        fields.Add(Free("least", "not checked", stock => stock.Least, (stock, entry) => stock with { Least = entry }));
        fields.Add(Words<Stock>("stocks", id, "source", AllStocks, stock => stock.Source, (stock, words) => stock with { Source = words }));
        return fields;

        LengthField<HouseStandard> Free(string key, string otherwise, Func<Stock, LengthEntry?> get, Func<Stock, LengthEntry?, Stock> set) =>
            LengthOf("stocks", id, key, AllStocks, get, set, otherwise, isOptional: true);
    }

    /// <param name="family">Only a cathedral and a double curve have radii that stand to one another.</param>
    public static IReadOnlyList<Field<HouseStandard>> Pattern(string id, ArchFamily family)
    {
        List<Field<HouseStandard>> fields =
        [
            Words<RackPattern>("patterns", id, "name", AllPatterns, pattern => pattern.Name, (pattern, words) => pattern with { Name = words ?? pattern.Name }, isOptional: false),
            Needed("rise", pattern => pattern.Rise, (pattern, entry) => pattern with { Rise = entry }),
            Needed("leastSpan", pattern => pattern.LeastSpan, (pattern, entry) => pattern with { LeastSpan = entry }),
            Needed("greatestSpan", pattern => pattern.GreatestSpan, (pattern, entry) => pattern with { GreatestSpan = entry }),
            LengthOf<RackPattern>("patterns", id, "shoulder", AllPatterns, pattern => pattern.Shoulder, (pattern, entry) => pattern with { Shoulder = entry }, "none", isOptional: true),
        ];
        if (family is ArchFamily.Cathedral or ArchFamily.DoubleCurve)
        {
            fields.Add(RatioFields.Of<HouseStandard>($"standard/patterns/{id}/reverseToCrown", "not compared",
                standard => AllPatterns(standard, id)?.ReverseToCrown, (standard, ratio) => With<RackPattern>(standard, id, pattern => pattern with { ReverseToCrown = ratio })));
        }

        fields.Add(Words<RackPattern>("patterns", id, "source", AllPatterns, pattern => pattern.Source, (pattern, words) => pattern with { Source = words }));
        return fields;

        LengthField<HouseStandard> Needed(string key, Func<RackPattern, LengthEntry> get, Func<RackPattern, LengthEntry, RackPattern> set) =>
            LengthOf<RackPattern>("patterns", id, key, AllPatterns, each => get(each), (each, entry) => set(each, entry ?? Zero), null, isOptional: false);
    }

    /// <summary>A standard with another cutter set, machine, stock or pattern in the place of the one with its id.</summary>
    public static HouseStandard With<T>(HouseStandard standard, string id, Func<T, T> edit) => standard with
    {
        Cutters = [.. standard.Cutters.Select(each => each.Id == id && edit is Func<CutterSet, CutterSet> own ? own(each) : each)],
        Machines = [.. standard.Machines.Select(each => each.Id == id && edit is Func<Machine, Machine> own ? own(each) : each)],
        Stocks = [.. standard.Stocks.Select(each => each.Id == id && edit is Func<Stock, Stock> own ? own(each) : each)],
        Patterns = [.. standard.Patterns.Select(each => each.Id == id && edit is Func<RackPattern, RackPattern> own ? own(each) : each)],
    };

    private static CutterSet? AllCutters(HouseStandard standard, string id) => standard.Cutters.FirstOrDefault(each => each.Id == id);

    private static Machine? AllMachines(HouseStandard standard, string id) => standard.Machines.FirstOrDefault(each => each.Id == id);

    private static Stock? AllStocks(HouseStandard standard, string id) => standard.Stocks.FirstOrDefault(each => each.Id == id);

    private static RackPattern? AllPatterns(HouseStandard standard, string id) => standard.Patterns.FirstOrDefault(each => each.Id == id);

    private static LengthField<HouseStandard> LengthOf<T>(
        string list, string id, string key, Func<HouseStandard, string, T?> find, Func<T, LengthEntry?> get, Func<T, LengthEntry?, T> set, string? otherwise, bool isOptional)
        where T : class => new(
        $"standard/{list}/{id}/{key}", Capital(FieldLabels.Of(typeof(T), key)), standard => find(standard, id) is { } there ? get(there) : null,
        (standard, entry) => With<T>(standard, id, each => set(each, entry)))
        {
            Otherwise = otherwise,
            IsOptional = isOptional,
        };

    private static WordField<HouseStandard> Words<T>(
        string list, string id, string key, Func<HouseStandard, string, T?> find, Func<T, string?> get, Func<T, string?, T> set, bool isOptional = true)
        where T : class => new(
        $"standard/{list}/{id}/{key}", Capital(FieldLabels.Of(typeof(T), key)), standard => find(standard, id) is { } there ? get(there) : null,
        (standard, words) => With<T>(standard, id, each => set(each, words)))
        {
            IsOptional = isOptional,
        };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    // The source that the shop gave itself; what ships has its own, which says nothing of another value.
    private static string? OwnSource(HouseStandard standard, Setting setting) =>
        standard.Settings.Find(setting)?.Source is { } source && source != setting.Source.Text ? source : null;

    private static HouseStandard With(HouseStandard standard, Setting setting, SettingValue? value)
    {
        var values = standard.Settings.Values.ToDictionary(each => each.Key, each => each.Value);
        if (value is null)
            values.Remove(setting);
        else
            values[setting] = value;
        return standard with { Settings = new(values) };
    }
}
