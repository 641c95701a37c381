using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Drawing.Figures;

/// <summary>Draws one view of one leaf.</summary>
internal sealed class LeafDrawing
{
    private const double InsideMember = 0.35;
    private const double NoteAir = 2;
    // Labels stand off the middle of an edge where hand lines may meet.
    private const double OffMiddle = 0.3;
    // Parallel lines nearer than this run together in print (ISO 128-2: 0.7 mm).
    private const double LeastBetweenLines = 0.7;
    // A hidden edge this near to a visible one is covered by it.
    private const double Covered = 0.3;

    private readonly SizedLeaf leaf;
    private readonly LeafDetail detail;
    private readonly Scale scale;
    private readonly LengthFormat format;
    private readonly bool isBack;
    private readonly LightGrid? grid;
    private readonly LeafCurves curves;
    private readonly CurvedLines lines;
    private readonly PaperBox figure;
    private readonly Callouts callouts;

    public LeafDrawing(SizedLeaf leaf, LeafDetail detail, Scale scale, LengthFormat format, bool isBack)
    {
        this.leaf = leaf;
        this.detail = detail;
        this.scale = scale;
        this.format = format;
        this.isBack = isBack;
        grid = LightGrid.Of(leaf);
        curves = LeafCurves.Of(leaf, detail.Cutters);
        lines = new(At, isMirrored: isBack);
        figure = Box(new(default, default, leaf.Width.Length, leaf.Height.Length));
        callouts = new(figure);
    }

    public Scene Draw(Func<DimensionRow, DimensionRow>? change = null)
    {
        List<SceneNode> nodes = [.. Hand(), .. Moulding(), .. Rabbets()];
        // A part follows those whose tongues and tenons lie in it, so that its label stands over their lines.
        foreach (var part in leaf.Parts.OrderBy(part => part.Kind switch { PartKind.MidStile => 1, PartKind.Rail or PartKind.MidRail => 2, PartKind.Stile => 3, _ => 0 }))
            nodes.Add(new SceneGroup(part.Path, part.Name, DrawPart(part)));
        nodes.Add(new Shape(Outline.Box(figure), LineStyle.Visible));
        List<string> notes = [];
        if (leaf.Parts.Count == 0)
        {
            const string Withheld = "cannot be built";
            var room = figure.Grown(-1);
            if ((Drafting.Label(Withheld, room, figure.Centre) ?? Drafting.Label(Withheld, room, figure.Centre, isUpright: false)) is { } label)
                nodes.AddRange(label.Nodes);
            else
                notes.Add(Withheld);
        }

        if (Tapered.Any())
            notes.Add(TaperWords());

        var bounds = callouts.Place();
        foreach (var text in AboveAll(notes, bounds))
        {
            nodes.Add(text);
            bounds = bounds.With(text.Box);
        }

        nodes.AddRange(new DimensionPlacer(scale, format, TextStyle.Figure).Place(figure, change is null ? Rows() : [.. Rows().Select(change)], bounds).Marks);
        return Drafting.Scene($"{leaf.Label} {leaf.Name}, seen from the {(isBack ? "back" : "front")}", Describe(), scale, leaf.Path, nodes);
    }

    private double X(Length x) => scale.OnPaper(isBack ? leaf.Width.Length - x : x);

    private double Y(Length y) => scale.OnPaper(leaf.Height.Length - y);

    private PaperPoint At(Length x, Length y) => new(X(x), Y(y));

    private PaperPoint At(CurvePoint point) => new(
        scale.InchesOnPaper(isBack ? CurveLength.Inches(leaf.Width.Length) - point.X : point.X),
        scale.InchesOnPaper(CurveLength.Inches(leaf.Height.Length) - point.Y));

    private PaperBox Box(Rectangle rectangle) => PaperBox.Between(At(rectangle.X, rectangle.Y), At(rectangle.Right, rectangle.Top));

    private IEnumerable<SceneNode> Hand() => View.Hand(figure, (leaf.IsDrawerFront, leaf.Hinge) switch
    {
        (true, _) => HingeSide.None,
        (_, HingeSide.Left) when isBack => HingeSide.Right,
        (_, HingeSide.Right) when isBack => HingeSide.Left,
        var (_, hinge) => hinge,
    });

