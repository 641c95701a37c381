using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Running;

/// <summary>One browser of its own, with its cookies and drafts, showing one page.</summary>
public sealed class Screen : IAsyncDisposable
{
    private readonly string address;
    private readonly List<string> faults = [];

    private Screen(IBrowserContext context, IPage page, string address) => (Context, Page, this.address) = (context, page, address);

    public IBrowserContext Context { get; }

    public IPage Page { get; }

    /// <summary>What the scripts or the page's policy complained of, without lost lines.</summary>
    public IReadOnlyList<string> Faults => faults;

    public static BrowserNewContextOptions Desk => new() { ViewportSize = new() { Width = 1440, Height = 1000 } };

    public static BrowserNewContextOptions Tablet => new() { ViewportSize = new() { Width = 820, Height = 1180 }, HasTouch = true, IsMobile = true };

    public static BrowserNewContextOptions Phone => new() { ViewportSize = new() { Width = 390, Height = 844 }, HasTouch = true, IsMobile = true };

    /// <summary>Opens a browser; a page is shown by <see cref="GoAsync"/>.</summary>
    public static async Task<Screen> OpenAsync(Chromium chromium, TestServer? server = null, BrowserNewContextOptions? options = null)
    {
        var context = await chromium.Browser.NewContextAsync(options ?? Desk);
        var page = await context.NewPageAsync();
        var screen = new Screen(context, page, (server ?? chromium.Server).Address);
        page.PageError += (_, fault) => screen.faults.Add(fault);
        page.Console += (_, line) =>
        {
            if (line.Type == "error" && line.Text.Contains("Content Security Policy", StringComparison.Ordinal))
                screen.faults.Add(line.Text);
        };
        return screen;
    }

    /// <summary>Shows a page and waits until it answers to clicks.</summary>
    public async Task GoAsync(string path)
    {
        await Page.GotoAsync(address + path);
        await LiveAsync();
    }

    public async Task ReloadAsync()
    {
        await Page.ReloadAsync();
        await LiveAsync();
    }

    /// <summary>Waits until the server has taken over the page; until then a click would be lost.</summary>
    public Task LiveAsync() => LiveAsync(Page);

    /// <inheritdoc cref="LiveAsync()"/>
    public static Task LiveAsync(IPage page) => page.WaitForFunctionAsync(
        "() => { const button = document.querySelector('[data-unit]'); return button && Object.keys(button).some(key => key.startsWith('_blazorEvents')); }");

    public ILocator Button(string name) => Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    public ILocator Link(string name) => Page.GetByRole(AriaRole.Link, new() { Name = name, Exact = true });

    /// <summary>A reading of the width: at the top, in the middle, at the bottom.</summary>
    public ILocator Width(string place) => Page.GetByRole(AriaRole.Group, new() { Name = "Width, read at three places" }).GetByLabel(place, new() { Exact = true });

    /// <summary>A reading of the height: at the left, in the middle, at the right.</summary>
    public ILocator Height(string place) => Page.GetByRole(AriaRole.Group, new() { Name = "Height, read at three places" }).GetByLabel(place, new() { Exact = true });

    /// <summary>The words beside a field: why it is not taken, or which of two values holds.</summary>
    public static ILocator WordsOf(ILocator field) => field.Locator("xpath=..").Locator(".measure-words");

    public ILocator Drawing => Page.Locator(".scene").First;

    /// <summary>Types at the caret, one key after another.</summary>
    public static Task TypeAsync(ILocator field, string text) => field.PressSequentiallyAsync(text);

    /// <summary>The head of the page says what was saved last.</summary>
    public Task SaidAsync(string words) => Expect(Page.Locator(".saved")).ToContainTextAsync(words);

    public async ValueTask DisposeAsync()
    {
        await Context.DisposeAsync();
    }
}
