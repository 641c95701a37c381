using System.Text;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Writing;

/// <summary>Outlines as path data of SVG 2, in millimetres to 0.0001 mm.</summary>
public static class SvgPath
{
    public static string Of(params IEnumerable<Outline> outlines)
    {
        var data = new StringBuilder();
        foreach (var outline in outlines)
            Append(data, outline, default);
        return data.ToString();
    }

    /// <summary>Dashes of a line along an outline, as the attribute has them; null for a continuous line.</summary>
    public static string? Dashes(Outline outline, LineStyle style) =>
        DashFit.For(outline, style) is { Count: > 0 } dashes ? string.Join(' ', dashes.Select(Number)) : null;

    /// <summary>A number of millimetres as SVG has it.</summary>
    public static string Number(double millimetres) => SvgPlace.Number(millimetres);

    /// <param name="origin">Of the group that the path stands in, on the scene.</param>
    internal static void Append(StringBuilder data, Outline outline, SvgPlace origin)
    {
        Point(data, 'M', outline.Start, origin);
        var from = outline.Start;
        foreach (var segment in outline.WithShortArcs().Segments)
        {
            switch (segment)
            {
                case ArcTo arc:
                    // Arcs of a quarter turn at most are never the large one; sweep 1 is clockwise as seen, since y goes down.
                    var radius = SvgPlace.Number(from.DistanceTo(arc.Centre));
                    data.Append('A').Append(radius).Append(' ').Append(radius).Append(" 0 0 ").Append(arc.Clockwise ? '1' : '0');
                    Point(data, ' ', arc.End, origin);
                    break;
                case BezierTo curve:
                    Point(data, 'C', curve.FirstControl, origin);
                    Point(data, ' ', curve.SecondControl, origin);
                    Point(data, ' ', curve.End, origin);
                    break;
                default:
                    Point(data, 'L', segment.End, origin);
                    break;
            }

            from = segment.End;
        }

        if (outline.IsClosed)
            data.Append('Z');
    }

    private static void Point(StringBuilder data, char letter, PaperPoint point, SvgPlace origin)
    {
        var place = new SvgPlace(origin.Exact + point);
        data.Append(letter).Append(SvgPlace.Number(place.X - origin.X)).Append(' ').Append(SvgPlace.Number(place.Y - origin.Y));
    }
}
