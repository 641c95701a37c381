using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

// Fronts and panels cut through.
public sealed partial class StandardFigures
{
    // A member of the frame ends at 0, the opening to its right; a front lies before it.
    private void Lapping(Sketch on)
    {
        var lap = Size(Settings.Overlay);
        FrontOver(on, Math.Max(Member, lap + 0.5), -lap, out var all);
        on.Dimensions(all, new DimensionRow(Side.Bottom, [Named(on, Settings.Overlay, -lap, 0, "overlay")]));
    }

    private void Reveal(Sketch on)
    {
        var reveal = Size(Settings.Reveal);
        var member = Math.Max(Member, reveal + 0.75);
        FrontOver(on, member, reveal - member, out var all);
        on.Dimensions(all, new DimensionRow(Side.Bottom, [Named(on, Settings.Reveal, -member, reveal - member, "reveal")]));
    }

    private static void FrontOver(Sketch on, double member, double edge, out PaperBox all)
    {
        on.EndGrain(Box(on, -member, 0, member, Thickness)).EndGrain(Box(on, edge, -Thickness - Air, Seen - edge, Thickness));
        all = on.Box(-member, -Thickness - Air, member + Seen, 2 * Thickness + Air);
    }

    private void Neighbours(Sketch on)
    {
        var gap = Size(Settings.GapBetweenNeighbours);
        var member = Math.Max(Member, gap + 0.75);
        var (left, right) = ((member - gap) / 2, (member + gap) / 2);
        on.EndGrain(Box(on, 0, 0, member, Thickness))
            .EndGrain(Box(on, -Seen, -Thickness - Air, Seen + left, Thickness)).EndGrain(Box(on, right, -Thickness - Air, member + Seen - right, Thickness));
        on.Dimensions(on.Box(-Seen, -Thickness - Air, member + 2 * Seen, 2 * Thickness + Air),
            new DimensionRow(Side.Bottom, [Named(on, Settings.GapBetweenNeighbours, left, right, "gap between neighbours")]));
    }

    private void Meeting(Sketch on)
    {
        var gap = Size(Settings.GapOfPair);
        // The rail of the frame beyond is seen, not cut.
        on.Wood(Box(on, -Seen, 0, 2 * Seen + gap, Thickness))
            .EndGrain(Box(on, -Seen, -Thickness - Air, Seen, Thickness)).EndGrain(Box(on, gap, -Thickness - Air, Seen, Thickness));
        on.Dimensions(on.Box(-Seen, -Thickness - Air, 2 * Seen + gap, 2 * Thickness + Air),
            new DimensionRow(Side.Bottom, [Named(on, Settings.GapOfPair, 0, gap, "gap of the pair")]));
    }

    private void Inset(Sketch on)
    {
        var gap = Size(Settings.InsetGap);
        on.EndGrain(Box(on, -Member, 0, Member, Thickness)).EndGrain(Box(on, gap, 0, Seen, Thickness));
        on.Dimensions(on.Box(-Member, 0, Member + gap + Seen, Thickness), new DimensionRow(Side.Bottom, [Named(on, Settings.InsetGap, 0, gap, "inset gap")]));
    }

    private void InsetMeeting(Sketch on)
    {
        const double Stub = 0.6, Door = 1.3;
        var (gap, beside) = (Size(Settings.InsetGapOfPair), Size(Settings.InsetGap));
        var end = gap + Door + beside + Stub;
        on.EndGrain(Box(on, -Door - beside - Stub, 0, Stub, Thickness)).EndGrain(Box(on, -Door, 0, Door, Thickness))
            .EndGrain(Box(on, gap, 0, Door, Thickness)).EndGrain(Box(on, end - Stub, 0, Stub, Thickness));
        on.Dimensions(on.Box(-Door - beside - Stub, 0, Door + beside + Stub + end, Thickness),
            new DimensionRow(Side.Bottom, [Named(on, Settings.InsetGapOfPair, 0, gap, "gap of the inset pair")]));
    }

    private void Lipped(Sketch on, Setting named)
    {
        var (rabbet, clearance) = (Size(Settings.LipRabbet), Size(Settings.LipClearance));
        const double Half = Thickness / 2;
        var (edge, member) = (clearance - rabbet, Math.Max(Member, rabbet - clearance + 0.5));
        var end = clearance + Seen;
        on.EndGrain(Box(on, -member, 0, member, Thickness))
            .EndGrain(Shape(on, (edge, -Half), (end, -Half), (end, Half), (clearance, Half), (clearance, -Air), (edge, -Air)));
        var all = on.Box(-member, -Half, member + end, Half + Thickness);
        on.Dimensions(all, named == Settings.LipRabbet
            ? new DimensionRow(Side.Bottom, [Named(on, named, edge, clearance, "lip")])
            : new DimensionRow(Side.Top, [Named(on, named, 0, clearance, "lip clearance")]));
    }

