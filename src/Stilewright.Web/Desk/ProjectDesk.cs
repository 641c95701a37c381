using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Fields;
using Stilewright.Web.Storage;
using Stilewright.Wording;

namespace Stilewright.Web.Desk;

/// <summary>A field that two people changed: what each of them entered.</summary>
/// <param name="Field">The name of the field.</param>
/// <param name="Mine">What is typed here.</param>
/// <param name="Theirs">What was saved meanwhile.</param>
/// <param name="Base">What the field said when the typing began here.</param>
public sealed record FieldConflict(string Field, string Mine, string Theirs, string Base);

/// <summary>One project on one screen: what is saved, what is being typed, and the sizes that follow from both.</summary>
/// <remarks>What is typed is tried on the project at once, so that the drawing follows; what cannot be read is marked, and the drawing
/// keeps the last that could. Nothing is saved before it is settled.</remarks>
public sealed class ProjectDesk(Workshop workshop, string authorId, OpenCourse course, string projectId, LengthUnit? readerUnit)
{
    private readonly Dictionary<string, (LengthField Field, LengthEntry? Entry)> drafts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> problems = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FieldConflict> conflicts = new(StringComparer.Ordinal);
    private (OpenCourse Course, int Drafts, Breakdown Shown)? shown;
    private int draftNumber;

    /// <summary>The course as it is saved.</summary>
    public OpenCourse Course { get; private set; } = course;

    /// <summary>The project as it is saved; null where it was cleared from its bench meanwhile.</summary>
    public OpenProject? Project => Course.WithId(projectId);

    public LengthUnit? ReaderUnit { get; set; } = readerUnit;

    /// <summary>What happened last, in words for the head of the page; null at first.</summary>
    public string? Message { get; private set; }

    /// <summary>What kept the last edit from being saved; empty where it was.</summary>
    public IReadOnlyList<string> Refusals { get; private set; } = [];

    /// <summary>The unit of the project's own numbers.</summary>
    public LengthUnit OwnUnit => Project?.Project.Unit ?? Course.Course.Unit;

    public LengthFormat Format => new(ReaderUnit ?? OwnUnit, new StandardInForce(Course.Standard.Standard).Format.FinestDenominator);

    public TradeWords Words => new(Format);

    public FieldText Text => new(OwnUnit, Format);

    /// <summary>Sizes, parts and findings with what is being typed.</summary>
    public Breakdown Shown
    {
        get
        {
            if (shown is { } known && known.Course == Course && known.Drafts == draftNumber)
                return known.Shown;
            var breakdown = drafts.Count == 0 ? Project!.Breakdown : Tried();
            shown = (Course, draftNumber, breakdown);
            return breakdown;
        }
    }

    public ProjectBreakdown Worked => Shown.Projects[0];

    /// <summary>Whether anything typed here is not saved yet.</summary>
    public bool HasDrafts => drafts.Count > 0 || problems.Count > 0;

    /// <summary>What the saved project has in the field, as the field shows it.</summary>
    public string SavedText(LengthField field) => Text.Of(field.Get(Project!.Course));

    /// <summary>What is typed in the field and could be read, else what is saved.</summary>
    public LengthEntry? Current(LengthField field) => drafts.TryGetValue(field.Name, out var draft) ? draft.Entry : field.Get(Project!.Course);

    /// <summary>Why what is typed in the field cannot be taken; null where it can.</summary>
    public string? ProblemOf(LengthField field) => problems.GetValueOrDefault(field.Name);

    public FieldConflict? ConflictOf(LengthField field) => conflicts.GetValueOrDefault(field.Name);

    /// <summary>Tries what is being typed.</summary>
    public void Typed(LengthField field, string text)
    {
        draftNumber++;
        if (text == SavedText(field))
        {
            drafts.Remove(field.Name);
            problems.Remove(field.Name);
            conflicts.Remove(field.Name);
            return;
        }

        if (Read(field, text) is not (var entry, null))
            return;
        drafts[field.Name] = (field, entry);
    }

    /// <summary>Saves a field. Where someone else saved another value meanwhile, both are kept and shown instead.</summary>
    /// <param name="basedOn">What the field said when the typing began.</param>
    public async Task SettleAsync(LengthField field, string text, string basedOn)
    {
        draftNumber++;
        if (Read(field, text) is not (var entry, null))
            return;
        var now = SavedText(field);
        if (now != basedOn && now != text)
        {
            conflicts[field.Name] = new(field.Name, text, now, basedOn);
            return;
        }

        await SettleMineAsync(field, entry);
    }

