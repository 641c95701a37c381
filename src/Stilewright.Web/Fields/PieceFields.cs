using System.Globalization;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Fields;

/// <summary>What is typed about pieces and runs, as fields.</summary>
public static class PieceFields
{
    public static WordField<Course> Name(string pieceId) => new($"{pieceId}/name", "piece",
        course => course.Projects.SelectMany(project => project.Pieces).FirstOrDefault(piece => piece.Id == pieceId)?.Name,
        (course, words) => ProjectEdits.WithPiece(course, pieceId, piece => piece with { Name = words ?? piece.Name }))
    {
        IsOptional = false,
    };

    /// <summary>The visible width of a filler in a run.</summary>
    public static LengthField Filler(string runId, int index) => new(
        string.Create(CultureInfo.InvariantCulture, $"{runId}/items/{index}/width"), "filler, visible width",
        course => course.Projects.SelectMany(project => project.Runs).FirstOrDefault(run => run.Id == runId)?.Items.ElementAtOrDefault(index) is RunFiller filler ? filler.Width : null,
        (course, entry) => entry is { } width ? PieceEdits.WithItem(course, runId, index, new RunFiller(width)) : course)
    {
        IsOptional = false,
    };
}
