using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Hanging;
using Stilewright.Hanging.Adjusting;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wording;

namespace Stilewright.Drawing.Figures;

/// <summary>Draws the boring sheet of one leaf.</summary>
internal sealed class BoringDrawing
{
    private const string HingeEdge = "hinge edge";
    private const double Air = 1.2;
    private const double LeastWide = 78;
    private const double ArrowLong = 7;
    private const double ArrowHead = 2;
    private const double DotRadius = 0.35;
    private const double BetweenBlocks = 5;
    private const double Beside = 8;

    // A hinge without a cup is drawn as a block on the edge; its own size is not known.
    private const double BlockLong = 6;
    private const double BlockWide = 1.6;
    private const double DetailMargin = 8;

    private readonly HungLeaf leaf;
    private readonly bool isBeside;
    private readonly Scale scale;
    private readonly Scale detailScale;
    private readonly LengthFormat format;
    private readonly LeafCurves curves;
    private readonly CurvedLines lines;
    private readonly PaperBox figure;

    /// <param name="isBeside">Whether the detail stands beside the leaf, and not below it.</param>
    /// <param name="detailScale">Full size, or half of it.</param>
    public BoringDrawing(HungLeaf leaf, bool isBeside, Scale scale, Scale detailScale, LengthFormat format)
    {
        this.leaf = leaf;
        this.isBeside = isBeside;
        this.scale = scale;
        this.detailScale = detailScale;
        this.format = format;
        curves = LeafCurves.Of(leaf.Leaf, leaf.Design?.Cutters is { } cutters ? leaf.Standard.Standard.Cutter(cutters) : null);
        lines = new(At, isMirrored: true);
        figure = new(0, 0, scale.OnPaper(leaf.Leaf.Width.Length), scale.OnPaper(leaf.Leaf.Height.Length));
    }

    /// <summary>All of it, the leaf's own top left corner at nothing.</summary>
    public IReadOnlyList<SceneNode> Draw()
    {
        List<SceneNode> nodes = [.. Members(), new Shape(Outline.Box(figure), LineStyle.Visible), .. Hinges(), new Shape(EdgeLine(figure), LineStyle.Heavy)];
        var edgeName = EdgeName(figure, [.. leaf.Bores.Select(bore => scale.OnPaper(bore.FromFirst.Length))]);
        SceneNode[] round = [edgeName, .. TopArrow()];
        nodes.AddRange(round);
        var bounds = Drafting.BoundsOf([new Shape(EdgeLine(figure), LineStyle.Heavy), .. round])!.Value.With(figure);
        var placed = new DimensionPlacer(scale, format, TextStyle.Figure).Place(figure, Rows(), bounds);
        nodes.AddRange(placed.Marks);
        bounds = placed.Bounds;
        var width = Math.Max(bounds.Width, LeastWide);
        nodes.AddRange(Above(bounds, width));
        var below = bounds.Bottom + BetweenBlocks;
        if (leaf.Sheet is { } sheet)
        {
            var detail = Detail(sheet, leaf.Hinge.Cup!);
            var box = Drafting.BoundsOf(detail)!.Value;
            PaperPoint at = isBeside ? new(bounds.Right + Beside - box.Left, bounds.Top - box.Top) : new(bounds.Left - box.Left, below - box.Top);
            nodes.Add(new SceneGroup(null, BoringWords.DetailName(IsFull), detail) { At = at });
            if (isBeside)
                width = Math.Max(width, bounds.Width + Beside + box.Width);
            below = Math.Max(below, at.Y + box.Bottom + 1);
            below = Below(nodes, BoringWords.Detail(leaf.Hinge.Cup!, IsFull, format), bounds.Left, below, width, TextStyle.Small);
        }

        Below(nodes, BoringWords.Note(leaf, format), bounds.Left, below + 1, width, TextStyle.Small);
        return nodes;
    }

    // Seen from the back left and right change places.
    private PaperPoint At(CurvePoint point) => new(
        scale.InchesOnPaper(CurveLength.Inches(leaf.Leaf.Width.Length) - point.X), scale.InchesOnPaper(CurveLength.Inches(leaf.Leaf.Height.Length) - point.Y));

    private PaperPoint At(Point point) => new(scale.OnPaper(leaf.Leaf.Width.Length - point.X), scale.OnPaper(leaf.Leaf.Height.Length - point.Y));

    private IEnumerable<SceneNode> Members()
    {
        foreach (var part in leaf.Leaf.Parts.Where(part => part.Kind is not (PartKind.Panel or PartKind.Glass or PartKind.Slab)))
        {
            var outline = curves.Of(part) is { } curve ? lines.Of(curve.Seen) : Outline.Through(true, [.. part.Visible.Select(At)]);
            yield return new SceneGroup(part.Path, part.Name, [new Shape(outline, LineStyle.Edge)]);
        }
    }

