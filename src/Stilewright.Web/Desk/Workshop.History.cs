using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

public sealed partial class Workshop
{
    /// <summary>What a maker can take back in a document.</summary>
    /// <param name="key">Of the document in the store.</param>
    public async Task<ProjectHistory> HistoryAsync(long key, string authorId, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var own = await db.Revisions.AsNoTracking().Where(each => each.DocumentKey == key && each.AuthorId == authorId)
            .OrderBy(each => each.Number).Select(each => new { each.Number, each.Cause }).ToListAsync(stop);
        return ProjectHistory.Of(own.Select(each => (each.Number, each.Cause)));
    }

    /// <summary>The revisions of a document, the newest first.</summary>
    public async Task<IReadOnlyList<RevisionEntry>> RevisionsAsync(long key, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var rows = await db.Revisions.AsNoTracking().Where(each => each.DocumentKey == key).OrderByDescending(each => each.Number)
            .Select(each => new { each.Number, each.MadeAt, each.Cause, each.Of, each.Changes, By = db.Makers.First(maker => maker.Id == each.AuthorId).Name })
            .ToListAsync(stop);
        return [.. rows.Select(row => new RevisionEntry(row.Number, row.MadeAt, row.By, row.Cause, row.Of, ReadChanges(row.Changes)))];
    }

    /// <summary>The newest revision of every project of a course, by the keys of their documents.</summary>
    public async Task<IReadOnlyDictionary<long, RevisionEntry>> LastAsync(OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var rows = await (from document in db.Documents.AsNoTracking()
                          join revision in db.Revisions on new { DocumentKey = document.Key, Number = document.Head } equals new { revision.DocumentKey, revision.Number }
                          join maker in db.Makers on revision.AuthorId equals maker.Id
                          where document.CourseKey == course.Key && !document.IsArchived
                          select new { revision.DocumentKey, revision.Number, revision.MadeAt, maker.Name, revision.Cause, revision.Of, revision.Changes }).ToListAsync(stop);
        return rows.ToDictionary(row => row.DocumentKey, row => new RevisionEntry(
            row.Number, row.MadeAt, row.Name, row.Cause, row.Of, ReadChanges(row.Changes)));
    }

    /// <summary>A project as it was at a revision, in the course as it is now; null where the two no longer go together.</summary>
    public async Task<OpenProject?> AtRevisionAsync(OpenCourse course, long key, int number, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var tree = await RevisionAsync(db, key, number, DocumentKind.Project, stop);
        return DocumentReader.ReadCourse(BytesOf(CourseTree.Assemble(course.Tree, [tree]))) is DocumentResult<Course>.Read read
            ? new(key, number, null, tree, read.Document, course.Standard.Standard) : null;
    }

    /// <summary>Takes back a revision of a project, where what it changed is untouched since.</summary>
    /// <param name="number">The revision; for <see cref="RevisionCause.Redo"/> the undoing that is taken back.</param>
    public Task<SaveResult> TakeBackAsync(OpenCourse course, OpenProject project, int number, string authorId, RevisionCause cause, CancellationToken stop = default) =>
        AmendAsync(course, project, authorId, cause, number, async db =>
        {
            var changes = await db.Revisions.Where(each => each.DocumentKey == project.Key && each.Number == number).Select(each => each.Changes).SingleAsync(stop);
            return DocumentChanges.Inverse(ReadChanges(changes));
        }, stop);

    /// <summary>Brings a project back to a revision. What came after stays in its history.</summary>
    public Task<SaveResult> RestoreAsync(OpenCourse course, OpenProject project, int number, string authorId, CancellationToken stop = default) =>
        AmendAsync(course, project, authorId, RevisionCause.Restore, number, async db =>
            DocumentChanges.Between(project.Tree, await RevisionAsync(db, project.Key, number, DocumentKind.Project, stop), typeof(Project)), stop);

    private async Task<SaveResult> AmendAsync(OpenCourse course, OpenProject project, string authorId, RevisionCause cause, int of,
        Func<StoreContext, Task<IReadOnlyList<Change>>> changesOf, CancellationToken stop)
    {
        await gate.WaitAsync(stop);
        try
        {
            var head = await LoadAsync(course.Course.Id, stop) ?? throw new InvalidOperationException("A course is never removed from the store.");
            if (head.WithId(project.Project.Id) is not { } now)
                return new SaveResult.Refused([new("$", "the project was cleared from its bench meanwhile", "put it back on the course's page first")]);
            IReadOnlyList<Change> changes;
            await using (var db = await store.CreateDbContextAsync(stop))
                changes = await changesOf(db);
            List<Conflict> conflicts = [];
            var tree = Merged(now.Tree, changes, typeof(Project), conflicts);
            if (conflicts.Count > 0)
                return new SaveResult.Conflicted(conflicts, head);
            if (changes.Count == 0)
                return new SaveResult.Saved(head);
            IEnumerable<JsonObject> trees = head.Projects.Select(each => each == now ? tree : each.Tree);
            if (Read(head.Tree, trees, head.Standard) is { Count: > 0 } errors)
                return new SaveResult.Refused(errors);
            await AppendAsync(head.Key, [new(now.Key, now.Head, now.Head, tree, changes, null)], authorId, cause, of, stop);
            var saved = await LoadAsync(course.Course.Id, stop);
            Announced?.Invoke(new(course.Course.Id, authorId));
            return new SaveResult.Saved(saved!);
        }
        finally
        {
            gate.Release();
        }
    }
}
