using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Desk;

/// <summary>One project on one screen: what is saved, what is being typed, and the sizes that follow from both.</summary>
public sealed class ProjectDesk(Workshop workshop, string authorId, OpenCourse course, string projectId, LengthUnit? readerUnit)
    : CourseDesk(workshop, authorId, course, readerUnit)
{
    private (OpenCourse Course, int Edition, Breakdown Shown)? shown;

    /// <summary>The project as it is saved; null where it was cleared from its bench meanwhile.</summary>
    public OpenProject? Project => Course.WithId(projectId);

    public override LengthUnit OwnUnit => Project?.Project.Unit ?? Course.Course.Unit;

    /// <summary>The course with this project alone.</summary>
    public override Course Saved => Project!.Course;

    /// <summary>Sizes, parts and findings with what is being typed.</summary>
    public Breakdown Shown
    {
        get
        {
            if (shown is { } known && known.Course == Course && known.Edition == Edition)
                return known.Shown;
            var breakdown = HasTried ? Breakdown.Of(Tried, Project!.Standard) : Project!.Breakdown;
            shown = (Course, Edition, breakdown);
            return breakdown;
        }
    }

    public ProjectBreakdown Worked => Shown.Projects[0];

    protected override bool IsThere => Project is not null;

    protected override OpenProject? Subject => Project;

    protected override string SavedWords => Project is { } project ? FormattableString.Invariant($"Saved, revision {project.Head}") : "Saved";

    /// <summary>What is typed in the field and could be read, else what is saved.</summary>
    public LengthEntry? Current(LengthField field) => field.Get(Tried);

    /// <summary>Saves an edit that is no single field, such as another design.</summary>
    /// <param name="edit">A pure function of the course, which holds this project alone.</param>
    public override Task<bool> SaveAsync(Func<Course, Course> edit) => KeepAsync(whole =>
    {
        var id = projectId;
        var own = edit(whole with { Projects = [.. whole.Projects.Where(project => project.Id == id)] });
        return own with { Projects = [.. whole.Projects.Select(project => project.Id == id ? own.Projects[0] : project)] };
    });
}
