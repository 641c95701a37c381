using System.Globalization;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Worksheets;

/// <summary>Which benches have a sheet.</summary>
/// <param name="LeftOut">Benches of the course that have none.</param>
/// <param name="Count">How many benches from 1 have one, whether the course has them or not; null for those of the course.</param>
public sealed record BenchesChosen(IReadOnlySet<int> LeftOut, int? Count)
{
    public const int UsualCount = 24;

    /// <summary>More would be no class, and all have different problems.</summary>
    public const int MostCount = Teaching.Worksheets.RandomWorksheets.DifferentBenches;

    /// <summary>All benches of a course, or as many as a class has where it has none yet.</summary>
    public static BenchesChosen Of(OpenCourse course) => new(new HashSet<int>(), course.Projects.Count == 0 ? UsualCount : null);

    public IReadOnlyList<int> In(OpenCourse course) => Count is { } count ? [.. Enumerable.Range(1, count)]
        : [.. course.Projects.Select(project => project.Project.Bench).Where(bench => !LeftOut.Contains(bench))];

    public BenchesChosen With(int bench, bool isIn)
    {
        HashSet<int> left = [.. LeftOut];
        if (isIn)
            left.Remove(bench);
        else
            left.Add(bench);
        return this with { LeftOut = left };
    }

    /// <summary>A count as it was typed, put within what is possible.</summary>
    public static int Counted(string? text) =>
        int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out var count) ? Math.Clamp(count, 1, MostCount) : UsualCount;
}
