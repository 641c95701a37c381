namespace Stilewright.Web.Desk;

/// <summary>A project that was cleared from its bench; nothing of it is lost.</summary>
/// <param name="Key">Of its document in the store.</param>
/// <param name="Bench">Where it was.</param>
/// <param name="Clearing">The revision of the course that cleared it; null in data files from before clearing was one.</param>
public sealed record ClearedBench(long Key, int Bench, string Name, RevisionEntry? Clearing);
