using System.Runtime.CompilerServices;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Pages;

/// <summary>Pages fit the screens of the shop. Each leaves a picture of itself in artifacts/screens, to be looked at.</summary>
[Collection(InBrowser.Name)]
public sealed class LookTests(Chromium chromium)
{
    // One browser for all pages, as a maker has: what a page brings with it is fetched once.
    [Theory]
    [InlineData("desk")]
    [InlineData("tablet")]
    [InlineData("phone")]
    public async Task Nothing_is_wider_than_the_screen(string size)
    {
        var options = size switch
        {
            "desk" => Screen.Desk,
            "tablet" => Screen.Tablet,
            _ => Screen.Phone,
        };
        await using var screen = await Screen.OpenAsync(chromium, options: options);
        List<string> wide = [];
        foreach (var page in AllPages.Keys)
        {
            await screen.GoAsync(await AllPages.AddressAsync(chromium.Server, page));
            await screen.Page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
            await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Folder(), $"{page}-{size}.png"), FullPage = true });
            wide.AddRange((await screen.Page.EvaluateAsync<string[]>("""
                () => document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] : [...document.querySelectorAll("body *")]
                  .filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5).map(each => each.outerHTML.slice(0, 120))
                """)).Select(each => $"{page}: {each}"));
        }

        Assert.True(wide.Count == 0, string.Join('\n', wide));
    }

    [Fact]
    public async Task The_letters_are_those_of_the_program()
    {
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync("/");
        var loaded = await screen.Page.EvaluateAsync<string[]>(
            "() => document.fonts.ready.then(fonts => [...fonts].filter(font => font.status === 'loaded').map(font => `${font.family.replaceAll('\"', '')} ${font.weight}`))");
        Assert.Equal(["Source Sans 3 400", "Source Sans 3 600"], loaded.Order());
    }

    [Fact]
    public async Task On_a_phone_all_that_a_reading_needs_is_on_one_screen()
    {
        await using var screen = await Screen.OpenAsync(chromium, options: Screen.Phone);
        await screen.GoAsync(await AllPages.AddressAsync(chromium.Server, "measure"));
        await screen.Width("at the top").TapAsync();
        await screen.Button("2").TapAsync();
        foreach (var part in new[] { screen.Drawing, screen.Width("at the top"), screen.Height("at the right"), screen.Page.Locator(".rule").First, screen.Button("Next reading").First })
        {
            var box = (await part.BoundingBoxAsync())!;
            Assert.True(box.Y >= 0 && box.Y + box.Height <= 844 && box.X >= 0 && box.X + box.Width <= 390, $"{part}: {box.X}, {box.Y}, {box.Width} × {box.Height}");
        }

        Assert.Equal(0, await screen.Page.EvaluateAsync<int>("() => Math.round(scrollY)"));
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Folder(), "measure-phone-typing.png") });
    }

    private static string Folder([CallerFilePath] string here = "") =>
        Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(here)!, "../../../artifacts/screens")).FullName;
}
