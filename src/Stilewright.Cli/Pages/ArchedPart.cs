using Stilewright.Doors;

namespace Stilewright.Cli.Pages;

/// <summary>A part with a curve, and the curves of its leaf.</summary>
internal sealed record ArchedPart(ProjectBreakdown Project, SizedLeaf Leaf, LeafCurves Curves, Part Part);
