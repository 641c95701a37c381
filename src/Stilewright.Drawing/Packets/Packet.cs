using Stilewright.Doors;
using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Worksheets;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Worksheets;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>How a packet is printed.</summary>
/// <param name="Unit">The unit of all sizes; null for the unit each project is written in.</param>
/// <param name="StorySticks">Whether every leaf has its story stick at full size, which takes much paper.</param>
public sealed record PacketSettings(Paper Paper, LengthUnit? Unit = null, bool StorySticks = false)
{
    /// <summary>The finest fraction of an inch shown: 8, 16, 32 or 64; null for the standard's.</summary>
    public int? Finest { get; init; }

    /// <summary>Whether every part is drawn by itself.</summary>
    public bool PartDrawings { get; init; } = true;

    /// <summary>Whether the working of every leaf is printed.</summary>
    public bool Working { get; init; } = true;

    /// <summary>Whether panels through the year, glue-ups and weights are printed.</summary>
    public bool Wood { get; init; } = true;

    /// <summary>How labels of the parts are printed after each project's sheets; null for none.</summary>
    public PacketLabels? Labels { get; init; }

    /// <summary>Which worksheet of its own first door every bench is given; null for none.</summary>
    public PacketWorksheets? Worksheets { get; init; }
}

/// <summary>How worksheets are added to a packet.</summary>
/// <param name="LevelNumber">From 1, of the levels that ship.</param>
/// <param name="HasKey">Whether one key for all benches ends the packet.</param>
public sealed record PacketWorksheets(int LevelNumber, bool HasKey = false);

/// <summary>How the labels of a packet are printed.</summary>
public sealed record PacketLabels(LabelSheet Sheet, LabelPrint Print);

/// <summary>Lays out what a maker or an instructor is handed: drawings, parts, working, findings.</summary>
/// <remarks>
/// Sheets come section by section, each course's overview and each project being one: a section is laid out, numbered and
/// given out before the next is begun, so that no more than one is held. The same breakdown, facts and settings give the same sheets.
/// </remarks>
public static class Packet
{
    /// <summary>The sheets of one project.</summary>
    public static IEnumerable<Sheet> OfProject(
        Breakdown breakdown, ProjectBreakdown project, PacketFacts facts, PacketSettings settings)
    {
        var contents = new PacketContents(breakdown, facts, settings);
        return Sections(contents, [project]);
    }

    /// <summary>The sheets of some projects, one after the other.</summary>
    public static IEnumerable<Sheet> OfProjects(
        Breakdown breakdown, IEnumerable<ProjectBreakdown> projects, PacketFacts facts, PacketSettings settings) =>
        Sections(new(breakdown, facts, settings), projects);

    /// <summary>The sheets of the whole course: its overview, then every project.</summary>
    public static IEnumerable<Sheet> OfCourse(Breakdown breakdown, PacketFacts facts, PacketSettings settings)
    {
        var contents = new PacketContents(breakdown, facts, settings);
        foreach (var sheet in CourseSection.Sheets(contents).Concat(Sections(contents, breakdown.Projects)))
            yield return sheet;
    }

    private static IEnumerable<Sheet> Sections(PacketContents contents, IEnumerable<ProjectBreakdown> projects)
    {
        var firstLabel = contents.Settings.Labels?.Print.FirstLabel ?? 1;
        List<Worksheet> worksheets = [];
        foreach (var project in projects)
        {
            foreach (var sheet in ProjectSection.Sheets(contents, project))
                yield return sheet;
            if (WorksheetOf(contents, project) is { } worksheet)
            {
                worksheets.Add(worksheet);
                foreach (var sheet in WorksheetPrint.OfBench(worksheet, contents.Settings.Paper, Facts(contents)))
                    yield return sheet;
            }

            // Only the very first sheet of labels may be one that was begun.
            foreach (var sheet in Labels(contents, project, firstLabel))
            {
                yield return sheet;
                firstLabel = 1;
            }
        }

        if (contents.Settings.Worksheets is not { HasKey: true } || worksheets.Count == 0)
            yield break;
        foreach (var sheet in WorksheetPrint.KeyOf(worksheets, contents.Settings.Paper, Facts(contents)))
            yield return sheet;
    }

    private static TeachingFacts Facts(PacketContents contents) => new(contents.Facts.ProgramVersion, contents.Facts.Date);

    // A bench without a door that can be asked about has none; its findings say why.
    private static Worksheet? WorksheetOf(PacketContents contents, ProjectBreakdown project)
    {
        if (contents.Settings.Worksheets is not { } wanted)
            return null;
        var format = contents.Format(project);
        return WorksheetMaker.OfBench(contents.Breakdown, project, Levels.For(format.Unit)[wanted.LevelNumber - 1], format) is Found<Worksheet>.There { Thing: var sheet } ? sheet : null;
    }

    // A label sheet has no room for a title block; each label names the project's revision.
    private static IEnumerable<Sheet> Labels(PacketContents contents, ProjectBreakdown project, int firstLabel)
    {
        if (contents.Settings.Labels is not { } labels)
            return [];
        var parts = project.Fronts.SelectMany(front => front.Leaves).SelectMany(leaf => leaf.Parts)
            .Select(part => new LabelledPart(part, contents.Facts.Revisions.Projects[project.Project.Id]));
        return LabelPages.Of(parts, labels.Sheet, contents.Format(project), labels.Print with { FirstLabel = firstLabel })
            .Select((scene, i) => new Sheet(scene, i == 0 ? [new Bookmark("Labels", 2)] : []));
    }
}
