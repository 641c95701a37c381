using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Documents;
using Stilewright.Hanging;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Hang;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Components;

/// <summary>The page on boring and hanging: sheets, places, what is bored already, which hinge an opening has, and its shelves.</summary>
public sealed class HangSheetTests
{
    [Fact]
    public async Task Leaves_of_the_bench_are_drawn_and_told_with_their_arithmetic()
    {
        await using var shown = await ShownAsync();
        var words = shown.Sheet.Markup;
        Assert.Equal(2, shown.Sheet.FindAll("svg").Count);
        Assert.Contains("LEFT-HAND DOOR", words, StringComparison.Ordinal);
        Assert.Contains("RIGHT-HAND DOOR", words, StringComparison.Ordinal);
        Assert.Contains("hinges by height to 900 mm: 2", words, StringComparison.Ordinal);
        Assert.Equal(["L1 from the top, ≈1/32 too far", "R1 from the bottom, ≈1/32 too far"],
            shown.Sheet.FindComponents<HungLeafShown>()[0].FindAll("tbody td:nth-child(4)").Select(cell => cell.TextContent.Replace('\u00a0', ' ')));
        // The sample: 26 3/4 high, 3 1/8 from the end.
        Assert.Contains(shown.Sheet.FindAll("details li"), line => line.TextContent.Replace('\u00a0', ' ').Contains("26 3/4 − 3 1/8 = 23 5/8", StringComparison.Ordinal));
        Assert.Contains(shown.Sheet.FindAll("details li.caution"), step => step.TextContent.Contains("29 CFR 1910.213", StringComparison.Ordinal));
        Assert.DoesNotContain("style=", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bored_leaf_is_answered_in_words()
    {
        await using var shown = await ShownAsync();
        var form = shown.Sheet.FindComponent<BoredForm>();
        string Said() => form.Find("[role=status]").TextContent.Replace('\u00a0', ' ');
        Assert.Equal("", Said().Trim());
        var places = form.FindAll("input")[0];
        places.Change("3 1/8, 23 5/8");
        Assert.Contains("It is bored as a door hinged on its right", Said(), StringComparison.Ordinal);
        Assert.Contains("Use it as 1·2R", Said(), StringComparison.Ordinal);
        form.FindAll("select")[2].Change("right");
        Assert.Contains("It is bored right", Said(), StringComparison.Ordinal);
        form.FindAll("input")[0].Change("3 1/8, wide");
        Assert.Contains("\"wide\"", Said(), StringComparison.Ordinal);
        form.FindAll("input")[0].Change("3 1/8, 99");
        Assert.Contains("no place on 1·2L", Said(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_hinge_of_an_opening_and_its_shelves_are_saved()
    {
        await using var shown = await ShownAsync();
        var opening = shown.Sheet.FindComponent<OpeningHinge>();
        await opening.Find("select").ChangeAsync(new() { Value = "example-wrap-around" });
        Assert.Equal("example-wrap-around", Saved().Overrides.Find(Settings.UsualHinge)?.Text);
        Assert.All(HangingPlan.Of(shown.Desk.Shown).Leaves, leaf => Assert.Null(leaf.Sheet));
        Assert.Empty(shown.Sheet.FindComponents<BoredForm>());
        await opening.Find("select").ChangeAsync(new() { Value = "" });
        Assert.Null(Saved().Overrides.Find(Settings.UsualHinge));

        var shelves = Saved().Shelves.Count;
        await opening.FindAll("button")[^1].ClickAsync(new());
        Assert.Equal(shelves + 1, Saved().Shelves.Count);
        Assert.True(Saved().Shelves[^1].Height.Value > Saved().Shelves[^2].Height.Value);
        await opening.FindAll("button").First(button => button.TextContent.StartsWith("Take shelf", StringComparison.Ordinal)).ClickAsync(new());
        Assert.Equal(shelves, Saved().Shelves.Count);

        Opening Saved() => ProjectEdits.Opening(shown.Desk.Saved, "hall-doors")!;
    }

    [Fact]
    public async Task A_bench_without_hinges_says_how_to_choose_one()
    {
        await using var shown = await ShownAsync(Courses.Measured());
        Assert.Contains("No leaf of this bench has hinges yet", shown.Sheet.Markup, StringComparison.Ordinal);
        Assert.NotEmpty(shown.Sheet.FindComponents<OpeningHinge>());
    }

    private static async Task<Shown> ShownAsync(Course? course = null)
    {
        var store = await OpenStore.MakeAsync();
        var added = await store.AddAsync(course
            ?? Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(await File.ReadAllBytesAsync(Repository.EveningCourse))).Document);
        var desk = await store.DeskAsync(added.Course.Id);
        var page = new BunitContext();
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        page.Services.AddSingleton(store.Workshop);
        return new(store, page, desk, page.Render<HangSheet>(set => set.Add(it => it.Desk, desk)));
    }

    private sealed record Shown(OpenStore Store, BunitContext Page, ProjectDesk Desk, IRenderedComponent<HangSheet> Sheet) : IAsyncDisposable
    {
        public async ValueTask DisposeAsync()
        {
            await Page.DisposeAsync();
            await Store.DisposeAsync();
        }
    }
}
