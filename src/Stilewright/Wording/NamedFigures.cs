using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Wording;

/// <summary>One figure of a part, leaf or front under the name by which it is asked for.</summary>
public sealed record NamedFigure(string Name, Worked Quantity);

/// <summary>The figures that can be asked for by name.</summary>
public static class NamedFigures
{
    public static IReadOnlyList<NamedFigure> Of(Part part) => Kept(
        ("width", part.Finished.Width),
        ("length", part.Finished.Length),
        ("shoulder", part.Shoulder),
        ("span", part.Arch?.Span),
        ("rise", part.Arch?.Rise),
        ("whole-rise", part.Arch?.OfPair?.Rise),
        ("arch-shoulder", part.Arch?.Shoulder),
        ("clamps-width", part.GlueUp.Width),
        ("clamps-length", part.GlueUp.Length),
        ("rough-width", part.Rough?.Width),
        ("rough-length", part.Rough?.Length),
        ("rough-thickness", part.Thickness?.Rough),
        ("planed-thickness", part.Thickness?.Planed),
        ("final-thickness", part.Thickness?.Final));

    public static IReadOnlyList<NamedFigure> Of(SizedLeaf leaf) => Kept(("width", leaf.Width), ("height", leaf.Height));

    public static IReadOnlyList<NamedFigure> Of(SizedFront front) =>
        Kept(("width", front.Width), ("height", front.Height), ("gap", front.Gap));

    private static NamedFigure[] Kept(params IEnumerable<(string Name, Worked? Quantity)> figures) =>
        [.. figures.Where(figure => figure.Quantity is not null).Select(figure => new NamedFigure(figure.Name, figure.Quantity!))];
}
