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
    private static readonly double CaptionHeight = ToCaption + MostCaptionLines * TextStyle.Small.SizeMillimetres * 1.175;

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

    /// <summary>Many small drawings, each at its own scale, side by side as they fit.</summary>
    /// <param name="figures">Each with the room it should take; it may take more where it does not fit at any scale.</param>
    public static IEnumerable<Strip> Many(IEnumerable<(Figure Figure, double Width, double Height)> figures, LengthUnit unit, double width)
    {
        List<(Figure, Scene)> drawn = [];
        List<Figure> left = [];
        foreach (var (figure, roomWidth, roomHeight) in figures)
        {
            if ((figure.Within(unit, roomWidth, roomHeight) ?? figure.Within(unit, width, roomHeight * 2)) is { } scene)
                drawn.Add((figure, scene));
            else
                left.Add(figure);
        }

        return [.. Shelves(drawn, width), .. LeftOut(left, width)];
    }

    private static IEnumerable<Strip> LeftOut(IEnumerable<Figure> figures, double width) => figures.SelectMany(figure =>
        Prose.Paragraph($"{figure.Title}: left out, because it does not fit on this paper at any standard scale.", width));

    /// <summary>Scenes that already have their size, each by itself.</summary>
    public static Strip Placed(string title, Scene scene, double width) => Shelf([Captioned(title, scene, width)], width);

    private static IEnumerable<Strip> Shelves(IEnumerable<(Figure Figure, Scene Scene)> drawn, double width)
    {
        List<Item> shelf = [];
        var used = 0.0;
        foreach (var (figure, scene) in drawn)
        {
            var item = Captioned(figure.Title, scene, width);
            if (shelf.Count > 0 && used + Gap + item.Width > width)
            {
                yield return Shelf(shelf, width);
                shelf = [];
                used = 0;
            }

            used += item.Width + (shelf.Count > 0 ? Gap : 0);
            shelf.Add(item);
        }

        if (shelf.Count > 0)
            yield return Shelf(shelf, width);
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
