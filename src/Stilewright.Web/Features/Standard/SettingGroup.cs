using Stilewright.Shop;

namespace Stilewright.Web.Features.Standard;

/// <summary>Settings that belong together, by the first word of their keys.</summary>
/// <param name="Prefix">Such as <c>overlay</c>.</param>
/// <param name="Name">In a word or two.</param>
/// <param name="Heading">What the group is about.</param>
public sealed record SettingGroup(string Prefix, string Name, string Heading)
{
    private static readonly SettingGroup[] Known =
    [
        new("overlay", "Overlay", "How far fronts lap over the frame"),
        new("gap", "Gaps", "Air between fronts, and round inset fronts"),
        new("lip", "Lip", "Lipped fronts"),
        new("lap", "Lap", "Meeting edges that lap"),
        new("cut", "Cutting step", "The cutting step, and where the remainder goes"),
        new("frame", "Stiles and rails", "Widths of stiles and rails"),
        new("joint", "Joints", "Joints"),
        new("trim", "Trim", "Trim allowance"),
        new("panel", "Panels", "Play of panels in their grooves"),
        new("wood", "Wood", "Moisture at making and in service"),
        new("finish", "Finish", "Finish"),
        new("glass", "Glass", "Glass"),
        new("rough", "Rough sizes", "Rough sizes"),
        new("print", "Print", "Print"),
        new("hinge", "Hinges", "Which hinge, how many, and where"),
        new("limit", "Limits", "Limits, beyond which there is a word of warning"),
        new("tolerance", "Tolerances", "Tolerances"),
    ];

    public IEnumerable<Setting> Settings => Shop.Settings.All.Where(setting => PrefixOf(setting) == Prefix);

    /// <summary>Every group that has a setting, in the order in which a standard is read.</summary>
    public static IReadOnlyList<SettingGroup> All { get; } =
        [.. Shop.Settings.All.Select(PrefixOf).Distinct().Select(prefix => Known.FirstOrDefault(group => group.Prefix == prefix) ?? new(prefix, prefix, prefix))];

    private static string PrefixOf(Setting setting) => setting.Key[..setting.Key.IndexOf('.', StringComparison.Ordinal)];
}
