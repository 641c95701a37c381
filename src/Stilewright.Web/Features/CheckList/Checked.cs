using System.Globalization;
using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Teaching.Checking;
using Stilewright.Web.Desk;

namespace Stilewright.Web.Features.CheckList;

/// <summary>A maker's list, checked against what is saved.</summary>
/// <param name="Leaf">Null for the list of a whole project.</param>
/// <param name="Against">The sizes it was checked against.</param>
internal sealed record Checked(OpenProject Project, SizedLeaf? Leaf, ProjectBreakdown Against, CheckedList Found)
{
    /// <summary>The key of the list, and the lines whose leaf is not of it; such a list is not to be checked.</summary>
    public static (ListKey Key, IReadOnlyList<ListLine> Stray) KeyOf(OpenProject project, SizedLeaf? leaf, MakersList list)
    {
        var key = leaf is null ? ListKey.Of(project.Worked, list.Stage) : ListKey.Of(project.Worked, leaf, list.Stage);
        return (key, key.StrayLines(list));
    }

    // So many revisions back an earlier size is looked for; a class seldom saves a bench more often in an evening. Common practice, no source.
    private const int MostRevisions = 20;

    /// <summary>Checks the list; where it is not right, against earlier revisions of the project too, the newest first, until one explains a figure.</summary>
    public static async Task<Checked> OfAsync(Workshop workshop, TimeProvider clock, OpenCourse course, OpenProject project, SizedLeaf? leaf, ReadList list, ListKey key, CancellationToken stop = default)
    {
        var others = key.OthersOf(course.Whole);
        var found = new Checked(project, leaf, project.Worked, ListCheck.Check(list.List, key, list.Unit, others));
        if (found.Found.Numbers.All(number => number.Standing != NumberStanding.Wrong))
            return found;
        var revisions = (await workshop.RevisionsAsync(project.Key, MostRevisions + 1, stop)).OrderByDescending(each => each.Number).ToList();
        foreach (var (revision, next) in revisions.Skip(1).Zip(revisions))
        {
            if (await workshop.AtRevisionAsync(course, project.Key, revision.Number, stop) is not { Breakdown.Projects: [var then, ..] }
                || KeyOf(then, leaf, list.List) is not { } earlier || !ListKey.Explains(earlier, found.Found))
            {
                continue;
            }

            var on = TimeZoneInfo.ConvertTimeFromUtc(next.MadeAt, clock.LocalTimeZone).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            var both = leaf is null ? ListKey.Of(project.Worked, list.List.Stage, earlier, $"on {on}") : ListKey.Of(project.Worked, leaf, list.List.Stage, earlier, $"on {on}");
            return found with { Found = ListCheck.Check(list.List, both, list.Unit, others) };
        }

        return found;
    }

    private static ListKey? KeyOf(ProjectBreakdown then, SizedLeaf? leaf, MakersList list) => leaf is null ? ListKey.Of(then, list.Stage)
        : then.Fronts.SelectMany(front => front.Leaves).FirstOrDefault(each => each.Path == leaf.Path) is { } same ? ListKey.Of(then, same, list.Stage) : null;

    /// <summary>How each part that the list is about stands in it, by its path.</summary>
    public IReadOnlyDictionary<string, PartMark> Marks
    {
        get
        {
            var marks = Found.Missing.ToDictionary(item => item.Path, _ => PartMark.Missing);
            foreach (var line in Found.Lines)
            {
                var wrong = line.Numbers.Where(number => number.Standing != NumberStanding.Right).Select(number => number.Item).ToList();
                foreach (var item in line.Items)
                {
                    var isWrong = !line.IsCountRight || wrong.Any(other => other.Kind == item.Kind && other.Width.Equals(item.Width) && other.Length.Equals(item.Length));
                    marks[item.Path] = isWrong ? PartMark.Wrong : PartMark.Right;
                }
            }

            return marks;
        }
    }
}
