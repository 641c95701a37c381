using Stilewright.Teaching.Drills;

namespace Stilewright.Teaching.ClassView;

/// <summary>One finished drill, as it is remembered.</summary>
/// <param name="Maker">Tells makers apart; no name.</param>
/// <param name="Day">When it was finished, by the shop's calendar.</param>
/// <param name="Shares">How each kind of item went.</param>
public sealed record DrillAttempt(string Maker, int Bench, DateOnly Day, IReadOnlyList<DrillShare> Shares);
