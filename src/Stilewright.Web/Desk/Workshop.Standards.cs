using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

public sealed partial class Workshop
{
    /// <summary>Every course that is built by a house standard, also those that are put away.</summary>
    public async Task<IReadOnlyList<OpenCourse>> CoursesByAsync(string standardId, CancellationToken stop = default)
    {
        await gate.WaitAsync(stop);
        try
        {
            return await LoadByAsync(standardId, stop);
        }
        finally
        {
            gate.Release();
        }
    }

    /// <summary>What courses name that a house standard would not have; empty where they could follow it.</summary>
    public static IReadOnlyList<DocumentError> LackingIn(IEnumerable<OpenCourse> courses, HouseStandard standard) =>
        [.. courses.SelectMany(course => References.Check(Following(course), standard).Select(error => error with { Problem = $"{course.Course.Name}: {error.Problem}" }))];

    /// <summary>Saves an edit of a house standard; every project that follows the newest then has other sizes.</summary>
    /// <param name="basedOn">The standard as the one who edits has it on the screen.</param>
    /// <param name="edit">A pure function that gives the standard as it should be.</param>
    public Task<StandardResult> SaveStandardAsync(OpenStandard basedOn, string authorId, Func<HouseStandard, HouseStandard> edit, CancellationToken stop = default) =>
        AmendStandardAsync(basedOn, authorId, RevisionCause.Edit, null,
            (_, _) => Task.FromResult(DocumentChanges.Between(basedOn.Tree, TreeOf(edit(basedOn.Standard)), typeof(HouseStandard))), stop);

    /// <summary>Takes back a revision of a house standard, where what it changed is untouched since.</summary>
    /// <param name="number">The revision; for <see cref="RevisionCause.Redo"/> the undoing that is taken back.</param>
    public Task<StandardResult> TakeBackAsync(OpenStandard standard, int number, string authorId, RevisionCause cause, CancellationToken stop = default) =>
        AmendStandardAsync(standard, authorId, cause, number, TakingBack(standard.Key, number, stop), stop);

    /// <summary>Brings a house standard back to a revision. What came after stays in its history.</summary>
    public Task<StandardResult> RestoreAsync(OpenStandard standard, int number, string authorId, CancellationToken stop = default) =>
        AmendStandardAsync(standard, authorId, RevisionCause.Restore, number,
            BringingBack(standard.Key, number, DocumentKind.Standard, standard.Tree, typeof(HouseStandard), stop), stop);

    /// <summary>Keeps a project on a revision of its house standard, or lets it follow the newest again.</summary>
    /// <param name="revision">Null to follow the newest.</param>
    public async Task<SaveResult> KeepOnAsync(OpenCourse course, OpenProject project, int? revision, string authorId, CancellationToken stop = default)
    {
        await gate.WaitAsync(stop);
        try
        {
            await using (var db = await store.CreateDbContextAsync(stop))
            {
                var head = await LoadAsync(course.Course.Id, stop) ?? throw new InvalidOperationException("A course is never removed from the store.");
                if (head.WithId(project.Project.Id) is not { } now)
                    return new SaveResult.Refused([new("$", "the project was cleared from its bench meanwhile", "put it back on the course's page first")]);
                var standard = revision is { } number ? await StandardAtAsync(db, head.Standard.Key, number, stop) : head.Standard.Standard;
                if (Lacking(now.Course, now.Project, standard) is { Count: > 0 } errors)
                    return new SaveResult.Refused(errors);
                await db.Documents.Where(document => document.Key == project.Key)
                    .ExecuteUpdateAsync(set => set.SetProperty(document => document.KeptOnStandard, revision), stop);
            }

            var saved = await LoadAsync(course.Course.Id, stop);
            Announced?.Invoke(new(course.Course.Id, authorId));
            return new SaveResult.Saved(saved!);
        }
        finally
        {
            gate.Release();
        }
    }

    private async Task<IReadOnlyList<OpenCourse>> LoadByAsync(string standardId, CancellationToken stop)
    {
        List<string> ids;
        await using (var db = await store.CreateDbContextAsync(stop))
            ids = await db.Documents.AsNoTracking().Where(each => each.Kind == DocumentKind.Course).OrderBy(each => each.Key).Select(each => each.RecordId).ToListAsync(stop);
        List<OpenCourse> courses = [];
        foreach (var id in ids)
        {
            if (await LoadAsync(id, stop) is { } course && course.Standard.Standard.Id == standardId)
                courses.Add(course);
        }

        return courses;
    }

    private async Task<StandardResult> AmendStandardAsync(OpenStandard basedOn, string authorId, RevisionCause cause, int? of,
        ChangesFrom changesFrom, CancellationToken stop)
    {
        await gate.WaitAsync(stop);
        try
        {
            await using var db = await store.CreateDbContextAsync(stop);
            var id = basedOn.Standard.Id;
            var head = await StandardAsync(db, id, stop);
            var changes = await changesFrom(db, null);
            List<Conflict> conflicts = [];
            var tree = Merged(head.Tree, changes, typeof(HouseStandard), conflicts);
            if (conflicts.Count > 0)
                return new StandardResult.Conflicted(conflicts, head);
            if (changes.Count == 0)
                return new StandardResult.Saved(head);
            if (DocumentReader.ReadStandard(BytesOf(tree)) is DocumentResult<HouseStandard>.Refused refused)
                return new StandardResult.Refused(refused.Errors);
            var standard = Use(DocumentReader.ReadStandard(BytesOf(tree)), id);
            var courses = await LoadByAsync(id, stop);
            if (LackingIn(courses, standard) is { Count: > 0 } errors)
                return new StandardResult.Refused(errors);
            await AppendStandardAsync(db, head, basedOn.Head, tree, changes, authorId, cause, of, stop);
            var now = await StandardAsync(db, id, stop);
            foreach (var course in courses)
                await LoadAsync(course.Course.Id, stop);
            foreach (var course in courses)
                Announced?.Invoke(new(course.Course.Id, authorId));
            return new StandardResult.Saved(now);
        }
        finally
        {
            gate.Release();
        }
    }

    private async Task AppendStandardAsync(StoreContext db, OpenStandard head, int basedOn, JsonObject tree, IReadOnlyList<Change> changes,
        string authorId, RevisionCause cause, int? of, CancellationToken stop)
    {
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var updated = await db.Documents.Where(document => document.Key == head.Key && document.Head == head.Head)
            .ExecuteUpdateAsync(set => set.SetProperty(document => document.Head, head.Head + 1), stop);
        if (updated == 0)
            throw new DbUpdateConcurrencyException("Another program saved to this data file at the same moment.");
        db.Revisions.Add(Revision(head.Key, head.Head + 1, basedOn, tree, changes, DocumentFormat.Standard.Version, authorId, cause, of));
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
    }

    // The course without the projects that are kept on an older revision, whose own standard is checked where they are saved.
    private static Course Following(OpenCourse course) =>
        course.Course with { Projects = [.. course.Projects.Where(project => project.KeptOnStandard is null).Select(project => project.Project)] };

    // What a project needs of a standard that it is to follow: its own designs, and those of the course that it uses.
    private static IReadOnlyList<DocumentError> Lacking(Course course, Project project, HouseStandard standard)
    {
        var used = DesignUse.Of(project);
        return References.Check(course with { Projects = [project], Designs = [.. course.Designs.Where(design => used.ContainsKey(design.Id))] }, standard);
    }
}
