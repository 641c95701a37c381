using System.Globalization;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Writing;
using Stilewright.Teaching.Drills;

namespace Stilewright.Drawing.Worksheets;

/// <summary>Drills as they go to paper: each bench's own, then one key for all. Rules are at full size.</summary>
/// <param name="Pages">Laid out while they are taken.</param>
public sealed record DrillPrint(PdfFacts Facts, IEnumerable<PdfPage> Pages)
{
    /// <param name="drills">At least one, all of the same settings and seed.</param>
    /// <param name="program">The version of the program.</param>
    /// <param name="now">In the time of the place; its day stands on every sheet.</param>
    public static DrillPrint Of(IReadOnlyList<Drill> drills, Paper paper, TeachingContents contents, string program, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(drills);
        return new(
            new($"Drill {DrillWords.Fineness(drills[0].Settings)}", $"Drills{WorksheetPrint.Key(contents)}", null, "drill, fractions, rule reading", $"Stilewright {program}", now.ToUniversalTime()),
            Lay(drills, paper, contents, new(program, DateOnly.FromDateTime(now.DateTime))).Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)));
    }

    private static IEnumerable<Sheet> Lay(IReadOnlyList<Drill> drills, Paper paper, TeachingContents contents, TeachingFacts facts)
    {
        var room = TitleBlock.Room(paper, hasNote: false);
        foreach (var drill in contents == TeachingContents.KeyOnly ? [] : drills)
        {
            var flow = new Flow(room);
            flow.Begin(new("", $"bench {drill.Bench.ToString(CultureInfo.InvariantCulture)}", false));
            flow.Add(DrillStrips.Of(drill, flow.Width));
            foreach (var laid in WorksheetPrint.Numbered(flow.End(), paper, Block(drill, drill.Bench)))
                yield return laid;
        }

        if (contents == TeachingContents.SheetsOnly)
            yield break;
        var key = new Flow(room);
        key.Begin(new("", "key", false));
        key.Add(Prose.Title("Key", key.Width, new Bookmark("Key", 1)));
        foreach (var drill in drills)
            key.Add(DrillStrips.Key(drill, key.Width, key.Height / 2));
        foreach (var laid in WorksheetPrint.Numbered(key.End(), paper, Block(drills[0], null)))
            yield return laid;

        TeachingBlock Block(Drill drill, int? bench) => new("drill", $"fractions and rules {DrillWords.Fineness(drill.Settings)}",
            string.Create(CultureInfo.InvariantCulture, $"seed {drill.Seed}{(bench is { } number ? $", bench {number}" : "")}"), bench, drill.Settings.Unit, facts);
    }
}
