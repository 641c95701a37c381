using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Microsoft.Playwright;
using Stilewright.Web.Serving;

namespace Stilewright.Web.Tests.Serving;

/// <summary>Loads every page that has an address in a browser, and listens for complaints.</summary>
public sealed partial class EveryPageTests
{
    // What stands for the parts of an address that vary.
    private static readonly Dictionary<string, string> Values = new(StringComparer.OrdinalIgnoreCase)
    {
        ["CourseId"] = "evening",
        ["Bench"] = "1",
    };

    private static IEnumerable<string> Addresses() => typeof(WebServer).Assembly.GetTypes()
        .SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => Varying().Replace(route.Template, part => Values[part.Groups[1].Value]))
        .Order(StringComparer.Ordinal);

    [Fact]
    public async Task No_page_breaks_its_policy_or_writes_an_error()
    {
        await using var served = await Served.StartAsync(share: true);
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = "/usr/bin/chromium",
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        await using var context = await browser.NewContextAsync();
        await context.AddInitScriptAsync("window.broken = []; document.addEventListener('securitypolicyviolation', event => window.broken.push(`${event.violatedDirective} ${event.blockedURI}`));");
        List<string> complaints = [];
        var addresses = Addresses().ToList();
        Assert.True(addresses.Count > 10, "Pages are not found any more.");
        foreach (var address in addresses)
        {
            var page = await context.NewPageAsync();
            page.Console += (_, line) =>
            {
                // The page of missing pages answers with its status, which the browser remarks on.
                if (line.Type is "error" or "warning" && !(address == "/not-found" && line.Text.Contains("404", StringComparison.Ordinal)))
                    complaints.Add($"{address}: {line.Text}");
            };
            page.PageError += (_, fault) => complaints.Add($"{address}: {fault}");
            page.RequestFailed += (_, request) => complaints.Add($"{address}: {request.Url} {request.Failure}");
            await page.GotoAsync(served.Server.Addresses[0] + address);
            await page.WaitForFunctionAsync("() => { const button = document.querySelector('[data-unit]'); return button && Object.keys(button).some(key => key.startsWith('_blazorEvents')); }");
            complaints.AddRange((await page.EvaluateAsync<string[]>("() => window.broken")).Select(broken => $"{address}: {broken}"));
            Assert.True(await page.EvaluateAsync<bool>("async () => { await document.fonts.ready; return [...document.fonts].some(font => font.family.includes('Source Sans 3') && font.status === 'loaded'); }"), $"{address} is not set in its own letters.");
            await page.CloseAsync();
        }

        Assert.Empty(complaints);
    }

    [GeneratedRegex(@"\{\*?([A-Za-z]+)[^}]*\}")]
    private static partial Regex Varying();
}
