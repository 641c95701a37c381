using System.Text.Json.Nodes;
using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Web.Desk;

/// <summary>One bench's project as it stands at one moment, with what follows from it.</summary>
/// <param name="Key">Of its document in the store.</param>
/// <param name="Head">The number of its newest revision.</param>
/// <param name="KeptOnStandard">The revision of the house standard it is kept on; null where it follows the newest.</param>
/// <param name="Tree">The project as files hold it; not to be changed.</param>
/// <param name="Course">The course with this project alone.</param>
public sealed record OpenProject(long Key, int Head, int? KeptOnStandard, JsonObject Tree, Course Course, HouseStandard Standard)
{
    private readonly Lazy<Breakdown> breakdown = new(() => Breakdown.Of(Course, Standard));

    public Project Project => Course.Projects[0];

    /// <summary>Sizes, parts and findings of this project; worked out when first asked for.</summary>
    public Breakdown Breakdown => breakdown.Value;

    public ProjectBreakdown Worked => Breakdown.Projects[0];
}
