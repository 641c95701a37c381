using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays the house standard as it holds for the course: every setting, then cutters, hard patterns, machines, stock, hinges, boring machines, woods and climates.</summary>
internal sealed class StandardStrips(Breakdown breakdown, LengthFormat format)
{
    private readonly TradeWords figures = new(format);
    private readonly StandardInForce inForce = new StandardInForce(breakdown.Standard).With(OriginKind.Course, breakdown.Course.Id, breakdown.Course.Overrides);

    public void Lay(Flow flow)
    {
        var (width, most) = (flow.Width, flow.Height / 2);
        var standard = breakdown.Standard;
        flow.Begin(new("", "standard in force", false));
        flow.Add(Prose.Title("Standard in force", width, new Bookmark("Standard in force", 2)));
        flow.Add(Prose.Paragraph(
            $"{standard.Name}, as it holds for this course. Lengths in {figures.Unit}. A project, opening or leaf may differ; the working of each leaf says where its figures were entered.", width));
        flow.Add(Table.Of(["setting", Column.Figure("value"), "meaning"], Stilewright.Shop.Settings.All.Select(SettingRow), width, most));

        flow.Add(Prose.Heading("Cutter sets", width));
        flow.Add(Table.Of(
            ["set", Column.Figure("groove depth"), Column.Figure("groove width"), Column.Figure("groove from face"), Column.Figure("cope length"), Column.Figure("sticking width"), Column.Figure("thinnest stock"), Column.Figure("thickest stock"), Column.Figure("raise width"), "stock lies"],
            standard.Cutters.Select(set => new Row(
            [
                set.Name, Of(set.GrooveDepth), Of(set.GrooveWidth), Of(set.GrooveFromFace), Of(set.CopeLength), Of(set.StickingWidth),
                Of(set.ThinnestStock), Of(set.ThickestStock), Of(set.RaiseWidth), set.FaceDown ? "face down" : "face up",
            ])
            {
                Note = Source(set.Source),
            }), width, most));

        if (standard.Patterns.Count > 0)
        {
            flow.Add(Prose.Heading("Hard patterns", width));
            flow.Add(Table.Of(
                ["pattern", "arch", Column.Figure("rise"), Column.Figure("shoulder"), Column.Figure("reverse : crown"), Column.Figure("least span"), Column.Figure("greatest span")],
                standard.Patterns.Select(pattern => new Row([pattern.Name, TradeWords.Words(pattern.Family), Of(pattern.Rise), Of(pattern.Shoulder), pattern.ReverseToCrown is { } ratio ? $"{ratio.Reverse} : {ratio.Crown}" : "", Of(pattern.LeastSpan), Of(pattern.GreatestSpan)])
                {
                    Note = Source(pattern.Source),
                }), width, most));
        }

        flow.Add(Prose.Heading("Machines", width));
        flow.Add(Prose.Paragraph("What may be fed by hand. The machine's own manual comes first.", width, TextStyle.Small).Select(strip => strip with { KeepWithNext = true }));
        flow.Add(Table.Of(
            ["machine", "kind", Column.Figure("shortest"), Column.Figure("narrowest"), Column.Figure("widest")],
            standard.Machines.Select(machine => new Row([machine.Name, TradeWords.Words(machine.Kind), Of(machine.Shortest), Of(machine.Narrowest), Of(machine.Widest)])
            {
                Note = Source(machine.Source),
            }), width, most));

        flow.Add(Prose.Heading("Stock", width));
        flow.Add(Table.Of(
            ["stock", "kind", "nominal", Column.Figure("planed"), Column.Figure("off the face"), Column.Figure("off the back"), Column.Figure("least"), Column.Figure("widest board")],
            standard.Stocks.Select(stock => new Row([stock.Name, TradeWords.Words(stock.Kind), stock.Nominal ?? "", Of(stock.Planed), Of(stock.FaceLoss), Of(stock.BackLoss), Of(stock.Least), Of(stock.WidestBoard)])
            {
                Note = Source(stock.Source),
            }), width, most));
        LayHanging(flow, standard, width, most);
        LayWood(flow, standard, width, most);
    }

