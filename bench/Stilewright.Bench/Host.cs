using System.Diagnostics;
using System.Globalization;
using System.Runtime;
using System.Runtime.InteropServices;

namespace Stilewright.Bench;

/// <summary>The machine that is measured on.</summary>
internal static class Host
{
    public static string Describe() => string.Create(CultureInfo.InvariantCulture,
        $"{Processor()}, {Environment.ProcessorCount} cores; {RuntimeInformation.OSDescription}; {RuntimeInformation.FrameworkDescription}; {(GCSettings.IsServerGC ? "server" : "workstation")} collector");

    /// <summary>Holds the process to its first core, where the system can.</summary>
    /// <returns>What was done, in words.</returns>
    public static string KeepToOneCore()
    {
        if (!OperatingSystem.IsLinux() && !OperatingSystem.IsWindows())
            return "one thread";
        using var process = Process.GetCurrentProcess();
        var mask = (long)process.ProcessorAffinity;
        process.ProcessorAffinity = (nint)(mask & -mask);
        return "held to one core";
    }

    private static string Processor()
    {
        const string file = "/proc/cpuinfo";
        if (!File.Exists(file))
            return RuntimeInformation.ProcessArchitecture.ToString();
        var model = File.ReadLines(file).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal));
        return model is null ? RuntimeInformation.ProcessArchitecture.ToString() : model[(model.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
    }
}
