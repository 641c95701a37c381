using Microsoft.Playwright;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>The page of wood that moves.</summary>
[Collection(InBrowser.Name)]
public sealed class WoodTests(Chromium chromium)
{
    [Fact]
    public async Task Panels_follow_the_season_and_glue_ups_the_boards()
    {
        await using var server = await TestServer.OpenAsync();
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{TestServer.SampleId}/bench/1/wood");
        var page = screen.Page;
        var raised = page.Locator("section.panel").Filter(new() { HasText = "1·2L·P, 1·2R·P" });

        // The working of a figure is shown when it is asked for.
        await Expect(page.Locator("section.told")).ToHaveCountAsync(0);
        await raised.GetByRole(AriaRole.Button, new() { Name = "Play in each groove at the wettest" }).ClickAsync();
        await Expect(raised.Locator("section.told")).ToContainTextAsync("(clear width + 2 × groove depth − width at the wettest) ÷ 2");
        await Expect(raised.Locator(".scene")).ToHaveCountAsync(2);

        // Widest that keeps its air: (10 13/16 + 7/8 − 1/16) ÷ 1.00738 is 11.540, down to the step of 1/32 in: geometry.
        await Expect(raised.Locator("button").First).ToContainTextAsync("11 7/16");
        await page.GetByLabel("Size solid panels by the season").CheckAsync();
        await Expect(raised.Locator("button").First).ToContainTextAsync("11 17/32");
        await Expect(page.GetByText("By the standard's clearance these would differ")).ToBeVisibleAsync();

        // A drier place: the usual region is 6 to 10 %, the dry south-west 4 to 9 %, as interior-moisture.csv has them.
        await page.GetByText("Nothing differs from the standard at this bench").ClickAsync();
        await page.GetByLabel("Let one more setting differ at this bench").SelectOptionAsync("wood.climate");
        await page.GetByLabel("climate in service").SelectOptionAsync("dry-southwest");
        await Expect(page.GetByText("in service 4 % to 9 %").First).ToBeVisibleAsync();
        await screen.Button("Undo").ClickAsync();
        await Expect(page.Locator("p.lead")).ToContainTextAsync("6 % to 10 %");

        // 4 1/2 and 4 1/4 and 3 1/2 less 1/8 each: 11 7/8 is enough, and 5 stays on the rack.
        var glueUp = page.Locator("section.glue-up").Filter(new() { HasText = "1·2L·P, 1·2R·P" });
        await Type("Or the boards there are", "4 1/2; 5; 4 1/4; 3 1/2");
        await Expect(glueUp.Locator("tbody")).ToContainTextAsync("3 1/2");
        await Expect(glueUp.Locator("tbody tr")).ToHaveCountAsync(3);
        await Type("Or the boards there are", "4; wide");
        await Expect(Alert("Boards:")).ToBeVisibleAsync();
        await Type("Or the boards there are", "4; 5");
        await Expect(glueUp).ToContainTextAsync("too narrow together");
        await Type("Or the boards there are", "");
        await Type("Staves from", "2");
        await Type("to", "3");
        await Expect(glueUp).ToContainTextAsync("push blocks");
        await Expect(glueUp).ToContainTextAsync("29 CFR 1910.213");

        // FPL-GTR-190 (2010), Table 4-2: 70 °F and 65 % is 12.0 %.
        await Type("Humidity, %", "65");
        await Expect(page.Locator(".answer.air")).ToContainTextAsync("12.0 % moisture");
        await Type("or moisture to hold, %", "60");
        await Expect(Alert("No air of that temperature")).ToBeVisibleAsync();
        await Type("Wood", "ironwod");
        await Expect(Alert("is not known")).ToBeVisibleAsync();
        Assert.Empty(screen.Faults);

        ILocator Alert(string text) => page.Locator("[role=alert]").Filter(new() { HasText = text });

        async Task Type(string label, string text)
        {
            var field = page.GetByLabel(label, new() { Exact = label.Length < 6 || label.EndsWith('%') }).First;
            await field.FillAsync(text);
            await field.PressAsync("Tab");
        }
    }
}
