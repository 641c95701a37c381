using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Hanging;

public enum LeafFace
{
    Front,
    Back,
}

/// <summary>What is found on a leaf that is bored already, read as it stands with its top up.</summary>
/// <param name="SeenFrom">The face that was looked at.</param>
/// <param name="Edge">The edge that is bored, left or right, as seen from that face.</param>
/// <param name="MeasuredFrom">The end that the distances were measured from: top or bottom.</param>
/// <param name="Distances">From that end to the centre of each cup.</param>
/// <param name="Distance">From the edge to the near edge of the cup, where it was measured.</param>
public sealed record BoredReading(LeafFace SeenFrom, Side Edge, Side MeasuredFrom, IReadOnlyList<Length> Distances, Length? Distance = null)
{
    /// <summary>The same seen from the front, measured from the top, in order from there.</summary>
    /// <param name="height">Of the leaf.</param>
    /// <exception cref="InvalidOperationException">The edge is neither left nor right, or the end neither top nor bottom.</exception>
    internal BoredLeaf On(Length height)
    {
        if (Edge is not (Side.Left or Side.Right) || MeasuredFrom is not (Side.Top or Side.Bottom))
            throw new InvalidOperationException("The edge is left or right, and the end top or bottom.");
        return new(SeenFrom == LeafFace.Back ? BoringSheet.FromBack(Edge) : Edge,
            [.. Distances.Select(each => MeasuredFrom == Side.Top ? each : height - each).OrderBy(each => each.Inches)], height);
    }
}
