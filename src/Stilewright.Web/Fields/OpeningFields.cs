using System.Globalization;
using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Fields;

/// <summary>What else is entered about an opening, as fields.</summary>
public static class OpeningFields
{
    public static WordField<Course> Name(string openingId) => new($"{openingId}/name", "what it is called",
        course => ProjectEdits.Opening(course, openingId)?.Name, (course, words) => ProjectEdits.WithOpening(course, openingId, opening => opening with { Name = words }));

    /// <summary>The number chalked on its parts.</summary>
    public static WordField<Course> Number(string openingId) => new($"{openingId}/number", "number chalked on its parts",
        course => ProjectEdits.Opening(course, openingId)?.Number?.ToString(CultureInfo.InvariantCulture),
        (course, words) => ProjectEdits.WithOpening(course, openingId, opening => opening with { Number = words is null ? null : int.Parse(words, CultureInfo.InvariantCulture) }))
    {
        Otherwise = "its place among the fronts",
        Check = words => int.TryParse(words, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= 999
            ? null : $"\"{words}\" is no number of a front: type a whole number from 1 to 999, or nothing.",
    };

    public static WordField<Course> Column(string openingId) => new($"{openingId}/column", "kept in line with all of the column",
        course => ProjectEdits.Opening(course, openingId)?.Column, (course, words) => ProjectEdits.WithOpening(course, openingId, opening => opening with { Column = words }))
    {
        Otherwise = "no column",
    };

    public static LengthField Bead(string openingId) => new($"{openingId}/bead", "bead round the inside",
        course => ProjectEdits.Opening(course, openingId)?.Bead, (course, entry) => ProjectEdits.WithOpening(course, openingId, opening => opening with { Bead = entry }))
    {
        Otherwise = "none",
    };

    /// <summary>Width of the frame member on one edge of an opening that is measured without a layout.</summary>
    public static LengthField Member(string openingId, Side side) => new($"{openingId}/beside/{side.ToString().ToLowerInvariant()}/member", "member of the frame there",
        course => Beyond(ProjectEdits.Opening(course, openingId)?.Beside, side)?.Member,
        (course, entry) => entry is not { } width ? course : ProjectEdits.WithOpening(course, openingId, opening =>
            Beyond(opening.Beside, side) is { } there ? opening with
            {
                Beside = With(opening.Beside, side, there switch
                {
                    NextOpening next => next with { Member = width },
                    FrameEdge edge => edge with { Member = width },
                    WallBeyond wall => wall with { Member = width },
                    _ => there,
                })
            } : opening))
    {
        IsOptional = false,
    };

    public static Beyond? Beyond(Surroundings? beside, Side side) => side switch
    {
        Side.Left => beside?.Left,
        Side.Right => beside?.Right,
        Side.Top => beside?.Top,
        _ => beside?.Bottom,
    };

    /// <param name="there">Null where nothing is known.</param>
    public static Surroundings? With(Surroundings? beside, Side side, Beyond? there)
    {
        var all = beside ?? new Surroundings();
        all = side switch
        {
            Side.Left => all with { Left = there },
            Side.Right => all with { Right = there },
            Side.Top => all with { Top = there },
            _ => all with { Bottom = there },
        };
        return all == new Surroundings() ? null : all;
    }
}
