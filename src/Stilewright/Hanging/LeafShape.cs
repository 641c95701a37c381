using System.Globalization;
using Stilewright.Curves;
using Stilewright.Doors;

namespace Stilewright.Hanging;

/// <summary>What a leaf looks like from its face, as text that can be compared: two leaves of one shape can stand for one another.</summary>
internal static class LeafShape
{
    public static string Of(SizedLeaf leaf) => Key(leaf, isTurned: false);

    /// <summary>Whether it looks the same after half a turn in its own plane.</summary>
    public static bool IsSameEndForEnd(SizedLeaf leaf) => Key(leaf, isTurned: false) == Key(leaf, isTurned: true);

    private static string Key(SizedLeaf leaf, bool isTurned)
    {
        var parts = leaf.Parts.Select(part =>
        {
            var box = part.VisibleBounds;
            var (x, y) = isTurned ? (leaf.Width.Length - box.Right, leaf.Height.Length - box.Top) : (box.X, box.Y);
            var (top, bottom) = isTurned ? (part.BottomArch, part.TopArch) : (part.TopArch, part.BottomArch);
            return string.Create(CultureInfo.InvariantCulture,
                $"{part.Kind} {x} {y} {box.Width} {box.Height} {part.Material} {part.Stock} {part.Grain} {Arch(part.Arch)} {Arch(top)} {Arch(bottom)}");
        }).Order(StringComparer.Ordinal);
        var edges = leaf.Rabbeted.Select(side => $"rabbet {(isTurned ? FrontSizing.Opposite(side) : side)}")
            .Concat(leaf.Tapers.Where(taper => !taper.Value.IsZero).Select(taper => $"taper {(isTurned ? FrontSizing.Opposite(taper.Key) : taper.Key)} {taper.Value}")).Order(StringComparer.Ordinal);
        return $"{leaf.Width.Length} × {leaf.Height.Length}; {string.Join("; ", parts.Concat(edges))}";

        // What has a left and a right is turned into something else.
        string Arch(ArchShape? arch) => arch is null ? "-" : string.Create(CultureInfo.InvariantCulture,
            $"{arch.Family} {arch.Span.Amount} {arch.Rise.Amount} {arch.Shoulder?.Amount} {arch.Repeats} {arch.ReverseToCrown} {Hand(arch)}");

        string Hand(ArchShape arch) => arch.OfPair is { } half ? $"{(isTurned ? FrontSizing.Opposite(half.Meeting) : half.Meeting)}"
            : arch.Drawn is { } chain ? $"{(DrawnCurve.IsSymmetric(chain) ? "" : isTurned ? "turned" : "drawn")}" : "";
    }
}
