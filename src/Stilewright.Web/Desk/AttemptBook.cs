using Microsoft.EntityFrameworkCore;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Telling;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>Keeps every check of a maker's list, and how much each course tells.</summary>
public sealed class AttemptBook(IDbContextFactory<StoreContext> store, TimeProvider clock)
{
    /// <summary>What a course tells at most where its instructor has not said: the rule, and no right size.</summary>
    public const Telling UsualMost = Telling.Rule;

    /// <summary>How many of a maker's own checks are listed, the newest first.</summary>
    public const int MostListed = 200;

    private const int LongestSubject = 80;

    /// <summary>Raised after a check was recorded, or another measure of telling set, with the id of the course.</summary>
    public event Action<string>? Changed;

    /// <param name="leaf">The label of the leaf; null for a whole project.</param>
    public async Task RecordAsync(OpenCourse course, OpenProject project, string? leaf, string authorId, CheckedList found, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        db.Attempts.Add(new()
        {
            CourseKey = course.Key,
            AuthorId = authorId,
            ProjectId = project.Project.Id,
            Bench = project.Project.Bench,
            Leaf = leaf,
            MadeAt = clock.GetUtcNow().UtcDateTime,
            Stage = found.List.Stage,
            RightFigures = found.Numbers.Count(number => number.Standing == NumberStanding.Right),
            AllFigures = found.Numbers.Count(),
            IsRight = found.IsRight,
            Causes = [.. found.Mistakes.Where(mistake => mistake.Explanations.Count > 0).SelectMany(mistake => mistake.Explanations[0].Causes)
                .Select(cause => new MissedCause(cause.Kind, cause.Subject.Length > LongestSubject ? cause.Subject[..LongestSubject] : cause.Subject)).Distinct()
                .Select(cause => new StoredCause { Kind = cause.Kind, Subject = cause.Subject })],
        });
        await db.SaveChangesAsync(stop);
        Changed?.Invoke(course.Course.Id);
    }

    /// <summary>The checks of the maker who asks, the newest first.</summary>
    public async Task<IReadOnlyList<StoredAttempt>> OwnAsync(AttemptAccess access, OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await access.Own(db.Attempts.AsNoTracking()).Where(attempt => attempt.CourseKey == course.Key)
            .OrderByDescending(attempt => attempt.Key).Take(MostListed).ToListAsync(stop);
    }

    /// <summary>The checks that the asker may see: of the whole class for the instructor, own ones for a maker.</summary>
    public async Task<IReadOnlyList<Attempt>> SeenAsync(AttemptAccess access, OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var seen = await access.Seen(db.Attempts.AsNoTracking()).Where(attempt => attempt.CourseKey == course.Key).OrderBy(attempt => attempt.Key).ToListAsync(stop);
        return [.. seen.Select(attempt => new Attempt(attempt.AuthorId, attempt.Bench, DayOf(attempt.MadeAt),
            [.. attempt.Causes.Select(cause => new MissedCause(cause.Kind, cause.Subject))], attempt.RightFigures, attempt.AllFigures, attempt.IsRight))];
    }

    /// <summary>Today by the shop's calendar.</summary>
    public DateOnly Today => DayOf(clock.GetUtcNow().UtcDateTime);

    /// <summary>The most that makers of a course are told.</summary>
    public async Task<Telling> MostToldAsync(OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await db.Tellings.Where(telling => telling.CourseKey == course.Key).Select(telling => (Telling?)telling.Most).SingleOrDefaultAsync(stop) ?? UsualMost;
    }

    /// <summary>Sets the most that makers of a course are told.</summary>
    /// <exception cref="UnauthorizedAccessException">Someone else than the instructor asks.</exception>
    public async Task SetMostToldAsync(AttemptAccess access, OpenCourse course, Telling most, CancellationToken stop = default)
    {
        if (!access.IsInstructor)
            throw new UnauthorizedAccessException("How much is told is the instructor's to set.");
        await using var db = await store.CreateDbContextAsync(stop);
        if (await db.Tellings.SingleOrDefaultAsync(telling => telling.CourseKey == course.Key, stop) is { } known)
            known.Most = most;
        else
            db.Tellings.Add(new() { CourseKey = course.Key, Most = most });
        await db.SaveChangesAsync(stop);
        Changed?.Invoke(course.Course.Id);
    }

    private DateOnly DayOf(DateTime utc) => DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(utc, clock.LocalTimeZone));
}
