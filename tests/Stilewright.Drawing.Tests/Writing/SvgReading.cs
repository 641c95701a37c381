using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Tests.Writing;

/// <summary>Reads the places in an SVG back to the scene, by following its transforms.</summary>
internal static partial class SvgReading
{
    public static XNamespace Svg { get; } = "http://www.w3.org/2000/svg";

    /// <summary>Start, control and end points of every path, in the order of the file.</summary>
    public static IEnumerable<(XElement Element, IReadOnlyList<PaperPoint> Points)> Paths(XDocument svg) =>
        from path in svg.Descendants(Svg + "path")
        let origin = Origin(path)
        select (path, (IReadOnlyList<PaperPoint>)[.. Points(path.Attribute("d")!.Value).Select(point => point + origin)]);

    /// <summary>Baseline starts of every run of letters.</summary>
    public static IEnumerable<(XElement Element, PaperPoint At)> Runs(XDocument svg) =>
        from run in svg.Descendants(Svg + "tspan")
        let own = new PaperPoint(Number(run.Attribute("x")!.Value), Number(run.Attribute("y")!.Value))
        let isTurned = run.Parent!.Attribute("transform")?.Value.EndsWith("rotate(-90)", StringComparison.Ordinal) == true
        select (run, Origin(run) + (isTurned ? new PaperPoint(own.Y, -own.X) : own));

    private static PaperPoint Origin(XElement element)
    {
        var origin = default(PaperPoint);
        foreach (var around in element.Ancestors())
        {
            if (around.Attribute("transform") is not { } transform)
                continue;
            var match = TranslatePattern().Match(transform.Value);
            Assert.True(match.Success, transform.Value);
            origin += new PaperPoint(Number(match.Groups[1].Value), Number(match.Groups[2].Value));
        }

        return origin;
    }

    private static IEnumerable<PaperPoint> Points(string data)
    {
        foreach (Match command in CommandPattern().Matches(data))
        {
            double[] numbers = [.. NumberPattern().Matches(command.Groups[2].Value).Select(match => Number(match.Value))];
            var first = command.Groups[1].Value == "A" ? 5 : 0;
            for (var i = first; i + 1 < numbers.Length; i += 2)
                yield return new(numbers[i], numbers[i + 1]);
        }
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^translate\((\S+) (\S+)\)( rotate\(-90\))?$")]
    private static partial Regex TranslatePattern();

    [GeneratedRegex("([MLACZ])([^MLACZ]*)")]
    private static partial Regex CommandPattern();

    [GeneratedRegex(@"-?\d+(\.\d+)?")]
    private static partial Regex NumberPattern();
}
