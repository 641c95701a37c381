using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Teaching;

/// <summary>
/// Mistakes of the trade that show in figures, each recognised from its signature. Common practice, no source: groove d = 3/8,
/// stile s = 2 1/4, trim allowance A = 1/8, overlay o = 1/2, clearance c = 1/8, gap g = 1/8.
/// </summary>
public class KnownMistakesTests
{
    private const string Opening1 = "15";
    private const string Opening2 = "24";

    private static readonly SettingValues Values = Set((Settings.Overlay, "1/2"), (Settings.TrimWidth, "1/8"), (Settings.TrimHeight, "1/8"), (Settings.ClearanceAlong, "1/8"));

    private static ProjectBreakdown Project(Filling filling, string width = Opening1, DoorDesign? design = null) =>
        Break(Course(design ?? Design(), Values, Opening(width, Opening2, filling))).Projects[0];

    private static Length Moved(Worked right, string by) => right.Length + (by.StartsWith('-') ? default(Length) - In(by[1..]).Value : In(by).Value);

    private static LengthEntry Entry(Length length) => new($"{length.Inches} in", length);

    // The whole list is right but for what the mistake moves.
    private static IReadOnlyList<Mistake> Told(ProjectBreakdown project, CutStage stage, Func<KeyItem, (string Width, string Length)> moves, bool withLeaf = false)
    {
        var key = ListKey.Of(project, stage);
        var lines = key.Items.Where(item => withLeaf ? item.Part is null && item.Kind == ItemKind.Leaf : item.Part is not null).Select((item, i) =>
        {
            var (width, length) = moves(item);
            return new ListLine(i + 1, item.Name, 1, Entry(Moved(item.Width, width)), Entry(Moved(item.Length, length)), item.Leaf);
        }).ToList();
        return ListCheck.Check(new(stage, lines), key, LengthUnit.Inch).Mistakes;
    }

    private static void IsFirst(IReadOnlyList<Mistake> mistakes, SlipKind kind, string subject)
    {
        var cause = Assert.Single(Assert.Single(mistakes).Explanations[0].Causes);
        Assert.Equal((kind, subject), (cause.Kind, cause.Subject));
    }

    private static void IsAmong(IReadOnlyList<Mistake> mistakes, SlipKind kind, string subject) =>
        Assert.Contains(Assert.Single(mistakes).Explanations.Where(other => other.IsAsLikely), other => other.Causes is [var cause] && (cause.Kind, cause.Subject) == (kind, subject));

    [Theory]
    [InlineData("-3/4", SlipKind.LeftOut, "groove")]          // tongues forgotten: −2d
    [InlineData("-3/8", SlipKind.CountedOnce, "groove")]      // one tongue counted: −d
    [InlineData("3/4", SlipKind.CountedTwice, "groove")]      // tongues added twice: +2d
    [InlineData("3 3/4", SlipKind.StepLeftOut, "rail")]       // stiles not subtracted, cut to the door's width: 2s − 2d
    [InlineData("4 1/2", SlipKind.LeftOut, "stile")]          // stiles not subtracted, tongues added: 2s
    [InlineData("-2 1/4", SlipKind.OneTooMany, "stile")]      // three stiles: −s
    [InlineData("1/8", SlipKind.DoesNotBelong, "trim")]       // allowance added to the rail: +A
    [InlineData("-1", SlipKind.TapeFromOne, "written")]       // the tape's first inch: −1
    public void Rail(string off, SlipKind kind, string subject) =>
        IsFirst(Told(Project(Single()), CutStage.IntoClamps, item => item.Kind == ItemKind.Rail ? ("0", off) : ("0", "0")), kind, subject);

    [Theory]
    [InlineData("-2", SlipKind.SignTurned)]      // overlay subtracted: −2(oL + oR)
    [InlineData("-1", SlipKind.LeftOut)]         // overlay forgotten: −(oL + oR)
    [InlineData("-1/2", SlipKind.CountedOnce)]   // added on one side only: −o
    public void Door_and_overlay(string off, SlipKind kind) =>
        IsFirst(Told(Project(Single()), CutStage.Finished, _ => (off, off), withLeaf: true), kind, "overlay");

