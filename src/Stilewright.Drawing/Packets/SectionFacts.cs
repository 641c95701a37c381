using System.Globalization;
using Stilewright.Measure;

namespace Stilewright.Drawing.Packets;

/// <summary>What all sheets of a packet's section share in their title blocks.</summary>
/// <param name="Project">Empty for sheets of the whole course.</param>
/// <param name="ProjectRevision">For sheets of the whole course, that every sheet of a project has its own.</param>
internal sealed record SectionFacts(
    string Course, int? OfBench, string Project, string ProjectRevision, string Standard, string StandardRevision, LengthUnit Unit, PacketFacts Facts) : BlockFacts
{
    public override int? Bench => OfBench;

    public override string Title(LaidSheet sheet) =>
        Bench is { } bench ? $"Bench {bench}, {Project}: {sheet.Head.Content}" : $"{Course}: {sheet.Head.Content}";

    public override IReadOnlyList<IReadOnlyList<BlockCell>> Rows(LaidSheet sheet, string scale)
    {
        var sizes = Unit == LengthUnit.Inch ? "all sizes in inches" : "all sizes in millimetres";
        return
        [
            [new("course", Course, 0.56), new("sheet", sheet.Head.Content, 0.44)],
            Bench is not null
                ? [new("project", Project, 0.33), new("piece", sheet.Head.Piece.Length > 0 ? sheet.Head.Piece : "all", 0.23), new("scale", scale, 0.24), new("sizes", sizes, 0.20)]
                : [new("scope", "whole course", 0.56), new("scale", scale, 0.24), new("sizes", sizes, 0.20)],
            [
                new("house standard", $"{Standard}, revision {StandardRevision}", 0.33),
                new("project revision", ProjectRevision, 0.23),
                new("program", $"Stilewright {Facts.ProgramVersion}", 0.16), new("printed", Facts.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), 0.13),
            ],
        ];
    }
}
