using Stilewright.Curves;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>The curves of a leaf with arched rails, in inches from the bottom left corner of the finished leaf, Y upwards.</summary>
/// <param name="Rails">The arched ones, from the bottom up.</param>
/// <param name="Lights">Every light of a row under or over an arched rail, row by row from the bottom left.</param>
/// <param name="Panels">Panels and panes of those lights.</param>
public sealed record LeafCurves(IReadOnlyList<RailCurve> Rails, IReadOnlyList<LightCurve> Lights, IReadOnlyList<PanelCurve> Panels)
{
    /// <summary>A leaf without arches.</summary>
    public static LeafCurves None { get; } = new([], [], []);

    /// <summary>Draws the curves of a leaf from the sizes and places of its parts, and with them their clearances.</summary>
    /// <param name="cutters">Those of the frame; without them there are neither grooves nor fields.</param>
    /// <exception cref="ArgumentException">An arch of the leaf cannot be drawn; a breakdown withholds the parts of such a leaf.</exception>
    public static LeafCurves Of(SizedLeaf leaf, CutterSet? cutters) => Of(leaf.Parts, cutters);

    /// <summary>The curve of an arched rail; null for any other part.</summary>
    public RailCurve? Of(Part part) => Rails.FirstOrDefault(curve => curve.Rail.Path == part.Path);

    /// <summary>The curve of a panel or pane of an arched row; null for any other part.</summary>
    public PanelCurve? Filling(Part part) => Panels.FirstOrDefault(curve => curve.Panel.Path == part.Path);

    /// <summary>What shows of a mid stile: under an arch it ends at the spring line.</summary>
    public Rectangle SeenOf(Part midStile)
    {
        var seen = midStile.VisibleBounds;
        foreach (var curve in Rails)
        {
            var (rail, spring) = (curve.Rail.VisibleBounds, curve.Spring);
            if (rail.Y == seen.Top)
                seen = seen with { Height = spring - seen.Y };
            else if (rail.Top == seen.Y)
                seen = seen with { Y = spring, Height = seen.Top - spring };
        }

        return seen;
    }

    internal static LeafCurves Of(IReadOnlyList<Part> parts, CutterSet? cutters)
    {
        if (!parts.Any(part => part.Arch is not null))
            return None;
        List<Part> rails = [.. parts.Where(part => part.Kind is PartKind.Rail or PartKind.MidRail).OrderBy(part => part.VisibleBounds.Y)];
        List<RailCurve> curves = [];
        List<LightCurve> lights = [];
        List<PanelCurve> panels = [];
        for (var row = 0; row + 1 < rails.Count; row++)
        {
            var (below, above) = (rails[row], rails[row + 1]);
            if (below.Arch is null && above.Arch is null)
                continue;
            var spans = Spans(parts, below.VisibleBounds, above.VisibleBounds);
            var hollow = below.Arch is null ? null : Arches(below, spans);
            var arches = above.Arch is null ? null : Arches(above, spans);
            if (hollow is not null)
                curves.Add(Rail(below, spans, hollow, isTop: false, cutters));
            for (var i = 0; i < spans.Count; i++)
            {
                var top = above.Arch is null ? above.VisibleBounds.Y : above.Outline.Y;
                var bottom = below.Arch is null ? below.VisibleBounds.Top : below.Outline.Top;
                var arched = new ArchedLight(arches?[i] ?? Straight(spans[i]), CurveLength.Inches(top - bottom), 0, 0, 0)
                {
                    Bottom = hollow?[i].TurnedOver(),
                };
                var light = new LightCurve(new(spans[i].From, bottom, spans[i].To - spans[i].From, top - bottom), arched);
                lights.Add(light);
                panels.AddRange(parts.Where(part => part.Kind is PartKind.Panel or PartKind.Glass && part.VisibleBounds is var seen
                    && seen.X == spans[i].From && seen.Y < top && seen.Top > bottom).Select(part => Panel(part, light, cutters)));
            }

            if (arches is not null)
                curves.Add(Rail(above, spans, arches, isTop: true, cutters));
        }

        return new(curves, lights, panels);
    }

