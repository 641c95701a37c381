using CsCheck;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Teaching;
using Stilewright.Teaching.Worksheets;
using Stilewright.Wording;

namespace Stilewright.Tests.Teaching;

public class WorksheetTests
{
    private static readonly Gen<Level> AnyLevel = Gen.Select(Gen.Enum<LengthUnit>(), Gen.Int[0, 5], (unit, index) => Levels.For(unit)[index]);
    private static readonly Gen<(Level Level, ulong Seed, int Skip)> AnySheet = Gen.Select(AnyLevel, Gen.ULong[0, 1000], Gen.Int[0, 1]);

    private static Worksheet Draw(Level level, ulong seed, int skip) => RandomWorksheets.Of(level, seed).ElementAt(skip);

    /// <summary>The pair of leaves 13 × 32 that is worked out by hand here: common practice, no source.</summary>
    private static Worksheet ByHand(BlankStyle style)
    {
        static LengthEntry In(string text) => new(text, LengthReader.ReadOwn(text, LengthUnit.Inch));
        var design = new DoorDesign("door", "Square", Construction.CopeAndStick, "oak", "four-quarter", "cope-and-stick", null, null, null, null, [], null, null,
            new(PanelKind.FlatSolid, Stock: "thin-panel"), [], null, null);
        LeafEntry[] leaves = [.. new[] { HingeSide.Left, HingeSide.Right }.Select(hinge => new LeafEntry(hinge, null, null, null, SettingValues.None))];
        var opening = new Opening("opening", new DoorFilling(Mount.Overlay, leaves, "door"), null, null,
            new(WidthTop: In("25 3/8"), HeightLeft: In("31 1/4")), null, null, null, SettingValues.None);
        var project = new Project("hall", 7, "Hall", [new("case", "Case", [new("face", FaceSide.Front, null, [opening], [])])], null, [], [], [], SettingValues.None);
        var breakdown = Breakdown.Of(new("course", "Course", "inch", LengthUnit.Inch, [design], [project], SettingValues.None), ShippedStandards.Inch);
        var front = breakdown.Fronts.Single();
        return Assert.IsType<Found<Worksheet>.There>(WorksheetMaker.OfLeaf(
            breakdown, breakdown.Projects[0], front, front.Leaves[0], Levels.Inch[1].WithBlanks(style), LengthFormat.InchesTo32)).Thing;
    }

    // 25 3/8 + 2 × 3/8 = 26 1/8; 31 1/4 + 2 × 3/8 = 32; (26 1/8 − 1/8) ÷ 2 = 13; 13 − 4 1/2 + 3/4 = 9 1/4; 13 − 4 1/2 = 8 1/2;
    // 8 1/2 + 3/4 − 1/4 = 9; 32 − 4 1/2 = 27 1/2; 27 1/2 + 3/4 − 1/8 = 28 1/8.
    private static readonly (string Id, string Label, string Result)[] HandResults =
    [
        ("a", "front width", "26 1/8"), ("b", "front height", "32"), ("c", "leaf width", "13"), ("d", "rail length", "9 1/4"),
        ("e", "clear width", "8 1/2"), ("f", "panel width", "9"), ("g", "clear height", "27 1/2"), ("h", "panel height", "28 1/8"),
    ];

    [Fact]
    public void The_hand_example_comes_out() => Assert.Equal(HandResults,
        ByHand(BlankStyle.Results).Blanks.Select(blank => (blank.Id, blank.Label, LengthFormat.InchesTo32.Print(blank.Quantity.Length))));

    [Fact]
    public void Lines_are_blank_as_the_level_says()
    {
        Assert.Equal("(a) − 1/8) ÷ 2 = [c]", Words(ByHand(BlankStyle.Results), "c")[1..]);
        Assert.Equal("(c) − 2 × 2 1/4 + 2 × 3/8 = [d]", Words(ByHand(BlankStyle.Results), "d"));
        Assert.Equal("[d1] − 2 × [d2] + 2 × [d3] = [d]", Words(ByHand(BlankStyle.Figures), "d"));
        Assert.Equal("[d]", Words(ByHand(BlankStyle.Question), "d"));
        var said = Assert.Single(ByHand(BlankStyle.Results).Lines, line => line.Letter.Length == 0);
        Assert.Equal("leaf height = front height", $"{said.Label} = {said.Formula}");

        static string Words(Worksheet sheet, string letter) => string.Concat(sheet.Lines.Single(line => line.Letter == letter).Pieces.Select(piece => piece switch
        {
            LinePiece.Words words => words.Text,
            LinePiece.Told told => WorkedText.Figure(told.Quantity, sheet.Format),
            LinePiece.Carried carried => $"({carried.Letter})",
            LinePiece.ToFill fill => $"[{fill.Blank.Id}]",
            _ => "?",
        }));
    }

