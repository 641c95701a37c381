using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Fields;

/// <summary>What is typed about a front that closes no opening, as fields.</summary>
public static class LooseFrontFields
{
    public static WordField<Course> Name(string id) => new($"{id}/name", "what it is called",
        course => LooseFrontEdits.Front(course, id)?.Name,
        (course, words) => LooseFrontEdits.WithFront(course, id, front => front switch
        {
            StatedFront stated => stated with { Name = words },
            AppliedEnd end => end with { Name = words },
            _ => front,
        }));

    /// <summary>The sizes that are entered of it.</summary>
    public static IReadOnlyList<LengthField> Sizes(LooseFront front) => front switch
    {
        StatedFront =>
        [
            Needed<StatedFront>(front.Id, "width", "width", stated => stated.Width, (stated, entry) => stated with { Width = entry }),
            Needed<StatedFront>(front.Id, "height", "height", stated => stated.Height, (stated, entry) => stated with { Height = entry }),
        ],
        AppliedEnd end =>
        [
            Needed<AppliedEnd>(front.Id, "sideWidth", "side, width with the frame's edge", each => each.SideWidth, (each, entry) => each with { SideWidth = entry }),
            Needed<AppliedEnd>(front.Id, "sideHeight", "side, height to the floor", each => each.SideHeight, (each, entry) => each with { SideHeight = entry }),
            Needed<AppliedEnd>(front.Id, "frameEdge", "visible edge of the face frame", each => each.FrameEdge, (each, entry) => each with { FrameEdge = entry }),
            new($"{front.Id}/toeHeight", "height of the toe space",
                course => (LooseFrontEdits.Front(course, front.Id) as AppliedEnd)?.ToeHeight,
                (course, entry) => LooseFrontEdits.WithFront(course, front.Id, each => each is AppliedEnd one ? one with { ToeHeight = entry } : each))
            {
                IsOptional = end.Reaches == EndReach.Floor,
                Otherwise = "none",
            },
        ],
        _ => [],
    };

    private static LengthField Needed<T>(string id, string key, string label, Func<T, LengthEntry> get, Func<T, LengthEntry, T> set)
        where T : LooseFront => new(
        $"{id}/{key}", label,
        course => LooseFrontEdits.Front(course, id) is T front ? get(front) : null,
        (course, entry) => entry is { } length ? LooseFrontEdits.WithFront(course, id, front => front is T one ? set(one, length) : front) : course)
        {
            IsOptional = false,
        };
}
