namespace Stilewright.Teaching.Drills;

/// <summary>How many items of one kind were asked and answered rightly.</summary>
public readonly record struct DrillShare(DrillKind Kind, int Asked, int Right);
