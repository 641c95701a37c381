using System.Globalization;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Prints;

[Meaning("What a print told people: the size of every part on the day it was handed out")]
public sealed record HandedOut(
    [Id, Meaning("The id of the course")] string Course,
    [Meaning("What the course was called")] string CourseName,
    [Meaning("The unit in which people read the sizes")] LengthUnit Unit,
    HandedOutExtent Extent,
    [Meaning("When it was printed, in universal time")] DateTimeOffset Time,
    [Meaning("The version of the program that worked the sizes out")] string Program,
    [Meaning("What the house standard was called")] string Standard,
    [Meaning("The revision of the house standard: a fingerprint of its content")] string StandardRevision,
    IReadOnlyList<HandedOutProject> Projects)
{
    /// <summary>"packet of bench 3", "packets of benches 3 and 5", "packet of the whole course" or "paper about 1·2L·TR".</summary>
    public string What
    {
        get
        {
            if (Extent == HandedOutExtent.WholeCourse)
                return "packet of the whole course";
            if (Extent == HandedOutExtent.Parts)
                return $"paper about {PartWords}";
            string[] benches = [.. Projects.Select(project => project.Bench.ToString(CultureInfo.InvariantCulture))];
            return benches switch
            {
                [] => "packet without a bench",
                [var one] => $"packet of bench {one}",
                _ => $"packets of benches {string.Join(", ", benches[..^1])} and {benches[^1]}",
            };
        }
    }

    /// <summary>"1·2L·TR and 1·2L·P", or how many where they are more than a few.</summary>
    public string PartWords
    {
        get
        {
            const int Few = 4;
            string[] labels = [.. Projects.SelectMany(project => project.Parts).Select(part => part.Label)];
            return labels switch
            {
                [] => "no part",
                [var one] => one,
                { Length: <= Few } => $"{string.Join(", ", labels[..^1])} and {labels[^1]}",
                _ => FormattableString.Invariant($"{labels.Length} parts"),
            };
        }
    }

    public int PartCount => Projects.Sum(project => project.Parts.Count);

    /// <summary>What a print of these projects tells. Parts that are withheld are not in it, as they are not on paper.</summary>
    /// <param name="projects">The projects that are printed, out of <paramref name="breakdown"/>.</param>
    /// <param name="revisions">Of the standard and of every project printed.</param>
    /// <param name="time">Kept to the second, in universal time.</param>
    /// <param name="parts">The parts that are printed, for <see cref="HandedOutExtent.Parts"/>; null for all.</param>
    public static HandedOut Of(
        Breakdown breakdown, IEnumerable<ProjectBreakdown> projects, HandedOutExtent extent, Revisions revisions, string program, DateTimeOffset time,
        IEnumerable<Part>? parts = null)
    {
        ArgumentNullException.ThrowIfNull(breakdown);
        ArgumentNullException.ThrowIfNull(projects);
        ArgumentNullException.ThrowIfNull(revisions);
        var course = breakdown.Course;
        var utc = time.ToUniversalTime();
        var paths = parts?.Select(part => part.Path).ToHashSet(StringComparer.Ordinal);
        return new(
            course.Id, course.Name, course.Unit, extent, utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerSecond)), program,
            breakdown.Standard.Name, revisions.Standard,
            [.. projects.Select(project => HandedOutProject.Of(project, revisions.Projects[project.Project.Id], paths))]);
    }
}

public enum HandedOutExtent
{
    [Meaning("The benches listed, and no other")]
    Benches,

    [Meaning("Every bench there was; one that came later is new")]
    WholeCourse,

    [Meaning("The parts listed, and no other, as on patterns or labels")]
    Parts,
}

[Meaning("The project of one bench as it was handed out")]
public sealed record HandedOutProject(
    [Id, Meaning("The id of the project")] string Id,
    [Meaning("The number of the bench"), Between(1, 999), UniqueWithin(typeof(HandedOut), "bench")] int Bench,
    [Meaning("What was being built")] string Name,
    [Meaning("The unit in which its maker reads the sizes, where it differs from the course's")] LengthUnit? Unit,
    [Meaning("The revision of the project: a fingerprint of its content")] string Revision,
    IReadOnlyList<HandedOutPart> Parts)
{
    internal static HandedOutProject Of(ProjectBreakdown breakdown, string revision, IReadOnlySet<string>? paths = null)
    {
        var project = breakdown.Project;
        return new(project.Id, project.Bench, project.Name, project.Unit, revision,
            [.. breakdown.Fronts.SelectMany(front => front.Leaves).SelectMany(leaf => leaf.Parts)
                .Where(part => paths is null || paths.Contains(part.Path)).Select(HandedOutPart.Of)]);
    }
}

[Meaning("One piece of wood, sheet or glass as it was handed out")]
public sealed record HandedOutPart(
    [Meaning("Opening, leaf and part")] string Path,
    [Meaning("What is chalked on it")] string Label,
    [Meaning("What people call it")] string Name,
    [Meaning("Species, sheet or glass")] string Material,
    [Meaning("Size in the finished leaf")] HandedOutSize Finished,
    [Meaning("Size into the clamps, with the trim allowance")] HandedOutSize GlueUp,
    [Meaning("Size of the rough blank; absent for sheet and glass, which are cut to size")] HandedOutSize? Rough,
    [Meaning("Absent for glass")] HandedOutThickness? Thickness)
{
    internal static HandedOutPart Of(Part part) => new(
        part.Path, part.Label, part.Name, part.Material, HandedOutSize.Of(part.Finished), HandedOutSize.Of(part.GlueUp),
        part.Rough is { } rough ? HandedOutSize.Of(rough) : null,
        part.Thickness is { } stages ? new(stages.Rough?.Length, stages.Planed.Length, stages.Final.Length) : null);
}

[Meaning("Width across the grain and length along it; of glass, width and height")]
public sealed record HandedOutSize(
    [Between(0, Above = true)] Length Width,
    [Between(0, Above = true)] Length Length)
{
    internal static HandedOutSize Of(PartSize size) => new(size.Width.Length, size.Length.Length);
}

[Meaning("The thicknesses that a part goes through")]
public sealed record HandedOutThickness(
    [Meaning("As bought; absent for sheet"), Between(0, Above = true)] Length? Rough,
    [Meaning("As it goes over the cutters"), Between(0, Above = true)] Length Planed,
    [Meaning("After sanding"), Between(0, Above = true)] Length Final);
