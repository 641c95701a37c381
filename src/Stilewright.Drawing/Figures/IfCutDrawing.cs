using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.IfCut;

namespace Stilewright.Drawing.Figures;

/// <summary>Draws one consequence of a wrong list.</summary>
internal sealed class IfCutDrawing
{
    private const double LeastSeen = 2;
    private const double MostSeen = 30;
    private const double InsideMember = 0.35;
    private const double OffMiddle = 0.3;
    private const double BesideFace = 9;
    private const double AboveNote = 2.5;
    private const double LeastNote = 70;
    private const double FlatteningMillimetres = 0.02;
    private const double SameInches = 1e-6;

    private readonly Consequence consequence;
    private readonly SizedLeaf leaf;
    private readonly LeafDetail detail;
    private readonly Scale scale;
    private readonly LengthFormat format;
    private readonly LeafCurves curves;
    private readonly int times;
    private readonly PaperBox[] strips;
    private readonly GrooveSection? section;
    // Parts that are far from their places may lie over one another.
    private readonly List<PaperBox> labels = [];

    public IfCutDrawing(Consequence consequence, LeafDetail detail, Scale scale, LengthFormat format)
    {
        (this.consequence, leaf, this.detail, this.scale, this.format) = (consequence, consequence.Leaf, detail, scale, format);
        curves = LeafCurves.Of(leaf, detail.Cutters);
        times = Times();
        strips = [.. consequence.Faults.Select(Box)];
        section = consequence.Fit is { } fit ? GrooveSection.Of(fit, leaf, detail.Cutters, format) : null;
        if (section is not null)
            labels.Add(Cut().Letter.Box);
    }

    private static IReadOnlyList<int> Steps(LengthFormat format) => format.Unit == LengthUnit.Inch ? [1, 2, 4, 8, 16, 32, 64, 128, 256] : [1, 2, 5, 10, 20, 50, 100, 200, 500];

    // So large that the least of what is wrong can be seen, and that an arch is not drawn through wood that it leaves standing.
    private int Times()
    {
        if (consequence.Faults.Count == 0)
            return 1;
        var (least, most) = (scale.OnPaper(consequence.Faults.Min(fault => fault.Amount)), scale.OnPaper(consequence.Faults.Max(fault => fault.Amount)));
        var bound = consequence.Kind == ConsequenceKind.CrownWood ? Math.Min(MostSeen, scale.OnPaper(consequence.Parts[0].VisibleBounds.Height) * 0.6) : MostSeen;
        return Steps(format).TakeWhile(step => step == 1 || most * step <= bound).FirstOrDefault(step => least * step >= LeastSeen, Steps(format).Last(step => step == 1 || most * step <= bound));
    }

    public Scene Draw()
    {
        var right = scale.OnPaper(leaf.Width.Length) is var width ? new PaperBox(0, 0, width, scale.OnPaper(leaf.Height.Length)) : default;
        List<SceneNode> nodes = [];
        foreach (var part in leaf.Parts.OrderBy(part => part.Kind switch { PartKind.Panel or PartKind.Glass => 0, PartKind.MidStile => 1, PartKind.Rail or PartKind.MidRail => 2, _ => 3 }))
            nodes.Add(new SceneGroup(part.Path, part.Name, DrawPart(part)));
        if (consequence.Kind == ConsequenceKind.LeafSize)
            nodes.Add(new Shape(Outline.Box(right), LineStyle.Adjacent));
        for (var i = 0; i < strips.Length; i++)
        {
            nodes.Add(new Shape(Outline.Box(strips[i]), LineStyle.Edge, Tone.Tint));
            nodes.Add(new Hatch(Outline.Box(strips[i]), consequence.Faults[i].Kind == FaultKind.Missing ? -45 : 45, 0.8));
        }

        if (section is not null)
            nodes.AddRange(CutMark());
        var figure = Drafting.BoundsOf(nodes)!.Value.With(right);
        var placed = new DimensionPlacer(scale, format, TextStyle.Figure).Place(right, Rows(), figure);
        nodes.AddRange(placed.Marks);
        var bounds = placed.Bounds;
        if (section is not null)
        {
            SceneNode[] drawn = [.. section.Draw()];
            var box = Drafting.BoundsOf(drawn)!.Value;
            PaperPoint at = new(bounds.Right + BesideFace - box.Left, Math.Max(bounds.Top, right.Top) - box.Top);
            nodes.Add(new SceneGroup(null, "The groove, cut through at A", drawn) { At = at });
            bounds = bounds.With(box.Shifted(at.X, at.Y));
        }

        var down = bounds.Bottom + AboveNote;
        foreach (var (text, style) in Notes())
        {
            foreach (var line in Typesetter.Wrap(text, style, Math.Max(bounds.Width, LeastNote)))
            {
                nodes.Add(new Lettering(new(bounds.Left, down + line.Ascent), line));
                down += line.Pitch;
            }
        }

        return Drafting.Scene($"{leaf.Label} {leaf.Name}, if it were cut so: {IfCutWords.Title(consequence)}", Findings.FindingText.Say(consequence.Words, format), scale, leaf.Path, nodes);
    }

