using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

// Arched rails seen from their face.
public sealed partial class StandardFigures
{
    private const double ArchRadius = 6, ArchHalf = 2.2;

    private void ArchClearance(Sketch on)
    {
        // The word stands for the clearance of a straight end.
        var setting = inForce.LengthOrWord(Settings.ClearanceAtArch) is null ? Settings.ClearanceAlong : Settings.ClearanceAtArch;
        var depth = new Groove(cutters).Depth;
        var edge = depth - Math.Min(Size(setting), depth);
        CrownOfRail(on, depth + 1.1, depth, edge);
        on.Between(Crown(on, edge), Crown(on, depth), Settings.ClearanceAtArch.Key, Said(setting, setting == Settings.ClearanceAlong ? "as at the ends," : "clearance"));
    }

    private void Engagement(Sketch on)
    {
        var (depth, stands) = (new Groove(cutters).Depth, Size(Settings.LeastEngagement));
        CrownOfRail(on, Math.Max(depth, stands) + 1.1, depth, stands);
        on.Between(Crown(on, 0), Crown(on, stands), Settings.LeastEngagement.Key, Said(Settings.LeastEngagement, "in the groove"));
    }

    private void Crown(Sketch on)
    {
        var (depth, wood) = (new Groove(cutters).Depth, Size(Settings.LeastCrown));
        CrownOfRail(on, depth + wood, depth, null);
        on.Between(Crown(on, depth), Crown(on, depth + wood), Settings.LeastCrown.Key, Said(Settings.LeastCrown, "least wood"));
    }

    // The end of a rail whose curve just leaves the least run at the height where it is taken.
    private void ShortGrain(Sketch on)
    {
        var least = Math.Max(Size(Settings.LeastShortGrain), 0.1);
        // A circle of five parts through (0, 0), (1, 1) and (4, 2): its middle is (4, -3).
        var (end, crown, outer) = (4 * least, 2 * least, 3.2 * least);
        on.Wood(new Outline(on.At(0, 0), [new ArcTo(on.At(end, crown), on.At(end, -3 * least), true), new LineTo(on.At(end, outer)), new LineTo(on.At(0, outer))], true));
        foreach (var grain in new[] { 1.45, 1.9, 2.35, 2.8 })
            on.Line(on.At(0, grain * least), on.At((grain > 2 ? 4 : 1.7) * least, grain * least), LineStyle.Hatch);
        on.Line(on.At(0, 0), on.At(end, 0), LineStyle.Centre);
        on.Dimensions(on.Box(0, 0, end, outer), new Drawing.Dimensions.DimensionRow(Side.Left, [Upright(on, 0, least, Value(Settings.LeastShortGrain), null)]));
        on.Line(on.At(0, least), on.At(least, least), LineStyle.Visible);
        on.Named(Settings.LeastShortGrain.Key, Said(Settings.LeastShortGrain, "least run"), on.At(2.6 * least, 0.55 * least));
    }

    // The rail above the panel; arcs about one middle. The panel's edge is dashed with dots, the groove's bottom dashed.
    private static void CrownOfRail(Sketch on, double width, double depth, double? panelEdge)
    {
        var foot = Foot(0);
        on.Wood(new Outline(on.At(-ArchHalf, foot), [new ArcTo(on.At(ArchHalf, foot), on.At(0, -ArchRadius), true), new LineTo(on.At(ArchHalf, width)), new LineTo(on.At(-ArchHalf, width))], true));
        on.Draw(Arc(on, depth), LineStyle.Hidden);
        if (panelEdge is { } edge)
            on.Draw(Arc(on, edge), LineStyle.Adjacent);
    }

    private static Outline Arc(Sketch on, double above) =>
        new(on.At(-ArchHalf, Foot(above)), [new ArcTo(on.At(ArchHalf, Foot(above)), on.At(0, -ArchRadius), true)], false);

    private static double Foot(double above) => Math.Sqrt((ArchRadius + above) * (ArchRadius + above) - ArchHalf * ArchHalf) - ArchRadius;

    private static PaperPoint Crown(Sketch on, double above) => on.At(0, above);
}