    private IEnumerable<SceneNode> Moulding()
    {
        if (isBack || grid is null || detail.Cutters is not { } cutters || cutters.StickingWidth.Value.IsZero)
            yield break;
        var width = scale.OnPaper(cutters.StickingWidth.Value);
        if (width < LeastBetweenLines)
            yield break;
        var inches = CurveLength.Inches(cutters.StickingWidth.Value);
        foreach (var light in curves.Lights)
        {
            var edge = light.Outward(inches);
            if (!figure.Holds(lines.Of(edge).Bounds))
                continue;
            yield return new Shape(lines.Of(edge), LineStyle.Edge);
            foreach (var mitre in lines.Mitres(light.Sight, edge))
                yield return mitre;
        }

        foreach (var light in grid.Lights.Where(light => !curves.Lights.Any(curved => curved.Box.X == light.X && curved.Box.Y < light.Top && curved.Box.Top > light.Y)))
        {
            var seen = Box(light);
            var edge = seen.Grown(width);
            if (!figure.Holds(edge))
                continue;
            yield return new Shape(Outline.Box(edge), LineStyle.Edge);
            foreach (var mitre in Drafting.Mitres(edge, seen))
                yield return mitre;
        }
    }

    private List<SceneNode> DrawPart(Part part)
    {
        List<SceneNode> nodes = [];
        var filling = curves.Filling(part);
        var seen = Box(filling?.Light.Box ?? (part.Kind == PartKind.MidStile ? curves.SeenOf(part) : part.VisibleBounds));
        var whole = Box(part.Outline);
        var showsEdge = ShowsInGroove(Box(part.VisibleBounds), whole);
        switch (part.Kind)
        {
            case PartKind.Panel when filling is not null:
                if (showsEdge)
                    nodes.Add(new Shape(lines.Of(filling.Edge), LineStyle.Hidden));
                if (!isBack && filling.Field is { } field)
                {
                    nodes.Add(new Shape(lines.Of(field), LineStyle.Edge));
                    nodes.AddRange(lines.Mitres(field, filling.Edge, filling.Sight));
                }

                break;
            case PartKind.Panel:
                if (showsEdge)
                    nodes.Add(new Shape(Outline.Box(whole), LineStyle.Hidden));
                if (!isBack && part.Work.Contains(EdgeWork.RaiseFourEdges) && detail.Cutters?.RaiseWidth is { } raise)
                    nodes.AddRange(Drafting.Raise(whole, seen, scale.OnPaper(raise.Value)));
                break;
            case PartKind.Glass:
                nodes.AddRange(Drafting.Sheen(seen));
                if (showsEdge)
                    nodes.Add(new Shape(filling is null ? Outline.Box(whole) : lines.Of(filling.Edge), LineStyle.Hidden));
                if (isBack && filling is not null && detail.Cutters is { } set)
                {
                    var stop = filling.Light.Outward(CurveLength.Inches(set.GrooveDepth.Value));
                    nodes.Add(new Shape(lines.Of(stop), LineStyle.Visible));
                    nodes.AddRange(lines.Mitres(filling.Sight, stop));
                }
                else if (isBack && detail.Cutters is { } cutters && seen.Grown(scale.OnPaper(cutters.GrooveDepth.Value)) is var stops && figure.Holds(stops))
                {
                    nodes.Add(new Shape(Outline.Box(stops), LineStyle.Visible));
                    nodes.AddRange(Drafting.Mitres(stops, seen));
                }

                break;
            case not PartKind.Slab:
                nodes.Add(new Shape(
                    curves.Of(part) is { } curve ? lines.Of(curve.Seen)
                    : part.Kind == PartKind.MidStile ? Outline.Box(seen)
                    : Outline.Through(true, [.. part.Visible.Select(point => At(point.X, point.Y))]), LineStyle.Visible));
                nodes.AddRange(Joints(part));
                break;
        }

        Label(part, seen, nodes);
        return nodes;
    }

    // Whether a panel's edge in the groove can be told from the sight line and the moulded edge.
    private bool ShowsInGroove(PaperBox seen, PaperBox whole)
    {
        double[] reaches = [seen.Left - whole.Left, whole.Right - seen.Right, seen.Top - whole.Top, whole.Bottom - seen.Bottom];
        var moulding = isBack || detail.Cutters is not { } cutters ? 0 : scale.OnPaper(cutters.StickingWidth.Value);
        return reaches.Min() >= LeastBetweenLines && !(moulding > 0 && reaches.All(reach => Math.Abs(reach - moulding) < Covered));
    }

