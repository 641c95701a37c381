using System.Globalization;
using System.Text;

namespace Stilewright.Drawing.Tests.Writing;

/// <summary>A picture of a page in shades of grey.</summary>
/// <param name="Dots">By row from the top, 0 for black and 255 for white.</param>
internal sealed record GreyPicture(int Width, int Height, byte[] Dots)
{
    /// <summary>A portable grey map, as netpbm describes it: P5, width, height and 255 with one white space after each, then the dots.</summary>
    public static GreyPicture Read(byte[] file)
    {
        var at = 0;
        Assert.Equal("P5", Word());
        var (width, height) = (int.Parse(Word(), CultureInfo.InvariantCulture), int.Parse(Word(), CultureInfo.InvariantCulture));
        Assert.Equal("255", Word());
        Assert.Equal(width * height, file.Length - at);
        return new(width, height, file[at..]);

        string Word()
        {
            var from = at;
            while (!char.IsWhiteSpace((char)file[at]))
                at++;
            return Encoding.ASCII.GetString(file, from, at++ - from);
        }
    }

    public GreyPicture Part(int left, int top, int width, int height) => new(width, height,
        [.. Enumerable.Range(top, height).SelectMany(y => Dots.Skip(y * Width + left).Take(width))]);
}
