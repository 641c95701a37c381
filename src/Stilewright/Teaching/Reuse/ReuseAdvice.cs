namespace Stilewright.Teaching.Reuse;

/// <summary>What can be done with a wrong piece.</summary>
/// <param name="Options">By the rungs of the ladder, within a rung the piece's own part and leaf first; remaking it is always the last.</param>
/// <param name="Unsafe">What the sizes would allow and a machine's limit forbids.</param>
public sealed record ReuseAdvice(CutPiece Piece, IReadOnlyList<ReuseOption> Options, IReadOnlyList<ReuseOption> Unsafe);
