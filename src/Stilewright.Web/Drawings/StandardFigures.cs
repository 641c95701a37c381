using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

/// <summary>Small drawings that show what the constants of a house standard are, with the standard's own figures.</summary>
/// <remarks>Sections are cut level and seen from above, the face at the bottom. Lengths are inches, X to the right and Y down.</remarks>
public sealed class StandardFigures(HouseStandard standard, LengthFormat format)
{
    private const double MemberWidth = 1.5;
    private const double Thickness = 0.75;
    private const double FrontSeen = 1.75;
    private const double Air = 0.02;
    private static readonly Scale Half = new(2);
    private static readonly Scale Full = new(1);

    private readonly StandardInForce inForce = new(standard);

    /// <summary>The drawings that explain a group of settings; empty where words do.</summary>
    /// <param name="group">The first word of the settings' keys.</param>
    public IReadOnlyList<Scene> Of(string group) => group switch
    {
        "overlay" => [Overlay(), Reveal()],
        "gap" => [Neighbours(), Pair(), Inset()],
        "lip" => [Lip()],
        "lap" => [Lap()],
        "trim" => [Trim()],
        "panel" => standard.Cutters.Count == 0 ? [] : [PanelPlay(standard.Cutters[0])],
        _ => [],
    };

    /// <summary>A stile that the cutters made, cut across.</summary>
    public Scene Cutters(CutterSet set)
    {
        var (thick, depth, width, face, sticking) =
            (Inches(set.ThickestStock), Inches(set.GrooveDepth), Inches(set.GrooveWidth), Inches(set.GrooveFromFace), Inches(set.StickingWidth));
        var stile = Math.Max(1.5, Math.Max(depth, sticking) + 0.6);
        // The face at the bottom: the groove lies so far up from it; the moulding is told by a slope at the face.
        var (grooveBottom, grooveTop) = (thick - face, thick - face - width);
        var mould = Math.Min(sticking, face * 0.9);
        PaperPoint[] outline =
        [
            new(0, 0), new(stile, 0), new(stile, grooveTop), new(stile - depth, grooveTop), new(stile - depth, grooveBottom), new(stile, grooveBottom),
            new(stile, thick - (mould > 0 ? face * 0.35 : 0)), new(stile - sticking, thick), new(0, thick),
        ];
        return Draw(FormattableString.Invariant($"{set.Name}: a stile cut across"), "The groove, its place from the face, and the moulded edge.", Full, [Wood(outline)],
            [
                new(Side.Top, [Span(stile - depth, stile, set.GrooveDepth.Value, "groove")]),
                new(Side.Bottom, [Span(stile - sticking, stile, set.StickingWidth.Value, "sticking")]),
                new(Side.Right, [Span(grooveTop, grooveBottom, set.GrooveWidth.Value), Span(grooveBottom, thick, set.GrooveFromFace.Value, "face")]),
            ]);
    }

    private Scene Overlay()
    {
        var overlay = Value(Settings.Overlay);
        var edge = MemberWidth - Inches(overlay);
        return Draw("Overlay", "A front that laps over the frame, cut level.", Half,
            [Box(0, 0, MemberWidth, Thickness), Box(edge, Thickness + Air, MemberWidth + FrontSeen - edge, Thickness)],
            [new(Side.Bottom, [Span(edge, MemberWidth, overlay, "overlay")])]);
    }

    private Scene Reveal()
    {
        var reveal = Value(Settings.Reveal);
        return Draw("Reveal", "A front that runs to the edge of the frame, which is left visible beside it.", Half,
            [Box(0, 0, MemberWidth, Thickness), Box(Inches(reveal), Thickness + Air, MemberWidth + FrontSeen - Inches(reveal), Thickness)],
            [new(Side.Bottom, [Span(0, Inches(reveal), reveal, "reveal")])]);
    }

