using System.Text;
using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

public sealed partial class Workshop
{
    // What is open, or what the store has. The gate is held.
    private async Task<OpenCourse?> LoadAsync(string courseId, CancellationToken stop)
    {
        open.TryGetValue(courseId, out var known);
        await using var db = await store.CreateDbContextAsync(stop);
        var document = await db.Documents.AsNoTracking()
            .SingleOrDefaultAsync(each => each.Kind == DocumentKind.Course && each.RecordId == courseId, stop);
        if (document is null)
            return null;
        var heads = await db.Documents.AsNoTracking()
            .Where(each => each.CourseKey == document.Key && !each.IsArchived)
            .ToListAsync(stop);
        if (known is not null && IsCurrent(known, document, heads) && await IsCurrentAsync(db, known.Standard, stop))
            return known;

        var tree = await RevisionAsync(db, document.Key, document.Head, DocumentKind.Course, stop);
        var standard = await StandardAsync(db, (string)tree["standard"]!, stop);
        List<(StoredDocument Document, JsonObject Tree)> projects = [];
        foreach (var head in heads)
        {
            var same = known?.Projects.FirstOrDefault(project => project.Key == head.Key && project.Head == head.Head);
            projects.Add((head, same?.Tree ?? await RevisionAsync(db, head.Key, head.Head, DocumentKind.Project, stop)));
        }

        var course = Use(DocumentReader.ReadCourse(BytesOf(CourseTree.Assemble(tree, projects.Select(each => each.Tree)))), courseId);
        var opened = new List<OpenProject>();
        foreach (var project in course.Projects)
        {
            var (head, own) = projects.Single(each => each.Document.RecordId == project.Id);
            if (known?.Projects.FirstOrDefault(each => each.Key == head.Key && each.Head == head.Head && each.KeptOnStandard == head.KeptOnStandard) is { } same
                && known.Head == document.Head && known.Standard == standard)
            {
                opened.Add(same);
                continue;
            }

            var kept = head.KeptOnStandard is { } number ? await StandardAtAsync(db, standard.Key, number, stop) : standard.Standard;
            opened.Add(new(head.Key, head.Head, head.KeptOnStandard, own, course with { Projects = [project] }, kept));
        }

        var now = new OpenCourse(document.Key, document.Head, document.IsArchived, tree, course, standard, opened);
        open[courseId] = now;
        return now;
    }

    private static bool IsCurrent(OpenCourse known, StoredDocument document, List<StoredDocument> heads) =>
        known.Head == document.Head && known.IsArchived == document.IsArchived && known.Projects.Count == heads.Count
        && heads.All(head => known.Projects.Any(project =>
            project.Key == head.Key && project.Head == head.Head && project.KeptOnStandard == head.KeptOnStandard));

    private static Task<bool> IsCurrentAsync(StoreContext db, OpenStandard known, CancellationToken stop) =>
        db.Documents.AnyAsync(each => each.Key == known.Key && each.Head == known.Head, stop);

    /// <summary>The newest revision of a house standard.</summary>
    /// <exception cref="InvalidOperationException">The store has no standard of that id.</exception>
    private async Task<OpenStandard> StandardAsync(StoreContext db, string standardId, CancellationToken stop)
    {
        var document = await db.Documents.AsNoTracking().SingleAsync(each => each.Kind == DocumentKind.Standard && each.RecordId == standardId, stop);
        if (standards.TryGetValue(standardId, out var known) && known.Head == document.Head)
            return known;
        var tree = await RevisionAsync(db, document.Key, document.Head, DocumentKind.Standard, stop);
        var read = new OpenStandard(document.Key, document.Head, tree, Use(DocumentReader.ReadStandard(BytesOf(tree)), standardId));
        standards[standardId] = read;
        return read;
    }

    private static async Task<HouseStandard> StandardAtAsync(StoreContext db, long key, int number, CancellationToken stop) =>
        Use(DocumentReader.ReadStandard(BytesOf(await RevisionAsync(db, key, number, DocumentKind.Standard, stop))), "standard");

    /// <summary>A revision as the newest format has it. Older ones are brought up when they are read and never rewritten.</summary>
    private static async Task<JsonObject> RevisionAsync(StoreContext db, long key, int number, DocumentKind kind, CancellationToken stop)
    {
        var row = await db.Revisions.AsNoTracking().Where(each => each.DocumentKey == key && each.Number == number)
            .Select(each => new { each.Json, each.FormatVersion }).SingleAsync(stop);
        return Upgraded(row.Json, row.FormatVersion, kind);
    }

