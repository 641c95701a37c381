using Stilewright.Documents.Lists;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Drills;

namespace Stilewright.Documents.Tests;

public class ClassCsvTests
{
    private static readonly DateOnly Day = new(2026, 1, 15);

    private static string Of(params MissedCause[] causes) =>
        ClassCsv.Of(ClassReckoning.Of([new("a", 3, Day, causes, 8, 10, false), new("b", 4, Day.AddDays(-7), [], 10, 10, true)], Day, LengthUnit.Inch));

    [Fact]
    public void Weeks_then_rules_in_all_by_week_and_by_bench()
    {
        var lines = Of(new MissedCause(SlipKind.LeftOut, "groove")).Split("\r\n");
        Assert.Equal("what,week from,bench,times,right,figures right,figures,makers,missed,rule", lines[0]);
        Assert.Equal(["lists,2026-01-05,all,1,1,,,,,", "worksheets,2026-01-05,all,0,0,,,,,", "lists and worksheets,2026-01-05,all,1,1,10,10,,,", "drills,2026-01-05,all,0,,,,,,"], lines[1..5]);
        Assert.Equal("lists and worksheets,2026-01-12,all,1,0,8,10,,,", lines[7]);
        Assert.StartsWith("rule,all,all,1,,,,1,The grooves were left out.,", lines[9], StringComparison.Ordinal);
        Assert.StartsWith("rule,2026-01-12,all,1,,,,,The grooves were left out.,", lines[10], StringComparison.Ordinal);
        Assert.StartsWith("rule,all,3,1,,,,,The grooves were left out.,", lines[11], StringComparison.Ordinal);
        Assert.Equal(13, lines.Length);
    }

    [Fact]
    public void Worksheets_drills_and_what_is_not_explained_stand_there_too()
    {
        var csv = ClassCsv.Of(ClassReckoning.Of([new("a", 3, Day, [], 8, 10, false) { SheetLevel = 2, Unexplained = 2 }], Day, LengthUnit.Inch, [new("b", 4, Day, [new(DrillKind.Halve, 5, 2), new(DrillKind.Add, 5, 5)])])).Split("\r\n");
        Assert.Equal(["lists,2026-01-12,all,0,0,,,,,", "worksheets,2026-01-12,all,1,0,,,,,", "lists and worksheets,2026-01-12,all,1,0,8,10,,,", "drills,2026-01-12,all,1,,,,,,"], csv[1..5]);
        Assert.StartsWith("not explained,all,all,1,,,,1,Not explained.,", csv[5], StringComparison.Ordinal);
        Assert.StartsWith("not explained,2026-01-12,all,1,", csv[6], StringComparison.Ordinal);
        Assert.StartsWith("not explained,all,3,1,", csv[7], StringComparison.Ordinal);
        Assert.Equal(["drill: Add,all,all,,,5,5,1,,", "drill: Add,2026-01-12,all,,,5,5,,,", "drill: Halve,all,all,,,2,5,1,,", "drill: Halve,2026-01-12,all,,,2,5,,,", ""], csv[8..]);
    }

    // OWASP, CSV Injection: a cell that begins with = + - @ is run as a formula; an apostrophe before it makes it text.
    [Theory]
    [InlineData("=cmd|' /C calc'!A0")]
    [InlineData("@SUM(A1)")]
    [InlineData("+1+1")]
    [InlineData("-2\"3")]
    public void A_cell_that_begins_as_a_formula_is_made_text(string words)
    {
        var found = new ClassReckoning([], [new MissedRule(words, 1, 1, [new(words, 1)], [], [])], null);
        Assert.Equal($"rule,all,all,1,,,,1,\"'{words.Replace("\"", "\"\"", StringComparison.Ordinal)}\",\"'{words.Replace("\"", "\"\"", StringComparison.Ordinal)}\"", ClassCsv.Of(found).Split("\r\n")[1]);
    }
}
