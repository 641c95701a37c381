using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>Faces and fillers of a run as they stand side by side, seen from the front.</summary>
public static class RunElevation
{
    /// <param name="title">Names the drawing, such as "Bench 3: run along the wall".</param>
    public static Scene Draw(string title, RunFigure run, Scale scale, LengthFormat format)
    {
        var painter = new FrontPainter(format);
        RunFigureFace[] faces = [.. run.Items.OfType<RunFigureFace>()];
        var extents = faces.Select(face => Extents.Of(face.Face.Frame!, Placed(face.Face)).Shifted(face.FrameX, default)).ToList();
        var extent = Extents.Round([.. extents.SelectMany(each => each.Corners), new(default, default), new(run.Width, default)]);
        var view = new View(scale, extent.X, extent.Top);
        List<SceneNode> nodes = [];
        foreach (var filler in run.Items.OfType<RunFigureFiller>())
        {
            // A filler is as high as the frames beside it; where they differ, as the lower one.
            var beside = run.Items.Select((item, i) => (item, i)).First(pair => ReferenceEquals(pair.item, filler)).i;
            var heights = new[] { beside - 1, beside + 1 }.Where(i => i >= 0 && i < run.Items.Count)
                .Select(i => run.Items[i]).OfType<RunFigureFace>().Select(face => face.Face.Frame!.Height).ToList();
            if (heights.Count > 0)
            {
                nodes.Add(new SceneGroup(null, "filler",
                    [new Shape(Outline.Box(view.Box(new(filler.X, default, filler.Width, heights.Min()))), LineStyle.Visible, Tone.Paper)]));
            }
        }

        foreach (var face in faces)
        {
            var frame = face.Face.Frame!;
            var onFace = view with { Left = view.Left - face.FrameX };
            nodes.AddRange(FrontPainter.Frame(frame, onFace));
            nodes.Add(new Shape(Outline.Box(onFace.Box(Extents.Of(frame))), LineStyle.Visible));
        }

        // Fronts after all frames, since one may reach over its neighbour's stile.
        foreach (var face in faces)
        {
            var onFace = view with { Left = view.Left - face.FrameX };
            foreach (var front in Placed(face.Face))
                nodes.AddRange(FrontPainter.Front(front, onFace, face.Face.Frame!.Openings.FirstOrDefault(opening => opening.Path == front.Path)?.Clear.Corners ?? []));
        }

        var labels = new LabelFit();
        foreach (var face in faces)
            nodes.AddRange(painter.Labels(Placed(face.Face), view with { Left = view.Left - face.FrameX }, labels));

        Span[] items = [.. run.Items.Select(item => new Span(view.X(item.X), view.X(item.X + item.Width), item.Width)
        {
            Path = (item as RunFigureFace)?.Face.Face.Id,
        })];
        var heightsFrom = faces.MaxBy(face => face.Face.Frame!.Height)!.Face.Frame!.Height;
        var dimensions = new DimensionPlacer(scale, format, TextStyle.Figure).Place(view.Box(extent),
        [
            new(Side.Bottom, items),
            new(Side.Bottom, [new(view.X(default), view.X(run.Width), run.Width) { Path = run.Run.Id }]),
            new(Side.Left, [new(view.Y(default), view.Y(heightsFrom), heightsFrom)]),
        ]);
        var bounds = dimensions.Bounds;
        var leaves = faces.SelectMany(face => Placed(face.Face)).SelectMany(front => front.Leaves);
        return new(title,
            $"{faces.Length} faces side by side. Leaves: {string.Join("; ", leaves.Select(leaf => $"{leaf.Label} {painter.Size(leaf)}"))}. Dashed lines meet at the hinge side.{painter.UnlabelledWords}",
            bounds.Width, bounds.Height,
            [new SceneGroup(run.Run.Id, null, [.. nodes, .. dimensions.Marks]) { At = new(-bounds.Left, -bounds.Top) }])
        {
            Scale = scale,
        };
    }

    private static IEnumerable<SizedFront> Placed(FaceBreakdown face) => face.Fronts.Where(front => front.Place is not null);
}
