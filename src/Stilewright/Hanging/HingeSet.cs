using Stilewright.Measure;

namespace Stilewright.Hanging;

/// <summary>How many hinges a leaf gets, and where they go along its hinge edge.</summary>
/// <param name="Along">The length of the hinge edge: the leaf's height, or its width where it is hinged at top or bottom.</param>
/// <param name="Places">From the bottom up; from the left, seen from the front, where it is hinged at top or bottom.</param>
public sealed record HingeSet(HingeNumber Number, Worked Along, IReadOnlyList<HingePlace> Places);

/// <summary>Where one hinge goes, to its centre.</summary>
/// <param name="FromStart">From the bottom of the leaf, or from its left end.</param>
/// <param name="FromEnd">From the top of the leaf, or from its right end.</param>
/// <param name="Why">Why it is not where it would be, as the end of a sentence; null where it is.</param>
public sealed record HingePlace(Worked FromStart, Worked FromEnd, string? Why = null);
