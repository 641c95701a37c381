using Stilewright.Measure;

namespace Stilewright.Shop;

/// <summary>A value for one setting, as it was written.</summary>
/// <param name="Text">The text as typed, kept in the document: a length, a count or a word.</param>
/// <param name="Amount">The length of a length setting, zero for others.</param>
/// <param name="Source">Where the shop's value comes from, if it says so.</param>
public sealed record SettingValue(string Text, Length Amount, string? Source = null);

/// <summary>Values for some settings by key: those of a standard, or the sparse overrides of a course, project, opening or leaf.</summary>
public sealed class SettingValues(IReadOnlyDictionary<Setting, SettingValue> values)
{
    public static SettingValues None { get; } = new(new Dictionary<Setting, SettingValue>());

    public IReadOnlyDictionary<Setting, SettingValue> Values { get; } = values;

    /// <summary>The same with one more or another value.</summary>
    public SettingValues With(Setting setting, SettingValue value) => new(new Dictionary<Setting, SettingValue>(Values) { [setting] = value });

    /// <summary>The same without that setting.</summary>
    public SettingValues Without(Setting setting) => new(Values.Where(each => each.Key != setting).ToDictionary());

    public SettingValue? Find(Setting setting) => Values.GetValueOrDefault(setting);
}
