using Stilewright.Measure;

namespace Stilewright.Doors;

/// <summary>Parts that are alike, one line of a cut list.</summary>
/// <param name="Part">One of them, which stands for all.</param>
/// <param name="Parts">All of them.</param>
/// <param name="Leaves">Labels of the leaves they serve, each once.</param>
public sealed record CutListLine(Part Part, IReadOnlyList<Part> Parts, IReadOnlyList<string> Leaves)
{
    public int Count => Parts.Count;
}

/// <summary>Gathers identical parts and puts them in the order in which a shop cuts.</summary>
/// <remarks>
/// Identical parts share species, stock, thickness stages, all sizes, joints, worked edges, arch, depth behind an arched sight line and hand.
/// The order is species, then thickness, width and length, each from large to small.
/// </remarks>
public static class CutList
{
    public static IReadOnlyList<CutListLine> Of(IEnumerable<Part> parts) =>
    [
        .. parts.GroupBy(part => part, Alike.Instance)
            .Select(group => new CutListLine(group.First(), [.. group], [.. group.Select(part => LeafOf(part.Label)).Distinct()]))
            .OrderBy(line => line.Part.Kind == PartKind.Glass)
            .ThenBy(line => line.Part.Material, StringComparer.Ordinal)
            .ThenByDescending(line => line.Part.Thickness?.Planed.Amount ?? default)
            .ThenByDescending(line => line.Part.GlueUp.Width.Amount)
            .ThenByDescending(line => line.Part.GlueUp.Length.Amount)
            .ThenBy(line => line.Part.Label, StringComparer.Ordinal),
    ];

    private static string LeafOf(string label) => label[..label.LastIndexOf('·')];

    // Rails and stiles of one size, joint and edge are the same piece of wood whatever they are called.
    private sealed class Alike : IEqualityComparer<Part>
    {
        public static Alike Instance { get; } = new();

        public bool Equals(Part? one, Part? other) => ReferenceEquals(one, other) || (one is not null && other is not null
            && Class(one) == Class(other) && one.Material == other.Material && one.Stock == other.Stock
            && one.Hand == other.Hand && one.FaceDown == other.FaceDown
            && Same(one.Finished, other.Finished) && Same(one.GlueUp, other.GlueUp) && Same(one.Rough, other.Rough)
            && Same(one.Thickness?.Rough, other.Thickness?.Rough) && Same(one.Thickness?.Planed, other.Thickness?.Planed)
            && Same(one.Thickness?.Final, other.Thickness?.Final) && Same(one.Shoulder, other.Shoulder)
            && one.Work.Order().SequenceEqual(other.Work.Order()) && Same(one.Arch, other.Arch)
            && Same(one.TopArch, other.TopArch) && Same(one.BottomArch, other.BottomArch)
            && (one.TopArch is null || one.Outline.Top - one.VisibleBounds.Top == other.Outline.Top - other.VisibleBounds.Top)
            && (one.BottomArch is null || one.VisibleBounds.Y - one.Outline.Y == other.VisibleBounds.Y - other.Outline.Y));

        public int GetHashCode(Part part) => HashCode.Combine(
            Class(part), part.Material, part.Stock, part.GlueUp.Width.Amount, part.GlueUp.Length.Amount, part.Hand);

        private static PartKind Class(Part part) =>
            part.Kind is PartKind.Rail or PartKind.MidRail or PartKind.MidStile ? PartKind.Stile : part.Kind;

        private static bool Same(Worked? one, Worked? other) =>
            ReferenceEquals(one, other) || (one is not null && other is not null && one.Amount == other.Amount);

        private static bool Same(PartSize? one, PartSize? other) => ReferenceEquals(one, other)
            || (one is not null && other is not null && Same(one.Width, other.Width) && Same(one.Length, other.Length));

        private static bool Same(ArchShape? one, ArchShape? other) => ReferenceEquals(one, other)
            || (one is not null && other is not null && one.Family == other.Family && one.Repeats == other.Repeats && one.ReverseToCrown == other.ReverseToCrown
                && (ReferenceEquals(one.Drawn, other.Drawn) || one.Drawn is not null && other.Drawn is not null && one.Drawn.Segments.SequenceEqual(other.Drawn.Segments))
                && Same(one.Span, other.Span) && Same(one.Rise, other.Rise) && Same(one.Shoulder, other.Shoulder)
                && Same(one.OfPair?.Rise, other.OfPair?.Rise) && Same(one.OfPair?.Width, other.OfPair?.Width));
    }
}
