using Stilewright.Shop;

namespace Stilewright.Web.Features.Standard;

/// <summary>Settings that belong together, by the first word of their keys.</summary>
/// <param name="Prefix">Such as <c>overlay</c>.</param>
/// <param name="Heading">In words.</param>
public sealed record SettingGroup(string Prefix, string Heading)
{
    private static readonly SettingGroup[] Known =
    [
        new("overlay", "How far fronts lap over the frame"),
        new("gap", "Air between fronts, and round inset fronts"),
        new("lip", "Lipped fronts"),
        new("lap", "Meeting edges that lap"),
        new("cut", "The cutting step, and where the remainder goes"),
        new("frame", "Widths of stiles and rails"),
        new("joint", "Joints"),
        new("trim", "Trim allowance"),
        new("panel", "Play of panels in their grooves"),
        new("glass", "Glass"),
        new("rough", "Rough sizes"),
        new("print", "Print"),
        new("limit", "Limits, beyond which there is a word of warning"),
        new("tolerance", "Tolerances"),
    ];

    public IEnumerable<Setting> Settings => Shop.Settings.All.Where(setting => PrefixOf(setting) == Prefix);

    /// <summary>Every group that has a setting, in the order in which a standard is read.</summary>
    public static IReadOnlyList<SettingGroup> All { get; } =
        [.. Shop.Settings.All.Select(PrefixOf).Distinct().Select(prefix => Known.FirstOrDefault(group => group.Prefix == prefix) ?? new(prefix, prefix))];

    private static string PrefixOf(Setting setting) => setting.Key[..setting.Key.IndexOf('.', StringComparison.Ordinal)];
}
