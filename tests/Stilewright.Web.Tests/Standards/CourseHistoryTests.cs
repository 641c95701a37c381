using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Overrides;
using Stilewright.Web.Storage;

namespace Stilewright.Web.Tests.Standards;

public sealed class CourseHistoryTests
{
    [Fact]
    public async Task AClearedBenchIsPutBackWhereThereIsRoom()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        var id = course.AtBench(2)!.Project.Id;
        await store.Workshop.SaveAsync(course, CourseStore.One, there => there with { Projects = [.. there.Projects.Where(project => project.Id != id)] });
        course = await store.CourseAsync();
        Assert.Equal([1, 3], course.Projects.Select(project => project.Project.Bench));
        var cleared = Assert.Single(await store.Workshop.ClearedAsync(course));
        Assert.Equal((2, "Cupboard 2", "One"), (cleared.Bench, cleared.Name, cleared.ChangedBy));

        var refused = Assert.IsType<SaveResult.Refused>(await store.Workshop.PutBackAsync(course, cleared.Key, 3, CourseStore.One));
        Assert.Contains("bench 3 is taken", Assert.Single(refused.Errors).Problem, StringComparison.Ordinal);

        Assert.IsType<SaveResult.Saved>(await store.Workshop.PutBackAsync(course, cleared.Key, 7, CourseStore.Other));
        course = await store.CourseAsync();
        Assert.Equal([1, 3, 7], course.Projects.Select(project => project.Project.Bench));
        Assert.Equal((id, 2), (course.AtBench(7)!.Project.Id, course.AtBench(7)!.Head));
        Assert.Empty(await store.Workshop.ClearedAsync(course));
    }

    [Fact]
    public async Task ADesignOnceAlteredCanBeSeenAndBroughtBack()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        await store.Workshop.SaveAsync(course, CourseStore.One, there => there with
        {
            Designs = [.. there.Designs.Select((design, index) => index == 0 ? design with { TopRail = CourseStore.Entry("4") } : design)],
        });
        course = await store.CourseAsync();
        Assert.Equal(2, course.Head);
        var (before, after) = ((await store.Workshop.AtRevisionAsync(course, 1))!, (await store.Workshop.AtRevisionAsync(course, 2))!);
        Assert.Equal((null, "4"), (before.Course.Designs[0].TopRail?.Text, after.Course.Designs[0].TopRail?.Text));
        Assert.Equal(3, before.Projects.Count);

        Assert.IsType<SaveResult.Saved>(await store.Workshop.RestoreAsync(course, 1, CourseStore.Other));
        course = await store.CourseAsync();
        Assert.Null(course.Course.Designs[0].TopRail);
        Assert.Equal(RevisionCause.Restore, (await store.Workshop.RevisionsAsync(course.Key))[0].Cause);

        // Someone else changed the same rail since, so the first change is not taken back over it.
        Assert.IsType<SaveResult.Conflicted>(await store.Workshop.TakeBackAsync((await SavedAsync(store, "5")), 2, CourseStore.One, RevisionCause.Undo));
    }

    [Fact]
    public async Task TheNearestOverrideHoldsAndGoesBackToWhatIsAbove()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        var courseDesk = new CourseDesk(store.Workshop, CourseStore.One, course, null);
        await PutAsync(courseDesk, OverrideScope.OfCourse(course.Course, course.Standard.Standard), "1/2");
        course = await store.CourseAsync();
        var project = course.AtBench(1)!;
        var desk = new ProjectDesk(store.Workshop, CourseStore.One, course, project.Project.Id, null);
        var opening = ProjectEdits.Openings(project.Course).Single().Opening;
        var scope = OverrideScope.OfOpening(project.Course, project.Standard, opening);
        Assert.Equal(("1/2", "course"), (scope.Above.Find(Settings.Overlay).Value.Text, scope.Above.Find(Settings.Overlay).Origin.Words));

        await PutAsync(desk, scope, "1/4");
        Assert.Equal("20 1/2", desk.Words.Of(desk.Shown.Leaves.Single().Width));
        Assert.Equal("21", desk.Words.Of((await store.CourseAsync()).AtBench(2)!.Breakdown.Leaves.Single().Width));

        await desk.SaveAsync(there => scope.Set(there, SettingValues.None));
        Assert.Equal("21", desk.Words.Of(desk.Shown.Leaves.Single().Width));
        Assert.Empty(scope.Get(desk.Saved).Values);
    }

    private static async Task PutAsync(CourseDesk desk, OverrideScope scope, string text) =>
        Assert.True(await desk.SaveAsync(course => scope.Set(course, new(new Dictionary<Setting, SettingValue>
        {
            [Settings.Overlay] = new(text, CourseStore.Entry(text).Value),
        }))));

    private static async Task<OpenCourse> SavedAsync(CourseStore store, string rail)
    {
        await store.Workshop.SaveAsync(await store.CourseAsync(), CourseStore.Other, there => there with
        {
            Designs = [.. there.Designs.Select((design, index) => index == 0 ? design with { TopRail = CourseStore.Entry(rail) } : design)],
        });
        return await store.CourseAsync();
    }
}
