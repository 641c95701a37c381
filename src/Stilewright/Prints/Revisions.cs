namespace Stilewright.Prints;

/// <summary>Short texts that differ where the content differs.</summary>
/// <param name="Projects">By the project's id.</param>
public sealed record Revisions(string Standard, IReadOnlyDictionary<string, string> Projects);
