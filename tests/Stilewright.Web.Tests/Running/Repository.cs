using System.Runtime.CompilerServices;

namespace Stilewright.Web.Tests.Running;

/// <summary>Folders of the repository, and files of the sample.</summary>
internal static class Repository
{
    public static string EveningCourse { get; } = Path.Combine(Root(), "samples", "evening-course.json");

    /// <summary>A folder by its path from the root of the repository; made where it is not there.</summary>
    public static string Folder(string path) => Directory.CreateDirectory(Path.Combine(Root(), path)).FullName;

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "../../.."));
}
