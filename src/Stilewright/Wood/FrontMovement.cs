using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>How the gaps and overlays of one front change over the year.</summary>
public sealed record FrontMovement(IReadOnlyList<LeafMovement> Leaves, IReadOnlyList<SeasonGap> Gaps, IReadOnlyList<SeasonOverlay> Overlays)
{
    /// <summary>Leaves whose wood is not known are taken not to move, and are not among <see cref="Leaves"/>.</summary>
    public static FrontMovement Of(SizedFront front)
    {
        ArgumentNullException.ThrowIfNull(front);
        Dictionary<string, LeafMovement> moves = [];
        foreach (var leaf in front.Leaves)
        {
            if (LeafMovement.Of(leaf) is { } movement)
                moves.Add(leaf.Path, movement);
        }

        List<SeasonGap> gaps = [];
        List<SeasonOverlay> overlays = [];
        foreach (var edge in front.Edges)
        {
            foreach (var leaf in Along(front, edge.Side))
            {
                var movement = moves.GetValueOrDefault(leaf.Path);
                if (front.Mount == Mount.Inset)
                {
                    gaps.Add(Gap(leaf, $"the gap on the {Word(edge.Side)}", As(leaf, $"front/gap.{Word(edge.Side)}", $"gap on the {Word(edge.Side)}", -edge.Reach), movement?.GrowthAt(edge.Side), null));
                }
                else if (front.Mount == Mount.Overlay && movement is { IsSlab: true } && movement.ShrinkageAt(edge.Side) is { } shrinkage)
                {
                    var lap = As(leaf, $"front/overlay.{Word(edge.Side)}", $"overlay on the {Word(edge.Side)}", edge.Reach);
                    overlays.Add(new(leaf.Path, edge.Side, lap, (lap - shrinkage).As($"overlay on the {Word(edge.Side)} at the driest", $"front/overlay.{Word(edge.Side)}.driest")));
                }
            }
        }

        if (front.Gap is { } between && front.Leaves.Count > 1)
        {
            var (near, far) = front.Leaves[0].IsDrawerFront ? (Side.Bottom, Side.Top) : (Side.Right, Side.Left);
            for (var i = 0; i + 1 < front.Leaves.Count; i++)
            {
                var (one, other) = (front.Leaves[i], front.Leaves[i + 1]);
                gaps.Add(Gap(one, one.IsDrawerFront ? "the gap below it" : "the gap between the leaves", between,
                    moves.GetValueOrDefault(one.Path)?.GrowthAt(near), moves.GetValueOrDefault(other.Path)?.GrowthAt(far)));
            }
        }

        return new([.. moves.Values], gaps, overlays);
    }

    private static SeasonGap Gap(SizedLeaf leaf, string words, Worked gap, Worked? growth, Worked? growthBeyond)
    {
        var left = gap;
        if (growth is not null)
            left -= growth;
        if (growthBeyond is not null)
            left -= growthBeyond;
        var build = leaf.Standard[Settings.FinishBuild];
        if (!build.Amount.IsZero)
            left -= 2 * build;
        return new(leaf.Path, words, gap, left.As("gap at the wettest", "front/gap.wettest"));
    }

    // The leaves that lie along one edge of the front.
    private static IEnumerable<SizedLeaf> Along(SizedFront front, Side side)
    {
        var isBank = front.Leaves is [{ IsDrawerFront: true }, ..];
        return (isBank, side) switch
        {
            (false, Side.Left) or (true, Side.Top) => front.Leaves.Take(1),
            (false, Side.Right) or (true, Side.Bottom) => front.Leaves.TakeLast(1),
            _ => front.Leaves,
        };
    }

    private static Given As(SizedLeaf leaf, string key, string label, Length length) => new(key, label, length, new(OriginKind.Shape, leaf.Path));

    private static string Word(Side side) => side.ToString().ToLowerInvariant();
}
