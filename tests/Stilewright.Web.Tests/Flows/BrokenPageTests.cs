using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Web.Storage;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>A fault that nobody foresaw ends the work of a page: it says so in the program's own words, and nothing is lost.</summary>
[Collection(InBrowser.Name)]
public sealed class BrokenPageTests(Chromium chromium)
{
    [Fact]
    public async Task The_page_says_that_it_has_stopped_and_goes_on_with_what_was_typed()
    {
        BreakableStore? store = null;
        await using var server = await TestServer.OpenAsync(services => services.AddSingleton<IDbContextFactory<StoreContext>>(provider =>
            store = new(provider.GetRequiredService<DbContextOptions<StoreContext>>())));
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server, Screen.Phone);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        var strip = screen.Page.GetByRole(Microsoft.Playwright.AriaRole.Alert).Filter(new() { HasText = "this page has stopped" });
        await Expect(strip).ToBeHiddenAsync();

        await screen.Height("at the left").FillAsync("30");
        await screen.Height("at the left").PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        store!.IsBroken = true;
        await screen.Width("at the top").FillAsync("24 1/8");
        await screen.Width("at the top").PressAsync("Enter");
        await Expect(strip).ToBeVisibleAsync();
        await Expect(strip).ToContainTextAsync("Nothing that was saved is lost");
        var box = (await screen.Button("Load the page anew").BoundingBoxAsync())!;
        Assert.True(box.Height >= 44 && box.Y + box.Height <= 844 && box.X >= 0, $"{box.X}, {box.Y}, {box.Width} × {box.Height}");
        Assert.DoesNotContain("unhandled", await screen.Page.Locator("body").InnerTextAsync(), StringComparison.OrdinalIgnoreCase);

        store.IsBroken = false;
        await screen.Button("Load the page anew").TapAsync();
        await screen.LiveAsync();
        await Expect(strip).ToBeHiddenAsync();
        await Expect(screen.Height("at the left")).ToHaveValueAsync("30");
        await Expect(screen.Width("at the top")).ToHaveValueAsync("24 1/8");
        await screen.Width("at the top").FocusAsync();
        await screen.Width("at the top").PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 3");
    }

    private sealed class BreakableStore(DbContextOptions<StoreContext> options) : IDbContextFactory<StoreContext>
    {
        public bool IsBroken { get; set; }

        public StoreContext CreateDbContext() => IsBroken ? throw new InvalidOperationException("Broken on purpose.") : new(options);
    }
}
