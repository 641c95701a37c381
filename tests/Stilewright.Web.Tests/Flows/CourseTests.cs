using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>The page of a course.</summary>
[Collection(InBrowser.Name)]
public sealed class CourseTests(Chromium chromium)
{
    [Fact]
    public async Task Sixty_benches_are_all_on_the_page_and_the_next_free_number_is_offered()
    {
        var course = Courses.WithBenches(60);
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}");
        await Expect(screen.Page.Locator(".bench")).ToHaveCountAsync(60);
        await Expect(screen.Link("Bench 60: Cupboard 60")).ToBeVisibleAsync();
        await screen.Button("Add a bench").ClickAsync();
        await Expect(screen.Page.GetByLabel("Number of the bench")).ToHaveValueAsync("61");
        await screen.Page.GetByLabel("Number of the bench").FillAsync("7");
        await screen.Page.GetByLabel("What is built there").FillAsync("Another");
        await screen.Button("Add it").ClickAsync();
        await Expect(screen.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).ToContainTextAsync("Bench 7 is taken: Cupboard 7.");
    }
}
