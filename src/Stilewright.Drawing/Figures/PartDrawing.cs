using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wording;

namespace Stilewright.Drawing.Figures;

/// <summary>Draws one part.</summary>
internal sealed class PartDrawing
{
    private const double InsidePart = 0.4;
    private const int LongPanel = 3;
    private const double BesideLine = 1;
    private const double ToLine = 4;
    private const double BesideTick = 2.2;

    private readonly Part part;
    private readonly LeafDetail detail;
    private readonly Scale scale;
    private readonly LengthFormat format;
    private readonly bool isTurned;
    private readonly bool lengthIsAcrossPage;
    private readonly PaperBox finished;
    private readonly Stage[] stages;
    private readonly RailCurve? rail;
    private readonly PanelCurve? filling;
    private readonly CurvedLines lines;

    /// <summary>One size of the part, with its place on paper.</summary>
    private sealed record Stage(string Word, PartSize Size, PaperBox Box);

    public PartDrawing(Part part, LeafDetail detail, Scale scale, LengthFormat format)
    {
        this.part = part;
        this.detail = detail;
        this.scale = scale;
        this.format = format;
        isTurned = part.StandsUpright || part.Kind is not (PartKind.Rail or PartKind.MidRail) && part.Outline.Height > part.Outline.Width * LongPanel;
        var lengthIsUpright = part.StandsUpright || part.Grain == GrainDirection.Vertical || part.Kind == PartKind.Glass;
        lengthIsAcrossPage = lengthIsUpright == isTurned;
        finished = Box(part.Outline);
        stages = [.. Stages()];
        rail = detail.Curves.Of(part);
        filling = detail.Curves.Filling(part);
        lines = new(At);
    }

    public Scene Draw()
    {
        List<SceneNode> nodes = [];
        for (var i = stages.Length - 1; i > 0; i--)
        {
            if (stages[i].Box != stages[i - 1].Box)
                nodes.Add(new Shape(Outline.Box(stages[i].Box), LineStyle.Adjacent));
        }

        nodes.AddRange(Hidden());
        nodes.Add(new Shape((rail?.Outline ?? filling?.Edge) is { } curve ? lines.Of(curve)
            : Outline.Through(true, [.. (part.IsMitred ? part.Visible : part.Outline.Corners).Select(At)]), LineStyle.Visible));
        nodes.AddRange(Shoulders());
        var bounds = stages.Aggregate(finished, (all, stage) => all.With(stage.Box));
        var callouts = new Callouts(bounds);
        var room = Box(part.IsMitred ? Inside() : filling?.Light.Box ?? part.VisibleBounds).Grown(-InsidePart);
        var label = Drafting.Label(part.Label, room, room.Centre) ?? Drafting.Label(part.ShortLabel, room, room.Centre);
        if (label is { } inside)
            nodes.AddRange(inside.Nodes);
        else
            callouts.Above(part.Label, finished, nodes);
        if (part.Grain is not null)
            nodes.AddRange(Drafting.GrainArrow(room, label?.Box ?? new(room.Centre.X, room.Centre.Y, 0, 0), !lengthIsAcrossPage));

        var (along, across) = Rows();
        var isCrowded = across.SelectMany(row => row.Spans).Any(span => TextWidth(span, format) + 2 * BesideLine > Math.Abs(span.To - span.From));
        IReadOnlyList<DimensionRow> rows = [.. ArchRows(), .. along, .. isCrowded ? [] : across];
        var placed = new DimensionPlacer(scale, format, TextStyle.Figure).Place(bounds, rows, callouts.Place());
        nodes.AddRange(placed.Marks);
        if (isCrowded)
            nodes.AddRange(Block(across, bounds, placed.Bounds));
        return Drafting.Scene($"{part.Label} {part.Name}", Describe(), scale, part.Path, nodes);
    }

