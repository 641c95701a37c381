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

    /// <summary>A project as it was at a revision, in the course as it is now and under the standard that it follows now; null where they no longer go together.</summary>
    public async Task<OpenProject?> AtRevisionAsync(OpenCourse course, long key, int number, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var tree = await RevisionAsync(db, key, number, DocumentKind.Project, stop);
        var now = course.Projects.FirstOrDefault(project => project.Key == key);
        return DocumentReader.ReadCourse(BytesOf(CourseTree.Assemble(course.Tree, [tree]))) is DocumentResult<Course>.Read read
            ? new(key, number, now?.KeptOnStandard, tree, read.Document, now?.Standard ?? course.Standard.Standard) : null;
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

    /// <summary>A course as it was at a revision, with its projects as they are now; null where the two no longer go together.</summary>
    public async Task<OpenCourse?> AtRevisionAsync(OpenCourse course, int number, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var tree = await RevisionAsync(db, course.Key, number, DocumentKind.Course, stop);
        if (DocumentReader.ReadCourse(BytesOf(CourseTree.Assemble(tree, course.Projects.Select(project => project.Tree)))) is not DocumentResult<Course>.Read(var then)
            || References.Check(then, course.Standard.Standard).Count > 0)
        {
            return null;
        }

        var projects = then.Projects.Select(project => course.WithId(project.Id)! with { Course = then with { Projects = [project] } });
        return new(course.Key, number, course.IsArchived, tree, then, course.Standard, [.. projects]);
    }

    /// <summary>Takes back a revision of a course without its projects, where what it changed is untouched since.</summary>
    public Task<SaveResult> TakeBackAsync(OpenCourse course, int number, string authorId, RevisionCause cause, CancellationToken stop = default) =>
        AmendCourseAsync(course, authorId, cause, number, async db =>
        {
            var changes = await db.Revisions.Where(each => each.DocumentKey == course.Key && each.Number == number).Select(each => each.Changes).SingleAsync(stop);
            return DocumentChanges.Inverse(ReadChanges(changes));
        }, stop);

    /// <summary>Brings a course back to a revision: its designs, name and overrides. Its projects stay as they are.</summary>
    public Task<SaveResult> RestoreAsync(OpenCourse course, int number, string authorId, CancellationToken stop = default) =>
        AmendCourseAsync(course, authorId, RevisionCause.Restore, number, async db =>
            DocumentChanges.Between(course.Tree, await RevisionAsync(db, course.Key, number, DocumentKind.Course, stop), typeof(Course)), stop);

    /// <summary>The projects that were cleared from their benches, the last saved first.</summary>
    public async Task<IReadOnlyList<ClearedBench>> ClearedAsync(OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var rows = await (from document in db.Documents.AsNoTracking()
                          join revision in db.Revisions on new { DocumentKey = document.Key, Number = document.Head } equals new { revision.DocumentKey, revision.Number }
                          join maker in db.Makers on revision.AuthorId equals maker.Id
                          where document.CourseKey == course.Key && document.IsArchived
                          orderby revision.MadeAt descending
                          select new { document.Key, revision.Json, revision.FormatVersion, revision.MadeAt, maker.Name }).ToListAsync(stop);
        return [.. rows.Select(row =>
        {
            var tree = Upgraded(row.Json, row.FormatVersion, DocumentKind.Project);
            return new ClearedBench(row.Key, (int)tree["bench"]!, (string)tree["name"]!, row.MadeAt, row.Name);
        })];
    }

    /// <summary>Puts a project that was cleared back on a bench.</summary>
    /// <param name="key">Of its document in the store.</param>
    /// <param name="bench">Where it goes; a free one.</param>
    public async Task<SaveResult> PutBackAsync(OpenCourse course, long key, int bench, string authorId, CancellationToken stop = default)
    {
        await gate.WaitAsync(stop);
        try
        {
            var head = await LoadAsync(course.Course.Id, stop) ?? throw new InvalidOperationException("A course is never removed from the store.");
            await using var db = await store.CreateDbContextAsync(stop);
            var document = await db.Documents.AsNoTracking().SingleAsync(each => each.Key == key && each.CourseKey == head.Key, stop);
            if (!document.IsArchived)
                return new SaveResult.Saved(head);
            var was = await RevisionAsync(db, key, document.Head, DocumentKind.Project, stop);
            var tree = (JsonObject)was.DeepClone();
            tree["bench"] = bench;
            if (head.AtBench(bench) is { } taken)
                return new SaveResult.Refused([new("$.bench", FormattableString.Invariant($"bench {bench} is taken: {taken.Project.Name}"), "choose a free one")]);
            if (Read(head.Tree, [.. head.Projects.Select(each => each.Tree), tree], head) is { Count: > 0 } errors)
                return new SaveResult.Refused(errors);
            if (document.KeptOnStandard is { } kept)
            {
                var alone = Use(DocumentReader.ReadCourse(BytesOf(CourseTree.Assemble(head.Tree, [tree]))), course.Course.Id);
                if (Lacking(alone, alone.Projects[0], await StandardAtAsync(db, head.Standard.Key, kept, stop)) is { Count: > 0 } lacking)
                    return new SaveResult.Refused(lacking);
            }

            var changes = DocumentChanges.Between(was, tree, typeof(Project));
            if (changes.Count > 0)
                await AppendAsync(head.Key, [new(key, document.Head, document.Head, tree, changes, null)], authorId, RevisionCause.Edit, null, stop);
            await db.Documents.Where(each => each.Key == key).ExecuteUpdateAsync(set => set.SetProperty(each => each.IsArchived, false), stop);
            var saved = await LoadAsync(course.Course.Id, stop);
            Announced?.Invoke(new(course.Course.Id, authorId));
            return new SaveResult.Saved(saved!);
        }
        finally
        {
            gate.Release();
        }
    }

    private async Task<SaveResult> AmendCourseAsync(OpenCourse course, string authorId, RevisionCause cause, int of,
        Func<StoreContext, Task<IReadOnlyList<Change>>> changesOf, CancellationToken stop)
    {
        await gate.WaitAsync(stop);
        try
        {
            var head = await LoadAsync(course.Course.Id, stop) ?? throw new InvalidOperationException("A course is never removed from the store.");
            IReadOnlyList<Change> changes;
            await using (var db = await store.CreateDbContextAsync(stop))
                changes = await changesOf(db);
            List<Conflict> conflicts = [];
            var tree = Merged(head.Tree, changes, typeof(Course), conflicts);
            if (conflicts.Count > 0)
                return new SaveResult.Conflicted(conflicts, head);
            if (changes.Count == 0)
                return new SaveResult.Saved(head);
            if (Read(tree, head.Projects.Select(each => each.Tree), head) is { Count: > 0 } errors)
                return new SaveResult.Refused(errors);
            await AppendAsync(head.Key, [new(head.Key, head.Head, head.Head, tree, changes, null)], authorId, cause, of, stop);
            var saved = await LoadAsync(course.Course.Id, stop);
            Announced?.Invoke(new(course.Course.Id, authorId));
            return new SaveResult.Saved(saved!);
        }
        finally
        {
            gate.Release();
        }
    }

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
            if (Read(head.Tree, trees, head) is { Count: > 0 } errors)
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
