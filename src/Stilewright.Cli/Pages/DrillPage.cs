using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>A drill on the screen; rules to be read are drawn on paper and pages only.</summary>
internal static class DrillPage
{
    public static Page Of(Drill drill, bool showsKey, IReadOnlyList<MarkedItem>? marked)
    {
        var page = new Page();
        page.Title(string.Create(CultureInfo.InvariantCulture, $"Bench {drill.Bench}: drill {DrillWords.Fineness(drill.Settings)}"));
        foreach (var group in drill.Items.GroupBy(item => item.Kind))
        {
            page.Heading(DrillWords.Heading(group.Key));
            if (group.Key == DrillKind.ReadRule)
                page.Line("Rules are drawn on paper: print the drill with --out.", Tone.Quiet);
            else if (DrillWords.Task(group.Key, drill.Settings) is { Length: > 0 } task)
                page.Line(task, Tone.Quiet);
            foreach (var item in group)
                page.Line(string.Create(CultureInfo.InvariantCulture, $"{item.Number}  {(item.Question.Length > 0 ? item.Question : "arrow at")} = ____ {(item.AnswerUnit == LengthUnit.Inch ? "in" : "mm")}"), Tone.Plain, 2);
        }

        if (marked is not null)
        {
            page.Heading(string.Create(CultureInfo.InvariantCulture, $"Marks: {marked.Count(each => each.IsRight == true)} of {marked.Count}"));
            page.Grid(["item", Column.Figure("answer"), "outcome"], marked.Where(each => each.Text is not null).Select(each => (IReadOnlyList<string>)
            [
                each.Item.Number.ToString(CultureInfo.InvariantCulture), each.Text!,
                each.IsRight == true ? "right" : each.Fault is { } fault ? $"cannot be read: {fault}"
                    : $"wrong: {DrillWords.Answer(each.Item)}{(each.Slip is { } slip ? $". {slip.Advice}" : "")}",
            ]));
        }

        if (showsKey)
        {
            page.Heading("Key");
            page.Grid(["item", Column.Figure("answer"), "a known slip gives"], drill.Items.Select(item => (IReadOnlyList<string>)
            [
                item.Number.ToString(CultureInfo.InvariantCulture), DrillWords.Answer(item),
                string.Join("; ", item.Slips.Select(slip => $"{slip.Written}: {TradeWords.Words(slip.Kind)}")),
            ]));
        }

        page.Line("").Line(string.Create(CultureInfo.InvariantCulture, $"Seed {drill.Seed}, bench {drill.Bench} and the same settings repeat this drill."), Tone.Quiet);
        return page.Footnotes();
    }
}
