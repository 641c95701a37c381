using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays the house standard as it holds for the course: every setting, then cutters, hard patterns, machines and stock.</summary>
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
    }

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
