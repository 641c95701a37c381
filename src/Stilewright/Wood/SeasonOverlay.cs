using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>What a slab laps over the frame on one edge.</summary>
/// <param name="AtDriest">Less what the slab shrinks there.</param>
public sealed record SeasonOverlay(string Path, Side Side, Worked AtMaking, Worked AtDriest);
