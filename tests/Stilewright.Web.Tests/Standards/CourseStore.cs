using Microsoft.EntityFrameworkCore;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Standards;

/// <summary>A data file of its own with one course of three measured benches, and who works on it.</summary>
internal sealed class CourseStore : IDbContextFactory<StoreContext>, IAsyncDisposable
{
    public const string One = "one";
    public const string Other = "other";
    private readonly string path = Path.Combine(Path.GetTempPath(), $"stilewright-{Guid.NewGuid():N}.db");

    private CourseStore() => Workshop = new(this, TimeProvider.System);

    public Workshop Workshop { get; private set; }

    public string CourseId { get; private set; } = "";

    /// <summary>Three benches, each with one opening of 20 by 30 closed by a flat-panel door.</summary>
    public static async Task<CourseStore> OpenAsync()
    {
        var store = new CourseStore();
        await DataFile.PrepareAsync(store.path, store, CancellationToken.None);
        var makers = new MakerBook(store, TimeProvider.System);
        await makers.EnterAsync(One, "One");
        await makers.EnterAsync(Other, "Other");
        var course = Course();
        store.CourseId = course.Id;
        Assert.IsType<SaveResult.Saved>(await store.Workshop.AddAsync(course, null, One, RevisionCause.Import));
        return store;
    }

    public static Course Course()
    {
        var course = NewCourse.Named("Evening class", LengthUnit.Inch);
        for (var bench = 1; bench <= 3; bench++)
        {
            var made = NewCourse.Bench(bench, $"Cupboard {bench}", CourseIds.FreshFor(course));
            var alone = NewOpening.In(course with { Projects = [made] }, course with { Projects = [.. course.Projects, made] }, out var opening);
            alone = ProjectEdits.WithOpening(alone, opening, there => there with { Readings = new(Entry("20"), HeightLeft: Entry("30")) });
            course = course with { Projects = [.. course.Projects, .. alone.Projects] };
        }

        return course;
    }

    public static LengthEntry Entry(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));

    public async Task<OpenCourse> CourseAsync() => (await Workshop.OpenAsync(CourseId))!;

    /// <summary>The program started again on the same file.</summary>
    public void Restart()
    {
        Workshop.Dispose();
        Workshop = new(this, TimeProvider.System);
    }

    public StoreContext CreateDbContext() => new(new DbContextOptionsBuilder<StoreContext>().UseSqlite($"{DataFile.ConnectionTo(path)};Pooling=False").Options);

    public ValueTask DisposeAsync()
    {
        Workshop.Dispose();
        foreach (var file in Directory.GetFiles(Path.GetTempPath(), Path.GetFileName(path) + "*"))
            File.Delete(file);
        return ValueTask.CompletedTask;
    }
}
