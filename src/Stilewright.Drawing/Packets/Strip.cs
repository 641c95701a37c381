using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Packets;

/// <summary>The least piece of a layout: as wide as the sheet's print, of known height, never broken across sheets.</summary>
/// <param name="Height">In millimetres.</param>
/// <param name="Nodes">From the strip's own top left corner.</param>
internal sealed record Strip(double Height, IReadOnlyList<SceneNode> Nodes)
{
    /// <summary>Air above it, left out at the head of a sheet.</summary>
    public double SpaceBefore { get; init; }

    /// <summary>Whether the next strip must begin on the same sheet, as after a heading.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Drawn again above this strip where a sheet begins with it, such as the head of its table.</summary>
    public IReadOnlyList<Strip> Repeated { get; init; } = [];

    /// <summary>The scales of the drawings in it; null for one that is not to scale.</summary>
    public IReadOnlyList<Scale?> Scales { get; init; } = [];

    public IReadOnlyList<Bookmark> Bookmarks { get; init; } = [];

    /// <summary>Puts a line of text with its top left corner at a place.</summary>
    public static Lettering Put(SetLine line, double left, double top) => new(new(left, top + line.Ascent), line);

    public static Shape Rule(double fromX, double fromY, double toX, double toY, LineStyle style = LineStyle.Rule) =>
        new(Outline.Line(new(fromX, fromY), new(toX, toY)), style);

    /// <summary>One strip of several columns of strips.</summary>
    public static Strip Beside(params IReadOnlyList<(double Left, IReadOnlyList<Strip> Strips)> columns)
    {
        List<SceneNode> nodes = [];
        var height = 0.0;
        foreach (var (left, strips) in columns)
        {
            var top = 0.0;
            foreach (var strip in strips)
            {
                top += top > 0 ? strip.SpaceBefore : 0;
                nodes.Add(new SceneGroup(null, null, strip.Nodes) { At = new(left, top) });
                top += strip.Height;
            }

            height = Math.Max(height, top);
        }

        var all = columns.SelectMany(column => column.Strips).ToList();
        return new(height, nodes) { Scales = [.. all.SelectMany(strip => strip.Scales)], Bookmarks = [.. all.SelectMany(strip => strip.Bookmarks)] };
    }

    /// <summary>The strip with its content shifted and further nodes under it.</summary>
    public Strip Within(double right, double down, double height, params IReadOnlyList<SceneNode> under) => this with
    {
        Height = height,
        Nodes = [.. under, new SceneGroup(null, null, Nodes) { At = new(right, down) }],
    };
}
