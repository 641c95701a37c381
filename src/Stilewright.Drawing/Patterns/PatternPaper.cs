using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Drawing.Patterns;

/// <summary>Paper that patterns are printed on: sheets, or a roll that is cut off where a pattern ends.</summary>
/// <param name="WidthMillimetres">Across the feed.</param>
/// <param name="HeightMillimetres">Along the feed; null for a roll.</param>
public sealed record PatternPaper(string Name, double WidthMillimetres, double? HeightMillimetres)
{
    /// <summary>Kept clear on every edge, which no common printer reaches.</summary>
    public const double Margin = 12;

    /// <summary>Legal as common practice has it; A3 of ISO 216.</summary>
    public static IReadOnlyList<PatternPaper> All { get; } =
    [
        Of("letter", PaperKind.Letter),
        new("legal", 215.9, 355.6),
        Of("a4", PaperKind.A4),
        new("a3", 297, 420),
    ];

    /// <summary>A roll of the given width.</summary>
    /// <param name="widthMillimetres">More than twice the margin and 60 mm of print.</param>
    public static PatternPaper Roll(double widthMillimetres) => new(FormattableString.Invariant($"roll {widthMillimetres:0.#} mm wide"), widthMillimetres, null);

    private static PatternPaper Of(string name, PaperKind paper) => new(name, Scale.FullSize.OnPaper(paper.Width), Scale.FullSize.OnPaper(paper.Height));
}