    [Fact]
    public void Givens_are_told_once_and_nothing_asked_is_among_them()
    {
        var sheet = ByHand(BlankStyle.Results);
        Assert.Equal(
            [
                "opening width 25 3/8", "overlay 3/8", "opening height 31 1/4", "gap of the pair 1/8", "stile width 2 1/4", "cope length 3/8", "groove depth 3/8",
                "clearance across the grain 1/8", "rail width 2 1/4", "clearance along the grain 1/16",
            ],
            sheet.Givens.Select(given => $"{given.Label} {WorkedText.Figure(given.Quantity, sheet.Format)}"));
    }

    [Fact]
    public void A_slip_is_followed_through()
    {
        var sheet = ByHand(BlankStyle.Results);
        // The gap is added instead of taken off: 13 1/8; the rail then rightly 9 3/8, the clear width kept at the right 8 1/2, the panel wrong.
        var marked = sheet.Mark(new Dictionary<string, string>
        {
            ["a"] = "26 1/8",
            ["b"] = "32",
            ["c"] = "13 1/8",
            ["d"] = "9 3/8",
            ["e"] = "8 1/2",
            ["f"] = "9 1/8",
            ["g"] = "27,5",
            ["h"] = "28 2/16",
        });
        Assert.Equal(
            [BlankOutcome.Right, BlankOutcome.Right, BlankOutcome.Wrong, BlankOutcome.Follows, BlankOutcome.Right, BlankOutcome.Wrong, BlankOutcome.Right, BlankOutcome.Right],
            marked.Blanks.Select(blank => blank.Outcome));
        Assert.Equal((6, 8), (marked.Earned, marked.Marks));
        Assert.Equal("9 3/8", LengthFormat.InchesTo32.Print(marked.Lines[3].Blanks[0].FollowThrough!.Length));
        Assert.Null(marked.Lines[5].Blanks[0].FollowThrough);
    }

    [Fact]
    public void Text_that_is_no_length_is_told_with_the_fix_and_stops_nothing()
    {
        var marked = ByHand(BlankStyle.Results).Mark(new Dictionary<string, string> { ["a"] = "26 1/", ["c"] = "13", ["d"] = " " });
        Assert.Equal(BlankOutcome.Unreadable, marked.Lines[0].Blanks[0].Outcome);
        Assert.Contains("26 1/", marked.Lines[0].Blanks[0].Fault, StringComparison.Ordinal);
        Assert.Equal(BlankOutcome.Right, marked.Lines[2].Blanks[0].Outcome);
        Assert.Equal(BlankOutcome.NotAnswered, marked.Lines[3].Blanks[0].Outcome);
        Assert.Equal(1, marked.Earned);
        Assert.Throws<ArgumentException>(() => ByHand(BlankStyle.Results).Mark(new Dictionary<string, string> { ["z"] = "1" }));
    }

    [Fact]
    public void Answers_may_be_in_the_other_unit() =>
        Assert.Equal(BlankOutcome.Right, ByHand(BlankStyle.Results).Mark(new Dictionary<string, string> { ["c"] = "330.2 mm" }).Lines[2].Blanks[0].Outcome);

    [Fact]
    public void All_right_is_full_marks() => AnySheet.Sample(drawn =>
    {
        foreach (var style in Enum.GetValues<BlankStyle>())
        {
            var sheet = Draw(drawn.Level.WithBlanks(style), drawn.Seed, drawn.Skip);
            var marked = sheet.Mark(new Maker(Draw(drawn.Level.WithBlanks(BlankStyle.Results), drawn.Seed, drawn.Skip)).AnswersFor(sheet));
            Assert.All(marked.Blanks, blank => Assert.Equal(BlankOutcome.Right, blank.Outcome));
            Assert.Equal(marked.Marks, marked.Earned);
            Assert.Equal(sheet.Marks, marked.Marks);
        }
    }, iter: 15);

    [Fact]
    public void A_slip_in_any_result_costs_one_mark() => Gen.Select(AnySheet, Gen.Int[1, 15]).Sample((drawn, slip) =>
    {
        foreach (var style in Enum.GetValues<BlankStyle>())
        {
            var sheet = Draw(drawn.Level.WithBlanks(style), drawn.Seed, drawn.Skip);
            var printed = Draw(drawn.Level.WithBlanks(BlankStyle.Results), drawn.Seed, drawn.Skip);
            foreach (var line in printed.Lines.Where(line => line.Letter.Length > 0))
            {
                var maker = new Maker(printed) { ResultSlips = { [line.Letter] = new(slip, 16) } };
                var marked = sheet.Mark(maker.AnswersFor(sheet));
                Assert.Equal(marked.Marks - 1, marked.Earned);
                Assert.Equal(BlankOutcome.Wrong, Assert.Single(marked.Blanks, blank => !blank.Earns).Outcome);
            }
        }
    }, iter: 10);

