using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Measure;
using Stilewright.Teaching.Telling;
using Stilewright.Teaching.Worksheets;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>A worksheet on the screen: problem, lines with blanks, and on demand its key or how answers are marked.</summary>
internal static class WorksheetPage
{
    public static Page Of(Worksheet sheet, bool showsKey, MarkedSheet? marked)
    {
        var page = new Page();
        page.Title(string.Create(CultureInfo.InvariantCulture, $"Bench {sheet.Bench}, level {sheet.Level.Number}: {sheet.Level.Name}, in {new TradeWords(sheet.Format).Unit}"));
        page.Line(sheet.Problem);
        page.Line($"Given: {string.Join("; ", sheet.Givens.Select(given => $"{given.Label} {WorkedText.Figure(given.Quantity, sheet.Format)}"))}.");
        page.Heading(string.Create(CultureInfo.InvariantCulture, $"Lines, {sheet.Marks} marks"));
        foreach (var line in sheet.Lines)
        {
            var name = line.Letter.Length == 0 ? "" : $"{line.Letter}  ";
            page.Line($"{name}{line.Label}{(line.Pieces is [LinePiece.ToFill] ? "" : $" = {line.Formula}")}", Tone.Plain, line.Letter.Length == 0 ? 5 : 2);
            if (line.Pieces.Count > 0)
                page.Line(string.Concat(line.Pieces.Select(piece => Words(piece, sheet.Format))), Tone.Plain, 5);
        }

        if (marked is not null)
            AddMarks(page, sheet, marked);
        if (showsKey)
        {
            page.Heading("Key");
            foreach (var line in sheet.Lines.Where(line => line.Pieces.Count > 0))
                page.Line($"{line.Letter}  {line.Label} = {line.Formula}: {line.Arithmetic}  [{MarkScheme.Of(line)}]", Tone.Plain, 2);
            foreach (var rule in MarkScheme.Rules)
                page.Line(rule, Tone.Quiet);
        }

        if (sheet.Seed is { } seed)
        {
            var changed = sheet.Level.Changed.Length == 0 ? "" : $" with {sheet.Level.Changed}";
            page.Line("").Line(string.Create(CultureInfo.InvariantCulture, $"Seed {seed}, level {sheet.Level.Number}{changed}, bench {sheet.Bench} repeats this sheet."), Tone.Quiet);
        }

        return page.Footnotes();
    }

    private static void AddMarks(Page page, Worksheet sheet, MarkedSheet marked)
    {
        page.Heading(string.Create(CultureInfo.InvariantCulture, $"Marks: {marked.Earned} of {marked.Marks}"));
        page.Grid(["blank", "figure", Column.Figure("answer"), "outcome"], marked.Blanks.Select(each => (IReadOnlyList<string>)
        [
            each.Blank.Id, each.Blank.Label, each.Text ?? "", each.Outcome switch
            {
                BlankOutcome.Right => "right",
                BlankOutcome.Follows => $"follows from an earlier figure; alone it would be {WorkedText.Figure(each.Blank.Quantity, sheet.Format)}",
                BlankOutcome.Wrong => each.FollowThrough is { } through
                    ? $"wrong: after your figures {WorkedText.Figure(through, sheet.Format)}" : $"wrong: {WorkedText.Figure(each.Blank.Quantity, sheet.Format)}",
                BlankOutcome.Unreadable => $"cannot be read: {each.Fault}",
                _ => "not answered",
            },
        ]));
        foreach (var cause in Answers.Of(marked.Mistakes, Telling.All, sheet.Format))
        {
            page.Heading(cause.About);
            MarkPage.AddCause(page, cause);
        }
    }

    private static string Words(LinePiece piece, LengthFormat format) => piece switch
    {
        LinePiece.Words words => words.Text,
        LinePiece.Told told => WorkedText.Figure(told.Quantity, format),
        LinePiece.Carried carried => $"({carried.Letter})",
        LinePiece.ToFill fill => fill.Blank.IsResult ? "______" : $"____[{fill.Blank.Id}]",
        _ => throw new ArgumentOutOfRangeException(nameof(piece)),
    };
}
