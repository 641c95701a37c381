using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Fields;

/// <summary>The shelves behind an opening, as fields.</summary>
public static class ShelfFields
{
    /// <param name="index">Of the shelf, from 0.</param>
    public static LengthField Height(string openingId, int index) => new(FormattableString.Invariant($"{openingId}/shelves/{index}/height"), FormattableString.Invariant($"shelf {index + 1}, its upper face from the bottom"),
        course => At(course, openingId, index)?.Height, (course, entry) => entry is { } height ? With(course, openingId, index, shelf => shelf with { Height = height }) : course)
    {
        IsOptional = false,
    };

    public static LengthField Thickness(string openingId, int index) => new(FormattableString.Invariant($"{openingId}/shelves/{index}/thickness"), FormattableString.Invariant($"shelf {index + 1}, thickness"),
        course => At(course, openingId, index)?.Thickness, (course, entry) => With(course, openingId, index, shelf => shelf with { Thickness = entry }))
    {
        Otherwise = "its upper face alone",
    };

    /// <summary>Where one more shelf goes at first, to be changed: halfway between the highest there is and the top, on whole inches or centimetres.</summary>
    /// <param name="height">Of the opening; null where it is not known yet.</param>
    public static LengthEntry Next(Opening opening, LengthUnit unit, Length? height)
    {
        var step = unit == LengthUnit.Inch ? 1.Inches : 10.Millimetres;
        var top = height ?? (unit == LengthUnit.Inch ? 24.Inches : 600.Millimetres);
        var highest = opening.Shelves.Select(shelf => shelf.Height.Value).DefaultIfEmpty().Max();
        var place = Length.Greatest(((highest + top) / 2).OnStep(step, StepDirection.Nearest), step);
        return new(new LengthFormat(unit).Print(place), place);
    }

    private static Shelf? At(Course course, string openingId, int index) =>
        ProjectEdits.Opening(course, openingId) is { } opening && index < opening.Shelves.Count ? opening.Shelves[index] : null;

    private static Course With(Course course, string openingId, int index, Func<Shelf, Shelf> edit) => ProjectEdits.WithOpening(course, openingId, opening => opening with
    {
        Shelves = [.. opening.Shelves.Select((shelf, at) => at == index ? edit(shelf) : shelf)],
    });
}