    [Theory]
    [InlineData("1/16", SlipKind.LeftOut, "gap")]           // gap forgotten: each + g/2
    [InlineData("-1/16", SlipKind.DividedTooEarly, "gap")]  // gap taken from each: each − g/2
    [InlineData("1/2", SlipKind.CountedTwice, "overlay")]   // two overlays per door: each + o
    public void Pair_and_gap(string off, SlipKind kind, string subject) =>
        IsFirst(Told(Project(Pair(), "30 1/8"), CutStage.Finished, _ => (off, "0"), withLeaf: true), kind, subject);

    // Trim not done: +A both ways.
    [Fact]
    public void Trim_not_done() => IsFirst(Told(Project(Single()), CutStage.Finished, _ => ("1/8", "1/8"), withLeaf: true), SlipKind.DoesNotBelong, "trim");

    // All the trim from one side: stiles differ by A, half of it over on one and short on the other.
    [Fact]
    public void Trim_from_one_side()
    {
        var mistakes = Told(Project(Single()), CutStage.Finished, item => item.Path.EndsWith("stile.left", StringComparison.Ordinal) ? ("1/16", "0") : item.Path.EndsWith("stile.right", StringComparison.Ordinal) ? ("-1/16", "0") : ("0", "0"));
        IsFirst(mistakes, SlipKind.TrimmedOneSide, "trim");
    }

    // An inset gap not doubled: + gap.
    [Fact]
    public void Inset_gap_once() =>
        IsFirst(Told(Project(Single(mount: Mount.Inset)), CutStage.Finished, _ => ("3/32", "3/32"), withLeaf: true), SlipKind.CountedOnce, "gap");

    [Theory]
    [InlineData("-1/2", SlipKind.StepLeftOut, "panel")]       // cut to the visible opening: −2(d − c)
    [InlineData("1/4", SlipKind.LeftOut, "clearance")]        // bottoms: + 2c
    [InlineData("-1/4", SlipKind.CountedTwice, "clearance")]  // rattles: clearance twice: −2c
    public void Panel(string off, SlipKind kind, string subject) =>
        IsFirst(Told(Project(Single()), CutStage.Finished, item => item.Kind == ItemKind.Panel ? (off, off) : ("0", "0")), kind, subject);

    [Fact]
    public void Panel_with_height_and_width_exchanged()
    {
        var project = Project(Single());
        var key = ListKey.Of(project, CutStage.Finished);
        var panel = key.Items.Single(item => item.Kind == ItemKind.Panel);
        var lines = key.Items.Where(item => item.Part is not null).Select((item, i) => item == panel
            ? new ListLine(i + 1, item.Name, 1, Entry(item.Length.Length), Entry(item.Width.Length)) : new(i + 1, item.Name, 1, Entry(item.Width.Length), Entry(item.Length.Length))).ToList();
        IsFirst(ListCheck.Check(new(CutStage.Finished, lines), key, LengthUnit.Inch).Mistakes, SlipKind.Exchanged, "written");
    }

    // Four stiles marked out along one board: the n-th is short by n saw cuts of 1/8.
    [Fact]
    public void Kerf_of_every_cut_lost()
    {
        var project = Project(Pair(), "30 1/8");
        var n = 0;
        IsFirst(Told(project, CutStage.Finished, item => item.Kind == ItemKind.Stile && n++ > 0 ? ("0", n == 2 ? "-1/8" : n == 3 ? "-1/4" : "-3/8") : ("0", "0")), SlipKind.KerfLost, "written");
    }

    // The rails of one door copied for another.
    [Fact]
    public void Sizes_of_another_door()
    {
        var course = Course(Design(), Values, Opening("15", "24", Single()), Opening("19", "24", Single(), "other"));
        var project = Break(course).Projects[0];
        IsFirst(Told(project, CutStage.Finished, item => item.Kind == ItemKind.Rail && item.Path.StartsWith("hole", StringComparison.Ordinal) ? ("0", "4") : ("0", "0")), SlipKind.AnotherPart, "written");
    }

    // The arch leaves a thin top: − a.
    [Fact]
    public void Rise_left_out_of_the_blank() =>
        IsFirst(Told(Project(Single(), design: Design() with { TopArch = new(ArchFamily.Eyebrow, In("2")) }), CutStage.Finished, item => item.Name.Contains("arched", StringComparison.Ordinal) ? ("-2", "0") : ("0", "0")), SlipKind.LeftOut, "rise");

