using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Packets;

/// <summary>A drawing that is put at the largest standard scale at which it fits.</summary>
/// <param name="Title">Stands below it, before its scale.</param>
/// <param name="Width">Of the thing drawn: no scale is tried at which the thing alone is too wide.</param>
/// <param name="Height">Of the thing drawn.</param>
internal sealed record Figure(string Title, Length Width, Length Height, Func<Scale, Scene> Draw)
{
    /// <summary>The scene, or null where not even the smallest scale fits.</summary>
    public Scene? Within(LengthUnit unit, double width, double height) =>
        Fit.Largest(unit, width, height, Draw, (Width, Height)) is { Fits: true, Scene: var scene } ? scene : null;
}

/// <summary>Lays drawings with their captions.</summary>
internal static class FigureStrips
{
    private const double Gap = 8;
    private const double AboveFigure = 4;
    private const double ToCaption = 2;
    private const int MostCaptionLines = 3;
    // A back view is read beside its front; it is drawn at half the front's size or more.
    private const int MostSmaller = 2;
    private const double WorthReordering = 10;
    private static readonly double CaptionHeight = CaptionOf(MostCaptionLines);

    private static double CaptionOf(int lines) => ToCaption + lines * TextStyle.Small.SizeMillimetres * 1.175;

    /// <summary>One drawing in the middle of the sheet.</summary>
    /// <param name="height">The height it should have at most, caption included.</param>
    /// <param name="most">The height it may have where it does not fit into less at any scale.</param>
    public static IEnumerable<Strip> One(Figure figure, LengthUnit unit, double width, double height, double? most = null)
    {
        var room = most ?? height;
        return figure.Within(unit, width, height - CaptionHeight - AboveFigure) is null
            ? Beside([figure], unit, width, room) : Beside([figure], unit, width, height);
    }

    /// <summary>Drawings beside one another in equal rooms; those that fit in no room are told.</summary>
    /// <param name="height">The height there is, captions included.</param>
    public static IEnumerable<Strip> Beside(IReadOnlyList<Figure> figures, LengthUnit unit, double width, double height)
    {
        var each = (width - Gap * (figures.Count - 1)) / figures.Count;
        List<(Figure Figure, Scene Scene)> drawn = [];
        List<Figure> left = [];
        foreach (var figure in figures)
        {
            if (figure.Within(unit, each, height - CaptionHeight - AboveFigure) is { } scene)
                drawn.Add((figure, scene));
            else
                left.Add(figure);
        }

        return [.. Shelves(drawn, width), .. LeftOut(left, width)];
    }

    /// <summary>A front as large as it fits with its back beside or below it; null where the two do not fit.</summary>
    /// <param name="height">The height there is, captions included.</param>
    public static (Scale Scale, IReadOnlyList<Strip> Strips)? FrontAndBack(Figure front, Figure back, LengthUnit unit, double width, double height)
    {
        var room = height - AboveFigure - CaptionOf(1);
        var scales = Scale.Of(unit);
        Dictionary<Scale, Item> backs = [];
        foreach (var scale in scales)
        {
            if (!Holds(front, scale, width, room) || front.Draw(scale) is var scene && (scene.WidthMillimetres > width || scene.HeightMillimetres > room))
                continue;
            var item = Captioned(front.Title, scene, width);
            var below = room - scene.HeightMillimetres - AboveFigure - CaptionOf(1);
            foreach (var smaller in scales.Where(each => each.Reduction >= scale.Reduction && each.Reduction <= MostSmaller * scale.Reduction))
            {
                if (!Holds(back, smaller, width - item.Width - Gap, room) && !Holds(back, smaller, width, below))
                    continue;
                if (!backs.TryGetValue(smaller, out var other))
                    backs[smaller] = other = Captioned(back.Title, back.Draw(smaller), width);
                if (other.Scene.HeightMillimetres <= room && item.Width + Gap + other.Width <= width)
                    return (scale, [Shelf([item, other], width)]);
                if (other.Scene.HeightMillimetres <= below && other.Width <= width)
                    return (scale, [Shelf([item], width) with { KeepWithNext = true }, Shelf([other], width)]);
            }
        }

        return null;
    }

    // Whether the thing alone would fit, which costs no drawing.
    private static bool Holds(Figure figure, Scale scale, double width, double height) =>
        scale.OnPaper(figure.Width) <= width && scale.OnPaper(figure.Height) <= height;

    /// <summary>Many drawings, each at the smallest scale at which it is clear, side by side as they fit.</summary>
    /// <param name="figures">Each with what tells whether it is clear at a scale; one that is clear at none is drawn as large as fits.</param>
    /// <param name="height">The height each may have, caption included.</param>
    public static IEnumerable<Strip> Many(IEnumerable<(Figure Figure, Func<Scale, bool> IsClear)> figures, LengthUnit unit, double width, double height)
    {
        List<(Figure, Scene)> drawn = [];
        List<Figure> left = [];
        var room = height - CaptionHeight - AboveFigure;
        foreach (var (figure, isClear) in figures)
        {
            Scene? scene = null;
            if (Scale.Of(unit).Reverse().Cast<Scale?>().FirstOrDefault(scale => isClear(scale!.Value)) is { } clear && Holds(figure, clear, width, room))
                scene = figure.Draw(clear);
            if (scene is null || scene.WidthMillimetres > width || scene.HeightMillimetres > room)
                scene = figure.Within(unit, width, room);
            if (scene is not null)
                drawn.Add((figure, scene));
            else
                left.Add(figure);
        }

        return [.. Shelves(drawn, width), .. LeftOut(left, width)];
    }

