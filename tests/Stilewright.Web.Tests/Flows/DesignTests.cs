using Microsoft.Playwright;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>The pages of door designs, and fronts that are made to them.</summary>
[Collection(InBrowser.Name)]
public sealed class DesignTests(Chromium chromium)
{
    [Fact]
    public async Task A_design_is_drawn_while_it_is_typed_and_its_history_brings_it_back()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/designs?design={course.Designs[0].Id}");
        await Expect(screen.Drawing).Not.ToContainTextAsync("3 3⁄4");
        var rail = screen.Page.Locator(".measure").Filter(new() { HasText = "op rail" }).Locator("input").First;
        await rail.FillAsync("3 3/4");
        await Expect(screen.Drawing).ToContainTextAsync("3 3⁄4");
        Assert.Null((await chromium.Server.CourseAsync(course.Id)).Course.Designs[0].TopRail);
        await rail.PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        Assert.Equal("3 3/4", (await chromium.Server.CourseAsync(course.Id)).Course.Designs[0].TopRail!.Value.Text);

        await screen.GoAsync($"/courses/{course.Id}/history?revision=2");
        await Expect(screen.Page.Locator(".sides")).ToContainTextAsync("before");
        await Expect(screen.Page.Locator(".differs")).ToContainTextAsync("Bench 1: Cupboard 1");
        await screen.Link("Revision 1").ClickAsync();
        await screen.Button("Bring the course back to revision 1").ClickAsync();
        await Expect(screen.Page.Locator(".revisions li").First).ToContainTextAsync("Restored revision 1");
        Assert.Null((await chromium.Server.CourseAsync(course.Id)).Course.Designs[0].TopRail);
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_front_without_an_opening_has_settings_of_its_own()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/size");
        await screen.Page.GetByText("Fronts without an opening").ClickAsync();
        await screen.Button("Add a front of stated size").ClickAsync();
        var front = screen.Page.Locator(".loose .front");
        await front.Locator("summary").ClickAsync();
        var more = front.GetByLabel("Let one more setting differ at this front");
        // It meets no frame, so no overlay can differ.
        Assert.DoesNotContain(await more.Locator("option").AllTextContentsAsync(), words => words.StartsWith("overlay", StringComparison.Ordinal));
        await more.SelectOptionAsync(Settings.Stile.Key);
        var stile = front.GetByLabel("stile width", new() { Exact = true });
        await stile.FillAsync("3");
        await stile.PressAsync("Enter");
        await Expect(front).ToContainTextAsync("1 setting differs at this front");
        await Expect(front).ToContainTextAsync("Otherwise 2 1/4");
        await screen.SaidAsync("Saved, revision 4");

        var project = await chromium.Server.ProjectAsync(course.Id);
        var loose = Assert.Single(LooseFrontEdits.All(project.Course));
        Assert.Equal("3", loose.Overrides.Find(Settings.Stile)!.Text);
        string[] StilesOf(string id) => [.. project.Breakdown.Parts.Where(part => part.Path.StartsWith($"{id}/", StringComparison.Ordinal) && part.Name.Contains("stile", StringComparison.Ordinal))
            .Select(part => part.Finished.Width.Length.Inches.ToString()).Distinct()];
        Assert.Equal(["3"], StilesOf(loose.Id));
        Assert.Equal(["9/4"], StilesOf(Courses.OpeningId(course)));

        // Its figure leads to where it was entered.
        await front.GetByRole(AriaRole.Button, new() { Name = "Back to the standard" }).ClickAsync();
        await Expect(front).ToContainTextAsync("Nothing differs from the standard at this front");
    }
}
