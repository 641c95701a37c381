using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Web.Drawings;

/// <summary>Puts a small drawing together at one scale, in inches from its bottom left.</summary>
internal sealed class Sketch(Scale scale, LengthFormat format)
{
    private const double Margin = 1;
    private const double EndGrainDegrees = 45;
    private const double EndGrainSpacing = 1.6;

    /// <summary>The paths of all that is wood, and of panels, for the page's colours.</summary>
    public const string WoodPath = "wood", PanelPath = "panel";

    /// <summary>The page's class of what is wood, and of panels; null for what is neither.</summary>
    public static string? ClassOf(string path) => path switch
    {
        WoodPath => "member",
        PanelPath => "panel",
        _ => null,
    };

    private readonly List<SceneNode> nodes = [];
    private readonly List<PaperBox> extents = [];

    public PaperPoint At(double xInches, double yInches) => new(scale.InchesOnPaper(xInches), -scale.InchesOnPaper(yInches));

    public PaperBox Box(double left, double bottom, double width, double height) => PaperBox.Between(At(left, bottom), At(left + width, bottom + height));

    /// <summary>Wood seen from its face.</summary>
    public Sketch Wood(PaperBox box) => Wood(Outline.Box(box));

    public Sketch Wood(Outline outline) => Add(new SceneGroup(WoodPath, null, [new Shape(outline, LineStyle.Visible, Tone.Tint)]), outline.Bounds);

    /// <summary>Wood cut across.</summary>
    public Sketch EndGrain(Outline outline) =>
        Add(new SceneGroup(WoodPath, null, [new Shape(outline, LineStyle.Visible, Tone.Paper), new Hatch(outline, EndGrainDegrees, EndGrainSpacing)]), outline.Bounds);

    /// <summary>A panel seen from its face, or its edge.</summary>
    public Sketch Panel(Outline outline) => Add(new SceneGroup(PanelPath, null, [new Shape(outline, LineStyle.Visible, Tone.Tint)]), outline.Bounds);

    public Sketch Line(PaperPoint from, PaperPoint to, LineStyle style = LineStyle.Edge) => Draw(Outline.Line(from, to), style);

    public Sketch Draw(Outline outline, LineStyle style) => Add(new Shape(outline, style), outline.Bounds);

    /// <summary>A line with an arrow at both ends and its word beside the middle.</summary>
    public Sketch Measure(PaperPoint from, PaperPoint to, string word, double besideMillimetres = 1.2)
    {
        const double Head = 2;
        var along = (to - from) * (1 / from.DistanceTo(to));
        var across = new PaperPoint(-along.Y, along.X);
        foreach (var (tip, inward) in new[] { (from, along), (to, along * -1) })
            nodes.Add(new Shape(Outline.Through(false, tip + inward * Head + across * (Head / 3), tip, tip + inward * Head - across * (Head / 3)), LineStyle.Dimension));
        Line(from, to, LineStyle.Dimension);
        var line = Typesetter.Set(word, TextStyle.Body);
        var middle = (from + to) * 0.5;
        return Math.Abs(along.X) > Math.Abs(along.Y)
            ? Put(line, new(middle.X - line.Width / 2, middle.Y - besideMillimetres - line.Descent))
            : Put(line, new(middle.X + besideMillimetres + 0.6, middle.Y + (line.Ascent - line.Descent) / 2));
    }

    /// <summary>A word whose middle lies at a place, on a white ground.</summary>
    public Sketch Word(string text, PaperPoint middle, bool isStrong = false)
    {
        var line = Typesetter.Set(text, isStrong ? TextStyle.Body.Bold : TextStyle.Body);
        var box = new PaperBox(middle.X - line.Width / 2 - 0.6, middle.Y - line.Height / 2 - 0.3, line.Width + 1.2, line.Height + 0.6);
        nodes.Add(new Shape(Outline.Box(box), null, Tone.Paper));
        return Put(line, new(middle.X - line.Width / 2, middle.Y + (line.Ascent - line.Descent) / 2));
    }

    /// <summary>A word that stands beside a place, to its right.</summary>
    public Sketch Note(string text, PaperPoint left)
    {
        var line = Typesetter.Set(text, TextStyle.Body);
        return Put(line, new(left.X, left.Y + (line.Ascent - line.Descent) / 2));
    }

    /// <summary>A distance too small for a line between its ends: an arrow from either side, and its words beyond the second.</summary>
    /// <param name="path">What is measured.</param>
    public Sketch Between(PaperPoint from, PaperPoint to, string path, string words)
    {
        const double Tail = 6, Head = 2, Air = 1.2;
        // Nothing between them is shown upright.
        var along = from.DistanceTo(to) is > 0 and var apart ? (to - from) * (1 / apart) : new(0, -1);
        var across = new PaperPoint(-along.Y, along.X);
        List<SceneNode> drawn = [];
        foreach (var (tip, outward) in new[] { (from, along * -1), (to, along) })
        {
            drawn.Add(new Shape(Outline.Line(tip, tip + outward * Tail), LineStyle.Dimension));
            drawn.Add(new Shape(Outline.Through(false, tip + outward * Head + across * (Head / 3), tip, tip + outward * Head - across * (Head / 3)), LineStyle.Dimension));
        }

        var line = Typesetter.Set(words, TextStyle.Body);
        var end = to + along * (Tail + Air);
        var isUpright = Math.Abs(along.Y) > Math.Abs(along.X);
        var baseline = isUpright
            ? new PaperPoint(end.X - line.Width / 2, along.Y < 0 ? end.Y - line.Descent : end.Y + line.Ascent)
            : new(along.X > 0 ? end.X : end.X - line.Width, end.Y + (line.Ascent - line.Descent) / 2);
        var lettering = new Lettering(baseline, line);
        drawn.Add(lettering);
        return Add(new SceneGroup(path, null, drawn), PaperBox.Between(from + along * -Tail, to + along * Tail).With(lettering.Box));
    }

    /// <summary>A word that names what the drawing is about, its middle at a place, on a white ground.</summary>
    /// <param name="path">What it names.</param>
    public Sketch Named(string path, string text, PaperPoint middle)
    {
        var line = Typesetter.Set(text, TextStyle.Body.Bold);
        var lettering = new Lettering(new(middle.X - line.Width / 2, middle.Y + (line.Ascent - line.Descent) / 2), line);
        var ground = Outline.Box(lettering.Box.Grown(0.5));
        return Add(new SceneGroup(path, null, [new Shape(ground, null, Tone.Paper), lettering]), ground.Bounds);
    }

    /// <summary>Rows of dimensions round a box, with their exact figures.</summary>
    public Sketch Dimensions(PaperBox figure, params IReadOnlyList<DimensionRow> rows)
    {
        var placed = new DimensionPlacer(scale, format, TextStyle.Body).Place(figure, rows, extents.Aggregate(figure, (sum, box) => sum.With(box)));
        nodes.AddRange(placed.Marks);
        extents.Add(placed.Bounds);
        return this;
    }

    public Scene Scene(string title, string description)
    {
        var bounds = extents.Aggregate((one, other) => one.With(other)).Grown(Margin);
        return new(title, description, bounds.Width, bounds.Height, [new SceneGroup(null, null, nodes) { At = new(-bounds.Left, -bounds.Top) }]) { Scale = scale };
    }

    private Sketch Put(SetLine line, PaperPoint baseline)
    {
        var lettering = new Lettering(baseline, line);
        return Add(lettering, lettering.Box);
    }

    private Sketch Add(SceneNode node, PaperBox extent)
    {
        nodes.Add(node);
        extents.Add(extent);
        return this;
    }
}
