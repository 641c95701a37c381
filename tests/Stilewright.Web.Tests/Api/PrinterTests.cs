using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Tests.Running;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Api;

/// <summary>What was measured on the shop's printer counts for every print of a pattern, whoever asks.</summary>
[Collection(InBrowser.Name)]
public sealed class PrinterTests(Chromium chromium)
{
    private const string Patterns = "/api/courses/evening/patterns?path=1.2L";

    // 150 ÷ 149.25 = 1.00503 and 150 ÷ 150.75 = 0.99502, by hand.
    private const string Corrected = "corrected for the printer by +0.50 % across and −0.50 % along";

    [Fact]
    public async Task What_is_remembered_corrects_every_pdf_and_no_drawing()
    {
        await using var served = await Serving.Served.StartAsync();
        using var screen = served.Screen();
        var drawing = await screen.GetStringAsync(new Uri(Patterns.Replace("patterns?", "patterns.svg?", StringComparison.Ordinal) + ".TR", UriKind.Relative));
        Assert.Contains("no correction for the printer", await TextAsync(screen, Patterns), StringComparison.Ordinal);
        using PrinterBook book = new(new DataFiles(served.Data), TimeProvider.System);
        Assert.Null(await book.FindAsync());
        await book.RememberAsync(Print("149.25 mm", "150.75 mm"), MakerBook.ProgramId);

        Assert.Contains(Corrected, await TextAsync(screen, Patterns), StringComparison.Ordinal);
        Assert.Contains("no correction for the printer", await TextAsync(screen, Patterns + "&feed=long"), StringComparison.Ordinal);
        Assert.Contains("no correction for the printer", await TextAsync(screen, Patterns + "&corrected=false"), StringComparison.Ordinal);
        Assert.Equal(drawing, await screen.GetStringAsync(new Uri(Patterns.Replace("patterns?", "patterns.svg?", StringComparison.Ordinal) + ".TR", UriKind.Relative)));
        // A print that is measured later was made with the first correction, so the two multiply: 1.00503 × 1.00503 and 0.99502 × 0.99502.
        Assert.Contains("by +1.01 % across and −0.99 % along",
            await TextAsync(screen, Patterns + "&rule=150+mm&across=149.25+mm&along=150.75+mm"), StringComparison.Ordinal);

        await book.ForgetAsync(MakerBook.ProgramId);
        Assert.Null(await book.FindAsync());
        await book.RememberAsync(Print("149.25 mm", "150.75 mm"), MakerBook.ProgramId);
        Assert.Single((await book.FindAsync())!.Measured);
        // It is none of the courses.
        Assert.Contains("evening", await screen.GetStringAsync(new Uri("/api/courses", UriKind.Relative)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_maker_measures_a_print_once_and_every_screen_prints_by_it()
    {
        await using var server = await TestServer.OpenAsync();
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync("/courses/evening/bench/1/patterns");
        await screen.Page.GetByText("Correct for the printer").ClickAsync();
        await screen.Page.GetByLabel("What the rules say").FillAsync("150 mm");
        await screen.Page.GetByLabel("Measured across").FillAsync("149.25 mm");
        await screen.Page.GetByLabel("Measured along").FillAsync("150.75 mm");
        await screen.Page.GetByLabel("Measured along").BlurAsync();
        await screen.Button("Remember it for the shop's printer").ClickAsync();
        await Expect(screen.Page.GetByText(Corrected)).ToBeVisibleAsync();
        await Expect(screen.Page.GetByLabel("Measured across")).ToHaveValueAsync("");
        await screen.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "patterns-printer.png") });

        await using var other = await Screen.OpenAsync(chromium, server, Screen.Phone);
        await other.GoAsync("/courses/evening/bench/1/patterns");
        await other.Page.GetByText("Correct for the printer: it is").TapAsync();
        await Expect(other.Page.GetByText(Corrected)).ToBeVisibleAsync();
        Assert.True(await other.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= document.documentElement.clientWidth"));
        await other.Page.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), "patterns-printer-phone.png") });
        await other.Button("Forget it, for another printer").TapAsync();
        await Expect(other.Page.GetByText(Corrected)).ToHaveCountAsync(0);
    }

    private static PrintMeasurement Print(string across, string along) => new(PaperFeed.ShortEdge, Entry("150 mm"), Entry(across), Entry(along));

    private static LengthEntry Entry(string text) => Courses.Entry(text)!.Value;

    private static async Task<string> TextAsync(HttpClient screen, string address)
    {
        using var pdf = PdfDocument.Open(await screen.GetByteArrayAsync(new Uri(address, UriKind.Relative)));
        return string.Join('\n', pdf.GetPages().Select(page => page.Text));
    }
}
