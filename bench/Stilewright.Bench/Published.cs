using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Stilewright.Bench;

/// <summary>Programs as they are published, ready to run.</summary>
internal static class Published
{
    /// <summary>Publishes a project into a folder.</summary>
    /// <returns>The program's path; null, after saying why, when it cannot be published.</returns>
    public static string? Program(string project, string folder)
    {
        var (code, output) = Run("dotnet", ["publish", Path.Combine(Root(), "src", project), "--configuration", "Release",
            "--runtime", RuntimeInformation.RuntimeIdentifier, "--self-contained", "false", "-p:PublishReadyToRun=true",
            "-nodeReuse:false", "--disable-build-servers", "--verbosity", "quiet", "--output", folder]);
        if (code != 0)
        {
            Console.Error.WriteLine($"{project} cannot be published.\n{output}");
            return null;
        }

        // The command line has a name of its own.
        var name = project == "Stilewright.Cli" ? "stilewright" : project;
        return Path.Combine(folder, OperatingSystem.IsWindows() ? $"{name}.exe" : name);
    }

    public static (int ExitCode, string Output) Run(string program, IEnumerable<string> arguments)
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

    /// <summary>The folder of the whole project.</summary>
    public static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
