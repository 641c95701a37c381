using Stilewright.Measure;

namespace Stilewright.Wood;

/// <summary>The air at one edge of a leaf, to the frame or to the next leaf.</summary>
/// <param name="Path">The leaf whose edge it is; of a gap between two the left or upper one.</param>
/// <param name="Words">Which gap it is, such as "the gap on the right".</param>
/// <param name="AtMaking">As the sizes leave it.</param>
/// <param name="AtWettest">Less what the leaves grow there and the finish on both surfaces; below zero they bind.</param>
public sealed record SeasonGap(string Path, string Words, Worked AtMaking, Worked AtWettest);
