using Stilewright.Prints;

namespace Stilewright.Drawing.Packets;

/// <summary>What a packet was printed from, and when; it stands in the title block of every sheet.</summary>
/// <param name="Revisions">Of the house standard and of every project printed.</param>
/// <param name="ProgramVersion">Version of the program that made the figures.</param>
/// <param name="Date">The day of printing.</param>
public sealed record PacketFacts(Revisions Revisions, string ProgramVersion, DateOnly Date);
