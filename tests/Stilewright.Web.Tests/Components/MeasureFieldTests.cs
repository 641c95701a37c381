using Bunit;
using Stilewright.Web.Desk;
using Stilewright.Web.Fields;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Components;

public sealed class MeasureFieldTests
{
    [Fact]
    public async Task The_field_says_what_is_saved_and_never_changes_its_value()
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = new BunitContext();
        var (desk, field) = await BeginAsync(store);
        var shown = page.Render<MeasureField>(set => set.Add(it => it.Desk, desk).Add(it => it.Field, field));
        var input = shown.Find("input");
        Assert.Equal("23 1/2", input.GetAttribute("value"));
        Assert.Equal("23 1/2", input.GetAttribute("data-saved"));
        Assert.Equal("in", input.GetAttribute("data-shown-in"));
        await input.TriggerEventAsync("ontyped", new FieldEventArgs { Text = "24", BasedOn = "23 1/2" });
        await input.TriggerEventAsync("onsettled", new FieldEventArgs { Text = "24", BasedOn = "23 1/2" });
        Assert.Equal("24", shown.Find("input").GetAttribute("data-saved"));
        Assert.Equal("24", shown.Find("input").GetAttribute("data-settled"));
        Assert.Equal("23 1/2", shown.Find("input").GetAttribute("value"));
    }

    [Fact]
    public async Task What_cannot_be_read_is_told_to_the_eye_and_to_the_ear()
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = new BunitContext();
        var (desk, field) = await BeginAsync(store);
        var shown = page.Render<MeasureField>(set => set.Add(it => it.Desk, desk).Add(it => it.Field, field));
        await shown.Find("input").TriggerEventAsync("ontyped", new FieldEventArgs { Text = "12 3/", BasedOn = "23 1/2" });
        var input = shown.Find("input");
        Assert.Equal("true", input.GetAttribute("aria-invalid"));
        var words = shown.Find($"#{input.GetAttribute("aria-describedby")}");
        Assert.Equal("status", words.GetAttribute("role"));
        Assert.Contains("12 3/", words.TextContent, StringComparison.Ordinal);
        Assert.Null(input.GetAttribute("data-settled"));
    }

    [Theory]
    [InlineData(0, "24")]
    [InlineData(1, "25")]
    public async Task Both_values_of_a_conflict_are_offered(int button, string holds)
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = new BunitContext();
        var (desk, field) = await BeginAsync(store);
        await (await store.DeskAsync(desk.Course.Course.Id, OpenStore.Theirs)).SettleAsync(field, "25", "23 1/2");
        await desk.RefreshAsync();
        var shown = page.Render<MeasureField>(set => set.Add(it => it.Desk, desk).Add(it => it.Field, field));
        await shown.Find("input").TriggerEventAsync("onsettled", new FieldEventArgs { Text = "24", BasedOn = "23 1/2" });
        Assert.Equal(["Mine, 24", "Theirs, 25"], shown.FindAll(".measure-words button").Select(each => each.TextContent));
        await shown.FindAll(".measure-words button")[button].ClickAsync(new());
        Assert.Empty(shown.FindAll(".measure-words"));
        Assert.Equal(holds, shown.Find("input").GetAttribute("data-saved"));
        // The browser may forget what was typed here: it is saved, or given up.
        Assert.Equal("24", shown.Find("input").GetAttribute("data-settled"));
    }

    private static async Task<(ProjectDesk Desk, LengthField Field)> BeginAsync(OpenStore store)
    {
        var course = Courses.Measured();
        await store.AddAsync(course);
        return (await store.DeskAsync(course.Id), ReadingFields.Widths(Courses.OpeningId(course))[0]);
    }
}
