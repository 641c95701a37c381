using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Drawings;

namespace Stilewright.Web.Features.Help.Figures;

/// <summary>The drawings of the help. Their sizes come from the sample, so they change with the rules.</summary>
public static class HelpFigures
{
    // How thick a section is drawn: a face frame and a door of 3/4 in.
    private const double Thick = 0.75;

    /// <summary>Where the tape is laid in an opening: three widths, three heights, two diagonals.</summary>
    public static Scene Readings()
    {
        const double Width = 15, Height = 20, Member = 2, Inwards = 1.6;
        var sketch = new Sketch(new(8), LengthFormat.InchesTo32);
        sketch.Wood(sketch.Box(-Member, 0, Member, Height)).Wood(sketch.Box(Width, 0, Member, Height))
            .Wood(sketch.Box(-Member, Height, Width + 2 * Member, Member)).Wood(sketch.Box(-Member, -Member, Width + 2 * Member, Member));
        sketch.Line(sketch.At(0, 0), sketch.At(Width, Height), LineStyle.Centre).Line(sketch.At(Width, 0), sketch.At(0, Height), LineStyle.Centre);
        foreach (var (word, y) in new[] { ("width at the top", Height - Inwards), ("width in the middle", Height / 2), ("width at the bottom", Inwards) })
            sketch.Line(sketch.At(0, y), sketch.At(Width, y), LineStyle.Dimension).Word(word, sketch.At(Width / 2, y));
        foreach (var (word, x) in new[] { ("left", Inwards), ("middle", Width / 2), ("right", Width - Inwards) })
            sketch.Line(sketch.At(x, 0), sketch.At(x, Height), LineStyle.Dimension).Word(word, sketch.At(x, Height * (word == "middle" ? 0.66 : 0.3)));
        sketch.Word("rising", sketch.At(Width * 0.79, Height * 0.79)).Word("falling", sketch.At(Width * 0.21, Height * 0.79));
        return sketch.Scene("Readings of an opening", "An opening seen from the front: width read at the top, in the middle and at the bottom; height at the left, in the middle and at the right; the rising and the falling diagonal.");
    }

    /// <summary>The sample's opening as it is out of square, with the door over it.</summary>
    public static Scene OutOfSquare(LengthFormat format) => Fit.Largest(format.Unit, 130, 120, scale => FaceElevation.Draw(
        "A door over an opening that is out of square", HelpSample.OutOfSquare.Faces.Single(), scale, format, 130)).Scene;

    /// <summary>The sample's pair over its opening.</summary>
    public static Scene Pair(LengthFormat format) => Fit.Largest(format.Unit, 150, 120, scale => FaceElevation.Draw(
        "A pair of doors over its opening", HelpSample.Pair.Faces.Single(), scale, format, 150)).Scene;

    /// <summary>A level section through both stiles of the frame and the door before, in or partly in them.</summary>
    public static Scene Section(Mount mount, LengthFormat format)
    {
        const double Member = 2, Cut = 1.8, LeftOut = 0.6;
        var front = HelpSample.Of(mount).Fronts.Single();
        var (opening, leaf) = (front.Figure!.Width.Length, front.Leaves[0].Width.Length);
        var reach = front.Edges.Single(edge => edge.Side == Side.Left).Reach;
        // The door is broken off in the middle: only its edges matter.
        var sketch = new Sketch(new(2), format);
        var over = Inches(reach);
        var right = 2 * Cut + LeftOut;
        sketch.EndGrain(Outline.Box(sketch.Box(-Member, 0, Member, Thick))).EndGrain(Outline.Box(sketch.Box(right, 0, Member, Thick)));
        var (low, rabbet) = mount switch
        {
            Mount.Inset => (0.0, 0.0),
            Mount.Lipped => (-Thick / 2, Inches(Length(Settings.LipRabbet))),
            _ => (-Thick, 0.0),
        };
        Half(sketch, -over, Cut, low, rabbet, isLeft: true);
        Half(sketch, right - Cut, right + over, low, rabbet, isLeft: false);
        Span Of(double from, double to, Length value, string word) => new(sketch.At(from, 0).X, sketch.At(to, 0).X, value) { Word = word };
        sketch.Dimensions(sketch.Box(-Member, low, right + 2 * Member, Thick - low),
            new DimensionRow(Side.Top, [Of(0, right, opening, "opening")]),
            new DimensionRow(Side.Bottom, [Of(-over, right + over, leaf, "door")]));
        return sketch.Scene(Words(mount), $"{Words(mount)}: a section seen from above, the front of the cabinet below.");
    }

