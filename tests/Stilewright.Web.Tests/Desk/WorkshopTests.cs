using Stilewright.Documents;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Desk;

public sealed class WorkshopTests
{
    [Fact]
    public async Task What_was_saved_is_there_after_a_new_start()
    {
        await using var store = await OpenStore.MakeAsync();
        var course = Courses.WithBenches(2);
        var added = await store.AddAsync(course);
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(added, OpenStore.Mine, Renamed(1, "Hall cupboard")));
        using var again = store.Again();
        var read = (await again.OpenAsync(course.Id))!;
        Assert.Equal("Hall cupboard", read.AtBench(1)!.Project.Name);
        Assert.Equal(2, read.AtBench(1)!.Head);
        Assert.Equal(1, read.AtBench(2)!.Head);
        Assert.Null(read.AtBench(3));
        Assert.Null(await again.OpenAsync("nowhere"));
        Assert.Equal(DocumentWriter.Write((await store.Workshop.OpenAsync(course.Id))!.Course), DocumentWriter.Write(read.Course));
    }

    [Fact]
    public async Task Changes_of_different_benches_from_one_state_are_both_kept()
    {
        await using var store = await OpenStore.MakeAsync();
        var before = await store.AddAsync(Courses.WithBenches(2));
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(before, OpenStore.Mine, Renamed(1, "One")));
        var now = Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(before, OpenStore.Theirs, Renamed(2, "Two"))).Course;
        Assert.Equal(["One", "Two"], now.Course.Projects.Select(project => project.Name));
        var conflicted = Assert.IsType<SaveResult.Conflicted>(await store.Workshop.SaveAsync(before, OpenStore.Theirs, Renamed(1, "Uno")));
        Assert.Equal("One", conflicted.Course.AtBench(1)!.Project.Name);
        Assert.NotEmpty(conflicted.Conflicts);
    }

    [Fact]
    public async Task A_bench_that_was_worked_on_meanwhile_is_not_cleared_and_a_cleared_one_takes_no_work()
    {
        await using var store = await OpenStore.MakeAsync();
        var before = await store.AddAsync(Courses.WithBenches(2));
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(before, OpenStore.Mine, Renamed(1, "One")));
        Assert.IsType<SaveResult.Conflicted>(await store.Workshop.SaveAsync(before, OpenStore.Theirs, Without(1)));
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(before, OpenStore.Theirs, Without(2)));
        Assert.IsType<SaveResult.Conflicted>(await store.Workshop.SaveAsync(before, OpenStore.Mine, Renamed(2, "Two")));
    }

    [Fact]
    public async Task What_would_be_no_sound_document_is_refused_with_the_reasons()
    {
        await using var store = await OpenStore.MakeAsync();
        var before = await store.AddAsync(Courses.WithBenches(2));
        var refused = Assert.IsType<SaveResult.Refused>(await store.Workshop.SaveAsync(before, OpenStore.Mine, course => course with
        {
            Projects = [.. course.Projects.Select(project => project with { Bench = 1 })],
        }));
        Assert.All(refused.Errors, error => Assert.NotEmpty(error.Fix));
        Assert.Equal([1, 2], (await store.Workshop.OpenAsync(before.Course.Id))!.Course.Projects.Select(project => project.Bench));
    }

    [Fact]
    public async Task Every_save_is_announced_and_nothing_else()
    {
        await using var store = await OpenStore.MakeAsync();
        var before = await store.AddAsync(Courses.WithBenches(1));
        List<Announcement> heard = [];
        store.Workshop.Announced += heard.Add;
        await store.Workshop.SaveAsync(before, OpenStore.Mine, course => course);
        Assert.Empty(heard);
        await store.Workshop.SaveAsync(before, OpenStore.Mine, Renamed(1, "One"));
        Assert.Equal([new(before.Course.Id, OpenStore.Mine)], heard);
    }

    [Fact]
    public async Task A_course_that_comes_twice_gets_ids_of_its_own()
    {
        await using var store = await OpenStore.MakeAsync();
        var course = Courses.WithBenches(1);
        var first = await store.AddAsync(course);
        var second = await store.AddAsync(course);
        Assert.Equal(course.Id, first.Course.Id);
        Assert.NotEqual(course.Id, second.Course.Id);
        Assert.NotEqual(first.Projects[0].Project.Id, second.Projects[0].Project.Id);
        Assert.Equal(2, (await store.Workshop.CoursesAsync()).Count);
    }

    [Fact]
    public async Task A_course_is_put_away_and_taken_out_again()
    {
        await using var store = await OpenStore.MakeAsync();
        var added = await store.AddAsync(Courses.WithBenches(1));
        await store.Workshop.ArchiveAsync(added.Course.Id, true, OpenStore.Mine);
        Assert.True(Assert.Single(await store.Workshop.CoursesAsync()).IsArchived);
        await store.Workshop.ArchiveAsync(added.Course.Id, false, OpenStore.Mine);
        Assert.False((await store.Workshop.OpenAsync(added.Course.Id))!.IsArchived);
    }

    [Fact]
    public async Task A_history_tells_every_revision_and_any_of_them_can_be_restored()
    {
        await using var store = await OpenStore.MakeAsync();
        var now = await store.AddAsync(Courses.WithBenches(1));
        foreach (var name in new[] { "One", "Two" })
            now = Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(now, OpenStore.Mine, Renamed(1, name))).Course;
        var project = now.AtBench(1)!;
        var restored = Assert.IsType<SaveResult.Saved>(await store.Workshop.RestoreAsync(now, project, 2, OpenStore.Theirs)).Course;
        Assert.Equal("One", restored.AtBench(1)!.Project.Name);
        Assert.Equal("Two", (await store.Workshop.AtRevisionAsync(restored, project.Key, 3))!.Project.Name);
        Assert.Equal([(4, RevisionCause.Restore, "B"), (3, RevisionCause.Edit, "A"), (2, RevisionCause.Edit, "A"), (1, RevisionCause.Edit, "the program")],
            (await store.Workshop.RevisionsAsync(project.Key)).Select(entry => (entry.Number, entry.Cause, entry.By)));
    }

    private static Func<Course, Course> Renamed(int bench, string name) => course => course with
    {
        Projects = [.. course.Projects.Select(project => project.Bench == bench ? project with { Name = name } : project)],
    };

    private static Func<Course, Course> Without(int bench) => course => course with { Projects = [.. course.Projects.Where(project => project.Bench != bench)] };
}
