using System.Globalization;
using Fractions;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>Moisture contents, %, of wood at making and over the year where it will stand.</summary>
/// <param name="Climate">Null where the one that is named is not known; the usual region then holds.</param>
/// <param name="Months">Moisture content in the middle of each month, January first.</param>
public sealed record ServiceMoisture(Worked Making, Worked Driest, Worked Wettest, Climate? Climate, IReadOnlyList<Fraction> Months)
{
    private static readonly Given Tenth = new("moisture/step", "tenth of a percent", Dimension.Moisture, new Fraction(1, 10), Origin.Datum);

    /// <summary>How the months between were found, as a sentence.</summary>
    public string Assumption => Climate is { Seasons.Count: > 0 } ? "Between its seasons the moisture content is taken to change evenly."
        : "It is taken to be driest in January and wettest in July, with a cosine between.";

    public static ServiceMoisture Of(StandardInForce standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return standard.Once("wood", "moisture", () => Make(standard));
    }

    /// <summary>The moisture content that a season's air brings wood to, on 0.1 %, as a worked quantity.</summary>
    public static Worked Of(Climate climate, Season season)
    {
        ArgumentNullException.ThrowIfNull(climate);
        ArgumentNullException.ThrowIfNull(season);
        var percent = Fraction.FromDoubleRounded(EquilibriumMoisture.Percent(season.Temperature.Value.ToDouble(), season.Humidity.Value.ToDouble()), 6);
        return new Stepped(
            new Given($"climate/{season.Month}", string.Create(CultureInfo.InvariantCulture, $"equilibrium moisture, {season.Name}"), Dimension.Moisture, percent,
                new(OriginKind.Standard, $"standard/climates/{climate.Id}/seasons/{season.Month}")),
            Tenth, StepDirection.Nearest);
    }

    private static ServiceMoisture Make(StandardInForce standard)
    {
        var (named, origin) = standard.Find(Settings.Climate);
        var found = ClimateTable.Find(standard.Standard, named.Text);
        var climate = found ?? ClimateTable.Find(standard.Standard, ClimateTable.Usual)!;
        var seasons = climate.Seasons.Select(season => (season.Month, Moisture: Of(climate, season))).OrderBy(season => season.Month).ToList();
        Given End(string key, string words, NumberEntry entry) =>
            new($"climate/{key}", words, Dimension.Moisture, entry.Value, new(origin.Kind, $"standard/climates/{climate.Id}/{key}"));
        var driest = standard.Moisture(Settings.Driest) ?? (seasons.Count > 0 ? seasons.MinBy(season => season.Moisture.Amount).Moisture.As("driest in service", "wood/driest")
            : End("driest", "driest in service", climate.Driest!.Value));
        var wettest = standard.Moisture(Settings.Wettest) ?? (seasons.Count > 0 ? seasons.MaxBy(season => season.Moisture.Amount).Moisture.As("wettest in service", "wood/wettest")
            : End("wettest", "wettest in service", climate.Wettest!.Value));
        // A range entered the wrong way round is still a range.
        if (driest.Amount > wettest.Amount)
            (driest, wettest) = (wettest, driest);
        var bySeason = seasons.Count > 0 && standard.Moisture(Settings.Driest) is null && standard.Moisture(Settings.Wettest) is null;
        return new(standard.Moisture(Settings.Moisture)!, driest, wettest, found,
            [.. Enumerable.Range(1, 12).Select(month => bySeason ? Between(seasons, month) : Cosine(driest.Amount, wettest.Amount, month))]);
    }

    private static Fraction Between(List<(int Month, Worked Moisture)> seasons, int month)
    {
        var after = seasons.FindIndex(season => season.Month >= month) is var index && index < 0 ? 0 : index;
        var before = (after + seasons.Count - 1) % seasons.Count;
        var (from, to) = (seasons[before], seasons[after]);
        var stretch = ((to.Month - from.Month - 1 + 12) % 12) + 1;
        var gone = (month - from.Month + 12) % 12;
        return gone == 0 ? from.Moisture.Amount : from.Moisture.Amount + ((to.Moisture.Amount - from.Moisture.Amount) * new Fraction(gone, stretch));
    }

    private static Fraction Cosine(Fraction driest, Fraction wettest, int month) =>
        driest + ((wettest - driest) * Fraction.FromDoubleRounded((1 - Math.Cos((month - 1) * Math.PI / 6)) / 2, 6));
}
