using Stilewright.Measure;
using Stilewright.Teaching.Telling;

namespace Stilewright.Teaching.ClassView;

/// <summary>One way in which a rule was missed.</summary>
/// <param name="Missed">In words, such as "The grooves were left out."</param>
/// <param name="Lists">In how many lists and worksheets.</param>
public sealed record WayMissed(string Missed, int Lists);

/// <summary>One rule that was missed, in lists and worksheets together.</summary>
/// <param name="Rule">The rule in words.</param>
/// <param name="Makers">By how many makers. One who checks the same list again and again counts once.</param>
/// <param name="Lists">In how many lists and worksheets.</param>
/// <param name="Ways">The commonest first.</param>
/// <param name="Benches">Lists and worksheets with it by bench, of the benches that have any.</param>
/// <param name="Weeks">Lists and worksheets with it in each week of the view.</param>
public sealed record MissedRule(
    string Rule, int Makers, int Lists, IReadOnlyList<WayMissed> Ways, IReadOnlyList<(int Bench, int Lists)> Benches, IReadOnlyList<int> Weeks)
{
    /// <summary>How many of <see cref="Lists"/> are worksheets.</summary>
    public int Worksheets { get; init; }

    internal IReadOnlyList<MissedCause> Causes { get; init; } = [];
}

/// <summary>What was checked, marked and drilled in one week.</summary>
/// <param name="Monday">Its first day (ISO 8601).</param>
/// <param name="Lists">How many lists were checked.</param>
/// <param name="RightLists">How many of them were right throughout.</param>
/// <param name="RightFigures">Of lists and worksheets.</param>
public sealed record ClassWeek(DateOnly Monday, int Lists, int RightLists, int RightFigures, int AllFigures)
{
    public int Worksheets { get; init; }
    public int RightWorksheets { get; init; }
    public int Drills { get; init; }
}

/// <summary>What is proposed for the next evening.</summary>
/// <param name="Lesson">The rule that was missed most of late, with the ways in which it was; null where a kind of drill went worse than any rule.</param>
/// <param name="Sheet">Null where no sheet trains it.</param>
/// <param name="Drilled">The kind of drill that went worst of late; null where every kind went well or none was drilled.</param>
public sealed record Proposal(MissedRule? Lesson, NextSheet? Sheet, DrilledKind? Drilled = null);

/// <summary>What a class misses, how that changes, and what is proposed next; a pure function of its results.</summary>
/// <param name="Weeks">From the first result to the last, at most <see cref="MostWeeks"/> of them, those without results among them.</param>
/// <param name="Rules">Those missed by the most makers first, then in the most lists and worksheets.</param>
/// <param name="Next">Null where nothing was missed of late.</param>
public sealed record ClassReckoning(IReadOnlyList<ClassWeek> Weeks, IReadOnlyList<MissedRule> Rules, Proposal? Next)
{
    /// <summary>How many weeks are told apart, the newest ones; a course of one term. Common practice, no source.</summary>
    public const int MostWeeks = 12;

    /// <summary>How far back a lesson is proposed from: this evening and the two before, where a class meets once a week.</summary>
    public const int LatelyDays = 14;

    // A level is learned when so many of a hundred figures of so many makers' worksheets were right of late. Common practice, no source.
    private const int Learned = 90;
    private const int LearnedBy = 2;

    /// <summary>Mistakes that no known slip explains; null where there are none.</summary>
    public MissedRule? NotExplained { get; init; }

    /// <summary>How each kind of drill goes.</summary>
    public IReadOnlyList<DrilledKind> Drills { get; init; } = [];

    /// <param name="today">By the shop's calendar.</param>
    /// <param name="unit">Of the worksheets that are proposed.</param>
    public static ClassReckoning Of(IReadOnlyList<Attempt> attempts, DateOnly today, LengthUnit unit, IReadOnlyList<DrillAttempt>? drills = null)
    {
        drills ??= [];
        List<DateOnly> days = [.. attempts.Select(attempt => attempt.Day), .. drills.Select(drill => drill.Day)];
        if (days.Count == 0)
            return new([], [], null);
        var last = MondayOf(days.Max());
        var first = MondayOf(days.Min());
        var earliest = last.AddDays(-7 * (MostWeeks - 1));
        List<DateOnly> mondays = [];
        for (var monday = first > earliest ? first : earliest; monday <= last; monday = monday.AddDays(7))
            mondays.Add(monday);
        var weeks = mondays.Select(monday =>
        {
            var own = attempts.Where(attempt => MondayOf(attempt.Day) == monday).ToLookup(attempt => attempt.SheetLevel is not null);
            return new ClassWeek(monday, own[false].Count(), own[false].Count(attempt => attempt.IsRight),
                own.SelectMany(kind => kind).Sum(attempt => attempt.RightFigures), own.SelectMany(kind => kind).Sum(attempt => attempt.AllFigures))
            {
                Worksheets = own[true].Count(),
                RightWorksheets = own[true].Count(attempt => attempt.IsRight),
                Drills = drills.Count(drill => MondayOf(drill.Day) == monday),
            };
        }).ToList();
        bool IsOfLate(DateOnly day) => day > today.AddDays(-LatelyDays) && day <= today;
        return new(weeks, RulesIn(attempts, mondays), Propose([.. attempts.Where(attempt => IsOfLate(attempt.Day))], [.. drills.Where(drill => IsOfLate(drill.Day))], mondays, unit))
        {
            NotExplained = NotExplainedIn(attempts, mondays),
            Drills = DrilledKind.Of(drills, mondays, MondayOf),
        };
    }

