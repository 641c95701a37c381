using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Writing;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Web.Desk;
using Stilewright.Web.Features.Printing;
using Stilewright.Web.Features.Standard;
using Stilewright.Web.Storage;
using Stilewright.Wording;

namespace Stilewright.Web.Tests.Standards;

public sealed class StandardSavesTests
{
    // Width of a leaf: the opening and an overlay on either side; 20 + 2 x 3/8 as shipped.
    private static readonly Length AsShipped = Length.FromInches(new Fractions.Fraction(83, 4));
    private static readonly Length AtOneHalf = Length.FromInches(21);

    [Fact]
    public async Task BenchesThatFollowAlterAndKeptOnesDoNot()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        Assert.IsType<SaveResult.Saved>(await store.Workshop.KeepOnAsync(course, course.AtBench(2)!, 1, CourseStore.One));
        course = await store.CourseAsync();

        List<string> announced = [];
        store.Workshop.Announced += announcement => announced.Add(announcement.CourseId);
        Assert.IsType<StandardResult.Saved>(await SaveAsync(store, course.Standard, Settings.Overlay, "1/2"));

        Assert.Equal([store.CourseId], announced);
        for (var restarted = 0; restarted < 2; restarted++)
        {
            var now = await store.CourseAsync();
            Assert.Equal([AtOneHalf, AsShipped, AtOneHalf], now.Projects.Select(Width));
            Assert.Equal(2, now.Standard.Head);
            // The combined cut list has each bench as its own standard makes it.
            Assert.Equal([AtOneHalf, AsShipped, AtOneHalf], now.Whole.Leaves.Select(leaf => leaf.Width.Length));
            Assert.Equal(now.Projects.SelectMany(project => project.Breakdown.Findings).Count(), now.Whole.Findings.Count);
            store.Restart();
        }

