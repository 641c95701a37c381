using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>The courses at work: opens them from the store, keeps them at hand for every screen, and appends what is saved.</summary>
/// <remarks>A save is a change of the records, told as differences and merged onto the newest revision, so that two screens that
/// change different fields both keep their work. What is open is shared by all screens and never changed in place.</remarks>
public sealed partial class Workshop(IDbContextFactory<StoreContext> store, TimeProvider clock) : IDisposable
{
    private readonly ConcurrentDictionary<string, OpenCourse> open = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, OpenStandard> standards = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim gate = new(1, 1);

    /// <summary>Raised after a save, on the thread that saved.</summary>
    public event Action<Announcement>? Announced;

    public void Dispose() => gate.Dispose();

    /// <summary>The course whose record has the id, as it stands; null where there is none.</summary>
    public async Task<OpenCourse?> OpenAsync(string courseId, CancellationToken stop = default)
    {
        if (open.TryGetValue(courseId, out var known))
            return known;
        await gate.WaitAsync(stop);
        try
        {
            return await LoadAsync(courseId, stop);
        }
        finally
        {
            gate.Release();
        }
    }

    /// <summary>Saves an edit of a course or of its projects.</summary>
    /// <param name="basedOn">The course as the one who edits has it on the screen.</param>
    /// <param name="edit">A pure function that gives the course as it should be.</param>
    public Task<SaveResult> SaveAsync(
        OpenCourse basedOn, string authorId, Func<Course, Course> edit, RevisionCause cause = RevisionCause.Edit, CancellationToken stop = default)
    {
        var (course, projects) = CourseTree.Split(TreeOf(edit(basedOn.Course)));
        return MergeAsync(basedOn, authorId, course, projects, cause, stop);
    }

    private async Task<SaveResult> MergeAsync(
        OpenCourse basedOn, string authorId, JsonObject course, IReadOnlyList<JsonObject> projects, RevisionCause cause, CancellationToken stop)
    {
        var ofCourse = DocumentChanges.Between(basedOn.Tree, course, typeof(Course));
        var before = basedOn.Projects.ToDictionary(project => project.Project.Id, StringComparer.Ordinal);
        var after = projects.ToDictionary(IdOf, StringComparer.Ordinal);
        await gate.WaitAsync(stop);
        try
        {
            var head = await LoadAsync(basedOn.Course.Id, stop) ?? throw new InvalidOperationException("A course is never removed from the store.");
            List<Conflict> conflicts = [];
            List<Pending> pending = [];
            var tree = Merged(head.Tree, ofCourse, typeof(Course), conflicts);
            List<JsonObject> trees = [];
            foreach (var project in head.Projects)
            {
                var id = project.Project.Id;
                if (!before.TryGetValue(id, out var old))
                {
                    trees.Add(project.Tree);
                }
                else if (!after.TryGetValue(id, out var edited))
                {
                    // Cleared from its bench, unless someone worked on it meanwhile.
                    var since = DocumentChanges.Between(old.Tree, project.Tree, typeof(Project));
                    if (since.Count > 0)
                        conflicts.AddRange(since.Select(change => new Conflict(change, ConflictReason.ChangedSince, null)));
                    else
                        pending.Add(new(project.Key, project.Head, old.Head, null, [], id));
                }
                else
                {
                    var changes = DocumentChanges.Between(old.Tree, edited, typeof(Project));
                    var merged = Merged(project.Tree, changes, typeof(Project), conflicts);
                    trees.Add(merged);
                    if (changes.Count > 0)
                        pending.Add(new(project.Key, project.Head, old.Head, merged, changes, null));
                }
            }

            foreach (var (id, edited) in after)
            {
                if (!before.ContainsKey(id))
                {
                    trees.Add(edited);
                    pending.Add(new(0, 0, 0, edited, [], id));
                }
                else if (head.WithId(id) is null && DocumentChanges.Between(before[id].Tree, edited, typeof(Project)) is { Count: > 0 } lost)
                {
                    conflicts.AddRange(lost.Select(change => new Conflict(change, ConflictReason.DeletedSince, null)));
                }
            }

            if (conflicts.Count > 0)
                return new SaveResult.Conflicted(conflicts, head);
            // That a bench was cleared is told by the course's history, since its own is put away with it.
            var known = head.Projects.Select(project => project.Tree).ToList();
            var cleared = DocumentChanges.Between(
                CourseTree.Assemble(head.Tree, known),
                CourseTree.Assemble(head.Tree, known.Where(project => pending.All(each => each.Tree is not null || each.NewId != IdOf(project)))), typeof(Course));
            if (ofCourse.Count + cleared.Count > 0)
                pending.Insert(0, new(head.Key, head.Head, basedOn.Head, tree, [.. ofCourse, .. cleared], null));
            if (pending.Count == 0)
                return new SaveResult.Saved(head);
            if (Read(tree, trees, head, KeptBy(head)) is { Count: > 0 } errors)
                return new SaveResult.Refused(errors);
            await AppendAsync(head.Key, pending, authorId, cause, null, stop);
            var now = await LoadAsync(basedOn.Course.Id, stop);
            Announced?.Invoke(new(basedOn.Course.Id, authorId));
            return new SaveResult.Saved(now!);
        }
        finally
        {
            gate.Release();
        }
    }