    // One template for rail and panel: the panel short by d − c at the arch.
    [Fact]
    public void Panel_by_the_template_of_its_rail() =>
        IsAmong(Told(Project(Single(), design: Design() with { TopArch = new(ArchFamily.Eyebrow, In("2")) }), CutStage.Finished, item => item.Kind == ItemKind.Panel ? ("0", "-1/4") : ("0", "0")), SlipKind.OneSideOnly, "panel");

    // Doors collide over the mullion: the usual overlay instead of half of what the member leaves, overlap oL + oR − M.
    [Fact]
    public void Usual_overlay_over_a_shared_member()
    {
        var filling = Single() with { Edges = new(Right: new ShareMember()) };
        var opening = Opening("15", "24", filling) with { Beside = new(Right: new NextOpening("other", In("3/4"))) };
        var project = Break(Course(Design(), Values, opening, Opening("15", "24", Single(), "other"))).Projects[0];
        // Right overlay (3/4 − 1/8) ÷ 2 = 5/16, so the usual 1/2 is 3/16 more.
        IsAmong(Told(project, CutStage.Finished, item => item.Leaf == "7·1" ? ("3/16", "0") : ("0", "0"), withLeaf: true), SlipKind.LikeQuantity, "overlay");
    }

    private static readonly DoorDesign FlatPanel = Design() with { Panel = new(PanelKind.FlatSolid, Stock: "thin-panel") };
    private static readonly DoorDesign SheetPanel = Design() with { Panel = new(PanelKind.FlatSheet, "maple", "ply") };

    // Sizes right, the thickness of some lines as written.
    private static CheckedList Thick(DoorDesign design, CutStage stage, Func<KeyItem, string?> written, string? length = null)
    {
        var key = ListKey.Of(Project(Single(), design: design), stage);
        var lines = key.Items.Where(item => item.Part is not null).Select((item, i) => new ListLine(i + 1, item.Name, 1, Entry(item.Width.Length),
            Entry(length is not null && item.Kind == ItemKind.Rail ? Moved(item.Length, length) : item.Length.Length), item.Leaf, written(item) is { } text ? In(text) : null)).ToList();
        return ListCheck.Check(new(stage, lines), key, LengthUnit.Inch);
    }

    private static string? Of(KeyItem item, bool isPanel, string text) => (item.Kind == ItemKind.Panel) == isPanel ? text : null;

    // Frame 13/16 planed, 3/4 sanded; panels 1/4 (solid, sanded), 7/32 (sheet) and 5/8 (raised); the groove is 1/4 wide. Common practice, no source.
    [Theory]
    [InlineData("flat", CutStage.Finished, true, "7/32", SlipKind.ThinnerThanGroove, "thickness")]     // loose: 7/32 in a groove of 1/4
    [InlineData("sheet", CutStage.Finished, true, "3/16", SlipKind.ThinnerThanGroove, "thickness")]
    [InlineData("sheet", CutStage.Finished, true, "1/4", SlipKind.LikeQuantity, "thickness")]          // the sheet as it is called, the groove as it is cut
    [InlineData("sheet", CutStage.Finished, true, "9/32", SlipKind.ThickerThanGroove, "thickness")]    // does not go in
    [InlineData("flat", CutStage.Finished, true, "3/4", SlipKind.AnotherStock, "thickness")]           // as thick as the frame
    [InlineData("raised", CutStage.Finished, true, "3/4", SlipKind.AnotherStock, "thickness")]
    [InlineData("raised", CutStage.Finished, false, "5/8", SlipKind.AnotherStock, "thickness")]        // frame as thick as the panel
    [InlineData("raised", CutStage.Finished, false, "13/16", SlipKind.LeftOut, "sanding")]             // planed, not sanded
    [InlineData("raised", CutStage.IntoClamps, false, "1", SlipKind.AnotherStage, "written")]          // 4/4 as bought
    [InlineData("raised", CutStage.Finished, false, "25/32", SlipKind.CountedOnce, "sanding")]         // only one face sanded
    public void Thickness(string design, CutStage stage, bool isPanel, string written, SlipKind kind, string subject)
    {
        var of = design switch { "flat" => FlatPanel, "sheet" => SheetPanel, _ => Design() };
        var found = Thick(of, stage, item => Of(item, isPanel, written));
        IsFirst(found.Mistakes, kind, subject);
        Assert.All(found.Mistakes[0].Numbers, number => Assert.Equal(ListMeasure.Thickness, number.Measure));
        Assert.Empty(Stilewright.Teaching.IfCut.Consequences.Of(found, Project(Single(), design: of)));
    }