    // What more makers are short of goes first: a rule, or a kind of drill.
    private static Proposal? Propose(IReadOnlyList<Attempt> attempts, IReadOnlyList<DrillAttempt> drills, IReadOnlyList<DateOnly> mondays, LengthUnit unit)
    {
        var lesson = RulesIn(attempts, mondays).FirstOrDefault();
        var weak = DrilledKind.Of(drills, mondays, MondayOf).Where(kind => kind.Weak > 0).OrderByDescending(kind => kind.Weak).ThenBy(kind => (double)kind.Right / kind.Asked).FirstOrDefault();
        var drill = weak is null ? null : new NextSheet(null, weak.Kind);
        if (lesson is null || weak?.Weak > lesson.Makers)
            return weak is null ? null : new(null, drill, weak);
        HashSet<int> learned =
        [
            .. attempts.Where(attempt => attempt.SheetLevel is not null).GroupBy(attempt => attempt.SheetLevel!.Value)
                .Where(level => level.Select(attempt => attempt.Maker).Distinct().Count() >= LearnedBy
                    && 100 * level.Sum(attempt => attempt.RightFigures) >= Learned * level.Sum(attempt => attempt.AllFigures)).Select(level => level.Key),
        ];
        var sheet = lesson.Causes.Select(cause => NextSheet.For(cause, unit, learned)).FirstOrDefault(found => found is not null);
        return new(lesson, sheet is { Level: null } or null ? drill ?? sheet : sheet, weak);
    }

    private static List<MissedRule> RulesIn(IReadOnlyList<Attempt> attempts, IReadOnlyList<DateOnly> mondays)
    {
        var missed = attempts.SelectMany(attempt => attempt.Causes.Distinct().Select(cause => (Attempt: attempt, Cause: cause, Words: CauseInGeneral.Of(cause.Kind, cause.Subject))));
        return [.. missed.GroupBy(each => each.Words.Rule).Select(rule =>
            Counted(rule.Key, [.. rule.Select(each => each.Attempt).Distinct(ReferenceEqualityComparer.Instance).Cast<Attempt>()],
                [.. rule.GroupBy(each => each.Words.Missed).Select(way => new WayMissed(way.Key, way.Select(each => each.Attempt).Distinct(ReferenceEqualityComparer.Instance).Count()))
                    .OrderByDescending(way => way.Lists).ThenBy(way => way.Missed, StringComparer.Ordinal)], mondays) with
            {
                Causes = [.. rule.GroupBy(each => each.Cause).OrderByDescending(same => same.Count()).Select(same => same.Key)],
            }).OrderByDescending(rule => rule.Makers).ThenByDescending(rule => rule.Lists).ThenBy(rule => rule.Rule, StringComparer.Ordinal)];
    }

    private static MissedRule? NotExplainedIn(IReadOnlyList<Attempt> attempts, IReadOnlyList<DateOnly> mondays)
    {
        List<Attempt> own = [.. attempts.Where(attempt => attempt.Unexplained > 0)];
        return own.Count == 0 ? null : Counted("No slip that is known makes these figures. Let the maker say the working aloud, figure by figure.", own, [new("Not explained.", own.Count)], mondays);
    }

    private static MissedRule Counted(string rule, IReadOnlyList<Attempt> attempts, IReadOnlyList<WayMissed> ways, IReadOnlyList<DateOnly> mondays) => new(
        rule, attempts.Select(attempt => attempt.Maker).Distinct().Count(), attempts.Count, ways,
        [.. attempts.GroupBy(attempt => attempt.Bench).Select(bench => (bench.Key, bench.Count())).OrderBy(bench => bench.Key)],
        [.. mondays.Select(monday => attempts.Count(attempt => MondayOf(attempt.Day) == monday))])
    {
        Worksheets = attempts.Count(attempt => attempt.SheetLevel is not null),
    };

    private static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));
}
