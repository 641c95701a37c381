using Fractions;
using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wording;

namespace Stilewright.Drawing.Patterns;

/// <summary>Draws one pattern about the middle of its spring line.</summary>
internal sealed class PatternDrawing
{
    private const double CrossReach = 4;
    private const double BesidePart = 13;
    private const double BeyondPart = 6;
    private const double AroundText = 4;
    private const double LeastTable = 80;
    private const double TableWidth = 165;
    private const double MostTable = 10_000;
    private const double ShortRadius = 12;
    // How far under an arch its centres are still drawn, in millimetres.
    private const double CentresWithin = 70;

    private readonly Part part;
    private readonly PatternFacts facts;
    private readonly TradeWords words;
    private readonly CurvePoint middle;
    private readonly bool isTurnedOver;
    private readonly CurvedLines lines;
    private readonly List<SceneNode> nodes = [];
    private readonly List<PatternLine> named = [];
    // On white ground over all lines.
    private readonly List<SceneNode> texts = [];
    private readonly List<(PaperPoint From, PaperPoint To)> construction = [];

    // Centres and names of marks, over everything.
    private readonly List<SceneNode> marks = [];
    private readonly List<PaperBox> centres = [];

    private PatternDrawing(Part part, PatternFacts facts, CurvePoint middle, bool isTurnedOver)
    {
        (this.part, this.facts, this.middle, this.isTurnedOver) = (part, facts, middle, isTurnedOver);
        words = new(facts.Format);
        lines = new(At, isTurnedOver);
    }

    private ArchShape Arch => part.Arch ?? part.TopArch ?? part.BottomArch ?? throw new InvalidOperationException($"{part.Path} has no arch.");

    /// <param name="guide">The line that a bearing follows; null where the pattern is the sight line itself.</param>
    public static FullSizePattern OfRail(RailCurve rail, Chain? guide, PatternFacts facts)
    {
        var drawing = new PatternDrawing(rail.Rail, facts,
            new((rail.Sight.Start.X + rail.Sight.End.X) / 2, CurveLength.Inches(rail.Spring)), rail.Spring > rail.Crown);
        return drawing.Draw(rail, guide);
    }

    /// <param name="guide">The line that a bearing follows; null where the pattern is the panel's edge itself.</param>
    public static FullSizePattern OfPanel(PanelCurve panel, Chain? guide, PatternFacts facts)
    {
        var isTurnedOver = panel.Panel.TopArch is null && panel.Panel.BottomArch is not null;
        var box = panel.Light.Box;
        var drawing = new PatternDrawing(panel.Panel, facts,
            new(CurveLength.Inches(box.X + box.Right) / 2, CurveLength.Inches(isTurnedOver ? box.Y : box.Top)), isTurnedOver);
        return drawing.Draw(panel, guide);
    }

    private FullSizePattern Draw(RailCurve rail, Chain? guide)
    {
        var (sight, outline) = (Local(rail.Sight), Local(rail.Outline));
        var blank = Blank(outline.Box);
        var followed = guide is null ? sight : Local(guide);
        nodes.Add(new Shape(Outline.Box(blank), LineStyle.Adjacent));
        nodes.Add(new Shape(lines.Of(outline), LineStyle.Edge));
        Name(guide is null ? "sight line" : "guide line", followed, LineStyle.Visible);
        if (guide is not null)
            Name("sight line", sight, LineStyle.Edge);
        if (rail.Groove is { } groove)
            Name("groove bottom", Local(groove), LineStyle.Hidden);
        named.Add(new("finished rail", outline));

        var (left, right) = (At(sight.Start).X, At(sight.End).X);
        foreach (var shoulder in new[] { left, right })
        {
            if (shoulder - blank.Left > 0.5 && blank.Right - shoulder > 0.5)
                nodes.Add(new Shape(Outline.Line(new(shoulder, blank.Top), new(shoulder, blank.Bottom)), LineStyle.Edge));
        }

        var inner = isTurnedOver ? blank.Top : blank.Bottom;
        var outer = isTurnedOver ? blank.Bottom : blank.Top;
        var outwards = isTurnedOver ? 1 : -1;
        Axes(blank.Left - BeyondPart, blank.Right + BeyondPart, blank.Top - BeyondPart, blank.Bottom + BeyondPart);
        foreach (var x in new[] { left, 0, right })
        {
            Register(new(x, outer), new(0, outwards));
            if (x != 0)
                Register(new(x, inner), new(0, -outwards));
        }

        var reach = blank.With(new(blank.Left, isTurnedOver ? blank.Top - CentresWithin : blank.Top, blank.Width, blank.Height + CentresWithin));
        var trammel = new ArchCurve(followed, []).Trammel();
        var hollow = Construct(trammel, reach);
        var crown = At(new(0, named.Where(line => line.Chain != outline).Max(line => line.Chain.Box.Top))).Y;
        var wood = PaperBox.Between(new(left, crown), new(right, outer)).Grown(-AroundText);
        Text(wood, isGrainUpright: false);
        var dimension = outer + outwards * BesidePart;
        var crosses = Overall(new(left, dimension), new(right, dimension), part.VisibleBounds.Width, $"span {words.Of(part.VisibleBounds.Width)} between the crosses");
        Table(trammel, reach, hollow.With(blank));
        return Finish(trammel, part.VisibleBounds.Width, crosses);
    }

