using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>How many hinges a leaf gets: the larger of what its height and its weight ask for.</summary>
/// <param name="Count">What it gets.</param>
/// <param name="ByTable">What the table says; null where it tells nothing.</param>
/// <param name="ByHeight">The row of the height; null where the table has none for it.</param>
/// <param name="ByWeight">The row of the weight; null where the weight is not known or the table has none for it.</param>
/// <param name="IsBeyond">Whether the leaf is higher or heavier than the last row.</param>
public sealed record HingeNumber(Worked Count, Worked? ByTable, FromTable? ByHeight, FromTable? ByWeight, bool IsBeyond)
{
    private const int Fewest = 2;

    // Exactly, by definition of the international pound.
    private static readonly Fraction KilogramsPerPound = new(45359237, 100000000);

    /// <param name="along">The length of the hinge edge.</param>
    /// <param name="across">The size of the leaf away from its hinges.</param>
    /// <param name="weight">In pounds; null where it is not known.</param>
    /// <param name="standard">It may give a number of its own.</param>
    public static HingeNumber Of(HingeCounts? table, Worked along, Worked across, Worked? weight, StandardInForce standard)
    {
        var (byHeight, byWeight, isBeyond) = table is null ? (null, null, false) : Rows(table, along, weight);
        Worked? byTable = (byHeight, byWeight) switch
        {
            (null, null) => null,
            ({ } one, null) => one,
            (null, { } other) => other,
            ({ } one, { } other) => new Greatest([one, other]),
        };
        if (byTable is not null && table!.Widest is { } widest && across.Length > widest.Value)
            byTable = new Chosen("the leaf is wider than the table is made for", byTable + new Number(1));
        byTable = byTable?.As("number of hinges by the table", "hinge/count.table");
        var (asked, origin) = standard.Find(Settings.HingeNumber);
        Worked count = asked.Text == Settings.ByTable
            ? byTable ?? new Number(Fewest)
            : new Given("hinge/count.set", "number of hinges asked for", Dimension.Count, int.Parse(asked.Text, System.Globalization.CultureInfo.InvariantCulture), origin);
        return new(count.As("number of hinges", "hinge/count"), byTable, byHeight, byWeight, isBeyond);
    }

    private static (FromTable? ByHeight, FromTable? ByWeight, bool IsBeyond) Rows(HingeCounts table, Worked along, Worked? weight)
    {
        var high = table.ByHeight.FirstOrDefault(row => along.Length <= row.To.Value) ?? (table.ByHeight.Count == 0 ? null : table.ByHeight[^1]);
        var scaled = weight is null ? (Fraction?)null : table.Weights == WeightUnit.Kilogram ? weight.Amount * KilogramsPerPound : weight.Amount;
        var heavy = scaled is not { } value ? null : table.ByWeight.FirstOrDefault(row => value < row.Below) ?? (table.ByWeight.Count == 0 ? null : table.ByWeight[^1]);
        var isBeyond = high is not null && along.Length > high.To.Value || heavy is not null && scaled >= heavy.Below;
        return (
            high is null ? null : Row("hinges by height", $"to {high.To.Text}", high.Source, high.Count),
            heavy is null ? null : Row("hinges by weight", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"below {heavy.Below} {(table.Weights == WeightUnit.Kilogram ? "kg" : "lb")}"), heavy.Source, heavy.Count),
            isBeyond);

        FromTable Row(string label, string row, string? source, int count) => new(label, table.Name, row,
            (source ?? table.Source) is { } text ? Source.Published(text) : Source.Shop, Dimension.Count, count);
    }
}