    /// <summary>How a rail's tongue and a panel's edge stand in the groove of a stile, seen from the front.</summary>
    public static Scene CopeAndStick(LengthFormat format)
    {
        var cutters = HelpSample.Cutters;
        var (d, e) = (Inches(cutters.GrooveDepth.Value), Inches(cutters.CopeLength.Value));
        var c = Inches(Length(Settings.ClearanceAcross));
        const double Stile = 2.25, Rail = Stile, Long = 3.2, High = 4.4;
        var sketch = new Sketch(new(1), format);
        sketch.Wood(sketch.Box(0, 0, Stile, High)).Wood(sketch.Box(Stile, High - Rail, Long, Rail));
        sketch.Line(sketch.At(Stile - d, 0), sketch.At(Stile - d, High), LineStyle.Hidden);
        sketch.Line(sketch.At(Stile - d, High - Rail + d), sketch.At(Stile + Long, High - Rail + d), LineStyle.Hidden);
        sketch.Draw(Outline.Through(false, sketch.At(Stile, High - 0.02), sketch.At(Stile - e, High - 0.02), sketch.At(Stile - e, High - Rail), sketch.At(Stile, High - Rail)), LineStyle.Hidden);
        sketch.Draw(Outline.Through(false, sketch.At(Stile - d + c, 0), sketch.At(Stile - d + c, High - Rail + d - c), sketch.At(Stile + Long, High - Rail + d - c)), LineStyle.Adjacent);
        sketch.Word("stile", sketch.At(0.75, High - 1.1), true).Word("rail", sketch.At(Stile + Long / 2, High - 1.1), true).Word("panel", sketch.At(Stile + Long / 2, 0.8), true);
        Span Across(double from, double to, Length value, string word) => new(sketch.At(from, 0).X, sketch.At(to, 0).X, value) { Word = word };
        sketch.Dimensions(sketch.Box(0, 0, Stile + Long, High),
            new DimensionRow(Side.Top, [Across(Stile - e, Stile, cutters.CopeLength.Value, "e")]),
            new DimensionRow(Side.Top, [Across(0, Stile, Length(Settings.Stile), "stile")]),
            new DimensionRow(Side.Bottom, [Across(Stile - d, Stile - d + c, Length(Settings.ClearanceAcross), "c")]),
            new DimensionRow(Side.Bottom, [Across(Stile - d, Stile, cutters.GrooveDepth.Value, "d")]));
        return sketch.Scene("Cope-and-stick joint", "A stile and a rail seen from the front. The groove is d deep; the rail's tongue is e long; the panel's edge keeps the clearance c from the bottom of the groove.");
    }

    /// <summary>A door as it is glued up round the door it will be.</summary>
    public static Scene TrimAllowance(LengthFormat format)
    {
        var leaf = HelpSample.Of(Mount.Overlay).Fronts.Single().Leaves[0];
        var (width, height) = (leaf.Width.Length, leaf.Height.Length);
        var (across, up) = (Length(Settings.TrimWidth), Length(Settings.TrimHeight));
        var sketch = new Sketch(new(8), format);
        var (w, h) = (Inches(width), Inches(height));
        // Drawn six times as wide as it is, or it could not be seen.
        const double Drawn = 6;
        var (x, y) = (Drawn * Inches(across) / 2, Drawn * Inches(up) / 2);
        sketch.Wood(sketch.Box(-x, -y, w + 2 * x, h + 2 * y));
        sketch.Draw(Outline.Box(sketch.Box(0, 0, w, h)), LineStyle.Visible).Draw(Outline.Box(sketch.Box(2.25, 2.25, w - 4.5, h - 4.5)), LineStyle.Edge);
        sketch.Word("the door", sketch.At(w / 2, h / 2 + 1.2), true).Word("trimmed off all round:", sketch.At(w / 2, h / 2 - 0.6)).Word("half the allowance from each edge", sketch.At(w / 2, h / 2 - 2));
        sketch.Dimensions(sketch.Box(-x, -y, w + 2 * x, h + 2 * y),
            new DimensionRow(Side.Bottom, [new(sketch.At(0, 0).X, sketch.At(w, 0).X, width) { Word = "finished" }]),
            new DimensionRow(Side.Bottom, [new(sketch.At(-x, 0).X, sketch.At(w + x, 0).X, width + across) { Word = "into the clamps" }]),
            new DimensionRow(Side.Left, [new(sketch.At(0, 0).Y, sketch.At(0, h).Y, height) { Word = "finished" }]),
            new DimensionRow(Side.Left, [new(sketch.At(0, -y).Y, sketch.At(0, h + y).Y, height + up) { Word = "into the clamps" }]));
        return sketch.Scene("Trim allowance", "A door as it comes out of the clamps, larger than the door it will be. The allowance is drawn six times as wide as it is.");
    }

