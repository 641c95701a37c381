using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.IfCut;

namespace Stilewright.Drawing.Packets;

/// <summary>Drawings of what would happen if a wrong list were cut, one under the other. They tell right sizes.</summary>
public static class IfCutSheet
{
    private const double Width = 185;
    private const double Height = 230;

    /// <summary>All that comes of a list, or of one mistake in it.</summary>
    /// <param name="project">The breakdown that the list was checked against.</param>
    /// <param name="mistake">One of the list's; null for all.</param>
    /// <returns>Null where nothing comes of it, as of a right list.</returns>
    public static Scene? Draw(Breakdown breakdown, ProjectBreakdown project, CheckedList found, LengthFormat format, Mistake? mistake = null)
    {
        ArgumentNullException.ThrowIfNull(breakdown);
        List<SceneNode> nodes = [];
        var top = 0.0;
        var consequences = Consequences.Of(found, project).Where(one => mistake is null || one.IsOf(mistake)).ToList();
        foreach (var strip in IfCutStrips.Of(consequences.Select(one => (one, LeafDetail.Of(breakdown.Course, project, one.Leaf))), format, Width, Height))
        {
            top += top > 0 ? strip.SpaceBefore : 0;
            nodes.Add(new SceneGroup(null, null, strip.Nodes) { At = new(0, top) });
            top += strip.Height;
        }

        return consequences.Count == 0 ? null : new("If it were cut so", $"What would happen if the list were cut: {string.Join(", ", consequences.Select(IfCutWords.Title).Distinct())}", Width, top, nodes);
    }
}
