namespace Stilewright.Teaching.Checking;

/// <summary>What a maker missed: the kind of slip and what it concerns.</summary>
/// <param name="Subject">The quantity it concerns, such as <c>groove</c> or <c>overlay</c>; see <see cref="Subjects"/>.</param>
/// <param name="Instead">What was taken instead, or another detail that tells causes of one kind apart; empty where nothing is to be told.</param>
/// <param name="Variant">Tells causes apart that are told in the same words, such as two ways to misread one figure; empty where there is one only.</param>
public sealed record Cause(SlipKind Kind, string Subject, string Instead = "", string Variant = "");