    /// <summary>Ends a conflict with one of the two values.</summary>
    public async Task ResolveAsync(LengthField field, bool mine)
    {
        if (!conflicts.Remove(field.Name, out var conflict))
            return;
        draftNumber++;
        if (mine && Read(field, conflict.Mine) is (var entry, null))
        {
            await SettleMineAsync(field, entry);
        }
        else
        {
            drafts.Remove(field.Name);
            problems.Remove(field.Name);
        }
    }

    /// <summary>Saves an edit that is no single field, such as another design.</summary>
    /// <param name="edit">A pure function of the course, which holds this project alone.</param>
    public Task<bool> SaveAsync(Func<Course, Course> edit) => KeepAsync(whole =>
    {
        var id = projectId;
        var own = edit(whole with { Projects = [.. whole.Projects.Where(project => project.Id == id)] });
        return own with { Projects = [.. whole.Projects.Select(project => project.Id == id ? own.Projects[0] : project)] };
    });

    /// <summary>Takes back the maker's own last change, or makes it again.</summary>
    public async Task TakeBackAsync(ProjectHistory history, bool isRedo)
    {
        if ((isRedo ? history.Redo : history.Undo) is not { } number || Project is not { } project)
            return;
        Accept(await workshop.TakeBackAsync(Course, project, number, authorId, isRedo ? RevisionCause.Redo : RevisionCause.Undo),
            "Someone changed the same thing since, so it was not taken back. Its history shows both.");
    }

    /// <summary>Brings the project back to a revision.</summary>
    public async Task RestoreAsync(int number)
    {
        if (Project is { } project)
            Accept(await workshop.RestoreAsync(Course, project, number, authorId), "Someone saved at the same moment. Look again, then restore.");
    }

    /// <summary>Takes over what others saved.</summary>
    public async Task RefreshAsync()
    {
        if (await workshop.OpenAsync(Course.Course.Id) is { } now)
            Course = now;
        foreach (var (name, (field, entry)) in drafts.ToList())
        {
            if (Project is not null && Nullable.Equals(field.Get(Project.Course), entry))
            {
                drafts.Remove(name);
                draftNumber++;
            }
        }
    }

    private async Task SettleMineAsync(LengthField field, LengthEntry? entry)
    {
        if (await SaveAsync(own => field.Set(own, entry)))
        {
            drafts.Remove(field.Name);
            problems.Remove(field.Name);
            conflicts.Remove(field.Name);
        }
        else if (Refusals.Count > 0)
        {
            problems[field.Name] = Refusals[0];
        }

        draftNumber++;
    }

    private async Task<bool> KeepAsync(Func<Course, Course> edit) => Accept(await workshop.SaveAsync(Course, authorId, edit),
        "Someone else changed the same thing meanwhile. The page shows it now; enter yours again if it is still wanted.");

    private bool Accept(SaveResult result, string onConflict)
    {
        Refusals = [];
        draftNumber++;
        switch (result)
        {
            case SaveResult.Saved(var now):
                Course = now;
                Message = Project is { } project ? FormattableString.Invariant($"Saved, revision {project.Head}") : "Saved";
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

    // What is typed as a length, or the problem, which is kept beside the field.
    private (LengthEntry? Entry, string? Problem) Read(LengthField field, string text)
    {
        string? problem = null;
        LengthEntry? entry = null;
        if (text.Trim().Length == 0)
        {
            problem = field.IsOptional ? null : $"{field.Label} is needed: type a length.";
        }
        else
        {
            switch (Text.Read(text))
            {
                case ParseResult<LengthEntry>.Parsed(var read):
                    entry = read;
                    break;
                case ParseResult<LengthEntry>.Failed failed:
                    problem = failed.Message;
                    break;
            }
        }

        if (problem is null)
            problems.Remove(field.Name);
        else
            problems[field.Name] = problem;
        return (entry, problem);
    }

    private Breakdown Tried()
    {
        var tried = Project!.Course;
        foreach (var (field, entry) in drafts.Values)
            tried = field.Set(tried, entry);
        return Breakdown.Of(tried, Project.Standard);
    }
}
