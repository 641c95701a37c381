using Stilewright.Doors;
using Stilewright.Findings;

namespace Stilewright.Wording;

/// <summary>Tells which project a finding belongs to, by the ids that paths begin with.</summary>
public static class ProjectPaths
{
    public static bool Holds(ProjectBreakdown project, Finding finding) =>
        Ids(project).Any(id => finding.Place.IsWithin(id));

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
