using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Drawing.Packets;

/// <summary>How a packet is printed.</summary>
/// <param name="Unit">The unit of all sizes; null for the unit each project is written in.</param>
/// <param name="StorySticks">Whether every leaf has its story stick at full size, which takes much paper.</param>
public sealed record PacketSettings(Paper Paper, LengthUnit? Unit = null, bool StorySticks = false);

/// <summary>Lays out what a maker or an instructor is handed: drawings, parts, working, findings.</summary>
/// <remarks>
/// Sheets come section by section, each course's overview and each project being one: a section is laid out, numbered and
/// given out before the next is begun, so that no more than one is held. The same breakdown, facts and settings give the same sheets.
/// </remarks>
public static class Packet
{
    /// <summary>The sheets of one project.</summary>
    public static IEnumerable<Sheet> OfProject(
        Breakdown breakdown, ProjectBreakdown project, PacketFacts facts, PacketSettings settings, PacketFigures? figures = null)
    {
        var contents = new PacketContents(breakdown, facts, settings, figures ?? PacketFigures.Standard);
        return ProjectSection.Sheets(contents, project);
    }

    /// <summary>The sheets of the whole course: its overview, then every project.</summary>
    public static IEnumerable<Sheet> OfCourse(Breakdown breakdown, PacketFacts facts, PacketSettings settings, PacketFigures? figures = null)
    {
        var contents = new PacketContents(breakdown, facts, settings, figures ?? PacketFigures.Standard);
        foreach (var sheet in CourseSection.Sheets(contents))
            yield return sheet;
        foreach (var project in breakdown.Projects)
        {
            foreach (var sheet in ProjectSection.Sheets(contents, project))
                yield return sheet;
        }
    }
}
