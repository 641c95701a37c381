using System.Diagnostics;
using System.Globalization;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Labels;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Writing;
using Stilewright.Shop;

namespace Stilewright.Bench;

/// <summary>The packet of 100 leaves, laid out and written as a PDF, and the first page of one project.</summary>
internal static class PacketMeasurement
{
    public static void Run()
    {
        var breakdown = Breakdown.Of(SampleCourses.Of(24, 100), ShippedStandards.Inch);
        var facts = new PacketFacts(Fingerprint.Of(breakdown), "0", new(2026, 1, 1));
        var settings = new PacketSettings(Paper.Letter)
        {
            Labels = new(ShippedLabelSheets.Plain(PaperKind.Letter), new LabelPrint()),
        };
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            var (pages, bytes) = (0, 0L);
            var whole = Timing.Of(3, 9, () => (pages, bytes) = Write(path, Packet.OfCourse(breakdown, facts, settings)));
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"packet: 24 benches, {breakdown.Leaves.Count()} leaves, {pages} sheets with labels, {bytes / 1e6:0.0} MB of PDF"));
            Console.WriteLine($"  laid out and written: {whole.Against(pages / 300.0 * 1000)}; {whole.Processor}");
            var laid = Timing.Of(3, 9, () => pages = Packet.OfCourse(breakdown, facts, settings).Count());
            Console.WriteLine($"  laid out only: {laid.Against(pages / 300.0 * 1000)}; {laid.Processor}");
            var first = Timing.Of(20, 21, () => Write(path, Packet.OfProject(breakdown, breakdown.Projects[0], facts, settings).Take(1)));
            Console.WriteLine($"  first page of one project, warm: {first.Against(150)}; {first.Processor}");
            using var process = Process.GetCurrentProcess();
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  peak memory of the process so far: {process.PeakWorkingSet64 / 1e6:0} MB"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static (int Pages, long Bytes) Write(string path, IEnumerable<Sheet> sheets)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.ReadWrite);
        var pages = 0;
        PdfWriter.Write(file, new("Packet", "", null, "", "bench", DateTimeOffset.UnixEpoch),
            sheets.Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)).Select(page => (page, ++pages).page));
        return (pages, file.Length);
    }
}
