using Stilewright.Doors;

namespace Stilewright.Cli.Pages;

/// <summary>Over how much identical parts are gathered.</summary>
internal enum CutListBy
{
    Leaf,
    Bench,
    Course,
}

/// <summary>One list of parts to cut.</summary>
/// <param name="Heading">What it is for.</param>
internal sealed record CutListGroup(string Heading, IReadOnlyList<CutListRow> Rows)
{
    public static IReadOnlyList<CutListGroup> Of(Selection selection, CutListBy by)
    {
        Dictionary<string, ProjectBreakdown> owner = [];
        foreach (var front in selection.Fronts)
        {
            foreach (var part in front.Leaves.SelectMany(leaf => leaf.Parts))
                owner.TryAdd(part.Path, front.Project);
        }

        CutListGroup Gather(string heading, IEnumerable<Part> parts) => new(heading, [.. CutList.Of(parts).Select(line => CutListRow.Of(line, owner))]);

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

/// <summary>Identical parts, with whose they are.</summary>
/// <param name="Benches">Numbers of the benches, ascending.</param>
/// <param name="Projects">Names of the projects.</param>
/// <param name="Names">What the parts are called; identical parts may have several names.</param>
internal sealed record CutListRow(IReadOnlyList<int> Benches, IReadOnlyList<string> Projects, IReadOnlyList<string> Names, CutListLine Line)
{
    public Part Part => Line.Part;

    public string Name => string.Join(" / ", Names);

    public string Labels => string.Join(" ", Line.Parts.Select(part => part.Label));

    public static CutListRow Of(CutListLine line, IReadOnlyDictionary<string, ProjectBreakdown> owner)
    {
        ProjectBreakdown[] owners = [.. line.Parts.Select(part => owner[part.Path]).Distinct()];
        return new(
            [.. owners.Select(each => each.Project.Bench).Distinct().Order()],
            [.. owners.Select(each => each.Project.Name).Distinct()],
            [.. line.Parts.Select(part => part.Name).Distinct()],
            line);
    }
}