    /// <summary>The arch of a rail over its own span, or its part in one leaf of a pair, the middle at X = 0; what cannot be drawn says why.</summary>
    internal static ArchResult Draw(ArchShape shape)
    {
        var whole = ArchFamilies.Draw(shape.Family, SizesOf(shape));
        return whole is ArchResult.Drawn(var curve) ? new ArchResult.Drawn(InLeaf(shape, curve)) : whole;
    }

    /// <summary>What of the whole curve lies in the leaf.</summary>
    internal static ArchCurve InLeaf(ArchShape shape, ArchCurve whole) =>
        shape.OfPair is { } part ? PartOf(whole, part.Width, part.Meeting) : whole;

    internal static ArchCurve PartOf(ArchCurve whole, Worked width, Side meeting) => meeting == Side.Right
        ? PairArch.LeftPart(whole, CurveLength.Inches(width.Length)) : PairArch.RightPart(whole, CurveLength.Inches(width.Length));

    internal static ArchSizes SizesOf(ArchShape shape) => new(
        CurveLength.Inches(shape.Span.Length), CurveLength.Inches(shape.WholeRise.Length), CurveLength.Inches(shape.Shoulder?.Length ?? default))
    {
        ReverseToCrown = shape.ReverseToCrown.ToDouble(),
        Drawn = shape.Drawn,
    };

    // From member to member across a row.
    private static List<(Length From, Length To)> Spans(IReadOnlyList<Part> parts, Rectangle below, Rectangle above)
    {
        List<(Length, Length)> spans = [];
        var from = above.X;
        foreach (var stile in parts.Where(part => part.Kind == PartKind.MidStile).Select(part => part.VisibleBounds)
            .Where(seen => seen.Y < above.Y && seen.Top > below.Top).OrderBy(seen => seen.X))
        {
            spans.Add((from, stile.X));
            from = stile.Right;
        }

        spans.Add((from, above.Right));
        return spans;
    }

    // One for every light, springing at Y = 0 and rising into the rail; where one arch runs over all lights, its stretch over each.
    private static List<ArchCurve> Arches(Part rail, List<(Length From, Length To)> spans)
    {
        var shape = rail.Arch!;
        var drawn = Draw(shape) switch
        {
            ArchResult.Drawn(var curve) => curve,
            ArchResult.Refused(var problem, _) => throw new ArgumentException($"The arch of {rail.Path} cannot be drawn. {problem}", nameof(rail)),
            _ => throw new InvalidOperationException("An arch is drawn or refused."),
        };
        if (shape.Repeats > 1)
            return [.. spans.Select(span => Widened(Moved(drawn, Middle(span)), span))];

        var whole = Moved(drawn, Middle((spans[0].From, spans[^1].To)));
        return spans.Count == 1 ? [whole] : [.. spans.Select(span => Stretch(whole, span))];
    }

    private static ArchCurve Moved(ArchCurve arch, double right) => new(
        arch.Chain.Translated(new(right, 0)), [.. arch.Corners.Select(corner => corner + new CurvePoint(right, 0))]);

    // Lights that the cutting step leaves wider than the narrowest keep its arch, with straight ends beside it.
    private static ArchCurve Widened(ArchCurve arch, (Length From, Length To) span)
    {
        var (from, to) = (new CurvePoint(CurveLength.Inches(span.From), 0), new CurvePoint(CurveLength.Inches(span.To), 0));
        var wider = arch.Chain.Start.X - from.X;
        if (wider <= CurveTolerance.CrumbInches)
            return arch;
        var chain = new Chain([new LineSegment(from, arch.Chain.Start), .. arch.Chain.Segments, new LineSegment(arch.Chain.End, to)], isClosed: false);
        return new(chain, [.. chain.Corners().Select(corner => corner.Place)]);
    }

