using System.Diagnostics;

namespace Stilewright.Cli.Tests;

/// <summary>What one run of the program said.</summary>
public sealed record Ran(int Code, string Output, string Error)
{
    /// <summary>Runs inside this process, as if piped.</summary>
    public static Ran With(params string[] arguments) => At(TimeProvider.System, CancellationToken.None, arguments);

    /// <summary>Runs inside this process with the given clock, and can be stopped.</summary>
    public static Ran At(TimeProvider clock, CancellationToken cancellation, params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = CommandLine.Run(arguments, Screen.To(output, error), clock, cancellation);
        return new(code, output.ToString(), error.ToString());
    }

    /// <summary>Runs the built program as a process of its own with its output piped.</summary>
    public static Ran AsProcess(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [typeof(CommandLine).Assembly.Location, .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
        })!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new(process.ExitCode, output, error.Result);
    }
}
