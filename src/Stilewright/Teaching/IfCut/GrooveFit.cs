using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Teaching.IfCut;

/// <summary>How one edge of a panel or pane would stand in its groove.</summary>
/// <param name="Filling">The panel or pane.</param>
/// <param name="IsAcross">Whether it is an upright edge, seen from above; else a level one, seen from the side.</param>
/// <param name="Depth">Depth of the groove.</param>
/// <param name="Reach">How far the edge stands in the groove, slid away from it as far as it goes; negative where it has left it.</param>
/// <param name="RightReach">The same of the right panel in the right leaf.</param>
/// <param name="Open">How far the edge, at the bottom of the groove, holds the joint beside it open; zero where it does not.</param>
public sealed record GrooveFit(Part Filling, bool IsAcross, Length Depth, Length Reach, Length RightReach, Length Open);