    private void Lap(Sketch on)
    {
        var lap = Size(Settings.Lap);
        const double Half = Thickness / 2;
        var end = lap + Seen;
        on.EndGrain(Shape(on, (-Seen, 0), (lap, 0), (lap, Half), (0, Half), (0, Thickness), (-Seen, Thickness)))
            .EndGrain(Shape(on, (lap + Air, 0), (end, 0), (end, Thickness), (Air, Thickness), (Air, Half + Air), (lap + Air, Half + Air)));
        on.Dimensions(on.Box(-Seen, 0, Seen + end, Thickness), new DimensionRow(Side.Bottom, [Named(on, Settings.Lap, 0, lap, "lap")]));
    }

    // A solid panel is raised and cut across its grain; a sheet is flat, with its plies.
    private void InStile(Sketch on, Setting named)
    {
        const double Beyond = 1.3, Flat = 0.35;
        var groove = new Groove(cutters);
        var stile = Math.Max(1.1, groove.Depth + 0.5);
        var tongue = stile - groove.Depth + Math.Min(Size(named), groove.Depth);
        on.EndGrain(Shape(on, (0, 0), (stile, 0), (stile, groove.Low), (stile - groove.Depth, groove.Low), (stile - groove.Depth, groove.High), (stile, groove.High), (stile, groove.Thick), (0, groove.Thick)));
        var (low, high, end) = (groove.Low + Air, groove.High - Air, stile + Beyond);
        if (named == Settings.SheetClearance)
        {
            on.Panel(Shape(on, (tongue, low), (end, low), (end, high), (tongue, high)));
            foreach (var ply in new[] { 1, 2 })
                on.Line(on.At(tongue, low + (high - low) * ply / 3), on.At(end, low + (high - low) * ply / 3), LineStyle.Hatch);
        }
        else
        {
            on.EndGrain(Shape(on, (tongue, low), (stile + Flat, low), (end, 0.08), (end, high), (tongue, high)));
        }

        on.Dimensions(on.Box(0, 0, end, groove.Thick),
            new DimensionRow(Side.Top, [Named(on, named, stile - groove.Depth, tongue, "clearance")]),
            new DimensionRow(Side.Bottom, [Across(on, stile - groove.Depth, stile, cutters.GrooveDepth.Value, "groove")]));
    }

    // The rail below, its groove upward; the panel's grain runs up out of it.
    private void InRail(Sketch on)
    {
        const double Beyond = 0.5;
        var groove = new Groove(cutters);
        var rail = Math.Max(0.9, groove.Depth + 0.3);
        var tongue = rail - groove.Depth + Math.Min(Size(Settings.ClearanceAlong), groove.Depth);
        on.EndGrain(Shape(on, (0, 0), (groove.Thick, 0), (groove.Thick, rail), (groove.High, rail), (groove.High, rail - groove.Depth), (groove.Low, rail - groove.Depth), (groove.Low, rail), (0, rail)));
        var (low, high, end) = (groove.Low + Air, groove.High - Air, rail + Beyond);
        on.Panel(Shape(on, (low, tongue), (high, tongue), (high, end), (low, end)));
        foreach (var line in new[] { 1, 2, 3 })
            on.Line(on.At(low + (high - low) * line / 4, tongue + 0.05), on.At(low + (high - low) * line / 4, end), LineStyle.Hatch);
        on.Dimensions(on.Box(0, 0, groove.Thick, end),
            new DimensionRow(Side.Right, [NamedUpright(on, Settings.ClearanceAlong, rail - groove.Depth, tongue, "clearance")]),
            new DimensionRow(Side.Left, [Upright(on, rail - groove.Depth, rail, cutters.GrooveDepth.Value, "groove")]));
    }

    private void Pane(Sketch on)
    {
        const double Stile = 0.9, Rabbet = 0.375, Clear = 1.8, Back = 0.4, PaneThick = 0.14;
        var clearance = Size(Settings.GlassClearance);
        // From rabbet to rabbet the pane and its whole clearance.
        var end = Clear + 2 * Rabbet + clearance;
        on.EndGrain(Shape(on, (-Stile, 0), (Rabbet, 0), (Rabbet, Back), (0, Back), (0, Thickness), (-Stile, Thickness)))
            .EndGrain(Shape(on, (end + Stile, 0), (end - Rabbet, 0), (end - Rabbet, Back), (end, Back), (end, Thickness), (end + Stile, Thickness)));
        on.Draw(Box(on, 0, Back + Air, end - clearance, PaneThick), LineStyle.Visible);
        on.Dimensions(on.Box(-Stile, 0, end + 2 * Stile, Thickness),
            new DimensionRow(Side.Top, [Named(on, Settings.GlassClearance, end - clearance, end, "glass clearance")]));
    }
}
