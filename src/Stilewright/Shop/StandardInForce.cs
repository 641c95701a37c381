using System.Collections.Concurrent;
using Stilewright.Measure;

namespace Stilewright.Shop;

/// <summary>The house standard as it holds at one place: its settings under the overrides of course, project, opening and leaf.</summary>
/// <remarks>The nearest override wins. Each value is given out as one worked quantity that knows where it was entered.</remarks>
public sealed class StandardInForce
{
    private readonly (OriginKind Kind, string Path, SettingValues Values)[] layers;
    // Leaves ask it for more after the breakdown is made, from the screens that show them.
    private readonly ConcurrentDictionary<Setting, Given?> given = [];
    private readonly ConcurrentDictionary<(string Owner, string Key), object> shared = [];

    public StandardInForce(HouseStandard standard)
        : this(standard, [])
    {
    }

    private StandardInForce(HouseStandard standard, (OriginKind, string, SettingValues)[] layers)
    {
        Standard = standard;
        this.layers = layers;
    }

    public HouseStandard Standard { get; }

    /// <summary>The standard with nearer overrides on top; itself when there are none.</summary>
    /// <param name="path">The path of the course, project, opening or leaf that holds them.</param>
    public StandardInForce With(OriginKind kind, string path, SettingValues values) => values.Values.Count == 0
        ? this : new(Standard, [.. layers, (kind, path, values)]);

    /// <summary>A length setting, with its origin.</summary>
    /// <exception cref="ArgumentException">The setting is no length, or a word stands instead of one.</exception>
    public Worked this[Setting setting] =>
        LengthOrWord(setting) ?? throw new ArgumentException($"A word stands for {setting.Key}.", nameof(setting));

    /// <summary>A length setting, with its origin; null where a word stands instead of the length.</summary>
    /// <exception cref="ArgumentException">The setting is no length.</exception>
    public Worked? LengthOrWord(Setting setting)
    {
        if (setting.Kind != SettingKind.Length)
            throw new ArgumentException($"{setting.Key} is no length.", nameof(setting));
        if (!given.TryGetValue(setting, out var known))
        {
            var (value, origin) = Find(setting);
            known = setting.IsWord(value.Text) ? null : new Given($"standard/{setting.Key}", setting.Label, value.Amount, origin);
            known = given.GetOrAdd(setting, known);
        }

        return known;
    }

    /// <summary>A moisture content, %, with its origin; null where a word stands instead of it.</summary>
    /// <exception cref="ArgumentException">The setting is no percentage.</exception>
    public Worked? Moisture(Setting setting)
    {
        if (setting.Kind != SettingKind.Percent)
            throw new ArgumentException($"{setting.Key} is no percentage.", nameof(setting));
        if (!given.TryGetValue(setting, out var known))
        {
            var (value, origin) = Find(setting);
            known = setting.IsWord(value.Text) ? null
                : new Given($"standard/{setting.Key}", setting.Label, Dimension.Moisture, NumberReader.ReadOwn(value.Text, NumberKind.Percent), origin);
            known = given.GetOrAdd(setting, known);
        }

        return known;
    }

    /// <summary>
    /// What follows from one record of the standard or one door design, made once for all leaves that use it: entries of
    /// ten thousand doors are then a few objects, not some for every part.
    /// </summary>
    internal T Once<T>(string owner, string key, Func<T> make)
        where T : class
    {
        return (T)(shared.TryGetValue((owner, key), out var known) ? known : shared.GetOrAdd((owner, key), make()));
    }

    /// <summary>A choice or count setting, as its word.</summary>
    public string Word(Setting setting) => Find(setting).Value.Text;

    /// <summary>How lengths are printed for a reader of this standard.</summary>
    public LengthFormat Format => new(Standard.Unit,
        int.Parse(Word(Settings.FinestFraction), System.Globalization.CultureInfo.InvariantCulture));

    /// <summary>The value in force and where it was entered.</summary>
    public (SettingValue Value, Origin Origin) Find(Setting setting)
    {
        if (setting.Overridable)
        {
            for (var i = layers.Length - 1; i >= 0; i--)
            {
                if (layers[i].Values.Find(setting) is { } nearer)
                    return (nearer, new(layers[i].Kind, $"{layers[i].Path}/overrides/{setting.Key}"));
            }
        }

        var shipped = ShippedValue(setting, Standard.Base);
        return Standard.Settings.Find(setting) is { } own && !SameValue(setting, own, shipped)
            ? (own, new(OriginKind.Standard, $"standard/settings/{setting.Key}"))
            : (shipped, new(OriginKind.Shipped, $"standard/settings/{setting.Key}"));
    }

    /// <summary>The value that ships for a setting.</summary>
    public static SettingValue ShippedValue(Setting setting, LengthUnit unit)
    {
        var text = unit == LengthUnit.Inch ? setting.Inch : setting.Metric;
        var amount = setting.Kind == SettingKind.Length && !setting.IsWord(text) ? LengthReader.ReadOwn(text, unit) : default;
        return new(text, amount, setting.Source.Text);
    }

    private static bool SameValue(Setting setting, SettingValue left, SettingValue right) =>
        setting.Kind == SettingKind.Length && !setting.IsWord(left.Text) && !setting.IsWord(right.Text) ? left.Amount == right.Amount : left.Text == right.Text;
}
