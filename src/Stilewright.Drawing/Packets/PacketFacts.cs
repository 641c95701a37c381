namespace Stilewright.Drawing.Packets;

/// <summary>What a packet was printed from, and when; it stands in the title block of every sheet.</summary>
/// <param name="ProjectRevision">Revision of the document that holds the projects.</param>
/// <param name="StandardRevision">Revision of the house standard.</param>
/// <param name="ProgramVersion">Version of the program that made the figures.</param>
/// <param name="Date">The day of printing.</param>
public sealed record PacketFacts(string ProjectRevision, string StandardRevision, string ProgramVersion, DateOnly Date);
