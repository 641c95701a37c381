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
    /// <param name="most">How many at most.</param>
    public async Task<IReadOnlyList<RevisionEntry>> RevisionsAsync(long key, int most = int.MaxValue, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var rows = await db.Revisions.AsNoTracking().Where(each => each.DocumentKey == key).OrderByDescending(each => each.Number).Take(most)
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

    /// <summary>Takes back a revision of a project, or of a course without its projects, where what it changed is untouched since. A bench that
    /// the revision cleared is put back.</summary>
    /// <param name="project">Null for the course.</param>
    /// <param name="number">The revision; for <see cref="RevisionCause.Redo"/> the undoing that is taken back.</param>
    public Task<SaveResult> TakeBackAsync(OpenCourse course, OpenProject? project, int number, string authorId, RevisionCause cause, CancellationToken stop = default) =>
        AmendAsync(course, project, authorId, cause, number, TakingBack(project?.Key ?? course.Key, number, stop), stop);

    /// <summary>Brings a project, or a course without its projects, back to a revision. What came after stays in its history.</summary>
    /// <param name="project">Null for the course, whose designs, name and overrides are brought back; its projects stay as they are.</param>
    public Task<SaveResult> RestoreAsync(OpenCourse course, OpenProject? project, int number, string authorId, CancellationToken stop = default) =>
        AmendAsync(course, project, authorId, RevisionCause.Restore, number, project is null
            ? BringingBack(course.Key, number, DocumentKind.Course, course.Tree, typeof(Course), stop)
            : BringingBack(project.Key, number, DocumentKind.Project, project.Tree, typeof(Project), stop), stop);

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

    /// <summary>The projects that were cleared from their benches, the last cleared first.</summary>
    public async Task<IReadOnlyList<ClearedBench>> ClearedAsync(OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var rows = await (from document in db.Documents.AsNoTracking()
                          join revision in db.Revisions on new { DocumentKey = document.Key, Number = document.Head } equals new { revision.DocumentKey, revision.Number }
                          where document.CourseKey == course.Key && document.IsArchived
                          select new { document.Key, document.RecordId, revision.Json, revision.FormatVersion }).ToListAsync(stop);
        if (rows.Count == 0)
            return [];
        var revisions = await RevisionsAsync(course.Key, stop: stop);
        return
        [
            .. from row in rows
               let tree = Upgraded(row.Json, row.FormatVersion, DocumentKind.Project)
               let clearing = revisions.FirstOrDefault(revision => revision.Changes.Any(change =>
                   change is RecordRemoved { List: CourseTree.ProjectsKey } removed && IdOf(removed.Record) == row.RecordId))
               orderby clearing?.MadeAt descending
               select new ClearedBench(row.Key, (int)tree["bench"]!, (string)tree["name"]!, clearing),
        ];
    }

    /// <summary>Puts a project that was cleared back on a bench, as a revision of the course.</summary>
    /// <param name="key">Of its document in the store.</param>
    /// <param name="bench">Where it goes; a free one.</param>
    public Task<SaveResult> PutBackAsync(OpenCourse course, long key, int bench, string authorId, CancellationToken stop = default) =>
        AmendAsync(course, null, authorId, RevisionCause.Edit, null, async (db, head) =>
        {
            var document = await db.Documents.AsNoTracking().SingleAsync(each => each.Key == key && each.CourseKey == head!.Key, stop);
            if (!document.IsArchived)
                return [];
            var tree = (JsonObject)(await RevisionAsync(db, key, document.Head, DocumentKind.Project, stop)).DeepClone();
            tree["bench"] = bench;
            var projects = head!.Projects.Select(each => each.Tree).ToList();
            return DocumentChanges.Between(CourseTree.Assemble(head.Tree, projects), CourseTree.Assemble(head.Tree, [.. projects, tree]), typeof(Course));
        }, stop);

    /// <summary>Which changes are to be made, with what the store has.</summary>
    private delegate Task<IReadOnlyList<Change>> ChangesFrom(StoreContext db, OpenCourse? head);

    private static ChangesFrom TakingBack(long key, int number, CancellationToken stop) => async (db, _) =>
        DocumentChanges.Inverse(ReadChanges(await db.Revisions.Where(each => each.DocumentKey == key && each.Number == number).Select(each => each.Changes).SingleAsync(stop)));

    private static ChangesFrom BringingBack(long key, int number, DocumentKind kind, JsonObject now, Type root, CancellationToken stop) => async (db, _) =>
        DocumentChanges.Between(now, await RevisionAsync(db, key, number, kind, stop), root);

    // Changes of one project, or of the course with all that stand in it: a course's own revisions also clear benches and put them back.
    private async Task<SaveResult> AmendAsync(OpenCourse course, OpenProject? project, string authorId, RevisionCause cause, int? of, ChangesFrom changesFrom, CancellationToken stop)
    {
        await gate.WaitAsync(stop);
        try
        {
            var head = await LoadAsync(course.Course.Id, stop) ?? throw new InvalidOperationException("A course is never removed from the store.");
            var one = project is null ? null : head.WithId(project.Project.Id);
            if (project is not null && one is null)
                return new SaveResult.Refused([new("$", "the project was cleared from its bench meanwhile", "put it back on the course's page first")]);
            await using var db = await store.CreateDbContextAsync(stop);
            var changes = await changesFrom(db, head);
            List<Conflict> conflicts = [];
            var trees = head.Projects.Select(each => each.Tree).ToList();
            var (alone, after) = one is null
                ? CourseTree.Split(Merged(CourseTree.Assemble(head.Tree, trees), changes, typeof(Course), conflicts))
                : (head.Tree, [.. trees.Except([one.Tree]), Merged(one.Tree, changes, typeof(Project), conflicts)]);
            if (conflicts.Count > 0)
                return new SaveResult.Conflicted(conflicts, head);
            if (changes.Count == 0)
                return new SaveResult.Saved(head);

            List<Pending> pending = [one is null ? new(head.Key, head.Head, head.Head, alone, changes, null) : new(one.Key, one.Head, one.Head, after[^1], changes, null)];
            var kept = KeptBy(head);
            if (one is null)
            {
                foreach (var gone in head.Projects.Where(each => after.All(tree => IdOf(tree) != each.Project.Id)))
                    pending.Add(new(gone.Key, gone.Head, gone.Head, null, [], gone.Project.Id));
                foreach (var tree in after.Where(tree => head.WithId(IdOf(tree)) is null))
                {
                    if (head.AtBench((int)tree["bench"]!) is { } taken)
                    {
                        return new SaveResult.Refused([new("$.bench", FormattableString.Invariant($"bench {taken.Project.Bench} is taken: {taken.Project.Name}"),
                            "put the project back on a free bench, in the course's history")]);
                    }

                    var id = IdOf(tree);
                    var document = await db.Documents.AsNoTracking().SingleAsync(each => each.CourseKey == head.Key && each.RecordId == id, stop);
                    if (document.KeptOnStandard is { } number)
                        kept[id] = (number, await StandardAtAsync(db, head.Standard.Key, number, stop));
                    var was = await RevisionAsync(db, document.Key, document.Head, DocumentKind.Project, stop);
                    pending.Add(new(document.Key, document.Head, document.Head, tree, DocumentChanges.Between(was, tree, typeof(Project)), null) { IsPutBack = true });
                }
            }

            if (Read(alone, after, head, kept) is { Count: > 0 } errors)
                return new SaveResult.Refused(errors);
            await AppendAsync(head.Key, pending, authorId, cause, of, stop);
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
