using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Teaching.IfCut;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays what would happen if a wrong list were cut: a sentence, its arithmetic, its drawing.</summary>
internal static class IfCutStrips
{
    private const double MostHeight = 104;
    private const double AboveOne = 7;
    private const double ToDrawing = 3;

    public static IEnumerable<Strip> Of(IEnumerable<(Consequence Consequence, LeafDetail Detail)> all, LengthFormat format, double width, double height) => all.SelectMany(one =>
    {
        var fitted = IfCutFigure.Draw(one.Consequence, one.Detail, format, width, Math.Min(height - 30, MostHeight));
        return (IEnumerable<Strip>)
        [
            .. Kept(Prose.First(Prose.Led(Title(one.Consequence), FindingText.Say(one.Consequence.Words, format), TextStyle.Body, width), AboveOne)),
            .. one.Consequence.Working is { } working ? Kept(Prose.Paragraph(WorkedText.Line(working, format), width, indent: 4)) : [],
            Drawing(fitted, width),
        ];
    });

    private static IEnumerable<Strip> Kept(IEnumerable<Strip> strips) => strips.Select(strip => strip with { KeepWithNext = true });

    private static string Title(Consequence consequence) => IfCutWords.Title(consequence) is var title ? char.ToUpperInvariant(title[0]) + title[1..] : "";

    private static Strip Drawing(FittedScene fitted, double width)
    {
        var scene = fitted.Scene;
        if (!fitted.Fits)
            return Prose.Paragraph("Its drawing does not fit on this paper at any standard scale.", width).First();
        return new(scene.HeightMillimetres, [new SceneGroup(null, scene.Description, scene.Nodes) { At = new((width - scene.WidthMillimetres) / 2, 0) }])
        {
            SpaceBefore = ToDrawing,
            Scales = [scene.Scale],
        };
    }
}
