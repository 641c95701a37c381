using System.Globalization;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays a cut list: what is cut, with whose it is below.</summary>
internal static class CutListStrips
{
    /// <param name="tellsBenches">Whether the benches stand with the labels.</param>
    public static IEnumerable<Strip> Of(CutListGroup group, TradeWords figures, bool tellsBenches, double width, double most) => Table.Of(
        [
            Column.Tick, Column.Figure("count"), "part", Column.Size("into the clamps"), Column.Size("rough"), Column.Size("finished"),
            "material", Column.Figure("planed"), Column.Figure("sanded"),
        ],
        group.Rows.Select(row => new Row(
        [
            "",
            row.Line.Count.ToString(CultureInfo.InvariantCulture),
            row.Name,
            figures.Of(row.Part.GlueUp),
            figures.Of(row.Part.Rough),
            figures.Of(row.Part.Finished),
            row.Part.Stock.Length > 0 ? $"{row.Part.Material}, {row.Part.Stock}" : row.Part.Material,
            figures.Of(row.Part.Thickness?.Planed),
            figures.Of(row.Part.Thickness?.Final),
        ])
        {
            Note = string.Join("; ", Notes(row, figures, tellsBenches).Where(note => note.Length > 0)),
        }),
        width, most);

    private static IEnumerable<string> Notes(CutListRow row, TradeWords figures, bool tellsBenches)
    {
        if (tellsBenches)
            yield return $"bench {string.Join(", ", row.Benches)}";
        yield return row.Labels;
        yield return row.Part.Grain is { } grain ? $"grain {TradeWords.Words(grain)}" : "";
        yield return figures.Work(row.Part);
    }
}
