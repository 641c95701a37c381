using System.Collections.Concurrent;
using Microsoft.Playwright;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Pages;

/// <summary>Pages fit the screens of the shop, and look as they did. Each leaves a picture of itself in artifacts/screens, to be looked at.</summary>
[Collection(InBrowser.Name)]
public sealed class LookTests(Chromium chromium, LookServer looks) : IClassFixture<LookServer>
{
    // One browser for many pages, as a maker has: what a page brings with it is fetched once.
    [Theory]
    [InlineData("desk")]
    [InlineData("tablet")]
    [InlineData("phone")]
    public async Task Pages_are_no_wider_than_the_screen_and_look_as_they_did(string size)
    {
        ConcurrentBag<string> faults = [];
        await AllPages.InTwoAsync(async pages =>
        {
            await using var screen = await OpenAsync(size);
            foreach (var page in pages)
            {
                var picture = await TakeAsync(screen, page);
                await File.WriteAllBytesAsync(Path.Combine(Repository.Folder("artifacts/screens"), $"{page}-{size}.png"), picture);
                var wide = await screen.Page.EvaluateAsync<string[]>("""
                    () => document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] : [...document.querySelectorAll("body *")]
                      .filter(each => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5).map(each => each.outerHTML.slice(0, 120))
                    """);
                foreach (var each in wide)
                    faults.Add($"{page} is wider than the screen: {each}");
                if (Compare(page, size, Look.Of(picture)) is { } differs)
                    faults.Add(differs);
            }
        });

        Assert.True(faults.IsEmpty, string.Join('\n', faults.Order()));
    }

    // What the comparison is for, done to a page on purpose; without it a tolerance that lets everything pass would not be noticed.
    [Theory]
    [InlineData("a drawing is missing", "document.querySelector('.scene').style.visibility = 'hidden'", true)]
    [InlineData("letters are doubled", "document.querySelector('h1').style.fontSize = '200%'", true)]
    [InlineData("a field has moved", "document.querySelector('.measure input').style.translate = '24px'", true)]
    [InlineData("a word is clipped", "Object.assign(document.querySelector('h1').style, { width: '2ch', overflow: 'hidden', whiteSpace: 'nowrap' })", true)]
    [InlineData("all stands a pixel further", "document.querySelector('main').style.translate = '1px 1px'", false)]
    [InlineData("letters are smoothed otherwise", "document.documentElement.style.textRendering = 'geometricPrecision'", false)]
    public async Task The_comparison_sees_what_a_person_would(string what, string change, bool isSeen)
    {
        await using var screen = await OpenAsync("desk");
        var before = Look.Of(await TakeAsync(screen, "measure"));
        await screen.Page.EvaluateAsync($"() => {{ {change}; }}");
        var differs = Look.Of(await PictureAsync(screen)).DifferenceFrom(before, out _);
        Assert.True(differs is not null == isSeen, $"{what}: {differs ?? "nothing is seen"}");
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
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "measure-phone-typing.png") });
    }

    private async Task<Screen> OpenAsync(string size)
    {
        var options = size switch
        {
            "desk" => Screen.Desk,
            "tablet" => Screen.Tablet,
            _ => Screen.Phone,
        };
        options.ReducedMotion = ReducedMotion.Reduce;
        options.ColorScheme = ColorScheme.Light;
        return await Screen.OpenAsync(chromium, looks.Server, options);
    }

    private async Task<byte[]> TakeAsync(Screen screen, string page)
    {
        await screen.GoAsync(await AllPages.AddressAsync(looks.Server, page));
        return await PictureAsync(screen);
    }

    private static async Task<byte[]> PictureAsync(Screen screen)
    {
        await screen.Page.EvaluateAsync("() => document.fonts.ready.then(() => new Promise(drawn => requestAnimationFrame(() => requestAnimationFrame(() => drawn(true)))))");
        return await screen.Page.ScreenshotAsync(new() { FullPage = true, Animations = ScreenshotAnimations.Disabled, Caret = ScreenshotCaret.Hide });
    }

    // What is wrong with a page's look, and where the pictures of it lie; null where it is as it was kept. One that is not is kept anew when STILEWRIGHT_WRITE is 1.
    private static string? Compare(string page, string size, Look look)
    {
        var file = Path.Combine(Repository.Folder("tests/Stilewright.Web.Tests/Pages/Looks"), $"{page}-{size}.png");
        var isKept = File.Exists(file);
        Look? difference = null;
        var differs = isKept ? look.DifferenceFrom(Look.Read(file), out difference) : "no picture of it is kept";
        if (differs is null)
            return null;
        if (Environment.GetEnvironmentVariable("STILEWRIGHT_WRITE") == "1")
        {
            look.Write(file);
            return null;
        }

        var folder = Repository.Folder("artifacts/looks");
        look.Write(Path.Combine(folder, $"{page}-{size}-now.png"));
        difference?.Write(Path.Combine(folder, $"{page}-{size}-difference.png"));
        if (isKept)
            File.Copy(file, Path.Combine(folder, $"{page}-{size}-kept.png"), overwrite: true);
        return $"{page} on a {size}: {differs}. See artifacts/looks/{page}-{size}-*.png; where the page is right, run this test once with STILEWRIGHT_WRITE=1 and commit the picture.";
    }
}
