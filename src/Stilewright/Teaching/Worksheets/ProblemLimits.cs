using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

/// <summary>What numbers and features a random problem may have. Lists hold what may occur, each as likely as any other.</summary>
/// <param name="Reading">The step of the opening's sizes.</param>
/// <param name="Finest">Every result lies on this step; a draw of which one does not is thrown away.</param>
/// <param name="LeastLeaf">The least width and height that a leaf comes to, about.</param>
/// <param name="MostLeaf">The greatest width and height that a leaf comes to, about.</param>
public sealed record ProblemLimits(Length Reading, Length Finest, (Length Width, Length Height) LeastLeaf, (Length Width, Length Height) MostLeaf)
{
    /// <summary>Features that every problem has.</summary>
    public IReadOnlyList<ProblemFeature> Always { get; init; } = [];

    /// <summary>Features that a problem has or has not.</summary>
    public IReadOnlyList<ProblemFeature> Sometimes { get; init; } = [];

    public required IReadOnlyList<Length> Overlays { get; init; }

    /// <summary>Air between the leaves of an overlay pair.</summary>
    public required IReadOnlyList<Length> PairGaps { get; init; }

    /// <summary>Air round an inset front, and between the leaves of an inset pair.</summary>
    public required IReadOnlyList<Length> InsetGaps { get; init; }

    /// <summary>Widths of stiles, rails and mid rails.</summary>
    public required IReadOnlyList<Length> Members { get; init; }

    /// <summary>Depths of the groove, as long as which the cope is.</summary>
    public required IReadOnlyList<Length> GrooveDepths { get; init; }

    /// <summary>Clearance of a panel on each edge.</summary>
    public required IReadOnlyList<Length> Clearances { get; init; }

    public required IReadOnlyList<Length> Trims { get; init; }

    /// <summary>Rises of arches.</summary>
    public required IReadOnlyList<Length> Rises { get; init; }
}
