using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>What to turn on hung doors, and the gaps before and after.</summary>
internal static class AdjustPage
{
    public static Page Of(Breakdown breakdown, IReadOnlyList<AdjustedRow> rows, LengthFormat format)
    {
        var page = new Page().Title($"{breakdown.Course.Name}: adjusting").Line($"Gaps in {new TradeWords(format).Unit}. {AdjustingWords.BeforeTurning}");
        foreach (var row in rows)
        {
            var words = new AdjustingWords(row.Plan, format);
            page.Heading(row.Row.Name).Line(words.Summary());
            foreach (var (leaf, index) in row.Task.Leaves.Select((leaf, index) => (leaf, index)))
            {
                var moves = words.Moves(index);
                if (moves.Count == 0)
                    continue;
                page.Line($"{leaf.Label}:");
                foreach (var (move, number) in moves.Select((move, number) => (move, number + 1)))
                    page.Line($"{number}. {move}", indent: 1);
            }

            page.Grid(["gap", Column.Figure("now"), Column.Figure("after"), Column.Figure("should be")],
                row.Plan.After.Gaps.Select(gap => (IReadOnlyList<string>)[AdjustingWords.Place(gap.Reading), format.Print(gap.Reading.Gap), format.Print(gap.After), format.Print(gap.Target)]));
            page.Grid(["corner", "now", "after"],
                row.Plan.After.Corners.Select(corner => (IReadOnlyList<string>)[$"{corner.Reading.Leaf}, {AdjustingWords.Corner(corner.Reading.Corner)}", AdjustingWords.Proud(corner.Reading.Proud, format), AdjustingWords.Proud(corner.After, format)]));
            foreach (var remedy in row.Plan.Remedies)
            {
                var lines = words.Lines(remedy);
                page.Line(lines[0], Tone.Caution);
                foreach (var line in lines.Skip(1))
                    page.Line(line, indent: 1);
            }

            if (words.LastResort() is { } last)
                page.Line(last, Tone.Caution);
        }

        return page.Footnotes();
    }
}
