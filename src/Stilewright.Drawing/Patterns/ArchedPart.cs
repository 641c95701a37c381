using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Shop;

namespace Stilewright.Drawing.Patterns;

/// <summary>A part with a curve, and what is known of its leaf.</summary>
public sealed record ArchedPart(ProjectBreakdown Project, SizedLeaf Leaf, LeafDetail Detail, Part Part)
{
    /// <summary>What the set-down of one pattern for rail and panel is worked out from; null without cutters.</summary>
    /// <param name="isAsked">Whether the shop saws one pattern, even where none of its rack serves.</param>
    public OnePattern? OnePattern(bool isAsked) => Detail.Cutters is not { } cutters ? null : new(
        cutters.GrooveDepth.Value, Project.Standard[Settings.Step].Length, Project.Standard[Settings.LeastEngagement].Length,
        [.. Project.Standard.Standard.Patterns.Select(pattern => pattern.Hard)], isAsked);
}