    private IEnumerable<SceneNode> Hinges()
    {
        foreach (var bore in leaf.Bores)
        {
            var along = scale.OnPaper(bore.FromFirst.Length);
            yield return new Shape(Outline.Line(Place(figure, along, 0), Place(figure, along, Across(figure))), LineStyle.Centre);
            if (leaf.Sheet is not { } sheet)
            {
                yield return new Shape(Outline.Box(PaperBox.Between(Place(figure, along - BlockLong / 2, 0), Place(figure, along + BlockLong / 2, BlockWide))), LineStyle.Visible, Tone.Tint);
                continue;
            }

            foreach (var node in Cup(figure, scale, along, sheet, leaf.Hinge.Cup!, DotRadius))
                yield return node;
        }
    }

    private IEnumerable<SceneNode> Cup(PaperBox box, Scale at, double along, BoringSheet sheet, CupBoring cup, double holeRadius)
    {
        var centre = at.OnPaper(sheet.CupCentre.Length);
        yield return new Shape(Circle(Place(box, along, centre), at.OnPaper(cup.Diameter.Value) / 2), LineStyle.Visible, Tone.Tint);
        if (cup.ScrewSpacing is not { } spacing)
            yield break;
        var behind = centre + at.OnPaper(cup.ScrewOffset?.Value ?? Length.Zero);
        foreach (var side in new[] { -1, 1 })
            yield return new Shape(Circle(Place(box, along + side * at.OnPaper(spacing.Value) / 2, behind), holeRadius), null, Tone.Ink);
    }

    private static Outline Circle(PaperPoint middle, double radius)
    {
        PaperPoint left = new(middle.X - radius, middle.Y), right = new(middle.X + radius, middle.Y);
        return new(left, [new ArcTo(right, middle, true), new ArcTo(left, middle, true)], true);
    }

    // A place by its distance along the hinge edge from the first end, and inwards from that edge.
    private PaperPoint Place(PaperBox box, double along, double inward) => leaf.Edge switch
    {
        Side.Left => new(box.Left + inward, box.Top + along),
        Side.Right => new(box.Right - inward, box.Top + along),
        Side.Top => new(box.Left + along, box.Top + inward),
        _ => new(box.Left + along, box.Bottom - inward),
    };

    private double Across(PaperBox box) => leaf.IsUpright ? box.Width : box.Height;

    private double Along(PaperBox box) => leaf.IsUpright ? box.Height : box.Width;

    private Outline EdgeLine(PaperBox box) => Outline.Line(Place(box, 0, 0), Place(box, Along(box), 0));

    // Along the edge between two hinges where it is long enough, else at its end.
    private Lettering EdgeName(PaperBox box, IReadOnlyList<double> places)
    {
        var line = Typesetter.Set(HingeEdge, TextStyle.Small.Bold);
        double[] stops = [0, .. places, Along(box)];
        var (from, to) = stops.Zip(stops.Skip(1)).MaxBy(gap => gap.Second - gap.First);
        var outward = Air + line.Height / 2;
        if (to - from >= line.Width + 2 * Air)
            return Drafting.Centred(line, Place(box, (from + to) / 2, -outward), isUpright: !leaf.IsUpright);
        var end = Place(box, Along(box), 0);
        // Beside the extension lines that run on from both edges of the corner.
        var aside = Air + line.Width / 2;
        return Drafting.Centred(line, new(end.X + (leaf.Edge == Side.Left ? -aside : aside), end.Y + (leaf.Edge == Side.Top ? -outward : outward)));
    }

    private IEnumerable<SceneNode> TopArrow()
    {
        var foot = figure.Top - (leaf.Edge == Side.Top ? TextStyle.Small.SizeMillimetres + 2 * Air : Air);
        PaperPoint tip = new(figure.Centre.X, foot - ArrowLong);
        yield return new Shape(Outline.Line(new(tip.X, foot), tip), LineStyle.Visible);
        yield return new Shape(Outline.Through(true, tip, new(tip.X - ArrowHead / 2, tip.Y + ArrowHead), new(tip.X + ArrowHead / 2, tip.Y + ArrowHead)), LineStyle.Visible, Tone.Ink);
        var line = Typesetter.Set("TOP", TextStyle.Heading);
        yield return Drafting.Centred(line, new(tip.X + Air + ArrowHead / 2 + line.Width / 2, foot - ArrowLong / 2));
    }

