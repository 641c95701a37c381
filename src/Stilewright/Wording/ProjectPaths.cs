using Stilewright.Doors;
using Stilewright.Findings;

namespace Stilewright.Wording;

/// <summary>Tells which project a finding belongs to, by the ids that paths begin with.</summary>
public static class ProjectPaths
{
    public static bool Holds(ProjectBreakdown project, Finding finding) =>
        Ids(project).Any(id => finding.Place.IsWithin(id));

    /// <summary>The project of every id that a path may begin with; of an id used twice, the first.</summary>
    public static IReadOnlyDictionary<string, ProjectBreakdown> ById(IEnumerable<ProjectBreakdown> projects)
    {
        Dictionary<string, ProjectBreakdown> owner = new(StringComparer.Ordinal);
        foreach (var project in projects)
        {
            foreach (var id in Ids(project))
                owner.TryAdd(id, project);
        }

        return owner;
    }

    /// <summary>The id that a place's path begins with.</summary>
    public static string IdOf(Place place) => place.Path.Split('/', 2)[0];

    private static IEnumerable<string> Ids(ProjectBreakdown project) =>
    [
        project.Project.Id,
        .. project.Project.Designs.Select(design => design.Id),
        .. project.Project.Runs.Select(run => run.Id),
        .. project.Project.Pieces.SelectMany(piece => piece.Faces.Select(face => face.Id).Prepend(piece.Id)),
        .. project.Project.Pieces.SelectMany(piece => piece.Faces).SelectMany(face => face.Openings).Select(opening => opening.Id),
        .. project.Fronts.Select(front => front.Path),
    ];
}
