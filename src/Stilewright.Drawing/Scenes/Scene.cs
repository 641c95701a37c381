namespace Stilewright.Drawing.Scenes;

/// <summary>A drawing at its size on paper, made once and walked by every writer.</summary>
/// <param name="Title">Names the drawing in a few words.</param>
/// <param name="Description">Says what is to be seen, for those who cannot see it.</param>
/// <param name="WidthMillimetres">Width on paper.</param>
/// <param name="HeightMillimetres">Height on paper.</param>
public sealed record Scene(
    string Title, string Description, double WidthMillimetres, double HeightMillimetres, IReadOnlyList<SceneNode> Nodes)
{
    /// <summary>The scale of what is drawn; null where there is none or it is not to scale.</summary>
    public Scale? Scale { get; init; }

    /// <summary>The same drawing for a printer that stretches what it prints: places are moved, letters keep their size.</summary>
    /// <param name="across">Factor along the width of the paper.</param>
    /// <param name="down">Factor along its height.</param>
    public Scene Stretched(double across, double down)
    {
        PaperPoint Move(PaperPoint point) => new(point.X * across, point.Y * down);
        PaperBox Grow(PaperBox box) => new(box.Left * across, box.Top * down, box.Width * across, box.Height * down);
        Lettering Carry(Lettering text) => text with { At = Move(text.At) };
        SceneNode Stretch(SceneNode node) => node switch
        {
            SceneGroup group => group with
            {
                At = Move(group.At),
                Clip = group.Clip is { } clip ? Grow(clip) : null,
                Children = [.. group.Children.Select(Stretch)],
            },
            Shape shape => shape with { Outline = shape.Outline.Stretched(across, down) },
            Hatch hatch => hatch with { Outline = hatch.Outline.Stretched(across, down) },
            CellGrid grid => grid with { Box = Grow(grid.Box) },
            Lettering text => Carry(text),
            DimensionMark mark => mark with
            {
                From = Move(mark.From),
                To = Move(mark.To),
                Strokes = [.. mark.Strokes.Select(stroke => stroke.Stretched(across, down))],
                Text = Carry(mark.Text),
            },
            _ => throw new ArgumentException($"A scene cannot hold a {node.GetType().Name}."),
        };
        return this with
        {
            WidthMillimetres = WidthMillimetres * across,
            HeightMillimetres = HeightMillimetres * down,
            Nodes = [.. Nodes.Select(Stretch)],
        };
    }

    /// <summary>The same drawing on a white sheet with a margin, for a file that may be shown on any ground.</summary>
    /// <param name="marginMillimetres">On every side.</param>
    public Scene OnSheet(double marginMillimetres)
    {
        var (width, height) = (WidthMillimetres + 2 * marginMillimetres, HeightMillimetres + 2 * marginMillimetres);
        return this with
        {
            WidthMillimetres = width,
            HeightMillimetres = height,
            Nodes =
            [
                new Shape(Outline.Box(new(0, 0, width, height)), null, Tone.Paper),
                new SceneGroup(null, null, Nodes) { At = new(marginMillimetres, marginMillimetres) },
            ],
        };
    }

    /// <summary>Every node that is no group, with its place on the scene.</summary>
    public IEnumerable<(SceneNode Node, PaperPoint At)> Drawn => Walk(Nodes, default);

    private static IEnumerable<(SceneNode, PaperPoint)> Walk(IEnumerable<SceneNode> nodes, PaperPoint at)
    {
        foreach (var node in nodes)
        {
            if (node is SceneGroup group)
            {
                foreach (var inner in Walk(group.Children, at + group.At))
                    yield return inner;
            }
            else
            {
                yield return (node, at);
            }
        }
    }
}