    // From the first end beside the hinge edge, from the other end beside the edge across.
    private List<DimensionRow> Rows()
    {
        var whole = leaf.IsUpright ? leaf.Leaf.Height.Length : leaf.Leaf.Width.Length;
        var across = leaf.IsUpright ? leaf.Leaf.Width.Length : leaf.Leaf.Height.Length;
        var (first, last) = (0.0, Along(figure));
        var far = GapModel.Opposite(leaf.Edge);
        List<DimensionRow> rows =
        [
            .. leaf.Bores.Select(bore => new DimensionRow(leaf.Edge, [Span(first, scale.OnPaper(bore.FromFirst.Length), bore.FromFirst.Length)])),
            new(leaf.Edge, [Span(first, last, whole)]),
            .. leaf.Bores.Reverse().Select(bore => new DimensionRow(far, [Span(scale.OnPaper(bore.FromFirst.Length), last, bore.FromOther.Length)])),
            new(leaf.IsUpright ? Side.Bottom : Side.Right, [Span(0, Across(figure), across)]),
        ];
        return rows;

        Span Span(double from, double to, Length value) => new(from, to, value) { Path = leaf.Leaf.Path };
    }

    private bool IsFull => detailScale == Scale.FullSize;

    // The cup, its screws and the edge, large.
    private List<SceneNode> Detail(BoringSheet sheet, CupBoring cup)
    {
        var (distance, centre, radius) = (detailScale.OnPaper(sheet.Distance.Length), detailScale.OnPaper(sheet.CupCentre.Length), detailScale.OnPaper(cup.Diameter.Value) / 2);
        var behind = cup.ScrewOffset is { } offset ? detailScale.OnPaper(offset.Value) : 0;
        var apart = cup.ScrewSpacing is { } spacing ? detailScale.OnPaper(spacing.Value) : 0;
        var (along, across) = (Math.Max(2 * radius, apart) + 2 * DetailMargin, Math.Max(centre + radius, centre + behind) + DetailMargin);
        PaperBox box = leaf.IsUpright ? new(0, 0, across, along) : new(0, 0, along, across);
        var middle = along / 2;
        List<SceneNode> nodes = [new Shape(Outline.Box(box), LineStyle.Rule), .. Cup(box, detailScale, middle, sheet, cup, 1)];
        nodes.Add(new Shape(Outline.Line(Place(box, middle, 0), Place(box, middle, across)), LineStyle.Centre));
        nodes.Add(new Shape(Outline.Line(Place(box, middle - radius - 3, centre), Place(box, middle + radius + 3, centre)), LineStyle.Centre));
        nodes.Add(new Shape(EdgeLine(box), LineStyle.Heavy));
        var name = EdgeName(box, []);
        nodes.Add(name);
        var inward = leaf.IsUpright ? Side.Bottom : Side.Right;
        double In(double from) => leaf.Edge is Side.Left or Side.Top ? from : Across(box) - from;
        List<DimensionRow> rows = [new(inward, [new(In(0), In(distance), sheet.Distance.Length) { Word = "boring distance" }])];
        List<Span> chain = [new(In(0), In(centre), sheet.CupCentre.Length) { Word = "centre" }];
        if (behind > 0)
            chain.Add(new(In(centre), In(centre + behind), cup.ScrewOffset!.Value.Value));
        rows.Add(new(inward, chain));
        if (apart > 0)
            rows.Add(new(GapModel.Opposite(leaf.Edge), [new(middle - apart / 2, middle + apart / 2, cup.ScrewSpacing!.Value.Value)]));
        var bounds = Drafting.BoundsOf([new Shape(EdgeLine(box), LineStyle.Heavy), name])!.Value.With(box);
        nodes.AddRange(new DimensionPlacer(detailScale, format, TextStyle.Figure).Place(box, rows, bounds).Marks);
        return nodes;
    }

    private IEnumerable<SceneNode> Above(PaperBox bounds, double width)
    {
        SetLine[] set =
        [
            .. Typesetter.Wrap($"{leaf.Leaf.Label} {BoringWords.Hand(leaf.Leaf.Hinge).ToUpperInvariant()}", TextStyle.Title, width),
            .. Typesetter.Wrap("SEEN FROM THE BACK", TextStyle.Heading, width),
        ];
        var baseline = bounds.Top - BetweenBlocks - set.Sum(line => line.Pitch);
        foreach (var line in set)
        {
            baseline += line.Pitch;
            yield return new Lettering(new(bounds.Left, baseline - line.Descent), line);
        }
    }

    private static double Below(List<SceneNode> nodes, string words, double left, double top, double width, TextStyle style)
    {
        foreach (var line in Typesetter.Wrap(words, style, width))
        {
            nodes.Add(new Lettering(new(left, top + line.Ascent), line));
            top += line.Pitch;
        }

        return top;
    }
}
