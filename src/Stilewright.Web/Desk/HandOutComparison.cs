using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Prints;

namespace Stilewright.Web.Desk;

/// <summary>Compares prints with a course as it is now; what they have in common is worked out once.</summary>
public sealed class HandOutComparison(OpenCourse now)
{
    private readonly Dictionary<Breakdown, Revisions> revisions = new(ReferenceEqualityComparer.Instance);
    private readonly Breakdown whole = now.Whole;

    /// <summary>What of a print no longer holds.</summary>
    /// <param name="then">A print of this course.</param>
    public Differences Since(HandedOut then)
    {
        ArgumentNullException.ThrowIfNull(then);
        // One bench stands under the standard it is kept on, as its packet did.
        var breakdown = then is { Extent: not HandedOutExtent.WholeCourse, Projects: [var one] } && now.WithId(one.Id) is { } project ? project.Breakdown : whole;
        if (!revisions.TryGetValue(breakdown, out var known))
            revisions[breakdown] = known = Fingerprint.Of(breakdown);
        return Differences.Since(then, breakdown, known, ProgramVersion.Text);
    }

    /// <summary>What of a print no longer holds at one bench.</summary>
    /// <param name="projectId">A project that the print told of.</param>
    public Differences Since(HandedOut then, string projectId)
    {
        ArgumentNullException.ThrowIfNull(then);
        return Since(then with
        {
            Extent = then.Extent == HandedOutExtent.Parts ? HandedOutExtent.Parts : HandedOutExtent.Benches,
            Projects = [.. then.Projects.Where(project => project.Id == projectId)],
        });
    }
}
