using System.Globalization;
using Stilewright.Doors;
using Stilewright.Hanging;

namespace Stilewright.Wording;

/// <summary>The part of a course that was asked for.</summary>
/// <param name="IsWhole">Whether it is the whole course.</param>
public sealed record Selection(Breakdown Breakdown, IReadOnlyList<ChosenFront> Fronts, bool IsWhole)
{
    /// <summary>The projects that the chosen fronts belong to, each once.</summary>
    public IEnumerable<ProjectBreakdown> Projects => Fronts.Select(front => front.Project).Distinct();

    public IEnumerable<SizedLeaf> Leaves => Fronts.SelectMany(front => front.Leaves);

    /// <summary>Labels of chosen leaves that have no parts because they cannot be built.</summary>
    public IReadOnlyList<string> Withheld => [.. Leaves.Where(leaf => leaf.IsWithheld).Select(leaf => leaf.Label)];

    /// <summary>Those of the hung leaves that were asked for.</summary>
    public IEnumerable<HungLeaf> Hung(HangingPlan plan)
    {
        var paths = Leaves.Select(leaf => leaf.Path).ToHashSet();
        return plan.Leaves.Where(leaf => paths.Contains(leaf.Leaf.Path));
    }

    /// <summary>Every bench.</summary>
    public static Selection Whole(Breakdown breakdown) => new(breakdown, [.. AllOf(breakdown, null)], true);

    /// <param name="bench">Null for every bench.</param>
    /// <param name="leaf">A label in any spelling, or a path; null for every leaf.</param>
    public static Found<Selection> Of(Breakdown breakdown, int? bench, string? leaf)
    {
        ArgumentNullException.ThrowIfNull(breakdown);
        if (bench is { } number && breakdown.Projects.All(project => project.Project.Bench != number))
        {
            var benches = breakdown.Projects.Select(project => project.Project.Bench).Distinct().Order()
                .Select(known => known.ToString(CultureInfo.InvariantCulture));
            return new Found<Selection>.Missing($"There is no bench {number} in this course. Benches: {string.Join(", ", benches)}.");
        }

        ChosenFront[] fronts = [.. AllOf(breakdown, bench)];
        if (leaf is null)
            return new Found<Selection>.There(new(breakdown, fronts, bench is null));

        ChosenFront[] chosen =
        [
            .. fronts.Select(front => front with { Leaves = [.. front.Leaves.Where(each => PlaceName.Means(leaf, each.Path, each.Label))] })
                .Where(front => front.Leaves.Count > 0),
        ];
        if (chosen.Length > 0)
            return new Found<Selection>.There(new(breakdown, chosen, false));
        var names = fronts.SelectMany(front => front.Leaves).SelectMany(each => new[] { each.Path, each.Label });
        return new Found<Selection>.Missing($"There is no leaf {leaf} here. {PlaceName.Suggest(leaf, names)}".TrimEnd());
    }

    private static IEnumerable<ChosenFront> AllOf(Breakdown breakdown, int? bench) =>
        from project in breakdown.Projects
        where bench is null || project.Project.Bench == bench
        from piece in project.Pieces
        from front in piece.Fronts
        select new ChosenFront(project, piece, front, front.Leaves);
}

/// <summary>A front with those of its leaves that were asked for.</summary>
public sealed record ChosenFront(ProjectBreakdown Project, PieceBreakdown Piece, SizedFront Front, IReadOnlyList<SizedLeaf> Leaves);
