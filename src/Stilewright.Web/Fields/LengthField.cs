using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Web.Fields;

/// <summary>A length that is entered on a page: where it lives in the course, and how it is put back.</summary>
/// <param name="Name">The same on every screen and after a reload, such as <c>hall-doors/readings/widthTop</c>.</param>
/// <param name="Label">What people call it.</param>
/// <param name="Get">What the course has; null where nothing is entered.</param>
/// <param name="Set">The course with another value; null takes it out.</param>
public sealed record LengthField(string Name, string Label, Func<Course, LengthEntry?> Get, Func<Course, LengthEntry?, Course> Set)
{
    /// <summary>Whether the field may be left empty.</summary>
    public bool IsOptional { get; init; } = true;

    /// <summary>Said in the empty field, such as the value that holds without it.</summary>
    public string? Otherwise { get; init; }
}
