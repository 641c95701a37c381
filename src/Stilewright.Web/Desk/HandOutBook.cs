using System.Text;
using Microsoft.EntityFrameworkCore;
using Stilewright.Documents;
using Stilewright.Prints;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>Paper that was handed out.</summary>
/// <param name="Key">Of the record in the store.</param>
/// <param name="What">What was printed, in words.</param>
/// <param name="MadeAt">UTC.</param>
/// <param name="By">The name of who printed it.</param>
/// <param name="Document">Every size that it tells.</param>
public sealed record HandedOutEntry(long Key, string What, DateTime MadeAt, string By, HandedOut Document);

/// <summary>Keeps what prints told people, and tells what no longer holds.</summary>
public sealed class HandOutBook(IDbContextFactory<StoreContext> store, TimeProvider clock)
{
    /// <summary>How many prints of a course are listed, the newest first.</summary>
    public const int MostListed = 100;

    private const int MostCharacters = 200;

    /// <summary>Raised after a print was recorded, with the id of its course.</summary>
    public event Action<string>? Recorded;

    /// <param name="what">What was printed, such as "Packet of bench 3"; cut off at 200 characters.</param>
    public async Task RecordAsync(OpenCourse course, string authorId, string what, HandedOut document, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        db.HandOuts.Add(new()
        {
            CourseKey = course.Key,
            AuthorId = authorId,
            MadeAt = clock.GetUtcNow().UtcDateTime,
            What = what.Length <= MostCharacters ? what : what[..(MostCharacters - 1)] + "…",
            FormatVersion = DocumentFormat.HandedOut.Version,
            Json = Encoding.UTF8.GetString(DocumentWriter.Write(document)),
        });
        await db.SaveChangesAsync(stop);
        Recorded?.Invoke(course.Course.Id);
    }

    /// <summary>The newest prints of a course, the newest first.</summary>
    public Task<IReadOnlyList<HandedOutEntry>> ListAsync(OpenCourse course, CancellationToken stop = default) => ReadAsync(course, null, stop);

    /// <summary>One print of a course; null where the course has none of that key.</summary>
    public async Task<HandedOutEntry?> FindAsync(OpenCourse course, long key, CancellationToken stop = default) => (await ReadAsync(course, key, stop)).SingleOrDefault();

    private async Task<IReadOnlyList<HandedOutEntry>> ReadAsync(OpenCourse course, long? key, CancellationToken stop)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var rows = await (from print in db.HandOuts.AsNoTracking()
                          join maker in db.Makers on print.AuthorId equals maker.Id
                          where print.CourseKey == course.Key && (key == null || print.Key == key)
                          orderby print.Key descending
                          select new { print.Key, print.What, print.MadeAt, maker.Name, print.Json }).Take(MostListed).ToListAsync(stop);
        return [.. rows.Select(row => new HandedOutEntry(row.Key, row.What, row.MadeAt, row.Name, Read(row.Json)))];
    }

    // What the store holds could be read when it was recorded.
    private static HandedOut Read(string json) => DocumentReader.ReadHandedOut(json) switch
    {
        DocumentResult<HandedOut>.Read read => read.Document,
        DocumentResult<HandedOut>.Refused refused => throw new InvalidDataException($"A stored print cannot be read: {string.Join("; ", refused.Errors.Take(3))}"),
        _ => throw new InvalidOperationException("A file is read or refused."),
    };
}