    private FullSizePattern Draw(PanelCurve panel, Chain? guide)
    {
        var edge = Local(panel.Edge);
        var followed = guide is null ? edge : Local(guide);
        Name(guide is null ? "panel edge" : "guide line", followed, LineStyle.Visible);
        if (guide is not null)
            Name("panel edge", edge, LineStyle.Edge);
        Name("sight line", Local(panel.Sight), LineStyle.Edge);
        if (panel.Field is { } field)
            Name("field", Local(field), LineStyle.Edge);

        var whole = Box(edge.Box);
        Axes(whole.Left - BeyondPart, whole.Right + BeyondPart, whole.Top - BeyondPart, whole.Bottom + BeyondPart);
        Register(new(0, isTurnedOver ? whole.Top : whole.Bottom), new(0, isTurnedOver ? -1 : 1));
        Register(new(whole.Left, 0), new(-1, 0));
        Register(new(whole.Right, 0), new(1, 0));

        var box = Box(Local(panel.Field ?? panel.Sight).Box);
        var start = Clear(Local(panel.Field ?? panel.Sight));
        var room = isTurnedOver ? PaperBox.Between(new(box.Left, box.Top), new(box.Right, start)) : PaperBox.Between(new(box.Left, start), new(box.Right, box.Bottom));
        var trammel = Stretches(followed).SelectMany(chain => new ArchCurve(chain, []).Trammel()).ToList();
        var hollow = Construct(trammel, whole);
        var text = Text(room.Grown(-2 * AroundText), part.Grain != GrainDirection.Horizontal);
        PaperPoint[] ends = whole.Height > whole.Width
            ? [new(whole.Left - BesidePart, whole.Bottom), new(whole.Left - BesidePart, whole.Top)]
            : [new(whole.Left, whole.Bottom + BesidePart), new(whole.Right, whole.Bottom + BesidePart)];
        var overall = whole.Height > whole.Width ? part.Outline.Height : part.Outline.Width;
        var crosses = Overall(ends[0], ends[1], overall, $"{words.Of(overall)} between the crosses");
        Table(trammel, whole, whole.With(hollow), room.Grown(-AroundText), text.Bottom);
        return Finish(trammel, overall, crosses);
    }

    // Where the line of a panel is straight from side to side.
    private double Clear(Chain line)
    {
        var middle = (line.Box.Bottom + line.Box.Top) / 2;
        return At(new(0, line.Segments.OfType<ArcSegment>().Where(arc => arc.PointAt(arc.Length / 2).Y > middle)
            .Select(arc => arc.Box.Bottom).Append(0).Min())).Y;
    }

    private FullSizePattern Finish(IReadOnlyList<TrammelPoint> trammel, Length overall, (PaperPoint From, PaperPoint To) crosses)
    {
        nodes.AddRange(texts);
        nodes.AddRange(marks);
        var kind = facts.Guide is null ? "pattern" : "pattern for a bearing";
        var scene = Drafting.Scene($"{part.Label} {part.Name}: {kind}",
            $"Full-size {kind} of {part.Name} {part.Label}, seen from the front: {Shape()}.", Scale.FullSize, part.Path, nodes);
        var origin = ((SceneGroup)scene.Nodes[0]).At;
        return new(scene, part, named, trammel, overall, (crosses.From + origin, crosses.To + origin)) { SpringMiddle = origin, IsTurnedOver = isTurnedOver };
    }

    private Chain Local(Chain chain)
    {
        var moved = chain.Translated(default(CurvePoint) - middle);
        return isTurnedOver ? moved.TurnedOver() : moved;
    }

    private PaperPoint At(CurvePoint point) =>
        new(Scale.FullSize.InchesOnPaper(point.X), Scale.FullSize.InchesOnPaper(isTurnedOver ? point.Y : -point.Y));

    private PaperBox Box(CurveBox box) => PaperBox.Between(At(new(box.Left, box.Bottom)), At(new(box.Right, box.Top)));

