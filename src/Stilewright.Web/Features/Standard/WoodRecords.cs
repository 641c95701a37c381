using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Web.Features.Standard;

/// <summary>The shop's own woods, and where work will stand, as they are on the page of the standard.</summary>
internal static class WoodRecords
{
    private const string ByEnds = "ends", BySeasons = "seasons";

    /// <param name="id">Of a wood of the standard.</param>
    public static RecordPart Species(HouseStandard standard, string id)
    {
        var place = Place.Of("species", id, each => each.Species, (each, list) => each with { Species = list }, species => species.Id);
        return new(place.Name, place.Find(standard)!.Name,
        [
            place.Words("name", each => each.Name, (each, words) => each with { Name = words ?? each.Name }, isOptional: false),
            place.Words("aliases", each => each.Aliases.Count == 0 ? null : string.Join(", ", each.Aliases),
                (each, words) => each with { Aliases = words is null ? [] : words.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) }),
            place.Number("tangential", NumberKind.Plain, "a number such as 0.0037", each => each.Tangential, (each, number) => each with { Tangential = number }),
            place.Number("radial", NumberKind.Plain, "a number such as 0.0016", each => each.Radial, (each, number) => each with { Radial = number }),
            place.Number("specificGravity", NumberKind.Plain, "a number such as 0.63", each => each.SpecificGravity, (each, number) => each with { SpecificGravity = number }),
            place.Whole("shrinkageStart", 15, 35, each => each.ShrinkageStart, (each, number) => each with { ShrinkageStart = number ?? each.ShrinkageStart }),
            place.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Removal = new(place.Name, "Remove it", there => there with { Species = [.. there.Species.Where(each => each.Id != id)] }),
        };
    }

    public static SpeciesEntry NewSpecies(string id) => new(id, "Another wood");

    /// <param name="id">Of a climate of the standard.</param>
    public static RecordPart Climate(HouseStandard standard, string id)
    {
        var place = Place.Of("climates", id, each => each.Climates, (each, list) => each with { Climates = list }, climate => climate.Id);
        var climate = place.Find(standard)!;
        var hasSeasons = climate.Seasons.Count > 0;
        return new(place.Name, climate.Name,
        [
            place.Words("name", each => each.Name, (each, words) => each with { Name = words ?? each.Name }, isOptional: false),
            .. hasSeasons ? [] : new[]
            {
                place.Number("driest", NumberKind.Percent, "a percentage from 0 to 30", each => each.Driest, (each, number) => each with { Driest = number }, isOptional: false),
                place.Number("wettest", NumberKind.Percent, "a percentage from 0 to 30", each => each.Wettest, (each, number) => each with { Wettest = number }, isOptional: false),
            },
            place.Words("source", each => each.Source, (each, words) => each with { Source = words }),
        ])
        {
            Choices =
            [
                new($"{place.Name}/told", "Told by", [(ByEnds, "driest and wettest"), (BySeasons, "the air of its seasons")], hasSeasons ? BySeasons : ByEnds,
                    (there, word) => place.Edit(there, each => word == BySeasons ? OfSeasons(each, there.Unit) : OfEnds(each))),
            ],
            Parts = [.. climate.Seasons.Select((season, i) => SeasonOf(place, i))],
            Adds = hasSeasons && climate.Seasons.Count < 12
                ? [new($"{place.Name}/seasons", "Add a season", there => place.Edit(there, each => each with { Seasons = [.. each.Seasons, Fresh(each, there.Unit)] }))] : [],
            Removal = new(place.Name, "Remove it", there => there with { Climates = [.. there.Climates.Where(each => each.Id != id)] }),
        };
    }

    private static RecordPart SeasonOf(Place<Climate> place, int i)
    {
        var season = place.Row("seasons", i, each => each.Seasons, (each, list) => each with { Seasons = list });
        return new(season.Name, $"Season {i + 1}",
        [
            season.Words("name", each => each.Name, (each, words) => each with { Name = words ?? each.Name }, isOptional: false),
            season.Whole("month", 1, 12, each => each.Month, (each, number) => each with { Month = number ?? each.Month }),
            season.Number("temperature", NumberKind.Temperature, "a temperature such as 68 F or 20 C", each => each.Temperature, (each, number) => each with { Temperature = number ?? each.Temperature }, isOptional: false),
            season.Number("humidity", NumberKind.Percent, "a percentage from 0 to 100", each => each.Humidity, (each, number) => each with { Humidity = number ?? each.Humidity }, isOptional: false),
        ])
        {
            Removal = new($"{place.Name}/seasons", "Take out", there => place.Edit(there, each =>
                each.Seasons.Count == 1 ? OfEnds(each) : each with { Seasons = [.. each.Seasons.Where((_, at) => at != i)] })),
        };
    }

    // Figures to begin with, to be written over; common practice, no source.
    private static Climate OfSeasons(Climate climate, LengthUnit unit) => climate.Seasons.Count > 0 ? climate : climate with
    {
        Driest = null,
        Wettest = null,
        Seasons = [Air("winter", 1, unit, "35"), Air("summer", 7, unit, "55")],
    };

    private static Climate OfEnds(Climate climate) => climate with
    {
        Driest = climate.Driest ?? Numbers.Entry("6", NumberKind.Percent, LengthUnit.Inch),
        Wettest = climate.Wettest ?? Numbers.Entry("12", NumberKind.Percent, LengthUnit.Inch),
        Seasons = [],
    };

    private static Season Fresh(Climate climate, LengthUnit unit) =>
        Air("season", Enumerable.Range(1, 12).First(month => climate.Seasons.All(season => season.Month != month)), unit, "45");

    private static Season Air(string name, int month, LengthUnit unit, string humidity) => new(
        name, month, Numbers.Entry(unit == LengthUnit.Inch ? "68 F" : "20 C", NumberKind.Temperature, unit), Numbers.Entry(humidity, NumberKind.Percent, unit));

    public static Climate NewClimate(string id) => OfEnds(new(id, "Another place"));
}