    // From the finished part's top left corner on paper; turned clockwise, the top end comes to lie on the right.
    private PaperPoint At(Point point)
    {
        var outline = part.Outline;
        return isTurned
            ? new(scale.OnPaper(point.Y - outline.Y), scale.OnPaper(point.X - outline.X))
            : new(scale.OnPaper(point.X - outline.X), scale.OnPaper(outline.Top - point.Y));
    }

    private PaperPoint At(CurvePoint point)
    {
        var (right, up) = (point.X - CurveLength.Inches(part.Outline.X), point.Y - CurveLength.Inches(part.Outline.Y));
        return isTurned ? new(scale.InchesOnPaper(up), scale.InchesOnPaper(right))
            : new(scale.InchesOnPaper(right), scale.InchesOnPaper(CurveLength.Inches(part.Outline.Height) - up));
    }

    private PaperBox Box(Rectangle rectangle) => PaperBox.Between(At(new Point(rectangle.X, rectangle.Y)), At(new Point(rectangle.Right, rectangle.Top)));

    // What a mitred member has along its whole width.
    private Rectangle Inside()
    {
        var box = part.VisibleBounds;
        var cut = part.StandsUpright ? box.Width : box.Height;
        return part.StandsUpright
            ? new(box.X, box.Y + cut, box.Width, Length.Greatest(box.Height - cut - cut, default))
            : new(box.X + cut, box.Y, Length.Greatest(box.Width - cut - cut, default), box.Height);
    }

    private IEnumerable<Stage> Stages()
    {
        yield return new("finished", part.Finished, finished);
        var (glueAlong, glueAcross) = Growth(part.Finished, part.GlueUp);
        // Outer members keep the joint line and are trimmed along their outer edge.
        var (before, after) = part.Kind is PartKind.Stile or PartKind.Rail
            ? OuterEdgeIsFirst() ? (glueAcross, 0.0) : (0.0, glueAcross) : (glueAcross / 2, glueAcross / 2);
        var glued = Grown(finished, glueAlong / 2, glueAlong / 2, before, after);
        yield return new("clamps", part.GlueUp, glued);
        if (part.Rough is null)
            yield break;
        var (roughAlong, roughAcross) = Growth(part.GlueUp, part.Rough);
        yield return new("rough", part.Rough, Grown(glued, roughAlong / 2, roughAlong / 2, roughAcross / 2, roughAcross / 2));
    }

    private (double Along, double Across) Growth(PartSize from, PartSize to) =>
        (scale.OnPaper(to.Length.Length) - scale.OnPaper(from.Length.Length), scale.OnPaper(to.Width.Length) - scale.OnPaper(from.Width.Length));

    private PaperBox Grown(PaperBox box, double start, double end, double before, double after) => lengthIsAcrossPage
        ? new(box.Left - start, box.Top - before, box.Width + start + end, box.Height + before + after)
        : new(box.Left - before, box.Top - start, box.Width + before + after, box.Height + start + end);

    // Whether the outer edge lies on the upper side of the paper.
    private bool OuterEdgeIsFirst() => part.Path[(part.Path.LastIndexOf('/') + 1)..] is "stile.left" or "rail.top";

