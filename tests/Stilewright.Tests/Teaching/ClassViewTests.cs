using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Telling;

namespace Stilewright.Tests.Teaching;

public class ClassViewTests
{
    // A Thursday.
    private static readonly DateOnly Today = new(2026, 1, 15);
    private static readonly MissedCause Grooves = new(SlipKind.LeftOut, "groove");
    private static readonly MissedCause OneGroove = new(SlipKind.CountedOnce, "groove");
    private static readonly MissedCause Gap = new(SlipKind.DividedTooEarly, "gap");
    private static readonly MissedCause Trim = new(SlipKind.LeftOut, "trim");
    private static readonly MissedCause Fraction = new(SlipKind.FractionMisread, "written");

    private static Attempt By(string maker, int bench, int daysAgo, params MissedCause[] causes) =>
        new(maker, bench, Today.AddDays(-daysAgo), causes, causes.Length == 0 ? 10 : 8, 10, causes.Length == 0);

    [Fact]
    public void Without_attempts_there_is_nothing_to_tell()
    {
        var found = ClassReckoning.Of([], Today, LengthUnit.Inch);
        Assert.Empty(found.Weeks);
        Assert.Empty(found.Rules);
        Assert.Null(found.Next);
    }

    [Fact]
    public void A_rule_is_counted_by_makers_so_that_one_who_checks_again_and_again_does_not_lead_the_class()
    {
        var found = ClassReckoning.Of([By("a", 1, 0, Gap), By("a", 1, 0, Gap), By("a", 1, 0, Gap), By("b", 2, 0, Grooves), By("c", 3, 1, OneGroove)], Today, LengthUnit.Inch);
        Assert.Equal([(2, 2), (1, 3)], found.Rules.Select(rule => (rule.Makers, rule.Lists)));
        Assert.Equal(["Only one groove was counted; there is one on each side.", "The grooves were left out."], found.Rules[0].Ways.Select(way => way.Missed));
        Assert.Equal([(2, 1), (3, 1)], found.Rules[0].Benches);
        Assert.Equal([(1, 3)], found.Rules[1].Benches);
    }

    [Fact]
    public void A_list_that_misses_one_rule_in_two_ways_is_one_list()
    {
        var rule = Assert.Single(ClassReckoning.Of([By("a", 1, 0, Grooves, OneGroove, Grooves)], Today, LengthUnit.Inch).Rules);
        Assert.Equal(1, rule.Lists);
        Assert.All(rule.Ways, way => Assert.Equal(1, way.Lists));
    }

    [Fact]
    public void Weeks_begin_on_Monday_and_one_without_lists_stands_among_them()
    {
        // Thursday, and Sunday and Monday of other weeks (ISO 8601: a week begins on Monday).
        var found = ClassReckoning.Of([By("a", 1, 0), By("a", 1, 3, Grooves), By("b", 1, 4, Grooves), By("b", 1, 18, Grooves, Gap)], Today, LengthUnit.Inch);
        Assert.Equal([new(2025, 12, 22), new(2025, 12, 29), new(2026, 1, 5), new(2026, 1, 12)], found.Weeks.Select(week => week.Monday));
        Assert.Equal([1, 0, 1, 2], found.Weeks.Select(week => week.Lists));
        Assert.Equal([0, 0, 0, 1], found.Weeks.Select(week => week.RightLists));
        Assert.Equal([(8, 10), (0, 0), (8, 10), (18, 20)], found.Weeks.Select(week => (week.RightFigures, week.AllFigures)));
        Assert.Equal([1, 0, 1, 1], found.Rules[0].Weeks);
    }

    [Fact]
    public void Only_the_newest_weeks_are_told_apart()
    {
        var found = ClassReckoning.Of([By("a", 1, 0, Gap), By("a", 1, 700, Gap)], Today, LengthUnit.Inch);
        Assert.Equal(ClassReckoning.MostWeeks, found.Weeks.Count);
        Assert.Equal(1, found.Rules[0].Weeks.Sum());
        Assert.Equal(2, found.Rules[0].Lists);
    }

    [Fact]
    public void The_next_lesson_is_what_was_missed_most_of_late()
    {
        Attempt[] attempts = [By("a", 1, 30, Grooves), By("b", 2, 30, Grooves), By("c", 3, 30, Grooves), By("a", 1, 13, Gap), By("b", 2, 0)];
        var found = ClassReckoning.Of(attempts, Today, LengthUnit.Inch);
        Assert.Contains("groove", found.Rules[0].Rule, StringComparison.Ordinal);
        Assert.StartsWith("Between two fronts", found.Next!.Lesson.Rule, StringComparison.Ordinal);
        Assert.Equal("A pair", found.Next.Sheet!.Level!.Name);

        Assert.Null(ClassReckoning.Of(attempts, Today.AddDays(1), LengthUnit.Inch).Next);
    }

    [Fact]
    public void The_next_sheet_is_the_first_level_that_asks_for_it()
    {
        (MissedCause Missed, int Level)[] known = [(Grooves, 1), (new(SlipKind.LeftOut, "overlay"), 1), (new(SlipKind.LeftOut, "clearance"), 2), (Gap, 3), (Trim, 4), (new(SlipKind.AnotherStage, "written"), 4),
            (new(SlipKind.LeftOut, "rise"), 5), (new(SlipKind.NotDivided, "light"), 5), (new(SlipKind.LeftOut, "rough"), 6)];
        foreach (var unit in Enum.GetValues<LengthUnit>())
            Assert.Equal(known.Select(each => (each.Missed, each.Level)), known.Select(each => (each.Missed, NextSheet.For(each.Missed, unit)!.Level!.Number)));
        Assert.Null(NextSheet.For(Fraction, LengthUnit.Inch)!.Level);
        Assert.Null(NextSheet.For(new(SlipKind.AnotherPart, "written"), LengthUnit.Inch));
    }

    [Fact]
    public void Every_cause_has_words_that_hold_without_its_list()
    {
        foreach (var kind in Enum.GetValues<SlipKind>())
        {
            foreach (var subject in (string[])["groove", "gap", "panel", "leaf", "opening", "written", "step of a stranger"])
            {
                var (missed, rule) = CauseInGeneral.Of(kind, subject);
                Assert.Matches("^[A-Z].*[.]$", missed);
                Assert.Matches("^[A-Z0-9].*[.]$", rule);
                Assert.DoesNotContain("  ", missed, StringComparison.Ordinal);
                Assert.DoesNotContain(" .", missed, StringComparison.Ordinal);
                Assert.DoesNotContain("the  ", missed + rule, StringComparison.Ordinal);
            }
        }

        Assert.Equal("One fraction was taken for another in a figure.", CauseInGeneral.Of(SlipKind.FractionMisread, "written").Missed);
        Assert.Equal("The overlay was added where it should be taken off, or the other way round.", CauseInGeneral.Of(SlipKind.SignTurned, "overlay").Missed);
    }
}