    private static JsonObject Upgraded(string json, int version, DocumentKind kind)
    {
        var tree = (JsonObject)JsonNode.Parse(json)!;
        var format = kind == DocumentKind.Standard ? DocumentFormat.Standard : DocumentFormat.Course;
        if (version >= format.Version)
            return tree;
        // A project alone is no file; a step of the course's format finds it in its list.
        var file = kind == DocumentKind.Project ? new JsonObject { ["format"] = format.Name, ["version"] = version, ["projects"] = new JsonArray(tree) } : tree;
        var upgraded = Use(Upgrades.Run(format, version, file), kind.ToString());
        if (kind != DocumentKind.Project)
            return upgraded;
        var project = upgraded["projects"]![0]!;
        return (JsonObject)project.DeepClone();
    }

    private static IReadOnlyList<Change> ReadChanges(string json) => ChangeJson.Read((JsonArray)JsonNode.Parse(json)!);

    // What the store holds was sound when it was saved, so this is no fault of a person.
    private static T Use<T>(DocumentResult<T> result, string what) => result switch
    {
        DocumentResult<T>.Read read => read.Document,
        DocumentResult<T>.Refused refused => throw new InvalidDataException(
            $"The stored {what} cannot be read: {string.Join("; ", refused.Errors.Take(3))}"),
        _ => throw new InvalidOperationException("A file is read or refused."),
    };

    private async Task AppendAsync(
        long courseKey, IReadOnlyList<Pending> pending, string authorId, RevisionCause cause, int? of, CancellationToken stop)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        foreach (var each in pending)
        {
            if (each.Tree is null)
            {
                await db.Documents.Where(document => document.Key == each.Key)
                    .ExecuteUpdateAsync(set => set.SetProperty(document => document.IsArchived, true), stop);
                continue;
            }

            if (each.IsPutBack)
            {
                await db.Documents.Where(document => document.Key == each.Key).ExecuteUpdateAsync(set => set.SetProperty(document => document.IsArchived, false), stop);
                if (each.Changes.Count == 0)
                    continue;
            }

            var key = each.Key;
            var head = each.Head;
            // A project that was cleared from its bench and comes back, as with an imported file, goes on with its own history.
            if (key == 0 && await db.Documents.SingleOrDefaultAsync(
                document => document.Kind == DocumentKind.Project && document.CourseKey == courseKey && document.RecordId == each.NewId, stop) is { } cleared)
            {
                (key, head) = (cleared.Key, cleared.Head);
                cleared.IsArchived = false;
                cleared.Head++;
                await db.SaveChangesAsync(stop);
            }
            else if (key == 0)
            {
                var document = new StoredDocument { Kind = DocumentKind.Project, RecordId = each.NewId!, CourseKey = courseKey, Head = 1 };
                db.Documents.Add(document);
                await db.SaveChangesAsync(stop);
                key = document.Key;
            }
            else
            {
                var updated = await db.Documents.Where(document => document.Key == key && document.Head == each.Head)
                    .ExecuteUpdateAsync(set => set.SetProperty(document => document.Head, each.Head + 1), stop);
                if (updated == 0)
                    throw new DbUpdateConcurrencyException("Another program saved to this data file at the same moment.");
            }

            db.Revisions.Add(Revision(key, head + 1, each.BasedOn, each.Tree, each.Changes, DocumentFormat.Course.Version, authorId, cause, of));
        }

        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
    }

    private StoredRevision Revision(
        long key, int number, int basedOn, JsonObject tree, IReadOnlyList<Change> changes, int formatVersion, string authorId, RevisionCause cause, int? of) => new()
        {
            DocumentKey = key,
            Number = number,
            BasedOn = basedOn,
            Json = Encoding.UTF8.GetString(BytesOf(tree)),
            Changes = ChangeJson.Write(changes).ToJsonString(),
            FormatVersion = formatVersion,
            ProgramVersion = ProgramVersion.Text,
            AuthorId = authorId,
            MadeAt = clock.GetUtcNow().UtcDateTime,
            Cause = cause,
            Of = of,
        };
}
