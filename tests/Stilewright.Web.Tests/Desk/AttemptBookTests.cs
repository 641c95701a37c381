using System.Security.Claims;
using Stilewright.Teaching;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Telling;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Desk;

/// <summary>Who sees whose results.</summary>
public sealed class AttemptBookTests
{
    private static AttemptAccess Of(string maker, bool isHere = false)
    {
        var user = new ClaimsPrincipal(new ClaimsIdentity([new(ClaimTypes.NameIdentifier, maker)], "test"));
        if (isHere)
            Asker.MarkAtThisComputer(user);
        return AttemptAccess.Of(user);
    }

    private static async Task<(AttemptBook Book, OpenCourse Course)> FilledAsync(OpenStore store)
    {
        var course = await store.AddAsync(Courses.Measured());
        var book = store.Attempts;
        var project = course.Projects[0];
        var leaf = project.Worked.Fronts.First().Leaves[0];
        foreach (var (maker, lines) in new[] { (OpenStore.Mine, "rail"), (OpenStore.Theirs, "rail"), (OpenStore.Theirs, "stile") })
        {
            var list = new MakersList(CutStage.IntoClamps, [new(1, lines, 1, null, new("1", Measure.Length.FromInches(1)))]);
            await book.RecordAsync(course, project, leaf.Label, maker, ListCheck.Check(list, ListKey.Of(project.Worked, leaf, list.Stage), Measure.LengthUnit.Inch));
        }

        return (book, course);
    }

    [Fact]
    public async Task A_maker_sees_own_results_only_and_the_instructor_those_of_the_class()
    {
        await using var store = await OpenStore.MakeAsync();
        var (book, course) = await FilledAsync(store);
        Assert.Single(await book.OwnAsync(Of(OpenStore.Mine), course));
        Assert.Equal(2, (await book.OwnAsync(Of(OpenStore.Theirs), course)).Count);
        Assert.Equal([OpenStore.Mine], (await book.SeenAsync(Of(OpenStore.Mine), course)).Select(attempt => attempt.Maker));
        Assert.Empty(await book.SeenAsync(Of("someone else"), course));
        Assert.Equal(3, (await book.SeenAsync(Of("instructor", isHere: true), course)).Count);

        // On the page of one's own, the instructor too sees own results only.
        Assert.Empty(await book.OwnAsync(Of("instructor", isHere: true), course));
    }

    [Fact]
    public async Task What_is_kept_of_a_check_is_its_outcome_and_no_size()
    {
        await using var store = await OpenStore.MakeAsync();
        var (book, course) = await FilledAsync(store);
        var kept = Assert.Single(await book.OwnAsync(Of(OpenStore.Mine), course));
        Assert.Equal((1, course.Projects[0].Worked.Fronts.First().Leaves[0].Label, CutStage.IntoClamps, 0, 1, false), (kept.Bench, kept.Leaf, kept.Stage, kept.RightFigures, kept.AllFigures, kept.IsRight));
        Assert.Equal(course.Projects[0].Project.Id, kept.ProjectId);
    }

    private static ExerciseResult Sheet(int right) => new(ExerciseKind.Worksheet, 3, "level 3: A pair", Measure.LengthUnit.Millimetre, 7, right, 10, [])
    {
        LevelNumber = 3,
        RightFigures = right,
        AllFigures = 8,
        Causes = [new(SlipKind.LeftOut, "groove")],
        Unexplained = 1,
    };

    private static ExerciseResult Drilled(int right) => new(ExerciseKind.Drill, 3, "drill to 1/16 in", Measure.LengthUnit.Inch, 7, right, 4, []) { Shares = [new(DrillKind.Halve, 4, right)] };

