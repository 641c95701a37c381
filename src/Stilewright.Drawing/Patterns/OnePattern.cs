using Stilewright.Curves;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>What is needed to tell how far one hard pattern for rail and panel is set down on the panel.</summary>
/// <param name="GrooveDepth">d, of the leaf's cutters.</param>
/// <param name="Step">The step that a set-down is put on.</param>
/// <param name="LeastEngagement">What the panel's edge must stand in its groove everywhere.</param>
/// <param name="Rack">The shop's hard patterns.</param>
/// <param name="IsAsked">Whether the shop saws one pattern, even where none of the rack serves.</param>
public sealed record OnePattern(Length GrooveDepth, Length Step, Length LeastEngagement, IReadOnlyList<HardPattern> Rack, bool IsAsked);
