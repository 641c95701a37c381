using Stilewright.Doors;

namespace Stilewright.Wood;

/// <summary>Solid panels that fare the same through the year, told once.</summary>
/// <param name="Leaf">The leaf of the first of them.</param>
/// <param name="Labels">Of all of them.</param>
public sealed record AlikePanels(SizedLeaf Leaf, PanelFit Fit, IReadOnlyList<string> Labels)
{
    /// <summary>In the order of the leaves.</summary>
    public static IReadOnlyList<AlikePanels> Of(IEnumerable<SizedLeaf> leaves) =>
    [
        .. leaves.SelectMany(leaf => PanelFit.Of(leaf).Select(fit => (Leaf: leaf, Fit: fit))).GroupBy(each => Key(each.Leaf, each.Fit))
            .Select(alike => new AlikePanels(alike.First().Leaf, alike.First().Fit, [.. alike.Select(each => each.Fit.Panel.Label)])),
    ];

    private static object Key(SizedLeaf leaf, PanelFit fit) => (
        fit.Width.Amount, fit.Clear.Amount, fit.Depth.Amount, fit.IsPinned, (fit.Wood.Species.Name, fit.Wood.Rings, fit.Wood.Swelling.Amount, fit.Wood.Shrinking.Amount),
        (fit.Panel.Grain, fit.Panel.Name, fit.Panel.Thickness?.Final.Amount, leaf.Design?.Cutters), (fit.LeastAir.Amount, fit.LeastEngagement.Amount));
}
