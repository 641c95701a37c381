using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Web.Desk;

/// <summary>Edits of pieces, faces and runs.</summary>
public static class PieceEdits
{
    /// <summary>Adds a piece with an empty front.</summary>
    public static Course With(Course course, FreshIds fresh) => ProjectEdits.WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces, new(fresh.Next(), FormattableString.Invariant($"Piece {project.Pieces.Count + 1}"), [new(fresh.Next(), FaceSide.Front, null, [], [])])],
    });

    public static Course Without(Course course, string pieceId) => ProjectEdits.WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces.Where(piece => piece.Id != pieceId)],
    });

    /// <summary>Adds the first side that the piece has no face on yet.</summary>
    public static Course WithFace(Course course, string pieceId, FreshIds fresh) => ProjectEdits.WithPiece(course, pieceId, piece => piece with
    {
        Faces = [.. piece.Faces, new(fresh.Next(), Enum.GetValues<FaceSide>().FirstOrDefault(side => piece.Faces.All(face => face.Side != side)), null, [], [])],
    });

    public static Course WithoutFace(Course course, string faceId) => ProjectEdits.WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces.Select(piece => piece with { Faces = [.. piece.Faces.Where(face => face.Id != faceId)] })],
    });

    /// <summary>Adds an opening that is measured by itself.</summary>
    public static Course WithOpening(Course course, string faceId, FreshIds fresh) => ProjectEdits.WithFace(course, faceId, face => face with
    {
        Openings = [.. face.Openings, NewOpening.Of(fresh.Next(), course.Designs[0].Id)],
    });

    /// <summary>Adds a run of two faces, from left to right.</summary>
    public static Course WithRun(Course course, string left, string right, FreshIds fresh) => ProjectEdits.WithProject(course, project => project with
    {
        Runs = [.. project.Runs, new(fresh.Next(), [new RunFace(left), new RunFace(right)])],
    });

    public static Course WithoutRun(Course course, string runId) => ProjectEdits.WithProject(course, project => project with
    {
        Runs = [.. project.Runs.Where(run => run.Id != runId)],
    });

    public static Course WithItem(Course course, string runId, int index, RunItem item) =>
        WithItems(course, runId, items => items.Select((each, at) => at == index ? item : each));

    public static Course WithoutItem(Course course, string runId, int index) => WithItems(course, runId, items => items.Where((_, at) => at != index));

    public static Course Extended(Course course, string runId, RunItem item) => WithItems(course, runId, items => items.Append(item));

    /// <summary>A filler as a new one begins: 3 in or 75 mm, to be measured.</summary>
    public static RunFiller UsualFiller(LengthUnit unit)
    {
        var text = unit == LengthUnit.Inch ? "3" : "75";
        return new(new(text, LengthReader.ReadOwn(text, unit)));
    }

    private static Course WithItems(Course course, string runId, Func<IReadOnlyList<RunItem>, IEnumerable<RunItem>> edit) => ProjectEdits.WithProject(course, project => project with
    {
        Runs = [.. project.Runs.Select(run => run.Id == runId ? run with { Items = [.. edit(run.Items)] } : run)],
    });
}
