using Microsoft.Playwright;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Features.Standard;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>The page of the house standard. Each test has a server of its own, since a standard holds for every course of one.</summary>
[Collection(InBrowser.Name)]
public sealed class StandardTests(Chromium chromium)
{
    [Fact]
    public async Task A_change_shows_what_alters_and_is_made_when_it_is_applied()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await using var other = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/standard");
        await other.GoAsync($"/courses/{course.Id}/bench/1/size");
        // Opening 23 1/2 and an overlay of 3/8 on either side.
        await Expect(other.Page.Locator(".size")).ToContainTextAsync("24 1/4");

        var row = Row(screen, Settings.Overlay);
        await Expect(row.Locator(".scene")).ToContainTextAsync("overlay 3⁄8");
        await row.GetByLabel("overlay", new() { Exact = true }).FillAsync("1/2");
        await Expect(row.Locator(".scene")).ToContainTextAsync("overlay 1⁄2");
        // A leaf follows its opening on both sides: 2 x 1/8.
        var bench = Waiting(screen).Locator(".differs").Filter(new() { HasText = "Evening class, bench 1: Cupboard 1" });
        await Expect(bench).ToContainTextAsync("at most by 1/4 in");
        await Expect(bench.Locator("tr").Filter(new() { HasText = "leaf" })).ToContainTextAsync("24 1/2 ×");
        Assert.Equal(1, (await server.CourseAsync(course.Id)).Standard.Head);
        await Expect(other.Page.Locator(".size")).ToContainTextAsync("24 1/4");

        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        await Expect(other.Page.Locator(".size")).ToContainTextAsync("24 1/2");
        await Expect(screen.Page.Locator("#history")).ToContainTextAsync("Standard, overlay: 3/8 (from “partial overlay");
        Assert.Equal("1/2", StandardFields.ValueOf((await server.CourseAsync(course.Id)).Standard.Standard, Settings.Overlay).Text);

