using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Figures;

/// <summary>Finds the scale at which a drawing fills its room.</summary>
public static class Fit
{
    /// <summary>The drawing at the largest standard scale at which it fits the room, or at the smallest of all.</summary>
    /// <param name="unit">Whose readers' standard scales are tried.</param>
    /// <param name="widthMillimetres">Width of the room on paper.</param>
    /// <param name="heightMillimetres">Height of the room on paper.</param>
    /// <param name="draw">Makes the drawing at a scale.</param>
    /// <param name="thing">Width and height of the thing itself; scales at which it alone is too large are not drawn. Null when not known.</param>
    /// <param name="scales">What is tried, from large to small; the standard scales that reduce when null.</param>
    public static FittedScene Largest(
        LengthUnit unit, double widthMillimetres, double heightMillimetres, Func<Scale, Scene> draw, (Length Width, Length Height)? thing = null,
        IReadOnlyList<Scale>? scales = null)
    {
        const double ToleranceMillimetres = 1e-6;
        bool IsWithin(double width, double height) =>
            width <= widthMillimetres + ToleranceMillimetres && height <= heightMillimetres + ToleranceMillimetres;

        scales ??= Scale.Of(unit);
        foreach (var scale in scales)
        {
            if (thing is var (width, height) && !IsWithin(scale.OnPaper(width), scale.OnPaper(height)))
                continue;
            var scene = draw(scale);
            if (IsWithin(scene.WidthMillimetres, scene.HeightMillimetres))
                return new(scene, true);
        }

        return new(draw(scales[^1]), false);
    }
}