        course = await store.CourseAsync();
        Assert.IsType<SaveResult.Saved>(await store.Workshop.KeepOnAsync(course, course.AtBench(2)!, null, CourseStore.One));
        Assert.Equal(AtOneHalf, Width((await store.CourseAsync()).AtBench(2)!));
    }

    [Fact]
    public async Task TheSheetsOfAKeptBenchNameTheRevisionThatItsSizesComeFrom()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        Assert.IsType<SaveResult.Saved>(await store.Workshop.KeepOnAsync(course, course.AtBench(2)!, 1, CourseStore.One));
        course = await store.CourseAsync();
        var older = Fingerprint.Of(course.Standard.Standard);
        Assert.IsType<StandardResult.Saved>(await SaveAsync(store, course.Standard, Settings.Overlay, "1/2"));
        course = await store.CourseAsync();
        var newer = Fingerprint.Of(course.Standard.Standard);
        Assert.NotEqual(older, newer);

        var print = Assert.IsType<Found<PaperPrint>.There>((new PacketOrder(null) { Labels = false }).Packet(course, DateTimeOffset.UtcNow)).Thing;
        var sheets = print.Pages.Select(page => page.Scene).ToList();
        Assert.All(sheets, sheet => Assert.Contains($"revision {(sheet.Title.StartsWith("Bench 2,", StringComparison.Ordinal) ? older : newer)}", SvgWriter.Text(sheet), StringComparison.Ordinal));
        Assert.Contains(sheets, sheet => sheet.Title.StartsWith("Bench 2,", StringComparison.Ordinal));
    }

    [Fact]
    public async Task WithoutKeptBenchesAllTogetherAreTheCourseWorkedOutAtOnce()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        var whole = Breakdown.Of(course.Course, course.Standard.Standard);
        Assert.Equal(whole.Parts.Select(part => (part.Path, part.Label, part.Finished.Width.Amount)), course.Whole.Parts.Select(part => (part.Path, part.Label, part.Finished.Width.Amount)));
        Assert.Equal(whole.Findings.Select(finding => (finding.Rule.Code, finding.Place)), course.Whole.Findings.Select(finding => (finding.Rule.Code, finding.Place)));
    }

    [Fact]
    public async Task DifferentSettingsMergeAndTheSameOneConflicts()
    {
        await using var store = await CourseStore.OpenAsync();
        var basis = (await store.CourseAsync()).Standard;
        Assert.IsType<StandardResult.Saved>(await SaveAsync(store, basis, Settings.Overlay, "1/2"));
        var merged = Assert.IsType<StandardResult.Saved>(await SaveAsync(store, basis, Settings.Stile, "2", CourseStore.Other)).Standard;
        Assert.Equal(("1/2", "2"), (StandardFields.ValueOf(merged.Standard, Settings.Overlay).Text, StandardFields.ValueOf(merged.Standard, Settings.Stile).Text));

        var conflict = Assert.IsType<StandardResult.Conflicted>(await SaveAsync(store, basis, Settings.Overlay, "7/16", CourseStore.Other));
        Assert.Single(conflict.Conflicts);
        Assert.Equal(3, (await store.CourseAsync()).Standard.Head);
    }

    [Fact]
    public async Task CuttersThatADesignNamesAreNotRemoved()
    {
        await using var store = await CourseStore.OpenAsync();
        var basis = (await store.CourseAsync()).Standard;
        var used = (await store.CourseAsync()).Course.Designs[0].Cutters;
        var refused = Assert.IsType<StandardResult.Refused>(await store.Workshop.SaveStandardAsync(basis, CourseStore.One,
            standard => standard with { Cutters = [.. standard.Cutters.Where(set => set.Id != used)] }));
        Assert.Contains(refused.Errors, error => error.Problem.Contains("Evening class", StringComparison.Ordinal) && error.Problem.Contains(used!, StringComparison.Ordinal));

        // Those that nobody names go.
        Assert.IsType<StandardResult.Saved>(await store.Workshop.SaveStandardAsync(basis, CourseStore.One,
            standard => standard with { Cutters = [.. standard.Cutters.Where(set => set.Id == used)] }));
    }

    [Fact]
    public async Task AKeptBenchIsNotGivenWhatItsStandardLacks()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        Assert.IsType<SaveResult.Saved>(await store.Workshop.KeepOnAsync(course, course.AtBench(1)!, 1, CourseStore.One));
        Assert.IsType<StandardResult.Saved>(await store.Workshop.SaveStandardAsync(course.Standard, CourseStore.One,
            standard => standard with { Cutters = [.. standard.Cutters, standard.Cutters[0] with { Id = "new-set", Name = "New set" }] }));
        course = await store.CourseAsync();
        var design = course.Course.Designs[0].Id;

        var refused = Assert.IsType<SaveResult.Refused>(await store.Workshop.SaveAsync(course, CourseStore.One, there => there with
        {
            Designs = [.. there.Designs.Select(each => each.Id == design ? each with { Cutters = "new-set" } : each)],
        }));
        Assert.Contains(refused.Errors, error => error.Problem.StartsWith("bench 1 is kept on revision 1 of the house standard", StringComparison.Ordinal));
    }

    [Fact]
    public async Task TheMakersOwnChangeIsTakenBack()
    {
        await using var store = await CourseStore.OpenAsync();
        var basis = (await store.CourseAsync()).Standard;
        await SaveAsync(store, basis, Settings.Overlay, "1/2");
        var standard = (await store.CourseAsync()).Standard;
        var history = await store.Workshop.HistoryAsync(standard.Key, CourseStore.One);
        Assert.Equal(2, history.Undo);
        Assert.IsType<StandardResult.Saved>(await store.Workshop.TakeBackAsync(standard, 2, CourseStore.One, RevisionCause.Undo));
        Assert.Equal(AsShipped, Width((await store.CourseAsync()).AtBench(1)!));

        standard = (await store.CourseAsync()).Standard;
        Assert.IsType<StandardResult.Saved>(await store.Workshop.RestoreAsync(standard, 2, CourseStore.Other));
        Assert.Equal(AtOneHalf, Width((await store.CourseAsync()).AtBench(1)!));
        Assert.Equal([4, 3, 2, 1], (await store.Workshop.RevisionsAsync(standard.Key)).Select(entry => entry.Number));
    }

    [Fact]
    public async Task WhatIsTypedWaitsAndTellsWhatAlters()
    {
        await using var store = await CourseStore.OpenAsync();
        var course = await store.CourseAsync();
        var desk = new StandardDesk(store.Workshop, CourseStore.One, course.Standard, null);
        var field = StandardFields.Value(Settings.Overlay, "3/8");
        desk.Typed(field, "1/2");
        await desk.SettleAsync(field, "1/2", "3/8");
        Assert.Equal(1, (await store.CourseAsync()).Standard.Head);

        var bench = course.AtBench(1)!;
        var changes = BenchChanges.Between(bench.Breakdown, Breakdown.Of(bench.Course, desk.Tried), desk.Format);
        Assert.Equal(Length.FromInches(new Fractions.Fraction(1, 4)), changes.Most);
        Assert.Contains(changes.Sizes, size => size is { Name: "leaf", Was: "20 3/4 × 30 3/4", Now: "21 × 31" });
        // Two stiles, two rails and the panel.
        Assert.Equal(5, changes.Parts);

        desk.Leave();
        Assert.Equal(("1/2", "3/8", false), (desk.LeftOf(field), desk.TriedText(field), desk.HasDrafts));

        desk.Typed(field, "-1");
        Assert.True(desk.HasProblems);
        desk.Typed(field, "1/2");
        Assert.True(await desk.ApplyAsync());
        Assert.Equal(("1/2", false), (desk.SavedText(field), desk.HasDrafts));
        Assert.Equal(AtOneHalf, Width((await store.CourseAsync()).AtBench(3)!));
    }

    [Fact]
    public void AValueOfTheShopDoesNotKeepTheSourceOfTheShippedOne()
    {
        var full = Documents.StandardInFull.Of(ShippedStandards.Inch);
        var field = StandardFields.Value(Settings.Overlay, "3/8");
        var text = new Stilewright.Web.Fields.FieldText(LengthUnit.Inch, LengthFormat.InchesTo32);
        var changed = field.Read("7/16", text).Edit!(full);
        Assert.Null(changed.Settings.Find(Settings.Overlay)!.Source);
        var told = StandardFields.Source(Settings.Overlay).Read("our hinges", text).Edit!(changed);
        Assert.Equal("our hinges", field.Read("1/2", text).Edit!(told).Settings.Find(Settings.Overlay)!.Source);
        Assert.True(StandardFields.IsShipped(field.Without(told), Settings.Overlay));
    }

    private static Length Width(OpenProject project) => Assert.Single(project.Breakdown.Leaves).Width.Length;

    private static Task<StandardResult> SaveAsync(CourseStore store, OpenStandard basedOn, Setting setting, string text, string author = CourseStore.One) =>
        store.Workshop.SaveStandardAsync(basedOn, author, StandardFields.Value(setting, "")
            .Read(text, new(LengthUnit.Inch, LengthFormat.InchesTo32)).Edit!);
}
