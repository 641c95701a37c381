using System.Collections.Concurrent;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Pages;

/// <summary>Pages can be used by everyone: WCAG 2.2, A and AA, as far as axe can tell, and targets that fit a finger.</summary>
[Collection(InBrowser.Name)]
public sealed class AccessTests(Chromium chromium)
{
    // 44 CSS px: WCAG 2.2, success criterion 2.5.5 (AAA), https://www.w3.org/TR/WCAG22/#target-size-enhanced. A link within a sentence is
    // exempt there; so are parts of a drawing here, which the buttons beside it reach too.
    private const string SmallTargets = """
        () => [...document.querySelectorAll("button, a[href], input, select, textarea, summary")].filter(each => {
          const label = each.matches("[type=checkbox], [type=radio]") ? each.closest("label") : null;
          const box = (label ?? each).getBoundingClientRect();
          if (!each.checkVisibility() || box.width === 0 || each.closest("svg, .skip, [aria-hidden=true]")) return false;
          const isInSentence = each.tagName === "A" && !["flex", "inline-flex", "grid", "block"].includes(getComputedStyle(each).display)
            && [...each.parentElement.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.data.trim() !== "");
          return !isInSentence && (box.width < 43.5 || box.height < 43.5);
        }).map(each => `${each.outerHTML.slice(0, 90)}: ${Math.round(each.getBoundingClientRect().width)} × ${Math.round(each.getBoundingClientRect().height)}`)
        """;

    // One browser for many pages, as a maker has: what a page brings with it is fetched once.
    [Fact]
    public async Task No_rule_of_WCAG_is_broken_in_the_light_or_in_the_dark()
    {
        ConcurrentBag<string> broken = [];
        await AllPages.InTwoAsync(async pages =>
        {
            await using var screen = await Screen.OpenAsync(chromium);
            foreach (var page in pages)
            {
                await screen.GoAsync(await AllPages.AddressAsync(chromium.Server, page));
                foreach (var each in await BrokenAsync(screen.Page, ColorScheme.Light, new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }))
                    broken.Add($"{page}: {each}");
                // In the dark nothing is other than colours.
                foreach (var each in await BrokenAsync(screen.Page, ColorScheme.Dark, new() { Type = "rule", Values = ["color-contrast", "link-in-text-block"] }))
                    broken.Add($"{page}: {each}");
            }

            foreach (var fault in screen.Faults)
                broken.Add(fault);
        });

        Assert.True(broken.IsEmpty, string.Join('\n', broken.Order()));
    }

    [Fact]
    public async Task Targets_fit_a_finger()
    {
        await using var screen = await Screen.OpenAsync(chromium, options: Screen.Phone);
        List<string> small = [];
        foreach (var page in AllPages.Keys)
        {
            await screen.GoAsync(await AllPages.AddressAsync(chromium.Server, page));
            await screen.Button("More: unit, light, help").TapAsync();
            small.AddRange((await screen.Page.EvaluateAsync<string[]>(SmallTargets)).Select(each => $"{page}: {each}"));
        }

        Assert.True(small.Count == 0, string.Join('\n', small));
    }

    private static async Task<IEnumerable<string>> BrokenAsync(IPage page, ColorScheme scheme, RunOnlyOptions rules)
    {
        // Without transitions, or axe measures a colour on its way.
        await page.EmulateMediaAsync(new() { ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        var result = await page.RunAxe(new AxeRunOptions
        {
            RunOnly = rules,
            ResultTypes = [ResultType.Violations],
        });
        Assert.NotEmpty(result.Passes);
        return result.Violations.Select(broken =>
            $"{scheme}, {broken.Id}: {broken.Help}\n  {string.Join("\n  ", broken.Nodes.Take(5).Select(node => $"{node.Html} {string.Join(' ', node.Any.Select(check => check.Message))}"))}");
    }
}
