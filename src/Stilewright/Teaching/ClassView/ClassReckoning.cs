using Stilewright.Measure;
using Stilewright.Teaching.Telling;

namespace Stilewright.Teaching.ClassView;

/// <summary>One way in which a rule was missed.</summary>
/// <param name="Missed">In words, such as "The grooves were left out."</param>
/// <param name="Lists">In how many checked lists.</param>
public sealed record WayMissed(string Missed, int Lists);

/// <summary>One rule that was missed.</summary>
/// <param name="Rule">The rule in words.</param>
/// <param name="Makers">By how many makers. One who checks the same list again and again counts once.</param>
/// <param name="Lists">In how many checked lists.</param>
/// <param name="Ways">The commonest first.</param>
/// <param name="Benches">Lists with it by bench, of the benches that have any.</param>
/// <param name="Weeks">Lists with it in each week of the view.</param>
public sealed record MissedRule(
    string Rule, int Makers, int Lists, IReadOnlyList<WayMissed> Ways, IReadOnlyList<(int Bench, int Lists)> Benches, IReadOnlyList<int> Weeks)
{
    internal IReadOnlyList<MissedCause> Causes { get; init; } = [];
}

/// <summary>What was checked in one week.</summary>
/// <param name="Monday">Its first day (ISO 8601).</param>
/// <param name="Lists">How many lists were checked.</param>
/// <param name="RightLists">How many of them were right throughout.</param>
public sealed record ClassWeek(DateOnly Monday, int Lists, int RightLists, int RightFigures, int AllFigures);

/// <summary>What is proposed for the next evening.</summary>
/// <param name="Lesson">The rule that was missed most of late, with the ways in which it was.</param>
/// <param name="Sheet">Null where no sheet trains it.</param>
public sealed record Proposal(MissedRule Lesson, NextSheet? Sheet);

/// <summary>What a class misses, how that changes, and what is proposed next; a pure function of its attempts.</summary>
/// <param name="Weeks">From the first attempt to the last, at most <see cref="MostWeeks"/> of them, those without attempts among them.</param>
/// <param name="Rules">Those missed by the most makers first, then in the most lists.</param>
/// <param name="Next">Null where nothing was missed of late.</param>
public sealed record ClassReckoning(IReadOnlyList<ClassWeek> Weeks, IReadOnlyList<MissedRule> Rules, Proposal? Next)
{
    /// <summary>How many weeks are told apart, the newest ones; a course of one term. Common practice, no source.</summary>
    public const int MostWeeks = 12;

    /// <summary>How far back a lesson is proposed from: this evening and the two before, where a class meets once a week.</summary>
    public const int LatelyDays = 14;

    /// <param name="today">By the shop's calendar.</param>
    /// <param name="unit">Of the worksheets that are proposed.</param>
    public static ClassReckoning Of(IReadOnlyList<Attempt> attempts, DateOnly today, LengthUnit unit)
    {
        if (attempts.Count == 0)
            return new([], [], null);
        var last = MondayOf(attempts.Max(attempt => attempt.Day));
        var first = MondayOf(attempts.Min(attempt => attempt.Day));
        var earliest = last.AddDays(-7 * (MostWeeks - 1));
        List<DateOnly> mondays = [];
        for (var monday = first > earliest ? first : earliest; monday <= last; monday = monday.AddDays(7))
            mondays.Add(monday);
        var weeks = mondays.Select(monday =>
        {
            var own = attempts.Where(attempt => MondayOf(attempt.Day) == monday).ToList();
            return new ClassWeek(monday, own.Count, own.Count(attempt => attempt.IsRight), own.Sum(attempt => attempt.RightFigures), own.Sum(attempt => attempt.AllFigures));
        }).ToList();
        var lately = RulesIn([.. attempts.Where(attempt => attempt.Day > today.AddDays(-LatelyDays) && attempt.Day <= today)], mondays);
        return new(weeks, RulesIn(attempts, mondays), lately is [var lesson, ..] ? new(lesson, SheetFor(lesson, unit)) : null);
    }

    private static List<MissedRule> RulesIn(IReadOnlyList<Attempt> attempts, IReadOnlyList<DateOnly> mondays)
    {
        var missed = attempts.SelectMany(attempt => attempt.Causes.Distinct().Select(cause => (Attempt: attempt, Cause: cause, Words: CauseInGeneral.Of(cause.Kind, cause.Subject))));
        return [.. missed.GroupBy(each => each.Words.Rule).Select(rule =>
        {
            var lists = rule.Select(each => each.Attempt).Distinct(ReferenceEqualityComparer.Instance).Cast<Attempt>().ToList();
            return new MissedRule(rule.Key, lists.Select(list => list.Maker).Distinct().Count(), lists.Count,
                [.. rule.GroupBy(each => each.Words.Missed).Select(way => new WayMissed(way.Key, way.Select(each => each.Attempt).Distinct(ReferenceEqualityComparer.Instance).Count()))
                    .OrderByDescending(way => way.Lists).ThenBy(way => way.Missed, StringComparer.Ordinal)],
                [.. lists.GroupBy(list => list.Bench).Select(bench => (bench.Key, bench.Count())).OrderBy(bench => bench.Key)],
                [.. mondays.Select(monday => lists.Count(list => MondayOf(list.Day) == monday))])
            {
                Causes = [.. rule.GroupBy(each => each.Cause).OrderByDescending(same => same.Count()).Select(same => same.Key)],
            };
        }).OrderByDescending(rule => rule.Makers).ThenByDescending(rule => rule.Lists).ThenBy(rule => rule.Rule, StringComparer.Ordinal)];
    }

    private static NextSheet? SheetFor(MissedRule lesson, LengthUnit unit) =>
        lesson.Causes.Select(cause => NextSheet.For(cause, unit)).FirstOrDefault(sheet => sheet is not null);

    private static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));
}
