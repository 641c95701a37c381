using System.Globalization;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>The regions that ship, and the climates that the shop adds; its own come first.</summary>
/// <remarks>FPL-GTR-190 (2010), Fig. 13-1 and Table 13-2, interior woodwork: averages quoted second-hand, the ranges of single pieces from memory.</remarks>
public static class ClimateTable
{
    /// <summary>The region that holds where nobody names another: most areas of the United States.</summary>
    public const string Usual = "most-areas";

    private static readonly Dictionary<string, string> Ids = new()
    {
        ["Most areas of the United States"] = Usual,
        ["Dry southwestern area"] = "dry-southwest",
        ["Damp, warm coastal area"] = "damp-coast",
    };

    private static readonly Lazy<IReadOnlyList<Climate>> shipped = new(() =>
    [
        .. CsvTable.Read("interior-moisture.csv").Where(row => row["use"].StartsWith("interior", StringComparison.Ordinal)).Select(row => new Climate(
            Ids[row["region"]], $"{row["region"]}, indoors", Percent(row["piece_low_pct"]), Percent(row["piece_high_pct"]), null,
            $"average {row["avg_mc_pct"]} %: {row["source_avg"]}; range of single pieces: {row["source_range"]}")),
    ]);

    public static IReadOnlyList<Climate> Shipped => shipped.Value;

    /// <summary>Every climate that a standard knows, its own first.</summary>
    public static IReadOnlyList<Climate> Of(HouseStandard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return [.. standard.Climates, .. Shipped.Where(climate => standard.Climates.All(own => own.Id != climate.Id))];
    }

    public static Climate? Find(HouseStandard standard, string id) => Of(standard).FirstOrDefault(climate => climate.Id == id);

    private static NumberEntry Percent(string text) => new(text, int.Parse(text, CultureInfo.InvariantCulture));
}
