using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Stilewright.Shop;
using Stilewright.Web.Tests.Running;
using static Microsoft.Playwright.Assertions;

namespace Stilewright.Web.Tests.Flows;

/// <summary>Hinges, their numbers, boring machines, woods and climates on the page of the house standard.</summary>
[Collection(InBrowser.Name)]
public sealed class StandardHangingTests(Chromium chromium)
{
    [Fact]
    public async Task A_hinge_is_entered_from_its_sheet_and_stays_while_it_is_used()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server);
        await screen.GoAsync($"/courses/{course.Id}/standard");
        var hinges = screen.Page.Locator("#hinges");
        // Folded, so that the page stays calm.
        await Expect(screen.Button("Add a hinge")).ToBeHiddenAsync();
        await hinges.Locator("summary").First.ClickAsync();
        await screen.Button("Add a hinge").ClickAsync();
        await Expect(Waiting(screen)).ToContainTextAsync("Hinge “Another hinge” added");
        var added = hinges.Locator(".record").Filter(new() { HasText = "not applied yet" });
        await Field(added, "Name").FillAsync("Ours");
        await added.Locator("select").First.SelectOptionAsync(nameof(HingeStyle.Cup));
        var cup = added.GetByRole(AriaRole.Group, new() { Name = "Cup" });
        await Field(cup, "Diameter").FillAsync("40 mm");
        await Field(added, "Opening angle").FillAsync("500");
        await Expect(Screen.WordsOf(Field(added, "Opening angle"))).ToContainTextAsync("Type a whole number from 30 to 270.");
        await Field(added, "Opening angle").FillAsync("110");
        await added.GetByRole(AriaRole.Button, new() { Name = "Add a plate" }).ClickAsync();
        await Field(added.GetByRole(AriaRole.Group, new() { Name = "Plate 1" }), "Height").FillAsync("2 mm");
        await added.GetByRole(AriaRole.Button, new() { Name = "Add a plate" }).ClickAsync();
        await added.GetByRole(AriaRole.Button, new() { Name = "Take out: Plate 2" }).ClickAsync();
        await added.GetByRole(AriaRole.Button, new() { Name = "Add a least gap" }).ClickAsync();
        await added.GetByRole(AriaRole.Button, new() { Name = "It adjusts sideways" }).ClickAsync();
        // Rows that were altered may be others now, so what was typed about them is left: it is typed again.
        await Field(added.GetByRole(AriaRole.Group, new() { Name = "Plate 1" }), "Height").FillAsync("2 mm");
        await Field(added.GetByRole(AriaRole.Group, new() { Name = "Adjusts sideways" }), "Minus").FillAsync("3 mm");
        await Field(added, "Source").Last.FillAsync("its sheet");
        await ShowAsync(screen, "standard-hinge");
        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        var hinge = (await server.CourseAsync(course.Id)).Standard.Standard.Hinges[^1];
        Assert.Equal(("Ours", HingeStyle.Cup, 110, "its sheet"), (hinge.Name, hinge.Style, hinge.OpensDegrees, hinge.Source));
        Assert.Equal("40 mm", hinge.Cup!.Diameter.Text);
        Assert.Equal("2 mm", Assert.Single(hinge.Cup.Plates).Height.Text);
        Assert.Equal("3 mm", hinge.Adjustment!.Sideways!.Minus.Text);
        Assert.Null(hinge.Adjustment.Height);
        Assert.Equal("1/16", Assert.Single(hinge.Gaps).Gap.Text);

        // Chosen as the usual one it stays; not chosen, it goes.
        var usual = screen.Page.Locator($"[id='standard/settings/{Settings.UsualHinge.Key}'] select");
        await usual.SelectOptionAsync(hinge.Id);
        await hinges.GetByRole(AriaRole.Button, new() { Name = "Remove it: Ours, cup, overlay" }).ClickAsync();
        await Expect(hinges).ToContainTextAsync("is set to it: choose another there first.");
        await screen.Button("Leave it").ClickAsync();
        await hinges.GetByRole(AriaRole.Button, new() { Name = "Remove it: Ours, cup, overlay" }).ClickAsync();
        await Expect(Waiting(screen)).ToContainTextAsync("Hinge “Ours” removed");
        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);
        Assert.DoesNotContain((await server.CourseAsync(course.Id)).Standard.Standard.Hinges, each => each.Name == "Ours");
        Assert.Empty(screen.Faults);
    }

    [Fact]
    public async Task A_table_a_boring_machine_a_wood_and_a_climate_are_entered_on_a_phone()
    {
        await using var server = await TestServer.OpenAsync();
        var course = Courses.Measured();
        await server.AddAsync(course);
        await using var screen = await Screen.OpenAsync(chromium, server, Screen.Phone);
        await screen.GoAsync($"/courses/{course.Id}/standard");
        foreach (var list in (string[])["hingeCounts", "boringMachines", "species", "climates"])
            await screen.Page.Locator($"#{list} > summary").ClickAsync();
        await screen.Button("Add a table").ClickAsync();
        var table = New(screen, "hingeCounts");
        await table.GetByRole(AriaRole.Button, new() { Name = "Add a row by height" }).ClickAsync();
        await table.GetByLabel("Weights in").SelectOptionAsync(nameof(WeightUnit.Kilogram));
        await screen.Button("Add a boring machine").ClickAsync();
        var machine = New(screen, "boringMachines");
        await FitsAsync(screen);
        await machine.GetByRole(AriaRole.Button, new() { Name = "Add a row of stops" }).ClickAsync();
        await Field(machine.GetByRole(AriaRole.Group, new() { Name = "Stops, row 1" }), "Mark").FillAsync("L");
        await Field(machine.GetByRole(AriaRole.Group, new() { Name = "Stops, row 2" }), "Number of the first").FillAsync("11");
        await screen.Button("Add a wood").ClickAsync();
        var wood = New(screen, "species");
        await Field(wood, "Name").FillAsync("river birch");
        await Field(wood, "Other names").FillAsync("birch of ours, bog birch");
        await Field(wood, "Tangential coefficient").FillAsync("0.003");
        await Expect(Waiting(screen)).ToContainTextAsync("one of the two coefficients stands alone");
        await Field(wood, "Radial coefficient").FillAsync("0.002");
        await Field(wood, "Specific gravity").FillAsync("0.6");
        await screen.Button("Add a climate").ClickAsync();
        var climate = New(screen, "climates");
        await climate.GetByLabel("Told by").SelectOptionAsync("seasons");
        await Field(climate.GetByRole(AriaRole.Group, new() { Name = "Season 1" }), "Temperature").FillAsync("20 C");
        await Field(climate.GetByRole(AriaRole.Group, new() { Name = "Season 1" }), "Humidity").FillAsync("30 %");
        await ShowAsync(screen, "standard-hanging-phone");
        await FitsAsync(screen);
        await screen.Button("Apply").ClickAsync();
        await Expect(Waiting(screen)).ToHaveCountAsync(0);

        var standard = (await server.CourseAsync(course.Id)).Standard.Standard;
        Assert.Equal((WeightUnit.Kilogram, 2), (standard.HingeCounts[^1].Weights, standard.HingeCounts[^1].ByHeight.Count));
        Assert.Equal(["L1", "11"], standard.BoringMachines[^1].Stops.Select(row => row.NameOf(0)));
        Assert.Equal([StopSide.Left, StopSide.Right], standard.BoringMachines[^1].Stops.Select(row => row.Side));
        var own = Assert.Single(standard.Species);
        Assert.Equal(("river birch", "0.003", "0.002", "0.6"), (own.Name, own.Tangential?.Text, own.Radial?.Text, own.SpecificGravity?.Text));
        Assert.Equal(["birch of ours", "bog birch"], own.Aliases);
        var season = Assert.Single(standard.Climates).Seasons[0];
        // 20 °C is 68 °F.
        Assert.Equal((68, 30), ((int)season.Temperature.Value.ToDouble(), (int)season.Humidity.Value.ToDouble()));
        Assert.Empty(screen.Faults);
    }

    private static ILocator New(Screen screen, string list) => screen.Page.Locator($"#{list} .record").Filter(new() { HasText = "not applied yet" });

    private static ILocator Field(ILocator of, string label) => of.GetByLabel(label, new() { Exact = true }).First;

    private static ILocator Waiting(Screen screen) => screen.Page.GetByRole(AriaRole.Region, new() { Name = "What is changed and not applied" });

    private static async Task FitsAsync(Screen screen)
    {
        Assert.Empty(await screen.Page.EvaluateAsync<string[]>(
            "() => [...document.querySelectorAll('main *')].filter(each => each.getBoundingClientRect().right > 391).map(each => each.outerHTML.slice(0, 90))"));
    }

    private static async Task ShowAsync(Screen screen, string name)
    {
        foreach (var list in await screen.Page.Locator("details.group[open]").AllAsync())
            await list.ScreenshotAsync(new() { Path = Path.Combine(Repository.Folder("artifacts/screens"), $"{name}-{await list.GetAttributeAsync("id")}.png") });
        var found = await screen.Page.RunAxe(new AxeRunOptions { RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] } });
        Assert.Empty(found.Violations.Select(each => $"{each.Id}: {string.Join("; ", each.Nodes.Select(node => node.Html))}"));
    }
}
