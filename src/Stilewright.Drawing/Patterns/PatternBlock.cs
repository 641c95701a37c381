using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Patterns;

/// <summary>A table or a detail of a pattern, which is read whole and never laid over a seam.</summary>
/// <param name="Nodes">From the block's own top left corner.</param>
public sealed record PatternBlock(double Width, double Height, IReadOnlyList<SceneNode> Nodes)
{
    public SceneGroup At(PaperPoint corner) => new(null, null, Nodes) { At = corner };
}
