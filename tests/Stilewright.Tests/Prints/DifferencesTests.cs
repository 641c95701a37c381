using CsCheck;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Tests.Doors;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Prints;

public class DifferencesTests
{
    private const string Program = "0.1.0";
    private static readonly DateTimeOffset Time = new(2026, 3, 14, 19, 5, 0, 250, TimeSpan.FromHours(1));
    private static readonly Opening Hole = Opening("23 3/4", "29 1/2", Pair());

    // Arithmetic: opening 23 3/4 × 29 1/2, 3/8 all round, 1/8 between: leaf 12 3/16 × 30 1/4; rail 12 3/16 − 2 × 2 1/4 + 2 × 3/8 = 8 7/16.
    // With a gap of 1/4 between the leaves each is 1/16 narrower, and so are its rails and its panel; stiles stay.
    [Fact]
    public void A_wider_gap_makes_rails_and_panels_shorter_and_leaves_stiles_alone()
    {
        var then = Handed(Break(Course(Design(), SettingValues.None, Hole)));
        Assert.Equal(["7·1L·TR top rail: handed out at 2 1/4 × 8 7/16 in, now 2 1/4 × 8 3/8 in (finished)"],
            Texts(then, Break(Course(Design(), Set((Settings.GapOfPair, "1/4")), Hole))).Where(text => text.StartsWith("7·1L·TR", StringComparison.Ordinal)
                && text.EndsWith("(finished)", StringComparison.Ordinal)));
        var differences = Since(then, Break(Course(Design(), Set((Settings.GapOfPair, "1/4")), Hole)));
        Assert.False(differences.PaperHolds);
        Assert.All(differences.OnPaper, change => Assert.IsType<SizeChange>(change));
        Assert.DoesNotContain(differences.OnPaper, change => change.Path!.Contains("stile", StringComparison.Ordinal));
        Assert.Equal(6, differences.OnPaper.Count(change => change is SizeChange { Stage: SizeStage.Finished }));
        Assert.Equal(6, differences.OnPaper.Count(change => change is SizeChange { Stage: SizeStage.GlueUp }));
        Assert.Equal(6, differences.OnPaper.Count(change => change is SizeChange { Stage: SizeStage.Rough }));
        Assert.Contains(differences.OnPaper, change => change.Text(LengthFormat.MillimetresToTenth)
            == "7·1R·TR top rail: handed out at ≈57.2 × ≈214.3 mm, now ≈57.2 × ≈212.7 mm (finished)");
    }

    [Fact]
    public void Nothing_differs_where_nothing_changed()
    {
        var breakdown = Break(Course(Design(), SettingValues.None, Hole));
        var differences = Since(Handed(breakdown), breakdown);
        Assert.True(differences.PaperHolds);
        Assert.Empty(differences.Origins);
    }

    /// <summary>By any course: what changed is told for exactly the parts whose figures differ.</summary>
    [Fact]
    public void Exactly_the_parts_that_changed_are_told() => Gen.Int[0, 1_000_000].Array[60, 60].Sample(choices =>
    {
        var (course, standard) = new CourseMaker(choices).Make();
        var was = Breakdown.Of(course, standard);
        var overrides = new Dictionary<Setting, SettingValue>(course.Overrides.Values) { [Settings.RoughLength] = new("3 in", 3.Inches) };
        var now = Breakdown.Of(course with { Overrides = new(overrides) }, standard);
        var changed = was.Parts.Zip(now.Parts).Where(pair => pair.First.Rough?.Length.Amount != pair.Second.Rough?.Length.Amount).Select(pair => pair.First.Path);
        Assert.Equal(was.Parts.Select(part => part.Path), now.Parts.Select(part => part.Path));
        Assert.Equal(changed, Since(Handed(was), now).OnPaper.OfType<SizeChange>().Where(change => change.Stage == SizeStage.Rough).Select(change => change.Path));
    }, iter: 100);