    /// <summary>A drawing whose scale was found already, in the middle of the sheet; one that does not fit is told.</summary>
    public static IEnumerable<Strip> Drawn(string title, FittedScene drawn, double width) =>
        drawn.Fits ? [Shelf([Captioned(title, drawn.Scene, width)], width)] : LeftOut(title, width);

    private static IEnumerable<Strip> LeftOut(string title, double width) =>
        Prose.Paragraph($"{title}: left out, because it does not fit on this paper at any standard scale.", width);

    private static IEnumerable<Strip> LeftOut(IEnumerable<Figure> figures, double width) => figures.SelectMany(figure => LeftOut(figure.Title, width));

    /// <summary>A drawing that is laid out already, with its title and its scale, where it has one, below.</summary>
    public static Strip Of(Scene scene, double width, string title)
    {
        var caption = Typesetter.Set(scene.Scale is { } scale ? $"{title}, scale {scale}" : title, TextStyle.Small);
        var left = Math.Max(0, (width - scene.WidthMillimetres) / 2);
        return new(scene.HeightMillimetres + ToCaption + caption.Height,
        [
            new SceneGroup(null, scene.Description, scene.Nodes) { At = new(left, 0) },
            Strip.Put(caption, Math.Max(0, (width - caption.Width) / 2), scene.HeightMillimetres + ToCaption),
        ])
        { SpaceBefore = AboveFigure, Scales = scene.Scale is null ? [] : [scene.Scale] };
    }

    // In the order given, or the highest first where that takes less paper.
    private static IReadOnlyList<Strip> Shelves(IEnumerable<(Figure Figure, Scene Scene)> drawn, double width)
    {
        Item[] items = [.. drawn.Select(one => Captioned(one.Figure.Title, one.Scene, width))];
        Strip[] inOrder = [.. Shelves(items, width)];
        Strip[] byHeight = [.. Shelves(items.OrderByDescending(item => item.Scene.HeightMillimetres), width)];
        return Height(byHeight) < Height(inOrder) - WorthReordering ? byHeight : inOrder;

        static double Height(Strip[] strips) => strips.Sum(strip => strip.SpaceBefore + strip.Height);
    }

    // One further on may fill what is left of a shelf.
    private static IEnumerable<Strip> Shelves(IEnumerable<Item> items, double width)
    {
        List<Item> waiting = [.. items];
        while (waiting.Count > 0)
        {
            List<Item> shelf = [];
            var used = -Gap;
            foreach (var item in waiting)
            {
                if (shelf.Count > 0 && used + Gap + item.Width > width)
                    continue;
                used += Gap + item.Width;
                shelf.Add(item);
            }

            waiting.RemoveAll(shelf.Contains);
            yield return Shelf(shelf, width);
        }
    }

    private sealed record Item(Scene Scene, IReadOnlyList<SetLine> Caption, double Width);

    private static Item Captioned(string title, Scene scene, double width)
    {
        var words = $"{title}, {(scene.Scale is { } scale ? $"scale {scale}" : "not to scale")}";
        var caption = Typesetter.Wrap(words, TextStyle.Small, Math.Min(width, Math.Max(scene.WidthMillimetres, 60)));
        // The full words stand in the table beside it.
        if (caption.Count > MostCaptionLines)
            caption = [.. caption.Take(MostCaptionLines - 1), Typesetter.Set("and more", TextStyle.Small)];
        return new(scene, caption, Math.Max(scene.WidthMillimetres, caption.Max(line => line.Width)));
    }

    private static Strip Shelf(IReadOnlyList<Item> items, double width)
    {
        var highest = items.Max(item => item.Scene.HeightMillimetres);
        var air = (width - items.Sum(item => item.Width)) / (items.Count + 1);
        List<SceneNode> nodes = [];
        var left = air;
        var bottom = highest;
        foreach (var item in items)
        {
            var at = left + (item.Width - item.Scene.WidthMillimetres) / 2;
            nodes.Add(new SceneGroup(null, item.Scene.Description, item.Scene.Nodes) { At = new(at, highest - item.Scene.HeightMillimetres) });
            var top = highest + ToCaption;
            foreach (var line in item.Caption)
            {
                nodes.Add(Strip.Put(line, left + (item.Width - line.Width) / 2, top));
                top += line.Pitch;
            }

            bottom = Math.Max(bottom, top);
            left += item.Width + air;
        }

        return new(bottom, nodes) { SpaceBefore = AboveFigure, Scales = [.. items.Select(item => item.Scene.Scale)] };
    }
}
