using Stilewright.Doors;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Web.Features.CheckList;

/// <summary>How a part of the map stands in a checked list.</summary>
public enum PartMark
{
    Right,
    Wrong,
    Missing,
}

/// <summary>A leaf with its parts where they are, as a map: every member is drawn equally wide, so that no size can be taken from it.</summary>
public static class LeafMap
{
    private const double Member = 26;
    private const double FieldAcross = 66;
    private const double FieldUp = 92;
    private const double Margin = 2;
    private const double MarkSize = 5;

    /// <param name="marks">By the paths of parts; a part without one bears no mark.</param>
    /// <returns>Null where the leaf has no parts.</returns>
    public static Scene? Of(SizedLeaf leaf, IReadOnlyDictionary<string, PartMark> marks)
    {
        if (leaf.Parts.Count == 0)
            return null;
        var bounds = leaf.Parts.ToDictionary(part => part, part => part.VisibleBounds);
        var across = Places(bounds, bounds => (bounds.X, bounds.Right), FieldAcross);
        var up = Places(bounds, bounds => (bounds.Y, bounds.Top), FieldUp);
        var (width, height) = (across.Values.Max() + 2 * Margin, up.Values.Max() + 2 * Margin);
        PaperBox Box(Rectangle place) => PaperBox.Between(
            new(Margin + across[place.X], height - Margin - up[place.Y]), new(Margin + across[place.Right], height - Margin - up[place.Top]));
        // Where ends are mitred, the rails' boxes reach over the stiles: the narrower strip is drawn last.
        return new($"Parts of {leaf.Label}", "A map of the parts, not to scale.", width, height,
            [new SceneGroup(leaf.Path, null, [.. leaf.Parts.OrderBy(part => part.Kind is PartKind.Stile ? 0 : 1).Select(part => Draw(part, Box(bounds[part]), marks.TryGetValue(part.Path, out var mark) ? mark : null))])]);
    }

    // Each edge in turn, a member's width after the one before, or a panel's.
    private static Dictionary<Length, double> Places(Dictionary<Part, Rectangle> bounds, Func<Rectangle, (Length From, Length To)> along, double field)
    {
        var edges = bounds.Values.Select(along).SelectMany(each => new[] { each.From, each.To }).Distinct().Order().ToList();
        Dictionary<Length, double> places = new() { [edges[0]] = 0 };
        foreach (var (from, to) in edges.Zip(edges.Skip(1)))
        {
            var isField = bounds.Any(each => each.Key.Kind is PartKind.Panel or PartKind.Glass or PartKind.Slab && along(each.Value) is var own && own.From <= from && own.To >= to);
            places[to] = places[from] + (isField ? field : Member);
        }

        return places;
    }

    private static SceneGroup Draw(Part part, PaperBox box, PartMark? mark)
    {
        var line = Typesetter.Set(part.Label.Split('·')[^1], TextStyle.Heading with { Weight = Weight.Regular });
        var middle = new PaperPoint(box.Left + box.Width / 2, box.Top + box.Height / 2);
        List<SceneNode> nodes =
        [
            new Shape(Outline.Box(box), mark == PartMark.Missing ? LineStyle.Hidden : LineStyle.Visible, Tone.Tint),
            new Lettering(new(middle.X - line.Width / 2, middle.Y + (mark is null ? (line.Ascent - line.Descent) / 2 : -1.2)), line),
        ];
        var (x, y) = (middle.X, middle.Y + 1.4 + MarkSize / 2);
        const double half = MarkSize / 2;
        switch (mark)
        {
            case PartMark.Right:
                nodes.Add(new Shape(Outline.Through(false, new(x - half, y), new(x - half / 3, y + half), new(x + half, y - half)), LineStyle.Visible));
                break;
            case PartMark.Wrong:
                nodes.Add(new Shape(Outline.Line(new(x - half, y - half), new(x + half, y + half)), LineStyle.Visible));
                nodes.Add(new Shape(Outline.Line(new(x - half, y + half), new(x + half, y - half)), LineStyle.Visible));
                break;
            case PartMark.Missing:
                nodes.Add(new Shape(Outline.Line(new(x - half, y), new(x + half, y)), LineStyle.Visible));
                break;
        }

        return new(part.Path, part.Name, nodes);
    }
}
