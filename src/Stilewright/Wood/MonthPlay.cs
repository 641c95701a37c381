using Fractions;
using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>A panel in the middle of one month.</summary>
/// <param name="Month">1 to 12.</param>
/// <param name="Moisture">Moisture content, %.</param>
/// <param name="Width">Across the grain.</param>
/// <param name="Play">Left in each groove where it is pinned, in both together where it is free; below zero it presses.</param>
/// <param name="Engagement">The least that an edge stands in its groove; below zero it has come out.</param>
public sealed record MonthPlay(int Month, Fraction Moisture, Length Width, Length Play, Length Engagement);
