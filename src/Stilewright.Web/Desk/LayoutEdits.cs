using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Web.Desk;

/// <summary>Edits of how a face frame is divided.</summary>
public static class LayoutEdits
{
    /// <summary>Gives a face a frame with one space, to be divided. Openings that were measured without one stay as they are.</summary>
    /// <param name="unit">The project's own.</param>
    public static Course WithFrame(Course course, string faceId, LengthUnit unit) => ProjectEdits.WithFace(course, faceId, face => face.Layout is not null ? face : face with
    {
        Layout = unit == LengthUnit.Inch
            ? new(Inches("36"), Inches("30"), new(Inches("1 1/2")), new(Inches("1 1/2")), Inches("1 1/2"), Inches("1 1/2"), new())
            : new(Millimetres("900"), Millimetres("760"), new(Millimetres("38")), new(Millimetres("38")), Millimetres("38"), Millimetres("38"), new()),
    });

    /// <summary>Divides a space. What it held goes to the first of the new ones.</summary>
    public static Course Divide(Course course, string faceId, IReadOnlyList<int> place, bool sideBySide, int count, LengthUnit unit) =>
        ProjectEdits.WithSpace(course, faceId, place, space =>
        {
            var member = unit == LengthUnit.Inch ? Inches("1 1/2") : Millimetres("38");
            var division = new Division([space with { Size = null }, .. Enumerable.Range(1, count - 1).Select(_ => new Space())], member, []);
            return new(space.Size, null, sideBySide ? division : null, sideBySide ? null : division);
        });

    /// <summary>Puts one space more at the end of a division.</summary>
    public static Course Extend(Course course, string faceId, IReadOnlyList<int> place) => ProjectEdits.WithSpace(course, faceId, place, space => space with
    {
        Columns = space.Columns is { } columns ? columns with { Spaces = [.. columns.Spaces, new()], Members = [] } : null,
        Rows = space.Rows is { } rows ? rows with { Spaces = [.. rows.Spaces, new()], Members = [] } : null,
    });

    /// <summary>Takes the division away; the first opening in it stays.</summary>
    public static Course Join(Course course, string faceId, IReadOnlyList<int> place) =>
        ProjectEdits.WithSpace(course, faceId, place, space => new(space.Size, First(space)));

    public static Course Open(Course course, string faceId, IReadOnlyList<int> place, FreshIds fresh) =>
        ProjectEdits.WithSpace(course, faceId, place, space => new(space.Size, NewOpening.Of(fresh.Next(), course.Designs[0].Id)));

    /// <summary>Leaves a space open: no door and no drawer.</summary>
    public static Course Clear(Course course, string faceId, IReadOnlyList<int> place) =>
        ProjectEdits.WithSpace(course, faceId, place, space => new(space.Size));

    private static Opening? First(Space space) =>
        space.Opening ?? (space.Columns ?? space.Rows)?.Spaces.Select(First).FirstOrDefault(opening => opening is not null);

    private static LengthEntry Inches(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));

    private static LengthEntry Millimetres(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Millimetre));
}
