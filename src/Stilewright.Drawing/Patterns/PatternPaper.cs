namespace Stilewright.Drawing.Patterns;

/// <summary>Paper that patterns are printed on: sheets, or a roll that is cut off where a pattern ends.</summary>
/// <param name="WidthMillimetres">Across the feed.</param>
/// <param name="HeightMillimetres">Along the feed; null for a roll.</param>
public sealed record PatternPaper(string Name, double WidthMillimetres, double? HeightMillimetres)
{
    /// <summary>Kept clear on every edge, which no common printer reaches.</summary>
    public const double Margin = 12;

    /// <summary>Letter and Legal as ANSI/ASME Y14.1 and common practice have them; A4 and A3 of ISO 216.</summary>
    public static IReadOnlyList<PatternPaper> All { get; } =
    [
        new("letter", 215.9, 279.4),
        new("legal", 215.9, 355.6),
        new("a4", 210, 297),
        new("a3", 297, 420),
    ];

    /// <summary>A roll of the given width.</summary>
    /// <param name="widthMillimetres">More than twice the margin and 60 mm of print.</param>
    public static PatternPaper Roll(double widthMillimetres) => new(FormattableString.Invariant($"roll {widthMillimetres:0.#} mm wide"), widthMillimetres, null);
}
