using SkiaSharp;

namespace Stilewright.Web.Tests.Pages;

/// <summary>How a page looks from a step back: a quarter of its size, in grey. Small enough to be kept, and to be compared with tolerance.</summary>
/// <remarks>A pixel agrees where the other picture has that brightness within a pixel of the same place, which is four on the screen: so
/// letters may be smoothed otherwise and a line may move a little. It is asked both ways, so that what is gone counts as much as what is new.</remarks>
internal sealed class Look
{
    /// <summary>How many pixels of the screen make one here.</summary>
    public const int Scale = 4;

    // Greys kept, of 256: sixteen steps keep the files small and hide what an encoder or a font's smoothing changes.
    private const int Step = 17;

    // Brightness, of 255, that may differ where all lies within a pixel.
    private const int Tolerance = 32;

    // The mean of what is beyond the tolerance, over a tile: less is not seen from a step back.
    private const double MostOfTile = 3;
    private const int Tile = 8;

    // Pixels by which a page may be longer or shorter: half a line of text.
    private const int MostLonger = 3;

    private readonly byte[] greys;

    private Look(int width, int height, byte[] greys) => (Width, Height, this.greys) = (width, height, greys);

    public int Width { get; }

    public int Height { get; }

    /// <summary>Of a picture as the browser took it.</summary>
    public static Look Of(byte[] picture)
    {
        using var whole = SKBitmap.Decode(picture);
        Look look = new(whole.Width / Scale, whole.Height / Scale, new byte[whole.Width / Scale * (whole.Height / Scale)]);
        var pixels = whole.Pixels;
        for (var y = 0; y < look.Height; y++)
        {
            for (var x = 0; x < look.Width; x++)
            {
                var sum = 0;
                for (var i = 0; i < Scale * Scale; i++)
                {
                    var pixel = pixels[((y * Scale) + (i / Scale)) * whole.Width + (x * Scale) + (i % Scale)];
                    // Luma of ITU-R BT.601, in thousandths.
                    sum += ((299 * pixel.Red) + (587 * pixel.Green) + (114 * pixel.Blue)) / 1000;
                }

                look.greys[(y * look.Width) + x] = (byte)((int)Math.Round(sum / (double)(Scale * Scale * Step)) * Step);
            }
        }

        return look;
    }

    public static Look Read(string path)
    {
        using var kept = SKBitmap.Decode(path).Copy(SKColorType.Gray8)!;
        return new(kept.Width, kept.Height, [.. kept.GetPixelSpan().ToArray().Chunk(kept.RowBytes).SelectMany(row => row.Take(kept.Width))]);
    }

    public void Write(string path)
    {
        using SKBitmap bitmap = new(new(Width, Height, SKColorType.Gray8, SKAlphaType.Opaque));
        for (var y = 0; y < Height; y++)
            greys.AsSpan(y * Width, Width).CopyTo(bitmap.GetPixelSpan()[(y * bitmap.RowBytes)..]);
        using var pixels = bitmap.PeekPixels() ?? throw new InvalidOperationException("A picture has no pixels.");
        using var data = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 9)) ?? throw new InvalidOperationException("A picture could not be written.");
        using var file = File.Create(path);
        data.SaveTo(file);
    }

    /// <summary>Where this differs from what was kept, in words; null where it does not.</summary>
    /// <param name="difference">What differs is dark; the pages stand behind it, pale.</param>
    public string? DifferenceFrom(Look kept, out Look difference)
    {
        difference = new(Math.Max(Width, kept.Width), Math.Max(Height, kept.Height), new byte[Math.Max(Width, kept.Width) * Math.Max(Height, kept.Height)]);
        Array.Fill(difference.greys, byte.MaxValue);
        var (width, height) = (Math.Min(Width, kept.Width), Math.Min(Height, kept.Height));
        List<(int X, int Y, double Mean)> tiles = [];
        for (var top = 0; top < height; top += Tile)
        {
            for (var left = 0; left < width; left += Tile)
            {
                var sum = 0;
                var (right, bottom) = (Math.Min(left + Tile, width), Math.Min(top + Tile, height));
                for (var y = top; y < bottom; y++)
                {
                    for (var x = left; x < right; x++)
                    {
                        var beyond = Math.Max(Beyond(kept, x, y), kept.Beyond(this, x, y));
                        sum += beyond;
                        difference.greys[(y * difference.Width) + x] = (byte)(beyond > 0 ? Math.Max(0, 160 - (2 * beyond)) : 215 + (greys[(y * Width) + x] * 40 / 255));
                    }
                }

                // Over a whole tile, also at the edge.
                if (sum > MostOfTile * Tile * Tile)
                    tiles.Add((left, top, sum / (double)(Tile * Tile)));
            }
        }

        List<string> words = [];
        if (Width != kept.Width)
            words.Add(FormattableString.Invariant($"it is {Width * Scale} px wide, and was {kept.Width * Scale}"));
        if (Math.Abs(Height - kept.Height) > MostLonger)
            words.Add(FormattableString.Invariant($"it is {Height * Scale} px long, and was {kept.Height * Scale}"));
        if (tiles.Count > 0)
        {
            words.Add(FormattableString.Invariant(
                $"{tiles.Count} places differ, from {tiles.Min(tile => tile.X) * Scale}, {tiles.Min(tile => tile.Y) * Scale} to {(tiles.Max(tile => tile.X) + Tile) * Scale}, {(tiles.Max(tile => tile.Y) + Tile) * Scale} px, the most at {tiles.MaxBy(tile => tile.Mean).X * Scale}, {tiles.MaxBy(tile => tile.Mean).Y * Scale} (by {tiles.Max(tile => tile.Mean):0.0}, allowed {MostOfTile:0.0})"));
        }

        return words.Count == 0 ? null : string.Join("; ", words);
    }

    // By how much a pixel is darker or lighter than all round that place in the other picture, less what is allowed.
    private int Beyond(Look other, int x, int y)
    {
        var (darkest, lightest) = (255, 0);
        for (var row = Math.Max(0, y - 1); row <= Math.Min(other.Height - 1, y + 1); row++)
        {
            for (var column = Math.Max(0, x - 1); column <= Math.Min(other.Width - 1, x + 1); column++)
            {
                var there = other.greys[(row * other.Width) + column];
                darkest = Math.Min(darkest, there);
                lightest = Math.Max(lightest, there);
            }
        }

        var here = greys[(y * Width) + x];
        return Math.Max(0, Math.Max(darkest - here, here - lightest) - Tolerance);
    }
}
