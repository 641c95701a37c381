using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Stilewright.Bench;

/// <summary>The program as published, ready to run: a new process for every run, from the sample to its cut list.</summary>
internal static class CommandLineMeasurement
{
    /// <returns>False when the program cannot be published or run.</returns>
    public static bool Run()
    {
        var root = Root();
        var folder = Directory.CreateTempSubdirectory("stilewright-bench-").FullName;
        try
        {
            var published = Start("dotnet", ["publish", Path.Combine(root, "src", "Stilewright.Cli"), "--configuration", "Release",
                "--runtime", RuntimeInformation.RuntimeIdentifier, "--self-contained", "false", "-p:PublishReadyToRun=true",
                "-nodeReuse:false", "--disable-build-servers", "--verbosity", "quiet", "--output", folder]);
            if (published.ExitCode != 0)
            {
                Console.Error.WriteLine($"cli: the program cannot be published.\n{published.Output}");
                return false;
            }

            var program = Path.Combine(folder, OperatingSystem.IsWindows() ? "stilewright.exe" : "stilewright");
            string[] arguments = ["cutlist", Path.Combine(root, "samples", "evening-course.json")];
            var exitCode = 0;
            var lines = 0;
            void Once()
            {
                var (code, output) = Start(program, arguments);
                exitCode = Math.Max(exitCode, code);
                lines = output.Split('\n').Length;
            }

            var first = Timing.Of(0, 1, Once, settle: false);
            var later = Timing.Of(2, 21, Once, settle: false);
            if (exitCode != 0)
            {
                Console.Error.WriteLine($"cli: the program ended with exit code {exitCode}.");
                return false;
            }

            Console.WriteLine($"cli: published ready to run, sample to cut list ({lines} lines), a new process each time, files cached by the system");
            Console.WriteLine($"  first start: {first}");
            Console.WriteLine($"  later starts: {later.Against(400)}");
            return true;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static (int ExitCode, string Output) Start(string program, IEnumerable<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardInput = true,
        })!;
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