    // The bottom of the groove along the stuck edges, and of an arched rail its centre lines and spring line.
    private IEnumerable<SceneNode> Hidden()
    {
        if (filling?.Field is { } field)
        {
            yield return new Shape(lines.Of(field), LineStyle.Edge);
            foreach (var mitre in lines.Mitres(field, filling.Edge))
                yield return mitre;
        }
        else if (filling is null && part.Kind == PartKind.Panel && part.Work.Contains(EdgeWork.RaiseFourEdges) && detail.Cutters?.RaiseWidth is { } raise)
        {
            foreach (var node in Drafting.Raise(finished, finished, scale.OnPaper(raise.Value)))
                yield return node;
        }

        if (part.Kind == PartKind.Glass)
        {
            foreach (var node in Drafting.Sheen(filling is null ? finished : Box(filling.Light.Box)))
                yield return node;
        }

        if (part.Kind is PartKind.Panel or PartKind.Glass or PartKind.Slab)
            yield break;
        var seen = Box(part.VisibleBounds);
        if (rail is not null)
        {
            {
                var spring = CurveLength.Inches(rail.Spring);
                yield return new Shape(Outline.Line(At(rail.Sight.Start with { Y = spring }), At(rail.Sight.End with { Y = spring })), LineStyle.Centre);
            }
            foreach (var light in LightsAt(rail))
            {
                var middle = Box(light.Box).Centre.X;
                yield return new Shape(Outline.Line(new(middle, finished.Top), new(middle, finished.Bottom)), LineStyle.Centre);
            }
        }

        if (detail.Cutters is not { } cutters)
            yield break;
        if (rail is not null)
        {
            if (!cutters.StickingWidth.Value.IsZero)
                yield return new Shape(lines.Of(rail.Into(CurveLength.Inches(cutters.StickingWidth.Value))), LineStyle.Edge);
            if (rail.Groove is { } groove && cutters.GrooveDepth.Value != cutters.StickingWidth.Value)
                yield return new Shape(lines.Of(groove), LineStyle.Hidden);
        }

        foreach (var isTop in StuckEdges(seen))
        {
            foreach (var (depth, style) in new[] { (cutters.StickingWidth.Value, LineStyle.Edge), (cutters.GrooveDepth.Value, LineStyle.Hidden) })
            {
                var inward = scale.OnPaper(depth);
                if (depth.IsZero || inward >= seen.Height || style == LineStyle.Hidden && cutters.StickingWidth.Value == depth)
                    continue;
                var y = isTop ? seen.Top + inward : seen.Bottom - inward;
                // A mitred member's edges are shorter the further in they lie.
                var cut = part.IsMitred ? MitreCut(inward, seen.Height) : (Left: 0.0, Right: 0.0);
                yield return new Shape(Outline.Line(new(finished.Left + cut.Left, y), new(finished.Right - cut.Right, y)), style);
            }
        }
    }

    // How far the ends of a line at that distance from the inner edge lie inside the long points.
    private (double Left, double Right) MitreCut(double fromInnerEdge, double width)
    {
        PaperPoint[] points = [.. part.Visible.Select(At)];
        var inner = OuterEdgeIsFirst() ? points.Max(point => point.Y) : points.Min(point => point.Y);
        double[] shortPoints = [.. points.Where(point => Math.Abs(point.Y - inner) < 1e-6).Select(point => point.X).Order()];
        var share = 1 - fromInnerEdge / width;
        return ((shortPoints[0] - finished.Left) * share, (finished.Right - shortPoints[^1]) * share);
    }

    // The lights with an arch of their own in this rail, and those whose share of a common arch is not straight.
    private IEnumerable<LightCurve> LightsAt(RailCurve curve) => detail.Curves.Lights
        .Where(light => light.Box.Top == curve.Spring || light.Box.Y == curve.Spring)
        .Zip(curve.Arches).Where(pair => pair.Second.Chain.Segments.Any(segment => segment is ArcSegment)).Select(pair => pair.First);

