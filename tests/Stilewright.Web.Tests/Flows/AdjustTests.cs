using Microsoft.Playwright;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>From readings at the cabinet to the screws that are turned.</summary>
[Collection(InBrowser.Name)]
public sealed class AdjustTests(Chromium chromium)
{
    [Theory]
    [InlineData(1440, 1000)]
    [InlineData(390, 844)]
    public async Task Readings_lead_to_moves_as_they_are_written_and_outlive_a_reload(int width, int height)
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        LeafEntry Hung(HingeSide hinge) => new(hinge, null, null, null, SettingValues.None);
        course = ProjectEdits.WithOpening(course, Courses.OpeningId(course), opening => opening with { Filling = new DoorFilling(Mount.Overlay, [Hung(HingeSide.Left), Hung(HingeSide.Right)], course.Designs[0].Id) });
        course = course with { Overrides = new(new Dictionary<Setting, SettingValue> { [Settings.UsualHinge] = new("example-cup-plate", Length.Zero) }) };
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server, new() { ViewportSize = new() { Width = width, Height = height } });
        await screen.GoAsync($"/courses/{course.Id}/bench/1/adjust");

        ILocator Field(string label) => screen.Page.GetByLabel(label, new() { Exact = true });
        await Screen.TypeAsync(Field("Between 1·1L and 1·1R, at the top"), "1/16");
        await Screen.TypeAsync(Field("Between 1·1L and 1·1R, at the bottom"), "3/16");
        await Expect(screen.Page.GetByText("The screws do it", new() { Exact = false })).ToBeVisibleAsync();
        await Expect(screen.Page.GetByText("Sideways, top hinge: carry the leaf", new() { Exact = false }).First).ToBeVisibleAsync();
        await screen.Button("After turning").ClickAsync();
        await Expect(screen.Drawing).ToContainTextAsync("1⁄8");

        await screen.ReloadAsync();
        await Expect(Field("Between 1·1L and 1·1R, at the bottom")).ToHaveValueAsync("3/16");
        await Expect(screen.Page.GetByText("The screws do it", new() { Exact = false })).ToBeVisibleAsync();
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), FormattableString.Invariant($"adjust-{width}-filled.png")), FullPage = true });

        await Screen.TypeAsync(Field("Above 1·1L, at its left end"), "wide");
        await Expect(Field("Above 1·1L, at its left end")).ToHaveAttributeAsync("aria-invalid", "true");
        await screen.Button("Clear the readings").ClickAsync();
        await Expect(Field("Between 1·1L and 1·1R, at the top")).ToHaveValueAsync("");
        await Expect(screen.Page.GetByText("What the gaps should be.", new() { Exact = false })).ToBeVisibleAsync();
        Assert.Empty(screen.Faults);
    }
}
