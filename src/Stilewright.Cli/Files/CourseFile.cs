using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Cli.Files;

/// <summary>Opens a course file with the house standard that it names, and works it out.</summary>
internal static class CourseFile
{
    /// <exception cref="RefusalException">A file cannot be read or used; its lines are all errors that were found.</exception>
    public static Breakdown Open(string path)
    {
        var course = Use(path, DocumentReader.ReadCourse(InputFile.Read(path)));
        var standard = StandardOf(path, course);
        var errors = References.Check(course, standard);
        return errors.Count == 0 ? Breakdown.Of(course, standard) : throw Refuse(path, errors);
    }

    /// <summary>The document, or a refusal with every error.</summary>
    public static T Use<T>(string path, DocumentResult<T> result) => result switch
    {
        DocumentResult<T>.Read read => read.Document,
        DocumentResult<T>.Refused refused => throw Refuse(path, refused.Errors),
        _ => throw new InvalidOperationException(),
    };

    private static HouseStandard StandardOf(string path, Course course)
    {
        switch (course.Standard)
        {
            case "inch":
                return ShippedStandards.Inch;
            case "millimetre":
                return ShippedStandards.Millimetre;
        }

        // A course from elsewhere must not make the program read files outside its own folder.
        var name = course.Standard;
        if (name.Length == 0 || name is "." or ".." || name.AsSpan().ContainsAny("/\\:\0"))
        {
            throw Refuse(path, [new("$.standard", $"\"{name}\" is not the plain name of a file",
                "write \"inch\", \"millimetre\" or the name of a standard file beside this one, without a folder")]);
        }

        var beside = Path.Combine(Path.GetDirectoryName(path) ?? "", name);
        if (!File.Exists(beside))
        {
            throw Refuse(path, [new("$.standard", $"the house standard {name} is not beside this file",
                "put it there, or write \"inch\" or \"millimetre\" for a standard as shipped")]);
        }

        return Use(beside, DocumentReader.ReadStandard(InputFile.Read(beside)));
    }

    private static RefusalException Refuse(string path, IReadOnlyList<DocumentError> errors) => new(ExitCode.FileFailed,
        [$"{path} cannot be used: {(errors.Count == 1 ? "1 error" : $"{errors.Count} errors")}.", .. errors.Select(error => $"  {error}")]);
}
