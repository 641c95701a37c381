using System.Globalization;
using Fractions;
using Stilewright.Shop;

namespace Stilewright.Wood;

/// <summary>The woods that ship, and those that the shop adds; its own come first.</summary>
/// <remarks>
/// Coefficients: FPL-GTR-190 (2010) Table 13-5; specific gravity: FPL-GTR-113 (1999) as the US Forest Service lists it. What was computed or
/// is from memory says so in its source; the checks are told beside the data. Trade names are common practice, no source.
/// </remarks>
public sealed class SpeciesTable
{
    // Made when it is first asked for, after the names below it in this file.
    private static readonly Lazy<SpeciesTable> shipped = new(MakeShipped);

    private readonly Dictionary<string, Species> byName;

    private SpeciesTable(IReadOnlyList<Species> all, Dictionary<string, Species> byName) => (All, this.byName) = (all, byName);

    /// <summary>The woods that ship alone.</summary>
    public static SpeciesTable Shipped => shipped.Value;

    /// <summary>Every wood, those of the shop first.</summary>
    public IReadOnlyList<Species> All { get; }

    /// <summary>The woods that ship with those of a standard, whose names and aliases win.</summary>
    public static SpeciesTable Of(HouseStandard standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        if (standard.Species.Count == 0)
            return Shipped;
        Dictionary<string, Species> byName = new(Shipped.byName);
        List<Species> own = [];
        // The first of two that share a name holds.
        foreach (var entry in standard.Species.Reverse())
        {
            var source = entry.Source ?? "entered by the shop, no source given";
            Species species = new(entry.Name,
                entry.Tangential is { } tangential && entry.Radial is { } radial
                    ? new(tangential.Value, radial.Value, entry.ShrinkageStart, source, null) : null,
                entry.SpecificGravity is { } gravity ? new(gravity.Value, source) : null, IsOwn: true);
            own.Insert(0, species);
            foreach (var name in entry.Aliases.Prepend(entry.Name).Prepend(entry.Id))
                byName[Plain(name)] = species;
        }

        return new([.. own, .. Shipped.All], byName);
    }

    /// <summary>The wood of a name under a standard, looked for once for all parts that name it.</summary>
    public static SpeciesMatch Find(StandardInForce standard, string name)
    {
        ArgumentNullException.ThrowIfNull(standard);
        return standard.Once("species", name, () => Of(standard.Standard).Find(name));
    }

