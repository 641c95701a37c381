namespace Stilewright.Cli;

/// <summary>Ends a run with lines for the person who started it; caught in one place, and never shown as a trace.</summary>
internal sealed class RefusalException(int exitCode, params IReadOnlyList<string> lines) : Exception(string.Join('\n', lines))
{
    public int ExitCode { get; } = exitCode;
    public IReadOnlyList<string> Lines { get; } = lines;
}
