using System.Text;
using Microsoft.Playwright;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>A maker's own list, from the first line to what the instructor sees of it.</summary>
[Collection(InBrowser.Name)]
public sealed class CheckListTests(Chromium chromium)
{
    private static readonly LengthFormat Inches = new(LengthUnit.Inch, 64);

    private sealed record Line(string Part, string Width, string Length);

    private static ILocator Field(Screen screen, int line, string label) =>
        screen.Page.GetByRole(AriaRole.Group, new() { Name = $"Line {line}", Exact = true }).GetByLabel(label, new() { Exact = true });

    private static async Task<(string Address, IReadOnlyList<Line> Right, string Shoulder)> CourseAsync(TestServer server)
    {
        var course = Courses.Measured("23 5/16", "29 1/4");
        await server.AddAsync(course);
        var leaf = (await server.ProjectAsync(course.Id)).Worked.Fronts.First().Leaves[0];
        var rail = leaf.Parts.First(part => part.Kind == PartKind.Rail);
        return ($"/courses/{course.Id}", [.. leaf.Parts.Select(part => new Line(part.Name, Inches.Print(part.Finished.Width.Length), Inches.Print(part.Finished.Length.Length)))],
            Inches.Print(rail.Shoulder!.Length));
    }

    private static async Task WriteAsync(Screen screen, IReadOnlyList<Line> lines)
    {
        await Field(screen, 1, "Part").ClickAsync();
        foreach (var (i, line) in lines.Index())
        {
            await Expect(Field(screen, i + 1, "Part")).ToBeFocusedAsync();
            foreach (var text in new[] { line.Part, "1", line.Width, line.Length })
            {
                await screen.Page.Keyboard.TypeAsync(text);
                if (text == line.Part)
                    await Expect(Field(screen, i + 2, "Part")).ToBeVisibleAsync();
                await screen.Page.Keyboard.PressAsync("Enter");
            }
        }
    }

