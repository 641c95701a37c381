using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>One course on one screen: what is saved, and what is being typed into fields of the course as a whole.</summary>
public class CourseDesk(Workshop workshop, string authorId, OpenCourse course, LengthUnit? readerUnit) : FieldDesk<Course>(readerUnit)
{
    protected Workshop Workshop { get; } = workshop;

    /// <summary>Who sits at this screen.</summary>
    public string AuthorId { get; } = authorId;

    /// <summary>The course as it is saved.</summary>
    public OpenCourse Course { get; private set; } = course;

    public sealed override string Id => Course.Course.Id;

    public override LengthUnit OwnUnit => Course.Course.Unit;

    public sealed override LengthFormat Format => new(ReaderUnit ?? OwnUnit, new StandardInForce(Course.Standard.Standard).Format.FinestDenominator);

    public override Course Saved => Course.Course;

    public override Task<bool> SaveAsync(Func<Course, Course> edit) => KeepAsync(edit);

    /// <summary>The project whose history is at hand; null for the course's own.</summary>
    protected virtual OpenProject? Subject => null;

    /// <summary>What the maker can take back here.</summary>
    public async Task<ProjectHistory> HistoryAsync() => IsThere ? await Workshop.HistoryAsync(Subject?.Key ?? Course.Key, AuthorId) : ProjectHistory.Empty;

    /// <summary>Takes back the maker's own last change, or makes it again.</summary>
    public async Task TakeBackAsync(ProjectHistory history, bool isRedo)
    {
        if ((isRedo ? history.Redo : history.Undo) is not { } number || !IsThere)
            return;
        var (course, project) = (Course, Subject);
        var isSaved = Accept(await Workshop.TakeBackAsync(course, project, number, AuthorId, isRedo ? RevisionCause.Redo : RevisionCause.Undo),
            "Someone changed the same thing since, so it was not taken back. Its history shows both.");
        if (isSaved && IsThere && await Workshop.RevisionsAsync(Subject?.Key ?? Course.Key, most: 1) is [var last])
        {
            Message = last.Words(project is null ? new(typeof(Course), Course.Tree, course.Tree)
                : new(typeof(Project), Subject!.Tree, project.Tree, Course.Tree));
        }
    }

    /// <summary>Brings the project, or the course without its projects, back to a revision.</summary>
    public async Task<bool> RestoreAsync(int number) => IsThere && Accept(await Workshop.RestoreAsync(Course, Subject, number, AuthorId),
        "Someone saved at the same moment. Look again, then bring it back.");

    /// <summary>Clears a bench of the course. Its project is not lost.</summary>
    public async Task<bool> ClearAsync(OpenProject project)
    {
        var id = project.Project.Id;
        var isCleared = Accept(await Workshop.SaveAsync(Course, AuthorId, course => course with { Projects = [.. course.Projects.Where(each => each.Id != id)] }),
            "Someone works at this bench just now. Look at it again before it is cleared.");
        if (isCleared)
            Message = FormattableString.Invariant($"Bench {project.Project.Bench} cleared");
        return isCleared;
    }

    /// <summary>Takes over what others saved.</summary>
    public async Task RefreshAsync()
    {
        if (await Workshop.OpenAsync(Course.Course.Id) is { } now)
            Follow(now);
    }

    /// <summary>Takes over a state of the course.</summary>
    public void Follow(OpenCourse now)
    {
        Course = now;
        Moved();
        if (IsThere)
            DropSaved();
    }

    /// <summary>What the head of the page says after a save.</summary>
    protected virtual string SavedWords => FormattableString.Invariant($"Saved, revision {Course.Head}");

    /// <summary>Saves an edit of the whole course.</summary>
    protected async Task<bool> KeepAsync(Func<Course, Course> edit) => Accept(await Workshop.SaveAsync(Course, AuthorId, edit),
        "Someone else changed the same thing meanwhile. The page shows it now; enter yours again if it is still wanted.");

    /// <summary>Takes over what became of a save.</summary>
    public bool Accept(SaveResult result, string onConflict)
    {
        Refusals = [];
        Moved();
        switch (result)
        {
            case SaveResult.Saved(var now):
                Course = now;
                Message = SavedWords;
                return true;
            case SaveResult.Conflicted(_, var now):
                Course = now;
                Refusals = [onConflict];
                return false;
            case SaveResult.Refused(var errors):
                Refusals = [.. errors.Select(error => $"{error.Problem}; {error.Fix}.")];
                return false;
            default:
                throw new InvalidOperationException("A save is kept, refused or in conflict.");
        }
    }
}