    // Frame and panel rightly planed and sanded, and a list that says nothing of it, are right; glass has no thickness that is looked at.
    [Theory]
    [InlineData(CutStage.Rough, "1", "1")]
    [InlineData(CutStage.IntoClamps, "13/16", "11/16")]
    [InlineData(CutStage.Finished, "3/4", "5/8")]
    public void Right_thicknesses_at_every_stage(CutStage stage, string frame, string panel)
    {
        var found = Thick(Design(), stage, item => item.Kind == ItemKind.Panel ? panel : frame);
        Assert.True(found.IsRight);
        Assert.Equal(5, found.Numbers.Count(number => number.Measure == ListMeasure.Thickness));
        Assert.Equal(10, Thick(Design(), stage, _ => null).Numbers.Count());
        var glass = Thick(Design() with { Panel = new(PanelKind.Glass) }, stage, item => item.Kind == ItemKind.Glass ? "1/8" : null);
        Assert.True(glass.IsRight);
        Assert.Contains("Its thickness is not looked at.", Stilewright.Teaching.Telling.Answers.Of(glass, Stilewright.Teaching.Telling.Telling.RightOrWrong, LengthFormat.InchesTo32).Lines.SelectMany(line => line.Remarks));
    }

    [Fact]
    public void A_loose_panel_is_told_with_the_groove_and_beside_a_wrong_length()
    {
        var found = Thick(FlatPanel, CutStage.Finished, item => Of(item, true, "7/32"), "-3/4");
        Assert.Equal([(SlipKind.LeftOut, "groove"), (SlipKind.ThinnerThanGroove, "thickness")], found.Mistakes.Select(mistake => (mistake.Explanations[0].Causes[0].Kind, mistake.Explanations[0].Causes[0].Subject)));
        var told = Stilewright.Teaching.Telling.Answers.Of(found, Stilewright.Teaching.Telling.Telling.All, LengthFormat.InchesTo32).Mistakes[1];
        Assert.StartsWith("Thickness of the ", told.About, StringComparison.Ordinal);
        Assert.Contains("loose", told.Missed, StringComparison.Ordinal);
        Assert.Contains("set the groove to it", told.Rule, StringComparison.Ordinal);
    }

    // The opening was measured again after the door was cut: the list has the size that went with the old reading.
    [Fact]
    public void Opening_changed_since()
    {
        var before = ListKey.Of(Project(Single(), "15 1/4"), CutStage.Finished);
        var key = ListKey.Of(Project(Single()), CutStage.Finished, before);
        var lines = before.Items.Where(item => item.Part is not null).Select((item, i) => new ListLine(i + 1, item.Name, 1, Entry(item.Width.Length), Entry(item.Length.Length))).ToList();
        IsFirst(ListCheck.Check(new(CutStage.Finished, lines), key, LengthUnit.Inch).Mistakes, SlipKind.EarlierSize, "written");
    }

    [Theory]
    [InlineData(1000, false)]
    [InlineData(1001, true)]
    public void A_list_of_more_pieces_than_are_matched_says_so(int pieces, bool isCutOff)
    {
        var key = ListKey.Of(Project(Single()), CutStage.Finished);
        var rail = key.Items.First(item => item.Kind == ItemKind.Rail);
        var lines = Enumerable.Range(1, pieces).Select(number => new ListLine(number, "rail", 1, Entry(rail.Width.Length), Entry(rail.Length.Length))).ToList();
        var found = ListCheck.Check(new(CutStage.Finished, lines), key, LengthUnit.Inch);
        Assert.Equal(isCutOff, found.IsCutOff);
        Assert.Equal(isCutOff, Stilewright.Teaching.Telling.Answers.Of(found, Stilewright.Teaching.Telling.Telling.RightOrWrong, LengthFormat.InchesTo32).Summary.Contains("more than 1,000 pieces", StringComparison.Ordinal));
    }
}
