using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Wood;

namespace Stilewright.Hanging;

/// <summary>Every leaf of a course that is hung, with its hinges, and what is wrong with that.</summary>
public sealed record HangingPlan(IReadOnlyList<HungLeaf> Leaves, IReadOnlyList<Finding> Findings)
{
    /// <summary>A pure function of the course's sizes.</summary>
    /// <param name="weight">What a leaf weighs, in pounds; reckoned from its parts when absent. Where it gives null, hinges are numbered by height alone.</param>
    public static HangingPlan Of(Breakdown breakdown, Func<SizedLeaf, Worked?>? weight = null) => Of(breakdown.Course, breakdown.Projects, weight);

    internal static HangingPlan Of(Course course, IReadOnlyList<ProjectBreakdown> projects, Func<SizedLeaf, Worked?>? weight = null)
    {
        List<HungLeaf> leaves = [];
        List<Finding> findings = [];
        foreach (var project in projects)
            leaves.AddRange(new HangingBuilder(course, project, weight ?? Reckoned, findings).Build());
        return new(leaves, findings);
    }

    // Where the density of a part is not known, what is left would be too light.
    private static Worked? Reckoned(SizedLeaf leaf) => leaf.IsWithheld || LeafWeight.Of(leaf) is not { IsWhole: true, Weight: { } weight } ? null : weight;

    /// <summary>The leaves, those of a pair side by side: left and right of one front, else one alone.</summary>
    public IReadOnlyList<(HungLeaf Left, HungLeaf? Right)> InPairs
    {
        get
        {
            List<(HungLeaf, HungLeaf?)> pairs = [];
            foreach (var front in Leaves.GroupBy(leaf => leaf.Front.Path))
            {
                if (front.ToList() is [{ Leaf.Hinge: HingeSide.Left } left, { Leaf.Hinge: HingeSide.Right } right])
                    pairs.Add((left, right));
                else
                    pairs.AddRange(front.Select(leaf => (leaf, (HungLeaf?)null)));
            }

            return pairs;
        }
    }

    /// <summary>The boring sheets, those of a pair side by side.</summary>
    public IReadOnlyList<(BoringSheet Left, BoringSheet? Right)> SheetsInPairs =>
        [.. InPairs.Where(pair => pair.Left.Hinge.Cup is not null).Select(pair => (pair.Left.Sheet!, pair.Right?.Sheet))];
}