    private double X(LaidEdge edge) => scale.OnPaper(edge.At) + times * scale.OnPaper(edge.Off);

    private double Y(LaidEdge edge) => scale.OnPaper(leaf.Height.Length - edge.At) - times * scale.OnPaper(edge.Off);

    private PaperBox Box(Fault fault)
    {
        LaidEdge low = new(fault.Low, default);
        LaidEdge high = new(fault.High, default);
        return fault.IsAcross
            ? PaperBox.Between(new(X(fault.From), Y(low)), new(X(fault.To), Y(high)))
            : PaperBox.Between(new(X(low), Y(fault.From)), new(X(high), Y(fault.To)));
    }

    private PaperBox Box(LaidPart laid) => PaperBox.Between(new(X(laid.Left), Y(laid.Bottom)), new(X(laid.Right), Y(laid.Top)));

    private LaidPart Laid(Part part) => consequence.Laid.FirstOrDefault(laid => laid.Part.Path == part.Path) ?? LaidPart.InPlace(part);

    private List<SceneNode> DrawPart(Part part)
    {
        List<SceneNode> nodes = [];
        var laid = Laid(part);
        var isWrong = consequence.Parts.Any(each => each.Path == part.Path);
        var style = isWrong ? LineStyle.Visible : LineStyle.Edge;
        var box = Box(laid);
        switch (part.Kind)
        {
            case PartKind.Panel or PartKind.Glass:
                var edge = curves.Filling(part) is { } curve ? Bent(curve.Edge, laid, isRail: false) : Outline.Box(box);
                nodes.Add(new Shape(edge, IsSeen(part, laid) ? style : LineStyle.Hidden));
                if (part.Kind == PartKind.Glass)
                    nodes.AddRange(Drafting.Sheen(box));
                break;
            case PartKind.Rail or PartKind.MidRail when curves.Of(part) is { } arched:
                nodes.Add(new Shape(Bent(arched.Seen, laid, isRail: true), style));
                break;
            case PartKind.MidStile when curves.SeenOf(part) is var seen && seen != part.VisibleBounds:
                nodes.Add(new Shape(Outline.Box(PaperBox.Between(new(X(laid.Left), Y(new(seen.Y, laid.Bottom.Off))), new(X(laid.Right), Y(new(seen.Top, laid.Top.Off))))), style));
                break;
            case PartKind.Slab:
                nodes.Add(new Shape(Outline.Box(box), style));
                break;
            default:
                nodes.Add(new Shape(Outline.Through(true, [.. part.Visible.Select(corner => Corner(corner, laid))]), style));
                break;
        }

        Label(part, box, nodes);
        return nodes;
    }

    // Out of its groove the edge of a panel is in sight.
    private static bool IsSeen(Part part, LaidPart laid) => part.VisibleBounds is var seen
        && (laid.Left.Place > seen.X || laid.Right.Place < seen.Right || laid.Bottom.Place > seen.Y || laid.Top.Place < seen.Top);

