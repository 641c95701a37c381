using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Microsoft.Playwright;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Storage;

namespace Stilewright.Bench;

/// <summary>The web application as a process of its own on this computer: start, course page, thirty screens that type.</summary>
/// <remarks>Screens are pages of one headless chromium on the same machine, so that its work is measured along.</remarks>
internal static class WebMeasurement
{
    private const int Screens = 30;
    private const int TypingScreens = 10;
    private const int KeysEach = 20;
    private const int Benches = 60;
    private const int Leaves = 240;
    private const int Starts = 3;
    private const int Fetches = 21;
    private static readonly string[] Browsers = ["chromium", "chromium-browser", "google-chrome"];
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(4);

    // In the page: the time from a key to the next change of the drawing.
    private const string Watch = """
        () => {
          window.times = [];
          let typedAt = null;
          document.addEventListener('input', () => { typedAt = performance.now(); }, true);
          new MutationObserver(() => { if (typedAt !== null) { window.times.push(performance.now() - typedAt); typedAt = null; } })
            .observe(document.querySelector('[data-drawing]'), { subtree: true, childList: true, characterData: true, attributes: true });
        }
        """;

    /// <returns>False when it cannot be measured here.</returns>
    public static async Task<bool> RunAsync()
    {
        var browser = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => Browsers.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists);
        if (browser is null)
        {
            Console.Error.WriteLine("web: chromium is not on the PATH.");
            return false;
        }

        var folder = Directory.CreateTempSubdirectory("stilewright-bench-").FullName;
        try
        {
            if (Published.Program("Stilewright.Web", folder) is not { } program)
                return false;
            Console.WriteLine("web: published ready to run, a process of its own, on loopback");
            using var limit = new CancellationTokenSource(Longest);
            List<double> starts = [];
            for (var i = 0; i < Starts; i++)
            {
                var since = Stopwatch.GetTimestamp();
                var (server, address) = await StartAsync(program, Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"start-{i}.db")), limit.Token);
                using (server)
                {
                    using var client = new HttpClient();
                    await client.GetStringAsync(new Uri($"{address}/"), limit.Token);
                    starts.Add(Stopwatch.GetElapsedTime(since).TotalMilliseconds);
                    await StopAsync(server);
                }
            }

            Row("new process and new data file to the first page", starts, 0.5, 2000);
            var data = Path.Combine(folder, "start-0.db");
            await AddCourseAsync(data, limit.Token);
            var (running, at) = await StartAsync(program, data, limit.Token);
            using (running)
            {
                try
                {
                    await CoursePageAsync(at, limit.Token);
                    await TypeAsync(at, browser, running, limit.Token);
                }
                finally
                {
                    await StopAsync(running);
                }
            }

            return true;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task AddCourseAsync(string data, CancellationToken stop)
    {
        using var workshop = new Workshop(new Store(data), TimeProvider.System);
        if (await workshop.AddAsync(SampleCourses.Of(Benches, Leaves), null, MakerBook.ProgramId, RevisionCause.Import, stop) is not SaveResult.Saved)
            throw new InvalidOperationException("The measured course was not taken.");
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
    }

    private static async Task CoursePageAsync(string address, CancellationToken stop)
    {
        using var client = new HttpClient();
        List<double> times = [];
        for (var i = 0; i < Fetches; i++)
        {
            var since = Stopwatch.GetTimestamp();
            await client.GetStringAsync(new Uri($"{address}/courses/measured"), stop);
            times.Add(Stopwatch.GetElapsedTime(since).TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  course page of {Benches} benches, the first time: {times[0]:0} ms"));
        Row($"course page of {Benches} benches", times[1..], 0.5, 300);
    }

    private static async Task TypeAsync(string address, string browser, Process server, CancellationToken stop)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var chromium = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = browser,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
        List<IPage> pages = [];
        for (var i = 0; i < Screens; i++)
        {
            stop.ThrowIfCancellationRequested();
            var context = await chromium.NewContextAsync();
            var page = await context.NewPageAsync();
            await page.GotoAsync($"{address}/courses/evening/bench/1/measure?opening=hall-doors");
            await page.WaitForFunctionAsync("() => { const button = document.querySelector('[data-unit]'); return button && Object.keys(button).some(key => key.startsWith('_blazorEvents')); }");
            pages.Add(page);
        }

        await Task.Delay(1000, stop);
        server.Refresh();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  memory with {Screens} screens: {server.WorkingSet64 / 1e6:0} MB; goal below 400 MB: {(server.WorkingSet64 < 400e6 ? "met" : "MISSED")}"));
        List<double> times = [];
        foreach (var page in pages.Take(TypingScreens))
        {
            stop.ThrowIfCancellationRequested();
            await page.EvaluateAsync(Watch);
            var field = page.GetByLabel("at the top", new() { Exact = true });
            for (var key = 0; key < KeysEach; key++)
            {
                // A reading near the layout's, so that every key moves the drawing.
                await field.FillAsync(string.Create(CultureInfo.InvariantCulture, $"{29 + (key % 2)} {1 + (key % 7)}/8"));
                await page.WaitForTimeoutAsync(150);
            }

            times.AddRange(await page.EvaluateAsync<double[]>("() => window.times"));
            await field.FillAsync("");
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  a key to the drawing that follows it, {times.Count} keys of {TypingScreens * KeysEach} with {Screens} screens open"));
        Row("key to drawing, median", times, 0.5, null);
        Row("key to drawing, 95 of 100", times, 0.95, 100);
        server.Refresh();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  memory after typing: {server.WorkingSet64 / 1e6:0} MB"));
    }

    private static void Row(string what, List<double> times, double share, double? goal)
    {
        times.Sort();
        if (times.Count == 0)
        {
            Console.WriteLine($"  {what}: nothing was measured");
            return;
        }

        var taken = times[Math.Min(times.Count - 1, (int)(times.Count * share))];
        var words = goal is { } most ? string.Create(CultureInfo.InvariantCulture, $"; goal below {most:0} ms: {(taken < most ? "met" : "MISSED")}") : "";
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {what}: {taken:0.#} ms of {times.Count} ({times[0]:0.#} to {times[^1]:0.#} ms){words}"));
    }

    private static async Task<(Process Server, string Address)> StartAsync(string program, string data, CancellationToken stop)
    {
        const string Says = "Stilewright is at ";
        var server = Process.Start(new ProcessStartInfo(program, ["--port", "0", "--data", data]) { RedirectStandardOutput = true })!;
        while (await server.StandardOutput.ReadLineAsync(stop) is { } line)
        {
            if (line.StartsWith(Says, StringComparison.Ordinal))
                return (server, line[Says.Length..]);
        }

        throw new InvalidOperationException("The application did not start.");
    }

    private static async Task StopAsync(Process server)
    {
        if (!server.HasExited)
            server.Kill();
        await server.WaitForExitAsync();
    }

    private sealed class Store(string path) : IDbContextFactory<StoreContext>
    {
        public StoreContext CreateDbContext() => new(new DbContextOptionsBuilder<StoreContext>().UseSqlite(DataFile.ConnectionTo(path)).Options);
    }
}
