using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Fields;

/// <summary>The tape readings of an opening as fields.</summary>
public static class ReadingFields
{
    public static IReadOnlyList<LengthField> Widths(string openingId) =>
    [
        Reading(openingId, "widthTop", "at the top", readings => readings.WidthTop, (readings, entry) => readings with { WidthTop = entry }),
        Reading(openingId, "widthMiddle", "in the middle", readings => readings.WidthMiddle, (readings, entry) => readings with { WidthMiddle = entry }),
        Reading(openingId, "widthBottom", "at the bottom", readings => readings.WidthBottom, (readings, entry) => readings with { WidthBottom = entry }),
    ];

    public static IReadOnlyList<LengthField> Heights(string openingId) =>
    [
        Reading(openingId, "heightLeft", "at the left", readings => readings.HeightLeft, (readings, entry) => readings with { HeightLeft = entry }),
        Reading(openingId, "heightMiddle", "in the middle", readings => readings.HeightMiddle, (readings, entry) => readings with { HeightMiddle = entry }),
        Reading(openingId, "heightRight", "at the right", readings => readings.HeightRight, (readings, entry) => readings with { HeightRight = entry }),
    ];

    /// <summary>Rising goes from bottom left to top right, seen from the front.</summary>
    public static IReadOnlyList<LengthField> Diagonals(string openingId) =>
    [
        Reading(openingId, "rising", "bottom left to top right", readings => readings.Rising, (readings, entry) => readings with { Rising = entry }),
        Reading(openingId, "falling", "bottom right to top left", readings => readings.Falling, (readings, entry) => readings with { Falling = entry }),
    ];

    private static LengthField Reading(
        string openingId, string key, string label, Func<Readings, LengthEntry?> get, Func<Readings, LengthEntry?, Readings> set) => new(
        $"{openingId}/readings/{key}", label,
        course => ProjectEdits.Opening(course, openingId)?.Readings is { } readings ? get(readings) : null,
        (course, entry) => ProjectEdits.WithOpening(course, openingId, opening =>
        {
            var readings = set(opening.Readings ?? new Readings(), entry);
            return opening with { Readings = readings == new Readings() ? null : readings };
        }));
}