    // What of the part lies in others: tongues and tenons at its ends, and the shoulder where it passes the sight line.
    private IEnumerable<SceneNode> Joints(Part part)
    {
        if (part.IsMitred || part.Kind == PartKind.Stile)
            yield break;
        var (seen, whole) = (part.Kind == PartKind.MidStile ? curves.SeenOf(part) : part.VisibleBounds, part.Outline);
        if (part.StandsUpright)
        {
            if (scale.OnPaper(whole.Height - seen.Height) < 2 * LeastBetweenLines)
                yield break;
            if (whole.Top > seen.Top)
                yield return Tongue(At(whole.X, seen.Top), At(whole.X, whole.Top), At(whole.Right, whole.Top), At(whole.Right, seen.Top));
            if (whole.Y < seen.Y)
                yield return Tongue(At(whole.X, seen.Y), At(whole.X, whole.Y), At(whole.Right, whole.Y), At(whole.Right, seen.Y));
            yield break;
        }

        var showsEnds = scale.OnPaper(whole.Width - seen.Width) >= 2 * LeastBetweenLines;
        if (showsEnds && whole.X < seen.X)
            yield return Tongue(At(seen.X, whole.Y), At(whole.X, whole.Y), At(whole.X, whole.Top), At(seen.X, whole.Top));
        if (showsEnds && whole.Right > seen.Right)
            yield return Tongue(At(seen.Right, whole.Y), At(whole.Right, whole.Y), At(whole.Right, whole.Top), At(seen.Right, whole.Top));
        if (part.Shoulder is { } shoulder && scale.OnPaper(shoulder.Length - seen.Width) >= 2 * LeastBetweenLines)
        {
            var past = (shoulder.Length - seen.Width) / 2;
            yield return new Shape(Outline.Line(At(seen.X - past, whole.Y), At(seen.X - past, whole.Top)), LineStyle.Edge);
            yield return new Shape(Outline.Line(At(seen.Right + past, whole.Y), At(seen.Right + past, whole.Top)), LineStyle.Edge);
        }

        static Shape Tongue(params PaperPoint[] points) => new(Outline.Through(false, points), LineStyle.Hidden);
    }

    private void Label(Part part, PaperBox seen, List<SceneNode> nodes)
    {
        var room = BetweenMitres(part, seen).Grown(-InsideMember);
        var isUpright = !part.StandsUpright;
        var isFilling = part.Kind is PartKind.Panel or PartKind.Glass or PartKind.Slab;
        var toLeft = isBack ? 1 - OffMiddle : OffMiddle;
        PaperPoint wish = isFilling ? seen.Centre
            : part.StandsUpright ? new(seen.Centre.X, seen.Bottom - seen.Height * OffMiddle)
            : new(leaf.Hinge is HingeSide.Top or HingeSide.Bottom ? seen.Left + seen.Width * toLeft : seen.Centre.X, seen.Centre.Y);
        var label = Drafting.Label(part.ShortLabel, room, wish, isUpright)
            ?? (isFilling ? Drafting.Label(part.ShortLabel, room, wish, isUpright: false) : null);
        if (label is { } inside)
            nodes.AddRange(inside.Nodes);
        else if (part.Kind is PartKind.Rail or PartKind.MidRail)
            callouts.Beside(part.ShortLabel, seen, nodes);
        else
            callouts.Above(part.ShortLabel, seen, nodes);
        if (isFilling && part.Grain is { } grain)
        {
            nodes.AddRange(Drafting.GrainArrow(
                room, label?.Box ?? new(seen.Centre.X, seen.Centre.Y, 0, 0), grain == GrainDirection.Vertical));
        }
    }

    // What is left of a member beside the mitres of its ends; all of it where they are square.
    private PaperBox BetweenMitres(Part part, PaperBox seen)
    {
        if (part.Kind is not (PartKind.Stile or PartKind.Rail) || part.Visible.Count != 4)
            return seen;
        double[] along = [.. part.Visible.Select(corner => part.StandsUpright ? Y(corner.Y) : X(corner.X)).Order()];
        return part.StandsUpright ? new(seen.Left, along[1], seen.Width, along[2] - along[1]) : new(along[1], seen.Top, along[2] - along[1], seen.Height);
    }

    private IEnumerable<SceneNode> Rabbets()
    {
        var style = isBack ? LineStyle.Visible : LineStyle.Hidden;
        var all = detail.Rabbets.Concat(detail.Laps).ToDictionary();
        Length In(Side side) => all.GetValueOrDefault(side);
        var inner = new Rectangle(In(Side.Left), In(Side.Bottom),
            leaf.Width.Length - In(Side.Left) - In(Side.Right), leaf.Height.Length - In(Side.Bottom) - In(Side.Top));
        foreach (var side in all.Keys)
        {
            var line = side switch
            {
                Side.Left => Outline.Line(At(inner.X, inner.Y), At(inner.X, inner.Top)),
                Side.Right => Outline.Line(At(inner.Right, inner.Y), At(inner.Right, inner.Top)),
                Side.Top => Outline.Line(At(inner.X, inner.Top), At(inner.Right, inner.Top)),
                _ => Outline.Line(At(inner.X, inner.Y), At(inner.Right, inner.Y)),
            };
            yield return new Shape(line, detail.Laps.ContainsKey(side) ? LineStyle.Hidden : style);
        }
    }

