using Microsoft.Playwright;
using Stilewright.Web.Tests.Api;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Printing;

/// <summary>Makes paper and brings files in as a person does, in a browser.</summary>
public sealed class PaperFlowTests : IAsyncLifetime
{
    private readonly ApiHost host = new();
    private IPlaywright playwright = null!;
    private IBrowser browser = null!;
    private IPage page = null!;

    public async Task InitializeAsync()
    {
        await host.InitializeAsync();
        var program = new[] { "chromium", "chromium-browser", "google-chrome" }
            .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Select(folder => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);
        Assert.True(program is not null, "chromium is not on the PATH; run tests/install-tools.");
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = program,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        page = await browser.NewPageAsync(new() { BaseURL = host.Client.BaseAddress!.ToString() });
        page.SetDefaultTimeout(60_000);
        SetDefaultExpectTimeout(60_000);
    }

    public async Task DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
        await host.DisposeAsync();
    }

    [Fact]
    public async Task A_packet_is_made_downloaded_and_kept_as_handed_out()
    {
        await GoAsync("/courses/evening/bench/2/packet");
        await Expect(page.GetByText("Nothing yet. What a packet")).ToBeVisibleAsync();
        await page.GetByLabel("A4").CheckAsync();
        await page.GetByLabel("Labels of the parts").UncheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the packet" }).ClickAsync();
        var link = page.GetByRole(AriaRole.Link, new() { Name = "Download the PDF" });
        await Expect(link).ToBeVisibleAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        Assert.Equal("evening-bench-2-packet.pdf", download.SuggestedFilename);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await File.ReadAllBytesAsync(await download.PathAsync()));
        Assert.All(pdf.GetPages(), sheet => Assert.Equal(595, Math.Round(sheet.Width)));
        await Expect(page.GetByText("Still holds.")).ToHaveCountAsync(1);
        Assert.Single((await host.JsonAsync("/api/courses/evening/handed-out")).AsArray());
    }

    [Fact]
    public async Task Patterns_are_asked_for_as_the_page_says_and_wrong_entries_are_told()
    {
        await GoAsync("/courses/evening/bench/1/patterns");
        await page.GetByText("Guide a bearing").ClickAsync();
        await page.GetByLabel("Radius of the bearing").FillAsync("3/8");
        await page.GetByLabel("Radius of the bearing").BlurAsync();
        await Expect(page.GetByText("bearing and cutter go together")).ToBeVisibleAsync();
        await page.GetByLabel("Radius of the cutter").FillAsync("1/4");
        await page.GetByLabel("Radius of the cutter").BlurAsync();
        await Expect(page.GetByText("bearing and cutter go together")).ToBeHiddenAsync();
        await page.GetByLabel("Paper").SelectOptionAsync("a3");
        var link = page.GetByRole(AriaRole.Link, new() { Name = "Patterns, PDF" }).First;
        await Expect(link).ToHaveAttributeAsync("href", new System.Text.RegularExpressions.Regex("paper=a3.*bearing=3%2F8&cutter=1%2F4"));
        var download = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await File.ReadAllBytesAsync(await download.PathAsync()));
        // A3 upright or lying: 297 × 420 mm are 842 × 1191 points.
        Assert.All(pdf.GetPages(), sheet => Assert.Equal([842, 1191], new[] { Math.Round(sheet.Width), Math.Round(sheet.Height) }.Order()));
    }

    [Fact]
    public async Task A_bench_without_an_arch_says_where_one_comes_from()
    {
        await GoAsync("/courses/evening/bench/2/patterns");
        await Expect(page.GetByText("No rail of this bench is arched.")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_file_is_imported_over_its_course_after_its_differences_were_shown()
    {
        var file = (await host.Client.GetStringAsync("/api/courses/evening/export")).Replace("\"Hall cupboard\"", "\"Porch cupboard\"", StringComparison.Ordinal);
        await GoAsync("/import");
        await ChooseAsync(file.Replace("\"unit\": \"in\"", "\"unit\": \"ell\"", StringComparison.Ordinal));
        await Expect(page.GetByText("The file cannot be used")).ToBeVisibleAsync();
        await Expect(page.GetByText("$.unit")).ToBeVisibleAsync();
        await ChooseAsync(file);
        await Expect(page.GetByText("What the file would change")).ToBeVisibleAsync();
        await Expect(page.Locator(".differences li").First).ToContainTextAsync("Porch cupboard");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make these changes" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Bench 1: Porch cupboard" })).ToBeVisibleAsync();
        Assert.Equal(2, (int)(await host.JsonAsync("/api/courses/evening"))["benches"]![0]!["revision"]!);
    }

    private Task ChooseAsync(string file) => page.GetByLabel("Course file").SetInputFilesAsync(new FilePayload
    {
        Name = "course.json",
        MimeType = "application/json",
        Buffer = System.Text.Encoding.UTF8.GetBytes(file),
    });

    // Before the page's connection stands, what is touched is lost; over whatever the connection goes.
    private async Task GoAsync(string address)
    {
        await page.GotoAsync(address);
        await Screen.LiveAsync(page);
    }
}
