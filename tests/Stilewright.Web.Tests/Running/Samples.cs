using System.Runtime.CompilerServices;

namespace Stilewright.Web.Tests.Running;

/// <summary>Files of the sample.</summary>
internal static class Samples
{
    public static string EveningCourse { get; } = Of("evening-course.json");

    private static string Of(string name, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "../../../samples", name);
}
