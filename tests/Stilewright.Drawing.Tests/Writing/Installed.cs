using System.Diagnostics;

namespace Stilewright.Drawing.Tests.Writing;

/// <summary>Programs that tests/install-tools installs.</summary>
internal static class Installed
{
    /// <summary>Fails when none of the programs is on the PATH, or when it fails.</summary>
    /// <param name="names">The names it goes by.</param>
    public static void Run(string[] names, params string[] arguments)
    {
        var program = names
            .SelectMany(name => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Select(directory => Path.Combine(directory, name)))
            .FirstOrDefault(File.Exists);
        Assert.True(program is not null, $"{names[0]} is not on the PATH; run tests/install-tools.");
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
            process.Kill(entireProcessTree: true);
        Assert.True(Task.WaitAll([errors, output], TimeSpan.FromSeconds(10)));
        Assert.True(process.ExitCode == 0, errors.Result);
    }

    /// <summary>Shows a page in a browser at 96 dots to the inch.</summary>
    /// <param name="folder">For what the browser keeps.</param>
    public static void Browser(string folder, string page, string shot, int width, int height)
    {
        Run(["chromium", "chromium-browser", "google-chrome"],
            "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
            "--disable-component-update", "--disable-sync", "--hide-scrollbars", "--force-device-scale-factor=1",
            $"--user-data-dir={Path.Combine(folder, "profile")}", FormattableString.Invariant($"--window-size={width},{height}"), $"--screenshot={shot}",
            new Uri(page).AbsoluteUri);
        Assert.True(File.Exists(shot));
    }
}
