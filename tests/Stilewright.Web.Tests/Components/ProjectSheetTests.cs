using System.Security.Claims;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using Stilewright.Projects;
using Stilewright.Web.Desk;
using Stilewright.Web.Makers;
using Stilewright.Web.Shell;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.Components;

/// <summary>The frame of every page about a project.</summary>
public sealed class ProjectSheetTests
{
    [Fact]
    public async Task A_project_is_shown_with_where_the_work_stands()
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = new BunitContext();
        var course = Courses.Measured();
        await store.AddAsync(course);
        var sheet = Show(page, store, course.Id, 1);
        Assert.Equal("Cupboard 1", sheet.Find("[aria-current=page]").TextContent);
        Assert.Contains("1 opening", sheet.Find(".steps").TextContent, StringComparison.Ordinal);
        Assert.Equal("Revision 1", sheet.Find(".saved").TextContent);
        Assert.Equal("in the sheet", sheet.Find("main p").TextContent);
        Assert.All(sheet.FindAll(".tools button").Where(each => each.TextContent is "Undo" or "Redo"), each => Assert.True(each.HasAttribute("disabled")));
    }

    [Theory]
    [InlineData("nowhere", 1, "/")]
    [InlineData(null, 7, "/courses/")]
    public async Task A_bench_where_nobody_works_is_told_with_a_way_on(string? courseId, int bench, string way)
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = new BunitContext();
        var course = Courses.Measured();
        await store.AddAsync(course);
        var sheet = Show(page, store, courseId ?? course.Id, bench);
        Assert.Equal("Nobody works at this bench", sheet.Find("h1").TextContent);
        Assert.StartsWith(way, sheet.Find("main a").GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_others_save_is_followed_until_the_bench_is_cleared()
    {
        await using var store = await OpenStore.MakeAsync();
        await using var page = new BunitContext();
        var added = await store.AddAsync(Courses.Measured());
        var sheet = Show(page, store, added.Course.Id, 1);
        var now = Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(added, OpenStore.Theirs, Named("Hall cupboard"))).Course;
        sheet.WaitForAssertion(() => Assert.Equal("Hall cupboard", sheet.Find("[aria-current=page]").TextContent));
        Assert.IsType<SaveResult.Saved>(await store.Workshop.SaveAsync(now, OpenStore.Theirs, course => course with { Projects = [] }));
        sheet.WaitForAssertion(() => Assert.Equal("Nobody works at this bench", sheet.Find("h1").TextContent));
    }

    private static Func<Course, Course> Named(string name) => course => course with { Projects = [.. course.Projects.Select(project => project with { Name = name })] };

    private static IRenderedComponent<ProjectSheet> Show(BunitContext page, OpenStore store, string courseId, int bench)
    {
        page.Services.AddSingleton(store.Workshop);
        page.Services.AddSingleton(store.Makers);
        page.Services.AddScoped<Asker>();
        page.AddAuthorization().SetAuthorized("A").SetClaims(new Claim(ClaimTypes.NameIdentifier, OpenStore.Mine));
        page.JSInterop.Mode = JSRuntimeMode.Loose;
        RenderFragment<ProjectDesk> child = _ => builder => builder.AddMarkupContent(0, "<p>in the sheet</p>");
        var sheet = page.Render<ProjectSheet>(set => set.Add(it => it.CourseId, courseId).Add(it => it.Bench, bench)
            .Add(it => it.Step, WorkStep.Measure).Add(it => it.ChildContent, child).AddCascadingValue(new Reader(null)));
        sheet.WaitForElement("main");
        return sheet;
    }
}
