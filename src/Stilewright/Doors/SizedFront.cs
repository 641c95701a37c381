using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Doors;

/// <summary>What is left at one corner of a front: how far the front reaches past the opening there, sideways and upright.</summary>
/// <param name="Sideways">Overlay when positive, gap when negative.</param>
/// <param name="Upright">Overlay when positive, gap when negative.</param>
public sealed record CornerReach(Side Upper, Side Hand, Length Sideways, Length Upright);

/// <summary>What one edge of a front leaves.</summary>
/// <param name="Reach">How far the front reaches past the used rectangle: overlay when positive, gap when negative.</param>
/// <param name="Rule">The quantity that was asked for: overlay, gap or lip cover.</param>
/// <param name="Reveal">Frame left visible to the neighbour or the frame's edge; null where it is not known.</param>
/// <param name="Neighbours">The ids of the openings beyond.</param>
public sealed record EdgeReach(Side Side, Length Reach, Worked Rule, BeyondKind Beyond, Length? Reveal, IReadOnlyList<string> Neighbours)
{
    /// <summary>Width of the frame member on that edge; null where nobody entered it.</summary>
    public Length? Member { get; init; }
}

/// <summary>The front of one opening, or a loose front, with its leaves.</summary>
/// <param name="Path">The opening's id.</param>
/// <param name="Label">Bench and opening, such as <c>7·2</c>.</param>
/// <param name="Mount">How it sits; null for a loose front.</param>
/// <param name="Figure">The opening's figure; null for a loose front, and where the opening is not measured.</param>
/// <param name="Width">Width of the front before it is put on the cutting step; null where the opening is not measured.</param>
/// <param name="Height">Height of the front before it is put on the cutting step; null where the opening is not measured.</param>
/// <param name="Gap">The air between leaves that results; null for one leaf or lapped leaves.</param>
/// <param name="Place">Its place on the face, from the bottom left of the frame; null where no layout tells.</param>
public sealed record SizedFront(
    string Path, string Label, string Name, Mount? Mount, OpeningFigure? Figure, Worked? Width, Worked? Height, Worked? Gap,
    IReadOnlyList<EdgeReach> Edges, IReadOnlyList<CornerReach> Corners, Rectangle? Place, IReadOnlyList<SizedLeaf> Leaves)
{
    /// <summary>What is known of an opening that cannot be sized yet; null where it can be.</summary>
    public UnmeasuredOpening? Unmeasured { get; init; }
}

/// <summary>One leaf: a door, a drawer front or a panel, and its parts.</summary>
/// <param name="Path">Opening and leaf, such as <c>hall-lower/leaf.left</c>.</param>
/// <param name="Label">Bench, opening and leaf, such as <c>7·2L</c>.</param>
/// <param name="Place">Its place on the face; on its front where no layout tells.</param>
/// <param name="Rabbeted">The edges that are rabbeted to lie in the opening or to lap a neighbour.</param>
/// <param name="Tapers">For a leaf planed to its opening, how far each edge tapers; else empty.</param>
public sealed record SizedLeaf(
    string Path, string Label, string Name, Worked Width, Worked Height, HingeSide Hinge, bool IsDrawerFront, string DesignName,
    Rectangle Place, IReadOnlyList<Side> Rabbeted, IReadOnlyDictionary<Side, Length> Tapers,
    IReadOnlyList<Part> Parts, IReadOnlyList<CheckSum> CheckSums)
{
    /// <summary>The design it is made by; null where the one that is named does not exist.</summary>
    public DoorDesign? Design { get; init; }

    /// <summary>The standard as it holds for this leaf.</summary>
    public required StandardInForce Standard { get; init; }

    /// <summary>True where a finding withholds the parts.</summary>
    public bool IsWithheld { get; init; }
}

/// <summary>A row or column whose members add up to the leaf, exactly.</summary>
/// <param name="Name">What is added up, such as "across, row 1".</param>
public sealed record CheckSum(string Name, IReadOnlyList<Worked> Terms, Worked Total)
{
    public bool Holds => Terms.Aggregate(Fractions.Fraction.Zero, (sum, term) => sum + term.Amount) == Total.Amount;

    /// <summary>The sum in figures: <c>2 1/4 + 7 11/16 + 2 1/4 = 12 3/16</c>.</summary>
    public string Text(LengthFormat format) =>
        $"{string.Join(" + ", Terms.Select(term => WorkedText.Figure(term, format)))} = {WorkedText.Figure(Total, format)}";
}
