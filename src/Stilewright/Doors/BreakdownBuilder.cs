using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

internal static class BreakdownBuilder
{
    public static Breakdown Build(Course course, HouseStandard standard) => throw new NotSupportedException(course.Id + standard.Id);
}
