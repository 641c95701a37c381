using Microsoft.Playwright;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>Two makers at one project.</summary>
[Collection(InBrowser.Name)]
public sealed class TwoScreensTests(Chromium chromium)
{
    [Fact]
    public async Task Different_fields_are_both_saved_and_seen_at_once_by_the_other()
    {
        var (course, mine, theirs) = await BothAsync();
        await using var first = mine;
        await using var second = theirs;
        await EnterAsync(mine.Width("at the top"), "24");
        await Expect(theirs.Width("at the top")).ToHaveValueAsync("24");
        await EnterAsync(theirs.Height("at the left"), "30");
        await Expect(mine.Height("at the left")).ToHaveValueAsync("30");
        await Expect(mine.Page.Locator(".remark").First).ToContainTextAsync("Used: 24 × 30");
        await Expect(theirs.Page.Locator(".remark").First).ToContainTextAsync("Used: 24 × 30");
        Assert.Equal(3, (await chromium.Server.ProjectAsync(course.Id)).Head);
    }

    [Fact]
    public async Task The_server_never_writes_into_the_field_that_is_typed_in()
    {
        var (_, mine, theirs) = await BothAsync();
        await using var first = mine;
        await using var second = theirs;
        var field = mine.Width("at the top");
        await field.SelectTextAsync();
        await Screen.TypeAsync(field, "24 1/2");
        await field.PressAsync("ArrowLeft");
        await field.PressAsync("ArrowLeft");
        await EnterAsync(theirs.Width("at the top"), "25");
        await Expect(field).ToHaveAttributeAsync("data-saved", "25");
        await Expect(field).ToHaveValueAsync("24 1/2");
        await Expect(field).ToBeFocusedAsync();
        Assert.Equal(4, await field.EvaluateAsync<int>("field => field.selectionStart"));

        // Typing goes on where it was.
        await Screen.TypeAsync(field, "9");
        await Expect(field).ToHaveValueAsync("24 19/2");
    }

    [Fact]
    public async Task A_field_that_only_has_the_focus_keeps_its_text_until_it_is_left()
    {
        var (course, mine, theirs) = await BothAsync();
        await using var first = mine;
        await using var second = theirs;
        var field = mine.Width("at the top");
        await field.FocusAsync();
        await EnterAsync(theirs.Width("at the top"), "25");
        await Expect(field).ToHaveAttributeAsync("data-saved", "25");
        await Expect(field).ToHaveValueAsync("23 1/2");

        // Enter on a text that nobody typed saves nothing: it shows what is saved.
        await field.PressAsync("Enter");
        await Expect(field).ToHaveValueAsync("25");
        await Expect(mine.Page.Locator(".remark").First).ToContainTextAsync("Used: 25 ×");
        Assert.Equal(2, (await chromium.Server.ProjectAsync(course.Id)).Head);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task The_same_field_shows_both_values_to_the_later_one_who_chooses(bool isMine)
    {
        var (course, mine, theirs) = await BothAsync();
        await using var first = mine;
        await using var second = theirs;
        var field = mine.Width("at the top");
        await field.SelectTextAsync();
        await Screen.TypeAsync(field, "24");
        await EnterAsync(theirs.Width("at the top"), "25");
        await Expect(field).ToHaveAttributeAsync("data-saved", "25");
        await field.PressAsync("Enter");
        await Expect(Screen.WordsOf(field)).ToContainTextAsync("While you typed 24, someone saved 25.");
        await Expect(field).ToHaveValueAsync("24");
        Assert.Equal(2, (await chromium.Server.ProjectAsync(course.Id)).Head);

        await Screen.WordsOf(field).GetByRole(AriaRole.Button, new() { Name = isMine ? "Mine" : "Theirs" }).ClickAsync();
        await Expect(Screen.WordsOf(field)).ToHaveCountAsync(0);
        await Expect(field).ToHaveValueAsync(isMine ? "24" : "25");
        await Expect(field).Not.ToHaveAttributeAsync("data-draft", "");
        await Expect(theirs.Width("at the top")).ToHaveValueAsync(isMine ? "24" : "25");
        await Expect(mine.Page.Locator(".remark").First).ToContainTextAsync($"Used: {(isMine ? "24" : "25")} ×");
        Assert.Equal(isMine ? 3 : 2, (await chromium.Server.ProjectAsync(course.Id)).Head);

        // What was given up does not come back, and may be typed again.
        await mine.ReloadAsync();
        await Expect(field).ToHaveValueAsync(isMine ? "24" : "25");
        await EnterAsync(field, isMine ? "25" : "24");
        await Expect(theirs.Width("at the top")).ToHaveValueAsync(isMine ? "25" : "24");
    }

    [Fact]
    public async Task An_opening_that_was_taken_out_meanwhile_is_told_and_the_typed_text_comes_back_with_it()
    {
        var course = InFrame();
        await chromium.Server.AddAsync(course);
        var address = $"/courses/{course.Id}/bench/1/measure?opening={Courses.OpeningId(course)}";
        await using var mine = await Screen.OpenAsync(chromium);
        await using var theirs = await Screen.OpenAsync(chromium);
        await mine.GoAsync(address);
        await theirs.GoAsync(address);
        var field = mine.Width("at the top");
        await field.SelectTextAsync();
        await Screen.TypeAsync(field, "24");
        await Expect(mine.Page.Locator(".remark").First).ToContainTextAsync("Used: 24 ");

        await theirs.Page.GetByText("Face frame of the front").ClickAsync();
        await theirs.Button("Leave it open").ClickAsync();
        await Expect(mine.Page.GetByRole(AriaRole.Heading, new() { Name = "This opening was taken out" })).ToBeVisibleAsync();
        await Expect(mine.Page.GetByText("You had typed 24 at the top")).ToBeVisibleAsync();

        await theirs.Button("Undo").ClickAsync();
        await Expect(field).ToHaveValueAsync("24");
        await Expect(field).ToHaveAttributeAsync("data-draft", "");
        await field.PressAsync("Enter");
        await Expect(theirs.Width("at the top")).ToHaveValueAsync("24");
        Assert.Empty(mine.Faults);
    }

    // The project on two screens, each of a maker of its own.
    private async Task<(Course Course, Screen Mine, Screen Theirs)> BothAsync()
    {
        var course = Courses.Measured();
        await chromium.Server.AddAsync(course);
        var mine = await Screen.OpenAsync(chromium);
        var theirs = await Screen.OpenAsync(chromium);
        await mine.GoAsync($"/courses/{course.Id}/bench/1/measure");
        await theirs.GoAsync($"/courses/{course.Id}/bench/1/measure");
        return (course, mine, theirs);
    }

    private static async Task EnterAsync(ILocator field, string text)
    {
        await field.SelectTextAsync();
        await Screen.TypeAsync(field, text);
        await field.PressAsync("Enter");
    }

    // One opening within a face frame, from where it can be taken out again.
    private static Course InFrame()
    {
        var course = Courses.WithBenches(1);
        var face = course.Projects[0].Pieces[0].Faces[0].Id;
        course = LayoutEdits.WithFrame(course, face, LengthUnit.Inch);
        return LayoutEdits.Open(course, face, [], CourseIds.FreshFor(course));
    }
}
