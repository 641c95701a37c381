using Stilewright.Documents.Lists;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.ClassView;

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
        Assert.Equal("week from,bench,lists,lists right,figures right,figures,makers,missed,rule", lines[0]);
        Assert.Equal("2026-01-05,all,1,1,10,10,,,", lines[1]);
        Assert.Equal("2026-01-12,all,1,0,8,10,,,", lines[2]);
        Assert.StartsWith("all,all,1,,,,1,The grooves were left out.,", lines[3], StringComparison.Ordinal);
        Assert.StartsWith("2026-01-12,all,1,,,,,The grooves were left out.,", lines[4], StringComparison.Ordinal);
        Assert.StartsWith("all,3,1,,,,,The grooves were left out.,", lines[5], StringComparison.Ordinal);
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
        Assert.Equal($"all,all,1,,,,1,\"'{words.Replace("\"", "\"\"", StringComparison.Ordinal)}\",\"'{words.Replace("\"", "\"\"", StringComparison.Ordinal)}\"", ClassCsv.Of(found).Split("\r\n")[1]);
    }
}
