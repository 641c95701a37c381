using Stilewright.Measure;
using Stilewright.Web.Desk;
using Stilewright.Web.Shell;

namespace Stilewright.Web.Drawings;

/// <summary>Leads from a given figure to where it was entered.</summary>
public static class GivenPlace
{
    /// <returns>The address of the page, with the field; null where no page enters it.</returns>
    public static string? AddressOf(Origin origin, ProjectDesk desk)
    {
        var (course, bench) = (desk.Course.Course.Id, desk.Project!.Project.Bench);
        var steps = origin.Path.Split('/');
        var id = steps[0];
        var isOverride = steps.Contains("overrides");
        return origin.Kind switch
        {
            // A front without an opening is entered beside the sizes.
            OriginKind.Opening when LooseFrontEdits.Front(desk.Saved, id) is not null => $"{WorkStep.Size.AddressFor(course, bench)}#{Uri.EscapeDataString(id)}",
            OriginKind.Shipped or OriginKind.Standard => $"/courses/{course}/standard#{Uri.EscapeDataString(origin.Path)}",
            OriginKind.Design => $"/courses/{course}/designs?design={Uri.EscapeDataString(steps[1])}",
            OriginKind.Course => $"/courses/{course}",
            OriginKind.Opening when isOverride => $"{WorkStep.Size.AddressFor(course, bench)}?opening={Uri.EscapeDataString(id)}",
            OriginKind.Project when isOverride => BenchSettings.AddressFor(course, bench),
            OriginKind.Opening => $"{WorkStep.Measure.AddressFor(course, bench)}?opening={Uri.EscapeDataString(id)}",
            OriginKind.Project => WorkStep.Measure.AddressFor(course, bench),
            OriginKind.Leaf => $"{WorkStep.Size.AddressFor(course, bench)}?opening={Uri.EscapeDataString(id)}",
            _ => null,
        };
    }
}
