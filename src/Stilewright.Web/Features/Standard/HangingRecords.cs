using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Web.Features.Standard;

/// <summary>Hinges, tables of their numbers and machines that bore for them, as they stand on the page of the standard.</summary>
internal static class HangingRecords
{
    private const string NoTable = "";

    /// <param name="id">Of a hinge of the standard.</param>
    public static RecordPart Hinge(HouseStandard standard, string id)
    {
        var place = Place.Of("hinges", id, each => each.Hinges, (each, list) => each with { Hinges = list }, hinge => hinge.Id);
        var hinge = place.Find(standard)!;
        var sorts = hinge.Mount == Mount.Inset ? "inset" : hinge.Mount == Mount.Lipped ? "lipped" : "overlay";
        return new(place.Name, $"{hinge.Name}, {TradeWords.Words(hinge.Style)}, {sorts}",
        [
            place.Words("name", each => each.Name, (each, words) => each with { Name = words ?? each.Name }, isOptional: false),
            place.Length("least", each => each.Least, (each, entry) => each with { Least = entry }),
            place.Length("greatest", each => each.Greatest, (each, entry) => each with { Greatest = entry }),
            place.Length("leastMember", each => each.LeastMember, (each, entry) => each with { LeastMember = entry }),
            place.Length("leastStile", each => each.LeastStile, (each, entry) => each with { LeastStile = entry }),
            place.Length("thinnestLeaf", each => each.ThinnestLeaf, (each, entry) => each with { ThinnestLeaf = entry }),
            place.Length("thickestLeaf", each => each.ThickestLeaf, (each, entry) => each with { ThickestLeaf = entry }),
            place.Whole("opensDegrees", 30, 270, each => each.OpensDegrees, (each, number) => each with { OpensDegrees = number }, isOptional: true),
            place.Length("pilot", each => each.Pilot, (each, entry) => each with { Pilot = entry }),
            place.Words("screws", each => each.Screws, (each, words) => each with { Screws = words }),
            place.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Choices =
            [
                ChoiceOf("style", "Kind", hinge.Style, (each, style) => each with { Style = style, Cup = style == HingeStyle.Cup ? each.Cup ?? UsualCup(standard.Unit) : null }),
                ChoiceOf("mount", "Hangs fronts that are", hinge.Mount, (each, mount) => each with { Mount = mount }),
                new($"{place.Name}/countTable", "Table of numbers", [(NoTable, "that of the standard"), .. standard.HingeCounts.Select(table => (table.Id, table.Name))],
                    hinge.CountTable ?? NoTable, (there, word) => place.Edit(there, each => each with { CountTable = word == NoTable ? null : word })),
            ],
            Parts = [.. Cup(place, hinge), .. Travels(place, hinge), .. hinge.Gaps.Select((gap, i) => Gap(place, i))],
            Adds =
            [
                .. hinge.Cup is null ? Array.Empty<PartEdit>() : [new($"{place.Name}/cup/plates", "Add a plate", there => place.Edit(there, each =>
                    each.Cup is { } cup ? each with { Cup = cup with { Plates = [.. cup.Plates, new(cup.Plates.Count == 0 ? Of(standard, "0", "0") : cup.Plates[^1].Height)] } } : each))],
                .. AddsTravel(place, hinge, standard),
                new($"{place.Name}/gaps", "Add a least gap", there => place.Edit(there, each => each with { Gaps = [.. each.Gaps, each.Gaps.Count == 0 ? new(Of(standard, "3/4", "19"), Of(standard, "1/16", "1.5")) : each.Gaps[^1]] })),
            ],
            Removal = new(place.Name, "Remove it", there => there with { Hinges = [.. there.Hinges.Where(each => each.Id != id)] }),
        };

        WordChoice ChoiceOf<TWord>(string key, string label, TWord chosen, Func<HingeKind, TWord, HingeKind> set)
            where TWord : struct, Enum => Choice(place, key, label, chosen, set);
    }

    private static CupBoring UsualCup(LengthUnit unit)
    {
        // 35 mm cups, bored 12.5 deep and 3 to 6 from the edge, are the commonest; common practice, no source.
        LengthEntry Mm(string text) => new(unit == LengthUnit.Millimetre ? text : $"{text} mm", LengthReader.ReadOwn(text, LengthUnit.Millimetre));
        return new(Mm("35"), Mm("12.5"), Mm("3"), Mm("6"));
    }

    private static IEnumerable<RecordPart> Cup(Place<HingeKind> place, HingeKind hinge)
    {
        if (hinge.Cup is not { } there)
            yield break;
        var cup = place.At("cup", each => each.Cup, (each, part) => each with { Cup = part });
        yield return new(cup.Name, "Cup",
        [
            cup.Needed("diameter", each => each.Diameter, (each, entry) => each with { Diameter = entry }),
            cup.Needed("depth", each => each.Depth, (each, entry) => each with { Depth = entry }),
            cup.Needed("leastDistance", each => each.LeastDistance, (each, entry) => each with { LeastDistance = entry }),
            cup.Needed("greatestDistance", each => each.GreatestDistance, (each, entry) => each with { GreatestDistance = entry }),
            cup.Length("constant", each => each.Constant, (each, entry) => each with { Constant = entry }),
            cup.Length("screwSpacing", each => each.ScrewSpacing, (each, entry) => each with { ScrewSpacing = entry }),
            cup.Length("screwOffset", each => each.ScrewOffset, (each, entry) => each with { ScrewOffset = entry }),
        ])
        {
            Parts = [.. there.Plates.Select((_, i) => Plate(cup, i))],
        };
    }

    private static RecordPart Plate(Place<CupBoring> cup, int i)
    {
        var plate = cup.Row("plates", i, each => each.Plates, (each, list) => each with { Plates = list });
        return new(plate.Name, $"Plate {i + 1}", [plate.Needed("height", each => each.Height, (each, entry) => each with { Height = entry })])
        {
            Removal = new($"{cup.Name}/plates", "Take out", there => cup.Edit(there, each => each with { Plates = [.. each.Plates.Where((_, at) => at != i)] })),
        };
    }

    private static RecordPart Gap(Place<HingeKind> place, int i)
    {
        var gap = place.Row("gaps", i, each => each.Gaps, (each, list) => each with { Gaps = list });
        return new(gap.Name, $"Least gap {i + 1}",
        [
            gap.Needed("thickness", each => each.Thickness, (each, entry) => each with { Thickness = entry }),
            gap.Needed("gap", each => each.Gap, (each, entry) => each with { Gap = entry }),
            gap.Length("boringDistance", each => each.BoringDistance, (each, entry) => each with { BoringDistance = entry }),
        ])
        {
            Removal = new($"{place.Name}/gaps", "Take out", there => place.Edit(there, each => each with { Gaps = [.. each.Gaps.Where((_, at) => at != i)] })),
        };
    }

    private static readonly (string Key, string Title, Func<HingeAdjustment, ScrewTravel?> Get, Func<HingeAdjustment, ScrewTravel?, HingeAdjustment> Set)[] Axes =
    [
        ("sideways", "Adjusts sideways", each => each.Sideways, (each, travel) => each with { Sideways = travel }),
        ("height", "Adjusts in height", each => each.Height, (each, travel) => each with { Height = travel }),
        ("depth", "Adjusts in depth", each => each.Depth, (each, travel) => each with { Depth = travel }),
    ];

    private static IEnumerable<RecordPart> Travels(Place<HingeKind> place, HingeKind hinge)
    {
        var adjustment = place.At("adjustment", each => each.Adjustment, (each, part) => each with { Adjustment = part });
        foreach (var (key, title, get, set) in Axes.Where(axis => hinge.Adjustment is { } there && axis.Get(there) is not null))
        {
            var travel = adjustment.At(key, get, (each, part) => set(each, part));
            yield return new(travel.Name, title,
            [
                travel.Needed("minus", each => each.Minus, (each, entry) => each with { Minus = entry }),
                travel.Needed("plus", each => each.Plus, (each, entry) => each with { Plus = entry }),
                travel.Length("pitch", each => each.Pitch, (each, entry) => each with { Pitch = entry }),
            ])
            {
                Removal = new(travel.Name, "Take out", there => place.Edit(there, each => With(each, set, null))),
            };
        }
    }

    private static IEnumerable<PartEdit> AddsTravel(Place<HingeKind> place, HingeKind hinge, HouseStandard standard) =>
        Axes.Where(axis => hinge.Adjustment is not { } there || axis.Get(there) is null).Select(axis => new PartEdit(
            $"{place.Name}/adjustment/{axis.Key}", $"It {char.ToLowerInvariant(axis.Title[0])}{axis.Title[1..]}",
            there => place.Edit(there, each => With(each, axis.Set, new(Of(standard, "1/16", "2"), Of(standard, "1/16", "2"))))));

    // An adjustment along no axis is none.
    private static HingeKind With(HingeKind hinge, Func<HingeAdjustment, ScrewTravel?, HingeAdjustment> set, ScrewTravel? travel) =>
        set(hinge.Adjustment ?? new(), travel) is var now && now is { Sideways: null, Height: null, Depth: null } ? hinge with { Adjustment = null } : hinge with { Adjustment = now };

    public static HingeKind NewHinge(HouseStandard standard, string id) =>
        new(id, "Another hinge", HingeStyle.WrapAround, Mount.Overlay, Of(standard, "3/8", "10"), Of(standard, "3/8", "10"));

    /// <param name="id">Of a table of hinge numbers of the standard.</param>
    public static RecordPart Counts(HouseStandard standard, string id)
    {
        var place = Place.Of("hingeCounts", id, each => each.HingeCounts, (each, list) => each with { HingeCounts = list }, table => table.Id);
        var table = place.Find(standard)!;
        return new(place.Name, table.Name,
        [
            place.Words("name", each => each.Name, (each, words) => each with { Name = words ?? each.Name }, isOptional: false),
            place.Length("widest", each => each.Widest, (each, entry) => each with { Widest = entry }),
            place.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Choices = [Choice(place, "weights", "Weights in", table.Weights, (each, unit) => each with { Weights = unit }, unit => unit == WeightUnit.Pound ? "lb" : "kg")],
            Parts = [.. table.ByHeight.Select((_, i) => ByHeight(place, i)), .. table.ByWeight.Select((_, i) => ByWeight(place, i))],
            Adds =
            [
                new($"{place.Name}/byHeight", "Add a row by height", there => place.Edit(there, each => each with { ByHeight = [.. each.ByHeight, each.ByHeight.Count == 0 ? new(Of(standard, "36", "900"), 2) : each.ByHeight[^1] with { Count = each.ByHeight[^1].Count + 1, To = Higher(standard, each.ByHeight[^1].To) }] })),
                new($"{place.Name}/byWeight", "Add a row by weight", there => place.Edit(there, each => each with { ByWeight = [.. each.ByWeight, each.ByWeight.Count == 0 ? new(15, 2) : each.ByWeight[^1] with { Below = each.ByWeight[^1].Below + 5, Count = each.ByWeight[^1].Count + 1 }] })),
            ],
            Removal = new(place.Name, "Remove it", there => there with { HingeCounts = [.. there.HingeCounts.Where(each => each.Id != id)] }),
        };
    }

    private static RecordPart ByHeight(Place<HingeCounts> place, int i)
    {
        var row = place.Row("byHeight", i, each => each.ByHeight, (each, list) => each with { ByHeight = list });
        return new(row.Name, $"By height, row {i + 1}",
        [
            row.Needed("to", each => each.To, (each, entry) => each with { To = entry }),
            row.Whole("count", 1, 20, each => each.Count, (each, number) => each with { Count = number ?? each.Count }),
            row.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Removal = new($"{place.Name}/byHeight", "Take out", there => place.Edit(there, each => each with { ByHeight = [.. each.ByHeight.Where((_, at) => at != i)] })),
        };
    }

    private static RecordPart ByWeight(Place<HingeCounts> place, int i)
    {
        var row = place.Row("byWeight", i, each => each.ByWeight, (each, list) => each with { ByWeight = list });
        return new(row.Name, $"By weight, row {i + 1}",
        [
            row.Whole("below", 1, 1000, each => each.Below, (each, number) => each with { Below = number ?? each.Below }),
            row.Whole("count", 1, 20, each => each.Count, (each, number) => each with { Count = number ?? each.Count }),
            row.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Removal = new($"{place.Name}/byWeight", "Take out", there => place.Edit(there, each => each with { ByWeight = [.. each.ByWeight.Where((_, at) => at != i)] })),
        };
    }

    public static HingeCounts NewCounts(HouseStandard standard, string id) => new(id, "Another table", [new(Of(standard, "36", "900"), 2)], []);

    /// <param name="id">Of a boring machine of the standard.</param>
    public static RecordPart Borer(HouseStandard standard, string id)
    {
        var place = Place.Of("boringMachines", id, each => each.BoringMachines, (each, list) => each with { BoringMachines = list }, machine => machine.Id);
        var machine = place.Find(standard)!;
        return new(place.Name, machine.Name,
        [
            place.Words("name", each => each.Name, (each, words) => each with { Name = words ?? each.Name }, isOptional: false),
            place.Length("leastFence", each => each.LeastFence, (each, entry) => each with { LeastFence = entry }),
            place.Length("greatestFence", each => each.GreatestFence, (each, entry) => each with { GreatestFence = entry }),
            place.Length("bit", each => each.Bit, (each, entry) => each with { Bit = entry }),
            place.Words("insert", each => each.Insert, (each, words) => each with { Insert = words }),
            place.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Choices = [Choice(place, "fence", "Its fence reads to the", machine.Fence, (each, reading) => each with { Fence = reading })],
            Parts = [.. machine.Stops.Select((row, i) => Stops(place, row, i))],
            Adds = [new($"{place.Name}/stops", "Add a row of stops", there => place.Edit(there, each => each with { Stops = [.. each.Stops, each.Stops.Count == 0 ? UsualRow(standard) : each.Stops[^1] with { Side = each.Stops[^1].Side == StopSide.Left ? StopSide.Right : StopSide.Left }] }))],
            Removal = new(place.Name, "Remove it", there => there with { BoringMachines = [.. there.BoringMachines.Where(each => each.Id != id)] }),
        };
    }

    private static RecordPart Stops(Place<BoringMachine> place, StopRow there, int i)
    {
        var row = place.Row("stops", i, each => each.Stops, (each, list) => each with { Stops = list });
        return new(row.Name, $"Stops, row {i + 1}",
        [
            row.Needed("origin", each => each.Origin, (each, entry) => each with { Origin = entry }),
            row.Needed("pitch", each => each.Pitch, (each, entry) => each with { Pitch = entry }),
            row.Whole("count", 1, 99, each => each.Count, (each, number) => each with { Count = number ?? each.Count }),
            row.Whole("first", 0, 999, each => each.First, (each, number) => each with { First = number ?? each.First }),
            row.Words("mark", each => each.Mark, (each, words) => each with { Mark = words }),
        ])
        {
            Choices = [Choice(row, "side", "Side of the bit", there.Side, (each, side) => each with { Side = side })],
            Removal = new($"{place.Name}/stops", "Take out", all => place.Edit(all, each => each with { Stops = [.. each.Stops.Where((_, at) => at != i)] })),
        };
    }

    private static StopRow UsualRow(HouseStandard standard) => new(StopSide.Left, Of(standard, "3", "80"), Of(standard, "1", "32"), 10);

    public static BoringMachine NewBorer(HouseStandard standard, string id) => new(id, "Another boring machine", [UsualRow(standard)]);

    private static WordChoice Choice<T, TWord>(Place<T> place, string key, string label, TWord chosen, Func<T, TWord, T> set, Func<TWord, string>? words = null)
        where T : class
        where TWord : struct, Enum => new($"{place.Name}/{key}", label, [.. Enum.GetValues<TWord>().Select(word => (word.ToString(), words?.Invoke(word) ?? TradeWords.Words(word)))],
        chosen.ToString(), (standard, word) => place.Edit(standard, each => set(each, Enum.Parse<TWord>(word))));

    private static LengthEntry Of(HouseStandard standard, string inches, string millimetres)
    {
        var text = standard.Unit == LengthUnit.Inch ? inches : millimetres;
        return new(text, LengthReader.ReadOwn(text, standard.Unit));
    }

    private static LengthEntry Higher(HouseStandard standard, LengthEntry than)
    {
        var height = than.Value + Of(standard, "12", "300").Value;
        return new(new LengthFormat(standard.Unit, 64).PrintWithUnit(height), height);
    }
}
