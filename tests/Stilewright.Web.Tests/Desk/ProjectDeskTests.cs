using Stilewright.Measure;
using Stilewright.Web.Desk;
using Stilewright.Web.Fields;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Desk;

public sealed class ProjectDeskTests
{
    [Fact]
    public async Task What_is_typed_is_tried_and_not_saved()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        desk.Typed(field, "24");
        Assert.Equal("24", desk.Words.Of(desk.Worked.Fronts.Single().Figure!.Width));
        Assert.Equal("23 1/2", desk.SavedText(field));
        Assert.Equal("24", desk.Current(field)!.Value.Text);
        desk.Typed(field, "12 3/");
        Assert.Contains("12 3/", desk.ProblemOf(field), StringComparison.Ordinal);
        Assert.Equal("24", desk.Words.Of(desk.Worked.Fronts.Single().Figure!.Width));
        // Back at what is saved, nothing stands any more.
        desk.Typed(field, "23.5");
        Assert.Null(desk.ProblemOf(field));
        Assert.Equal("23 1/2", desk.Words.Of(desk.Worked.Fronts.Single().Figure!.Width));
        Assert.Empty(desk.Unsaved(field.Name.Split('/')[0]));
        Assert.Equal(1, desk.Project!.Head);
    }

    [Fact]
    public async Task What_is_settled_is_saved_once()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        await desk.SettleAsync(field, "24", "23 1/2");
        await desk.SettleAsync(field, "24", "23 1/2");
        Assert.Equal(2, desk.Project!.Head);
        Assert.Equal("Saved, revision 2", desk.Message);
        await desk.SettleAsync(field, "12 3/", "24");
        Assert.Equal(2, desk.Project!.Head);
        Assert.NotNull(desk.ProblemOf(field));
    }

    [Fact]
    public async Task A_reading_may_be_taken_out_again_and_what_is_needed_may_not()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        await desk.SettleAsync(field, "", "23 1/2");
        Assert.Null(field.Get(desk.Project!.Course));
        var face = desk.Project.Project.Pieces[0].Faces[0].Id;
        Assert.True(await desk.SaveAsync(course => LayoutEdits.WithFrame(course, face, LengthUnit.Inch)));
        var width = LayoutFields.Frame(face)[0];
        await desk.SettleAsync(width, "", "36");
        Assert.Equal("frame, width over all is needed: type a length.", desk.ProblemOf(width));
        Assert.Equal("36", desk.SavedText(width));
    }

    [Fact]
    public async Task What_the_document_forbids_is_told_beside_the_field_and_the_text_stays()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        desk.Typed(field, "0");
        await desk.SettleAsync(field, "0", "23 1/2");
        Assert.NotNull(desk.ProblemOf(field));
        Assert.Equal(1, desk.Project!.Head);
        Assert.Equal("23 1/2", desk.SavedText(field));
        Assert.False(desk.IsSaved(field, "0"));
    }

    [Theory]
    [InlineData(true, "24")]
    [InlineData(false, "25")]
    public async Task Two_values_of_one_field_wait_for_a_choice(bool mine, string holds)
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        var other = await store.DeskAsync(desk.Course.Course.Id, OpenStore.Theirs);
        await other.SettleAsync(field, "25", "23 1/2");
        desk.Typed(field, "24");
        await desk.RefreshAsync();
        await desk.SettleAsync(field, "24", "23 1/2");
        Assert.Equal(new(field.Name, "24", "25", "23 1/2"), desk.ConflictOf(field));
        Assert.Equal(2, desk.Project!.Head);
        await desk.ResolveAsync(field, mine);
        Assert.Null(desk.ConflictOf(field));
        Assert.Equal(holds, desk.SavedText(field));
        Assert.Equal(holds, desk.Words.Of(desk.Worked.Fronts.Single().Figure!.Width));
    }

    [Fact]
    public async Task A_screen_that_has_not_heard_of_the_other_does_not_overwrite_it()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        var other = await store.DeskAsync(desk.Course.Course.Id, OpenStore.Theirs);
        await other.SettleAsync(field, "25", "23 1/2");
        desk.Typed(field, "24");
        await desk.SettleAsync(field, "24", "23 1/2");
        Assert.Equal("25", desk.SavedText(field));
        Assert.Equal(2, desk.Project!.Head);
        Assert.Equal(new(field.Name, "24", "25", "23 1/2"), desk.ConflictOf(field));
    }

    [Fact]
    public async Task What_both_entered_alike_is_no_conflict()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        var other = await store.DeskAsync(desk.Course.Course.Id, OpenStore.Theirs);
        await other.SettleAsync(field, "24", "23 1/2");
        await desk.RefreshAsync();
        await desk.SettleAsync(field, "24.0", "23 1/2");
        Assert.Null(desk.ConflictOf(field));
        Assert.Equal(2, desk.Project!.Head);
    }

    [Fact]
    public async Task What_an_opening_had_is_not_said_to_be_saved_when_the_opening_is_gone()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        desk.Typed(field, "24");
        var other = await store.DeskAsync(desk.Course.Course.Id, OpenStore.Theirs);
        Assert.True(await other.SaveAsync(course => ProjectEdits.WithFace(course, course.Projects[0].Pieces[0].Faces[0].Id, face => face with { Openings = [] })));
        await desk.RefreshAsync();
        await desk.SettleAsync(field, "24", "23 1/2");
        Assert.Contains("took out", desk.ProblemOf(field), StringComparison.Ordinal);
        Assert.False(desk.IsSaved(field, "24"));
        Assert.Equal([("at the top", "24")], desk.Unsaved(field.Name.Split('/')[0]));
        Assert.Equal(2, desk.Project!.Head);
    }

    [Fact]
    public async Task A_cleared_bench_leaves_no_project_and_no_fault()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(desk.Course, OpenStore.Theirs, course => course with { Projects = [] }));
        await desk.RefreshAsync();
        Assert.Null(desk.Project);
        desk.Typed(field, "24");
        await desk.SettleAsync(field, "24", "23 1/2");
        Assert.Null(desk.Project);
    }

    [Fact]
    public async Task Only_ones_own_change_is_taken_back_and_told()
    {
        await using var store = await OpenStore.MakeAsync();
        var (desk, field) = await BeginAsync(store);
        await desk.SettleAsync(field, "24", "23 1/2");
        var key = desk.Project!.Key;
        Assert.False((await store.Workshop.HistoryAsync(key, OpenStore.Theirs)).CanUndo);
        await desk.TakeBackAsync(await store.Workshop.HistoryAsync(key, OpenStore.Mine), isRedo: false);
        Assert.Equal("23 1/2", desk.SavedText(field));
        Assert.StartsWith("Taken back: Opening 1, width at the top: 24 → 23 1/2", desk.Message, StringComparison.Ordinal);
        await desk.TakeBackAsync(await store.Workshop.HistoryAsync(key, OpenStore.Mine), isRedo: true);
        Assert.Equal("24", desk.SavedText(field));
        Assert.StartsWith("Made again: ", desk.Message, StringComparison.Ordinal);

        // What someone else changed since is left alone.
        var other = await store.DeskAsync(desk.Course.Course.Id, OpenStore.Theirs);
        await other.SettleAsync(field, "25", "24");
        await desk.TakeBackAsync(await store.Workshop.HistoryAsync(key, OpenStore.Mine), isRedo: false);
        Assert.Equal("25", desk.SavedText(field));
        Assert.Contains("Someone changed the same thing since", Assert.Single(desk.Refusals), StringComparison.Ordinal);
    }

    private static async Task<(ProjectDesk Desk, LengthField Field)> BeginAsync(OpenStore store)
    {
        var course = Courses.Measured();
        await store.AddAsync(course);
        return (await store.DeskAsync(course.Id), ReadingFields.Widths(Courses.OpeningId(course))[0]);
    }
}
