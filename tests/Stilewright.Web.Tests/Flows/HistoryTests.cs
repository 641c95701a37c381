using Microsoft.Playwright;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>Histories of benches and courses, and going back in them.</summary>
[Collection(InBrowser.Name)]
public sealed class HistoryTests(Chromium chromium)
{
    [Fact]
    public async Task A_cleared_bench_goes_from_every_screen_and_comes_back_with_undo()
    {
        var course = Courses.WithBenches(3);
        await chromium.Server.AddAsync(course);
        await using var mine = await Screen.OpenAsync(chromium);
        await using var theirs = await Screen.OpenAsync(chromium);
        await using var worker = await Screen.OpenAsync(chromium);
        await mine.GoAsync($"/courses/{course.Id}");
        await theirs.GoAsync($"/courses/{course.Id}/history");
        await worker.GoAsync($"/courses/{course.Id}/bench/2/measure");

        await mine.Page.Locator(".bench").Filter(new() { HasText = "Cupboard 2" }).GetByRole(AriaRole.Button, new() { Name = "Clear" }).ClickAsync();
        await mine.Page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "Clear the bench" }).ClickAsync();
        await Expect(mine.Page.Locator(".bench")).ToHaveCountAsync(2);
        await mine.SaidAsync("Bench 2 cleared");
        // Who did it and when, in words, on the other's screen at once.
        var entry = theirs.Page.Locator(".revisions li").First;
        await Expect(entry).ToContainTextAsync("Bench 2 “Cupboard 2” cleared");
        await Expect(entry.Locator("time")).ToHaveTextAsync("just now");
        await Expect(theirs.Page.Locator(".cleared")).ToContainTextAsync("Cupboard 2, was at bench 2 cleared just now by ");
        await Expect(worker.Page.Locator("h1")).ToHaveTextAsync("Nobody works at this bench");
        // It is not theirs to take back with Undo; they can put it back.
        await Expect(theirs.Button("Undo")).ToBeDisabledAsync();

        await mine.Button("Undo").ClickAsync();
        await Expect(mine.Page.Locator(".bench")).ToHaveCountAsync(3);
        await Expect(theirs.Page.Locator(".cleared")).ToHaveCountAsync(0);
        await Expect(theirs.Page.Locator(".revisions li").First).ToContainTextAsync("Taken back: Bench 2 “Cupboard 2” added");
        await Expect(worker.Page.Locator("h1")).Not.ToHaveTextAsync("Nobody works at this bench");

        await mine.Button("Redo").ClickAsync();
        await Expect(mine.Page.Locator(".bench")).ToHaveCountAsync(2);
        await theirs.Button("Put it back").ClickAsync();
        await Expect(mine.Page.Locator(".bench")).ToHaveCountAsync(3);
        Assert.Equal([1, 2, 3], (await chromium.Server.CourseAsync(course.Id)).Projects.Select(project => project.Project.Bench));
        Assert.Empty(mine.Faults);
    }

    [Fact]
    public async Task A_bench_is_brought_back_to_a_revision_that_was_looked_at()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        await screen.Width("at the top").FillAsync("24");
        await screen.Width("at the top").PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        await screen.GoAsync($"/courses/{course.Id}/bench/1/history");
        await screen.Link("Revision 2").ClickAsync();
        // Half an inch on the opening is half an inch on the leaf.
        await Expect(screen.Page.Locator(".differs")).ToContainTextAsync("at most by 1/2 in");
        await screen.Link("Revision 1").ClickAsync();
        await screen.Button("Bring the bench back to revision 1").ClickAsync();
        await Expect(screen.Page.Locator(".revisions li").First).ToContainTextAsync("Restored revision 1");
        var now = await chromium.Server.ProjectAsync(course.Id);
        Assert.Equal((3, "23 1/2"), (now.Head, now.Project.Pieces[0].Faces[0].Openings[0].Readings!.WidthTop!.Value.Text));
    }
}