    [Fact]
    public void Parts_that_are_gone_or_new_are_told()
    {
        var plain = Break(Course(Design(), SettingValues.None, Hole));
        var railed = Break(Course(Design() with { MidRails = new(1, null, []) }, SettingValues.None, Hole));
        var added = Since(Handed(plain), railed).OnPaper.OfType<PartAdded>().ToList();
        Assert.Contains(added, change => change.Text(LengthFormat.InchesTo32).EndsWith("mid rail: new since", StringComparison.Ordinal));
        var gone = Since(Handed(railed), plain).OnPaper.OfType<PartGone>().ToList();
        Assert.Equal(added.Select(change => change.Path), gone.Select(change => change.Path));
        Assert.All(gone, change => Assert.EndsWith(": no longer there", change.Text(LengthFormat.InchesTo32), StringComparison.Ordinal));
    }

    [Fact]
    public void Parts_withheld_now_are_told_with_the_reason()
    {
        var then = Handed(Break(Course(Design(), SettingValues.None, Hole)));
        var now = Break(Course(Design(), SettingValues.None, Opening("8", "29 1/2", Pair())));
        Assert.Empty(now.Parts);
        var gone = Since(then, now).OnPaper;
        Assert.Equal(then.PartCount, gone.Count);
        Assert.Contains("7·1L·TR top rail: withheld now, since its leaf cannot be built", gone.Select(change => change.Text(LengthFormat.InchesTo32)));
    }

    [Fact]
    public void Another_species_stock_or_label_is_told()
    {
        var then = Handed(Break(Course(Design(), SettingValues.None, Hole)));
        var cherry = Texts(then, Break(Course(Design() with { Species = "cherry" }, SettingValues.None, Hole)));
        Assert.Contains("7·1L·TR top rail: handed out in red oak, now cherry", cherry);
        var thicker = Texts(then, Break(Course(Design() with { Stock = "full-four-quarter" }, SettingValues.None, Hole)));
        Assert.Contains("7·1L·TR top rail: handed out 13/16 in thick, now 7/8 in (planed)", thicker);
        Assert.Contains("7·1L·TR top rail: handed out 3/4 in thick, now 13/16 in (sanded)", thicker);
        var second = Texts(then, Break(Course(Design(), SettingValues.None, Opening("12", "12", Single(), "other"), Hole)));
        Assert.Contains("7·1L·TR top rail: now 7·2L·TR top rail", second);
    }

    [Fact]
    public void Another_bench_is_told_once_and_not_for_every_label()
    {
        var course = Course(Design(), SettingValues.None, Hole);
        var moved = course with { Projects = [course.Projects[0] with { Bench = 8 }] };
        Assert.Equal(["Cupboard: handed out for bench 7, now bench 8; its labels begin with 8"], Texts(Handed(Break(course)), Break(moved)));
    }

    [Fact]
    public void Benches_that_are_gone_or_new_are_told_by_what_was_handed_out()
    {
        var one = Course(Design(), SettingValues.None, Hole);
        var both = one with { Projects = [.. one.Projects, Course(Design(), SettingValues.None, Opening("20", "20", Single(), "second")).Projects[0] with { Id = "window", Bench = 9, Name = "Window seat" }] };
        Assert.Empty(Texts(Handed(Break(one)), Break(both)));
        Assert.Equal(["Bench 9, Window seat: new in the course since; parts: 5"], Texts(Handed(Break(one), HandedOutExtent.WholeCourse), Break(both)));
        Assert.Equal(["Bench 9, Window seat: no longer in the course; parts handed out: 5"], Texts(Handed(Break(both)), Break(one)));
    }

    // As above: with a gap of 1/4 the top rail is 8 3/8 long. A pattern told of it alone, so the other parts are neither changed nor new.
    [Fact]
    public void Paper_about_one_part_says_nothing_of_the_others()
    {
        var then = Break(Course(Design(), SettingValues.None, Hole));
        var now = Break(Course(Design(), Set((Settings.GapOfPair, "1/4")), Hole));
        var rail = then.Parts.Single(part => part.Label == "7·1L·TR");
        var paper = HandedOut.Of(then, then.Projects, HandedOutExtent.Parts, RevisionsOf(then), Program, Time, [rail]);
        Assert.Equal("paper about 7·1L·TR", paper.What);
        Assert.True(Since(paper, then).PaperHolds);
        Assert.Equal(
            ["finished", "into the clamps", "rough"],
            Since(paper, now).OnPaper.Select(change => change.Text(LengthFormat.InchesTo32).Split('(', ')')[1]));
        Assert.All(Since(paper, now).OnPaper, change => Assert.Equal(rail.Path, change.Path));
    }