    private List<DimensionRow> Rows()
    {
        List<DimensionRow> rows = [];
        var (w, h) = (leaf.Width.Length, leaf.Height.Length);
        if (isBack)
        {
            rows.AddRange(RabbetRow(Side.Left, Side.Right, w, Side.Bottom, Across));
            rows.AddRange(RabbetRow(Side.Bottom, Side.Top, h, Side.Right, Up));
        }

        if (grid is not null)
        {
            List<IReadOnlyList<Crossing>> told = [];
            foreach (var row in grid.Rows)
            {
                if (told.Any(other => other.Select(one => (one.From, one.To)).SequenceEqual(row.Members.Select(one => (one.From, one.To)))))
                    continue;
                told.Add(row.Members);
                rows.Add(new(Side.Bottom, Chain(row.Members, Across)));
            }

            rows.Add(new(Side.Right, Chain(grid.Rails, Up)));
        }

        rows.Add(new(Side.Bottom, [Across(default, w, leaf.Path)]));
        rows.Add(new(Side.Right, [Up(default, h, leaf.Path)]));
        return rows;

        Span Across(Length from, Length to, string? path) => new(X(from), X(to), to - from) { Path = path };
        Span Up(Length from, Length to, string? path) => new(Y(from), Y(to), to - from) { Path = path };
    }

    private IEnumerable<DimensionRow> RabbetRow(Side low, Side high, Length whole, Side at, Func<Length, Length, string?, Span> span)
    {
        List<Span> spans = [];
        if (detail.Rabbets.TryGetValue(low, out var first))
            spans.Add(span(default, first, leaf.Path));
        if (detail.Rabbets.TryGetValue(high, out var last))
            spans.Add(span(whole - last, whole, leaf.Path));
        return spans.Count == 0 ? [] : [new(at, spans)];
    }

    private static List<Span> Chain(IReadOnlyList<Crossing> members, Func<Length, Length, string?, Span> span)
    {
        List<Span> spans = [];
        for (var i = 0; i < members.Count; i++)
        {
            if (i > 0)
                spans.Add(span(members[i - 1].To, members[i].From, null));
            spans.Add(span(members[i].From, members[i].To, members[i].Path));
        }

        return spans;
    }

    private IEnumerable<KeyValuePair<Side, Length>> Tapered => leaf.Tapers.Where(taper => format.Print(taper.Value) is not ("0" or LengthFormat.RoundedMark + "0"));

    private string TaperWords() => "plane to fit: " + string.Join(", ", Tapered.Select(taper => $"{SideWords(taper.Key)} edge tapers {format.Print(taper.Value)}"));

    private static List<Lettering> AboveAll(List<string> notes, PaperBox bounds)
    {
        List<Lettering> set = [];
        var widest = Math.Max(bounds.Width, 30);
        SetLine[] lines = [.. notes.SelectMany(note => Typesetter.Wrap(note, TextStyle.Small, widest))];
        var baseline = bounds.Top - NoteAir - lines.Sum(line => line.Pitch);
        foreach (var line in lines)
        {
            baseline += line.Pitch;
            set.Add(new(new(bounds.Left, baseline - line.Descent), line));
        }

        return set;
    }

    private static string SideWords(Side side) => side.ToString().ToLowerInvariant();

    private string Describe()
    {
        var size = $"{format.Print(leaf.Width.Length)} × {format.PrintWithUnit(leaf.Height.Length)}";
        List<string> sentences = [$"{leaf.Name} {leaf.Label}, {size}, {HingeWords()}, seen from the {(isBack ? "back: left and right change places" : "front")}."];
        if (leaf.Parts.Count == 0)
            sentences.Add("It cannot be built as it is; its parts are withheld.");
        else
            sentences.Add($"Its parts: {string.Join("; ", leaf.Parts.Select(part => $"{part.ShortLabel} {part.Name} {format.Print(part.Finished.Width.Length)} × {format.Print(part.Finished.Length.Length)}"))}.");
        if (leaf.Parts.Any(part => part.Arch is not null))
            sentences.Add("Heights are measured at the crown of an arch.");
        if (detail.Rabbets.Count > 0)
            sentences.Add($"Rabbeted along the back: {string.Join(", ", detail.Rabbets.Select(rabbet => $"{SideWords(rabbet.Key)} {format.Print(rabbet.Value)}"))}.");
        if (detail.Laps.Count > 0)
            sentences.Add($"The meeting edge on the {SideWords(detail.Laps.Keys.First())} is rabbeted {format.Print(detail.Laps.Values.First())} to lap its neighbour.");
        if (Tapered.Any())
            sentences.Add($"It is made full and then planed: {TaperWords()["plane to fit: ".Length..]}.");
        return string.Join(" ", sentences);
    }

    private string HingeWords() => leaf.IsDrawerFront ? "a drawer front" : leaf.Hinge switch
    {
        HingeSide.None => "fixed",
        var side => $"hinged on the {side.ToString().ToLowerInvariant()}{(isBack && side is HingeSide.Left or HingeSide.Right ? " as seen from the front" : "")}",
    };
}
