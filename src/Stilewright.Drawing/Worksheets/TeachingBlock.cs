using System.Globalization;
using Stilewright.Drawing.Packets;
using Stilewright.Measure;

namespace Stilewright.Drawing.Worksheets;

/// <summary>The title block of worksheets, drills and their keys.</summary>
/// <param name="Kind">"worksheet" or "drill".</param>
/// <param name="What">The level or what is drilled.</param>
/// <param name="From">The seed that repeats it, or the course it is from.</param>
internal sealed record TeachingBlock(string Kind, string What, string From, int? OfBench, LengthUnit Unit, TeachingFacts Facts) : BlockFacts
{
    public override int? Bench => OfBench;

    public override string Title(LaidSheet sheet) =>
        Bench is { } bench ? string.Create(CultureInfo.InvariantCulture, $"Bench {bench}, {Kind}, {What}") : $"{What}: {sheet.Head.Content}";

    public override IReadOnlyList<IReadOnlyList<BlockCell>> Rows(LaidSheet sheet, string scale) =>
    [
        [new(Kind, What, 0.7), new("sheet", sheet.Head.Content, 0.3)],
        [new("scale", scale, 0.5), new("sizes", Unit == LengthUnit.Inch ? "all sizes in inches" : "all sizes in millimetres", 0.5)],
        [
            new("repeats with", From, 0.5), new("program", $"Stilewright {Facts.ProgramVersion}", 0.2),
            new("printed", Facts.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), 0.15),
        ],
    ];
}