    /// <summary>The wood of a name as a design writes it, such as "red oak" or "hard maple"; "Oak, red" and "red oak" are one.</summary>
    public SpeciesMatch Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var plain = Plain(name);
        return byName.TryGetValue(plain, out var species) ? new SpeciesMatch.Found(species) : new SpeciesMatch.Unknown(name.Trim(), Near(plain));
    }

    // Names that hold every word asked for, then those with a few letters changed.
    private List<string> Near(string plain)
    {
        var words = plain.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var holding = words.Length == 0 ? [] : byName.Keys.Where(known => words.All(word => known.Split(' ').Contains(word))).Order(StringComparer.Ordinal).ToList();
        var close = byName.Keys.Select(known => (Name: known, Changes: Changes(plain, known))).Where(each => each.Changes <= Math.Max(2, plain.Length / 4) && each.Changes < each.Name.Length)
            .OrderBy(each => each.Changes).ThenBy(each => each.Name, StringComparer.Ordinal).Select(each => each.Name);
        return [.. holding.Concat(close).Distinct().Take(3)];
    }

    /// <summary>Small letters, words in the order of speech: "Oak, red" becomes "red oak"; hyphens and points part words.</summary>
    private static string Plain(string name)
    {
        var parts = name.Split(',', 2);
        var spoken = parts.Length == 2 ? $"{parts[1]} {parts[0]}" : name;
        return string.Join(' ', new string([.. spoken.Select(character => char.IsLetterOrDigit(character) ? char.ToLowerInvariant(character) : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    // Letters put in, taken out or replaced.
    private static int Changes(string left, string right)
    {
        var row = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 1; i <= left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
                (diagonal, row[j]) = (row[j], Math.Min(diagonal + (left[i - 1] == right[j - 1] ? 0 : 1), Math.Min(row[j], row[j - 1]) + 1));
        }

        return row[^1];
    }

    private static SpeciesTable MakeShipped()
    {
        var gravities = CsvTable.Read("specific-gravity.csv");
        var byTableName = gravities.ToDictionary(row => row["species"]);
        List<Species> all = [];
        Dictionary<string, Species> byName = [];
        foreach (var row in CsvTable.Read("dimensional-change.csv"))
        {
            var name = row["species"];
            var gravity = byTableName.GetValueOrDefault(Weighed.GetValueOrDefault(name, name));
            Add(new(name, Coefficients(row), gravity is null ? null : Gravity(gravity)));
        }

        // Woods of the gravity table that have no row of their own above: they move as the row they are linked to, where there is one.
        var moving = all.ToDictionary(species => species.Name);
        foreach (var row in gravities.Where(row => !byName.ContainsKey(Plain(row["species"]))))
            Add(new(row["species"], moving.GetValueOrDefault(row["dimensional_change_species"])?.Movement, Gravity(row)));
        foreach (var (alias, name) in TradeNames)
            byName.Add(alias, byName[Plain(name)]);
        return new(all, byName);

        void Add(Species species)
        {
            all.Add(species);
            byName.TryAdd(Plain(species.Name), species);
        }

        static MovementCoefficients Coefficients(IReadOnlyDictionary<string, string> row) => new(
            Number(row["ct"]), Number(row["cr"]), int.Parse(row["shrinkage_start_mc_pct"], CultureInfo.InvariantCulture),
            row["source"].Contains("FPL", StringComparison.Ordinal) ? row["source"] : $"FPL-GTR-190 Table 13-5, {row["source"]}", row["check"]);

        static SpecificGravity Gravity(IReadOnlyDictionary<string, string> row) => new(Number(row["sg12"]), row["source"]);

        static Fraction Number(string text) => Fraction.FromString(text, CultureInfo.InvariantCulture);
    }

    // Rows of the coefficient table that are a group or a part of a wood, with the row of the gravity table that stands for them.
    private static readonly Dictionary<string, string> Weighed = new()
    {
        ["Red oak, commercial"] = "Red oak, northern",
        ["Oak, black"] = "Red oak, black",
        ["Red oak, water/laurel/willow"] = "Red oak, water",
        ["White oak, commercial"] = "White oak, white",
        ["Hickory, true"] = "Hickory, shagbark",
        ["Douglas-fir, coast-type"] = "Douglas-fir",
        ["Redwood, old-growth"] = "Redwood",
        ["Khaya"] = "Khaya (African mahogany)",
        ["Mahogany"] = "Mahogany (Swietenia)",
        ["Lauan, dark red"] = "Meranti/lauan, dark red",
        ["Lauan, light red"] = "Meranti/lauan, light red",
    };

    // What benches call them. A name of several woods stands for the one that is usual in cabinets.
    private static readonly Dictionary<string, string> TradeNames = new()
    {
        ["red oak"] = "Red oak, commercial",
        ["oak"] = "Red oak, commercial",
        ["white oak"] = "White oak, commercial",
        ["american white oak"] = "White oak, commercial",
        ["live oak"] = "White oak, live",
        ["overcup oak"] = "White oak, overcup",
        ["hard maple"] = "Maple, sugar",
        ["rock maple"] = "Maple, sugar",
        ["maple"] = "Maple, sugar",
        ["soft maple"] = "Maple, red",
        ["cherry"] = "Cherry, black",
        ["american cherry"] = "Cherry, black",
        ["walnut"] = "Walnut, black",
        ["american walnut"] = "Walnut, black",
        ["poplar"] = "Yellow-poplar",
        ["tulip poplar"] = "Yellow-poplar",
        ["tulipwood"] = "Yellow-poplar",
        ["ash"] = "Ash, white",
        ["american ash"] = "Ash, white",
        ["birch"] = "Birch, yellow",
        ["white birch"] = "Birch, paper",
        ["cherry birch"] = "Birch, sweet",
        ["alder"] = "Alder, red",
        ["knotty alder"] = "Alder, red",
        ["beech"] = "Beech, American",
        ["basswood"] = "Basswood, American",
        ["hickory"] = "Hickory, true",
        ["pecan"] = "Hickory, pecan",
        ["elm"] = "Elm, American",
        ["red elm"] = "Elm, slippery",
        ["sycamore"] = "Sycamore, American",
        ["aspen"] = "Aspen, quaking",
        ["cottonwood"] = "Cottonwood, eastern",
        ["chestnut"] = "Chestnut, American",
        ["holly"] = "Holly, American",
        ["gum"] = "Sweetgum",
        ["red gum"] = "Sweetgum",
        ["cypress"] = "Baldcypress",
        ["bald cypress"] = "Baldcypress",
        ["white pine"] = "Pine, eastern white",
        ["pine"] = "Pine, eastern white",
        ["knotty pine"] = "Pine, ponderosa",
        ["yellow pine"] = "Pine, loblolly",
        ["southern yellow pine"] = "Pine, loblolly",
        ["cedar"] = "Cedar, western red",
        ["aromatic cedar"] = "Cedar, eastern red",
        ["fir"] = "Douglas-fir, coast-type",
        ["oregon pine"] = "Douglas-fir, coast-type",
        ["genuine mahogany"] = "Mahogany",
        ["honduran mahogany"] = "Mahogany",
        ["african mahogany"] = "Khaya",
        ["philippine mahogany"] = "Lauan, dark red",
        ["lauan"] = "Lauan, light red",
        ["spruce"] = "Spruce, Sitka",
    };
}
