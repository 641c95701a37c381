using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Figures;

/// <summary>A face with its frame, openings, leaves and hands, seen from the front and dimensioned.</summary>
public static class FaceElevation
{
    private const double BetweenFigures = 8;
    private const double AfterFrame = 6;

    /// <summary>
    /// Draws the face: its frame with what hangs on it, below that, one by one, the fronts whose place on the face nobody entered, and in
    /// words the openings that are not measured yet.
    /// </summary>
    /// <param name="title">Names the drawing, such as "Bench 3, wall cabinet: front".</param>
    /// <param name="widthMillimetres">How wide the fronts that stand one by one may become before a new row is begun.</param>
    /// <param name="isPlain">Without labels and dimensions, for a drawing too small to read them.</param>
    public static Scene Draw(string title, FaceBreakdown face, Scale scale, LengthFormat format, double widthMillimetres, bool isPlain = false)
    {
        var painter = new FrontPainter(format);
        List<Figure> stack = [];
        if (face.Frame is { } frame)
            stack.Add(Framed(face, frame, painter, scale, format, isPlain));
        SizedFront[] alone = [.. face.Fronts.Where(front => (face.Frame is null || front.Place is null) && front.Leaves.Any(FrontPainter.IsThere))];
        foreach (var row in Rows([.. alone.Select(front => Alone(front, painter, scale, format, isPlain))], widthMillimetres))
            stack.Add(row);
        string[] unmeasured = [.. face.Fronts.Where(front => front.Unmeasured is not null)
            .Select(front => $"{FrontWords.Name(front)}: {FrontWords.Unmeasured(front, new(format))}.")];
        return Stack(title, Describe(face, painter, alone, unmeasured), scale, stack,
            face.Frame is null ? null : "Their places on the face were not entered:", alone.Length > 0, unmeasured);
    }

    /// <summary>One front over its opening, without labels.</summary>
    /// <param name="change">Makes other rows of the dimensions, such as one with letters for figures.</param>
    public static Scene OfFront(string title, SizedFront front, Scale scale, LengthFormat format, Func<DimensionRow, DimensionRow> change)
    {
        var figure = Alone(front, new(format), scale, format, isPlain: false, change);
        return Stack(title, title, scale, [figure], null, false, []);
    }

    /// <summary>A face's frame with the fronts whose place on it is known.</summary>
    private static Figure Framed(FaceBreakdown face, FrameFigure frame, FrontPainter painter, Scale scale, LengthFormat format, bool isPlain)
    {
        SizedFront[] fronts = [.. face.Fronts.Where(front => front.Place is not null)];
        var extent = Extents.Of(frame, fronts);
        var view = new View(scale, extent.X, extent.Top);
        List<SceneNode> nodes = [.. FrontPainter.Frame(frame, view), new Shape(Outline.Box(view.Box(Extents.Of(frame))), LineStyle.Visible)];
        foreach (var front in fronts)
        {
            var clear = frame.Openings.FirstOrDefault(opening => opening.Path == front.Path)?.Clear;
            nodes.AddRange(FrontPainter.Front(front, view, clear?.Corners ?? []));
        }

        if (isPlain)
            return new(nodes, view.Box(extent));
        nodes.AddRange(painter.Labels(fronts, view, new()));

        var leaves = fronts.SelectMany(front => front.Leaves).Where(FrontPainter.IsThere).ToList();
        var figure = view.Box(extent);
        var dimensions = new DimensionPlacer(scale, format, TextStyle.Figure).Place(figure, [.. Chains.Of(face.Face.Id, frame, leaves, view)]);
        return new([.. nodes, .. dimensions.Marks], dimensions.Bounds);
    }

