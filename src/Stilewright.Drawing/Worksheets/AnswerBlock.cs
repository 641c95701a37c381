using System.Globalization;
using Stilewright.Drawing.Packets;
using Stilewright.Measure;

namespace Stilewright.Drawing.Worksheets;

/// <summary>The title block of an answer to a maker's list.</summary>
internal sealed record AnswerBlock(string Course, string Project, string Stage, int OfBench, LengthUnit Unit, TeachingFacts Facts) : BlockFacts
{
    public override int? Bench => OfBench;

    public override string Title(LaidSheet sheet) => string.Create(CultureInfo.InvariantCulture, $"Bench {OfBench}, answer to the list of {sheet.Head.Content}");

    public override IReadOnlyList<IReadOnlyList<BlockCell>> Rows(LaidSheet sheet, string scale) =>
    [
        [new("project", Project, 0.6), new("answer to the list of", sheet.Head.Content, 0.4)],
        [new("scale", scale, 0.4), new("sizes", $"{Stage}, in {(Unit == LengthUnit.Inch ? "inches" : "millimetres")}", 0.6)],
        [
            new("course", Course, 0.5), new("program", $"Stilewright {Facts.ProgramVersion}", 0.2),
            new("printed", Facts.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), 0.15),
        ],
    ];
}
