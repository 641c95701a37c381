using Stilewright.Measure;
using Stilewright.Web.Desk;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>Inches and millimetres are a matter of the screen; the document keeps what was typed.</summary>
[Collection(InBrowser.Name)]
public sealed class UnitTests(Chromium chromium)
{
    [Fact]
    public async Task Fields_and_drawings_change_and_what_is_typed_keeps_its_unit()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        await Expect(screen.Drawing).ToContainTextAsync("opening 23 1⁄2");
        await screen.Button("mm").ClickAsync();

        // 23 1/2 in = 596.9 mm and 29 1/4 in = 742.95 mm; the second is no tenth of a millimetre, so it is shown as it was typed.
        await Expect(screen.Width("at the top")).ToHaveValueAsync("596.9");
        await Expect(screen.Height("at the left")).ToHaveValueAsync("29 1/4 in");
        await Expect(screen.Drawing).ToContainTextAsync("opening 596.9");

        await screen.Height("at the left").FillAsync("750");
        await screen.Height("at the left").PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        await Expect(screen.Height("at the left")).ToHaveValueAsync("750");
        var readings = ProjectEdits.Opening((await chromium.Server.ProjectAsync(course.Id)).Course, Courses.OpeningId(course))!.Readings!;
        Assert.Equal("750 mm", readings.HeightLeft!.Value.Text);
        Assert.Equal(Length.FromMillimetres(750), readings.HeightLeft.Value.Value);
        Assert.Equal("23 1/2", readings.WidthTop!.Value.Text);

        // The choice is this screen's, also after a reload; back in inches the text stands as it was typed.
        await screen.ReloadAsync();
        await Expect(screen.Width("at the top")).ToHaveValueAsync("596.9");
        await screen.Button("in").ClickAsync();
        await Expect(screen.Width("at the top")).ToHaveValueAsync("23 1/2");
        await Expect(screen.Height("at the left")).ToHaveValueAsync("750 mm");
    }

    [Fact]
    public async Task A_draft_that_stands_keeps_its_meaning_in_the_other_unit()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await using var other = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        await other.GoAsync($"/courses/{course.Id}/bench/1/measure");
        var field = screen.Width("at the top");
        await field.FillAsync("24");
        await other.Width("at the top").FillAsync("25");
        await other.Width("at the top").PressAsync("Enter");
        await Expect(field).ToHaveAttributeAsync("data-saved", "25");

        // Leaving the field meets the other's value, so the draft stands while the unit is switched.
        await screen.Button("mm").ClickAsync();
        await Expect(field).ToHaveValueAsync("24 in");
        await Expect(field).ToHaveAttributeAsync("data-draft", "");
        await Expect(screen.Page.Locator(".remark").First).ToContainTextAsync("Used: 609.6 ×");
        await screen.Button("in").ClickAsync();
        await Expect(field).ToHaveValueAsync("24");
        await field.PressAsync("Enter");
        await Expect(Screen.WordsOf(field)).ToContainTextAsync("While you typed 24, someone saved 25.");
    }

    [Fact]
    public async Task What_cannot_be_read_stays_in_its_field_when_the_unit_is_switched()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        var field = screen.Width("at the top");
        await field.FillAsync("12 3/");
        await screen.Button("mm").ClickAsync();
        await Expect(field).ToHaveValueAsync("12 3/ in");
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        await screen.Button("in").ClickAsync();
        await Expect(field).ToHaveValueAsync("12 3/");
        Assert.Equal(1, (await chromium.Server.ProjectAsync(course.Id)).Head);
    }
}
