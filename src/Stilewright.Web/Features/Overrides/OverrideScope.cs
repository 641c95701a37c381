using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.Overrides;

/// <summary>A place that may differ from the house standard.</summary>
/// <param name="Id">The path of the course, project, opening or leaf.</param>
/// <param name="Words">Such as "this opening".</param>
/// <param name="Get">What differs there.</param>
/// <param name="Set">The course with something else that differs there.</param>
/// <param name="Above">What holds without it.</param>
/// <param name="Settings">What may differ there.</param>
public sealed record OverrideScope(
    string Id, string Words, Func<Course, SettingValues> Get, Func<Course, SettingValues, Course> Set, StandardInForce Above, IReadOnlyList<Setting> Settings)
{
    private static readonly Setting[] Overridable = [.. Shop.Settings.All.Where(setting => setting.Overridable)];

    // A front without an opening meets no frame and no other front.
    private static readonly Setting[] OfFronts = [.. Overridable.Where(setting => setting.OfLeaf || setting == Shop.Settings.Step || setting == Shop.Settings.LightRemainder)];

    /// <summary>All benches of a course.</summary>
    public static OverrideScope OfCourse(Course course, HouseStandard standard) => new(
        course.Id, "this course", there => there.Overrides, (there, values) => there with { Overrides = values }, new(standard), Overridable);

    /// <summary>One bench.</summary>
    /// <param name="course">With this project alone.</param>
    public static OverrideScope OfProject(Course course, HouseStandard standard) => new(
        course.Projects[0].Id, "this bench", there => there.Projects[0].Overrides,
        (there, values) => ProjectEdits.WithProject(there, project => project with { Overrides = values }), OfAllBenches(course, standard), Overridable);

    /// <summary>One opening.</summary>
    /// <param name="course">With one project.</param>
    public static OverrideScope OfOpening(Course course, HouseStandard standard, Opening opening) => new(
        opening.Id, "this opening", there => ProjectEdits.Opening(there, opening.Id)?.Overrides ?? SettingValues.None,
        (there, values) => ProjectEdits.WithOpening(there, opening.Id, each => each with { Overrides = values }),
        OfBench(course, standard), Overridable);

    /// <summary>One front that closes no opening; what can differ is about its leaf.</summary>
    /// <param name="course">With one project.</param>
    public static OverrideScope OfFront(Course course, HouseStandard standard, LooseFront front) => new(
        front.Id, "this front", there => LooseFrontEdits.Front(there, front.Id)?.Overrides ?? SettingValues.None,
        (there, values) => LooseFrontEdits.WithFront(there, front.Id, each => each switch
        {
            StatedFront stated => stated with { Overrides = values },
            AppliedEnd end => end with { Overrides = values },
            _ => throw new InvalidOperationException("A loose front is of stated size or an applied end."),
        }),
        OfBench(course, standard), OfFronts);

    /// <summary>One leaf of the doors on an opening.</summary>
    /// <param name="course">With one project.</param>
    /// <param name="index">Of the leaf, from the left.</param>
    public static OverrideScope OfLeaf(Course course, HouseStandard standard, Opening opening, int index, string name) => new(
        FormattableString.Invariant($"{opening.Id}/leaf/{index}"), name,
        there => ProjectEdits.Opening(there, opening.Id)?.Filling is DoorFilling doors && index < doors.Leaves.Count ? doors.Leaves[index].Overrides : SettingValues.None,
        (there, values) => ProjectEdits.WithOpening(there, opening.Id, each => each.Filling is not DoorFilling doors ? each : each with
        {
            Filling = doors with { Leaves = [.. doors.Leaves.Select((leaf, at) => at == index ? leaf with { Overrides = values } : leaf)] },
        }),
        OfBench(course, standard).With(OriginKind.Opening, opening.Id, opening.Overrides), [.. Overridable.Where(setting => setting.OfLeaf)]);

    private static StandardInForce OfAllBenches(Course course, HouseStandard standard) =>
        new StandardInForce(standard).With(OriginKind.Course, course.Id, course.Overrides);

    private static StandardInForce OfBench(Course course, HouseStandard standard) =>
        OfAllBenches(course, standard).With(OriginKind.Project, course.Projects[0].Id, course.Projects[0].Overrides);
}
