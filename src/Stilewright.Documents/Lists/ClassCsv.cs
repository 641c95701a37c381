using System.Globalization;
using CsvHelper;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Drills;

namespace Stilewright.Documents.Lists;

/// <summary>What a class misses as comma-separated values (RFC 4180): lines for each week, then for each rule and for what is not explained in all, by week and by bench, then for each kind of drill.</summary>
public static class ClassCsv
{
    // What a spreadsheet would take for a formula is written as text.
    private static readonly CsvWriterOptions Options = CsvWriterOptions.Default with { Injection = CsvInjection.Escape };

    public static string Of(ClassReckoning found)
    {
        ArgumentNullException.ThrowIfNull(found);
        using var writer = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = CsvWriter.Create(writer, Options, leaveOpen: true))
        {
            csv.WriteRecord(["what", "week from", "bench", "times", "right", "figures right", "figures", "makers", "missed", "rule"]);
            foreach (var week in found.Weeks)
            {
                csv.WriteRecord(["lists", Day(week.Monday), "all", Number(week.Lists), Number(week.RightLists), "", "", "", "", ""]);
                csv.WriteRecord(["worksheets", Day(week.Monday), "all", Number(week.Worksheets), Number(week.RightWorksheets), "", "", "", "", ""]);
                csv.WriteRecord(["lists and worksheets", Day(week.Monday), "all", Number(week.Lists + week.Worksheets), Number(week.RightLists + week.RightWorksheets), Number(week.RightFigures), Number(week.AllFigures), "", "", ""]);
                csv.WriteRecord(["drills", Day(week.Monday), "all", Number(week.Drills), "", "", "", "", "", ""]);
            }

            foreach (var rule in found.Rules)
                Write("rule", rule);
            if (found.NotExplained is { } unknown)
                Write("not explained", unknown);
            foreach (var kind in found.Drills)
            {
                var what = $"drill: {DrillWords.Heading(kind.Kind)}";
                csv.WriteRecord([what, "all", "all", "", "", Number(kind.Right), Number(kind.Asked), Number(kind.Makers), "", ""]);
                foreach (var (week, (asked, right)) in found.Weeks.Zip(kind.Weeks).Where(each => each.Second.Asked > 0))
                    csv.WriteRecord([what, Day(week.Monday), "all", "", "", Number(right), Number(asked), "", "", ""]);
            }

            void Write(string what, MissedRule rule)
            {
                var missed = string.Join(" ", rule.Ways.Select(way => way.Missed));
                csv.WriteRecord([what, "all", "all", Number(rule.Lists), "", "", "", Number(rule.Makers), missed, rule.Rule]);
                foreach (var (week, lists) in found.Weeks.Zip(rule.Weeks).Where(each => each.Second > 0))
                    csv.WriteRecord([what, Day(week.Monday), "all", Number(lists), "", "", "", "", missed, rule.Rule]);
                foreach (var (bench, lists) in rule.Benches)
                    csv.WriteRecord([what, "all", Number(bench), Number(lists), "", "", "", "", missed, rule.Rule]);
            }
        }

        return writer.ToString();
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
