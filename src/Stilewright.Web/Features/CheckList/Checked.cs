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

    public static Checked Of(OpenCourse course, OpenProject project, SizedLeaf? leaf, ReadList list, ListKey key) =>
        new(project, leaf, project.Worked, ListCheck.Check(list.List, key, list.Unit, key.OthersOf(course.Whole)));

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
