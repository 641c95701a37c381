using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.ClassView;
using Stilewright.Teaching.Drills;
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
        Assert.StartsWith("Between two fronts", found.Next!.Lesson!.Rule, StringComparison.Ordinal);
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

    private static Attempt Sheet(string maker, int bench, int daysAgo, int level, int right, params MissedCause[] causes) =>
        new(maker, bench, Today.AddDays(-daysAgo), causes, right, 10, right == 10) { SheetLevel = level };

    private static DrillAttempt Drilled(string maker, int daysAgo, int right) => new(maker, 1, Today.AddDays(-daysAgo), [new(DrillKind.Halve, 10, right), new(DrillKind.Add, 10, 10)]);

    [Fact]
    public void A_rule_missed_in_a_list_and_in_worksheets_is_one_rule()
    {
        var found = ClassReckoning.Of([By("a", 1, 0, Grooves), Sheet("b", 2, 7, 1, 8, OneGroove), Sheet("b", 2, 0, 2, 9, Grooves), Sheet("c", 3, 0, 1, 10)], Today, LengthUnit.Inch);
        var rule = Assert.Single(found.Rules);
        Assert.Equal((2, 3, 2), (rule.Makers, rule.Lists, rule.Worksheets));
        Assert.Equal([1, 2], rule.Weeks);
        Assert.Equal([(0, 0, 1, 0), (1, 0, 2, 1)], found.Weeks.Select(week => (week.Lists, week.RightLists, week.Worksheets, week.RightWorksheets)));
        Assert.Equal([(8, 10), (27, 30)], found.Weeks.Select(week => (week.RightFigures, week.AllFigures)));
    }

    [Fact]
    public void What_no_slip_explains_is_a_row_of_its_own_and_no_lesson()
    {
        var found = ClassReckoning.Of([By("a", 1, 0) with { Unexplained = 2 }, Sheet("b", 2, 7, 1, 8) with { Unexplained = 1 }, By("b", 2, 0)], Today, LengthUnit.Inch);
        Assert.Empty(found.Rules);
        Assert.Equal((2, 2, 1), (found.NotExplained!.Makers, found.NotExplained.Lists, found.NotExplained.Worksheets));
        Assert.Equal([1, 1], found.NotExplained.Weeks);
        Assert.Equal([(1, 1), (2, 1)], found.NotExplained.Benches);
        Assert.Null(found.Next);
        Assert.Null(ClassReckoning.Of([By("a", 1, 0)], Today, LengthUnit.Inch).NotExplained);
    }

    [Fact]
    public void Drills_are_told_by_kind_and_week()
    {
        var found = ClassReckoning.Of([], Today, LengthUnit.Inch, [Drilled("a", 7, 4), Drilled("a", 0, 7), Drilled("b", 0, 9)]);
        Assert.Equal([1, 2], found.Weeks.Select(week => week.Drills));
        Assert.Equal([DrillKind.Add, DrillKind.Halve], found.Drills.Select(kind => kind.Kind));
        // 11 of 20 and 9 of 10.
        Assert.Equal((2, 1, 30, 20), (found.Drills[1].Makers, found.Drills[1].Weak, found.Drills[1].Asked, found.Drills[1].Right));
        Assert.Equal([(10, 4), (20, 16)], found.Drills[1].Weeks);
        Assert.Equal((2, 0), (found.Drills[0].Makers, found.Drills[0].Weak));
    }

    [Fact]
    public void A_drill_is_the_next_lesson_where_more_makers_are_short_of_it_than_of_any_rule()
    {
        DrillAttempt[] two = [Drilled("a", 0, 7), Drilled("b", 1, 5)];
        var found = ClassReckoning.Of([By("a", 1, 0, Grooves)], Today, LengthUnit.Inch, two).Next!;
        Assert.Null(found.Lesson);
        Assert.Equal((DrillKind.Halve, DrillKind.Halve, null), (found.Drilled!.Kind, found.Sheet!.Drill, found.Sheet.Level));

        // As many makers: the rule goes first, and its sheet with it. So it does where the drill is long ago or went well.
        foreach (var drills in new DrillAttempt[][] { two, [Drilled("a", 20, 0), Drilled("b", 20, 0), Drilled("c", 20, 0)], [Drilled("a", 0, 8), Drilled("b", 0, 8), Drilled("c", 0, 8)] })
        {
            found = ClassReckoning.Of([By("a", 1, 0, Grooves), By("b", 1, 0, Grooves)], Today, LengthUnit.Inch, drills).Next!;
            Assert.Equal(1, found.Sheet!.Level!.Number);
            Assert.Contains("groove", found.Lesson!.Rule, StringComparison.Ordinal);
        }

        // What a misread fraction is trained by is the kind that went worst.
        found = ClassReckoning.Of([By("a", 1, 0, Fraction), By("b", 1, 0, Fraction), By("c", 1, 0, Fraction)], Today, LengthUnit.Inch, two).Next!;
        Assert.Equal(DrillKind.Halve, found.Sheet!.Drill);
    }

    [Fact]
    public void The_next_sheet_leaves_out_a_level_that_the_class_has_learned()
    {
        Attempt[] missed = [By("a", 1, 0, Grooves), By("b", 1, 0, Grooves), By("c", 1, 0, Grooves)];
        int Next(params Attempt[] sheets) => ClassReckoning.Of([.. missed, .. sheets], Today, LengthUnit.Inch).Next!.Sheet!.Level!.Number;
        Assert.Equal(1, Next());
        Assert.Equal(2, Next(Sheet("a", 1, 0, 1, 9), Sheet("b", 1, 0, 1, 9)));
        Assert.Equal(1, Next(Sheet("a", 1, 0, 1, 9), Sheet("b", 1, 0, 1, 8)));
        Assert.Equal(1, Next(Sheet("a", 1, 0, 1, 10), Sheet("a", 1, 0, 1, 10)));
        Assert.Equal(1, Next(Sheet("a", 1, 20, 1, 10), Sheet("b", 1, 20, 1, 10)));
        Assert.Equal(6, NextSheet.For(Grooves, LengthUnit.Inch, new HashSet<int> { 1, 2, 3, 4, 5, 6 })!.Level!.Number);
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
