using Stilewright.Drawing.Scenes;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Figures;

/// <summary>Boring sheets: leaves seen from the back with their top up, and where their hinges go; those of a pair side by side.</summary>
/// <remarks>
/// The hand stands over each leaf, its hinge edge is heavy and named, and an arrow shows its top, so that none can be read for the other hand.
/// Distances from the top stand beside the hinge edge, those from the bottom beside the other. What is bored from the edge is drawn once more at full or half size.
/// </remarks>
public static class BoringFigure
{
    private const double Between = 10;
    private static readonly Scale HalfSize = new(2);

    /// <param name="leaves">One leaf, or the two of a pair.</param>
    /// <param name="isBeside">Whether the detail stands beside its leaf, and not below it.</param>
    /// <param name="isHalf">Whether the detail is drawn at half size, and not at full.</param>
    public static Scene Draw(IReadOnlyList<HungLeaf> leaves, Scale scale, LengthFormat format, bool isBeside = false, bool isHalf = false)
    {
        ArgumentNullException.ThrowIfNull(leaves);
        List<SceneNode> nodes = [];
        List<string> words = [];
        double? right = null;
        foreach (var leaf in leaves)
        {
            var drawn = new BoringDrawing(leaf, isBeside, scale, isHalf ? HalfSize : Scale.FullSize, format).Draw();
            var bounds = Drafting.BoundsOf(drawn)!.Value;
            PaperPoint at = new(right is { } taken ? taken + Between - bounds.Left : 0, 0);
            nodes.Add(new SceneGroup(leaf.Leaf.Path, BoringWords.Name(leaf), drawn) { At = at });
            right = bounds.Right + at.X;
            words.Add(BoringWords.Describe(leaf, format));
        }

        var title = $"Boring sheet of {string.Join(" and ", leaves.Select(leaf => leaf.Leaf.Label))}, seen from the back";
        return Drafting.Scene(title, string.Join(" ", words), scale, leaves[0].Front.Path, nodes);
    }

    /// <summary>The drawing at the largest standard scale at which it fits, its details beside or below the leaves, at full or half size, whichever lets them be larger.</summary>
    public static FittedScene Draw(IReadOnlyList<HungLeaf> leaves, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        ArgumentNullException.ThrowIfNull(format);
        return Enumerable.Range(0, 4).Select(choice => (IsHalf: choice >= 2, IsBeside: choice % 2 == 1))
            .Select(choice => Fit.Largest(format.Unit, widthMillimetres, heightMillimetres, scale => Draw(leaves, scale, format, choice.IsBeside, choice.IsHalf), Size(leaves)))
            .MinBy(drawn => (!drawn.Fits, drawn.Scene.Scale!.Value.Reduction))!;
    }

    /// <summary>A pair side by side, or each of its leaves alone where the two do not fit.</summary>
    public static IReadOnlyList<(IReadOnlyList<HungLeaf> Leaves, FittedScene Drawn)> DrawPair(
        HungLeaf left, HungLeaf? right, LengthFormat format, double widthMillimetres, double heightMillimetres)
    {
        IReadOnlyList<HungLeaf> both = right is null ? [left] : [left, right];
        var drawn = Draw(both, format, widthMillimetres, heightMillimetres);
        return right is null || drawn.Fits ? [(both, drawn)]
            : [.. both.Select(leaf => ((IReadOnlyList<HungLeaf>)[leaf], Draw([leaf], format, widthMillimetres, heightMillimetres)))];
    }

    // Side by side.
    private static (Length Width, Length Height) Size(IReadOnlyList<HungLeaf> leaves) =>
        (leaves.Aggregate(Length.Zero, (sum, leaf) => sum + leaf.Leaf.Width.Length), leaves.Max(leaf => leaf.Leaf.Height.Length));
}
