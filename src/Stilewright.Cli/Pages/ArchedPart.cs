using Stilewright.Doors;
using Stilewright.Drawing.Figures;

namespace Stilewright.Cli.Pages;

/// <summary>A part with a curve, and what is known of its leaf.</summary>
internal sealed record ArchedPart(ProjectBreakdown Project, SizedLeaf Leaf, LeafDetail Detail, Part Part);