    [Fact]
    public async Task Of_a_sheet_the_first_marking_counts_and_each_maker_sees_own_ones()
    {
        await using var store = await OpenStore.MakeAsync();
        var course = await store.AddAsync(Courses.Measured());
        var book = store.Attempts;
        var told = 0;
        book.Changed += _ => told++;
        await book.RecordAsync(course, "worksheet/3?level=3", OpenStore.Mine, Sheet(6));
        await book.RecordAsync(course, "worksheet/3?level=3", OpenStore.Mine, Sheet(10));
        await book.RecordAsync(course, "worksheet/3?level=3", OpenStore.Theirs, Sheet(8));
        await book.RecordAsync(course, "drill/3?seed=7", OpenStore.Theirs, Drilled(1));
        await book.RecordAsync(course, "drill/3?seed=7", OpenStore.Theirs, Drilled(4));
        Assert.Equal(3, told);

        var own = Assert.Single(await book.OwnExercisesAsync(Of(OpenStore.Mine), course));
        Assert.Equal((ExerciseKind.Worksheet, "level 3: A pair", 3, 3, 6, 10, 6, 8, 1), (own.Kind, own.Level, own.LevelNumber, own.Bench, own.Earned, own.Marks, own.RightFigures, own.AllFigures, own.Unexplained));
        Assert.Equal((SlipKind.LeftOut, "groove"), (Assert.Single(own.Causes).Kind, own.Causes[0].Subject));
        Assert.Equal(2, (await book.OwnExercisesAsync(Of(OpenStore.Theirs), course)).Count);
        Assert.Empty(await book.OwnExercisesAsync(Of("instructor", isHere: true), course));

        Assert.Equal(OpenStore.Mine, Assert.Single(await book.SeenAsync(Of(OpenStore.Mine), course)).Maker);
        Assert.Empty(await book.SeenDrillsAsync(Of(OpenStore.Mine), course));
        Assert.Empty((await book.ReckonAsync(Of(OpenStore.Mine), course, Measure.LengthUnit.Inch)).Drills);
        var found = await book.ReckonAsync(Of("instructor", isHere: true), course, Measure.LengthUnit.Inch);
        Assert.Equal((2, 2, 2), (Assert.Single(found.Rules).Makers, found.Rules[0].Worksheets, found.NotExplained!.Makers));
        Assert.Equal((DrillKind.Halve, 4, 1), (Assert.Single(found.Drills).Kind, found.Drills[0].Asked, found.Drills[0].Right));
        Assert.Equal((2, 1), (found.Weeks[^1].Worksheets, found.Weeks[^1].Drills));

        var other = await store.AddAsync(Courses.WithBenches(1));
        Assert.Empty(await book.OwnExercisesAsync(Of(OpenStore.Mine), other));
        Assert.Empty(await book.SeenDrillsAsync(Of("instructor", isHere: true), other));
    }

    [Fact]
    public async Task What_nothing_explains_is_counted()
    {
        await using var store = await OpenStore.MakeAsync();
        var (book, course) = await FilledAsync(store);
        // A rail an inch long comes from no slip.
        Assert.Equal(1, Assert.Single(await book.OwnAsync(Of(OpenStore.Mine), course)).Unexplained);
        Assert.Equal(2, (await book.ReckonAsync(Of("instructor", isHere: true), course, Measure.LengthUnit.Inch)).NotExplained!.Makers);
    }

    [Fact]
    public async Task Another_course_keeps_its_own()
    {
        await using var store = await OpenStore.MakeAsync();
        var (book, _) = await FilledAsync(store);
        var other = await store.AddAsync(Courses.WithBenches(1));
        Assert.Empty(await book.SeenAsync(Of("instructor", isHere: true), other));
        Assert.Empty(await book.OwnAsync(Of(OpenStore.Mine), other));
    }

    [Fact]
    public async Task How_much_is_told_is_the_instructors_to_set()
    {
        await using var store = await OpenStore.MakeAsync();
        var (book, course) = await FilledAsync(store);
        Assert.Equal(Telling.Rule, await book.MostToldAsync(course));
        await Assert.ThrowsAsync<UnauthorizedAccessException>(() => book.SetMostToldAsync(Of(OpenStore.Mine), course, Telling.All));
        Assert.Equal(Telling.Rule, await book.MostToldAsync(course));
        foreach (var most in new[] { Telling.All, Telling.RightOrWrong })
        {
            await book.SetMostToldAsync(Of("instructor", isHere: true), course, most);
            Assert.Equal(most, await book.MostToldAsync(course));
        }
    }
}
