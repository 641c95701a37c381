using Stilewright.Doors;

namespace Stilewright.Wording;

/// <summary>Over how much identical parts are gathered.</summary>
public enum CutListBy
{
    Leaf,
    Bench,
    Course,
}

/// <summary>The lists that were asked for.</summary>
public static class CutListGroups
{
    public static IReadOnlyList<CutListGroup> Of(Selection selection, CutListBy by)
    {
        var owner = CutListGroup.Owners(selection.Projects);
        CutListGroup Gather(string heading, IEnumerable<Part> parts) => CutListGroup.Of(heading, parts, owner);

        return by switch
        {
            CutListBy.Leaf => [.. selection.Leaves.Where(leaf => leaf.Parts.Count > 0).Select(leaf => Gather($"Leaf {leaf.Label}, {leaf.Name}", leaf.Parts))],
            CutListBy.Bench =>
            [
                .. selection.Fronts.GroupBy(front => front.Project).Select(group => Gather(
                    $"Bench {group.Key.Project.Bench}, {group.Key.Project.Name}",
                    group.SelectMany(front => front.Leaves).SelectMany(leaf => leaf.Parts))),
            ],
            _ => [Gather(selection.Breakdown.Course.Name, selection.Leaves.SelectMany(leaf => leaf.Parts))],
        };
    }
}
