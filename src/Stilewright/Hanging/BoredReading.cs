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
    /// <summary>Why it cannot be a reading of that leaf, with the fix; null where it can.</summary>
    public string? Problem(HungLeaf leaf, LengthFormat format)
    {
        var (height, width) = (leaf.Leaf.Height.Length, leaf.Leaf.Width.Length);
        foreach (var each in Distances)
        {
            if (!each.IsPositive || each >= height)
                return $"{format.PrintWithUnit(each)} is no place on {leaf.Leaf.Label}, which is {format.PrintWithUnit(height)} high: measure from one end to the centre of each cup.";
        }

        if (Distances.Distinct().Count() != Distances.Count)
            return "Two cups have one distance: give each cup once, all measured from the same end.";
        return Distance is { } distance && (distance.IsNegative || distance >= width)
            ? $"{format.PrintWithUnit(distance)} from the edge is no place on {leaf.Leaf.Label}, which is {format.PrintWithUnit(width)} wide." : null;
    }

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
