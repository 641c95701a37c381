using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wording;

namespace Stilewright.Hanging.Adjusting;

/// <summary>The leaves of one face, or of one front without a layout, that are hinged on a side, and the gaps to be read on them.</summary>
/// <param name="Path">The id of the face, or of the opening.</param>
/// <param name="Name">What the piece and its face, or the front, are called.</param>
public sealed record HungRow(string Path, string Name, IReadOnlyList<RowLeaf> Leaves, IReadOnlyList<GapPlace> Places)
{
    /// <summary>Farther apart, two leaves are read against the frame between them and not against one another.</summary>
    private static readonly Length Farthest = 4.Inches;

    /// <summary>The rows of a piece: of each face the fronts that have a place on its frame together, each other front alone. Rows without a leaf to adjust are left out.</summary>
    /// <param name="hang">Hinges and screws of a leaf; null for one that is not adjusted, such as a drawer front.</param>
    public static IReadOnlyList<HungRow> Of(PieceBreakdown piece, Func<SizedFront, SizedLeaf, RowLeaf?> hang)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(hang);
        List<HungRow> rows = [];
        foreach (var face in piece.Faces)
        {
            rows.Add(Of(face.Face.Id, piece.Faces.Count > 1 ? $"{piece.Piece.Name}, {TradeWords.Words(face.Face.Side)}" : piece.Piece.Name,
                [.. face.Fronts.Where(front => front.Place is not null)], hang));
            rows.AddRange(face.Fronts.Where(front => front.Place is null).Select(front => Of(front.Path, front.Name, [front], hang)));
        }

        return [.. rows.Where(row => row.Leaves.Count > 0)];
    }

    /// <summary>The rows of the chosen fronts, hinged as the plan says.</summary>
    public static IEnumerable<HungRow> Of(Selection selection, HangingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(selection);
        ArgumentNullException.ThrowIfNull(plan);
        var hung = plan.Leaves.ToDictionary(leaf => leaf.Leaf.Path);
        return selection.Fronts.Select(front => front.Piece).Distinct().SelectMany(piece => Of(piece, (_, leaf) => hung.TryGetValue(leaf.Path, out var found) ? RowLeaf.Of(found) : null));
    }

    /// <summary>The row as it was read; readings of other leaves are left out.</summary>
    public AdjustingTask With(IEnumerable<GapReading> gaps, IEnumerable<ProudReading> corners, Length step, Length tolerance)
    {
        var labels = Leaves.Select(leaf => leaf.Label).ToHashSet();
        return new(Leaves, [.. gaps.Where(gap => labels.Contains(gap.Leaf))], [.. corners.Where(corner => labels.Contains(corner.Leaf))], step, tolerance);
    }

    private static HungRow Of(string path, string name, IReadOnlyList<SizedFront> fronts, Func<SizedFront, SizedLeaf, RowLeaf?> hang)
    {
        List<(SizedFront Front, RowLeaf Leaf)> hung =
        [
            .. from front in fronts
               from leaf in front.Leaves
               where !leaf.IsWithheld && !leaf.IsDrawerFront && leaf.Hinge is HingeSide.Left or HingeSide.Right
               select (front, Leaf: hang(front, leaf)) into found
               where found.Leaf is not null
               select (found.front, found.Leaf),
        ];
        List<GapPlace> places = [];
        foreach (var (front, leaf) in hung)
        {
            foreach (var edge in new[] { Side.Left, Side.Right, Side.Top, Side.Bottom })
            {
                var beyond = hung.Where(other => other.Leaf != leaf && (front.Mount != Mount.Inset || other.Front == front) && Faces(leaf.Place, other.Leaf.Place, edge))
                    .OrderBy(other => Apart(leaf.Place, other.Leaf.Place, edge)).ToList();
                if (beyond.Count > 0)
                    places.AddRange(beyond.SelectMany(other => Between(leaf, other.Leaf, edge)));
                else
                    places.AddRange(new[] { EdgeEnd.Start, EdgeEnd.End }.Select(at => new GapPlace(leaf.Label, edge, at, null, ToFrame(front, edge))));
            }
        }

        return new(path, name, [.. hung.Select(found => found.Leaf)], places);
    }

    // What an inset front leaves to its opening, or an overlay one to the frame's edge or to a front that does not move.
    private static Length? ToFrame(SizedFront front, Side edge) =>
        front.Edges.FirstOrDefault(reach => reach.Side == edge) is not { } found ? null : front.Mount == Mount.Inset ? -found.Reach : found.Reveal;

    // A gap between two leaves is read once, at the ends of the shorter edge; of equal ones at the left or lower leaf.
    private static IEnumerable<GapPlace> Between(RowLeaf leaf, RowLeaf other, Side edge)
    {
        var (own, theirs) = edge is Side.Left or Side.Right ? (leaf.Place.Height, other.Place.Height) : (leaf.Place.Width, other.Place.Width);
        if (own > theirs || (own == theirs && edge is Side.Left or Side.Bottom))
            yield break;
        var (low, high) = Extent(other.Place, edge);
        var (start, end) = Extent(leaf.Place, edge);
        foreach (var (at, along) in new[] { (EdgeEnd.Start, start), (EdgeEnd.End, end) })
        {
            var apart = Apart(leaf.Place, other.Place, edge);
            if (along >= low && along <= high)
                yield return new(leaf.Label, edge, at, other.Label, apart.IsPositive ? apart : null);
        }
    }

    private static bool Faces(Rectangle own, Rectangle other, Side edge)
    {
        var (start, end) = Extent(own, edge);
        var (low, high) = Extent(other, edge);
        var apart = Apart(own, other, edge);
        return low < end && start < high && apart <= Farthest && apart > -Farthest && Lies(own, other, edge);
    }

    private static bool Lies(Rectangle own, Rectangle other, Side edge) => edge switch
    {
        Side.Left => other.X < own.X && other.Right < own.Right,
        Side.Right => other.X > own.X && other.Right > own.Right,
        Side.Top => other.Y > own.Y && other.Top > own.Top,
        _ => other.Y < own.Y && other.Top < own.Top,
    };

    private static (Length Start, Length End) Extent(Rectangle place, Side edge) => edge is Side.Left or Side.Right ? (place.Y, place.Top) : (place.X, place.Right);

    private static Length Apart(Rectangle own, Rectangle other, Side edge) => edge switch
    {
        Side.Left => own.X - other.Right,
        Side.Right => other.X - own.Right,
        Side.Top => other.Y - own.Top,
        _ => own.Y - other.Top,
    };
}
