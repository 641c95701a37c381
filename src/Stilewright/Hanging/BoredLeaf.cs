using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Hanging;

/// <summary>The borings of a leaf with an upright hinge edge, seen from the front with its top up.</summary>
/// <param name="Edge">Left or right.</param>
/// <param name="FromTop">Distances to the centres, from the top down.</param>
public sealed record BoredLeaf(Side Edge, IReadOnlyList<Length> FromTop, Length Height)
{
    /// <summary>The door that it is: hinged where it is bored.</summary>
    public HingeSide Hand => Edge == Side.Left ? HingeSide.Left : HingeSide.Right;

    /// <summary>The same leaf after half a turn in its own plane, its face still in front.</summary>
    public BoredLeaf TurnedEndForEnd() => new(FrontSizing.Opposite(Edge), [.. FromTop.Reverse().Select(each => Height - each)], Height);

    /// <summary>What a leaf should be bored to; null where its hinge edge is level or its hinge has no cup.</summary>
    public static BoredLeaf? Wanted(HungLeaf leaf) => leaf is { Hinge.Cup: not null, Leaf.Hinge: HingeSide.Left or HingeSide.Right }
        ? new(BoringSheet.EdgeOf(leaf.Leaf.Hinge), [.. leaf.Set.Places.Reverse().Select(place => place.FromEnd.Length)], leaf.Leaf.Height.Length) : null;

    /// <summary>Whether both are bored on one edge at the same places.</summary>
    public bool IsLike(BoredLeaf other, Length tolerance) => Edge == other.Edge && FromTop.Count == other.FromTop.Count
        && FromTop.Zip(other.FromTop).All(pair => Length.Abs(pair.First - pair.Second) <= tolerance);
}
