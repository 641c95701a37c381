using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Flows;

/// <summary>The row of a course's pages is wider than a phone; the page at hand is in sight in it.</summary>
[Collection(InBrowser.Name)]
public sealed class StepRowTests(Chromium chromium)
{
    private const string InSight = "() => { const row = document.querySelector('.steps').getBoundingClientRect(), here = document.querySelector('.steps [aria-current]').getBoundingClientRect(); return here.left >= row.left - 1 && here.right <= row.right + 1; }";

    [Fact]
    public async Task The_page_at_hand_is_in_sight_when_it_is_opened_and_when_it_is_gone_to()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server, Screen.Phone);
        foreach (var page in new[] { "history", "class", "designs" })
        {
            await screen.GoAsync($"/courses/{course.Id}/{page}");
            await screen.Page.WaitForFunctionAsync(InSight);
        }

        // The row is moved by hand, and stays so.
        await screen.GoAsync($"/courses/{course.Id}/designs");
        await screen.Page.WaitForFunctionAsync(InSight);
        await screen.Page.EvaluateAsync("() => document.querySelector('.steps').scrollLeft = 10000");
        await screen.Page.EvaluateAsync("() => document.body.append(document.createElement('i'))");
        await screen.Page.WaitForTimeoutAsync(100);
        Assert.False(await screen.Page.EvaluateAsync<bool>(InSight));
        await screen.Page.Locator(".steps a", new() { HasText = "History" }).ClickAsync();
        await screen.Page.WaitForURLAsync("**/history");
        await screen.Page.WaitForFunctionAsync(InSight);
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "steps-390.png") });
        Assert.Empty(screen.Faults);
    }
}
