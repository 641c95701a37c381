using Stilewright.Curves;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

[Meaning("A hard pattern on the rack: one fixed curve that serves a range of spans, cut off at the sight lines where the span is less than its greatest"), Label("hard pattern")]
public sealed record RackPattern(
    [Id] string Id,
    [Meaning("What the shop calls it")] string Name,
    [Meaning("Any family but a drawn one")] ArchFamily Family,
    [Meaning("Rise over its greatest span"), Between(0, 60, Above = true)] LengthEntry Rise,
    [Meaning("The least span it serves, from sight line to sight line"), Between(0, 240, Above = true)] LengthEntry LeastSpan,
    [Meaning("The greatest span it serves, which it was made for"), Between(0, 240, Above = true)] LengthEntry GreatestSpan,
    [Meaning("Straight shoulder at each end, over its greatest span"), Between(0, 60)] LengthEntry? Shoulder = null,
    [Meaning("Radii of a cathedral or double curve; absent, not compared with the design and drawn one to one")] ArcRatio? ReverseToCrown = null,
    [Meaning("Where it comes from, and what it is made of")] string? Source = null)
{
    /// <summary>Its curve and range in inches.</summary>
    public HardPattern Hard => new(
        Name, Family, CurveLength.Inches(Rise.Value), CurveLength.Inches(LeastSpan.Value), CurveLength.Inches(GreatestSpan.Value),
        CurveLength.Inches(Shoulder?.Value ?? default), ReverseToCrown is { } ratio ? (double)ratio.Reverse / ratio.Crown : null);
}
