using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Drawing.Dimensions;

/// <summary>One distance to be dimensioned beside a figure.</summary>
/// <param name="From">Where it begins along the side, in millimetres on paper: X for top and bottom, Y for left and right.</param>
/// <param name="To">Where it ends; the smaller of the two may come second.</param>
/// <param name="Value">The distance itself.</param>
public sealed record Span(double From, double To, Length Value)
{
    /// <summary>The path of the thing measured.</summary>
    public string? Path { get; init; }

    /// <summary>Said before the figure, such as "opening"; null for the figure alone.</summary>
    public string? Word { get; init; }

    /// <summary>How many times larger than the drawing's scale says the distance is drawn, so that it can be seen; the drawing states it.</summary>
    public int Exaggeration { get; init; } = 1;

    /// <summary>Stands in place of the figure, such as the letter by which a worksheet asks for it; null for the figure.</summary>
    public string? Letter { get; init; }
}

/// <summary>Distances on one line beside a figure: a chain when they follow one another, an overall size when there is one.</summary>
/// <param name="Side">The side of the figure it stands on. Rows of one side stand from the figure outwards in the order given.</param>
public sealed record DimensionRow(Side Side, IReadOnlyList<Span> Spans);
