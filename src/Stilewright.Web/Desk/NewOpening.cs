using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>An opening that is still to be measured.</summary>
public static class NewOpening
{
    /// <summary>Adds an opening to the first face of a project: one overlay door of the first design, nothing read yet.</summary>
    /// <param name="course">With the one project.</param>
    /// <param name="whole">With all, whose ids are taken.</param>
    /// <param name="id">Of the new opening.</param>
    public static Course In(Course course, Course whole, out string id)
    {
        var made = CourseIds.FreshFor(whole).Next();
        id = made;
        var face = course.Projects[0].Pieces[0].Faces[0].Id;
        return ProjectEdits.WithFace(course, face, there => there with
        {
            Openings = [.. there.Openings, Of(made, course.Designs[0].Id)],
        });
    }

    /// <summary>One overlay door, hinged left.</summary>
    public static Opening Of(string id, string designId) => new(
        id, new DoorFilling(Mount.Overlay, [new(HingeSide.Left, null, null, null, SettingValues.None)], designId),
        null, null, null, null, null, null, SettingValues.None);
}
