using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Patterns;

/// <summary>What a pattern is made of. On several sheets its tables stand on one of their own, and its label is moved off the seams.</summary>
/// <param name="Label">The part, and what the pattern says of itself.</param>
/// <param name="LabelBox">What the label covers.</param>
/// <param name="LabelRoom">Where it may be moved.</param>
/// <param name="Marks">Over everything.</param>
public sealed record PatternLayers(
    string Title, string Description, string Path, IReadOnlyList<SceneNode> Lines, IReadOnlyList<SceneNode> Label, PaperBox LabelBox, PaperBox LabelRoom,
    IReadOnlyList<SceneNode> Marks, IReadOnlyList<PatternBlock> Blocks)
{
    /// <summary>The pattern with some of its blocks, where they are given a place.</summary>
    public Scene Scene(IEnumerable<SceneNode> placed) => Drafting.Scene(Title, Description, Scale.FullSize, Path, [.. Lines, .. Label, .. placed, .. Marks]);

    /// <summary>The pattern without its blocks, its label moved to where <paramref name="place"/> tells for its box and room on the scene.</summary>
    public Scene Scene(Func<PaperBox, PaperBox, PaperPoint> place)
    {
        var scene = Scene([]);
        var origin = ((SceneGroup)scene.Nodes[0]).At;
        var moved = place(LabelBox.Shifted(origin.X, origin.Y), LabelRoom.Shifted(origin.X, origin.Y));
        return scene with
        {
            Nodes = [new SceneGroup(Path, null, [.. Lines, new SceneGroup(null, null, Label) { At = moved }, .. Marks]) { At = origin }],
        };
    }
}
