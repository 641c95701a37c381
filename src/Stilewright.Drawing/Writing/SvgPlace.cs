using System.Globalization;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>A place on a scene in whole counts of 0.0001 mm, so that nested groups add no error of rounding.</summary>
internal readonly record struct SvgPlace(PaperPoint Exact)
{
    private const double Steps = 10_000;

    public long X => Counted(Exact.X);
    public long Y => Counted(Exact.Y);

    public static long Counted(double millimetres) => (long)Math.Round(millimetres * Steps, MidpointRounding.AwayFromZero);

    public static string Number(long count) => ((decimal)count / 10_000).ToString("0.####", CultureInfo.InvariantCulture);

    public static string Number(double millimetres) => Number(Counted(millimetres));
}
