using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Hanging;

/// <summary>One step of hanging a leaf.</summary>
/// <param name="Amount">The figure that it turns on, with its working; null for none.</param>
/// <param name="IsCaution">Whether it keeps people from harm.</param>
/// <param name="IsOfHand">Whether it differs with the hand of the leaf.</param>
public sealed record HangingStep(string Title, FormattableString Words, Worked? Amount, Source Source, bool IsCaution = false, bool IsOfHand = false);
