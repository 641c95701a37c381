using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Drawing.Packets;

/// <summary>A size of paper, upright, with its margins: 12 mm, and 18 mm on the left for a binder.</summary>
/// <param name="WidthMillimetres">The shorter side.</param>
/// <param name="HeightMillimetres">The longer side.</param>
public sealed record Paper(string Name, double WidthMillimetres, double HeightMillimetres)
{
    private const double Margin = 12;
    private const double BinderMargin = 18;

    /// <summary>US Letter, 8 1/2 × 11 in.</summary>
    public static Paper Letter { get; } = Of("Letter", PaperKind.Letter);

    /// <summary>ISO 216 A4.</summary>
    public static Paper A4 { get; } = Of("A4", PaperKind.A4);

    private static Paper Of(string name, PaperKind paper) => new(name, Scale.FullSize.OnPaper(paper.Width), Scale.FullSize.OnPaper(paper.Height));

    /// <summary>What lies within the margins.</summary>
    public PaperBox Printed => new(BinderMargin, Margin, WidthMillimetres - BinderMargin - Margin, HeightMillimetres - 2 * Margin);
}
