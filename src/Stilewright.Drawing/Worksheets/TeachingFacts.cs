namespace Stilewright.Drawing.Worksheets;

/// <summary>What every sheet tells of the print.</summary>
/// <param name="ProgramVersion">Version of the program that made the figures.</param>
/// <param name="Date">The day of printing.</param>
public sealed record TeachingFacts(string ProgramVersion, DateOnly Date);
