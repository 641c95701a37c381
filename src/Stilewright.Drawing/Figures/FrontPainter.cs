using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Drawing.Figures;

/// <summary>Draws frames and the fronts on them, seen from the front, for elevations.</summary>
internal sealed class FrontPainter(LengthFormat format)
{
    private readonly List<string> unlabelled = [];

    /// <summary>Names the leaves drawn that were too small for their labels, as one more sentence of a description; nothing where none was.</summary>
    public string UnlabelledWords => unlabelled.Count == 0 ? "" : $" Too small at this scale for their labels: {string.Join(", ", unlabelled)}.";

    /// <summary>The frame's members and what they leave open.</summary>
    public static IEnumerable<SceneNode> Frame(FrameFigure frame, View view)
    {
        foreach (var member in frame.Members)
        {
            var box = view.Box(member.Place);
            List<SceneNode> drawn = [new Shape(Outline.Box(box), LineStyle.Edge, Tone.Tint)];
            if (member.Scribe is { } scribe)
            {
                var x = view.X(member.Place.X.IsZero ? scribe : member.Place.Right - scribe);
                drawn.Add(new Shape(Outline.Line(new(x, box.Top), new(x, box.Bottom)), LineStyle.Adjacent));
            }

            if (member.ToeNotch is { } notch)
            {
                var y = view.Y(member.Place.Y + notch);
                drawn.Add(new Shape(Outline.Line(new(box.Left, y), new(box.Right, y)), LineStyle.Hidden));
            }

            yield return new SceneGroup(null, member.Name, drawn);
        }

        foreach (var opening in frame.Openings)
        {
            var box = view.Box(opening.Clear);
            List<SceneNode> drawn = [new Shape(Outline.Box(box), LineStyle.Visible, Tone.Paper)];
            if (opening.Outline != opening.Clear)
                drawn.Insert(0, new Shape(Outline.Box(view.Box(opening.Outline)), LineStyle.Edge, Tone.Tint));
            if (opening.Path is null)
            {
                drawn.Add(new Shape(Outline.Line(box.TopLeft, new(box.Right, box.Bottom)), LineStyle.Edge));
                drawn.Add(new Shape(Outline.Line(new(box.Left, box.Bottom), new(box.Right, box.Top)), LineStyle.Edge));
            }

            yield return new SceneGroup(opening.Path, opening.Path is null ? "left open" : "opening", drawn);
        }
    }

    /// <summary>A front's leaves over its opening, without their labels.</summary>
    /// <param name="opening">Corners of the opening in the view's coordinates; empty for a loose front.</param>
    public static IEnumerable<SceneNode> Front(SizedFront front, View view, IReadOnlyList<Point> opening)
    {
        SizedLeaf[] leaves = [.. front.Leaves.Where(IsThere)];
        foreach (var leaf in leaves)
            yield return new SceneGroup(leaf.Path, $"{leaf.Label}, {leaf.Name}", [.. Leaf(leaf, view)]);

        // Behind an overlay front the opening is hidden; an inset front leaves all of it to be seen.
        if (leaves.Length > 0 && opening.Count > 0 && front.Mount != Mount.Inset)
            yield return new Shape(view.Polygon(opening), LineStyle.Hidden);
        foreach (var leaf in leaves)
        {
            foreach (var node in View.Hand(view.Box(leaf.Place), leaf.Hinge))
                yield return node;
        }
    }

    /// <summary>The labels of fronts, to be drawn after all fronts of a figure: where fronts lie over one another, none may hide a label.</summary>
    /// <param name="labels">One for every figure.</param>
    public IEnumerable<SceneNode> Labels(IEnumerable<SizedFront> fronts, View view, LabelFit labels)
    {
        foreach (var leaf in fronts.SelectMany(front => front.Leaves).Where(IsThere))
        {
            var label = labels.Place(Rooms(leaf, view), leaf.Label, leaf.IsWithheld ? "cannot be built" : Size(leaf));
            if (label.Count == 0)
                unlabelled.Add(leaf.Label);
            foreach (var node in label)
                yield return node;
        }
    }

    // Inside a light, the largest first, a label is clear of the members; a leaf too small for that takes it anywhere.
    private static List<PaperBox> Rooms(SizedLeaf leaf, View view)
    {
        var curves = LeafCurves.Of(leaf, null);
        var lights = leaf.Parts.Where(part => part.Kind is PartKind.Panel or PartKind.Glass && part.Visible.Count > 2)
            .Select(part => view.Box((curves.Filling(part)?.Light.Box ?? part.VisibleBounds).Shifted(leaf.Place.X, leaf.Place.Y)));
        return [.. lights.OrderByDescending(light => Math.Round(light.Width * light.Height)), view.Box(leaf.Place)];
    }

    /// <summary>Whether there is anything of the leaf to draw; a front that has nothing left is told by a finding.</summary>
    public static bool IsThere(SizedLeaf leaf) => leaf.Place is { Width.IsPositive: true, Height.IsPositive: true };

    public string Size(SizedLeaf leaf) => $"{WorkedText.Figure(leaf.Width, format)} × {WorkedText.Figure(leaf.Height, format)}";

    private static IEnumerable<SceneNode> Leaf(SizedLeaf leaf, View view)
    {
        yield return new Shape(Outline.Box(view.Box(leaf.Place)), LineStyle.Visible, Tone.Paper);
        var onLeaf = view with { Left = view.Left - leaf.Place.X, Top = view.Top - leaf.Place.Y };
        var curves = LeafCurves.Of(leaf, null);
        var lines = new CurvedLines(onLeaf.At);
        foreach (var part in leaf.Parts.Where(part => part.Visible.Count > 2 && part.Kind != PartKind.Slab))
        {
            var curve = curves.Of(part)?.Seen ?? curves.Filling(part)?.Sight;
            var seen = curve is not null ? lines.Of(curve)
                : part.Kind == PartKind.MidStile ? Outline.Box(onLeaf.Box(curves.SeenOf(part))) : onLeaf.Polygon(part.Visible);
            yield return new SceneGroup(part.Path, null, [new Shape(seen, LineStyle.Edge)]);
        }
    }
}
