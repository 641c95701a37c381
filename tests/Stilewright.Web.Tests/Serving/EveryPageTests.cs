using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Components;
using Stilewright.Web.Serving;
using Stilewright.Web.Tests.Pages;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Serving;

/// <summary>Loads every page that has an address in a browser, and listens for complaints.</summary>
[Collection(InBrowser.Name)]
public sealed partial class EveryPageTests(Chromium chromium)
{
    private static IEnumerable<string> Addresses() => typeof(WebServer).Assembly.GetTypes()
        .SelectMany(type => type.GetCustomAttributes<RouteAttribute>()).Select(route => Varying().Replace(route.Template, part => AllPages.RouteValues[part.Groups[1].Value]))
        .Order(StringComparer.Ordinal);

    [Fact]
    public async Task No_page_breaks_its_policy_or_writes_an_error()
    {
        await using var served = await Served.StartAsync(share: true);
        await using var context = await chromium.Browser.NewContextAsync();
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
            await Screen.LiveAsync(page);
            complaints.AddRange((await page.EvaluateAsync<string[]>("() => window.broken")).Select(broken => $"{address}: {broken}"));
            Assert.True(await page.EvaluateAsync<bool>("async () => { await document.fonts.ready; return [...document.fonts].some(font => font.family.includes('Source Sans 3') && font.status === 'loaded'); }"), $"{address} is not set in its own letters.");
            await page.CloseAsync();
        }

        Assert.Empty(complaints);
    }

    [GeneratedRegex(@"\{\*?([A-Za-z]+)[^}]*\}")]
    private static partial Regex Varying();
}
