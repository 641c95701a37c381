using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.IfCut;

/// <summary>One thing that would happen were the parts of a leaf cut as a list says.</summary>
/// <param name="Numbers">The figures of the list that bring it about.</param>
/// <param name="Parts">The parts of the leaf it is about; empty where the list states the leaf's or front's own size.</param>
/// <param name="Amount">How far something is open, too much or missing; what is left of the wood at a crown. Not negative, but at a crown.</param>
/// <param name="Words">One sentence, its lengths shown in the reader's unit. It tells right sizes.</param>
public sealed record Consequence(
    ConsequenceKind Kind, SizedLeaf Leaf, IReadOnlyList<CheckedNumber> Numbers, IReadOnlyList<Part> Parts, Length Amount, FormattableString Words)
{
    /// <summary>How the amount comes about; null where it comes from several figures.</summary>
    public Worked? Working { get; init; }

    /// <summary>The parts that do not lie, or end, where they should; the others are in their places.</summary>
    public IReadOnlyList<LaidPart> Laid { get; init; } = [];

    public IReadOnlyList<Fault> Faults { get; init; } = [];

    /// <summary>Of a panel or pane: how it would stand in its groove.</summary>
    public GrooveFit? Fit { get; init; }

    /// <summary>Of a leaf of another size: what its edges would leave.</summary>
    public IReadOnlyList<EdgeChange> Edges { get; init; } = [];

    /// <summary>How many like parts it happens to; it is told and worked of the first.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Whether it comes of one of the figures of a mistake.</summary>
    public bool IsOf(Mistake mistake) => Numbers.Any(number => mistake.Numbers.Contains(number) || mistake.Follow.Contains(number));
}
