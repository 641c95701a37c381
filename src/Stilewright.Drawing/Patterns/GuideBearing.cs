using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>A bearing that rides on a pattern while a cutter on the same axis leaves the edge.</summary>
/// <param name="BearingRadius">Of the bearing.</param>
/// <param name="CutterRadius">Of the cutter where it leaves the edge.</param>
public readonly record struct GuideBearing(Length BearingRadius, Length CutterRadius)
{
    /// <summary>How far the pattern lies inside the wood; outside when below zero.</summary>
    public Length Inward => BearingRadius - CutterRadius;
}
