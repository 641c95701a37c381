namespace Stilewright.Web.Desk;

/// <summary>A size that differs between two states of a bench.</summary>
/// <param name="Path">Of the leaf or part.</param>
/// <param name="Label">What is chalked on it.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Stage">Which size: finished, into the clamps, rough, thick.</param>
/// <param name="Was">In the reader's unit; null where it was not made.</param>
/// <param name="Now">In the reader's unit; null where it is not made any more.</param>
public sealed record SizeChange(string Path, string Label, string Name, string Stage, string? Was, string? Now);
