using Stilewright.Teaching.Drills;

namespace Stilewright.Teaching.ClassView;

/// <summary>How one kind of drill goes in a class.</summary>
/// <param name="Makers">By how many makers it was drilled.</param>
/// <param name="Weak">How many of them had less than <see cref="Enough"/> right.</param>
/// <param name="Weeks">Asked and right in each week of the view.</param>
public sealed record DrilledKind(DrillKind Kind, int Makers, int Weak, int Asked, int Right, IReadOnlyList<(int Asked, int Right)> Weeks)
{
    /// <summary>The percentage that is enough to go on. Common practice, no source.</summary>
    public const int Enough = 75;

    internal static IReadOnlyList<DrilledKind> Of(IReadOnlyList<DrillAttempt> drills, IReadOnlyList<DateOnly> mondays, Func<DateOnly, DateOnly> mondayOf) =>
        [.. drills.SelectMany(drill => drill.Shares, (drill, share) => (Drill: drill, Share: share)).GroupBy(each => each.Share.Kind).Select(kind =>
        {
            var makers = kind.GroupBy(each => each.Drill.Maker).Select(maker => (Asked: maker.Sum(each => each.Share.Asked), Right: maker.Sum(each => each.Share.Right))).ToList();
            return new DrilledKind(kind.Key, makers.Count, makers.Count(maker => 100 * maker.Right < Enough * maker.Asked), kind.Sum(each => each.Share.Asked), kind.Sum(each => each.Share.Right),
                [.. mondays.Select(monday => kind.Where(each => mondayOf(each.Drill.Day) == monday).ToList()).Select(week => (week.Sum(each => each.Share.Asked), week.Sum(each => each.Share.Right)))]);
        }).OrderBy(kind => kind.Kind)];
}
