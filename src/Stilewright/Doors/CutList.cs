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
/// Identical parts share species, stock, thickness stages, all sizes, joints, worked edges, arch and hand.
/// The order is species, then thickness, width and length, each from large to small.
/// </remarks>
public static class CutList
{
    public static IReadOnlyList<CutListLine> Of(IEnumerable<Part> parts) =>
    [
        .. parts.GroupBy(part => new Identity(part))
            .Select(group => new CutListLine(group.First(), [.. group], [.. group.Select(part => LeafOf(part.Label)).Distinct()]))
            .OrderBy(line => line.Part.Kind == PartKind.Glass)
            .ThenBy(line => line.Part.Material, StringComparer.Ordinal)
            .ThenByDescending(line => line.Part.Thickness?.Planed.Amount ?? default)
            .ThenByDescending(line => line.Part.GlueUp.Width.Amount)
            .ThenByDescending(line => line.Part.GlueUp.Length.Amount)
            .ThenBy(line => line.Part.Label, StringComparer.Ordinal),
    ];

    private static string LeafOf(string label) => label[..label.LastIndexOf('·')];

    private sealed record Identity
    {
        public Identity(Part part)
        {
            Kind = part.Kind is PartKind.Stile or PartKind.Rail or PartKind.MidRail or PartKind.MidStile ? PartKind.Stile : part.Kind;
            Material = part.Material;
            Stock = part.Stock;
            Sizes = string.Join('|', part.Quantities.Select(quantity => quantity.Amount.ToString()));
            Work = string.Join('|', part.Work.Order());
            Hand = part.Hand;
            FaceDown = part.FaceDown;
            Shoulder = part.Shoulder?.Length;
            Arch = part.Arch is { } arch
                ? $"{arch.Family}|{arch.Span.Amount}|{arch.Rise.Amount}|{arch.Shoulder?.Amount}|{arch.Repeats}" : null;
        }

        private PartKind Kind { get; }
        private string Material { get; }
        private string Stock { get; }
        private string Sizes { get; }
        private string Work { get; }
        private Side? Hand { get; }
        private bool? FaceDown { get; }
        private Length? Shoulder { get; }
        private string? Arch { get; }
    }
}