    private void Name(string name, Chain chain, LineStyle style)
    {
        named.Add(new(name, chain));
        nodes.Add(new Shape(lines.Of(chain), style));
    }

    // Into the clamps: trimmed at both ends, and along the outer edge, as the joint line is kept.
    private PaperBox Blank(CurveBox finished)
    {
        var box = Box(finished);
        var along = Scale.FullSize.OnPaper(part.GlueUp.Length.Length - part.Finished.Length.Length) / 2;
        var across = Scale.FullSize.OnPaper(part.GlueUp.Width.Length - part.Finished.Width.Length);
        var (above, below) = part.Kind == PartKind.MidRail ? (across / 2, across / 2) : isTurnedOver ? (0, across) : (across, 0);
        return new(box.Left - along, box.Top - above, box.Width + 2 * along, box.Height + above + below);
    }

    private void Axes(double left, double right, double top, double bottom)
    {
        nodes.Add(new Shape(Outline.Line(new(left, 0), new(right, 0)), LineStyle.Centre));
        nodes.Add(new Shape(Outline.Line(new(0, top), new(0, bottom)), LineStyle.Centre));
    }

    // A wedge whose tip lies on the edge: struck on the blank as well, it is where the two are laid together.
    private void Register(PaperPoint tip, PaperPoint outwards)
    {
        const double Long = 4.5;
        const double Half = 1.5;
        var side = new PaperPoint(outwards.Y, outwards.X);
        nodes.Add(new Shape(Outline.Through(true, tip, tip + outwards * Long + side * Half, tip + outwards * Long - side * Half), LineStyle.Edge, Tone.Ink));
    }

    private string Shape()
    {
        var arch = Arch;
        var shoulder = arch.Shoulder is { } straight && !straight.Amount.IsZero ? $", shoulders {words.Of(straight)}" : "";
        return $"{TradeWords.Words(arch.Family)}, span {words.Of(arch.Span)}, rise {words.Of(arch.Rise)}{shoulder}, in {words.Unit}";
    }

    // Beside the centre line, the label as large as there is room, and the grain on the other side.
    private PaperBox Text(PaperBox wood, bool isGrainUpright)
    {
        double[] sizes = [12, 9, 7, 5, 3.5];
        var half = new PaperBox(wood.Left, wood.Top, Math.Max(0, -wood.Left - AroundText), wood.Height);
        List<SetLine> set = [];
        foreach (var size in sizes)
        {
            set = [Typesetter.Set(part.Label, new(size, Weight.Strong))];
            foreach (var (text, style) in Notes())
                set.AddRange(Typesetter.Wrap(text, style, Math.Max(40, half.Width)));
            if (set[0].Width <= half.Width && set.Sum(line => line.Pitch) <= wood.Height)
                break;
        }

        // Beside a centre rather than over it, where there is room.
        var (top, width, height) = (wood.Top, set.Max(line => line.Width), set.Sum(line => line.Pitch));
        foreach (var left in centres.Select(centre => centre.Right + 1).Prepend(half.Left).Where(left => left >= half.Left && left + width <= half.Right))
        {
            var place = half with { Left = left, Width = half.Right - left };
            if (centres.TrueForAll(centre => !centre.Overlaps(new(left, top, width, height))))
            {
                half = place;
                break;
            }
        }

        texts.Add(new Shape(Outline.Box(new PaperBox(half.Left, top, width, height).Grown(0.6)), null, Tone.Paper));
        foreach (var line in set)
        {
            texts.Add(new Lettering(new(half.Left, top + line.Ascent), line));
            top += line.Pitch;
        }

        if (part.Grain is not null)
        {
            var other = new PaperBox(AroundText, wood.Top, Math.Max(0, wood.Right - AroundText), Math.Min(wood.Height, 60));
            nodes.AddRange(Drafting.GrainArrow(other, new(other.Centre.X, other.Centre.Y, 0, 0), isGrainUpright));
        }

        return PaperBox.Between(half.TopLeft, new(half.Right, top));
    }

    private IEnumerable<(string Text, TextStyle Style)> Notes()
    {
        yield return ($"{part.Name}, {Shape()}", TextStyle.Body);
        if (facts.Guide is { } guide)
        {
            yield return ($"Guides a bearing of radius {words.Of(guide.BearingRadius)} with a cutter of radius {words.Of(guide.CutterRadius)}: the wide line lies {words.Of(Length.Abs(guide.Inward))} "
                + $"{(guide.Inward.IsNegative ? "outside of" : "inside")} the edge it leaves.", TextStyle.Body);
        }

        yield return ($"This side up: show face, as seen from the front. Revision {facts.Revision}", TextStyle.Body);
    }