    // From the outer edge to the crown and on to the spring line; and along, the span of each arch.
    private IEnumerable<DimensionRow> ArchRows()
    {
        if (rail is null || part.Arch is not { } arch)
            yield break;
        var narrowest = part.VisibleBounds.Height;
        var (outer, spring) = OuterEdgeIsFirst() ? (finished.Top, finished.Bottom) : (finished.Bottom, finished.Top);
        var crown = OuterEdgeIsFirst() ? outer + scale.OnPaper(narrowest) : outer - scale.OnPaper(narrowest);
        Span rise = new(spring, crown, arch.Rise.Length) { Path = part.Path };
        var named = rise with { Word = "rise" };
        var isRoomy = TextWidth(named, format) + 2 * BesideLine <= Math.Abs(crown - spring);
        yield return new(Side.Right, [new(crown, outer, narrowest) { Path = part.Path }, isRoomy ? named : rise]);
        if (arch.Repeats == 1 && ShoulderSpan() is not null && part.Shoulder!.Length == arch.SpanInLeaf.Length)
            yield break;
        List<Span> spans = [];
        LightCurve? before = null;
        foreach (var light in detail.Curves.Lights.Where(light => light.Box.Top == rail.Spring || light.Box.Y == rail.Spring))
        {
            var box = Box(light.Box);
            if (before is not null)
                spans.Add(new(Box(before.Box).Right, box.Left, light.Box.X - before.Box.Right));
            spans.Add(new(box.Left, box.Right, light.Box.Width) { Path = part.Path, Word = arch.Repeats == 1 && arch.OfPair is null && spans.Count == 0 ? "span" : null });
            before = light;
        }

        yield return new(Side.Bottom, spans);
    }

    private IEnumerable<bool> StuckEdges(PaperBox seen)
    {
        if (part.Work.Contains(EdgeWork.StickBothEdges))
            return [true, false];
        return part.Work.Contains(EdgeWork.StickInnerEdge) && part.Arch is null ? [!OuterEdgeIsFirst()] : [];
    }

    // Where a part enters others; its shoulder is sawn there.
    private IEnumerable<SceneNode> Shoulders()
    {
        if (ShoulderSpan() is not var (from, to))
            yield break;
        yield return new Shape(Outline.Line(new(from, finished.Top), new(from, finished.Bottom)), LineStyle.Visible);
        yield return new Shape(Outline.Line(new(to, finished.Top), new(to, finished.Bottom)), LineStyle.Visible);
    }

    private (double From, double To)? ShoulderSpan()
    {
        if (part.Shoulder is not { } shoulder || shoulder.Length >= part.Finished.Length.Length)
            return null;
        var half = scale.OnPaper(shoulder.Length) / 2;
        return (finished.Centre.X - half, finished.Centre.X + half);
    }

    /// <summary>How long the part must be on paper for its lengths to stand over their lines.</summary>
    public static double LeastLength(Part part, LengthFormat format)
    {
        var drawing = new PartDrawing(part, LeafDetail.Unknown, Scale.FullSize, format);
        return drawing.Rows().Along.SelectMany(row => row.Spans.Where(span => span.Word is not null || row.Spans.Count == 1))
            .Max(span => TextWidth(span, format)) + 2 * BesideLine;
    }

    private static string Words(Span span, LengthFormat format) => span.Word is { } word ? $"{word} {format.Print(span.Value)}" : format.Print(span.Value);

    private static double TextWidth(Span span, LengthFormat format) => Typesetter.Set(Words(span, format), TextStyle.Figure).Width;

    // Sizes across a part too narrow to write them over their lines: the finished one is measured, the others stand with it.
    private IEnumerable<SceneNode> Block(IReadOnlyList<DimensionRow> across, PaperBox bounds, PaperBox placed)
    {
        Span[] spans = [.. across.SelectMany(row => row.Spans)];
        var first = spans[0];
        SetLine[] lines = [.. spans.Select((span, i) => Typesetter.Set(Words(span, format), i == 0 ? TextStyle.Body : TextStyle.Small))];
        PaperPoint from, to, text;
        Outline[] extensions;
        if (lengthIsAcrossPage)
        {
            // Texts of tongues stand off the ends below this.
            var x = Math.Max(bounds.Right, placed.Right) + ToLine;
            (from, to) = (new(x, first.From), new(x, first.To));
            extensions = [.. new[] { from, to }.Select(end => Outline.Line(new(finished.Right + BesideLine, end.Y), new(x + DimensionPlacer.BeyondLine, end.Y)))];
            text = new(x + BesideTick, finished.Centre.Y - lines[0].Height / 2);
        }
        else
        {
            var y = Math.Max(bounds.Bottom, placed.Bottom) + ToLine;
            (from, to) = (new(first.From, y), new(first.To, y));
            extensions = [.. new[] { from, to }.Select(end => Outline.Line(new(end.X, finished.Bottom + BesideLine), new(end.X, y + DimensionPlacer.BeyondLine)))];
            text = new(finished.Centre.X, y + BesideTick);
        }

        for (var i = 0; i < lines.Length; i++)
        {
            var left = lengthIsAcrossPage ? text.X : text.X - lines[i].Width / 2;
            Lettering lettering = new(new(left, text.Y + lines[i].Ascent), lines[i]);
            text = text with { Y = text.Y + lines[i].Height };
            if (i > 0)
            {
                yield return lettering;
                continue;
            }

            Outline[] ticks = [DimensionPlacer.Tick(from), DimensionPlacer.Tick(to)];
            yield return new DimensionMark(first.Value, scale, from, to, [.. extensions, .. ticks, Outline.Line(from, to)], lettering) { Path = first.Path };
        }
    }