    private PaperPoint Corner(Point corner, LaidPart laid) => new(
        X(corner.X == laid.Left.At ? laid.Left : corner.X == laid.Right.At ? laid.Right : new(corner.X, default)),
        Y(corner.Y == laid.Bottom.At ? laid.Bottom : corner.Y == laid.Top.At ? laid.Top : new(corner.Y, default)));

    // A curve moves with the edge it belongs to: that of a rail with its inner edge, that of a panel with the nearer end.
    private Outline Bent(Chain chain, LaidPart laid, bool isRail)
    {
        var isTop = laid.Part.VisibleBounds.Y > default(Length) && laid.Part.Arch is not null && curves.Of(laid.Part) is { } curve && curve.Spring < curve.Crown;
        var middle = CurveLength.Inches((laid.Left.At + laid.Right.At) / 2);
        var across = CurveLength.Inches((laid.Bottom.At + laid.Top.At) / 2);
        var (outer, inner) = isTop ? (laid.Top, laid.Bottom) : (laid.Bottom, laid.Top);
        PaperPoint Place(CurvePoint point)
        {
            var side = point.X < middle ? laid.Left : laid.Right;
            var end = !isRail ? point.Y < across ? laid.Bottom : laid.Top : Math.Abs(point.Y - CurveLength.Inches(outer.At)) < SameInches ? outer : inner;
            return new(scale.InchesOnPaper(point.X) + times * scale.OnPaper(side.Off),
                scale.InchesOnPaper(CurveLength.Inches(leaf.Height.Length) - point.Y) - times * scale.OnPaper(end.Off));
        }

        if (laid == LaidPart.InPlace(laid.Part))
            return new CurvedLines(Place).Of(chain);
        // Turned over like paper, so that arcs keep their way round.
        static PaperPoint Still(CurvePoint point) => new(point.X, -point.Y);
        return Outline.Through(true, [.. new CurvedLines(Still).Of(chain).Flattened(FlatteningMillimetres / scale.InchesOnPaper(1)).Select(point => Place(new(point.X, -point.Y)))]);
    }

    private void Label(Part part, PaperBox face, List<SceneNode> nodes)
    {
        var isFill = part.Kind is PartKind.Panel or PartKind.Glass or PartKind.Slab;
        var room = (isFill ? face.Grown(-3) : face).Grown(-InsideMember);
        if (part is { Kind: PartKind.Rail or PartKind.MidRail } && curves.Of(part) is { } arched)
            room = Narrowest(arched, face).Grown(-InsideMember);
        PaperPoint wish = isFill ? room.Centre : part.StandsUpright ? new(face.Centre.X, face.Bottom - face.Height * OffMiddle) : new(face.Left + face.Width * OffMiddle, room.Centre.Y);
        if (Drafting.Label(part.ShortLabel, room, wish, !part.StandsUpright) is not { } label
            || strips.Concat(labels).Any(label.Box.Overlaps) || part.IsMitred && !IsClearOfMitres(label.Box, face, part.StandsUpright))
        {
            return;
        }

        nodes.AddRange(label.Nodes);
        labels.Add(label.Box);
    }

    private static PaperBox Narrowest(RailCurve arched, PaperBox face)
    {
        var isTop = arched.Spring < arched.Crown;
        return isTop ? face with { Height = face.Height * 0.9 } : face with { Top = face.Top + face.Height * 0.1, Height = face.Height * 0.9 };
    }

    private static bool IsClearOfMitres(PaperBox label, PaperBox face, bool isUpright) => isUpright
        ? label.Top > face.Top + face.Width && label.Bottom < face.Bottom - face.Width
        : label.Left > face.Left + face.Height && label.Right < face.Right - face.Height;

