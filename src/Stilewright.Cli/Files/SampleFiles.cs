using Stilewright.Documents;
using Stilewright.Shop;

namespace Stilewright.Cli.Files;

/// <summary>The sample course that the program carries, with a house standard to change beside it.</summary>
internal static class SampleFiles
{
    public const string CourseName = "evening-course.json";
    public const string StandardName = "house-standard.json";

    /// <summary>File names and contents. A course on a shipped standard is pointed at a full copy of it.</summary>
    /// <exception cref="RefusalException">This build carries no sample.</exception>
    public static IReadOnlyList<(string Name, byte[] Content)> All()
    {
        if (Resource(CourseName) is not { } bytes)
            throw new RefusalException(ExitCode.FileFailed, "This build of the program carries no sample course.");
        var course = CourseFile.Use(CourseName, DocumentReader.ReadCourse(bytes));
        if (Resource(course.Standard) is { } own)
            return [(CourseName, bytes), (course.Standard, own)];
        var standard = course.Standard == "millimetre" ? ShippedStandards.Millimetre : ShippedStandards.Inch;
        return
        [
            (CourseName, DocumentWriter.Write(course with { Standard = StandardName })),
            (StandardName, DocumentWriter.Write(StandardInFull.Of(standard))),
        ];
    }

    private static byte[]? Resource(string name)
    {
        using var stream = typeof(SampleFiles).Assembly.GetManifestResourceStream($"samples/{name}");
        if (stream is null)
            return null;
        using var held = new MemoryStream();
        stream.CopyTo(held);
        return held.ToArray();
    }
}