    [Fact]
    public void Another_program_standard_or_revision_is_told_and_leaves_the_paper_right()
    {
        var breakdown = Break(Course(Design(), SettingValues.None, Hole));
        var now = RevisionsOf(breakdown) with { Standard = "bbbbbbbb", Projects = new Dictionary<string, string> { ["project"] = "dddddddd" } };
        var differences = Differences.Since(Handed(breakdown), breakdown, now, "0.2.0");
        Assert.True(differences.PaperHolds);
        var name = ShippedStandards.Inch.Name;
        Assert.Equal(
            [
                "Program: handed out by version 0.1.0, now version 0.2.0",
                $"House standard: handed out under {name}, revision aaaaaaaa, now {name}, revision bbbbbbbb",
                "Bench 7, Cupboard: handed out from revision cccccccc, now dddddddd",
            ],
            differences.Origins.Select(change => change.Text(LengthFormat.InchesTo32)));
    }

    /// <summary>Two figures that would be printed alike say nothing; the next finer step that tells them apart is taken.</summary>
    [Theory]
    [InlineData("8 9/16", "8 19/32", "8 9/16 in, now 2 1/4 × 8 19/32 in (finished)")]
    [InlineData("8 9/16", "8 37/64", "8 9/16 in, now 2 1/4 × 8 37/64 in (finished)")]
    [InlineData("8 9/16", "8 145/256", "≈217.5 mm, now ≈57.2 × ≈217.6 mm (finished)")]
    [InlineData("8 9/16", "8 9217/16384", "≈8 5/8 in, now 2 1/4 × ≈8 5/8 in (finished), by less than is printed")]
    [InlineData("8 9217/16384", "8 9218/16384", "≈8 5/8 in, now 2 1/4 × ≈8 5/8 in (finished), by less than is printed")]
    public void A_small_change_is_shown_in_steps_that_show_it(string was, string now, string end)
    {
        var part = Handed(Break(Course(Design(), SettingValues.None, Hole))).Projects[0].Parts[0];
        var width = In("2 1/4").Value;
        SizeChange change = new(part, SizeStage.Finished, new(width, In(was).Value), new(width, In(now).Value));
        Assert.EndsWith(end, change.Text(new(LengthUnit.Inch, 8)), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_handed_out_is_kept_to_the_second_in_universal_time()
    {
        var handedOut = Handed(Break(Course(Design(), SettingValues.None, Hole)));
        Assert.Equal(new DateTimeOffset(2026, 3, 14, 18, 5, 0, TimeSpan.Zero), handedOut.Time);
        Assert.Equal(TimeSpan.Zero, handedOut.Time.Offset);
        Assert.Equal("packet of bench 7", handedOut.What);
        Assert.Equal("packet of the whole course", (handedOut with { Extent = HandedOutExtent.WholeCourse }).What);
    }

    [Fact]
    public void Another_course_cannot_be_compared()
    {
        var course = Course(Design(), SettingValues.None, Hole);
        Assert.Throws<ArgumentException>(() => Since(Handed(Break(course)), Break(course with { Id = "other" })));
    }

    private static HandedOut Handed(Breakdown breakdown, HandedOutExtent extent = HandedOutExtent.Benches) =>
        HandedOut.Of(breakdown, breakdown.Projects, extent, RevisionsOf(breakdown), Program, Time);

    private static Revisions RevisionsOf(Breakdown breakdown) =>
        new("aaaaaaaa", breakdown.Projects.ToDictionary(project => project.Project.Id, _ => "cccccccc"));

    private static Differences Since(HandedOut then, Breakdown now) => Differences.Since(then, now, RevisionsOf(now), Program);

    private static string[] Texts(HandedOut then, Breakdown now) =>
        [.. Since(then, now).OnPaper.Select(change => change.Text(LengthFormat.InchesTo32))];
}
