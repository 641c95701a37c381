using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Doors;

/// <summary>What lies beyond one edge of an opening.</summary>
public enum BeyondKind
{
    Unknown,
    Opening,
    FrameEdge,
    Wall,
}

/// <summary>One edge of an opening: the member there and what lies beyond.</summary>
/// <param name="Member">Width of the frame member on that edge; null when nobody entered it.</param>
/// <param name="Shared">Width from this opening to its neighbour, a run's fillers included; the member itself otherwise.</param>
/// <param name="Neighbours">The ids of the openings beyond.</param>
public sealed record EdgeSite(BeyondKind Beyond, Worked? Member, Worked? Shared, IReadOnlyList<string> Neighbours)
{
    public static EdgeSite Unknown { get; } = new(BeyondKind.Unknown, null, null, []);
}

/// <summary>An opening with its place on the face.</summary>
/// <param name="Width">Width by the layout; null where the opening is only measured.</param>
/// <param name="Place">Its place on the face, from the bottom left of the frame; null where the opening is only measured.</param>
/// <param name="ColumnMates">The openings above and below it in the same division of the frame.</param>
public sealed record OpeningSite(
    Opening Opening, Worked? Width, Worked? Height, Rectangle? Place,
    EdgeSite Left, EdgeSite Right, EdgeSite Top, EdgeSite Bottom, IReadOnlyList<string> ColumnMates)
{
    public EdgeSite Edge(Side side) => side switch
    {
        Side.Left => Left,
        Side.Right => Right,
        Side.Top => Top,
        _ => Bottom,
    };

    public OpeningSite With(Side side, EdgeSite edge) => side switch
    {
        Side.Left => this with { Left = edge },
        Side.Right => this with { Right = edge },
        Side.Top => this with { Top = edge },
        _ => this with { Bottom = edge },
    };
}
