using System.Globalization;
using System.Net;
using System.Security.Claims;
using System.Text.RegularExpressions;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Measure;
using Stilewright.Teaching.Telling;
using Stilewright.Teaching.Worksheets;
using Stilewright.Web.Features.Worksheets;
using Stilewright.Web.Fields;
using Stilewright.Web.Makers;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Exercises;

public sealed partial class AnswerSheetTests
{
    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public async Task No_answer_is_on_the_page_before_the_steps_are_asked_for(LengthUnit unit)
    {
        await using var store = await OpenStore.MakeAsync();
        var course = await store.AddAsync(Courses.Measured());
        await store.Attempts.SetMostToldAsync(AttemptAccess.Of(Here("instructor")), course, Telling.All);
        var seen = 0;
        foreach (var (level, seed) in Enumerable.Range(1, 6).SelectMany(level => new ulong?[] { 3, null }, (level, seed) => (level, seed)))
        {
            await using var page = PageOf(store);
            var order = new WorksheetOrder(unit, level, seed);
            var sheet = Assert.IsType<Wording.Found<Worksheet>.There>(order.Sheet(course, 1)).Thing;
            string[] told = [.. sheet.Givens.Select(given => WorkedText.Figure(given.Quantity, sheet.Format))];
            // A figure that is given besides, and a small whole number, may stand there for another reason.
            string[] hidden = [.. sheet.Blanks.Select(blank => WorkedText.Figure(blank.Quantity, sheet.Format)).Distinct().Where(figure => figure.Length > 2 && !told.Contains(figure))];
            var shown = page.Render<AnswerSheet>(set => set.Add(it => it.Course, course).Add(it => it.Bench, 1).Add(it => it.Order, order));
            Hides();
            await shown.Find("button.main:not(.key)").ClickAsync(new());
            Assert.Contains("0 of", shown.Find(".total").TextContent, StringComparison.Ordinal);
            Hides();
            await shown.FindAll("button").Single(button => button.TextContent == "Show the steps").ClickAsync(new());
            var markup = Plain(shown.Markup);
            Assert.All(hidden, figure => Assert.True(Holds(markup, figure), $"level {level}: {figure} is not among the steps"));
            seen += hidden.Length;

            void Hides()
            {
                var plain = Plain(shown.Markup);
                Assert.All(hidden, figure => Assert.False(Holds(plain, figure), $"level {level}: {figure} is on the page"));
                foreach (var blank in sheet.Blanks.Where(blank => hidden.Contains(WorkedText.Figure(blank.Quantity, sheet.Format))))
                {
                    foreach (var number in new[] { blank.Quantity.Length.Inches.ToDecimal(), blank.Quantity.Length.Millimetres.ToDecimal() })
                    {
                        var text = number.ToString("0.######", CultureInfo.InvariantCulture);
                        Assert.True(text.Length < 6 || !plain.Contains(text, StringComparison.Ordinal), $"level {level}: {text} is in the markup");
                    }
                }
            }
        }

        Assert.True(seen > 60, $"only {seen} figures were looked for");
    }

