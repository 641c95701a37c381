using Stilewright.Projects;

namespace Stilewright.Web.Desk;

/// <summary>Which designs the leaves of a project are made to.</summary>
public static class DesignUse
{
    /// <summary>How many leaves use each design, by its id.</summary>
    public static IReadOnlyDictionary<string, int> Of(Project project)
    {
        var faces = project.Pieces.SelectMany(piece => piece.Faces).ToList();
        return faces.SelectMany(Openings).SelectMany(opening => Named(opening.Filling))
            .Concat(faces.SelectMany(face => face.Fronts).Select(front => front.Design))
            .CountBy(id => id, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Named(Filling filling) => filling switch
    {
        DoorFilling doors => doors.Leaves.Select(leaf => leaf.Design ?? doors.Design),
        DrawerFilling drawers => Enumerable.Repeat(drawers.Design, drawers.Count),
        _ => throw new InvalidOperationException("An opening is closed by doors or by drawer fronts."),
    };

    private static IEnumerable<Opening> Openings(Face face) => (face.Layout is null ? [] : ProjectEdits.In(face.Layout.Space)).Concat(face.Openings);
}
