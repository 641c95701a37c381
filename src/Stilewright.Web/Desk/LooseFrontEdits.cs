using Stilewright.Documents;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>Edits of fronts that close no opening.</summary>
public static class LooseFrontEdits
{
    public static Course WithFront(Course course, string id, Func<LooseFront, LooseFront> edit) => ProjectEdits.WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces.Select(piece => piece with { Faces = [.. piece.Faces.Select(face => face with
        {
            Fronts = [.. face.Fronts.Select(front => front.Id == id ? edit(front) : front)],
        })] })],
    });

    public static Course Without(Course course, string id) => ProjectEdits.WithProject(course, project => project with
    {
        Pieces = [.. project.Pieces.Select(piece => piece with { Faces = [.. piece.Faces.Select(face => face with
        {
            Fronts = [.. face.Fronts.Where(front => front.Id != id)],
        })] })],
        Accepted = [.. project.Accepted.Where(accepted => accepted.Place.Split('/')[0] != id)],
    });

    public static LooseFront? Front(Course course, string id) => All(course).FirstOrDefault(front => front.Id == id);

    public static IEnumerable<LooseFront> All(Course course) =>
        course.Projects.SelectMany(project => project.Pieces).SelectMany(piece => piece.Faces).SelectMany(face => face.Fronts);

    /// <summary>Adds a front of stated size to the first face, to be measured.</summary>
    public static Course WithStated(Course course, FreshIds fresh, LengthUnit unit) => Added(course, new StatedFront(
        fresh.Next(), Entry(unit, "12", "300"), Entry(unit, "24", "600"), course.Designs[0].Id, null, null, SettingValues.None));

    /// <summary>Adds an applied end to the first face, to be measured.</summary>
    public static Course WithEnd(Course course, FreshIds fresh, LengthUnit unit) => Added(course, new AppliedEnd(
        fresh.Next(), Entry(unit, "24", "600"), Entry(unit, "34 1/2", "876"), Entry(unit, "3/4", "19"), course.Designs[0].Id, null, null, SettingValues.None));

    private static Course Added(Course course, LooseFront front) => ProjectEdits.WithFace(course, course.Projects[0].Pieces[0].Faces[0].Id, face => face with
    {
        Fronts = [.. face.Fronts, front],
    });

    private static LengthEntry Entry(LengthUnit unit, string inches, string millimetres)
    {
        var text = unit == LengthUnit.Inch ? inches : millimetres;
        return new(text, LengthReader.ReadOwn(text, unit));
    }
}
