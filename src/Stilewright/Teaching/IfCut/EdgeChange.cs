using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Teaching.IfCut;

/// <summary>How far a front reaches past its opening at one edge: overlay when positive, gap when negative.</summary>
/// <param name="Side">The edge.</param>
/// <param name="Right">As it should be.</param>
/// <param name="IfCut">As it would be, the front being hung in the middle.</param>
/// <param name="Collides">By how much it would run into its neighbour; zero where it does not.</param>
public sealed record EdgeChange(Side Side, Length Right, Length IfCut, Length Collides);
