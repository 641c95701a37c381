using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Wording;

namespace Stilewright.Drawing.Patterns;

/// <summary>Finds arched parts by the names they are asked for.</summary>
public static class ArchedParts
{
    /// <summary>All of a course, leaf by leaf.</summary>
    public static IEnumerable<ArchedPart> Of(Breakdown breakdown) =>
        from project in breakdown.Projects
        from leaf in project.Fronts.SelectMany(front => front.Leaves)
        where leaf.Parts.Any(part => part.Arch is not null)
        let detail = LeafDetail.Of(breakdown.Course, project, leaf)
        from part in detail.Curves.Rails.Select(rail => rail.Rail).Concat(detail.Curves.Panels.Select(panel => panel.Panel))
        select new ArchedPart(project, leaf, detail, part);

    /// <summary>The arched part of that name, or all of the leaf of that name.</summary>
    public static Found<IReadOnlyList<ArchedPart>> Find(Breakdown breakdown, string typed)
    {
        ArchedPart[] all = [.. Of(breakdown)];
        ArchedPart[] found = [.. all.Where(each => PlaceName.Means(typed, each.Leaf.Path, each.Leaf.Label) || PlaceName.Means(typed, each.Part.Path, each.Part.Label))];
        if (found.Length > 0)
            return new Found<IReadOnlyList<ArchedPart>>.There(found);
        if (all.Length == 0)
            return new Found<IReadOnlyList<ArchedPart>>.Missing("No leaf of this course has an arch, so that there is no pattern to print.");
        var known = breakdown.Leaves.Any(leaf => PlaceName.Means(typed, leaf.Path, leaf.Label)) || breakdown.Parts.Any(part => PlaceName.Means(typed, part.Path, part.Label));
        var names = all.SelectMany(each => new[] { each.Leaf.Label, each.Leaf.Path, each.Part.Label, each.Part.Path });
        return new Found<IReadOnlyList<ArchedPart>>.Missing(
            $"{(known ? $"{typed} has no arch" : $"There is no leaf or part {typed} in this course")}. {PlaceName.Suggest(typed, names)}".TrimEnd());
    }
}
