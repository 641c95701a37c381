using Stilewright.Documents;
using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>Courses and house standards as files that go out of the store and come into it.</summary>
/// <remarks>In the store a course names its standard by id; in a file it names a standard as shipped, or the file that lies beside it.</remarks>
public static class CourseFiles
{
    private const string StandardEnding = "-standard.json";
    private const string Ending = ".json";

    /// <summary>The course as the command line reads it, with its standard named as a file beside it.</summary>
    public static byte[] Course(OpenCourse course) => DocumentWriter.Write(course.Course with { Standard = StandardName(course.Standard.Standard) });

    /// <summary>The name of the course's file; ids are of letters that every file system takes.</summary>
    public static string CourseName(OpenCourse course) => course.Course.Id + Ending;

    /// <summary>The house standard with every setting written out.</summary>
    public static byte[] Standard(OpenStandard standard) => DocumentWriter.Write(StandardInFull.Of(standard.Standard));

    public static string StandardFileName(HouseStandard standard) => standard.Id + StandardEnding;

    /// <summary>What a course's file calls its standard: <c>inch</c> or <c>millimetre</c> where it is as shipped, else its file.</summary>
    public static string StandardName(HouseStandard standard) =>
        new[] { ShippedStandards.Inch, ShippedStandards.Millimetre }.Any(shipped => shipped.Id == standard.Id && IsSame(shipped, standard))
            ? standard.Id : StandardFileName(standard);

    /// <summary>The id that the store knows a standard by, from the name that a file calls it.</summary>
    public static string StandardIdOf(string name) => name.EndsWith(StandardEnding, StringComparison.Ordinal) ? name[..^StandardEnding.Length]
        : name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name;

    /// <summary>Whether two standards say the same, whether or not their settings are written out.</summary>
    public static bool IsSame(HouseStandard one, HouseStandard other) =>
        Fingerprint.Of(StandardInFull.Of(one)) == Fingerprint.Of(StandardInFull.Of(other));
}