    [Fact]
    public void A_figure_in_a_wrong_place_costs_one_mark() => Gen.Select(AnySheet, Gen.Int[1, 15]).Sample((drawn, slip) =>
    {
        var sheet = Draw(drawn.Level.WithBlanks(BlankStyle.Figures), drawn.Seed, drawn.Skip);
        var printed = Draw(drawn.Level.WithBlanks(BlankStyle.Results), drawn.Seed, drawn.Skip);
        foreach (var blank in sheet.Blanks.Where(blank => !blank.IsResult))
        {
            var letter = blank.Id.TrimEnd([.. "0123456789"]);
            var maker = new Maker(printed) { FigureSlips = { [(letter, blank.Id[letter.Length..][0] - '0')] = new(slip, 16) } };
            var marked = sheet.Mark(maker.AnswersFor(sheet));
            Assert.Equal(marked.Marks - 1, marked.Earned);
            var line = Assert.Single(marked.Lines, each => each.Earned < each.Line.Marks);
            Assert.Equal((letter, false, true), (line.Line.Letter, line.Method, line.Answer));
        }
    }, iter: 10);

    [Fact]
    public void Two_slips_cost_two_marks() => AnySheet.Sample(drawn =>
    {
        var sheet = Draw(drawn.Level.WithBlanks(BlankStyle.Results), drawn.Seed, drawn.Skip);
        var letters = sheet.Blanks.Select(blank => blank.Id).ToArray();
        var maker = new Maker(sheet) { ResultSlips = { [letters[0]] = new(1, 16), [letters[^1]] = new(3, 16) } };
        Assert.Equal(sheet.Marks - 2, sheet.Mark(maker.AnswersFor(sheet)).Earned);
    }, iter: 10);

    [Fact]
    public void Every_draw_keeps_to_its_limits() => AnySheet.Sample(drawn =>
    {
        var sheet = Draw(drawn.Level, drawn.Seed, drawn.Skip);
        var limits = drawn.Level.Limits;
        Assert.All(sheet.Lines, line =>
        {
            Assert.True(line.Quantity.Amount.IsPositive);
            Assert.True((line.Quantity.Length / limits.Finest).Reduce().Denominator.IsOne, $"{line.Label} {line.Arithmetic}");
            Assert.DoesNotContain(LengthFormat.RoundedMark, line.Arithmetic, StringComparison.Ordinal);
        });
        Assert.True((sheet.Front.Figure!.Width.Length / limits.Reading).Reduce().Denominator.IsOne);
        Assert.Equal(limits.Always.Contains(ProblemFeature.Pair), !limits.Sometimes.Contains(ProblemFeature.Pair) && sheet.Front.Leaves.Count == 2);
        Assert.Equal(limits.Always.Contains(ProblemFeature.Inset), !limits.Sometimes.Contains(ProblemFeature.Inset) && sheet.Front.Mount == Mount.Inset);
        if (limits.Always.Contains(ProblemFeature.Arch))
            Assert.Contains(sheet.Leaf.Parts, part => part.Arch is not null);
        if (limits.Always.Contains(ProblemFeature.MidRails))
            Assert.Contains(sheet.Leaf.Parts, part => part.Kind == PartKind.MidRail);
    }, iter: 30);

    [Fact]
    public void Features_and_readings_can_be_chosen()
    {
        var level = Levels.Inch[1].With([ProblemFeature.Inset, ProblemFeature.Arch]).WithReadings(Length.FromInches(new(1, 16)));
        Assert.Equal("inset, arch, readings 1/16", level.Changed);
        foreach (var sheet in RandomWorksheets.Of(level, 3).Take(6))
        {
            Assert.Equal(Mount.Inset, sheet.Front.Mount);
            Assert.Single(sheet.Front.Leaves);
            Assert.Contains(sheet.Lines, line => line.Label == "top rail width, arched blank");
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => level.WithReadings(default));
        Assert.Throws<ArgumentOutOfRangeException>(() => level.WithReadings(2.Inches));
        Assert.Throws<ArgumentOutOfRangeException>(() => level.WithReadings(Length.FromInches(new(1, 128))));
    }