    /// <summary>One arch of a family over a span of 12 in, with its rise and the radii of its arcs.</summary>
    public static Scene Arch(ArchFamily family, LengthFormat format)
    {
        var sizes = Sizes(family);
        if (ArchFamilies.Draw(family, sizes) is not ArchResult.Drawn { Curve: var curve })
            throw new InvalidOperationException($"The help draws no {family} of these sizes.");
        const double Below = 1.4, Over = 2.4;
        var sketch = new Sketch(new(4), format);
        var half = sizes.Span / 2;
        var top = curve.Chain.Box.Top + Over;
        var outline = new Outline(sketch.At(-half, 0),
            [.. curve.Chain.Segments.Select(segment => On(sketch, segment)), new LineTo(sketch.At(half, top)), new LineTo(sketch.At(-half, top))], true);
        sketch.Wood(outline);
        sketch.Line(sketch.At(-half, 0), sketch.At(half, 0), LineStyle.Centre);
        sketch.Measure(sketch.At(-half, -Below), sketch.At(half, -Below), $"S {format.Print(CurveLength.ToLength(sizes.Span, StepDirection.Nearest))}");
        sketch.Measure(sketch.At(0, 0), sketch.At(0, curve.Chain.Box.Top), $"a {format.Print(CurveLength.ToLength(curve.Chain.Box.Top, StepDirection.Nearest))}");
        var radii = string.Join(" and ", curve.Trammel().Where(point => point.RadiusInches is not null).Select(point => format.Print(CurveLength.ToLength(point.RadiusInches!.Value, StepDirection.Nearest))).Distinct());
        if (radii.Length > 0)
            sketch.Word($"R {radii}", sketch.At(0, top - 0.9));
        return sketch.Scene(Words(family), $"{Words(family)}: span S, rise a, and the radius R of each arc. The rail is above the curve.");
    }

    /// <summary>The families in the order in which they are shown.</summary>
    public static IReadOnlyList<ArchFamily> Families { get; } =
        [ArchFamily.Eyebrow, ArchFamily.HalfRound, ArchFamily.Pointed, ArchFamily.Stepped, ArchFamily.Cathedral, ArchFamily.DoubleCurve];

    /// <summary>What a family is called at the bench.</summary>
    public static string Words(ArchFamily family) => family switch
    {
        ArchFamily.HalfRound => "Half-round",
        ArchFamily.DoubleCurve => "Double curve",
        _ => family.ToString(),
    };

    public static string Words(Mount mount) => mount switch
    {
        Mount.Inset => "Inset",
        Mount.Lipped => "Lipped",
        _ => "Overlay",
    };

    private static ArchSizes Sizes(ArchFamily family) => family switch
    {
        ArchFamily.HalfRound => new(12, 6),
        ArchFamily.Pointed => new(12, 3),
        ArchFamily.Stepped => new(12, 2, 1.5),
        ArchFamily.Cathedral => new(12, 1.75, 0.75),
        ArchFamily.DoubleCurve => new(12, 1.75),
        _ => new(12, 1.5),
    };

    private static Segment On(Sketch sketch, CurveSegment segment) => segment is ArcSegment arc
        ? new ArcTo(sketch.At(arc.End.X, arc.End.Y), sketch.At(arc.Centre.X, arc.Centre.Y), arc.SweepRadians < 0)
        : new LineTo(sketch.At(segment.End.X, segment.End.Y));

    // One end of a door in section; its other end is broken off.
    private static void Half(Sketch sketch, double left, double right, double low, double rabbet, bool isLeft)
    {
        var high = low + Thick;
        // Of a lipped door, the rabbet goes round the part that covers the frame.
        var inner = isLeft ? left + rabbet : right - rabbet;
        PaperPoint[] corners = rabbet == 0
            ? [sketch.At(left, low), sketch.At(right, low), sketch.At(right, high), sketch.At(left, high)]
            : isLeft
                ? [sketch.At(left, low), sketch.At(right, low), sketch.At(right, high), sketch.At(inner, high), sketch.At(inner, 0), sketch.At(left, 0)]
                : [sketch.At(left, low), sketch.At(right, low), sketch.At(right, 0), sketch.At(inner, 0), sketch.At(inner, high), sketch.At(left, high)];
        sketch.EndGrain(Outline.Through(true, corners));
    }

    private static Length Length(Setting setting) => LengthReader.ReadOwn(setting.Inch, LengthUnit.Inch);

    private static double Inches(Length length) => CurveLength.Inches(length);
}
