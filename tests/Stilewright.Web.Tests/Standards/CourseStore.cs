using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Standards;

/// <summary>A store with one course of three measured benches, and who works on it.</summary>
internal sealed class CourseStore : IAsyncDisposable
{
    public const string One = OpenStore.Mine;
    public const string Other = OpenStore.Theirs;
    private readonly OpenStore store;

    private CourseStore(OpenStore store, string courseId) => (this.store, CourseId) = (store, courseId);

    public Workshop Workshop => store.Workshop;

    public string CourseId { get; }

    /// <summary>Three benches, each with one opening of 20 by 30 closed by a flat-panel door.</summary>
    public static async Task<CourseStore> OpenAsync()
    {
        var store = await OpenStore.MakeAsync("One", "Other");
        return new(store, Assert.IsType<SaveResult.Saved>(await store.Workshop.AddAsync(Course(), null, One, RevisionCause.Import)).Course.Course.Id);
    }

    public static Course Course()
    {
        var course = NewCourse.Named("Evening class", LengthUnit.Inch);
        for (var bench = 1; bench <= 3; bench++)
        {
            var made = NewCourse.Bench(bench, $"Cupboard {bench}", CourseIds.FreshFor(course));
            var alone = NewOpening.In(course with { Projects = [made] }, course with { Projects = [.. course.Projects, made] }, out var opening);
            alone = ProjectEdits.WithOpening(alone, opening, there => there with { Readings = new(Courses.Entry("20"), HeightLeft: Courses.Entry("30")) });
            course = course with { Projects = [.. course.Projects, .. alone.Projects] };
        }

        return course;
    }

    public static LengthEntry Entry(string text) => Courses.Entry(text)!.Value;

    public async Task<OpenCourse> CourseAsync() => (await Workshop.OpenAsync(CourseId))!;

    /// <summary>The program started again on the same file.</summary>
    public void Restart() => store.Restart();

    public ValueTask DisposeAsync() => store.DisposeAsync();
}
