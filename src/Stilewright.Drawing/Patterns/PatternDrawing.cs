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
    private const double BeyondPart = 5;
    private const double AroundText = 4;
    private const double BlockAir = 6;
    private const double MillimetresPerInch = 25.4;
    // Places closer than this are one, in inches.
    private const double CurveTolerance = 1e-6;
    private const double MostLabel = 110;
    private const double LeastTable = 80;
    private const double TableWidth = 165;
    private const double MostTable = 10_000;
    private const double ShortRadius = 12;
    // How far off the part its centres are still drawn, in millimetres.
    private const double CentresWithin = 70;
    // Below the curves of a panel that is cut off, for its label; and what is not worth cutting off.
    private const double LabelRoom = 62;
    private const double LeastCutOff = 100;

    private readonly Part part;
    private readonly PatternFacts facts;
    private readonly TradeWords words;
    private readonly FineWords fine;
    private readonly CurvePoint middle;
    private readonly bool isTurnedOver;
    private readonly CurvedLines lines;
    private readonly List<SceneNode> nodes = [];
    private readonly List<PatternLine> named = [];
    private readonly List<PatternBlock> blocks = [];
    private readonly List<SetDown> setDowns = [];
    private readonly List<(PaperPoint From, PaperPoint To)> construction = [];

    // Centres and names of marks, over everything.
    private readonly List<SceneNode> marks = [];
    private readonly List<PaperBox> centres = [];

    private IReadOnlyList<SceneNode> label = [];
    private PaperBox labelBox;
    private PaperBox labelRoom;

    private PatternDrawing(Part part, PatternFacts facts, CurvePoint middle, bool isTurnedOver)
    {
        (this.part, this.facts, this.middle, this.isTurnedOver) = (part, facts, middle, isTurnedOver);
        words = new(facts.Format);
        fine = new(facts.Format);
        lines = new(At, isTurnedOver);
    }

    private ArchShape Arch => part.Arch ?? (isTurnedOver ? part.BottomArch : part.TopArch) ?? throw new InvalidOperationException($"{part.Path} has no arch.");

    /// <param name="guide">The line that a bearing follows; null where the pattern is the sight line itself.</param>
    public static FullSizePattern OfRail(RailCurve rail, Chain? guide, PatternFacts facts)
    {
        var drawing = new PatternDrawing(rail.Rail, facts,
            new((rail.Sight.Start.X + rail.Sight.End.X) / 2, CurveLength.Inches(rail.Spring)), rail.Spring > rail.Crown);
        return drawing.Draw(rail, guide);
    }

    /// <param name="guide">The line that a bearing follows; null where the pattern is the panel's edge itself.</param>
    /// <param name="isWhole">Whether a tall panel is drawn whole as well.</param>
    public static IEnumerable<FullSizePattern> OfPanel(PanelCurve panel, Chain? guide, PatternFacts facts, bool isWhole)
    {
        var box = panel.Light.Box;
        List<PatternDrawing> ends = [];
        if (panel.Panel.TopArch is not null)
            ends.Add(About(box.Top, isTurnedOver: false));
        if (panel.Panel.BottomArch is not null)
            ends.Add(About(box.Y, isTurnedOver: true));
        if (ends.Count == 0)
            throw new InvalidOperationException($"{panel.Panel.Path} has no arch.");
        // Each end with its curves and its label; worth it where enough straight sides are left out.
        Length[] cuts = [.. ends.Select(end => end.CutFor(panel, guide))];
        var kept = cuts.Aggregate(panel.Panel.Outline.Height - box.Height, (sum, cut) => sum + cut);
        if (isWhole || Scale.FullSize.OnPaper(panel.Panel.Outline.Height - kept) < LeastCutOff)
            return [ends[0].Draw(panel, guide, null)];
        string[] names = ends.Count == 1 ? [""] : ["upper", "lower"];
        return ends.Select((end, i) => end.Draw(panel, guide, (cuts[i], names[i])));

        PatternDrawing About(Length spring, bool isTurnedOver) => new(
            panel.Panel, facts, new(CurveLength.Inches(box.X + box.Right) / 2, CurveLength.Inches(spring)), isTurnedOver);
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
        var trammels = Trammels(Arches(rail, followed));
        var hollow = Construct(trammels, reach);
        var crown = At(new(0, named.Where(line => line.Chain != outline).Max(line => line.Chain.Box.Top))).Y;
        var wood = PaperBox.Between(new(left, crown), new(right, outer)).Grown(-AroundText);
        Label(wood, isGrainUpright: false, "");
        var dimension = outer + outwards * BesidePart;
        var crosses = Overall(new(left, dimension), new(right, dimension), part.VisibleBounds.Width, $"{(Arch.OfPair is null ? "span " : "")}{words.Of(part.VisibleBounds.Width)} between the crosses");
        blocks.AddRange(trammels.Select((_, i) => Table(trammels, i, reach, hollow.With(blank).Width)));
        return Finish(trammels, part.VisibleBounds.Width, crosses, Place(hollow.With(blank)), "");
    }

    private FullSizePattern Draw(PanelCurve panel, Chain? guide, (Length Below, string End)? cut)
    {
        var edge = Local(panel.Edge);
        var followed = guide is null ? edge : Local(guide);
        Name(guide is null ? "panel edge" : "guide line", Above(followed, cut?.Below), LineStyle.Visible);
        if (guide is not null)
            Name("panel edge", Above(edge, cut?.Below), LineStyle.Edge);
        Name("sight line", Above(Local(panel.Sight), cut?.Below), LineStyle.Edge);
        if (panel.Field is { } field)
            Name("field", Above(Local(field), cut?.Below), LineStyle.Edge);

        var whole = Box(Above(edge, cut?.Below).Box);
        Axes(whole.Left - BeyondPart, whole.Right + BeyondPart, whole.Top - BeyondPart, whole.Bottom + BeyondPart);
        var far = isTurnedOver ? whole.Top : whole.Bottom;
        Register(new(0, far), new(0, isTurnedOver ? -1 : 1));
        Register(new(whole.Left, 0), new(-1, 0));
        Register(new(whole.Right, 0), new(1, 0));
        if (cut is not null)
        {
            nodes.Add(new Shape(Outline.Line(new(whole.Left - BeyondPart, far), new(whole.Right + BeyondPart, far)), LineStyle.Adjacent));
            Register(new(whole.Left, far), new(-1, 0));
            Register(new(whole.Right, far), new(1, 0));
            Distance(new(whole.Right - BesidePart, 0), new(whole.Right - BesidePart, far), cut.Value.Below);
        }

        var inner = Above(Local(panel.Field ?? panel.Sight), cut?.Below);
        var box = Box(inner.Box);
        var start = At(new(0, Straight(Local(panel.Field ?? panel.Sight)))).Y;
        var room = isTurnedOver ? PaperBox.Between(new(box.Left, box.Top), new(box.Right, start)) : PaperBox.Between(new(box.Left, start), new(box.Right, box.Bottom));
        var stretches = Stretches(followed).ToList();
        var trammels = Trammels([.. (cut is null ? stretches : stretches.Take(1)).Select(stretch => (stretch, 0.0))]);
        var reach = whole.With(new(whole.Left, whole.Top - CentresWithin, whole.Width, whole.Height + 2 * CentresWithin));
        var hollow = Construct(trammels, reach);
        Label(room.Grown(-2 * AroundText), part.Grain != GrainDirection.Horizontal, cut is { } at ? CutWords(panel.Light.Box, at.Below) : "");
        var isLevel = cut is not null || whole.Height <= whole.Width;
        var level = isTurnedOver && cut is not null ? whole.Top - BesidePart : whole.Bottom + BesidePart;
        PaperPoint[] ends = isLevel ? [new(whole.Left, level), new(whole.Right, level)]
            : [new(whole.Left - BesidePart, whole.Bottom), new(whole.Left - BesidePart, whole.Top)];
        var overall = isLevel ? part.Outline.Width : part.Outline.Height;
        var crosses = Overall(ends[0], ends[1], overall, $"{words.Of(overall)} between the crosses");
        blocks.AddRange(trammels.Select((_, i) => Table(trammels, i, reach, box.Width)));
        blocks.AddRange(SetDowns(panel, cut is not null));
        var drawn = whole.With(hollow);
        return Finish(trammels, overall, crosses,
            cut is null && blocks.Count > 0 && labelBox.Bottom + BlockAir + blocks[0].Height <= room.Bottom && blocks[0].Width <= room.Width
                ? new(room.Left + AroundText, labelBox.Bottom + BlockAir) : Beyond(drawn), cut?.End ?? "") with
        { CutBelow = cut?.Below };
    }

    // So far below the spring line that curves and label stand above it, in whole inches or by 25 mm.
    private Length CutFor(PanelCurve panel, Chain? guide)
    {
        var straight = new[] { panel.Edge, panel.Sight, panel.Field, guide }.OfType<Chain>().Min(chain => Straight(Local(chain)));
        var step = facts.Format.Unit == LengthUnit.Inch ? Length.FromInches(1) : Length.FromMillimetres(25);
        return CurveLength.ToLength(LabelRoom / MillimetresPerInch - straight, StepDirection.Up).OnStep(step, StepDirection.Up);
    }

    private string CutWords(Rectangle light, Length below)
    {
        var (whole, piece) = (part.Outline, part.Kind == PartKind.Glass ? "pane" : "panel");
        var beyond = (isTurnedOver ? whole.Top - light.Y : light.Top - whole.Y) - below;
        var rest = part.TopArch is not null && part.BottomArch is not null
            ? $". The whole {piece} is {words.Of(whole.Height)} high, {words.Of(light.Height)} from spring line to spring line."
            : $"; {words.Of(beyond)} of the {piece} lie beyond it. The whole {piece} is {words.Of(whole.Height)} high.";
        return $"Ends at a line squared across, {words.Of(below)} from the spring line{rest}";
    }

    // The part of a closed line above the cut, open and from right to left; the cut lies where it is straight.
    private static Chain Above(Chain line, Length? below)
    {
        if (below is not { } cut)
            return line;
        var crossings = line.CrossingsWithLine(new(0, -CurveLength.Inches(cut)), new(1, 0));
        var (first, last) = (crossings[0].OnFirst, crossings[^1].OnFirst);
        var between = line.Part(first, last);
        if (between.Box.Top > -CurveLength.Inches(cut) + CurveTolerance)
            return between;
        List<CurveSegment> around = [];
        if (last < line.Length - CurveTolerance)
            around.AddRange(line.Part(last, line.Length).Segments);
        if (first > CurveTolerance)
            around.AddRange(line.Part(0, first).Segments);
        return new(around, isClosed: false);
    }

    private IEnumerable<PatternBlock> SetDowns(PanelCurve panel, bool isOneEnd)
    {
        if (facts.OnePattern is not { } shop || part.Kind != PartKind.Panel)
            yield break;
        var (seen, whole, light) = (part.VisibleBounds, part.Outline, panel.Light.Arched);
        foreach (var isTop in new[] { true, false })
        {
            if ((isTop ? part.TopArch : part.BottomArch) is not { } shape || isOneEnd && isTop == isTurnedOver)
                continue;
            var engagement = isTop ? whole.Top - seen.Top : seen.Y - whole.Y;
            var arch = isTop ? light.Top : light.Bottom?.TurnedOver();
            var hard = shop.Rack.Where(each => each.Family == shape.Family && each.Fits(CurveLength.Inches(shape.Span.Length))).MinBy(each => each.GreatestSpan);
            if (arch is null || !engagement.IsPositive || engagement > shop.GrooveDepth || shop.Step >= shop.GrooveDepth
                || !arch.Chain.Segments.Any(segment => segment is ArcSegment) || hard is null && !shop.IsAsked)
            {
                continue;
            }

            // One arch over several lights, or over a pair, is not the whole of the pattern's curve: the panel's stretch of the drawn one counts.
            var isWhole = Math.Abs(arch.Chain.Box.Width - CurveLength.Inches(shape.Span.Length)) < CurveTolerance;
            var name = hard is null ? "The rail's own pattern" : $"Pattern {hard.Name} of the rack";
            if (hard is not null && isWhole && hard.CurveFor(CurveLength.Inches(shape.Span.Length)) is ArchResult.Drawn(var curve))
            {
                if (Math.Abs(curve.Chain.Box.Top - arch.Chain.Box.Top) > CurveTolerance)
                    name += $" (here it rises {fine.Of(curve.Chain.Box.Top)}, and the drawn curve {fine.Of(arch.Chain.Box.Top)})";
                arch = curve;
            }

            var isBoth = part.TopArch is not null && part.BottomArch is not null;
            var figure = new SetDownFigure(arch, shop, engagement, isBoth ? isTop ? "upper" : "lower" : "", name, facts.Format);
            setDowns.Add(figure.Found);
            // From the straight end to the spring line of the sight line.
            var straight = isTop ? panel.Light.Box.Top - whole.Y : whole.Top - panel.Light.Box.Y;
            yield return figure.Draw(isBoth ? null : straight);
        }
    }

    // Below this a closed line is straight from side to side down to its other end.
    private static double Straight(Chain line)
    {
        var middle = (line.Box.Bottom + line.Box.Top) / 2;
        return line.Segments.OfType<ArcSegment>().Where(arc => arc.PointAt(arc.Length / 2).Y > middle).Select(arc => arc.Box.Bottom).Append(0).Min();
    }

    private FullSizePattern Finish(
        IReadOnlyList<TrammelTable> trammels, Length overall, (PaperPoint From, PaperPoint To) crosses, PaperPoint firstBlock, string end)
    {
        var kind = facts.Guide is null ? "pattern" : "pattern for a bearing";
        var name = $"{part.Label} {part.Name}{(end.Length > 0 ? $", {end} end" : "")}";
        PatternLayers layers = new($"{name}: {kind}", $"Full-size {kind} of {name}, seen from the front: {Shape()}.", part.Path,
            nodes, label, labelBox, labelRoom, marks, blocks);
        var scene = layers.Scene(Placed(firstBlock));
        var origin = ((SceneGroup)scene.Nodes[0]).At;
        return new(scene, part, named, trammels, overall, (crosses.From + origin, crosses.To + origin))
        {
            SpringMiddle = origin,
            Name = name,
            IsTurnedOver = isTurnedOver,
            SetDowns = setDowns,
            Layers = layers,
        };
    }

    // The first where it was found room for, the others below everything.
    private IEnumerable<SceneNode> Placed(PaperPoint first)
    {
        var all = Drafting.BoundsOf([.. nodes, .. label, .. marks])!.Value;
        for (var i = 0; i < blocks.Count; i++)
        {
            var corner = i == 0 ? first : new(all.Left + BeyondPart, all.Bottom + BlockAir);
            yield return new Shape(Outline.Box(new PaperBox(corner.X, corner.Y, blocks[i].Width, blocks[i].Height).Grown(0.6)), null, Tone.Paper);
            yield return blocks[i].At(corner);
            all = all.With(new(corner.X, corner.Y, blocks[i].Width, blocks[i].Height));
        }
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
        var inLeaf = arch.OfPair is null ? "" : $"; in this leaf rise {words.Of(arch.Rise)} over {words.Of(arch.SpanInLeaf)}";
        return $"{TradeWords.Words(arch.Family)}{(arch.OfPair is null ? "" : " across the pair")}, span {words.Of(arch.Span)}, rise {words.Of(arch.WholeRise)}{shoulder}{inLeaf}, in {words.Unit}";
    }

    // Beside the centre line, the label as large as there is room, and the grain on the other side.
    private void Label(PaperBox wood, bool isGrainUpright, string more)
    {
        double[] sizes = [12, 9, 7, 5, 3.5];
        var half = new PaperBox(wood.Left, wood.Top, Math.Max(0, -wood.Left - AroundText), wood.Height);
        List<SetLine> set = [];
        foreach (var size in sizes)
        {
            set = [Typesetter.Set(part.Label, new(size, Weight.Strong))];
            foreach (var (text, style) in Notes(more))
                set.AddRange(Typesetter.Wrap(text, style, Math.Clamp(half.Width, 40, MostLabel)));
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

        (labelBox, labelRoom) = (new(half.Left, top, width, height), wood);
        List<SceneNode> texts = [new Shape(Outline.Box(labelBox.Grown(0.6)), null, Tone.Paper)];
        foreach (var line in set)
        {
            texts.Add(new Lettering(new(half.Left, top + line.Ascent), line));
            top += line.Pitch;
        }

        label = texts;

        if (part.Grain is not null)
        {
            var other = new PaperBox(AroundText, wood.Top, Math.Max(0, wood.Right - AroundText), Math.Min(wood.Height, 60));
            nodes.AddRange(Drafting.GrainArrow(other, new(other.Centre.X, other.Centre.Y, 0, 0), isGrainUpright));
        }
    }

    private IEnumerable<(string Text, TextStyle Style)> Notes(string more)
    {
        yield return ($"{part.Name}, {Shape()}", TextStyle.Body);
        if (facts.Guide is { } guide)
        {
            yield return ($"Guides a bearing of radius {words.Of(guide.BearingRadius)} with a cutter of radius {words.Of(guide.CutterRadius)}: the wide line lies {words.Of(Length.Abs(guide.Inward))} "
                + $"{(guide.Inward.IsNegative ? "outside of" : "inside")} the edge it leaves.", TextStyle.Body);
        }

        if (more.Length > 0)
            yield return (more, TextStyle.Body);
        if (Arch.OfPair is { } pair)
            yield return (pair.IsMirrored ? "Turned over, it serves the other leaf of the pair." : "The other leaf of the pair needs a pattern of its own.", TextStyle.Body);
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
        // Near the first cross, so that no seam between sheets cuts it.
        var lettering = isLevel
            ? new Lettering(new(from.X + CrossReach + 2, from.Y - set.Descent - 0.6), set)
            : new Lettering(new(from.X - set.Descent - 0.6, from.Y - CrossReach - 2), set, IsUpright: false);
        nodes.Add(new DimensionMark(value, Scale.FullSize, from, to, strokes, lettering) { Path = part.Path });
        return (from, to);
    }

    // From the spring line to the cut: upright, with the figure reading from below.
    private void Distance(PaperPoint from, PaperPoint to, Length value)
    {
        List<Outline> strokes = [Outline.Line(from, to)];
        strokes.AddRange(new[] { from, to }.Select(end => Outline.Line(end + new PaperPoint(-1.2, 1.2), end + new PaperPoint(1.2, -1.2))));
        var set = Typesetter.Set(words.Of(value), TextStyle.Figure);
        var lettering = new Lettering(new(from.X - set.Descent - 0.6, (from.Y + to.Y + set.Width) / 2), set, IsUpright: false);
        nodes.Add(new DimensionMark(value, Scale.FullSize, from, to, strokes, lettering) { Path = part.Path });
    }

    // Every arch of a rail with the place of its middle; one that runs over several lights is one.
    private IReadOnlyList<(Chain Curve, double Middle)> Arches(RailCurve rail, Chain followed)
    {
        if (rail.Rail.Arch!.Repeats <= 1)
            return [(followed, 0)];
        List<(Chain, double)> found = [];
        var half = CurveLength.Inches(rail.Rail.Arch.Span.Length) / 2;
        var arches = rail.Arches.Select(arch => Local(arch.Chain)).ToList();
        var from = 0.0;
        for (var i = 0; i < arches.Count; i++)
        {
            // Cut over the middle of the mid stiles, and the straight parts over them left out.
            var to = i + 1 == arches.Count ? followed.Length
                : followed.CrossingsWithLine(new((arches[i].End.X + arches[i + 1].Start.X) / 2, 0), new(0, 1))[0].OnFirst;
            var middle = (arches[i].Start.X + arches[i].End.X) / 2;
            var piece = followed.Part(from, to);
            var trimmed = TrimStart(TrimStart(piece, middle - half).Mirrored(middle).Reversed(), middle - half).Mirrored(middle).Reversed();
            found.Add((trimmed.Translated(new(-middle, 0)), middle));
            from = to;
        }

        return found;
    }

    private static Chain TrimStart(Chain chain, double x)
    {
        if (chain.Segments[0] is not LineSegment first || chain.Segments.Count == 1 || first.Start.Y != first.End.Y || first.Start.X >= x)
            return chain;
        return first.End.X <= x + CurveTolerance ? new(chain.Segments.Skip(1), isClosed: false)
            : new([new LineSegment(first.Start with { X = x }, first.End), .. chain.Segments.Skip(1)], isClosed: false);
    }

    // One table for every distinct curve.
    private static IReadOnlyList<TrammelTable> Trammels(IReadOnlyList<(Chain Curve, double Middle)> curves)
    {
        List<TrammelTable> tables = [];
        foreach (var (curve, middle) in curves)
        {
            var points = new ArchCurve(curve, []).Trammel();
            var same = tables.FindIndex(table => table.Points.Count == points.Count && table.Points.Zip(points).All(pair =>
                pair.First.Mark == pair.Second.Mark && pair.First.Place.DistanceTo(pair.Second.Place) < CurveTolerance));
            // Curves about the same middle are two ends of one panel, not one arch twice.
            if (same < 0 || tables[same].Middles.Contains(middle))
                tables.Add(new(points, [middle]));
            else
                tables[same] = tables[same] with { Middles = [.. tables[same].Middles, middle] };
        }

        return tables;
    }

    // The curved stretches of a closed chain, each from left to right; sides need no trammel.
    private static IEnumerable<Chain> Stretches(Chain edge)
    {
        var box = edge.Box;
        var middle = (box.Bottom + box.Top) / 2;
        bool IsSide(CurveSegment segment) => segment is LineSegment && Math.Abs(segment.Start.X - segment.End.X) < CurveTolerance
            && (segment.Start.X < box.Left + CurveTolerance || segment.Start.X > box.Right - CurveTolerance);
        foreach (var isUpper in new[] { true, false })
        {
            int[] arcs = [.. Enumerable.Range(0, edge.Segments.Count).Where(i => edge.Segments[i] is ArcSegment arc && arc.PointAt(arc.Length / 2).Y > middle == isUpper)];
            if (arcs.Length == 0)
                continue;
            // With shoulders and steps beside the arcs, as far as the panel's sides.
            var (first, last) = (arcs[0], arcs[^1]);
            while (first > 0 && !IsSide(edge.Segments[first - 1]))
                first--;
            while (last + 1 < edge.Segments.Count && !IsSide(edge.Segments[last + 1]))
                last++;
            var stretch = new Chain(edge.Segments.Take(new Range(first, last + 1)), isClosed: false);
            yield return stretch.Start.X > stretch.End.X ? stretch.Reversed() : stretch;
        }
    }

    // Radii from the centres that lie within reach; of the others the ends, which point to their centre.
    private PaperBox Construct(IReadOnlyList<TrammelTable> tables, PaperBox reach)
    {
        var all = new PaperBox(0, 0, 0, 0);
        for (var table = 0; table < tables.Count; table++)
        {
            foreach (var middle in tables[table].Middles)
            {
                if (middle != 0)
                    nodes.Add(new Shape(Outline.Line(At(new(middle, tables[table].Points.Max(point => point.Mark == TrammelMark.Centre ? 0 : point.Place.Y) + 0.5)), At(new(middle, -0.25))), LineStyle.Centre));
                for (var i = 0; i < tables[table].Points.Count; i++)
                    all = all.With(Construct(tables, table, i, middle, reach));
            }
        }

        return all;
    }

    private PaperBox Construct(IReadOnlyList<TrammelTable> tables, int table, int index, double middle, PaperBox reach)
    {
        var points = tables[table].Points;
        var at = PlaceAt(points[index], middle);
        if (points[index].Mark != TrammelMark.Centre)
        {
            NameMark(at, TrammelWords.NameOf(tables, table, index), new(1.9, isTurnedOver ? -1.4 : 3.4));
            return new(0, 0, 0, 0);
        }

        var isDrawn = reach.Holds(new(at.X, at.Y, 0, 0));
        if (isDrawn)
        {
            Outline circle = new(at + new PaperPoint(1, 0), [new ArcTo(at - new PaperPoint(1, 0), at, true), new ArcTo(at + new PaperPoint(1, 0), at, true)], true);
            marks.Add(new Shape(circle, LineStyle.Dimension));
            centres.Add(new(at.X - 2, at.Y - 2, 6, 6));
            foreach (var step in new[] { new PaperPoint(2, 0), new PaperPoint(0, 2) })
                marks.Add(new Shape(Outline.Line(at - step, at + step), LineStyle.Dimension));
            NameMark(at, TrammelWords.NameOf(tables, table, index), new(1.4, 3.4));
        }

        foreach (var end in new[] { PlaceAt(points[index - 1], middle), PlaceAt(points[index + 1], middle) })
        {
            var share = isDrawn ? 1 : Math.Min(1, ShortRadius / end.DistanceTo(at));
            var tip = end + (at - end) * share;
            nodes.Add(new Shape(Outline.Line(end, tip), LineStyle.Dimension));
            construction.Add((end, tip));
        }

        return isDrawn ? new(at.X - 3, at.Y - 3, 6, 8) : new(0, 0, 0, 0);
    }

    private PaperPoint PlaceAt(TrammelPoint point, double middle) => At(point.Place + new CurvePoint(middle, 0));

    private void NameMark(PaperPoint at, string name, PaperPoint beside) =>
        marks.Add(new Lettering(at + beside, Typesetter.Set(name, TextStyle.Small.Bold)));

    private PatternBlock Table(IReadOnlyList<TrammelTable> tables, int table, PaperBox reach, double drawnWidth)
    {
        var (points, middles) = (tables[table].Points, tables[table].Middles);
        var rows = points.Select((point, i) => new Row(
        [
            TrammelWords.NameOf(tables, table, i), What(point, middles, reach), fine.Sideways(point.Place.X), fine.Of(point.Place.Y),
            point.RadiusInches is { } radius ? fine.Of(radius) : "",
        ]));
        // Half as wide as what is drawn, so that the table stands beside the centre line.
        var width = Math.Clamp(drawnWidth / 2 - AroundText, LeastTable, TableWidth);
        var heading = middles is [0]
            ? $"With a trammel, in {words.Unit} from the middle of the spring line:"
            : $"With a trammel, in {words.Unit} from the middle of each arch, which lies {string.Join(" and ", middles.Select(fine.Sideways))} of the centre line:";
        var top = 0.0;
        List<SceneNode> all = [];
        foreach (var line in Typesetter.Wrap(heading, TextStyle.Small.Bold, width))
        {
            all.Add(Strip.Put(line, 0, top));
            top += line.Pitch;
        }

        foreach (var strip in Packets.Table.Of(["mark", "what", Column.Figure("across"), Column.Figure("off spring line"), Column.Figure("radius")], rows, width, MostTable))
        {
            top += strip.SpaceBefore;
            all.Add(new SceneGroup(null, null, strip.Nodes) { At = new(0, top) });
            top += strip.Height;
        }

        return new(Drafting.BoundsOf(all)!.Value.Right, top, all);
    }

    // For a rail's first table: right beside the spring line where no radius runs, or beyond everything drawn.
    private PaperPoint Place(PaperBox drawn)
    {
        var table = new PaperBox(0, 0, blocks[0].Width, blocks[0].Height);
        var near = isTurnedOver ? -BeyondPart - BlockAir - table.Height : BeyondPart + BlockAir;
        foreach (var left in new[] { drawn.Left, drawn.Right - table.Width })
        {
            var place = table.Shifted(left, near);
            if ((place.Right < -2 || place.Left > 2) && !construction.Exists(line => Meets(place.Grown(2), line.From, line.To)))
                return place.TopLeft;
        }

        return isTurnedOver ? new(drawn.Left, drawn.Top - BeyondPart - BlockAir - table.Height) : Beyond(drawn);
    }

    private PaperPoint Beyond(PaperBox drawn) =>
        new(drawn.Left, Math.Max(drawn.Bottom, Drafting.BoundsOf([.. nodes, .. label, .. marks])!.Value.Bottom) + BlockAir);

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

    private string What(TrammelPoint point, IReadOnlyList<double> middles, PaperBox reach) => point.Mark switch
    {
        TrammelMark.Centre when !middles.All(middle => PlaceAt(point, middle) is var at && reach.Holds(new(at.X, at.Y, 0, 0))) =>
            $"centre, off the pattern: {fine.Of(point.Place.Length)} from the middle",
        _ => TrammelWords.Of(point.Mark),
    };
}
