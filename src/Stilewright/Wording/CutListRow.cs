using Stilewright.Doors;

namespace Stilewright.Wording;

/// <summary>Identical parts, with whose they are.</summary>
/// <param name="Benches">Numbers of the benches, ascending.</param>
/// <param name="Projects">Names of the projects.</param>
/// <param name="Names">What the parts are called; identical parts may have several names.</param>
public sealed record CutListRow(IReadOnlyList<int> Benches, IReadOnlyList<string> Projects, IReadOnlyList<string> Names, CutListLine Line)
{
    public Part Part => Line.Part;

    /// <summary>All their names.</summary>
    public string Name => string.Join(" / ", Names);

    public string Labels => string.Join(" ", Line.Parts.Select(part => part.Label));

    /// <param name="owner">The project of every part, by its path.</param>
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
