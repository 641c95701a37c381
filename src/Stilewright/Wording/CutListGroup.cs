using Stilewright.Doors;

namespace Stilewright.Wording;

/// <summary>One list of parts to cut.</summary>
/// <param name="Heading">What it is for.</param>
public sealed record CutListGroup(string Heading, IReadOnlyList<CutListRow> Rows)
{
    /// <param name="owner">The project of every part, by its path.</param>
    public static CutListGroup Of(string heading, IEnumerable<Part> parts, IReadOnlyDictionary<string, ProjectBreakdown> owner) =>
        new(heading, [.. CutList.Of(parts).Select(line => CutListRow.Of(line, owner))]);

    /// <summary>The project of every part, by its path.</summary>
    public static IReadOnlyDictionary<string, ProjectBreakdown> Owners(IEnumerable<ProjectBreakdown> projects)
    {
        Dictionary<string, ProjectBreakdown> owner = [];
        foreach (var project in projects)
        {
            foreach (var part in project.Fronts.SelectMany(front => front.Leaves).SelectMany(leaf => leaf.Parts))
                owner.TryAdd(part.Path, project);
        }

        return owner;
    }
}
