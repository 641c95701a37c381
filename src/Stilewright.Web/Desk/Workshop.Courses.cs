using System.Text.Json.Nodes;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>A course in the list of all.</summary>
/// <param name="ChangedAt">When anything in it was last saved, UTC.</param>
/// <param name="ChangedBy">The name of who saved it.</param>
public sealed record CourseSummary(string Id, string Name, int Benches, bool IsArchived, DateTime ChangedAt, string ChangedBy);

public sealed partial class Workshop
{
    /// <summary>All courses, the last changed first.</summary>
    public async Task<IReadOnlyList<CourseSummary>> CoursesAsync(CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var heads = await (from document in db.Documents.AsNoTracking()
                           join revision in db.Revisions on new { DocumentKey = document.Key, Number = document.Head } equals new { revision.DocumentKey, revision.Number }
                           join maker in db.Makers on revision.AuthorId equals maker.Id
                           where document.Kind == DocumentKind.Course || document.Kind == DocumentKind.Project
                           select new
                           {
                               Document = document,
                               revision.MadeAt,
                               By = maker.Name,
                               Json = document.Kind == DocumentKind.Course ? revision.Json : null,
                           }).ToListAsync(stop);
        var ofCourse = heads.ToLookup(head => head.Document.CourseKey ?? head.Document.Key);
        return
        [
            .. from head in heads
               where head.Document.Kind == DocumentKind.Course
               let all = ofCourse[head.Document.Key]
               let last = all.MaxBy(each => each.MadeAt)!
               orderby last.MadeAt descending
               select new CourseSummary(
                   head.Document.RecordId, (string)JsonNode.Parse(head.Json!)!["name"]!,
                   all.Count(each => each.Document is { Kind: DocumentKind.Project, IsArchived: false }), head.Document.IsArchived, last.MadeAt, last.By),
        ];
    }

    /// <summary>Adds a course as a new one. Where its id is taken, it and everything in it gets new ids.</summary>
    /// <param name="standard">The house standard that came with it; null for one that is in the store, or as shipped.</param>
    public async Task<SaveResult> AddAsync(Course course, HouseStandard? standard, string authorId, RevisionCause cause, CancellationToken stop = default)
    {
        await gate.WaitAsync(stop);
        try
        {
            await using var db = await store.CreateDbContextAsync(stop);
            await using var transaction = await db.Database.BeginTransactionAsync(stop);
            var held = await StandardForAsync(db, course, standard, authorId, stop);
            if (held is null)
            {
                return new SaveResult.Refused([new("$.standard", $"the house standard {course.Standard} is not in this workshop",
                    "import its file together with the course, or write \"inch\" or \"millimetre\"")]);
            }

            if (References.Check(course, held.Standard) is { Count: > 0 } errors)
                return new SaveResult.Refused(errors);
            var tree = TreeOf(course with { Standard = held.Standard.Id });
            if (await db.Documents.AnyAsync(each => each.Kind == DocumentKind.Course && each.RecordId == course.Id, stop))
                tree = CourseTree.WithFreshIds(tree, new([], Random.Shared));
            var (alone, projects) = CourseTree.Split(tree);
            var document = new StoredDocument { Kind = DocumentKind.Course, RecordId = (string)alone["id"]!, Head = 1 };
            db.Documents.Add(document);
            await db.SaveChangesAsync(stop);
            db.Revisions.Add(Revision(document.Key, 1, 0, alone, [], DocumentFormat.Course.Version, authorId, cause, null));
            List<(StoredDocument Document, JsonObject Tree)> rows = [.. projects.Select(project => (new StoredDocument
            {
                Kind = DocumentKind.Project, RecordId = IdOf(project), CourseKey = document.Key, Head = 1,
            }, project))];
            db.Documents.AddRange(rows.Select(row => row.Document));
            await db.SaveChangesAsync(stop);
            db.Revisions.AddRange(rows.Select(row => Revision(row.Document.Key, 1, 0, row.Tree, [], DocumentFormat.Course.Version, authorId, cause, null)));
            await db.SaveChangesAsync(stop);
            await transaction.CommitAsync(stop);
            var opened = await LoadAsync(document.RecordId, stop);
            Announced?.Invoke(new(document.RecordId, authorId));
            return new SaveResult.Saved(opened!);
        }
        finally
        {
            gate.Release();
        }
    }

    /// <summary>Puts a course away, or takes it out again.</summary>
    public async Task ArchiveAsync(string courseId, bool archived, string authorId, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        await db.Documents.Where(each => each.Kind == DocumentKind.Course && each.RecordId == courseId)
            .ExecuteUpdateAsync(set => set.SetProperty(each => each.IsArchived, archived), stop);
        await gate.WaitAsync(stop);
        try
        {
            await LoadAsync(courseId, stop);
        }
        finally
        {
            gate.Release();
        }

        Announced?.Invoke(new(courseId, authorId));
    }

    // The standard that came with the course becomes one of the store's, unless that has the very same; a name alone must be there.
    private async Task<OpenStandard?> StandardForAsync(StoreContext db, Course course, HouseStandard? standard, string authorId, CancellationToken stop)
    {
        if (standard is null)
        {
            var shipped = course.Standard switch
            {
                "inch" => ShippedStandards.Inch,
                "millimetre" => ShippedStandards.Millimetre,
                _ => null,
            };
            foreach (var name in new[] { course.Standard, CourseFiles.StandardIdOf(course.Standard) })
            {
                if (await db.Documents.AnyAsync(each => each.Kind == DocumentKind.Standard && each.RecordId == name, stop))
                    return await StandardAsync(db, name, stop);
            }

            if (shipped is null)
                return null;
            standard = shipped with { Id = course.Standard };
        }
        else if (await db.Documents.AnyAsync(each => each.Kind == DocumentKind.Standard && each.RecordId == standard.Id, stop))
        {
            var there = await StandardAsync(db, standard.Id, stop);
            if (CourseFiles.IsSame(there.Standard, standard))
                return there;
            standard = standard with { Id = $"{standard.Id}-{Fingerprint.Of(StandardInFull.Of(standard))}" };
            if (await db.Documents.AnyAsync(each => each.Kind == DocumentKind.Standard && each.RecordId == standard.Id, stop))
                return await StandardAsync(db, standard.Id, stop);
        }

        var tree = (JsonObject)JsonNode.Parse(DocumentWriter.Write(StandardInFull.Of(standard)))!;
        var document = new StoredDocument { Kind = DocumentKind.Standard, RecordId = standard.Id, Head = 1 };
        db.Documents.Add(document);
        await db.SaveChangesAsync(stop);
        db.Revisions.Add(Revision(document.Key, 1, 0, tree, [], DocumentFormat.Standard.Version, authorId, RevisionCause.Import, null));
        await db.SaveChangesAsync(stop);
        return await StandardAsync(db, standard.Id, stop);
    }
}
