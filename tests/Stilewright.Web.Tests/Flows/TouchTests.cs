using Microsoft.Playwright;
using Stilewright.Projects;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>A dimension is typed where it is drawn, also with a thumb: touched, it opens its field and the pad at the foot of the screen.</summary>
[Collection(InBrowser.Name)]
public sealed class TouchTests(Chromium chromium)
{
    [Theory]
    [InlineData(390, 844)]
    [InlineData(820, 1180)]
    public async Task A_dimension_that_is_touched_is_typed_on_the_pad_and_the_drawing_stays_where_it_is(int width, int height)
    {
        var (course, screen) = await OpenAsync(new() { ViewportSize = new() { Width = width, Height = height }, HasTouch = true, IsMobile = true });
        await using var _ = screen;
        var dimension = screen.Button("Width at the top: 23 1/2");
        var target = (await dimension.BoundingBoxAsync())!;
        Assert.True(target.Width >= 44 && target.Height >= 44, $"{target.Width} × {target.Height}");
        var before = await PlaceAsync(screen);
        await dimension.TapAsync();
        var pad = screen.Page.GetByRole(AriaRole.Dialog, new() { Name = "Width at the top" });
        var field = pad.GetByLabel("Width at the top");
        await Expect(field).ToBeFocusedAsync();
        // The screen's own keyboard would cover what is typed.
        await Expect(field).ToHaveAttributeAsync("inputmode", "none");
        Assert.Equal(before, await PlaceAsync(screen));
        var low = (await pad.BoundingBoxAsync())!;
        Assert.True(Math.Abs(low.Y + low.Height - height) < 1 && low.Y > target.Y + target.Height, $"the pad is at {low.Y}, {low.Height} high");
        foreach (var key in await pad.GetByRole(AriaRole.Button).AllAsync())
        {
            var box = (await key.BoundingBoxAsync())!;
            Assert.True(box.Width >= 44 && box.Height >= 44, $"{await key.InnerTextAsync()}: {box.Width} × {box.Height}");
        }

        // What stood there goes with the first key.
        foreach (var key in new[] { "2", "4", "1/2", "1/8" })
            await pad.GetByRole(AriaRole.Button, new() { Name = key, Exact = true }).TapAsync();
        // The drawing follows while it is typed.
        await Expect(screen.Drawing).ToContainTextAsync("opening 24 5⁄8");
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), FormattableString.Invariant($"measure-{width}-dimension.png")) });
        await pad.GetByRole(AriaRole.Button, new() { Name = "Done" }).TapAsync();
        await screen.SaidAsync("Saved, revision 2");
        await Expect(pad).ToHaveCountAsync(0);
        Assert.Equal("24 5/8", await WidthAsync(course));
        await Expect(screen.Button("Width at the top: 24 5/8")).ToBeFocusedAsync();
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_touch_elsewhere_saves_and_closes_and_what_cannot_be_read_stays_open()
    {
        var (course, screen) = await OpenAsync(Screen.Phone);
        await using var _ = screen;
        await screen.Button("Width at the top: 23 1/2").TapAsync();
        var pad = screen.Page.GetByRole(AriaRole.Dialog, new() { Name = "Width at the top" });
        await pad.GetByLabel("Width at the top").FillAsync("24 3/");
        await pad.GetByRole(AriaRole.Button, new() { Name = "Done" }).TapAsync();
        await Expect(pad.Locator(".measure-words")).ToContainTextAsync("24 3/");
        await pad.GetByLabel("Width at the top").FillAsync("24 3/4");
        await screen.Page.Locator(".saved").TapAsync();
        await Expect(pad).ToHaveCountAsync(0);
        await screen.SaidAsync("Saved, revision 2");
        Assert.Equal("24 3/4", await WidthAsync(course));
    }

    [Fact]
    public async Task Without_touch_a_narrow_window_takes_the_keyboard()
    {
        var (course, screen) = await OpenAsync(new() { ViewportSize = new() { Width = 700, Height = 900 } });
        await using var _ = screen;
        await screen.Button("Width at the top: 23 1/2").FocusAsync();
        await screen.Page.Keyboard.PressAsync("Enter");
        var pad = screen.Page.GetByRole(AriaRole.Dialog, new() { Name = "Width at the top" });
        await Expect(pad.GetByLabel("Width at the top")).ToBeFocusedAsync();
        await screen.Page.Keyboard.TypeAsync("25");
        await screen.Page.Keyboard.PressAsync("Escape");
        await Expect(pad).ToHaveCountAsync(0);
        await Expect(screen.Button("Width at the top: 23 1/2")).ToBeFocusedAsync();
        await screen.Page.Keyboard.PressAsync("Enter");
        await Expect(pad.GetByLabel("Width at the top")).ToBeFocusedAsync();
        await screen.Page.Keyboard.TypeAsync("25 1/4");
        await screen.Page.Keyboard.PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        await Expect(pad).ToHaveCountAsync(0);
        Assert.Equal("25 1/4", await WidthAsync(course));
    }

    private async Task<(Course Course, Screen Screen)> OpenAsync(BrowserNewContextOptions options)
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        var screen = await Screen.OpenAsync(chromium, options: options);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        return (course, screen);
    }

    private static async Task<string> PlaceAsync(Screen screen)
    {
        var box = (await screen.Drawing.BoundingBoxAsync())!;
        return FormattableString.Invariant($"{box.X:0} {box.Y:0} {box.Width:0} {box.Height:0}");
    }

    private async Task<string?> WidthAsync(Course course) => Web.Desk.ProjectEdits.Opening(
        (await chromium.Server.ProjectAsync(course.Id)).Course, Courses.OpeningId(course))!.Readings!.WidthTop?.Text;
}
