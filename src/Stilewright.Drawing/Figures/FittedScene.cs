using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Figures;

/// <summary>A drawing at the scale that was found for it.</summary>
/// <param name="Fits">False where even the smallest standard scale is too large for the room.</param>
public sealed record FittedScene(Scene Scene, bool Fits);