    private Scene Neighbours()
    {
        var gap = Value(Settings.GapBetweenNeighbours);
        var (left, right) = (FrontSeen + (MemberWidth - Inches(gap)) / 2, FrontSeen + (MemberWidth + Inches(gap)) / 2);
        return Draw("Gap between neighbours", "Two overlay fronts that share a member of the frame.", Half,
            [Box(FrontSeen, 0, MemberWidth, Thickness), Box(0, Thickness + Air, left, Thickness), Box(right, Thickness + Air, 2 * FrontSeen + MemberWidth - right, Thickness)],
            [new(Side.Bottom, [Span(left, right, gap, "neighbours")])]);
    }

    private Scene Pair()
    {
        var gap = Value(Settings.GapOfPair);
        return Draw("Gap of the pair", "The meeting edges of two doors on one opening.", Half,
            [Box(0, 0, FrontSeen, Thickness), Box(FrontSeen + Inches(gap), 0, FrontSeen, Thickness)],
            [new(Side.Bottom, [Span(FrontSeen, FrontSeen + Inches(gap), gap, "pair")])]);
    }

    private Scene Inset()
    {
        var gap = Value(Settings.InsetGap);
        return Draw("Inset gap", "A front that sits in the opening, flush with the frame.", Half,
            [Box(0, 0, MemberWidth, Thickness), Box(MemberWidth + Inches(gap), 0, FrontSeen, Thickness)],
            [new(Side.Bottom, [Span(MemberWidth, MemberWidth + Inches(gap), gap, "inset")])]);
    }

    private Scene Lip()
    {
        var (rabbet, clearance) = (Value(Settings.LipRabbet), Value(Settings.LipClearance));
        var body = MemberWidth + Inches(clearance);
        var edge = body - Inches(rabbet);
        var end = body + FrontSeen;
        var half = Thickness / 2;
        return Draw("Lipped front", "Rabbeted round the back: the lip laps over the frame, the body lies in the opening.", Half,
            [
                Box(0, 0, MemberWidth, Thickness),
                Wood(new(body, Thickness - half), new(end, Thickness - half), new(end, Thickness + half), new(edge, Thickness + half), new(edge, Thickness + Air), new(body, Thickness + Air)),
            ],
            [
                new(Side.Bottom, [Span(edge, body, rabbet, "lip")]),
                new(Side.Top, [Span(MemberWidth, body, clearance, "clearance")]),
            ]);
    }

    private Scene Lap()
    {
        var lap = Value(Settings.Lap);
        var half = Thickness / 2;
        var (left, right) = (FrontSeen, FrontSeen + Inches(lap));
        var end = right + FrontSeen;
        return Draw("Lap of the meeting edges", "A pair whose meeting edges are rabbeted over one another.", Half,
            [
                Wood(new(0, 0), new(left, 0), new(left, half), new(right, half), new(right, Thickness), new(0, Thickness)),
                Wood(new(left + Air, 0), new(end, 0), new(end, Thickness), new(right + Air, Thickness), new(right + Air, half - Air), new(left + Air, half - Air)),
            ],
            [new(Side.Bottom, [Span(left, right, lap, "lap")])]);
    }

    // The allowance is drawn larger than it is, or it could not be seen.
    private Scene Trim()
    {
        const double Seen = 0.2;
        const double Width = 3.2;
        const double Height = 1.9;
        var (across, up) = (Value(Settings.TrimWidth), Value(Settings.TrimHeight));
        return Draw("Trim allowance", "The leaf as it leaves the clamps, and dashed what is left when half of the allowance is off each edge. The allowance is drawn larger than it is.", Half,
            [
                new Shape(At(Half, new(0, 0), new(Width, 0), new(Width, Height), new(0, Height)), LineStyle.Visible, Tone.Tint),
                new Shape(At(Half, new(Seen, Seen), new(Width - Seen, Seen), new(Width - Seen, Height - Seen), new(Seen, Height - Seen)), LineStyle.Hidden, Tone.Paper),
            ],
            [
                new(Side.Bottom, [Span(Width - Seen, Width, across / 2, "off an edge")]),
                new(Side.Right, [Span(0, Seen, up / 2, "off an end")]),
            ]);
    }

