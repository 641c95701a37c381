using Fractions;
using Stilewright.Findings;

namespace Stilewright.Shop;

public enum SettingKind
{
    Length,
    Count,
    Choice,

    /// <summary>A moisture content in percent.</summary>
    Percent,

    /// <summary>The id of a record of the house standard, or one of the words that stand instead.</summary>
    Reference,
}

/// <summary>What a <see cref="SettingKind.Reference"/> names.</summary>
public enum SettingNames
{
    Nothing,
    Hinge,
    CountTable,
    Climate,
}

/// <summary>One constant of the shop: its key, meaning, shipped defaults and their source.</summary>
/// <param name="Key">How documents address it, such as <c>overlay.usual</c>.</param>
/// <param name="Label">What people call it; quoted in formulas.</param>
/// <param name="Meaning">What it is, with its unit where it is not a length.</param>
/// <param name="Inch">The default in the shipped inch standard, as a person would write it.</param>
/// <param name="Metric">The default in the shipped millimetre standard.</param>
/// <param name="Source">Where the defaults come from.</param>
/// <param name="Overridable">False for what belongs to the shop alone, such as limits and tolerances.</param>
/// <param name="Choices">The words allowed, for a choice; the counts allowed, for a count; words that may stand instead of a length or a percentage.</param>
public sealed record Setting(
    string Key, string Label, string Meaning, SettingKind Kind, string Inch, string Metric, Source Source,
    bool Overridable = true, IReadOnlyList<string>? Choices = null)
{
    /// <summary>Whether one leaf can differ from the others of its front: its members, joints, allowances and panels, not the front's edges.</summary>
    public bool OfLeaf => Overridable && Key[..Key.IndexOf('.')] is "frame" or "joint" or "trim" or "panel" or "glass" or "rough" or "wood";

    /// <summary>Whether zero is allowed, as for a gap; below zero never is.</summary>
    public bool MayBeZero { get; init; } = true;

    /// <summary>Of which list of the standard a reference names a record.</summary>
    public SettingNames Names { get; init; }

    /// <summary>Whether people type it: a length or a percentage, not one of a few words.</summary>
    public bool IsTyped => Kind is SettingKind.Length or SettingKind.Percent;

    /// <summary>The most that a moisture content may be, %: where wood stops to swell.</summary>
    public static Fraction MostMoisture { get; } = 30;

    /// <summary>Whether a text is a word that stands instead of a length or a percentage.</summary>
    public bool IsWord(string text) => IsTyped && Choices is { } words && words.Contains(text);

    /// <summary>A key names one setting; settings are looked up for every part, so nothing else is compared.</summary>
    public bool Equals(Setting? other) => other is not null && (ReferenceEquals(this, other) || Key == other.Key);

    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);
}