        await screen.Button("Undo").ClickAsync();
        await Expect(other.Page.Locator(".size")).ToContainTextAsync("24 1/4");
        await screen.Page.Locator("#history li").Filter(new() { HasText = "Revision 2" }).GetByRole(AriaRole.Button, new() { Name = "Bring this revision back" }).ClickAsync();
        await Expect(other.Page.Locator(".size")).ToContainTextAsync("24 1/2");
        await Expect(screen.Page.Locator("#history")).ToContainTextAsync("Restored revision 2");
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_bench_that_is_kept_on_a_revision_does_not_alter()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/settings");
        await screen.Button("Keep it on revision 1").ClickAsync();
        await Expect(screen.Page.Locator("main")).ToContainTextAsync("kept on revision 1 of the house standard");
        await screen.GoAsync($"/courses/{course.Id}/standard");
        await Row(screen, Settings.Overlay).GetByLabel("overlay", new() { Exact = true }).FillAsync("1/2");
        // The sample's benches alter, this one does not.
        await Expect(Waiting(screen).Locator(".differs").First).ToBeVisibleAsync();
        await Expect(Waiting(screen)).Not.ToContainTextAsync("Evening class, bench 1");
        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/size");
        await Expect(screen.Page.Locator(".size")).ToContainTextAsync("24 1/4");
        await screen.GoAsync($"/courses/{course.Id}/bench/1/settings");
        await Expect(screen.Page.Locator("main")).ToContainTextAsync("at most by 1/4 in");
        await screen.Button("Follow the newest").ClickAsync();
        await screen.GoAsync($"/courses/{course.Id}/bench/1/size");
        await Expect(screen.Page.Locator(".size")).ToContainTextAsync("24 1/2");
    }

    [Fact]
    public async Task A_machine_is_added_and_removed_only_when_that_is_applied()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/standard");
        var before = (await server.CourseAsync(course.Id)).Standard.Standard.Machines.Count;
        await screen.Button("Add a jointer").ClickAsync();
        await Expect(Waiting(screen)).ToContainTextAsync("Machine “another jointer” added");
        await Expect(Waiting(screen)).ToContainTextAsync("Nothing that is made at any bench alters.");
        var added = screen.Page.Locator("#machines .record").Filter(new() { HasText = "not applied yet" });
        await added.GetByLabel("Name", new() { Exact = true }).FillAsync("Long jointer");
        Assert.Equal(before, (await server.CourseAsync(course.Id)).Standard.Standard.Machines.Count);

        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        await Expect(screen.Page.Locator("#machines")).Not.ToContainTextAsync("not applied yet");
        Assert.Equal("Long jointer", (await server.CourseAsync(course.Id)).Standard.Standard.Machines[^1].Name);

        var there = screen.Page.Locator("#machines .record").Filter(new() { HasText = "Long jointer, a jointer" });
        await there.GetByRole(AriaRole.Button, new() { Name = "Remove it" }).ClickAsync();
        await Expect(there).ToHaveCountAsync(0);
        await Waiting(screen).GetByRole(AriaRole.Button, new() { Name = "Leave this: Machine “Long jointer” removed" }).ClickAsync();
        await Expect(there).ToHaveCountAsync(1);
        await there.GetByRole(AriaRole.Button, new() { Name = "Remove it" }).ClickAsync();
        Assert.Equal(before + 1, (await server.CourseAsync(course.Id)).Standard.Standard.Machines.Count);
        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        Assert.Equal(before, (await server.CourseAsync(course.Id)).Standard.Standard.Machines.Count);
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task Cutters_that_a_design_uses_cannot_be_removed_and_that_is_told_before()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/standard");
        var used = (await server.CourseAsync(course.Id)).Standard.Standard.Cutters[0];
        var record = screen.Page.Locator($"[id='standard/cutters/{used.Id}']");
        await record.GetByRole(AriaRole.Button, new() { Name = "Remove it" }).ClickAsync();
        await Expect(Waiting(screen)).ToContainTextAsync("Evening class: ");
        await Expect(screen.Button("Apply")).ToBeDisabledAsync();
        await screen.Button("Leave it").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        await Expect(record).ToHaveCountAsync(1);

        // How stock runs waits as well, and switched back nothing waits.
        var tick = record.GetByLabel("Its stock runs face down on the table");
        await tick.ClickAsync();
        await Expect(Waiting(screen)).ToContainTextAsync($"{used.Name}”, face down");
        Assert.Equal(used.FaceDown, (await server.CourseAsync(course.Id)).Standard.Standard.Cutters[0].FaceDown);
        await tick.ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_hard_pattern_is_added_with_the_ratio_of_its_arcs()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/standard");
        await screen.Button("Add an eyebrow").ClickAsync();
        await Expect(Waiting(screen)).ToContainTextAsync("“eyebrow pattern” added", new() { IgnoreCase = true });
        await Expect(screen.Page.GetByLabel("Reverse arcs to crown")).ToHaveCountAsync(0);
        await screen.Button("Add a cathedral").ClickAsync();
        var ratio = screen.Page.GetByLabel("Reverse arcs to crown");
        await ratio.FillAsync("3 to 2");
        await Expect(Screen.WordsOf(ratio)).ToContainTextAsync("Type two whole numbers from 1 to 1000, such as 3 : 2.");
        await Expect(screen.Button("Apply")).ToBeDisabledAsync();
        await ratio.FillAsync("3 : 2");
        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        var patterns = (await server.CourseAsync(course.Id)).Standard.Standard.Patterns;
        Assert.Equal([(ArchFamily.Eyebrow, null), (ArchFamily.Cathedral, new ArcRatio(3, 2))], patterns.Select(pattern => (pattern.Family, pattern.ReverseToCrown)));
    }

    private static ILocator Row(Screen screen, Setting setting) => screen.Page.Locator($"[id='standard/settings/{setting.Key}']");

    private static ILocator Waiting(Screen screen) => screen.Page.GetByRole(AriaRole.Region, new() { Name = "What is changed and not applied" });
}
