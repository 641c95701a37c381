using System.Globalization;
using System.Text.Json.Nodes;
using Stilewright.Doors;
using Stilewright.Projects;

namespace Stilewright.Web.Desk;

/// <summary>A course with all its benches as it stands at one moment. Never changes; a save makes another.</summary>
/// <param name="Key">Of the course's document in the store.</param>
/// <param name="Head">The number of its newest revision.</param>
/// <param name="Tree">The course as files hold it, without its projects; not to be changed.</param>
/// <param name="Projects">In the order of their benches.</param>
public sealed record OpenCourse(
    long Key, int Head, bool IsArchived, JsonObject Tree, Course Course, OpenStandard Standard, IReadOnlyList<OpenProject> Projects)
{
    private readonly Lazy<Breakdown> whole = new(() => new(
        Course, Standard.Standard, [.. Projects.Select(project => project.Worked)], [.. Projects.SelectMany(project => project.Breakdown.Findings)]));

    /// <summary>The project at a bench; null where the bench is free.</summary>
    public OpenProject? AtBench(int bench) => Projects.FirstOrDefault(project => project.Project.Bench == bench);

    /// <summary>The project whose record has the id; null where there is none.</summary>
    public OpenProject? WithId(string id) => Projects.FirstOrDefault(project => project.Project.Id == id);

    /// <summary>All benches together, each under the standard that it follows, as for the combined cut list; worked out when first asked for.</summary>
    public Breakdown Whole => whole.Value;

    /// <summary>The numbers of its revisions, such as <c>4,hall:2,kitchen:3</c>: the course's, then every project's by its id.</summary>
    public string Stand => string.Join(',', Projects
        .Select(project => string.Create(CultureInfo.InvariantCulture, $"{project.Project.Id}:{project.Head}"))
        .Prepend(Head.ToString(CultureInfo.InvariantCulture)));
}
