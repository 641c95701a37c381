using Microsoft.Playwright;
using Stilewright.Web.Desk;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>From nothing to the work of a figure.</summary>
[Collection(InBrowser.Name)]
public sealed class NewcomerTests(Chromium chromium)
{
    [Fact]
    public async Task A_newcomer_makes_a_course_measures_and_reads_the_work_of_a_figure()
    {
        await using var screen = await Screen.OpenAsync(chromium);
        var page = screen.Page;
        await screen.GoAsync("/");
        await screen.Button("Make a course").ClickAsync();
        await page.GetByLabel("What it is called").FillAsync("Monday class");
        await screen.Button("Make it").ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Monday class" })).ToBeVisibleAsync();
        await screen.Button("Add a bench").ClickAsync();
        await page.GetByLabel("What is built there").FillAsync("Hall cupboard");
        await screen.Button("Add it").ClickAsync();
        await screen.Button("Add an opening").ClickAsync();

        await Screen.TypeAsync(screen.Width("at the top"), "23 1/2");
        await screen.Width("at the top").PressAsync("Enter");
        await Screen.TypeAsync(screen.Height("at the left"), "29 1/4");
        await screen.Height("at the left").PressAsync("Enter");
        await screen.SaidAsync("revision 4");

        await page.GetByRole(AriaRole.Link, new() { Name = "Size" }).ClickAsync();
        await page.GetByLabel("Leaves").SelectOptionAsync(new SelectOptionValue { Label = "a pair" });
        await Expect(page.GetByRole(AriaRole.Row)).ToHaveCountAsync(3);

        await page.GetByRole(AriaRole.Link, new() { Name = "Break down" }).ClickAsync();
        var rail = page.GetByRole(AriaRole.Row).Filter(new() { HasText = "Top rail" });
        await rail.GetByRole(AriaRole.Link).Nth(1).ClickAsync();
        // Cope-and-stick: the rail reaches into both grooves.
        await Expect(page.Locator(".words")).ToContainTextAsync("stile width");
        await Expect(page.Locator(".figures")).ToContainTextAsync("=");
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task The_drawing_follows_each_keystroke_before_anything_is_saved()
    {
        var course = Courses.Measured(width: null, height: "29 1/4");
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure?opening={Courses.OpeningId(course)}");
        var field = screen.Width("at the top");
        foreach (var (keys, used) in new[] { ("2", "2"), ("3", "23"), (" 1/2", "23 1/2") })
        {
            await Screen.TypeAsync(field, keys);
            await Expect(screen.Page.Locator(".remark").First).ToContainTextAsync($"Used: {used} ");
        }

        await Expect(screen.Drawing).ToContainTextAsync("23 1⁄2");
        Assert.Equal(1, (await chromium.Server.ProjectAsync(course.Id)).Head);
        await field.PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        var opening = ProjectEdits.Opening((await chromium.Server.ProjectAsync(course.Id)).Course, Courses.OpeningId(course))!;
        Assert.Equal("23 1/2", opening.Readings!.WidthTop!.Value.Text);
    }

    [Fact]
    public async Task The_pad_and_the_rule_enter_a_reading_on_a_phone()
    {
        var course = Courses.Measured(width: null, height: null);
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, options: Screen.Phone);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure?opening={Courses.OpeningId(course)}");
        await screen.Width("at the top").TapAsync();
        // No keyboard of the phone over the pad.
        await Expect(screen.Width("at the top")).ToHaveAttributeAsync("inputmode", "none");
        foreach (var key in new[] { "2", "3", "1/2", "1/8" })
            await screen.Button(key).TapAsync();
        await Expect(screen.Width("at the top")).ToHaveValueAsync("23 5/8");
        await screen.Button("take back the last sign").TapAsync();
        await Expect(screen.Width("at the top")).ToHaveValueAsync("23 5/");
        await Expect(Screen.WordsOf(screen.Width("at the top"))).ToHaveCountAsync(1);
        await screen.Button("8").TapAsync();
        await Expect(Screen.WordsOf(screen.Width("at the top"))).ToHaveCountAsync(0);
        await screen.Button("Next reading").TapAsync();
        await Expect(screen.Width("in the middle")).ToBeFocusedAsync();
        await screen.SaidAsync("Saved, revision 2");

        // The rule stands at what was typed; its marks are sixteenths, so two marks on is an eighth more.
        await screen.Button("2").TapAsync();
        await screen.Button("3").TapAsync();
        await Expect(screen.Page.Locator(".rule text").First).ToHaveTextAsync("22");
        var rule = (await screen.Page.Locator(".rule").BoundingBoxAsync())!;
        await screen.Page.Touchscreen.TapAsync(rule.X + (rule.Width * (10 + (320 * 18 / 32f)) / 340), rule.Y + (rule.Height / 2));
        await Expect(screen.Width("in the middle")).ToHaveValueAsync("23 1/8");
        await screen.Button("Next reading").TapAsync();
        await screen.SaidAsync("Saved, revision 3");
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task What_cannot_be_read_is_marked_and_the_drawing_keeps_the_last_that_could()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        var field = screen.Width("at the top");
        await field.FillAsync("12");
        await Expect(screen.Page.Locator(".remark").First).ToContainTextAsync("Used: 12 ");
        await Screen.TypeAsync(field, " 3/");
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(Screen.WordsOf(field)).ToContainTextAsync("\"12 3/\"");
        await field.PressAsync("Enter");
        await Expect(screen.Page.Locator(".remark").First).ToContainTextAsync("Used: 12 ");
        await Expect(field).ToHaveValueAsync("12 3/");
        await Expect(screen.Drawing).ToContainTextAsync("12");
        Assert.Equal(1, (await chromium.Server.ProjectAsync(course.Id)).Head);

        // Mended, it is saved: as the second revision, so that nothing was saved before.
        await field.FillAsync("12 3/8");
        await field.PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        await Expect(Screen.WordsOf(field)).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Undo_and_redo_say_what_they_did()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync($"/courses/{course.Id}/bench/1/measure");
        await Expect(screen.Button("Undo")).ToBeDisabledAsync();
        var field = screen.Width("at the top");
        await field.FillAsync("24");
        await field.PressAsync("Enter");
        await screen.SaidAsync("Saved, revision 2");
        await screen.Button("Undo").ClickAsync();
        await screen.SaidAsync("Taken back");
        await screen.SaidAsync("width at the top: 24 → 23 1/2");
        await Expect(field).ToHaveValueAsync("23 1/2");
        await screen.Button("Redo").ClickAsync();
        await screen.SaidAsync("Made again");
        await Expect(field).ToHaveValueAsync("24");
        Assert.Equal(4, (await chromium.Server.ProjectAsync(course.Id)).Head);
    }

