using System.Reflection;

namespace Stilewright.Cli;

/// <summary>The version of this program, such as 0.1.0.</summary>
internal static class ProgramVersion
{
    public static string Text { get; } = Assembly.GetExecutingAssembly().GetName().Version!.ToString(3);
}