    // A mid stile stands under a straight shoulder, so the places along the curve there are those across.
    private static ArchCurve Stretch(ArchCurve whole, (Length From, Length To) span)
    {
        var (from, to) = (CurveLength.Inches(span.From), CurveLength.Inches(span.To));
        if (whole.Chain.Segments[0] is LineSegment first && first.End.X >= to - CurveTolerance.MeetingInches
            || whole.Chain.Segments[^1] is LineSegment last && last.Start.X <= from + CurveTolerance.MeetingInches)
        {
            return Straight(span);
        }

        var chain = whole.Chain.Part(Math.Max(0, from - whole.Chain.Start.X), whole.Chain.Length - (whole.Chain.End.X - to));
        return new(chain, [.. whole.Corners.Where(corner => corner.X > from && corner.X < to)]);
    }

    private static ArchCurve Straight((Length From, Length To) span) => new(
        new([new LineSegment(new(CurveLength.Inches(span.From), 0), new(CurveLength.Inches(span.To), 0))], isClosed: false), []);

    private static double Middle((Length From, Length To) span) => (CurveLength.Inches(span.From) + CurveLength.Inches(span.To)) / 2;

    // Drawn as a top rail that springs at Y = 0, and put in its place.
    private static RailCurve Rail(Part rail, List<(Length From, Length To)> spans, List<ArchCurve> arches, bool isTop, CutterSet? cutters)
    {
        var (whole, seen) = (rail.Outline, rail.VisibleBounds);
        var spring = isTop ? whole.Y : whole.Top;
        List<CurveSegment> segments = [];
        for (var i = 0; i < arches.Count; i++)
        {
            if (i > 0)
                segments.Add(new LineSegment(arches[i - 1].Chain.End, arches[i].Chain.Start));
            segments.AddRange(arches[i].Chain.Segments);
        }

        var sight = new Chain(segments, isClosed: false);
        var (outerLeft, outerRight, height) = (CurveLength.Inches(whole.X), CurveLength.Inches(whole.Right), CurveLength.Inches(whole.Height));
        // Beyond a meeting stile's sight line the tongue is sawn off level with the end of the curve.
        CurvePoint[] around = [sight.End with { X = outerRight }, new(outerRight, height), new(outerLeft, height), sight.Start with { X = outerLeft }, sight.Start];
        var outline = sight.Segments.ToList();
        foreach (var corner in around)
        {
            if (outline[^1].End.DistanceTo(corner) > CurveTolerance.MeetingInches)
                outline.Add(new LineSegment(outline[^1].End, corner));
        }

        var closed = Placed(new(outline, isClosed: true));
        var curve = new RailCurve(
            rail, [.. arches.Select(arch => new ArchCurve(Placed(arch.Chain), [.. arch.Corners.Select(PlacedPoint)]))],
            Placed(sight), null, isTop ? closed : closed.Reversed(), spring, isTop ? seen.Y : seen.Top);
        return cutters is null ? curve : curve with { Groove = curve.Into(CurveLength.Inches(cutters.GrooveDepth.Value)) };

        Chain Placed(Chain chain) => (isTop ? chain : chain.TurnedOver()).Translated(new(0, CurveLength.Inches(spring)));
        CurvePoint PlacedPoint(CurvePoint point) => new(point.X, CurveLength.Inches(spring) + (isTop ? point.Y : -point.Y));
    }

    // The parallel of a pointed arch comes to a point beyond the panel's size, which is taken square from the tip of the sight line;
    // so does that of an arch across a pair, which rises on behind the meeting stile.
    private static Chain CutOff(Chain edge, double atY, double reachedY)
    {
        if (Math.Abs(reachedY - atY) <= CurveTolerance.MeetingInches || edge.CrossingsWithLine(new(0, atY), new(1, 0)) is not [var before, var after])
            return edge;
        if (reachedY < atY ? edge.Start.Y < atY : edge.Start.Y > atY)
            return new([.. edge.Part(before.OnFirst, after.OnFirst).Segments, new LineSegment(after.Place, before.Place)], isClosed: true);
        return new(
            [
                .. edge.Part(0, before.OnFirst).Segments, new LineSegment(before.Place, after.Place), .. edge.Part(after.OnFirst, edge.Length).Segments,
            ], isClosed: true);
    }