    /// <summary>A front by itself, over its opening as the tape found it.</summary>
    private static Figure Alone(
        SizedFront front, FrontPainter painter, Scale scale, LengthFormat format, bool isPlain, Func<DimensionRow, DimensionRow>? change = null)
    {
        SizedLeaf[] leaves = [.. front.Leaves.Where(FrontPainter.IsThere)];
        IReadOnlyList<Point> opening = [];
        if (front.Figure is { } measured)
        {
            var left = front.Edges.FirstOrDefault(edge => edge.Side == Side.Left)?.Reach ?? default;
            var bottom = front.Edges.FirstOrDefault(edge => edge.Side == Side.Bottom)?.Reach ?? default;
            opening = [.. measured.Corners.Select(corner => new Point(
                corner.X - measured.Offset.X + leaves[0].Place.X + left, corner.Y - measured.Offset.Y + leaves.Min(leaf => leaf.Place.Y) + bottom))];
        }

        var extent = Extents.Round([.. leaves.SelectMany(leaf => leaf.Place.Corners), .. opening]);
        var view = new View(scale, extent.X, extent.Top);
        List<SceneNode> nodes = [];
        if (opening.Count > 0)
            nodes.Add(new SceneGroup(front.Path, "opening", [new Shape(view.Polygon(opening), LineStyle.Visible)]));
        nodes.AddRange(FrontPainter.Front(front, view, opening));
        if (isPlain)
            return new(nodes, view.Box(extent));
        if (change is null)
            nodes.AddRange(painter.Labels([front], view, new()));
        var rows = Chains.Of(front, leaves, opening, view);
        var dimensions = new DimensionPlacer(scale, format, TextStyle.Figure).Place(view.Box(extent), [.. change is null ? rows : rows.Select(change)]);
        return new([.. nodes, .. dimensions.Marks], dimensions.Bounds);
    }

    private static IEnumerable<Figure> Rows(List<Figure> figures, double widthMillimetres)
    {
        for (var first = 0; first < figures.Count;)
        {
            List<SceneNode> nodes = [];
            var (right, top, bottom) = (0.0, 0.0, 0.0);
            var next = first;
            for (; next < figures.Count; next++)
            {
                var figure = figures[next];
                if (next > first && right + figure.Bounds.Width > widthMillimetres)
                    break;
                // Figures stand on one line, their own lower edges at zero.
                nodes.Add(new SceneGroup(null, null, figure.Nodes) { At = new(right - figure.Bounds.Left, 0) });
                right += figure.Bounds.Width + BetweenFigures;
                (top, bottom) = (Math.Min(top, figure.Bounds.Top), Math.Max(bottom, figure.Bounds.Bottom));
            }

            yield return new(nodes, new(0, top, right - BetweenFigures, bottom - top));
            first = next;
        }
    }

    private static Scene Stack(string title, string description, Scale scale, List<Figure> stack, string? beforeLoose, bool hasLoose, IReadOnlyList<string> after)
    {
        List<SceneNode> nodes = [];
        var width = stack.Count == 0 ? 0 : stack.Max(each => each.Bounds.Width);
        var down = 0.0;
        for (var i = 0; i < stack.Count; i++)
        {
            if (i == 1 && hasLoose && beforeLoose is not null)
            {
                Write(beforeLoose);
                down += AfterFrame / 2;
            }

            var bounds = stack[i].Bounds;
            nodes.Add(new SceneGroup(null, null, stack[i].Nodes) { At = new(-bounds.Left, down - bounds.Top) });
            down += bounds.Height + (i + 1 < stack.Count ? AfterFrame : 0);
        }

        if (stack.Count > 0 && after.Count > 0)
            down += AfterFrame;
        foreach (var words in after)
            Write(words);
        return new(title, description, width, down, nodes) { Scale = scale };

        void Write(string words)
        {
            foreach (var line in Typesetter.Wrap(words, TextStyle.Body, Math.Max(width, 40)))
            {
                nodes.Add(new Lettering(new(0, down + line.Ascent), line));
                width = Math.Max(width, line.Width);
                down += line.Pitch;
            }
        }
    }

    private static string Describe(FaceBreakdown face, FrontPainter painter, SizedFront[] alone, IEnumerable<string> unmeasured)
    {
        var leaves = face.Fronts.SelectMany(front => front.Leaves).ToList();
        List<string> sentences = [];
        sentences.Add(face.Frame is null
            ? $"{Count(alone.Length, "front", "fronts")} drawn one by one, each over its opening; places on the face were not entered."
            : $"Face frame with {Count(face.Frame.Openings.Count, "space", "spaces")} and {Count(face.Fronts.Count, "front", "fronts")}.");
        sentences.AddRange(unmeasured);
        if (leaves.Count > 0)
            sentences.Add($"Leaves: {string.Join("; ", leaves.Select(leaf => $"{leaf.Label} {painter.Size(leaf)}"))}.");
        sentences.Add($"Dashed lines meet at the hinge side.{painter.UnlabelledWords}");
        return string.Join(' ', sentences);

        static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";
    }

    private sealed record Figure(IReadOnlyList<SceneNode> Nodes, PaperBox Bounds);
}
