using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.CheckList;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.CheckList;

/// <summary>Lists that were right when they were written.</summary>
public sealed class CheckedTests
{
    private static ReadList ListOf(OpenCourse course) => new(new(CutStage.Finished,
        [.. LeafOf(course).Parts.Select((part, i) => new ListLine(i + 1, part.Name, 1, Entry(part.Finished.Width.Length), Entry(part.Finished.Length.Length)))]), LengthUnit.Inch, []);

    private static LengthEntry Entry(Length length) => new(new LengthFormat(LengthUnit.Inch, 64).Print(length), length);

    private static SizedLeaf LeafOf(OpenCourse course) => course.Projects[0].Worked.Fronts.First().Leaves[0];

    private static async Task<OpenCourse> WidenedAsync(OpenStore store, OpenCourse course, string width) => Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(course, OpenStore.Mine,
        now => ProjectEdits.WithOpening(now, Courses.OpeningId(now), opening => opening with { Readings = opening.Readings! with { WidthTop = Courses.Entry(width) } }))).Course;

    private static async Task<CheckedList> CheckAsync(OpenStore store, OpenCourse course, ReadList list, bool isOfLeaf)
    {
        var leaf = isOfLeaf ? LeafOf(course) : null;
        var (key, _) = Checked.KeyOf(course.Projects[0], leaf, list.List);
        return (await Checked.OfAsync(store.Workshop, TimeProvider.System, course, course.Projects[0], leaf, list, key)).Found;
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_list_that_was_right_before_the_opening_was_measured_again_is_told_so_with_the_day(bool isOfLeaf)
    {
        await using var store = await OpenStore.MakeAsync();
        var first = await store.AddAsync(Courses.Measured());
        var list = ListOf(first);
        Assert.True((await CheckAsync(store, first, list, isOfLeaf)).IsRight);

        // Two revisions later; the second changes no size that the list has wrong.
        var now = await WidenedAsync(store, await WidenedAsync(store, first, "24 11/16"), "25 7/16");
        var found = await CheckAsync(store, now, list, isOfLeaf);
        var mistake = Assert.Single(found.Mistakes);
        Assert.Equal(SlipKind.EarlierSize, Assert.Single(mistake.Explanations[0].Causes).Kind);
        var said = Assert.Single(Answers.Of(found, Telling.Rule, LengthFormat.InchesTo32).Mistakes).Missed!;
        Assert.Matches(@"^This was right before: the opening was measured again, .* on \d{4}-\d\d-\d\d, after your figures\.$", said);

        // A list of the present sizes is right, and one that no revision explains is told otherwise.
        Assert.True((await CheckAsync(store, now, ListOf(now), isOfLeaf)).IsRight);
        var rails = LeafOf(now).Parts.Where(part => part.Kind == PartKind.Rail).Select(part => part.Name).ToHashSet();
        var shoulder = LeafOf(now).Parts.First(part => part.Kind == PartKind.Rail).Shoulder!.Length;
        var wrong = ListOf(now);
        wrong = wrong with { List = wrong.List with { Lines = [.. wrong.List.Lines.Select(line => rails.Contains(line.Name) ? line with { Length = Entry(shoulder) } : line)] } };
        Assert.DoesNotContain((await CheckAsync(store, now, wrong, isOfLeaf)).Mistakes.SelectMany(each => each.Explanations[0].Causes), cause => cause.Kind == SlipKind.EarlierSize);
    }
}
