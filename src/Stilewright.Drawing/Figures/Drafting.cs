using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Figures;

/// <summary>Signs and labels that figures of leaves and parts share.</summary>
internal static class Drafting
{
    private const double AirRound = 0.5;
    private const double BesideText = 0.6;
    private const double OverText = 0.3;
    private const double LeastArrow = 4;
    private const double LongestArrow = 16;

    /// <summary>Sizes of labels in millimetres, the first that fits being taken.</summary>
    private static readonly TextStyle[] LabelStyles = [TextStyle.Body.Bold, TextStyle.Small.Bold, new(2.2, Weight.Strong)];

    /// <summary>The smallest size of labels, for those that stand outside.</summary>
    public static TextStyle Outside { get; } = TextStyle.Small.Bold;

    /// <summary>A line of text whose middle lies at a point.</summary>
    public static Lettering Centred(SetLine line, PaperPoint middle, bool isUpright = true)
    {
        var toBaseline = (line.Ascent - line.Descent) / 2;
        return isUpright
            ? new(new(middle.X - line.Width / 2, middle.Y + toBaseline), line)
            : new(new(middle.X + toBaseline, middle.Y + line.Width / 2), line, IsUpright: false);
    }

    /// <summary>A label on a white ground inside the room, as large as fits; null when none does.</summary>
    /// <param name="room">Where the label must stay.</param>
    /// <param name="wish">Where its middle would best lie; moved as far as the room demands.</param>
    public static (SceneNode[] Nodes, PaperBox Box)? Label(string text, PaperBox room, PaperPoint wish, bool isUpright = true)
    {
        foreach (var style in LabelStyles)
        {
            var line = Typesetter.Set(text, style);
            var (across, up) = (line.Width + 2 * BesideText, line.Height + 2 * OverText);
            var (width, height) = isUpright ? (across, up) : (up, across);
            if (width > room.Width || height > room.Height)
                continue;
            var middle = new PaperPoint(
                Math.Clamp(wish.X, room.Left + width / 2, room.Right - width / 2), Math.Clamp(wish.Y, room.Top + height / 2, room.Bottom - height / 2));
            var box = new PaperBox(middle.X - width / 2, middle.Y - height / 2, width, height);
            return ([new Shape(Outline.Box(box), null, Tone.Paper), Centred(line, middle, isUpright)], box);
        }

        return null;
    }

    /// <summary>A double-headed arrow along the grain beside a label; nothing where there is no room for one.</summary>
    /// <param name="label">What the arrow keeps clear of; an empty box at the middle where there is no label.</param>
    public static IEnumerable<SceneNode> GrainArrow(PaperBox room, PaperBox label, bool isUpright)
    {
        const double Air = 2;
        const double Head = 1.6;
        // Below the label, or beside it to the right, whichever leaves room enough.
        var below = new PaperBox(room.Left, label.Bottom + Air, room.Width, room.Bottom - label.Bottom - 2 * Air);
        var beside = new PaperBox(label.Right + Air, room.Top, room.Right - label.Right - 2 * Air, room.Height);
        foreach (var place in isUpright ? new[] { below, beside } : [below, beside])
        {
            var (along, across) = isUpright ? (place.Height, place.Width) : (place.Width, place.Height);
            if (along < LeastArrow || across < Head + Air)
                continue;
            var reach = Math.Min(LongestArrow, along * 0.7) / 2;
            if (2 * reach < LeastArrow)
                reach = LeastArrow / 2;
            var middle = isUpright
                ? place == below ? new PaperPoint(label.Centre.X, label.Bottom + Air + reach) : new(label.Right + Air + Head, label.Centre.Y)
                : place == below ? new(label.Centre.X, label.Bottom + Air + Head / 2) : new(label.Right + Air + reach, label.Centre.Y);
            var step = isUpright ? new PaperPoint(0, 1) : new(1, 0);
            var side = new PaperPoint(step.Y, step.X);
            var (start, end) = (middle - step * reach, middle + step * reach);
            yield return new Shape(Outline.Line(start, end), LineStyle.Edge);
            foreach (var (tip, inward) in new[] { (start, step), (end, step * -1) })
            {
                yield return new Shape(
                    Outline.Through(false, tip + inward * Head + side * (Head / 3), tip, tip + inward * Head - side * (Head / 3)), LineStyle.Edge);
            }

            yield break;
        }
    }

