using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Web.Drawings;

/// <summary>The faces of a project drawn for a page.</summary>
public static class FaceDrawings
{
    private const double WidthMillimetres = 190;
    private const double HeightMillimetres = 200;

    /// <summary>Every face that has anything to draw, at the largest scale that fits half a wide page.</summary>
    public static IReadOnlyList<(FaceBreakdown Face, Scene Scene)> Of(ProjectBreakdown project, LengthFormat format) =>
    [
        .. from piece in project.Pieces
           from face in piece.Faces
           where face.Frame is not null || face.Fronts.Any(front => front.Leaves.Count > 0)
           select (face, Draw(Title(project, piece, face), face, format)),
    ];

    /// <summary>The first face, for a card; null where nothing can be drawn yet.</summary>
    public static Scene? Small(ProjectBreakdown project) => Plain(project).Select(drawn => drawn.Scene).FirstOrDefault();

    /// <summary>Every face that has anything to draw, small and without dimensions.</summary>
    public static IEnumerable<(FaceBreakdown Face, Scene Scene)> Plain(ProjectBreakdown project) => project.Faces
        .Where(face => face.Frame is not null || face.Fronts.Any(front => front.Leaves.Count > 0))
        .Select(face => (face, Fit.Largest(LengthUnit.Inch, 100, 100,
            scale => FaceElevation.Draw(FormattableString.Invariant($"Bench {project.Project.Bench}"), face, scale, LengthFormat.InchesTo32, 100, isPlain: true)).Scene));

    private static Scene Draw(string title, FaceBreakdown face, LengthFormat format) => Fit.Largest(
        format.Unit, WidthMillimetres, HeightMillimetres, scale => FaceElevation.Draw(title, face, scale, format, WidthMillimetres)).Scene;

    private static string Title(ProjectBreakdown project, PieceBreakdown piece, FaceBreakdown face) =>
        FormattableString.Invariant($"Bench {project.Project.Bench}, {piece.Piece.Name}: {TradeWords.Words(face.Face.Side)}");
}
