using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Running;

/// <summary>A workshop on a data file of its own, without a server.</summary>
public sealed class OpenStore : IAsyncDisposable
{
    /// <summary>Two makers.</summary>
    public const string Mine = "mine", Theirs = "theirs";

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-store-").FullName;
    private readonly DataFiles files;

    private OpenStore()
    {
        files = new(Path.Combine(folder, "shop.db"));
        Workshop = new(files, TimeProvider.System);
        Makers = new(files, TimeProvider.System);
        Attempts = new(files, TimeProvider.System);
    }

    public Workshop Workshop { get; private set; }

    public MakerBook Makers { get; }

    public AttemptBook Attempts { get; }

    /// <param name="mine">What <see cref="Mine"/> is called.</param>
    /// <param name="theirs">What <see cref="Theirs"/> is called.</param>
    public static async Task<OpenStore> MakeAsync(string mine = "A", string theirs = "B")
    {
        var store = new OpenStore();
        await DataFile.PrepareAsync(Path.Combine(store.folder, "shop.db"), store.files, default);
        await store.Makers.EnterAsync(MakerBook.ProgramId, "the program");
        await store.Makers.EnterAsync(Mine, mine);
        await store.Makers.EnterAsync(Theirs, theirs);
        return store;
    }

    public async Task<OpenCourse> AddAsync(Course course) =>
        Assert.IsType<SaveResult.Saved>(await Workshop.AddAsync(course, null, MakerBook.ProgramId, RevisionCause.Edit)).Course;

    /// <summary>The first project of a course on one maker's screen.</summary>
    public async Task<ProjectDesk> DeskAsync(string courseId, string maker = Mine, Measure.LengthUnit? unit = null)
    {
        var course = (await Workshop.OpenAsync(courseId))!;
        return new(Workshop, maker, course, course.Projects[0].Project.Id, unit);
    }

    /// <summary>Another workshop on the same file, as after a new start of the program.</summary>
    public Workshop Again() => new(files, TimeProvider.System);

    /// <summary>The program started again on the same file.</summary>
    public void Restart()
    {
        Workshop.Dispose();
        Workshop = new(files, TimeProvider.System);
    }

    public ValueTask DisposeAsync()
    {
        Workshop.Dispose();
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}
