using Fractions;
using Stilewright.Doors;

namespace Stilewright.Wood;

/// <summary>What several leaves weigh together.</summary>
/// <param name="Leaves">Those that have parts.</param>
/// <param name="Pounds">Of all parts whose density is known.</param>
/// <param name="Area">Of one face of each, in².</param>
/// <param name="Unknown">Materials without a density, each once; their parts are left out.</param>
public sealed record WeightTotal(int Leaves, Fraction Pounds, Fraction Area, IReadOnlyList<string> Unknown)
{
    public static WeightTotal Of(IEnumerable<SizedLeaf> leaves)
    {
        var weights = leaves.Where(leaf => leaf.Parts.Count > 0).Select(LeafWeight.Of).ToList();
        return new(weights.Count, weights.Aggregate(Fraction.Zero, (sum, each) => sum + each.Pounds), weights.Aggregate(Fraction.Zero, (sum, each) => sum + each.Area.Amount),
            [.. weights.SelectMany(each => each.Unknown).Distinct()]);
    }
}
