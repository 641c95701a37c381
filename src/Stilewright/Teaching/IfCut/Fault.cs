using Stilewright.Measure;

namespace Stilewright.Teaching.IfCut;

/// <summary>A strip of a leaf's face that is open, too much or missing.</summary>
/// <param name="IsAcross">Whether it is measured across the leaf; else up it.</param>
/// <param name="From">One long edge of the strip.</param>
/// <param name="To">The other, off the same place.</param>
/// <param name="Low">Where the strip begins the other way.</param>
/// <param name="High">Where it ends.</param>
public sealed record Fault(FaultKind Kind, bool IsAcross, LaidEdge From, LaidEdge To, Length Low, Length High)
{
    public Length Amount => Length.Abs(To.Off - From.Off);
}
