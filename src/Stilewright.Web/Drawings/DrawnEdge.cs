using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Wording;

namespace Stilewright.Web.Drawings;

/// <summary>What one edge of a front does, said on the drawing at the middle of that edge.</summary>
/// <param name="X">As a share of the drawing's width.</param>
/// <param name="Y">As a share of its height.</param>
public sealed record DrawnEdge(double X, double Y, Side Side, string Text)
{
    /// <summary>The four edges of a front; none where it is not in the drawing.</summary>
    public static IReadOnlyList<DrawnEdge> Of(Scene scene, SizedFront front, TradeWords words)
    {
        var paths = front.Leaves.Select(leaf => leaf.Path).ToHashSet(StringComparer.Ordinal);
        PaperBox? all = null;
        foreach (var box in Leaves(scene.Nodes, default, paths))
            all = all is { } known ? known.With(box) : box;
        if (all is not { } whole)
            return [];
        return
        [
            .. from edge in front.Edges
               let at = edge.Side switch
               {
                   Side.Left => new PaperPoint(whole.Left, whole.Top + (whole.Height / 2)),
                   Side.Right => new PaperPoint(whole.Right, whole.Top + (whole.Height / 2)),
                   Side.Top => new PaperPoint(whole.Left + (whole.Width / 2), whole.Top),
                   _ => new PaperPoint(whole.Left + (whole.Width / 2), whole.Bottom),
               }
               select new DrawnEdge(at.X / scene.WidthMillimetres, at.Y / scene.HeightMillimetres, edge.Side, words.Of(Measure.Length.Abs(edge.Reach))),
        ];
    }

    private static IEnumerable<PaperBox> Leaves(IEnumerable<SceneNode> nodes, PaperPoint origin, HashSet<string> paths)
    {
        foreach (var group in nodes.OfType<SceneGroup>())
        {
            var own = origin + group.At;
            if (group.Path is { } path && paths.Contains(path) && group.Children.OfType<Shape>().FirstOrDefault() is { } outline)
            {
                var box = outline.Outline.Bounds;
                yield return new(box.Left + own.X, box.Top + own.Y, box.Width, box.Height);
            }

            foreach (var inner in Leaves(group.Children, own, paths))
                yield return inner;
        }
    }
}