    // The errors that a merged course would be refused with; none where it is sound. A project that is kept on a revision of the
    // standard needs what it names there.
    private static IReadOnlyList<DocumentError> Read(
        JsonObject course, IEnumerable<JsonObject> projects, OpenCourse head, IReadOnlyDictionary<string, (int Number, HouseStandard Standard)> keptBy)
    {
        switch (DocumentReader.ReadCourse(BytesOf(CourseTree.Assemble(course, projects))))
        {
            case DocumentResult<Course>.Read(var read):
                return
                [
                    .. References.Check(read with { Projects = [.. read.Projects.Where(project => !keptBy.ContainsKey(project.Id))] }, head.Standard.Standard),
                    .. from project in read.Projects
                       where keptBy.ContainsKey(project.Id)
                       let kept = keptBy[project.Id]
                       from error in Lacking(read, project, kept.Standard)
                       select error with
                       {
                           Problem = FormattableString.Invariant($"bench {project.Bench} is kept on revision {kept.Number} of the house standard: {error.Problem}"),
                       },
                ];
            case DocumentResult<Course>.Refused refused:
                return refused.Errors;
            default:
                throw new InvalidOperationException("A file is read or refused.");
        }
    }

    // The projects that are kept on a revision of the standard, by their ids.
    private static Dictionary<string, (int Number, HouseStandard Standard)> KeptBy(OpenCourse head) => head.Projects
        .Where(project => project.KeptOnStandard is not null)
        .ToDictionary(project => project.Project.Id, project => (project.KeptOnStandard!.Value, project.Standard), StringComparer.Ordinal);

    private static JsonObject Merged(JsonObject head, IReadOnlyList<Change> changes, Type root, List<Conflict> conflicts)
    {
        if (changes.Count == 0)
            return head;
        switch (DocumentChanges.Apply(head, changes, root))
        {
            case MergeResult.Merged merged:
                return merged.Tree;
            case MergeResult.Conflicts found:
                conflicts.AddRange(found.Found);
                return head;
            default:
                throw new InvalidOperationException("Changes merge or conflict.");
        }
    }

    private static string IdOf(JsonObject project) => (string)project["id"]!;

    /// <summary>A house standard as files hold it.</summary>
    internal static JsonObject TreeOf(HouseStandard standard) => (JsonObject)JsonNode.Parse(DocumentWriter.Write(standard))!;

    private static JsonObject TreeOf(Course course) => (JsonObject)JsonNode.Parse(DocumentWriter.Write(course))!;

    private static byte[] BytesOf(JsonObject tree) => JsonSerializer.SerializeToUtf8Bytes(tree);

    /// <param name="Tree">Null where the project was cleared from its bench.</param>
    /// <param name="NewId">The id of a project that is new, or cleared.</param>
    private sealed record Pending(long Key, int Head, int BasedOn, JsonObject? Tree, IReadOnlyList<Change> Changes, string? NewId)
    {
        /// <summary>Whether it was cleared and comes back; without changes it makes no revision.</summary>
        public bool IsPutBack { get; init; }
    }
}
