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
               from consequence in Gathered([.. new CutLeaf(found, front, leaf).Find()])
               select consequence,
        ];
    }

    // What happens alike to parts of one size is one thing.
    private static List<Consequence> Gathered(IReadOnlyList<Consequence> all)
    {
        List<Consequence> gathered = [];
        foreach (var one in all)
        {
            var first = gathered.FindIndex(other => AreAlike(other, one));
            if (first < 0)
                gathered.Add(one);
            else
                gathered[first] = Both(gathered[first], one);
        }

        return [.. gathered.Select(one => one.Count == 1 ? one : one with { Words = $"{one.Words} The same goes for {string.Join(" and ", one.Parts.Skip(1).Select(part => part.Label))}." })];
    }

    private static bool AreAlike(Consequence one, Consequence other) =>
        one.Kind == other.Kind && one.Amount == other.Amount && one.Parts is [var part, ..] && other.Parts is [var single] && !one.Parts.Contains(single)
        && part.Kind == single.Kind && part.Arch == single.Arch && part.Finished.Width.Length == single.Finished.Width.Length && part.Finished.Length.Length == single.Finished.Length.Length
        && (one.Fit is null) == (other.Fit is null) && one.Fit?.IsAcross == other.Fit?.IsAcross && one.Fit?.Reach == other.Fit?.Reach
        && FiguresOf(one).SetEquals(FiguresOf(other))
        // One part cannot lie in two places.
        && other.Laid.All(laid => one.Laid.FirstOrDefault(each => each.Part == laid.Part) is not { } known || known == laid);

    private static HashSet<(ListMeasure, Measure.Length)> FiguresOf(Consequence one) => [.. one.Numbers.Select(number => (number.Measure, number.Difference))];

    private static Consequence Both(Consequence one, Consequence other) => one with
    {
        Count = one.Count + 1,
        Numbers = [.. one.Numbers.Union(other.Numbers)],
        Parts = [.. one.Parts, .. other.Parts],
        Laid = [.. one.Laid.Union(other.Laid)],
        Faults = [.. one.Faults.Union(other.Faults)],
    };
}
