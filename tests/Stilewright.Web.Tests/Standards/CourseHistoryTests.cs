using Stilewright.Projects;
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
        Assert.Equal((2, "Cupboard 2", "One"), (cleared.Bench, cleared.Name, cleared.Clearing!.By));

        var refused = Assert.IsType<SaveResult.Refused>(await store.Workshop.PutBackAsync(course, cleared.Key, 3, CourseStore.One));
        Assert.Contains("bench 3 is taken", Assert.Single(refused.Errors).Problem, StringComparison.Ordinal);

        Assert.IsType<SaveResult.Saved>(await store.Workshop.PutBackAsync(course, cleared.Key, 7, CourseStore.Other));
        course = await store.CourseAsync();
        Assert.Equal([1, 3, 7], course.Projects.Select(project => project.Project.Bench));
        Assert.Equal((id, 2), (course.AtBench(7)!.Project.Id, course.AtBench(7)!.Head));
        Assert.Empty(await store.Workshop.ClearedAsync(course));
    }

    [Fact]
    public async Task ClearingABenchIsARevisionThatItsMakerTakesBack()
    {
        await using var store = await CourseStore.OpenAsync();
        var (mine, theirs) = (await DeskAsync(store, CourseStore.One), await DeskAsync(store, CourseStore.Other));
        List<string> announced = [];
        store.Workshop.Announced += announcement => announced.Add(announcement.AuthorId);
        var was = mine.Course.AtBench(2)!;
        Assert.True(await mine.ClearAsync(was));

        var entry = (await store.Workshop.RevisionsAsync(mine.Course.Key))[0];
        Assert.Equal(("One", 2), (entry.By, entry.Number));
        Assert.Equal("Bench 2 “Cupboard 2” cleared", entry.Words(new(typeof(Course), mine.Course.Tree)));
        Assert.InRange(DateTime.UtcNow - entry.MadeAt, TimeSpan.Zero, TimeSpan.FromMinutes(5));
        // Each bench has its own history; clearing one is none of its own changes.
        Assert.False((await theirs.HistoryAsync()).CanUndo);

        var history = await mine.HistoryAsync();
        Assert.True(history.CanUndo);
        await mine.TakeBackAsync(history, isRedo: false);
        Assert.Empty(mine.Refusals);
        Assert.Equal("Taken back: Bench 2 “Cupboard 2” added", mine.Message);
        var back = (await store.CourseAsync()).AtBench(2)!;
        Assert.Equal((was.Project.Id, was.Head, was.Key), (back.Project.Id, back.Head, back.Key));
        Assert.True(System.Text.Json.Nodes.JsonNode.DeepEquals(was.Tree, back.Tree));
        Assert.Empty(await store.Workshop.ClearedAsync(mine.Course));

        await mine.TakeBackAsync(await mine.HistoryAsync(), isRedo: true);
        Assert.Null((await store.CourseAsync()).AtBench(2));
        Assert.Equal([CourseStore.One, CourseStore.One, CourseStore.One], announced);
        store.Restart();
        Assert.Equal([1, 3], (await store.CourseAsync()).Projects.Select(project => project.Project.Bench));
    }

    [Fact]
    public async Task AClearedBenchDoesNotComeBackOverAnother()
    {
        await using var store = await CourseStore.OpenAsync();
        var mine = await DeskAsync(store, CourseStore.One);
        Assert.True(await mine.ClearAsync(mine.Course.AtBench(2)!));
        var another = NewCourse.Bench(2, "Another", CourseIds.FreshFor(mine.Course.Course));
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(await store.CourseAsync(), CourseStore.Other, course => course with { Projects = [.. course.Projects, another] }));
        await mine.RefreshAsync();
        await mine.TakeBackAsync(await mine.HistoryAsync(), isRedo: false);
        Assert.Contains("bench 2 is taken: Another", Assert.Single(mine.Refusals), StringComparison.Ordinal);
        Assert.Equal("Another", (await store.CourseAsync()).AtBench(2)!.Project.Name);
    }

    [Fact]
    public async Task ABenchPutBackAndChangedByAnotherIsNotClearedAgain()
    {
        await using var store = await CourseStore.OpenAsync();
        var mine = await DeskAsync(store, CourseStore.One);
        Assert.True(await mine.ClearAsync(mine.Course.AtBench(2)!));
        await mine.TakeBackAsync(await mine.HistoryAsync(), isRedo: false);
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(await store.CourseAsync(), CourseStore.Other,
            course => course with { Projects = [.. course.Projects.Select(project => project.Bench == 2 ? project with { Name = "Mine now" } : project)] }));
        await mine.RefreshAsync();
        await mine.TakeBackAsync(await mine.HistoryAsync(), isRedo: true);
        Assert.Contains("changed the same thing since", Assert.Single(mine.Refusals), StringComparison.Ordinal);
        Assert.Equal("Mine now", (await store.CourseAsync()).AtBench(2)!.Project.Name);
    }

    [Fact]
    public async Task ABenchKeptOnAnOldRevisionComesBackOnIt()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        Assert.IsType<SaveResult.Saved>(await store.Workshop.KeepOnAsync(course, course.AtBench(2)!, 1, CourseStore.One));
        var mine = await DeskAsync(store, CourseStore.One);
        Assert.True(await mine.ClearAsync(mine.Course.AtBench(2)!));
        await mine.TakeBackAsync(await mine.HistoryAsync(), isRedo: false);
        Assert.Equal(1, (await store.CourseAsync()).AtBench(2)!.KeptOnStandard);
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

        Assert.IsType<SaveResult.Saved>(await store.Workshop.RestoreAsync(course, null, 1, CourseStore.Other));
        course = await store.CourseAsync();
        Assert.Null(course.Course.Designs[0].TopRail);
        Assert.Equal(RevisionCause.Restore, (await store.Workshop.RevisionsAsync(course.Key))[0].Cause);

        // Someone else changed the same rail since, so the first change is not taken back over it.
        Assert.IsType<SaveResult.Conflicted>(await store.Workshop.TakeBackAsync(await SavedAsync(store, "5"), null, 2, CourseStore.One, RevisionCause.Undo));
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

    private static async Task<CourseDesk> DeskAsync(CourseStore store, string author) => new(store.Workshop, author, await store.CourseAsync(), null);

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
