using System.Globalization;
using CsvHelper;
using Stilewright.Teaching.ClassView;

namespace Stilewright.Documents.Lists;

/// <summary>What a class misses as comma-separated values (RFC 4180), a line for each week, then for each rule in all, by week and by bench.</summary>
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
            csv.WriteRecord(["week from", "bench", "lists", "lists right", "figures right", "figures", "makers", "missed", "rule"]);
            foreach (var week in found.Weeks)
                csv.WriteRecord([week.Monday.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "all", Number(week.Lists), Number(week.RightLists), Number(week.RightFigures), Number(week.AllFigures), "", "", ""]);
            foreach (var rule in found.Rules)
            {
                var missed = string.Join(" ", rule.Ways.Select(way => way.Missed));
                csv.WriteRecord(["all", "all", Number(rule.Lists), "", "", "", Number(rule.Makers), missed, rule.Rule]);
                foreach (var (week, lists) in found.Weeks.Zip(rule.Weeks).Where(each => each.Second > 0))
                    csv.WriteRecord([week.Monday.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), "all", Number(lists), "", "", "", "", missed, rule.Rule]);
                foreach (var (bench, lists) in rule.Benches)
                    csv.WriteRecord(["all", Number(bench), Number(lists), "", "", "", "", missed, rule.Rule]);
            }
        }

        return writer.ToString();
    }

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
