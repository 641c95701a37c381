using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Tests.Running;

/// <summary>Courses to begin a test with.</summary>
internal static class Courses
{
    /// <summary>One bench with one opening.</summary>
    /// <param name="width">As read at the top; null for nothing read yet.</param>
    /// <param name="height">As read at the left; null for nothing read yet.</param>
    public static Course Measured(string? width = "23 1/2", string? height = "29 1/4", LengthUnit unit = LengthUnit.Inch)
    {
        var course = WithBenches(1, unit);
        course = NewOpening.In(course, course, out var id);
        return ProjectEdits.WithOpening(course, id, opening => opening with
        {
            Readings = width is null && height is null ? null : new(Entry(width, unit), null, null, Entry(height, unit), null, null, null, null),
        });
    }

    /// <summary>Benches from 1 up, nothing measured.</summary>
    public static Course WithBenches(int count, LengthUnit unit = LengthUnit.Inch)
    {
        var course = NewCourse.Named("Evening class", unit);
        for (var bench = 1; bench <= count; bench++)
            course = course with { Projects = [.. course.Projects, NewCourse.Bench(bench, $"Cupboard {bench}", CourseIds.FreshFor(course))] };
        return course;
    }

    public static string OpeningId(Course course) => ProjectEdits.Openings(course).First().Opening.Id;

    public static LengthEntry? Entry(string? text, LengthUnit unit = LengthUnit.Inch) =>
        text is null ? null : new(text, LengthReader.ReadOwn(text, unit));
}