    private Scene PanelPlay(CutterSet set)
    {
        var play = Value(Settings.ClearanceAcross);
        var (thick, depth, width, face) = (Inches(set.ThickestStock), Inches(set.GrooveDepth), Inches(set.GrooveWidth), Inches(set.GrooveFromFace));
        var stile = Math.Max(1.2, depth + 0.5);
        var (grooveBottom, grooveTop) = (thick - face, thick - face - width);
        var tongue = stile - depth + Math.Min(Inches(play), depth);
        return Draw("Play of a panel", "A panel in the groove of its stile, cut level: what it can swell before it fills the groove.", Full,
            [
                Wood(new(0, 0), new(stile, 0), new(stile, grooveTop), new(stile - depth, grooveTop), new(stile - depth, grooveBottom), new(stile, grooveBottom), new(stile, thick), new(0, thick)),
                new Shape(At(Full, new(tongue, grooveTop + Air), new(stile + 1.2, grooveTop + Air), new(stile + 1.2, grooveBottom - Air), new(tongue, grooveBottom - Air)), LineStyle.Visible, Tone.Paper),
            ],
            [
                new(Side.Top, [Span(stile - depth, tongue, play, "play")]),
                new(Side.Bottom, [Span(stile - depth, stile, set.GrooveDepth.Value, "groove")]),
            ]);
    }

    private Scene Draw(string title, string description, Scale scale, IReadOnlyList<SceneNode> nodes, IReadOnlyList<DimensionRow> rows)
    {
        // Nodes and spans are made in inches of the thing; a half-size drawing is what most rooms on a page hold.
        var shapes = nodes.Select(node => node is Section section ? section.At(scale) : [node]).SelectMany(each => each).ToList();
        var figure = shapes.OfType<Shape>().Select(shape => shape.Outline.Bounds).Aggregate((one, other) => one.With(other));
        var placed = new DimensionPlacer(scale, format, TextStyle.Body).Place(figure,
            [.. rows.Select(row => row with { Spans = [.. row.Spans.Select(span => span with { From = scale.InchesOnPaper(span.From), To = scale.InchesOnPaper(span.To) })] })]);
        var bounds = placed.Bounds.Grown(1);
        return new(title, description, bounds.Width, bounds.Height, [new SceneGroup(null, null, [.. shapes, .. placed.Marks]) { At = new(-bounds.Left, -bounds.Top) }])
        {
            Scale = scale,
        };
    }

    private static Section Box(double left, double top, double width, double height) =>
        Wood(new(left, top), new(left + width, top), new(left + width, top + height), new(left, top + height));

    private static Section Wood(params PaperPoint[] inches) => new(inches);

    private static Outline At(Scale scale, params PaperPoint[] inches) =>
        Outline.Through(true, [.. inches.Select(point => new PaperPoint(scale.InchesOnPaper(point.X), scale.InchesOnPaper(point.Y)))]);

    private static Span Span(double from, double to, Length value, string? word = null) => new(from, to, value) { Word = word };

    private Length Value(Setting setting) => inForce[setting].Length;

    private static double Inches(LengthEntry entry) => Inches(entry.Value);

    private static double Inches(Length length) => (double)length.Inches;

    /// <summary>Wood that is cut through: outlined and hatched.</summary>
    private sealed record Section(PaperPoint[] Inches) : SceneNode
    {
        private const double HatchAngle = 45;
        private const double HatchSpacing = 1.6;

        public IReadOnlyList<SceneNode> At(Scale scale)
        {
            var outline = StandardFigures.At(scale, Inches);
            return [new Shape(outline, LineStyle.Visible, Tone.Tint), new Hatch(outline, HatchAngle, HatchSpacing)];
        }
    }
}