    private (List<DimensionRow> Along, List<DimensionRow> Across) Rows()
    {
        var (alongSide, acrossSide) = lengthIsAcrossPage ? (Side.Bottom, Side.Right) : (Side.Right, Side.Bottom);
        List<DimensionRow> rows = [];
        if (ShoulderSpan() is var (from, to))
        {
            var tongue = (part.Finished.Length.Length - part.Shoulder!.Length) / 2;
            rows.Add(new(Side.Bottom,
            [
                new(finished.Left, from, tongue) { Path = part.Path },
                new(from, to, part.Shoulder.Length) { Path = part.Path, Word = rail is not null && part.Arch is { OfPair: null } && part.Arch.Span.Length == part.Shoulder.Length ? "span, shoulder to shoulder" : "shoulder to shoulder" },
                new(to, finished.Right, tongue) { Path = part.Path },
            ]));
        }

        rows.AddRange(SizeRows(alongSide, size => size.Length));
        return (rows, [.. SizeRows(acrossSide, size => size.Width)]);
    }

    // Sizes of one figure share a row.
    private IEnumerable<DimensionRow> SizeRows(Side side, Func<PartSize, Worked> measure)
    {
        for (var i = 0; i < stages.Length;)
        {
            var first = stages[i];
            List<string> words = [];
            for (; i < stages.Length && measure(stages[i].Size).Length == measure(first.Size).Length; i++)
                words.Add(stages[i].Word);
            var box = first.Box;
            var (from, to) = side == Side.Bottom ? (box.Left, box.Right) : (box.Bottom, box.Top);
            yield return new(side, [new(from, to, measure(first.Size).Length) { Path = part.Path, Word = part.Rough is null && words.Count == stages.Length ? null : string.Join(", ", words) }]);
        }
    }

    private string ArchWords() => rail is null || part.Arch is not { } arch ? ""
        : arch.OfPair is not null
            ? $" Its part of the arch across the pair, {TradeWords.Words(arch.Family)} {format.PrintWithUnit(arch.WholeRise.Length)} high over {format.PrintWithUnit(arch.Span.Length)}, rises {WorkedText.Figure(arch.Rise, format)} in this leaf."
        : $" Its arch, {TradeWords.Words(arch.Family)}, rises {format.PrintWithUnit(arch.Rise.Length)} over a span of {format.PrintWithUnit(arch.Span.Length)}{(arch.Repeats > 1 ? ", once over each light" : "")}.";

    private string Describe()
    {
        var stagesTold = stages.Select(stage => $"{stage.Word switch { "clamps" => "into the clamps", var word => word }} {format.Print(stage.Size.Width.Length)} × {format.PrintWithUnit(stage.Size.Length.Length)}");
        var shoulder = ShoulderSpan() is null ? "" : $" Shoulder to shoulder {format.PrintWithUnit(part.Shoulder!.Length)}.";
        return $"{part.Name} {part.Label}: {string.Join(", ", stagesTold)}, width by length.{shoulder}{ArchWords()}";
    }
}