    [Theory]
    [InlineData(Telling.RightOrWrong)]
    [InlineData(Telling.Rule)]
    [InlineData(Telling.All)]
    public async Task The_steps_are_told_where_the_course_tells_all_or_the_sheet_is_right(Telling most)
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = PageOf(store);
        var course = await store.AddAsync(Courses.Measured());
        await store.Attempts.SetMostToldAsync(AttemptAccess.Of(Here("instructor")), course, most);
        var order = new WorksheetOrder(LengthUnit.Inch, 1, 7);
        var sheet = Assert.IsType<Wording.Found<Worksheet>.There>(order.Sheet(course, 2)).Thing;
        var shown = page.Render<AnswerSheet>(set => set.Add(it => it.Course, course).Add(it => it.Bench, 2).Add(it => it.Order, order));
        bool CanAsk() => shown.FindAll("button").Any(button => button.TextContent == "Show the steps");
        await Field(shown, sheet.Blanks.First().Id).TriggerEventAsync("ontyped", new FieldEventArgs { Text = "1", BasedOn = "" });
        await shown.Find("button.main:not(.key)").ClickAsync(new());
        Assert.Equal(most == Telling.All, CanAsk());
        foreach (var blank in sheet.Blanks)
            await Field(shown, blank.Id).TriggerEventAsync("ontyped", new FieldEventArgs { Text = sheet.Format.Print(blank.Quantity.Length), BasedOn = "" });
        await shown.Find("button.main:not(.key)").ClickAsync(new());
        Assert.True(CanAsk());
    }

    [Fact]
    public async Task One_slip_costs_one_mark_and_what_follows_earns_its_own()
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = PageOf(store);
        var course = await store.AddAsync(Courses.Measured());
        var order = new WorksheetOrder(LengthUnit.Inch, 1, 7);
        var sheet = Assert.IsType<Wording.Found<Worksheet>.There>(order.Sheet(course, 2)).Thing;
        var shown = page.Render<AnswerSheet>(set => set.Add(it => it.Course, course).Add(it => it.Bench, 2).Add(it => it.Order, order));
        // An inch too wide, carried on.
        foreach (var blank in sheet.Blanks)
        {
            var isAcross = blank.Label is "front width" or "rail length" or "clear width" or "leaf width";
            var figure = blank.Quantity.Length + (isAcross ? 1.Inches : default);
            await Field(shown, blank.Id).TriggerEventAsync("ontyped", new FieldEventArgs { Text = sheet.Format.Print(figure), BasedOn = "" });
        }

        await shown.Find("button.main:not(.key)").ClickAsync(new());
        Assert.Equal(string.Create(CultureInfo.InvariantCulture, $"{sheet.Marks - 1} of {sheet.Marks} marks"), shown.Find(".total").TextContent);
        Assert.Contains("wrong", Outcome(shown, "a"), StringComparison.Ordinal);
        Assert.Contains(shown.FindAll(".outcome"), each => each.TextContent == "follows");
        Assert.Contains("front width", shown.Find(".result li").TextContent, StringComparison.Ordinal);
        // What is written anew is not marked yet.
        await Field(shown, "a").TriggerEventAsync("ontyped", new FieldEventArgs { Text = "1 1/", BasedOn = "" });
        Assert.Null(shown.FindAll(".blank")[0].QuerySelector(".outcome"));
        await shown.Find("button.main:not(.key)").ClickAsync(new());
        Assert.StartsWith("cannot be read", Outcome(shown, "a"), StringComparison.Ordinal);
        Assert.Contains("1 figure cannot be read", shown.Find(".result").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bench_that_is_not_there_is_told_with_a_way_on()
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = PageOf(store);
        var course = await store.AddAsync(Courses.Measured(null, null));
        foreach (var bench in new[] { 1, 7 })
        {
            var shown = page.Render<AnswerSheet>(set => set.Add(it => it.Course, course).Add(it => it.Bench, bench).Add(it => it.Order, new(LengthUnit.Inch, 1, null)));
            Assert.Equal("No worksheet", shown.Find("h1").TextContent);
            Assert.Contains("/worksheets?", shown.Find("a").GetAttribute("href"), StringComparison.Ordinal);
        }

        Assert.Contains("from 1 to 999", page.Render<AnswerSheet>(set => set.Add(it => it.Course, course).Add(it => it.Bench, 5000).Add(it => it.Order, new(LengthUnit.Inch, 1, 3))).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_behind_a_wrong_figure_is_told_as_far_as_the_course_tells_and_the_first_marking_is_kept()
    {
        await using var store = await OpenStore.MakeAsync();
        var course = await store.AddAsync(Courses.Measured());
        var order = new WorksheetOrder(LengthUnit.Inch, 1, 7);
        var sheet = Assert.IsType<Wording.Found<Worksheet>.There>(order.Sheet(course, 2)).Thing;
        var rail = sheet.Blanks.Single(blank => blank.Label == "rail length");
        var groove = sheet.Givens.Single(given => given.Quantity is Given { Key: var key } && key.Contains("cope.length", StringComparison.Ordinal)).Quantity.Length;
        var instructor = AttemptAccess.Of(Here("instructor"));
        foreach (var (most, says, hides) in new (Telling, string?, string)[]
        {
            (Telling.RightOrWrong, null, "groove"), (Telling.Hint, "can no longer be seen", "were left out"), (Telling.Rule, "The grooves were left out.", "as you probably worked"), (Telling.All, "as you probably worked", "no slip"),
        })
        {
            await store.Attempts.SetMostToldAsync(instructor, course, most);
            await using var page = PageOf(store);
            var shown = page.Render<AnswerSheet>(set => set.Add(it => it.Course, course).Add(it => it.Bench, 2).Add(it => it.Order, order));
            // A touch of the button before anything is written is no marking.
            await shown.Find("button.main:not(.key)").ClickAsync(new());
            foreach (var blank in sheet.Blanks)
                await Field(shown, blank.Id).TriggerEventAsync("ontyped", new FieldEventArgs { Text = sheet.Format.Print(blank == rail ? rail.Quantity.Length - groove * 2 : blank.Quantity.Length), BasedOn = "" });
            await shown.Find("button.main:not(.key)").ClickAsync(new());
            var told = shown.Find(".result").TextContent;
            if (says is null)
                Assert.Empty(shown.FindAll(".mistake"));
            else
                Assert.Contains(says, told, StringComparison.Ordinal);
            Assert.DoesNotContain(hides, told, StringComparison.Ordinal);
            await Field(shown, rail.Id).TriggerEventAsync("ontyped", new FieldEventArgs { Text = sheet.Format.Print(rail.Quantity.Length), BasedOn = "" });
            await shown.Find("button.main:not(.key)").ClickAsync(new());
            Assert.Empty(shown.FindAll(".mistake"));
            var kept = Assert.Single(await store.Attempts.OwnExercisesAsync(AttemptAccess.Of(Here(OpenStore.Mine)), course));
            Assert.Equal((2, 1, sheet.Marks - 1, sheet.Marks), (kept.Bench, kept.LevelNumber, kept.Earned, kept.Marks));
            Assert.Equal("groove", Assert.Single(kept.Causes).Subject);
        }
    }

    private static ClaimsPrincipal Here(string maker)
    {
        var user = new ClaimsPrincipal(new ClaimsIdentity([new(ClaimTypes.NameIdentifier, maker)], "test"));
        Asker.MarkAtThisComputer(user);
        return user;
    }

    internal static BunitContext PageOf(OpenStore store)
    {
        var page = new BunitContext();
        page.Services.AddSingleton(store.Attempts);
        page.Services.AddScoped<Asker>();
        page.AddAuthorization().SetAuthorized("A").SetClaims(new Claim(ClaimTypes.NameIdentifier, OpenStore.Mine));
        return page;
    }

    private static AngleSharp.Dom.IElement Field(IRenderedComponent<AnswerSheet> shown, string id) =>
        shown.FindAll("input").First(input => input.GetAttribute("data-field")!.EndsWith($"/{id}", StringComparison.Ordinal));

    private static string Outcome(IRenderedComponent<AnswerSheet> shown, string id) => Field(shown, id).ParentElement!.QuerySelector(".outcome")!.TextContent;

    // Fractions are set by elements of their own. Where things lie on the drawing's paper is no figure.
    private static string Plain(string markup) =>
        WebUtility.HtmlDecode(Inner().Replace(OnPaper().Replace(markup, ""), "")).Replace('\u00a0', ' ');

    private static bool Holds(string markup, string figure) => Regex.IsMatch(markup, $@"(?<![\d./ ]|\d ){Regex.Escape(figure)}(?![\d./]| \d+/)") || Regex.IsMatch(markup, $@"[=>−+×÷(] ?{Regex.Escape(figure)}(?![\d./]| \d+/)");

    [GeneratedRegex(@"\b(?:d|x|y|width|height|viewBox|transform|textLength|font-size|stroke-width|stroke-dasharray|id|for|aria-describedby|blazor:\w+)=""[^""]*""")]
    private static partial Regex OnPaper();

    [GeneratedRegex("</?span[^>]*>")]
    private static partial Regex Inner();
}
