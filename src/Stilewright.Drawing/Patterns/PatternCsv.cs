using System.Globalization;
using CsvHelper;
using Stilewright.Curves;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>The curves of patterns as comma-separated values (RFC 4180), from the middle of the spring line: across to the right, and off it into the arch.</summary>
public static class PatternCsv
{
    /// <summary>How far the straight lines between listed points may lie from the curve, in inches.</summary>
    public const double ToleranceInches = 0.001;

    public static string Points(IEnumerable<FullSizePattern> patterns, LengthUnit unit) => Write(
        ["part", "line", "point", "across", "off spring line", "unit"],
        patterns.SelectMany(pattern => pattern.Lines, (pattern, line) => (pattern, line)).SelectMany(
            each => each.line.Chain.Flattened(ToleranceInches).Select((point, i) => (IReadOnlyList<string>)
            [
                each.pattern.Part.Label, each.line.Name, Count(i + 1), Number(point.X, unit), Number(point.Y, unit), Name(unit),
            ])));

    public static string Arcs(IEnumerable<FullSizePattern> patterns, LengthUnit unit) => Write(
        [
            "part", "line", "stretch", "kind", "start across", "start off spring line", "end across", "end off spring line",
            "centre across", "centre off spring line", "radius", "direction", "unit",
        ],
        patterns.SelectMany(pattern => pattern.Lines, (pattern, line) => (pattern, line)).SelectMany(
            each => each.line.Chain.Segments.Select((segment, i) => (IReadOnlyList<string>)
            [
                each.pattern.Part.Label, each.line.Name, Count(i + 1), segment is ArcSegment ? "arc" : "line",
                Number(segment.Start.X, unit), Number(segment.Start.Y, unit), Number(segment.End.X, unit), Number(segment.End.Y, unit),
                .. Circle(segment as ArcSegment, unit),
                Name(unit),
            ])));

    private static IEnumerable<string> Circle(ArcSegment? arc, LengthUnit unit) => arc is null ? ["", "", "", ""]
        : [Number(arc.Centre.X, unit), Number(arc.Centre.Y, unit), Number(arc.Radius, unit), arc.SweepRadians > 0 ? "counter-clockwise" : "clockwise"];

    private static string Write(IReadOnlyList<string> head, IEnumerable<IReadOnlyList<string>> rows)
    {
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(writer, CsvWriterOptions.Default, leaveOpen: true))
        {
            csv.WriteRecord([.. head]);
            foreach (var row in rows)
                csv.WriteRecord([.. row]);
        }

        return writer.ToString();
    }

    private static string Count(int number) => number.ToString(CultureInfo.InvariantCulture);

    // Six places of an inch, or five of a millimetre, are far below what can be sawn; nothing is written as -0.
    private static string Number(double inches, LengthUnit unit) => (unit == LengthUnit.Inch
        ? Math.Round((decimal)inches, 6) : Math.Round((decimal)inches * 25.4m, 5)).ToString("0.######", CultureInfo.InvariantCulture);

    private static string Name(LengthUnit unit) => unit == LengthUnit.Inch ? "in" : "mm";
}