    // Where the section is cut: a heavy stroke over the panel's edge with its letter.
    private IEnumerable<SceneNode> CutMark()
    {
        var (at, reach, letter) = Cut();
        yield return consequence.Fit!.IsAcross
            ? new Shape(Outline.Line(new(at.X - reach, at.Y), new(at.X + reach, at.Y)), LineStyle.Heavy)
            : new Shape(Outline.Line(new(at.X, at.Y - reach), new(at.X, at.Y + reach)), LineStyle.Heavy);
        yield return letter;
    }

    private (PaperPoint At, double Reach, Lettering Letter) Cut()
    {
        const double Longest = 3;
        const double Share = 0.35;
        var fit = consequence.Fit!;
        var seen = fit.Filling.VisibleBounds;
        var (left, right, top, bottom) = (scale.OnPaper(seen.X), scale.OnPaper(seen.Right), Y(new(seen.Top, default)), Y(new(seen.Y, default)));
        var letter = Typesetter.Set("A", TextStyle.Small.Bold);
        var at = fit.IsAcross ? new PaperPoint(right, top + (bottom - top) * Share) : new PaperPoint(left + (right - left) * (1 - Share), bottom);
        var reach = Math.Min(Longest, Math.Min(right - left, bottom - top) * 0.2);
        return (at, reach, Drafting.Centred(letter, fit.IsAcross ? new(at.X - reach - letter.Width, at.Y) : new(at.X, at.Y - reach - letter.Height / 2)));
    }

    private List<DimensionRow> Rows()
    {
        List<DimensionRow> rows = [];
        foreach (var (side, isAcross) in new[] { (Side.Top, true), (Side.Right, false) })
        {
            List<Span> spans = [];
            foreach (var fault in consequence.Faults.Where(fault => fault.IsAcross == isAcross))
            {
                var (from, to) = isAcross ? (X(fault.From), X(fault.To)) : (Y(fault.From), Y(fault.To));
                if (!spans.Exists(other => Math.Abs(other.From - from) < 1e-6 && Math.Abs(other.To - to) < 1e-6))
                    spans.Add(new(from, to, fault.Amount) { Exaggeration = times, Word = IfCutWords.Of(fault.Kind) });
            }

            rows.AddRange(Apart(spans).Select(row => new DimensionRow(side, row)));
        }

        var word = consequence.Kind == ConsequenceKind.LeafSize ? "right" : null;
        rows.Add(new(Side.Bottom, [new(0, scale.OnPaper(leaf.Width.Length), leaf.Width.Length) { Word = word, Path = leaf.Path }]));
        rows.Add(new(Side.Left, [new(scale.OnPaper(leaf.Height.Length), 0, leaf.Height.Length) { Word = word, Path = leaf.Path }]));
        return rows;
    }

    // Distances that overlap stand in rows of their own.
    private static List<List<Span>> Apart(List<Span> spans)
    {
        List<List<Span>> rows = [];
        foreach (var span in spans)
        {
            var (low, high) = (Math.Min(span.From, span.To), Math.Max(span.From, span.To));
            var row = rows.Find(row => row.TrueForAll(other => Math.Max(other.From, other.To) <= low + 1e-6 || Math.Min(other.From, other.To) >= high - 1e-6));
            if (row is null)
                rows.Add([span]);
            else
                row.Add(span);
        }

        return rows;
    }

    private IEnumerable<(string Text, TextStyle Style)> Notes()
    {
        yield return ($"As cut: {string.Join("; ", consequence.Numbers.GroupBy(number => (number.Line, number.Measure)).Select(group => AsCut(group.First())))}.", TextStyle.Small);
        var larger = times == 1 ? consequence.Faults.Count == 0 ? "" : "; what is hatched is to scale too"
            : FormattableString.Invariant($"; what is hatched is drawn {times} times as large");
        yield return ($"Leaf {scale}{larger}.{section?.Note}", TextStyle.Small);
    }

    private string AsCut(CheckedNumber number) =>
        $"{number.Line.Name} {number.Measure.ToString().ToLowerInvariant()} {format.Print(number.Told.Value)}, right {WorkedText.Figure(number.Right, format)}";
}
