using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;
using Xunit.Abstractions;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Teaching;

/// <summary>Lists as makers write them, and the mistakes in them. Signatures are common practice, no source, unless one is named.</summary>
public class ListTests(ITestOutputHelper output)
{
    // A pair without gap on 25 × 31 with overlay 1/2: leaves 13 × 32; stiles and rails 2 1/2, groove 3/8, no clearance.
    private static Breakdown Pair13By32(string trim = "0", bool arched = false) => Break(Course(
        Design() with { Panel = new(PanelKind.FlatSheet, "maple", "ply", GluedIn: true), Stiles = new(In("2 1/2")), TopRail = In("2 1/2"), BottomRail = In("2 1/2"), TopArch = arched ? new(ArchFamily.Eyebrow, In("2")) : null },
        Set((Settings.Overlay, "1/2"), (Settings.GapOfPair, "0"), (Settings.TrimWidth, trim), (Settings.TrimHeight, trim)),
        Opening("25", "31", Pair())));

    private CheckedList Check(Breakdown breakdown, CutStage stage, params (string Name, int? Count, string? Width, string? Length)[] lines)
    {
        var project = breakdown.Projects[0];
        var key = ListKey.Of(project, project.Fronts.First().Leaves[0], stage);
        var list = new MakersList(stage, [.. lines.Select((line, i) => new ListLine(i + 1, line.Name, line.Count, line.Width is null ? null : In(line.Width), line.Length is null ? null : In(line.Length)))]);
        var found = ListCheck.Check(list, key, LengthUnit.Inch);
        foreach (var line in found.Lines)
            output.WriteLine($"{line.Line.Name}: {string.Join(", ", line.Items.Select(item => item.Label))} count {line.RightCount} {string.Join("; ", line.Numbers.Select(number => $"{number.Right.Length} told {number.Told.Value} {number.Standing} {(number.AsWorked is null ? "" : WorkedText.Arithmetic(number.AsWorked, LengthFormat.InchesTo32))}"))}");
        foreach (var item in found.Missing)
            output.WriteLine($"missing {item.Label}");
        foreach (var mistake in found.Mistakes)
        {
            output.WriteLine($"mistake in {string.Join(", ", mistake.Numbers.Select(number => number.Item.Name + " " + number.Measure))}; follow {string.Join(", ", mistake.Follow.Select(number => number.Item.Name))}");
            foreach (var explanation in mistake.Explanations)
                output.WriteLine($"   {string.Join(" & ", explanation.Causes)} {(explanation.IsAsLikely ? "~" : "")} {string.Join(" | ", explanation.Slips.Select(slip => slip.AsWorked is null ? "-" : WorkedText.Line(slip.AsWorked, LengthFormat.InchesTo32)))}");
        }

        var answer = Answers.Of(found, Telling.All, LengthFormat.InchesTo32);
        output.WriteLine(answer.Summary);
        foreach (var told in answer.Mistakes)
            output.WriteLine($"* {told.About}\n  hint: {told.Hint}\n  missed: {told.Missed}\n  rule: {told.Rule}\n  formulas: {string.Join(" | ", told.Formulas)}\n  work: {string.Join("\n        ", told.Work)}\n  q: {told.Question}\n  f: {told.Following}");
        return found;
    }

    private static Cause First(CheckedList found) => Assert.Single(Assert.Single(found.Mistakes).Explanations[0].Causes);

    [Fact]
    public void A_right_list_is_right_under_any_names_and_in_any_order()
    {
        var found = Check(Pair13By32(), CutStage.Finished, ("panel", 1, "8 3/4", "27 3/4"), ("crosspieces", 2, "8 3/4", "2 1/2"), ("uprights", 2, "2 1/2", "32"));
        Assert.True(found.IsRight);
    }

    [Theory]
    [InlineData("8", SlipKind.LeftOut, "groove")]
    [InlineData("8 3/8", SlipKind.CountedOnce, "groove")]
    [InlineData("13 3/4", SlipKind.LeftOut, "stile")]
    [InlineData("13", SlipKind.StepLeftOut, "rail")]
    [InlineData("9 1/2", SlipKind.CountedTwice, "groove")]
    [InlineData("6 1/4", SlipKind.OneTooMany, "stile")]
    [InlineData("7 3/4", SlipKind.TapeFromOne, "written")]
    public void Rails_of_the_13_by_32_leaf(string rail, SlipKind kind, string subject)
    {
        var found = Check(Pair13By32(), CutStage.Finished, ("stiles", 2, "2 1/2", "32"), ("rails", 2, "2 1/2", rail), ("panel", 1, "8 3/4", "27 3/4"));
        Assert.Equal((kind, subject), (First(found).Kind, First(found).Subject));
    }

    [Fact]
    public void Panel_of_the_13_by_32_leaf_without_both_grooves()
    {
        var found = Check(Pair13By32(), CutStage.Finished, ("stiles", 2, "2 1/2", "32"), ("rails", 2, "2 1/2", "8 3/4"), ("panel", 1, "8", "27"));
        Assert.Equal(new Cause(SlipKind.LeftOut, "groove"), First(found));
    }

    [Fact]
    public void One_cause_explains_rails_and_panel()
    {
        var found = Check(Pair13By32(), CutStage.Finished, ("stiles", 2, "2 1/2", "32"), ("rails", 2, "2 1/2", "8"), ("panel", 1, "8", "27"));
        Assert.Equal(new Cause(SlipKind.LeftOut, "groove"), First(found));
    }

    [Theory]
    [InlineData("2 5/8", "32", "8 3/4", SlipKind.LeftOut)]
    [InlineData("2 5/8", "32 1/4", "9", SlipKind.DoesNotBelong)]
    public void A_trim_allowance_of_a_quarter(string stileWidth, string stile, string rail, SlipKind kind)
    {
        var found = Check(Pair13By32("1/4"), CutStage.IntoClamps, ("stile", 2, stileWidth, stile), ("rail", 2, "2 5/8", rail), ("panel", 1, "8 3/4", "27 3/4"));
        Assert.Equal((kind, "trim"), (First(found).Kind, First(found).Subject));
    }

    [Theory]
    [InlineData("24", "30", SlipKind.SignTurned)]
    [InlineData("25 1/2", "31 1/2", SlipKind.CountedOnce)]
    [InlineData("25", "31", SlipKind.LeftOut)]
    public void Fronts_of_the_25_by_31_opening(string width, string height, SlipKind kind)
    {
        var found = Check(Pair13By32(), CutStage.Finished, ("front", 1, width, height));
        Assert.Equal((kind, "overlay"), (First(found).Kind, First(found).Subject));
    }

    [Fact]
    public void The_rise_left_out_of_the_blank()
    {
        var found = Check(Pair13By32(arched: true), CutStage.Finished, ("stiles", 2, "2 1/2", "32"), ("top rail", 1, "2 1/2", "8 3/4"), ("bottom rail", 1, "2 1/2", "8 3/4"), ("panel", 1, "8 3/4", "27 3/4"));
        Assert.Equal(new Cause(SlipKind.LeftOut, "rise"), First(found));
    }
}
