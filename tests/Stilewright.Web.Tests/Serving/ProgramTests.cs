using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text.Json;
using Stilewright.Web.Serving;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Serving;

/// <summary>The program as it is started at the keyboard.</summary>
public sealed class ProgramTests : IDisposable
{
    private const int Interrupt = 2;
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("stilewright-program-");

    private string Data => Path.Combine(folder.FullName, "shop.db");

    public void Dispose() => folder.Delete(recursive: true);

    private static Process Start(params string[] arguments) => Process.Start(new ProcessStartInfo("dotnet", [typeof(WebServer).Assembly.Location, .. arguments])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        RedirectStandardInput = true,
    })!;

    private static async Task<(int Code, string Output, string Error)> RunAsync(params string[] arguments)
    {
        using var program = Start(arguments);
        var (output, error) = (program.StandardOutput.ReadToEndAsync(), program.StandardError.ReadToEndAsync());
        await program.WaitForExitAsync();
        return (program.ExitCode, await output, await error);
    }

    private static async Task<string> SaidAsync(Process program, string until)
    {
        List<string> said = [];
        while (await program.StandardOutput.ReadLineAsync() is { } line)
        {
            said.Add(line);
            if (line.StartsWith(until, StringComparison.Ordinal))
                return string.Join('\n', said);
        }

        throw new InvalidOperationException($"The program ended and said: {string.Join('\n', said)}{await program.StandardError.ReadToEndAsync()}");
    }

    [Fact]
    public async Task It_says_where_it_is_and_ends_well_with_control_c()
    {
        using var program = Start("--port", "0", "--data", Data, "--log", "--share");
        var said = await SaidAsync(program, "Stop with");
        Assert.Matches(@"^Stilewright is at http://localhost:\d+\n", said);
        Assert.Contains($"Data file: {Data}", said, StringComparison.Ordinal);
        var code = said.Split('\n').Single(line => line.StartsWith("Join code", StringComparison.Ordinal))[^6..];
        using var screen = new HttpClient();
        var address = said.Split('\n')[0]["Stilewright is at ".Length..];
        using var page = await screen.GetAsync(new Uri($"{address}/courses/evening"));
        Assert.True(page.IsSuccessStatusCode);
        using var wrong = new HttpRequestMessage(HttpMethod.Get, new Uri($"{address}/"));
        wrong.Headers.Host = "elsewhere.example";
        using var refused = await screen.SendAsync(wrong);
        Assert.False(refused.IsSuccessStatusCode);

        Assert.Equal(0, SendSignal(program.Id, Interrupt));
        await program.WaitForExitAsync();
        Assert.Equal(0, program.ExitCode);
        var log = await program.StandardError.ReadToEndAsync();
        Assert.DoesNotContain(code, log, StringComparison.Ordinal);
        foreach (var line in log.Split('\n', StringSplitOptions.RemoveEmptyEntries))
            JsonDocument.Parse(line).Dispose();
    }

    [Theory]
    [InlineData("--prot", "5280")]
    [InlineData("--port", "70000")]
    [InlineData("--port", "many")]
    [InlineData("--host", "shop")]
    [InlineData("fly")]
    [InlineData("back-up")]
    public async Task Wrong_use_is_told_on_the_standard_error(params string[] arguments)
    {
        var (code, output, error) = await RunAsync([.. arguments, "--data", Data]);
        Assert.Equal(Refusal.WrongUse, code);
        Assert.Empty(output);
        Assert.NotEmpty(error);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.False(File.Exists(Data));
    }

    [Fact]
    public async Task A_back_up_is_made_beside_the_running_program_and_replaces_nothing()
    {
        using var program = Start("--port", "0", "--data", Data);
        await SaidAsync(program, "Stop with");
        var copy = Path.Combine(folder.FullName, "copy.db");
        var (code, output, _) = await RunAsync("back-up", "--data", Data, "--out", copy);
        Assert.Equal(0, code);
        Assert.Contains("Copied", output, StringComparison.Ordinal);
        Assert.True(await new DataFiles(copy).CountAsync(db => db.Documents) > 1);
        foreach (var (data, to, words) in new[]
        {
            (Data, copy, "is there already"), (Data + ".none", copy + "2", "There is no data file"),
            (Data, Path.Combine(folder.FullName, "none", "copy.db"), "is not there"), (typeof(WebServer).Assembly.Location, copy + "3", "is not a data file"),
        })
        {
            var refused = await RunAsync("back-up", "--data", data, "--out", to);
            Assert.Equal(Refusal.Failed, refused.Code);
            Assert.Contains(words, refused.Error, StringComparison.Ordinal);
        }

        Assert.Equal(0, SendSignal(program.Id, Interrupt));
        await program.WaitForExitAsync();
        Assert.Equal(0, program.ExitCode);
        Assert.Empty(await program.StandardError.ReadToEndAsync());
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
    }

    [DllImport("libc", EntryPoint = "kill")]
    private static extern int SendSignal(int process, int signal);
}
