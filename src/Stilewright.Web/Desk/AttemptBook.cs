using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Stilewright.Measure;
using Stilewright.Teaching;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Telling;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Desk;

/// <summary>Keeps every check of a maker's list, the first marking of every worksheet, every finished drill, and how much each course tells.</summary>
public sealed class AttemptBook(IDbContextFactory<StoreContext> store, TimeProvider clock)
{
    /// <summary>What a course tells at most where its instructor has not said: the rule, and no right size.</summary>
    public const Telling UsualMost = Telling.Rule;

    /// <summary>How many of a maker's own checks are listed, the newest first.</summary>
    public const int MostListed = 200;

    private const int LongestSubject = 80;

    // SQLITE_CONSTRAINT of the SQLite result codes.
    private const int SqliteConstraint = 19;

    /// <summary>Raised after a result was recorded, or another measure of telling set, with the id of the course.</summary>
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
            Unexplained = found.Mistakes.Count(mistake => mistake.Explanations.Count == 0),
            Causes = Stored(found.Mistakes.Where(mistake => mistake.Explanations.Count > 0).SelectMany(mistake => mistake.Explanations[0].Causes)
                .Select(cause => new MissedCause(cause.Kind, cause.Subject))),
        });
        await db.SaveChangesAsync(stop);
        Changed?.Invoke(course.Course.Id);
    }

    /// <summary>Keeps what became of a worksheet or drill the first time that its maker had it marked; later markings of the same sheet change nothing.</summary>
    /// <param name="sheet">Tells the sheet from every other of the course.</param>
    public async Task RecordAsync(OpenCourse course, string sheet, string authorId, ExerciseResult result, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        if (await db.Exercises.AnyAsync(known => known.CourseKey == course.Key && known.AuthorId == authorId && known.Sheet == sheet, stop))
            return;
        db.Exercises.Add(new()
        {
            CourseKey = course.Key,
            AuthorId = authorId,
            Kind = result.Kind,
            Sheet = sheet,
            Level = result.Level,
            LevelNumber = result.LevelNumber,
            Bench = result.Bench,
            Unit = result.Unit,
            MadeAt = clock.GetUtcNow().UtcDateTime,
            Earned = result.Earned,
            Marks = result.Marks,
            RightFigures = result.RightFigures,
            AllFigures = result.AllFigures,
            Unexplained = result.Unexplained,
            Causes = Stored(result.Causes),
            Shares = [.. result.Shares.Select(share => new StoredShare { Kind = share.Kind, Asked = share.Asked, Right = share.Right })],
        });
        try
        {
            await db.SaveChangesAsync(stop);
        }
        catch (DbUpdateException fault) when (fault.InnerException is SqliteException { SqliteErrorCode: SqliteConstraint })
        {
            // The same sheet was marked on another screen at the same moment.
            return;
        }

        Changed?.Invoke(course.Course.Id);
    }

    private static List<StoredCause> Stored(IEnumerable<MissedCause> causes) =>
        [.. causes.Select(cause => cause with { Subject = cause.Subject.Length > LongestSubject ? cause.Subject[..LongestSubject] : cause.Subject }).Distinct()
            .Select(cause => new StoredCause { Kind = cause.Kind, Subject = cause.Subject })];

    /// <summary>The checks of the maker who asks, the newest first.</summary>
    public async Task<IReadOnlyList<StoredAttempt>> OwnAsync(AttemptAccess access, OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await access.Own(db.Attempts.AsNoTracking()).Where(attempt => attempt.CourseKey == course.Key)
            .OrderByDescending(attempt => attempt.Key).Take(MostListed).ToListAsync(stop);
    }

    /// <summary>The worksheets and drills of the maker who asks, the newest first.</summary>
    public async Task<IReadOnlyList<StoredExercise>> OwnExercisesAsync(AttemptAccess access, OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        return await access.Own(db.Exercises.AsNoTracking()).Where(exercise => exercise.CourseKey == course.Key)
            .OrderByDescending(exercise => exercise.Key).Take(MostListed).ToListAsync(stop);
    }

    /// <summary>What the results that the asker may see come to.</summary>
    /// <param name="unit">Of the worksheets that are proposed.</param>
    public async Task<ClassReckoning> ReckonAsync(AttemptAccess access, OpenCourse course, LengthUnit unit, CancellationToken stop = default) =>
        ClassReckoning.Of(await SeenAsync(access, course, stop), Today, unit, await SeenDrillsAsync(access, course, stop));

    /// <summary>The drills that the asker may see.</summary>
    public async Task<IReadOnlyList<DrillAttempt>> SeenDrillsAsync(AttemptAccess access, OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var seen = await access.Seen(db.Exercises.AsNoTracking()).Where(drill => drill.CourseKey == course.Key && drill.Kind == ExerciseKind.Drill).OrderBy(drill => drill.Key).ToListAsync(stop);
        return [.. seen.Select(drill => new DrillAttempt(drill.AuthorId, drill.Bench, DayOf(drill.MadeAt), [.. drill.Shares.Select(share => new DrillShare(share.Kind, share.Asked, share.Right))]))];
    }

    /// <summary>The checks and worksheets that the asker may see: of the whole class for the instructor, own ones for a maker.</summary>
    public async Task<IReadOnlyList<Attempt>> SeenAsync(AttemptAccess access, OpenCourse course, CancellationToken stop = default)
    {
        await using var db = await store.CreateDbContextAsync(stop);
        var seen = await access.Seen(db.Attempts.AsNoTracking()).Where(attempt => attempt.CourseKey == course.Key).OrderBy(attempt => attempt.Key).ToListAsync(stop);
        var sheets = await access.Seen(db.Exercises.AsNoTracking()).Where(sheet => sheet.CourseKey == course.Key && sheet.Kind == ExerciseKind.Worksheet).OrderBy(sheet => sheet.Key).ToListAsync(stop);
        return
        [
            .. seen.Select(attempt => new Attempt(attempt.AuthorId, attempt.Bench, DayOf(attempt.MadeAt), Missed(attempt.Causes), attempt.RightFigures, attempt.AllFigures, attempt.IsRight)
            {
                Unexplained = attempt.Unexplained,
            }),
            .. sheets.Select(sheet => new Attempt(sheet.AuthorId, sheet.Bench, DayOf(sheet.MadeAt), Missed(sheet.Causes), sheet.RightFigures, sheet.AllFigures, sheet.Earned == sheet.Marks)
            {
                SheetLevel = sheet.LevelNumber,
                Unexplained = sheet.Unexplained,
            }),
        ];

        static MissedCause[] Missed(List<StoredCause> causes) => [.. causes.Select(cause => new MissedCause(cause.Kind, cause.Subject))];
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
