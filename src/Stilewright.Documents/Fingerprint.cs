using System.Security.Cryptography;
using Stilewright.Doors;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents;

/// <summary>Revisions of content, since files carry no number: the first digits of a SHA-256 (FIPS 180-4) over the file as it is written.</summary>
/// <remarks>The order of keys and the spacing of a file do not matter. How a length was typed does, since it is kept.</remarks>
public static class Fingerprint
{
    /// <summary>How many hexadecimal digits are kept; short enough to print in a title block.</summary>
    public const int Digits = 8;

    /// <summary>Of one project with what its course sets for it; other benches do not count.</summary>
    public static string Of(Course course, Project project)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(project);
        return Of(DocumentWriter.Write(course with { Projects = [project] }));
    }

    /// <summary>Of a house standard, with the shipped lists where its own are empty.</summary>
    public static string Of(HouseStandard standard) => Of(DocumentWriter.Write(standard));

    /// <summary>Of the standard and of every project.</summary>
    public static Revisions Of(Breakdown breakdown)
    {
        ArgumentNullException.ThrowIfNull(breakdown);
        return new(Of(breakdown.Standard), breakdown.Projects.ToDictionary(
            project => project.Project.Id, project => Of(breakdown.Course, project.Project)));
    }

    private static string Of(byte[] file) => Convert.ToHexStringLower(SHA256.HashData(file))[..Digits];
}