    /// <summary>Three slanting strokes, the usual sign for glass.</summary>
    public static IEnumerable<SceneNode> Sheen(PaperBox pane)
    {
        var size = Math.Min(pane.Width, pane.Height) * 0.3;
        for (var i = 0; i < 3; i++)
        {
            var reach = size * (i == 1 ? 1 : 0.6);
            var middle = new PaperPoint(pane.Left + pane.Width * 0.12 + size * (0.5 + 0.3 * i), pane.Top + pane.Height * 0.08 + size * (0.5 + 0.1 * i));
            yield return new Shape(
                Outline.Line(new(middle.X - reach / 2, middle.Y + reach / 2), new(middle.X + reach / 2, middle.Y - reach / 2)), LineStyle.Edge);
        }
    }

    /// <summary>The four lines from the corners of one box to those of another.</summary>
    public static IEnumerable<SceneNode> Mitres(PaperBox outer, PaperBox inner, LineStyle style = LineStyle.Edge) =>
    [
        new Shape(Outline.Line(outer.TopLeft, inner.TopLeft), style),
        new Shape(Outline.Line(new(outer.Right, outer.Top), new(inner.Right, inner.Top)), style),
        new Shape(Outline.Line(new(outer.Right, outer.Bottom), new(inner.Right, inner.Bottom)), style),
        new Shape(Outline.Line(new(outer.Left, outer.Bottom), new(inner.Left, inner.Bottom)), style),
    ];

    /// <summary>The field of a raised panel with its sloping corners, cut off at what is seen of the panel.</summary>
    public static IEnumerable<SceneNode> Raise(PaperBox panel, PaperBox seen, double raise)
    {
        var field = panel.Grown(-raise);
        if (field.Width <= 0 || field.Height <= 0)
            yield break;
        yield return new Shape(Outline.Box(field), LineStyle.Edge);
        var reach = Math.Min(raise, Math.Min(Math.Min(field.Left - seen.Left, seen.Right - field.Right), Math.Min(field.Top - seen.Top, seen.Bottom - field.Bottom)));
        if (reach <= 0)
            yield break;
        foreach (var mitre in Mitres(field.Grown(reach), field))
            yield return mitre;
    }

    /// <summary>What nodes cover, line widths included; null when there are none.</summary>
    public static PaperBox? BoundsOf(IEnumerable<SceneNode> nodes)
    {
        PaperBox? all = null;
        foreach (var node in nodes)
        {
            var box = node switch
            {
                SceneGroup group => (group.Clip ?? BoundsOf(group.Children))?.Shifted(group.At.X, group.At.Y),
                Shape shape => shape.Outline.Bounds.Grown(shape.Line is { } line ? line.WidthMillimetres / 2 : 0),
                Hatch hatch => hatch.Outline.Bounds,
                CellGrid grid => grid.Box,
                Lettering text => text.Box,
                DimensionMark mark => mark.Strokes.Aggregate(mark.Text.Box, (sum, stroke) => sum.With(stroke.Bounds.Grown(LineStyle.Dimension.WidthMillimetres / 2))),
                _ => throw new ArgumentOutOfRangeException(nameof(nodes), node, "This kind of node is not known."),
            };
            if (box is { } found)
                all = all?.With(found) ?? found;
        }

        return all;
    }

    /// <summary>A scene tight round its content, as one group of the given path.</summary>
    public static Scene Scene(string title, string description, Scale scale, string path, IReadOnlyList<SceneNode> nodes)
    {
        var bounds = (BoundsOf(nodes) ?? default).Grown(AirRound);
        return new(title, description, bounds.Width, bounds.Height,
            [new SceneGroup(path, null, nodes) { At = new(-bounds.Left, -bounds.Top) }])
        {
            Scale = scale,
        };
    }
}
