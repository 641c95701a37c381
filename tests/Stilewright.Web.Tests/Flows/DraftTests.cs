using Microsoft.Playwright;
using Stilewright.Projects;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>What is typed and not saved yet outlives whatever happens to page, line and server.</summary>
[Collection(InBrowser.Name)]
public sealed class DraftTests(Chromium chromium)
{
    [Fact]
    public async Task Typed_text_survives_a_reload()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await OnMeasureAsync(course);
        var field = screen.Width("at the top");
        await TypeOverAsync(field, "24 1/8");
        await UsedAsync(screen, "24 1/8");
        await screen.ReloadAsync();
        await StandsUnsavedAsync(screen, "24 1/8");
        Assert.Equal(1, (await chromium.Server.ProjectAsync(course.Id)).Head);
        await SaveAsync(screen);
        await SavedAsync(chromium.Server, course, "24 1/8");

        // Nothing of the draft is left once it is saved.
        await screen.ReloadAsync();
        await Expect(field).ToHaveValueAsync("24 1/8");
        await Expect(field).Not.ToHaveAttributeAsync("data-draft", "");
        Assert.Equal(0, await screen.Page.EvaluateAsync<int>("() => Object.keys(localStorage).filter(key => key.startsWith('stilewright.draft.')).length"));
    }

    [Fact]
    public async Task Typed_text_survives_a_lost_line()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        IWebSocketRoute? line = null;
        await screen.Page.RouteWebSocketAsync(new System.Text.RegularExpressions.Regex("/_blazor"), route =>
        {
            line = route;
            route.ConnectToServer();
        });
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        var field = screen.Width("at the top");
        await TypeOverAsync(field, "24");
        await UsedAsync(screen, "24");

        // The network goes, and with it the line that is open.
        await screen.Context.SetOfflineAsync(true);
        await line!.CloseAsync();
        await Expect(screen.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await Expect(field).ToHaveValueAsync("24");

        await screen.Context.SetOfflineAsync(false);
        await Expect(screen.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new() { Timeout = 30_000 });
        await screen.LiveAsync();
        await StandsUnsavedAsync(screen, "24");
        await SaveAsync(screen);
        await SavedAsync(chromium.Server, course, "24");
    }

    [Fact]
    public async Task Typed_text_survives_a_server_that_is_stopped_and_started_again()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        var field = screen.Width("at the top");
        await TypeOverAsync(field, "24");
        await UsedAsync(screen, "24");

        await server.StopAsync();
        await Expect(screen.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await server.StartAsync();

        // The program knows nothing of the page any more: it is loaded anew by itself.
        await Expect(screen.Page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new() { Timeout = 30_000 });
        await screen.LiveAsync();
        await StandsUnsavedAsync(screen, "24");
        Assert.Equal(1, (await server.ProjectAsync(course.Id)).Head);
        await SaveAsync(screen);
        await SavedAsync(server, course, "24");
    }

    [Fact]
    public async Task Escape_gives_back_what_is_saved()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await OnMeasureAsync(course);
        var field = screen.Width("at the top");
        await TypeOverAsync(field, "24");
        await UsedAsync(screen, "24");
        await field.PressAsync("Escape");
        await Expect(field).ToHaveValueAsync("23 1/2");
        await UsedAsync(screen, "23 1/2");
        await screen.ReloadAsync();
        await Expect(field).ToHaveValueAsync("23 1/2");
        Assert.Equal(1, (await chromium.Server.ProjectAsync(course.Id)).Head);
    }

    [Fact]
    public async Task The_same_length_in_other_words_is_no_change()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await OnMeasureAsync(course);
        var field = screen.Width("at the top");
        await TypeOverAsync(field, "23.50");
        await field.PressAsync("Enter");
        await Expect(field).ToHaveValueAsync("23 1/2");
        await Expect(field).Not.ToHaveAttributeAsync("data-draft", "");
        Assert.Equal(1, (await chromium.Server.ProjectAsync(course.Id)).Head);
    }

    [Fact]
    public async Task Leaving_a_field_saves_it()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await OnMeasureAsync(course);
        await TypeOverAsync(screen.Width("at the top"), "24");
        await screen.Page.Keyboard.PressAsync("Tab");
        await screen.SaidAsync("Saved, revision 2");
        await SavedAsync(chromium.Server, course, "24");
    }

    private async Task<Screen> OnMeasureAsync(Course course)
    {
        var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        return screen;
    }

    private static async Task TypeOverAsync(ILocator field, string text)
    {
        await field.SelectTextAsync();
        await Screen.TypeAsync(field, text);
    }

    private static Task UsedAsync(Screen screen, string width) =>
        Expect(screen.Page.Locator(".remark").First).ToContainTextAsync($"Used: {width} ×");

    // The text is in its field, marked in words, and the drawing follows it.
    private static async Task StandsUnsavedAsync(Screen screen, string width)
    {
        var field = screen.Width("at the top");
        await Expect(field).ToHaveValueAsync(width);
        await Expect(field).ToHaveAttributeAsync("data-draft", "");
        await UsedAsync(screen, width);
        if (!await field.EvaluateAsync<bool>("field => field === document.activeElement"))
            await Expect(field.Locator("xpath=..").GetByText("not saved yet")).ToBeVisibleAsync();
    }

    private static async Task SaveAsync(Screen screen)
    {
        await screen.Width("at the top").PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        await Expect(screen.Width("at the top")).Not.ToHaveAttributeAsync("data-draft", "");
    }

    private static async Task SavedAsync(TestServer server, Course course, string text)
    {
        var project = await server.ProjectAsync(course.Id);
        Assert.Equal(2, project.Head);
        Assert.Equal(text, Web.Desk.ProjectEdits.Opening(project.Course, Courses.OpeningId(course))!.Readings!.WidthTop!.Value.Text);
    }
}
