using Microsoft.Playwright;
using Stilewright.Measure;
using Stilewright.Teaching.Worksheets;
using Stilewright.Web.Features.Drills;
using Stilewright.Web.Features.Worksheets;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Exercises;

/// <summary>Worksheets and drills as a class uses them, in a browser.</summary>
[Collection(InBrowser.Name)]
public sealed class ExerciseFlowTests(Chromium chromium)
{
    [Fact]
    public async Task An_instructor_chooses_sheets_and_prints_them()
    {
        await using var screen = await Screen.OpenAsync(chromium);
        await screen.GoAsync("/courses/evening/worksheets?seed=7");
        var page = screen.Page;
        await page.GetByRole(AriaRole.Radio, new() { Name = "3. A pair" }).CheckAsync();
        await Expect(page.Locator(".problem")).ToContainTextAsync("A pair of doors");
        await page.GetByLabel("Seed").FillAsync("nought");
        await page.GetByLabel("Seed").BlurAsync();
        await Expect(page.GetByText("not \"nought\"")).ToBeVisibleAsync();
        await page.GetByLabel("Seed").FillAsync("8");
        await page.GetByLabel("Seed").BlurAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("seed=8"));
        await page.GetByLabel("Benches from 1 up, whoever works there").CheckAsync();
        await page.GetByLabel("How many").FillAsync("3");
        await page.GetByLabel("How many").BlurAsync();
        await Expect(screen.Link("Bench 3")).ToBeVisibleAsync();
        await Expect(screen.Link("Bench 4")).ToHaveCountAsync(0);
        await page.GetByLabel("Key only").CheckAsync();
        await page.GetByLabel("A4").CheckAsync();
        await screen.Button("Make the PDF").ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => screen.Link("Download the PDF").ClickAsync());
        Assert.Equal("evening-worksheets.pdf", download.SuggestedFilename);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await File.ReadAllBytesAsync(await download.PathAsync()));
        Assert.All(pdf.GetPages(), sheet => Assert.Equal(595, Math.Round(sheet.Width)));
        var text = string.Join(' ', pdf.GetPages().Select(sheet => sheet.Text));
        Assert.Contains("Bench 3: 16 marks", text, StringComparison.Ordinal);
        // An exercise hands no sizes out.
        await screen.GoAsync("/courses/evening/print");
        await Expect(page.GetByText("Nothing yet. What a packet")).ToBeVisibleAsync();
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_maker_slips_once_and_loses_one_mark()
    {
        await using var screen = await Screen.OpenAsync(chromium);
        var order = new WorksheetOrder(LengthUnit.Inch, 1, 7);
        var sheet = RandomWorksheets.Of(order.Level, 7, 2);
        // Steps tell every size, so they take a course that tells everything.
        await screen.GoAsync("/courses/evening/class");
        await screen.Button("everything").ClickAsync();
        await Expect(screen.Button("everything")).ToHaveAttributeAsync("aria-pressed", "true");
        await screen.GoAsync(order.AddressFor("evening", 2));
        var page = screen.Page;
        var fields = page.Locator(".blank input");
        var blanks = sheet.Blanks.ToList();
        await fields.First.FocusAsync();
        for (var i = 0; i < blanks.Count; i++)
        {
            await Expect(fields.Nth(i)).ToBeFocusedAsync();
            var isAcross = blanks[i].Label is "front width" or "rail length" or "clear width";
            await page.Keyboard.TypeAsync(sheet.Format.Print(blanks[i].Quantity.Length + (isAcross ? 1.Inches : default)));
            if (i + 1 < blanks.Count)
                await page.Keyboard.PressAsync("Enter");
        }

        // Drafts outlive the page.
        await screen.ReloadAsync();
        await Expect(fields.First).ToHaveValueAsync(sheet.Format.Print(blanks[0].Quantity.Length + 1.Inches));
        await Expect(page.Locator(".carried .fig").First).ToHaveTextAsync(sheet.Format.Print(blanks[0].Quantity.Length + 1.Inches));
        await screen.Button("Mark it").ClickAsync();
        await Expect(page.Locator(".total")).ToHaveTextAsync(FormattableString.Invariant($"{sheet.Marks - 1} of {sheet.Marks} marks"));
        await Expect(page.Locator(".outcome").First).ToHaveTextAsync("wrong");
        await Expect(page.Locator(".outcome", new() { HasTextString = "follows" })).Not.ToHaveCountAsync(0);
        await screen.Button("Show the steps").ClickAsync();
        await Expect(page.Locator(".steps-shown").First).ToContainTextAsync("front width =");
        Assert.True((await page.Locator(".steps-shown").First.BoundingBoxAsync())!.Width > 300, "the steps are squeezed");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "worksheet-marked.png"), FullPage = true });
        await screen.Button("Another problem").ClickAsync();
        await Expect(page.Locator(".total")).ToHaveCountAsync(0);
        await Expect(fields.First).ToHaveValueAsync("");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => Object.keys(localStorage).filter(key => key.includes('worksheet')).length"));
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task The_pad_has_the_keys_of_the_answer_that_has_the_caret()
    {
        await using var screen = await Screen.OpenAsync(chromium, options: Screen.Phone);
        var order = new DrillOrder(LengthUnit.Inch, 32, [Teaching.Drills.DrillKind.Add, Teaching.Drills.DrillKind.InchToMillimetre], 7);
        await screen.GoAsync(order.AddressFor("evening", 1, false));
        ILocator Key(string name) => screen.Page.Locator(".pad").GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
        await screen.Page.GetByLabel("Answer 2", new() { Exact = true }).TapAsync();
        await Expect(Key("decimal point")).ToBeVisibleAsync();
        await screen.Page.GetByLabel("Answer 9", new() { Exact = true }).TapAsync();
        foreach (var key in new[] { "1", "3", "1/32", "1/64" })
            await Key(key).TapAsync();
        await Expect(screen.Page.GetByLabel("Answer 9", new() { Exact = true })).ToHaveValueAsync("13 3/64");
        await ReachableAsync(screen, screen.Page.GetByLabel("Answer 9", new() { Exact = true }));
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "drill-phone-pad.png") });
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_drill_is_answered_with_a_thumb()
    {
        await using var screen = await Screen.OpenAsync(chromium, options: Screen.Phone);
        var order = new DrillOrder(LengthUnit.Inch, 8, [Teaching.Drills.DrillKind.ReadRule, Teaching.Drills.DrillKind.Halve], 7);
        var drill = order.ForScreen(1);
        await screen.GoAsync(order.AddressFor("evening", 1, true));
        var page = screen.Page;
        foreach (var item in drill.Items)
        {
            var field = page.GetByLabel(FormattableString.Invariant($"Answer {item.Number}"), new() { Exact = true });
            await Expect(field).ToBeFocusedAsync();
            await Expect(field).ToHaveAttributeAsync("inputmode", "none");
            // The first answer is a known slip.
            var text = item.Number == 1 ? item.Slips[0].Written : new LengthFormat(LengthUnit.Inch, 64).Print(item.Answer);
            foreach (var key in Keys(text))
                await page.Locator(".pad").GetByRole(AriaRole.Button, new() { Name = key, Exact = true }).TapAsync();
            await Expect(field).ToHaveValueAsync(text);
            if (item.Number == 1)
                await ReachableAsync(screen, field);
            await page.Locator(".pad .next").TapAsync();
            await Expect(page.Locator(".outcome")).ToHaveTextAsync(item.Number == 1 ? "not right" : "right");
            if (item.Number == 1)
            {
                await Expect(page.Locator(".told.wrong")).ToContainTextAsync(item.Slips[0].Advice);
                await page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "drill-phone-wrong.png") });
            }

            await page.Locator(".pad .next").TapAsync();
        }

        await Expect(page.Locator(".summary h2")).ToHaveTextAsync("9 of 10 right");
        await Expect(page.Locator(".summary")).ToContainTextAsync(drill.Items[0].Slips[0].Advice);
        await Expect(page.Locator(".summary li.strong")).ToHaveTextAsync("Read the rules: 4 of 5");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => Object.keys(localStorage).filter(key => key.includes('drill')).length"));
        await screen.Button("Ten others").TapAsync();
        await Expect(page.GetByLabel("Answer 1", new() { Exact = true })).ToHaveValueAsync("");
        Assert.Empty(screen.Faults);

        // Fractions on the keys add up.
        static IEnumerable<string> Keys(string text)
        {
            var (whole, fraction) = text.Split(' ') is [var first, var second] ? (first, second) : text.Contains('/', StringComparison.Ordinal) ? ("", text) : (text, "0/1");
            foreach (var digit in whole)
                yield return digit.ToString();
            var parts = fraction.Split('/').Select(part => int.Parse(part, null)).ToArray();
            for (var (left, bottom) = (parts[0] * 16 / parts[1], 2); left > 0; bottom *= 2)
            {
                if (left < 16 / bottom)
                    continue;
                left -= 16 / bottom;
                yield return FormattableString.Invariant($"1/{bottom}");
            }
        }
    }

    // Field and pad stand on one screen, neither before the other, and every key takes a thumb.
    private static async Task ReachableAsync(Screen screen, ILocator field)
    {
        var (above, pad) = ((await field.BoundingBoxAsync())!, (await screen.Page.Locator(".pad").BoundingBoxAsync())!);
        Assert.True(above.Y >= 0 && above.Y + above.Height <= pad.Y, $"the field ends at {above.Y + above.Height}, the pad begins at {pad.Y}");
        Assert.True(pad.Y + pad.Height <= 844, $"the pad ends at {pad.Y + pad.Height}");
        foreach (var key in await screen.Page.Locator(".pad button:visible").AllAsync())
        {
            var box = (await key.BoundingBoxAsync())!;
            Assert.True(box.Width >= 44 && box.Height >= 44, $"{box.Width} × {box.Height}");
        }
    }
}
