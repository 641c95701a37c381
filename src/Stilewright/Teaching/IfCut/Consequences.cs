using Stilewright.Doors;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.IfCut;

/// <summary>Finds what would happen were the parts cut as a maker's list says.</summary>
/// <remarks>
/// A leaf is put together as one would do it without looking: stiles stand where the longest rail holds them, panels lie in the middle.
/// Sizes, grooves and places are those of the breakdown; only the differences are the list's. Common practice, no source.
/// </remarks>
public static class Consequences
{
    /// <summary>What comes of every wrong figure of the list, leaf by leaf; nothing of a right list.</summary>
    /// <param name="project">The breakdown that the list was checked against.</param>
    public static IReadOnlyList<Consequence> Of(CheckedList found, ProjectBreakdown project)
    {
        ArgumentNullException.ThrowIfNull(found);
        return
        [
            .. from front in project.Fronts
               from leaf in front.Leaves
               where !leaf.IsWithheld
               from consequence in new CutLeaf(found, front, leaf).Find()
               select consequence,
        ];
    }
}
