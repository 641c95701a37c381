using Stilewright.Documents;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Web.Features.Import;

/// <summary>A course file that came in, with the standard file that lay beside it.</summary>
/// <param name="Standard">Null where none came.</param>
public sealed record CourseUpload(Course Course, HouseStandard? Standard)
{
    /// <summary>Reads both files, and tells all that is wrong with either.</summary>
    /// <param name="standard">Null where there is none.</param>
    public static DocumentResult<CourseUpload> Read(byte[] course, byte[]? standard)
    {
        List<DocumentError> errors = [];
        var read = Take(DocumentReader.ReadCourse(course), "", errors);
        var beside = standard is null ? null : Take(DocumentReader.ReadStandard(standard), "standard file: ", errors);
        if (read is null || (standard is not null && beside is null))
            return new DocumentResult<CourseUpload>.Refused(errors);
        if (beside is not null && References.Check(read, beside) is { Count: > 0 } wrong)
            return new DocumentResult<CourseUpload>.Refused(wrong);
        return new DocumentResult<CourseUpload>.Read(new(read, beside));
    }

    private static T? Take<T>(DocumentResult<T> result, string before, List<DocumentError> errors)
        where T : class
    {
        switch (result)
        {
            case DocumentResult<T>.Read read:
                return read.Document;
            case DocumentResult<T>.Refused refused:
                errors.AddRange(refused.Errors.Select(error => error with { Path = before + error.Path }));
                return null;
            default:
                throw new InvalidOperationException("A file is read or refused.");
        }
    }
}
