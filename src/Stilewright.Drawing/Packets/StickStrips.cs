using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays strips of story sticks to be cut out, and the rule that tells whether they were printed at full size.</summary>
internal static class StickStrips
{
    private const double Above = 4;
    private const double Tick = 2;

    /// <summary>A line of exactly 4 in or 100 mm, to be held against a tape.</summary>
    public static Strip CheckRule(LengthFormat format, double width)
    {
        var isInch = format.Unit == LengthUnit.Inch;
        var length = Scale.FullSize.OnPaper(isInch ? 4.Inches : 100.Millimetres);
        List<Strip> words =
        [
            .. Prose.Wrapped($"Print at full size, not fitted to the page: this line is exactly {(isInch ? "4 in" : "100 mm")} long. Check it with your tape.", TextStyle.Body.Bold, width, 0, 1),
        ];
        var line = new Strip(2 * Tick,
        [
            Strip.Rule(0, Tick, length, Tick, LineStyle.Edge),
            Strip.Rule(0, 0, 0, 2 * Tick, LineStyle.Edge),
            Strip.Rule(length, 0, length, 2 * Tick, LineStyle.Edge),
        ]);
        var advice = Prose.Paragraph("Cut the strips out along their frames, lay cross on cross at the same letter, and tape them together. Marks run out to the edge that is laid on the wood.", width, TextStyle.Small);
        return Strip.Beside((0, [.. words, line, .. advice])) with { KeepWithNext = true };
    }

    /// <summary>One strip, which carries its own title.</summary>
    public static Strip Of(Scene scene, double width) => new(scene.HeightMillimetres,
        [new SceneGroup(null, scene.Description, scene.Nodes) { At = new((width - scene.WidthMillimetres) / 2, 0) }])
    {
        SpaceBefore = Above,
        Scales = [scene.Scale],
    };
}
