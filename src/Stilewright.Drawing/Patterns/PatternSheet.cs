using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Patterns;

/// <summary>One pattern as a drawing of its own, for other programs or for a printer that is known.</summary>
public static class PatternSheet
{
    private const double Air = 3;

    /// <summary>The pattern with a line below it that says how it was corrected: across its width, and along its height.</summary>
    public static Scene Of(Scene pattern, PrintCorrection correction)
    {
        // Unstretched, arcs stay arcs.
        var stretched = correction == PrintCorrection.None ? pattern : pattern.Stretched(correction.Across, correction.Along);
        var text = correction == PrintCorrection.None ? "Full size in millimetres; no correction for the printer." : $"Full size on that printer, fed as it was measured, upright: {correction}.";
        var lines = Typesetter.Wrap(text, TextStyle.Small, stretched.WidthMillimetres);
        List<SceneNode> nodes = [.. stretched.Nodes];
        var top = stretched.HeightMillimetres + Air;
        foreach (var line in lines)
        {
            nodes.Add(Strip.Put(line, 0, top));
            top += line.Pitch;
        }

        return stretched with { HeightMillimetres = top, Nodes = nodes };
    }
}
