using Stilewright.Projects;

namespace Stilewright.Web.Features.Designs;

/// <summary>Species that are offered while one is typed; any other can be typed too.</summary>
public static class KnownSpecies
{
    /// <summary>Cabinet woods of North America and Europe.</summary>
    private static readonly string[] Usual =
    [
        "alder", "ash", "basswood", "beech", "birch", "cherry", "elm", "hard maple", "hickory", "mahogany", "pine", "poplar", "red oak", "sapele", "soft maple", "walnut", "white oak",
    ];

    /// <summary>Those that the course names already, then the usual ones.</summary>
    public static IEnumerable<string> Of(Course course) => DesignEdits.All(course).Select(each => each.Design.Species).Concat(Usual).Distinct(StringComparer.OrdinalIgnoreCase);
}
