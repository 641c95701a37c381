using Stilewright.Drawing.Letters;
using Stilewright.Measure;

namespace Stilewright.Drawing.Scenes;

/// <summary>Something drawn, or a group of such. The cases are closed; writers take them apart by <c>switch</c>.</summary>
public abstract record SceneNode;

/// <summary>Nodes that belong together.</summary>
/// <param name="Path">The path of the thing drawn, such as <c>hall-lower/leaf.left/rail.top</c>; null where it is no one thing.</param>
/// <param name="Title">What it is, in words, for those who cannot see it; null where its content says it.</param>
/// <param name="Children">In the order in which they are drawn, later ones on top.</param>
public sealed record SceneGroup(string? Path, string? Title, IReadOnlyList<SceneNode> Children) : SceneNode
{
    /// <summary>Where the group's own origin lies in the group around it.</summary>
    public PaperPoint At { get; init; }

    /// <summary>What is shown of the group, in its own coordinates; null for all of it.</summary>
    public PaperBox? Clip { get; init; }
}

/// <summary>How an outline is filled. Drawings are made for black and white first.</summary>
public enum Tone
{
    None,

    /// <summary>White, over what lies beneath.</summary>
    Paper,

    /// <summary>A light grey that survives a copier: heads of tables, hatched-out things.</summary>
    Tint,

    /// <summary>Black.</summary>
    Ink,
}

/// <summary>An outline, drawn or filled or both.</summary>
/// <param name="Line">Null for an outline that is only filled.</param>
public sealed record Shape(Outline Outline, LineStyle? Line, Tone Fill = Tone.None) : SceneNode;

/// <summary>A closed outline filled with parallel lines.</summary>
/// <param name="AngleDegrees">Anticlockwise from level, as seen.</param>
/// <param name="SpacingMillimetres">Between lines, greater than zero.</param>
public sealed record Hatch(Outline Outline, double AngleDegrees, double SpacingMillimetres) : SceneNode
{
    /// <summary>The lines, cut off at the outline; holes do not occur.</summary>
    public IReadOnlyList<(PaperPoint From, PaperPoint To)> Lines
    {
        get
        {
            const double FlatteningMillimetres = 0.02;
            const double ShortestMillimetres = 1e-6;
            var corners = Outline.Flattened(FlatteningMillimetres);
            var (sine, cosine) = Math.SinCos(AngleDegrees * Math.PI / 180);
            // In a frame turned with the lines every line is level, at a whole multiple of the spacing.
            PaperPoint Turn(PaperPoint point) => new(point.X * cosine - point.Y * sine, point.X * sine + point.Y * cosine);
            PaperPoint Back(PaperPoint point) => new(point.X * cosine + point.Y * sine, -point.X * sine + point.Y * cosine);
            PaperPoint[] turned = [.. corners.Select(Turn)];
            List<(PaperPoint, PaperPoint)> lines = [];
            var last = (long)Math.Floor(turned.Max(point => point.Y) / SpacingMillimetres);
            for (var row = (long)Math.Ceiling(turned.Min(point => point.Y) / SpacingMillimetres); row <= last; row++)
            {
                var y = row * SpacingMillimetres;
                List<double> crossings = [];
                for (var i = 0; i < turned.Length; i++)
                {
                    var (one, other) = (turned[i], turned[(i + 1) % turned.Length]);
                    if (one.Y <= y != other.Y <= y)
                        crossings.Add(one.X + (y - one.Y) / (other.Y - one.Y) * (other.X - one.X));
                }

                crossings.Sort();
                for (var i = 0; i + 1 < crossings.Count; i += 2)
                {
                    // A row that only touches a corner has no line.
                    if (crossings[i + 1] - crossings[i] > ShortestMillimetres)
                        lines.Add((Back(new(crossings[i], y)), Back(new(crossings[i + 1], y))));
                }
            }

            return lines;
        }
    }
}

/// <summary>A square grid of cells, some of them inked: a code for a reader.</summary>
/// <param name="Box">What the grid covers.</param>
/// <param name="Inked">By row from the top, then by column.</param>
public sealed record CellGrid(PaperBox Box, IReadOnlyList<IReadOnlyList<bool>> Inked) : SceneNode
{
    /// <summary>One outline for every run of inked cells in a row, so that no hairline shows between neighbours.</summary>
    public IEnumerable<Outline> Bars
    {
        get
        {
            var (width, height) = (Box.Width / Inked[0].Count, Box.Height / Inked.Count);
            for (var row = 0; row < Inked.Count; row++)
            {
                for (var from = 0; from < Inked[row].Count;)
                {
                    var to = from;
                    while (to < Inked[row].Count && Inked[row][to])
                        to++;
                    if (to > from)
                        yield return Outline.Box(new(Box.Left + from * width, Box.Top + row * height, (to - from) * width, height));
                    from = to + 1;
                }
            }
        }
    }
}

/// <summary>One line of text.</summary>
/// <param name="At">The left end of its baseline, before it is turned.</param>
/// <param name="IsUpright">False for text that reads from bottom to top, from the right of the sheet (ISO 129-1).</param>
public sealed record Lettering(PaperPoint At, SetLine Line, bool IsUpright = true) : SceneNode
{
    /// <summary>What the text covers on paper.</summary>
    public PaperBox Box => IsUpright
        ? new(At.X, At.Y - Line.Ascent, Line.Width, Line.Ascent + Line.Descent)
        : new(At.X - Line.Ascent, At.Y - Line.Width, Line.Ascent + Line.Descent, Line.Width);
}

/// <summary>A measured distance: extension lines, dimension line, ticks and text, placed.</summary>
/// <param name="Value">What is measured, exactly.</param>
/// <param name="Scale">The scale of the drawing it stands in.</param>
/// <param name="From">One end of the dimension line.</param>
/// <param name="To">The other end; the distance between the two is the value at the scale, times <see cref="Exaggeration"/>.</param>
/// <param name="Strokes">Dimension line, ticks, extension and leader lines.</param>
/// <param name="Text">The figure.</param>
public sealed record DimensionMark(
    Length Value, Scale Scale, PaperPoint From, PaperPoint To, IReadOnlyList<Outline> Strokes, Lettering Text) : SceneNode
{
    /// <summary>The path of the thing measured; null where it is no one thing.</summary>
    public string? Path { get; init; }

    /// <summary>How many times larger than the scale says it is drawn, so that it can be seen.</summary>
    public int Exaggeration { get; init; } = 1;
}