    [Fact]
    public async Task The_whole_way_is_walked_without_a_mouse()
    {
        await using var screen = await Screen.OpenAsync(chromium);
        var keys = screen.Page.Keyboard;
        await screen.GoAsync("/");
        await ReachAsync(screen, "Make a course");
        await keys.PressAsync("Enter");
        await Expect(screen.Page.GetByLabel("What it is called")).ToBeFocusedAsync();
        await keys.TypeAsync("By keys alone");
        await keys.PressAsync("Enter");
        await Expect(screen.Page.GetByRole(AriaRole.Heading, new() { Name = "By keys alone" })).ToBeVisibleAsync();
        await ReachAsync(screen, "Add a bench");
        await keys.PressAsync("Enter");
        await ReachAsync(screen, "What is built there");
        await keys.TypeAsync("Hall cupboard");
        await keys.PressAsync("Enter");
        await Expect(screen.Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/bench/1/measure"));
        await ReachAsync(screen, "Add an opening");
        await keys.PressAsync("Enter");
        await Expect(screen.Width("at the top")).ToBeVisibleAsync();
        await ReachAsync(screen, "at the top");
        await keys.TypeAsync("23 1/2");
        await keys.PressAsync("Enter");
        await Expect(screen.Width("in the middle")).ToBeFocusedAsync();
        await keys.PressAsync("Enter");
        await keys.PressAsync("Enter");
        await Expect(screen.Height("at the left")).ToBeFocusedAsync();
        await keys.TypeAsync("29 1/4");
        await keys.PressAsync("Enter");
        await screen.SaidAsync("revision 4");
        await ReachAsync(screen, "Size", "A", back: true);
        await keys.PressAsync("Enter");
        await Expect(screen.Page.GetByLabel("Leaves")).ToBeVisibleAsync();
        await ReachAsync(screen, "Leaves");
        await keys.TypeAsync("a pair");
        await Expect(screen.Page.GetByRole(AriaRole.Row)).ToHaveCountAsync(3);
        await ReachAsync(screen, "Break down", "A", back: true);
        await keys.PressAsync("Enter");
        await Expect(screen.Page.GetByRole(AriaRole.Row).Filter(new() { HasText = "Top rail" })).ToBeVisibleAsync();
        // A part of the drawing is picked with the space bar.
        for (var count = 0; count < 60 && !await screen.Page.EvaluateAsync<bool>("() => document.activeElement.matches('.scene [data-pick]')"); count++)
            await keys.PressAsync("Tab");
        await Expect(screen.Page.Locator(".scene [data-pick]:focus")).ToHaveCountAsync(1);
        await keys.PressAsync("Space");
        await Expect(screen.Page.Locator(".figures")).ToContainTextAsync("=");
    }

    // Goes on with the Tab key until what has the focus begins with the words, as it is read aloud.
    private static async Task ReachAsync(Screen screen, string words, string? tag = null, bool back = false)
    {
        const string Read = "() => { const on = document.activeElement; return on.tagName + '|' + (on.getAttribute('aria-label') ?? on.labels?.[0]?.innerText ?? on.innerText ?? '').trim(); }";
        var met = new List<string>();
        for (var count = 0; count < 80; count++)
        {
            var on = await screen.Page.EvaluateAsync<string>(Read);
            met.Add(on);
            if (on[(on.IndexOf('|', StringComparison.Ordinal) + 1)..].StartsWith(words, StringComparison.Ordinal) && (tag is null || on.StartsWith($"{tag}|", StringComparison.Ordinal)))
                return;
            await screen.Page.Keyboard.PressAsync(back ? "Shift+Tab" : "Tab");
        }

        Assert.Fail($"The Tab key does not reach \"{words}\", only {string.Join(", ", met)}.");
    }
}