    [Fact]
    public void Benches_of_one_seed_differ_and_a_seed_repeats_them()
    {
        foreach (var level in Levels.Inch.Concat(Levels.Millimetre))
        {
            string[] once = [.. RandomWorksheets.Of(level, 11).Take(30).Select(Told)];
            Assert.Equal(30, once.Distinct().Count());
            Assert.Equal(once.Take(3), RandomWorksheets.Of(level, 11).Take(3).Select(Told));
            Assert.NotEqual(once.Take(3), RandomWorksheets.Of(level, 12).Take(3).Select(Told));
        }
    }

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void As_many_benches_as_are_promised_have_different_problems(LengthUnit unit)
    {
        // The first level has the fewest problems of all: 7 widths × 17 heights in inches.
        var level = Levels.For(unit)[0];
        foreach (var first in new[] { 1, 57 })
        {
            Assert.Equal(RandomWorksheets.DifferentBenches,
                Enumerable.Range(first, RandomWorksheets.DifferentBenches).Select(bench => Told(RandomWorksheets.Of(level, 4, bench))).Distinct().Count());
        }
    }

    [Fact]
    public void A_bench_alone_has_the_sheet_it_has_in_its_class()
    {
        foreach (var level in new[] { Levels.Inch[1], Levels.Millimetre[4] })
            Assert.Equal(RandomWorksheets.Of(level, 9).Take(12).Select(Told), Enumerable.Range(1, 12).Select(bench => Told(RandomWorksheets.Of(level, 9, bench))));
        Assert.Equal(900, RandomWorksheets.Of(Levels.Inch[5], 9, 900).Bench);
        Assert.Throws<ArgumentOutOfRangeException>(() => RandomWorksheets.Of(Levels.Inch[0], 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => RandomWorksheets.Of(Levels.Inch[0], 1, RandomWorksheets.MostBenches + 1));
    }

    [Fact]
    public void Coarse_readings_still_leave_a_problem_for_every_bench()
    {
        var level = Levels.Inch[5].WithReadings(1.Inches);
        Assert.All(RandomWorksheets.Of(level, 2).Take(30), sheet => Assert.True(sheet.Front.Figure!.Height.Amount.Reduce().Denominator.IsOne));
    }

    [Fact]
    public void The_first_door_of_a_bench_is_asked_about_and_what_is_wrong_is_kept()
    {
        var sheet = ByHand(BlankStyle.Results);
        var breakdown = Breakdown.Of(sheet.Course with { Projects = [sheet.Project.Project] }, ShippedStandards.Inch);
        var own = Assert.IsType<Found<Worksheet>.There>(WorksheetMaker.OfBench(breakdown, breakdown.Projects[0], Levels.Inch[1], LengthFormat.InchesTo32)).Thing;
        Assert.Equal("7·1L", own.Leaf.Label);
        var result = own.Mark(new Dictionary<string, string> { ["a"] = "26 1/8", ["c"] = "13 1/8", ["d"] = "9 3/8", ["e"] = "x" }).Result();
        Assert.Equal((ExerciseKind.Worksheet, 7, "level 2: Frame and panel", null, 2, 8), (result.Kind, result.Bench, result.Level, result.Seed, result.Earned, result.Marks));
        Assert.Equal(["c, leaf width: 13 1/8"], result.Slips);

        var empty = Breakdown.Of(sheet.Course with { Projects = [sheet.Project.Project with { Pieces = [] }] }, ShippedStandards.Inch);
        Assert.Equal("Bench 7 has no leaf.", Assert.IsType<Found<Worksheet>.Missing>(
            WorksheetMaker.OfBench(empty, empty.Projects[0], Levels.Inch[1], LengthFormat.InchesTo32)).Problem);
    }

    private static string Told(Worksheet sheet) => sheet.Problem + string.Join(';', sheet.Givens.Select(given => WorkedText.Figure(given.Quantity, sheet.Format)));

    /// <summary>Printed sheets are repeated by their seeds, so these may never change.</summary>
    [Theory]
    [InlineData(1, "One door closes an opening 11 × 28, width × height. It laps over the frame.")]
    [InlineData(3, "A pair of doors closes an opening 27 3/4 × 34, width × height. They lap over the frame.")]
    public void A_seed_gives_the_same_sheet_for_ever(int level, string problem) =>
        Assert.Equal(problem, RandomWorksheets.Of(Levels.Inch[level - 1], 7).First().Problem);

    [Fact]
    public void Limits_that_nothing_fits_are_told()
    {
        var level = Levels.Inch[0];
        var impossible = level with { Limits = level.Limits with { Finest = 7.Inches } };
        var fault = Assert.Throws<InvalidOperationException>(() => RandomWorksheets.Of(impossible, 1).First());
        Assert.Contains("widen the limits", fault.Message, StringComparison.Ordinal);
    }
}