    private static PanelCurve Panel(Part panel, LightCurve light, CutterSet? cutters)
    {
        var (seen, whole) = (panel.VisibleBounds, panel.Outline);
        var edge = light.PanelEdge(CurveLength.Inches(seen.X - whole.X), CurveLength.Inches(seen.Y - whole.Y), CurveLength.Inches(whole.Top - seen.Top));
        edge = CutOff(CutOff(edge, CurveLength.Inches(whole.Top), edge.Box.Top), CurveLength.Inches(whole.Y), edge.Box.Bottom);
        var field = panel.Work.Contains(EdgeWork.RaiseFourEdges) && cutters?.RaiseWidth is { } raise
            ? LightCurves.Inward(edge, CurveLength.Inches(raise.Value)).Whole : null;
        return new(panel, light, edge, field);
    }
}

/// <summary>The curve of an arched rail.</summary>
/// <param name="Arches">One for every light below or above it, from left to right; where one arch runs over all of them, its stretches.</param>
/// <param name="Sight">The inner edge from stile to stile as it is seen, from left to right, with the straight parts over mid stiles.</param>
/// <param name="Groove">The bottom of the groove from stile to stile; null where the cutters are not known.</param>
/// <param name="Outline">The whole rail with its tongues or tenons, closed, counter-clockwise.</param>
/// <param name="Spring">Height of the spring line in the leaf: the inner edge of the blank.</param>
/// <param name="Crown">Height at which the rail is narrowest.</param>
public sealed record RailCurve(
    Part Rail, IReadOnlyList<ArchCurve> Arches, Chain Sight, Chain? Groove, Chain Outline, Length Spring, Length Crown)
{
    private bool IsTop => Spring < Crown;

    /// <summary>The visible face, closed, counter-clockwise.</summary>
    public Chain Seen
    {
        get
        {
            var seen = Rail.VisibleBounds;
            var outer = CurveLength.Inches(IsTop ? seen.Top : seen.Y);
            var (right, left) = (Sight.End with { Y = outer }, Sight.Start with { Y = outer });
            Chain face = new([.. Sight.Segments, new LineSegment(Sight.End, right), new LineSegment(right, left), new LineSegment(left, Sight.Start)], isClosed: true);
            return IsTop ? face : face.Reversed();
        }
    }

    /// <summary>The sight line moved evenly into the rail, from stile to stile, such as the edge of the sticking.</summary>
    public Chain Into(double inches)
    {
        var (left, right) = (Sight.Start.X, Sight.End.X);
        return IsTop ? LightCurves.FittedArch(Sight, inches, left, right) : LightCurves.FittedArch(Sight.TurnedOver(), inches, left, right).TurnedOver();
    }
}

/// <summary>A light under or over an arched rail.</summary>
/// <param name="Box">From spring line to spring line, or to a straight rail: clear of every curve, since arches rise out of it.</param>
/// <param name="Arched">With its upper spring line at Y = 0, and neither groove nor clearances.</param>
public sealed record LightCurve(Rectangle Box, ArchedLight Arched)
{
    /// <summary>What shows, closed, counter-clockwise.</summary>
    public Chain Sight => Outward(0);

    /// <summary>The sight line moved evenly into the members round it, such as the edge of the sticking or a groove's bottom.</summary>
    public Chain Outward(double inches) => Placed(LightCurves.GrooveBottom(Arched with { GrooveDepth = inches }));

    // A pane smaller than its light has no groove to stand in; its edge is drawn at the sight line.
    internal Chain PanelEdge(double sideInches, double bottomInches, double topInches) =>
        Placed(LightCurves.Outline(Arched, Math.Max(0, sideInches), Math.Max(0, bottomInches), Math.Max(0, topInches)));

    private Chain Placed(Chain chain) => chain.Translated(new(0, CurveLength.Inches(Box.Top)));
}

/// <summary>The curve of a panel or pane under or over an arch.</summary>
/// <param name="Light">The light it fills.</param>
/// <param name="Edge">Its true outline in the groove, closed, counter-clockwise.</param>
/// <param name="Field">The inner edge of the raise; null where none is raised, or it leaves no field or more than one.</param>
public sealed record PanelCurve(Part Panel, LightCurve Light, Chain Edge, Chain? Field)
{
    /// <summary>What is seen of it, closed, counter-clockwise.</summary>
    public Chain Sight => Light.Sight;
}
