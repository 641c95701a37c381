using SkiaSharp;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>Writes a scene as a picture on white paper.</summary>
public static class PngWriter
{
    private const double MillimetresPerInch = 25.4;
    private const int Lossless = 100;

    /// <param name="dotsPerInch">Greater than zero.</param>
    /// <exception cref="ArgumentException">The scene has no area, or the picture would not fit into memory.</exception>
    public static void Write(Scene scene, Stream output, double dotsPerInch)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(dotsPerInch);
        var dotsPerMillimetre = dotsPerInch / MillimetresPerInch;
        var size = new SKImageInfo(
            (int)Math.Ceiling(scene.WidthMillimetres * dotsPerMillimetre - 1e-6),
            (int)Math.Ceiling(scene.HeightMillimetres * dotsPerMillimetre - 1e-6));
        using var surface = SKSurface.Create(size)
            ?? throw new ArgumentException($"A picture of {size.Width} by {size.Height} dots cannot be made.", nameof(scene));
        surface.Canvas.Clear(SKColors.White);
        surface.Canvas.Scale((float)dotsPerMillimetre);
        using var painter = new ScenePainter();
        painter.Paint(surface.Canvas, scene);
        using var picture = surface.Snapshot();
        using var bytes = picture.Encode(SKEncodedImageFormat.Png, Lossless);
        bytes.SaveTo(output);
    }
}