    [Fact]
    public async Task A_maker_finds_the_rule_and_the_instructor_sees_what_was_missed()
    {
        await using var server = await TestServer.OpenAsync();
        var (course, right, shoulder) = await CourseAsync(server);
        var heard = new StringBuilder();
        await using var screen = await Screen.OpenAsync(chromium, server);
        screen.Page.WebSocket += (_, socket) => socket.FrameReceived += (_, frame) => heard.Append(frame.Text ?? Encoding.UTF8.GetString(frame.Binary ?? []));
        await screen.GoAsync($"{course}/bench/1/break-down");
        var leafAddress = await screen.Page.GetByRole(AriaRole.Link, new() { Name = "Check my list" }).GetAttributeAsync("href");
        heard.Clear();
        await screen.GoAsync(leafAddress!);

        // Every part right, but for the rails: from shoulder to shoulder, without what goes into the grooves.
        var railLength = right.First(line => line.Part.Contains("rail", StringComparison.Ordinal)).Length;
        await WriteAsync(screen, [.. right.Select(line => line.Part.Contains("rail", StringComparison.Ordinal) ? line with { Length = shoulder } : line)]);

        // What is typed outlives a reload, with all its lines.
        await screen.ReloadAsync();
        for (var i = 0; i < right.Count; i++)
            await Expect(Field(screen, i + 1, "Part")).ToHaveValueAsync(right[i].Part);
        await Expect(Field(screen, right.Count + 1, "Part")).ToHaveValueAsync("");
        await Expect(screen.Page.Locator("[data-line]")).ToHaveCountAsync(right.Count + 1);

        await screen.Button("Check my list").ClickAsync();
        var summary = screen.Page.Locator("#answer-title");
        await Expect(summary).ToContainTextAsync($"{2 * right.Count - 2} of {2 * right.Count} figures are right.");
        await Expect(screen.Page.Locator(".answer .answer-mark.wrong", new() { HasText = "not right" })).ToHaveCountAsync(4);
        await Expect(screen.Page.Locator(".scene .not-right")).ToHaveCountAsync(2);
        await Expect(screen.Page.Locator(".mistake")).ToHaveCountAsync(0);

        // Nothing on the page or its line gives the right size away.
        var plain = (await screen.Page.ContentAsync() + heard).Replace('\u00a0', ' ').Replace("<span class=\"frac\">", "", StringComparison.Ordinal);
        Assert.Contains(shoulder, plain, StringComparison.Ordinal);
        Assert.DoesNotContain(railLength, plain, StringComparison.Ordinal);
        await PictureAsync(screen, "check-right-or-wrong");

        await screen.Button("Tell me more: a hint").ClickAsync();
        await Expect(screen.Page.Locator(".mistake")).ToContainTextAsync("what part of this piece can no longer be seen");
        await Expect(screen.Page.Locator(".mistake")).Not.ToContainTextAsync("left out");
        await screen.Button("Tell me more: the rule").ClickAsync();
        await Expect(screen.Page.Locator(".mistake")).ToContainTextAsync("The grooves were left out.");
        await Expect(screen.Page.Locator(".tell-more")).ToContainTextAsync("More than this your instructor tells you.");
        Assert.DoesNotContain(railLength, (await screen.Page.ContentAsync() + heard).Replace('\u00a0', ' '), StringComparison.Ordinal);

        // The instructor lets everything be told, on another screen.
        await using var instructor = await Screen.OpenAsync(chromium, server);
        await instructor.GoAsync($"{course}/class");
        await Expect(instructor.Page.Locator(".rules")).ToContainTextAsync("The grooves were left out.");
        await Expect(instructor.Page.Locator(".next")).ToContainTextAsync("worksheet level 1");
        await PictureAsync(instructor, "class-with-lists");
        await instructor.Button("everything").ClickAsync();
        await Expect(instructor.Button("everything")).ToHaveAttributeAsync("aria-pressed", "true");
        await screen.Button("Tell me more: everything").ClickAsync();
        await Expect(screen.Page.Locator(".work").First).ToContainTextAsync("as you probably worked");
        await Expect(screen.Page.Locator(".answer")).ToContainTextAsync(railLength);
        await Expect(screen.Page.Locator(".wood")).ToContainTextAsync("Make it again");
        await Expect(screen.Page.Locator(".if-cut svg").First).ToBeVisibleAsync();
        await PictureAsync(screen, "check-all");

        // Corrected, everything is right.
        foreach (var (i, line) in right.Index().Where(each => each.Item.Length == railLength))
        {
            await Field(screen, i + 1, "Length").FillAsync(railLength);
            await Field(screen, i + 1, "Length").PressAsync("Enter");
        }

        await Expect(screen.Page.GetByText("You changed the list since.")).ToBeVisibleAsync();
        await screen.Button("Check my list").ClickAsync();
        await Expect(summary).ToHaveTextAsync($"All {2 * right.Count} figures are right.");
        await Expect(instructor.Page.Locator("tbody tr").First).ToContainTextAsync("2");

        // Each sees own results on the page of one's own.
        await screen.GoAsync($"{course}/my-lists");
        await Expect(screen.Page.Locator("tbody tr")).ToHaveCountAsync(2);
        await Expect(screen.Page.Locator("tbody tr").First).ToContainTextAsync("all right");
        await PictureAsync(screen, "my-lists-filled");
        await instructor.GoAsync($"{course}/my-lists");
        await Expect(instructor.Page.GetByText("You have not checked a list yet.")).ToBeVisibleAsync();
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_line_that_is_taken_out_stays_out_and_pasted_lines_stand_in_the_fields()
    {
        await using var server = await TestServer.OpenAsync();
        var (course, _, _) = await CourseAsync(server);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"{course}/bench/1/check");
        await screen.Button("Paste or open a file").ClickAsync();
        await screen.Page.GetByLabel("Lines with part, count, width, length", new() { Exact = false }).FillAsync("part,count,width,length\nstile,2,2 1/4,30\nrail,two,2 1/4,8\npanel,1,57 mm,22\n");
        await screen.Button("Take the lines over").ClickAsync();
        await Expect(screen.Page.GetByText("\"two\" is no count of pieces")).ToBeVisibleAsync();
        await Expect(screen.Page.Locator("[data-line]")).ToHaveCountAsync(3);
        await Expect(Field(screen, 2, "Width")).ToHaveValueAsync("57 mm");

        await screen.Button("Take out line 1").ClickAsync();
        await Expect(Field(screen, 1, "Part")).ToHaveValueAsync("panel");
        await screen.ReloadAsync();
        await Expect(Field(screen, 1, "Part")).ToHaveValueAsync("panel");
        await Expect(screen.Page.Locator("[data-line]")).ToHaveCountAsync(2);

        await Field(screen, 1, "Leaf").FillAsync("9.9");
        await Field(screen, 1, "Leaf").PressAsync("Enter");
        await screen.Button("Check my list").ClickAsync();
        await Expect(screen.Page.GetByText("There is no leaf 9.9")).ToBeVisibleAsync();

        await screen.Button("Clear the list").ClickAsync();
        await screen.ReloadAsync();
        await Expect(Field(screen, 1, "Part")).ToHaveValueAsync("");
        Assert.Equal(0, await screen.Page.EvaluateAsync<int>("() => Object.keys(localStorage).filter(key => key.startsWith('stilewright.draft.')).length"));
    }

    [Fact]
    public async Task On_a_phone_a_figure_is_written_with_the_pad()
    {
        await using var server = await TestServer.OpenAsync();
        var (course, _, _) = await CourseAsync(server);
        await using var screen = await Screen.OpenAsync(chromium, server, Screen.Phone);
        await screen.GoAsync($"{course}/bench/1/check?leaf=first");
        await Field(screen, 1, "Part").FillAsync("rail");
        await Expect(screen.Button("1/4")).ToBeHiddenAsync();
        await Field(screen, 1, "Width").TapAsync();
        await screen.Button("2").TapAsync();
        await screen.Button("1/4").TapAsync();
        await Expect(Field(screen, 1, "Width")).ToHaveValueAsync("2 1/4");
        await screen.Button("Next field").TapAsync();
        await Expect(Field(screen, 1, "Length")).ToBeFocusedAsync();
        var pad = (await screen.Button("Next field").BoundingBoxAsync())!;
        Assert.InRange(pad.Y + pad.Height, 0, 844);
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "check-phone-typing.png") });
        await screen.Button("8").TapAsync();
        await screen.Button("Next field").TapAsync();
        await screen.Button("Check my list").TapAsync();
        await Expect(screen.Page.Locator("#answer-title")).ToBeVisibleAsync();
        await Expect(screen.Page.GetByText("Missing from your list:")).ToBeVisibleAsync();
        Assert.True(await screen.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
        await PictureAsync(screen, "check-phone-answer");
    }

    private static Task PictureAsync(Screen screen, string name) =>
        screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), $"{name}.png"), FullPage = true });
}
