using System.Globalization;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Worksheets;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Bench;

/// <summary>A class's worksheets and drills, drawn at random, laid out and written.</summary>
internal static class WorksheetMeasurement
{
    private const int Benches = 24;
    private const double GoalMilliseconds = 2000;

    public static void Run()
    {
        Console.WriteLine($"sheets: {Benches} benches, with the key");
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            var first = true;
            foreach (var level in Levels.Inch.Concat(Levels.Millimetre))
            {
                var pages = 0;
                ulong seed = 0;
                // The very first level is measured once cold besides.
                if (first)
                {
                    var cold = Timing.Of(0, 1, () => pages = Write(path, level, 0));
                    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  level {level.Number} in {level.Unit}, the first time in the process, {pages} pages: {cold.Against(GoalMilliseconds)}"));
                    first = false;
                }

                // Another seed each time.
                var warm = Timing.Of(1, 5, () => pages = Write(path, level, ++seed));
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  level {level.Number} in {level.Unit}, {pages} pages: {warm.Against(GoalMilliseconds)}; {warm.Processor}"));
            }

            var sheets = 0;
            var drills = Timing.Of(1, 5, () => sheets = Save(path, DrillPrint.Of(
                [.. Enumerable.Range(1, Benches).Select(bench => DrillMaker.Of(new(LengthUnit.Inch, 32, Enum.GetValues<DrillKind>()), 1, bench))],
                Paper.Letter, TeachingContents.SheetsAndKey, "bench", DateTimeOffset.UnixEpoch).Pages));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  drills to 1/32 in, {sheets} pages: {drills.Against(GoalMilliseconds)}; {drills.Processor}"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static int Write(string path, Level level, ulong seed) => Save(path, WorksheetPrint.Of(
        [.. RandomWorksheets.Of(level, seed).Take(Benches)], level.Unit == LengthUnit.Inch ? Paper.Letter : Paper.A4, TeachingContents.SheetsAndKey, "bench", DateTimeOffset.UnixEpoch).Pages);

    private static int Save(string path, IEnumerable<PdfPage> pages)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.ReadWrite);
        var count = 0;
        PdfWriter.Write(file, new("Worksheets", "", null, "", "bench", DateTimeOffset.UnixEpoch), pages.Select(page => (page, ++count).page));
        return count;
    }
}