    private (PaperPoint From, PaperPoint To) Overall(PaperPoint from, PaperPoint to, Length value, string text)
    {
        var isLevel = from.Y == to.Y;
        var along = isLevel ? new PaperPoint(1, 0) : new(0, -1);
        List<Outline> strokes = [Outline.Line(from + along * CrossReach, to - along * CrossReach)];
        foreach (var end in new[] { from, to })
        {
            strokes.Add(Outline.Line(end - new PaperPoint(CrossReach, 0), end + new PaperPoint(CrossReach, 0)));
            strokes.Add(Outline.Line(end - new PaperPoint(0, CrossReach), end + new PaperPoint(0, CrossReach)));
        }

        var set = Typesetter.Set(text, TextStyle.Figure);
        var centre = new PaperPoint((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        // Clear of the centre line, which may run through the dimension.
        var lettering = isLevel
            ? new Lettering(new(Math.Max(from.X + 2, centre.X - set.Width - 2), centre.Y - set.Descent - 0.6), set)
            : new Lettering(new(centre.X - set.Descent - 0.6, centre.Y + set.Width / 2), set, IsUpright: false);
        nodes.Add(new DimensionMark(value, Scale.FullSize, from, to, strokes, lettering) { Path = part.Path });
        return (from, to);
    }

    // The curved stretches of a closed chain, each from left to right; straight sides need no trammel.
    private static IEnumerable<Chain> Stretches(Chain edge)
    {
        var middle = (edge.Box.Bottom + edge.Box.Top) / 2;
        foreach (var isUpper in new[] { true, false })
        {
            int[] arcs = [.. Enumerable.Range(0, edge.Segments.Count).Where(i => edge.Segments[i] is ArcSegment arc && arc.PointAt(arc.Length / 2).Y > middle == isUpper)];
            if (arcs.Length == 0)
                continue;
            var stretch = new Chain(edge.Segments.Take(new Range(arcs[0], arcs[^1] + 1)), isClosed: false);
            yield return stretch.Start.X > stretch.End.X ? stretch.Reversed() : stretch;
        }
    }

    // Radii from the centres that lie within reach; of the others the ends, which point to their centre.
    private PaperBox Construct(IReadOnlyList<TrammelPoint> trammel, PaperBox reach)
    {
        var all = new PaperBox(0, 0, 0, 0);
        for (var i = 0; i < trammel.Count; i++)
        {
            var at = At(trammel[i].Place);
            if (trammel[i].Mark != TrammelMark.Centre)
            {
                NameMark(at, MarkName(trammel, i), new(1.9, isTurnedOver ? -1.4 : 3.4));
                continue;
            }

            var isDrawn = IsDrawn(trammel[i], reach);
            if (isDrawn)
            {
                Outline circle = new(at + new PaperPoint(1, 0), [new ArcTo(at - new PaperPoint(1, 0), at, true), new ArcTo(at + new PaperPoint(1, 0), at, true)], true);
                marks.Add(new Shape(circle, LineStyle.Dimension));
                centres.Add(new(at.X - 2, at.Y - 2, 6, 6));
                foreach (var step in new[] { new PaperPoint(2, 0), new PaperPoint(0, 2) })
                    marks.Add(new Shape(Outline.Line(at - step, at + step), LineStyle.Dimension));
                NameMark(at, MarkName(trammel, i), new(1.4, 3.4));
                all = all.With(new(at.X - 3, at.Y - 3, 6, 8));
            }

            foreach (var end in new[] { At(trammel[i - 1].Place), At(trammel[i + 1].Place) })
            {
                var share = isDrawn ? 1 : Math.Min(1, ShortRadius / end.DistanceTo(at));
                var tip = end + (at - end) * share;
                nodes.Add(new Shape(Outline.Line(end, tip), LineStyle.Dimension));
                construction.Add((end, tip));
            }
        }

        return all;
    }

    private bool IsDrawn(TrammelPoint centre, PaperBox reach) => At(centre.Place) is var at && reach.Holds(new(at.X, at.Y, 0, 0));

    // Letters for places on the curve, numbers for centres, in the order of the table.
    private static string MarkName(IReadOnlyList<TrammelPoint> trammel, int index)
    {
        var isCentre = trammel[index].Mark == TrammelMark.Centre;
        var before = trammel.Take(index).Count(point => point.Mark == TrammelMark.Centre == isCentre);
        return isCentre ? FormattableString.Invariant($"{before + 1}") : Tiling.Letters(before);
    }

    private void NameMark(PaperPoint at, string name, PaperPoint beside) =>
        marks.Add(new Lettering(at + beside, Typesetter.Set(name, TextStyle.Small.Bold)));

    private void Table(IReadOnlyList<TrammelPoint> trammel, PaperBox reach, PaperBox drawn, PaperBox? inside = null, double below = 0)
    {
        var rows = trammel.Select((point, i) => new Row(
        [
            MarkName(trammel, i), What(point, reach), Sideways(point.Place.X), Rounded(point.Place.Y), point.RadiusInches is { } radius ? Rounded(radius) : "",
        ]));
        // Half as wide as what is drawn, so that the table stands beside the centre line.
        var width = Math.Clamp((inside ?? drawn).Width / 2 - AroundText, LeastTable, TableWidth);
        List<Strip> strips =
        [
            new(6, [new Lettering(new(0, 4), Typesetter.Set($"With a trammel, in {words.Unit} from the middle of the spring line:", TextStyle.Small.Bold))]),
            .. Packets.Table.Of(["mark", "what", Column.Figure("across"), Column.Figure("off spring line"), Column.Figure("radius")], rows, width, MostTable),
        ];
        var height = strips.Sum(strip => strip.SpaceBefore + strip.Height);
        width = Drafting.BoundsOf(strips.SelectMany(strip => strip.Nodes))!.Value.Right;
        var corner = Corner(drawn, new(0, 0, width, height), inside, below);
        texts.Add(new Shape(Outline.Box(new PaperBox(corner.X, corner.Y, width, height).Grown(0.6)), null, Tone.Paper));
        foreach (var strip in strips)
        {
            corner += new PaperPoint(0, strip.SpaceBefore);
            texts.Add(new SceneGroup(null, null, strip.Nodes) { At = corner });
            corner += new PaperPoint(0, strip.Height);
        }
    }

    // Within the part below its text, or right beside the spring line where no radius runs, or beyond everything drawn.
    private PaperPoint Corner(PaperBox drawn, PaperBox table, PaperBox? inside, double below)
    {
        const double Air = 6;
        if (inside is { } room)
        {
            return below + Air + table.Height <= room.Bottom
                ? new(room.Left, below + Air) : new(drawn.Left, drawn.Bottom + BesidePart + BeyondPart + Air);
        }

        var near = isTurnedOver ? -BeyondPart - Air - table.Height : BeyondPart + Air;
        foreach (var left in new[] { drawn.Left, drawn.Right - table.Width })
        {
            var place = table.Shifted(left, near);
            if ((place.Right < -2 || place.Left > 2) && !construction.Exists(line => Meets(place.Grown(2), line.From, line.To)))
                return place.TopLeft;
        }

        return new(drawn.Left, isTurnedOver ? drawn.Top - BeyondPart - Air - table.Height : drawn.Bottom + BeyondPart + Air);
    }

    // Cuts the line off at each side of the box in turn (Liang and Barsky).
    private static bool Meets(PaperBox box, PaperPoint from, PaperPoint to)
    {
        var (first, last) = (0.0, 1.0);
        var step = to - from;
        foreach (var (inward, room) in new[]
        {
            (step.X, from.X - box.Left), (-step.X, box.Right - from.X), (step.Y, from.Y - box.Top), (-step.Y, box.Bottom - from.Y),
        })
        {
            if (inward == 0 && room < 0)
                return false;
            if (inward > 0)
                first = Math.Max(first, -room / inward);
            else if (inward < 0)
                last = Math.Min(last, -room / inward);
        }

        return first <= last;
    }

    private string What(TrammelPoint point, PaperBox reach) => point.Mark switch
    {
        TrammelMark.End => "end of the curve",
        TrammelMark.Tangent => "tangent point",
        TrammelMark.Corner => "corner",
        _ => IsDrawn(point, reach) ? "centre" : $"centre, off the pattern: {Rounded(point.Place.Length)} from the middle",
    };

    private string Sideways(double inches) => Rounded(Math.Abs(inches)) is var size && size is "0" or "≈0" ? "0" : $"{(inches < 0 ? "left" : "right")} {Rounded(Math.Abs(inches))}";

    private string Rounded(double inches)
    {
        var fine = facts.Format.Unit == LengthUnit.Inch ? new LengthFormat(LengthUnit.Inch, 64) : facts.Format;
        // The curves are known to 1e-9 in, so that a figure closer than that to a step is that step.
        var step = Length.FromInches(new Fraction(1, 1_000_000_000));
        return fine.Print(Length.FromInches(Fraction.FromDouble(inches)).OnStep(step, StepDirection.Nearest));
    }
}
