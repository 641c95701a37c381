using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>The sizes of some items as they come out with a slip, in inches, off the cutting step.</summary>
/// <param name="Causes">What was missed.</param>
/// <param name="Sizes">Width and length of each item, in the order of the items.</param>
public sealed record PlantedSizes(IReadOnlyList<Cause> Causes, IReadOnlyList<(double Width, double Length)> Sizes)
{
    internal IReadOnlyList<Slip> Slips { get; init; } = [];

    /// <summary>How rare the slips are together: about 1 for one of the commonest, higher for rarer ones. Common practice, no source.</summary>
    public double Rareness => Slips.Sum(slip => slip.Cost);
}

/// <summary>Makes lists with mistakes in them, to practise on and to test the checker by.</summary>
public static class Planting
{
    /// <summary>The sizes of the items under each slip that can be made in their working; a slip that changes none of them is among these.</summary>
    public static IEnumerable<PlantedSizes> Of(ListKey key, IReadOnlyList<KeyItem> items, LengthUnit unit) =>
        Diagnosis.Possible(Told(items), FigurePool.Of(key, Told(items)), unit).Select(made => new PlantedSizes([made.Slip.Cause], Sizes(made.Values)) { Slips = [made.Slip] });

    /// <summary>The sizes of the items under two slips at once.</summary>
    public static PlantedSizes Both(ListKey key, IReadOnlyList<KeyItem> items, LengthUnit unit, PlantedSizes one, PlantedSizes other)
    {
        IReadOnlyList<Slip> slips = [.. one.Slips, .. other.Slips];
        return new([.. one.Causes, .. other.Causes], Sizes(Diagnosis.Together(Told(items), FigurePool.Of(key, Told(items)), unit, slips))) { Slips = slips };
    }

    private static List<ToldNumber> Told(IReadOnlyList<KeyItem> items) =>
        [.. items.SelectMany(item => new[] { item.Width, item.Length }.Select(right => new ToldNumber(right, item.Leaf, right.Amount.ToDouble(), [])))];

    private static (double, double)[] Sizes(IReadOnlyList<double> values) => [.. values.Chunk(2).Select(pair => (pair[0], pair[1]))];
}
