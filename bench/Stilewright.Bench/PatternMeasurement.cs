using System.Globalization;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Bench;

/// <summary>The curves and patterns of one arched leaf, and the patterns of 100 leaves as a PDF.</summary>
internal static class PatternMeasurement
{
    private const int Times = 200;

    public static void Run()
    {
        // One design in four is arched.
        var breakdown = Breakdown.Of(SampleCourses.Of(24, 400), ShippedStandards.Inch);
        var leaves = (
            from project in breakdown.Projects
            from leaf in project.Fronts.SelectMany(front => front.Leaves)
            where leaf.Parts.Any(part => part.Arch is not null)
            select (leaf, LeafDetail.Of(breakdown.Course, project, leaf).Cutters)).Take(100).ToList();
        PatternFigure figure = new("1a2b3c4d", new(LengthUnit.Inch, 32));
        var (one, cutters) = leaves[0];
        Console.WriteLine($"patterns: {leaves.Count} arched leaves");

        var curves = Timing.Of(3, 9, () => Repeat(() => LeafCurves.Of(one, cutters)));
        Console.WriteLine($"  {Times} times the curves and offsets of one leaf (sight lines, grooves, outlines, panel edge, field): {curves.Against(Times * 0.2)}; {curves.Processor}");
        var count = 0;
        var drawn = Timing.Of(3, 9, () => Repeat(() => count = figure.Of(LeafCurves.Of(one, cutters)).Count()));
        Console.WriteLine($"  {Times} times the same with its {count} patterns laid out as scenes: {drawn.Against(Times * 0.2)}; {drawn.Processor}");

        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            var pages = 0;
            var written = Timing.Of(2, 7, () => pages = Write(path, leaves.SelectMany(each => figure.Of(LeafCurves.Of(each.leaf, each.Cutters)))));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  {leaves.Count} leaves as pattern PDF, {pages} sheets of letter: {written.Against(pages / 100.0 * 1000)}; {pages / written.MedianMilliseconds * 1000:0} pages/s; {written.Processor}"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static void Repeat(Action work)
    {
        for (var i = 0; i < Times; i++)
            work();
    }

    private static int Write(string path, IEnumerable<PatternResult> patterns)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.ReadWrite);
        Tiling tiling = new(PatternPaper.All[0], PrintCorrection.None, LengthUnit.Inch);
        var pages = 0;
        PdfWriter.Write(file, new("Patterns", "", null, "", "bench", DateTimeOffset.UnixEpoch),
            tiling.Lay(patterns.OfType<PatternResult.Drawn>().Select(drawn => drawn.Pattern), "bench 1").SelectMany(laid => laid.Tiled.Sheets)
                .Select(scene => new PdfPage(scene, [])).Select(page => (page, ++pages).page));
        return pages;
    }
}
