using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Figures;

/// <summary>Finds room for a few words inside a thing that is drawn: upright or turned, as large as they can be.</summary>
/// <remarks>One is made for a drawing; it remembers what it has placed, so that no two labels cover one another.</remarks>
internal sealed class LabelFit
{
    private const double Padding = 0.5;
    private const double LeastWithSecond = 2.8;
    private static readonly double[] Sizes = [5, 4.2, 3.5, LeastWithSecond, 2.2, 1.8];
    // Where the middle of the label may lie, as a share of the room, the best first.
    private static readonly double[] Shares = [0.5, 0.38, 0.62, 0.27, 0.73, 0.17, 0.83];
    private readonly List<PaperBox> placed = [];

    /// <summary>The words on a white ground, or nothing when there is no room for even the first line at its smallest.</summary>
    /// <param name="rooms">What the words must stay inside, the best place first.</param>
    /// <param name="first">The name, set strong.</param>
    /// <param name="second">A figure below it, left out where there is no room; null for none.</param>
    public IReadOnlyList<SceneNode> Place(IReadOnlyList<PaperBox> rooms, string first, string? second)
    {
        foreach (var withSecond in second is null ? new[] { false } : [true, false])
        {
            // A figure that cannot be read is no help: the name alone may be larger.
            foreach (var size in Sizes.Where(size => !withSecond || size >= LeastWithSecond))
            {
                SetLine[] lines =
                [
                    Typesetter.Set(first, new(size, Weight.Strong)),
                    .. withSecond ? [Typesetter.Set(second!, new(Math.Max(2.6, size * 0.8)))] : Array.Empty<SetLine>(),
                ];
                foreach (var upright in new[] { true, false })
                {
                    if (rooms.Select(room => Place(room, lines, upright)).FirstOrDefault(nodes => nodes is not null) is { } nodes)
                        return nodes;
                }
            }
        }

        return [];
    }

    private SceneNode[]? Place(PaperBox room, SetLine[] lines, bool upright)
    {
        var along = lines.Max(line => line.Width) + 2 * Padding;
        var across = lines.Sum(line => line.Height) + 2 * Padding;
        var (width, height) = upright ? (along, across) : (across, along);
        if (width > room.Width - 2 * Padding || height > room.Height - 2 * Padding)
            return null;
        foreach (var down in Shares)
        {
            var middle = room.Top + Math.Clamp(room.Height * down, height / 2 + Padding, room.Height - height / 2 - Padding);
            var ground = new PaperBox(room.Centre.X - width / 2, middle - height / 2, width, height);
            if (placed.Any(ground.Overlaps))
                continue;
            placed.Add(ground);
            List<SceneNode> nodes = [new Shape(Outline.Box(ground), null, Tone.Paper)];
            var reached = Padding;
            foreach (var line in lines)
            {
                nodes.Add(upright
                    ? new Lettering(new(ground.Centre.X - line.Width / 2, ground.Top + reached + line.Ascent), line)
                    : new Lettering(new(ground.Left + reached + line.Ascent, ground.Centre.Y + line.Width / 2), line, IsUpright: false));
                reached += line.Height;
            }

            return [.. nodes];
        }

        return null;
    }
}
