using System.Globalization;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Writing;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Drawing.Worksheets;

/// <summary>Worksheets as they go to paper: each bench's own, then one key for all.</summary>
/// <param name="Pages">Laid out while they are taken.</param>
public sealed record WorksheetPrint(PdfFacts Facts, IEnumerable<PdfPage> Pages)
{
    /// <param name="sheets">At least one, all of one level.</param>
    /// <param name="program">The version of the program.</param>
    /// <param name="now">In the time of the place; its day stands on every sheet.</param>
    public static WorksheetPrint Of(IReadOnlyList<Worksheet> sheets, Paper paper, TeachingContents contents, string program, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        var first = sheets[0];
        var title = first.Seed is null ? $"{first.Course.Name}: worksheets" : string.Create(CultureInfo.InvariantCulture, $"Worksheets, level {first.Level.Number}: {first.Level.Name}");
        return new(
            new(title, $"Worksheets{Key(contents)}: {first.Level.Teaches}", null, "worksheet, key, mark scheme", $"Stilewright {program}", now.ToUniversalTime()),
            Lay(sheets, paper, contents, new(program, DateOnly.FromDateTime(now.DateTime))).Select(sheet => new PdfPage(sheet.Scene, sheet.Bookmarks)));
    }

    private static IEnumerable<Sheet> Lay(IReadOnlyList<Worksheet> sheets, Paper paper, TeachingContents contents, TeachingFacts facts)
    {
        foreach (var sheet in contents == TeachingContents.KeyOnly ? [] : sheets)
        {
            foreach (var laid in OfBench(sheet, paper, facts))
                yield return laid;
        }

        if (contents == TeachingContents.SheetsOnly)
            yield break;
        foreach (var laid in KeyOf(sheets, paper, facts))
            yield return laid;
    }

    internal static IEnumerable<Sheet> OfBench(Worksheet sheet, Paper paper, TeachingFacts facts)
    {
        var flow = new Flow(TitleBlock.Room(paper, hasNote: false));
        flow.Begin(new("", $"bench {sheet.Bench.ToString(CultureInfo.InvariantCulture)}", false));
        flow.Add(WorksheetStrips.Of(sheet, flow.Width, flow.Height));
        return Numbered(flow.End(), paper, new TeachingBlock("worksheet", What(sheet), From(sheet, true), sheet.Bench, sheet.Format.Unit, facts));
    }

    internal static IEnumerable<Sheet> KeyOf(IReadOnlyList<Worksheet> sheets, Paper paper, TeachingFacts facts)
    {
        var key = new Flow(TitleBlock.Room(paper, hasNote: false));
        key.Begin(new("", "key", false));
        key.Add(WorksheetKey.Scheme(key.Width));
        foreach (var sheet in sheets)
            key.Add(WorksheetKey.Of(sheet, key.Width, key.Height / 2));
        return Numbered(key.End(), paper, new TeachingBlock("worksheet", What(sheets[0]), From(sheets[0], false), null, sheets[0].Format.Unit, facts));
    }

    internal static IEnumerable<Sheet> Numbered(IReadOnlyList<LaidSheet> sheets, Paper paper, BlockFacts facts)
    {
        var block = new TitleBlock(paper, facts);
        for (var i = 0; i < sheets.Count; i++)
            yield return block.Finish(sheets[i], i + 1, sheets.Count);
    }

    internal static string Key(TeachingContents contents) => contents switch
    {
        TeachingContents.SheetsOnly => "",
        TeachingContents.KeyOnly => ", the key",
        _ => " with key",
    };

    private static string What(Worksheet sheet) => string.Create(CultureInfo.InvariantCulture, $"level {sheet.Level.Number}: {sheet.Level.Name}");

    private static string From(Worksheet sheet, bool ofBench) => sheet.Seed is { } seed
        ? string.Create(CultureInfo.InvariantCulture, $"seed {seed}, level {sheet.Level.Number}{(sheet.Level.Changed.Length == 0 ? "" : $" with {sheet.Level.Changed}")}{(ofBench ? $", bench {sheet.Bench}" : "")}")
        : ofBench ? $"{sheet.Course.Name}, leaf {sheet.Leaf.Label}" : sheet.Course.Name;
}
