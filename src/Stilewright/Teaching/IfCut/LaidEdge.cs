using Stilewright.Measure;

namespace Stilewright.Teaching.IfCut;

/// <summary>Where an edge would lie: a place of the right leaf, and how far off it.</summary>
/// <param name="At">From the leaf's left or bottom edge.</param>
/// <param name="Off">To the right or upwards when positive.</param>
public readonly record struct LaidEdge(Length At, Length Off)
{
    public Length Place => At + Off;
}
