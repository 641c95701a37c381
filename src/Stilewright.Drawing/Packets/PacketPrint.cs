using System.Globalization;
using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Writing;
using Stilewright.Prints;

namespace Stilewright.Drawing.Packets;

/// <summary>A packet as it goes to paper, and what it tells people.</summary>
/// <param name="Pages">Laid out while they are taken.</param>
public sealed record PacketPrint(PdfFacts Facts, IEnumerable<PdfPage> Pages, HandedOut HandedOut)
{
    /// <param name="benches">Those printed, at least one; null for the whole course, with its overview.</param>
    /// <param name="program">The version of the program.</param>
    /// <param name="now">In the time of the place; its day stands on every sheet.</param>
    public static PacketPrint Of(Breakdown breakdown, IReadOnlyList<ProjectBreakdown>? benches, PacketSettings settings, string program, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(breakdown);
        var revisions = Fingerprint.Of(breakdown);
        var facts = new PacketFacts(revisions, program, DateOnly.FromDateTime(now.DateTime));
        var sheets = benches is null
            ? Packet.OfCourse(breakdown, facts, settings)
            : Packet.OfProjects(breakdown, benches, facts, settings);
        var handedOut = HandedOut.Of(breakdown, benches ?? breakdown.Projects,
            benches is null ? HandedOutExtent.WholeCourse : HandedOutExtent.Benches, revisions, program, now);
        return new(
            new(Title(breakdown, benches), $"Drawings, parts and working of {handedOut.What}", null, "doors, drawer fronts, parts, cut list",
                $"Stilewright {program}", now.ToUniversalTime()),
            sheets.Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)), handedOut);
    }

    private static string Title(Breakdown breakdown, IReadOnlyList<ProjectBreakdown>? benches) => benches switch
    {
        null => breakdown.Course.Name,
        [var one] => string.Create(CultureInfo.InvariantCulture, $"{breakdown.Course.Name}: bench {one.Project.Bench}, {one.Project.Name}"),
        _ => $"{breakdown.Course.Name}: benches {string.Join(", ", benches.Select(each => each.Project.Bench.ToString(CultureInfo.InvariantCulture)))}",
    };
}