    private void LayHanging(Flow flow, HouseStandard standard, double width, double most)
    {
        if (standard.Hinges.Count > 0)
        {
            flow.Add(Prose.Heading("Kinds of hinges", width));
            flow.Add(Table.Of(
                ["hinge", "kind", "fronts", Column.Figure("overlay or gap"), Column.Figure("cup × depth"), Column.Figure("bored at"), Column.Figure("constant"), Column.Figure("plates"), Column.Figure("frame member"), Column.Figure("stile"), Column.Figure("leaf")],
                standard.Hinges.Select(hinge => new Row(
                [
                    hinge.Name, TradeWords.Words(hinge.Style), TradeWords.Words(hinge.Mount), Range(hinge.Least, hinge.Greatest),
                    hinge.Cup is { } cup ? $"{Of(cup.Diameter)} × {Of(cup.Depth)}" : "", Range(hinge.Cup?.LeastDistance, hinge.Cup?.GreatestDistance), Of(hinge.Cup?.Constant),
                    string.Join(", ", hinge.Cup?.Plates.Select(plate => Of(plate.Height)) ?? []), Of(hinge.LeastMember), Of(hinge.LeastStile), Range(hinge.ThinnestLeaf, hinge.ThickestLeaf),
                ])
                {
                    Note = string.Join("; ", ((string?[])[.. Moves(hinge.Adjustment), hinge.OpensDegrees is { } angle ? FormattableString.Invariant($"opens {angle}°") : null,
                        hinge.Gaps.Count == 0 ? null : $"least gaps {string.Join(", ", hinge.Gaps.Select(gap => $"{Of(gap.Gap)} for leaves to {Of(gap.Thickness)}{(gap.BoringDistance is { } bored ? $" bored at {Of(bored)}" : "")}"))}",
                        hinge.Cup?.ScrewSpacing is { } apart ? $"screws {Of(apart)} apart{(hinge.Cup.ScrewOffset is { } behind ? $", {Of(behind)} behind" : "")}" : null,
                        hinge.Screws, hinge.Pilot is { } pilot ? $"pilot holes {Of(pilot)}" : null,
                        hinge.CountTable is { } table ? $"numbers by {standard.CountTable(table)?.Name ?? table}" : null, Source(hinge.Source)]).OfType<string>()),
                }), width, most));
        }

        if (standard.HingeCounts.Count > 0)
        {
            flow.Add(Prose.Heading("Tables of hinge numbers", width));
            flow.Add(Table.Of(["table", "by height", "by weight", Column.Figure("widest leaf")], standard.HingeCounts.Select(table => new Row(
            [
                table.Name,
                string.Join("; ", table.ByHeight.Select(row => FormattableString.Invariant($"{row.Count} to {Of(row.To)}"))),
                string.Join("; ", table.ByWeight.Select(row => FormattableString.Invariant($"{row.Count} below {row.Below} {(table.Weights == WeightUnit.Pound ? "lb" : "kg")}"))),
                Of(table.Widest),
            ])
            {
                Note = Source(table.Source),
            }), width, most));
        }

        if (standard.BoringMachines.Count > 0)
        {
            flow.Add(Prose.Heading("Boring machines", width));
            flow.Add(Table.Of(["machine", "stops", "fence reads to the", Column.Figure("fence"), Column.Figure("cup bit"), "in its head"], standard.BoringMachines.Select(machine => new Row(
            [
                machine.Name,
                string.Join("; ", machine.Stops.Select(row => FormattableString.Invariant($"{TradeWords.Words(row.Side)}: {row.NameOf(0)} to {row.NameOf(row.Count - 1)} from {Of(row.Origin)}, every {Of(row.Pitch)}"))),
                TradeWords.Words(machine.Fence), Range(machine.LeastFence, machine.GreatestFence), Of(machine.Bit), machine.Insert ?? "",
            ])
            {
                Note = Source(machine.Source),
            }), width, most));
        }
    }

    private static void LayWood(Flow flow, HouseStandard standard, double width, double most)
    {
        if (standard.Species.Count > 0)
        {
            flow.Add(Prose.Heading("Woods of the shop's own", width));
            flow.Add(Table.Of(
                ["wood", "other names", Column.Figure("tangential"), Column.Figure("radial"), Column.Figure("specific gravity"), Column.Figure("start of shrinkage")],
                standard.Species.Select(species => new Row(
                [
                    species.Name, string.Join(", ", species.Aliases), species.Tangential?.Text ?? "", species.Radial?.Text ?? "", species.SpecificGravity?.Text ?? "", FormattableString.Invariant($"{species.ShrinkageStart} %"),
                ])
                {
                    Note = Source(species.Source),
                }), width, most));
        }

        if (standard.Climates.Count > 0)
        {
            flow.Add(Prose.Heading("Where work will stand", width));
            flow.Add(Table.Of(["climate", Column.Figure("driest"), Column.Figure("wettest"), "seasons"], standard.Climates.Select(climate => new Row(
            [
                climate.Name, Percent(climate.Driest), Percent(climate.Wettest),
                string.Join("; ", climate.Seasons.Select(season => FormattableString.Invariant($"{season.Name}, month {season.Month}: {season.Temperature.Text}, humidity {Percent(season.Humidity)}"))),
            ])
            {
                Note = Source(climate.Source),
            }), width, most));
        }
    }

    private IEnumerable<string?> Moves(HingeAdjustment? adjustment) =>
    [
        Travel("sideways", adjustment?.Sideways), Travel("height", adjustment?.Height), Travel("depth", adjustment?.Depth),
    ];

    private string? Travel(string axis, ScrewTravel? travel) => travel is null ? null
        : $"{axis} −{Of(travel.Minus)} to +{Of(travel.Plus)}{(travel.Pitch is { } pitch ? $", {Of(pitch)} a turn" : "")}";

    private string Range(LengthEntry? least, LengthEntry? greatest) => (least, greatest) switch
    {
        (null, null) => "",
        ({ } one, { } other) => one == other ? Of(one) : $"{Of(one)} to {Of(other)}",
        ({ } one, null) => $"from {Of(one)}",
        (null, { } other) => $"to {Of(other)}",
    };

    private static string Percent(NumberEntry? number) => number is not { } entry ? "" : entry.Text.EndsWith('%') ? entry.Text : $"{entry.Text} %";

    private Row SettingRow(Setting setting)
    {
        var (value, origin) = inForce.Find(setting);
        var source = value.Source ?? (origin.Kind == OriginKind.Shipped ? setting.Source.Text : null);
        return new([setting.Label, setting.Kind == SettingKind.Length && inForce.LengthOrWord(setting) is { } length ? figures.Of(length) : inForce.Standard.NameOf(setting, value.Text), setting.Meaning])
        {
            Note = $"{setting.Key}; {origin.Words}{(source is null ? "" : $"; source: {source}")}",
        };
    }

    private static string Source(string? source) => source is null ? "no source given" : $"source: {source}";

    private string Of(LengthEntry? entry) => entry is { } value ? figures.Of(value.Value) : "";
}
