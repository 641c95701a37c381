using Microsoft.Playwright;

namespace Stilewright.Web.Tests.Running;

/// <summary>One browser and one server for all tests that look at pages. Every test has screens of its own.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright playwright = null!;

    public IBrowser Browser { get; private set; } = null!;

    /// <summary>The server that tests share which do not stop it.</summary>
    public TestServer Server { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        var program = new[] { "chromium", "chromium-browser", "google-chrome" }
            .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Select(folder => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);
        Assert.True(program is not null, "chromium is not on the PATH; run tests/install-tools.");
        playwright = await Playwright.CreateAsync();
        Browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = program,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--hide-scrollbars",
            ],
        });
        Server = await TestServer.OpenAsync();
    }

    public async Task DisposeAsync()
    {
        if (Server is not null)
            await Server.DisposeAsync();
        if (Browser is not null)
            await Browser.DisposeAsync();
        playwright?.Dispose();
    }
}

/// <summary>Tests in a browser run one after another.</summary>
[CollectionDefinition(Name)]
public sealed class InBrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in a browser";
}
