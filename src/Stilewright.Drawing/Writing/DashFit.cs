using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>Stretches or squeezes dashes so that an open line begins and ends with a dash and a closed one has no seam.</summary>
/// <remarks>Ends and corners of hidden and centre lines must be seen; ISO 128 asks that such lines begin, end and cross in dashes.</remarks>
internal static class DashFit
{
    private const double FlatteningMillimetres = 0.01;

    /// <returns>Dash and gap lengths in millimetres by turns; empty for a continuous line.</returns>
    public static IReadOnlyList<double> For(Outline outline, LineStyle style)
    {
        var dashes = style.DashesMillimetres;
        if (dashes.Count == 0)
            return dashes;
        var whole = Extent(outline);
        var period = dashes.Sum();
        var extra = outline.IsClosed ? 0 : dashes[0];
        var count = Math.Round((whole - extra) / period);
        if (count < 1)
            return [];
        var stretch = whole / (count * period + extra);
        return [.. dashes.Select(dash => dash * stretch)];
    }

    private static double Extent(Outline outline)
    {
        var points = outline.Flattened(FlatteningMillimetres);
        var extent = outline.IsClosed ? points[^1].DistanceTo(points[0]) : 0;
        for (var i = 1; i < points.Count; i++)
            extent += points[i].DistanceTo(points[i - 1]);
        return extent;
    }
}
