using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;
using Stilewright.Teaching.Worksheets;
using Xunit.Abstractions;

namespace Stilewright.Tests.Teaching;

/// <summary>What is behind wrong blanks of worksheets.</summary>
public class SheetDiagnosisTests(ITestOutputHelper output)
{
    public static TheoryData<LengthUnit, int> AllLevels()
    {
        TheoryData<LengthUnit, int> levels = [];
        foreach (var unit in Enum.GetValues<LengthUnit>())
        {
            foreach (var level in Levels.For(unit))
                levels.Add(unit, level.Number);
        }

        return levels;
    }

    // Other slips may give the very same figure; the planted one must be among those told.
    [Theory]
    [MemberData(nameof(AllLevels))]
    public void A_slip_planted_at_any_blank_is_among_the_fewest_causes(LengthUnit unit, int level)
    {
        var (planted, first, turn) = (0, 0, 0);
        var sheet = RandomWorksheets.Of(Levels.For(unit)[level - 1], 2, 1);
        foreach (var blank in sheet.Blanks)
        {
            var slips = SheetDiagnosis.Planted(sheet, blank).ToList();
            Assert.NotEmpty(slips);
            // Every fourth in turn, which is quick and over all blanks leaves no kind of slip out.
            foreach (var figure in slips.GroupBy(slip => slip.Figure).Where((_, i) => i == 0 || turn++ % 4 == 0))
            {
                var marked = Answered(sheet, blank, figure.Key);
                Assert.Equal(BlankOutcome.Wrong, marked.Blanks.Single(each => each.Blank == blank).Outcome);
                Assert.All(marked.Blanks.Where(each => each.Blank != blank && each.Text is not null), each => Assert.True(each.Earns, $"{blank.Id} {sheet.Format.Print(figure.Key)}: {each.Blank.Id} {each.Blank.Label} {each.Text}, {each.Outcome}, after that {each.FollowThrough?.Length}"));
                var mistake = Assert.Single(marked.Mistakes);
                Assert.Same(blank, Assert.Single(mistake.Blanks).Blank);
                foreach (var (cause, _) in figure)
                {
                    planted++;
                    first += mistake.Explanations[0].Causes is [var top] && top == cause ? 1 : 0;
                    Assert.True(mistake.Explanations.Any(other => other.Causes is [var only] && only == cause),
                        $"{blank.Id} {blank.Label} {sheet.Format.Print(figure.Key)}: {cause} is not among {string.Join("; ", mistake.Explanations.Select(each => string.Join(" + ", each.Causes)))}");
                }
            }
        }

        output.WriteLine($"level {level}: {planted} slips, ranked first {first}");
    }

    // The right figures, one wrong figure, and what follows from it.
    private static MarkedSheet Answered(Worksheet sheet, Blank wrong, Length figure)
    {
        Dictionary<string, string> answers = [];
        foreach (var blank in sheet.Blanks)
        {
            var through = sheet.Mark(answers).Blanks.Single(each => each.Blank == blank).FollowThrough;
            if (blank != wrong && through is not null && (!through.Length.IsPositive || !sheet.Format.IsExact(through.Length) || through.Length > 120.Inches))
                continue;
            answers[blank.Id] = sheet.Format.Print(blank == wrong ? figure : (through ?? blank.Quantity).Length);
        }

        return sheet.Mark(answers);
    }

    [Fact]
    public void Sheets_that_are_right_have_no_mistake()
    {
        foreach (var level in Levels.Inch.Concat(Levels.Millimetre))
        {
            var sheet = RandomWorksheets.Of(level, 5, 3);
            var marked = sheet.Mark(sheet.Blanks.ToDictionary(blank => blank.Id, blank => sheet.Format.Print(blank.Quantity.Length)));
            Assert.Empty(marked.Mistakes);
            Assert.Equal((0, marked.Blanks.Count(), marked.Blanks.Count()), (marked.Result().Unexplained, marked.Result().RightFigures, marked.Result().AllFigures));
        }
    }

    // The grooves left out of rail and panel alike, each worked from the maker's own figures: one rule missed, so one mistake.
    [Fact]
    public void One_cause_behind_several_lines_is_one_mistake_told_as_far_as_is_wished()
    {
        var sheet = RandomWorksheets.Of(Levels.Inch[1], 4, 2);
        var rail = sheet.Blanks.Single(blank => blank.Label == "rail length");
        var groove = sheet.Givens.Single(given => given.Quantity is Given { Key: var key } && key.Contains("cope.length", StringComparison.Ordinal)).Quantity.Length;
        var answers = sheet.Blanks.ToDictionary(blank => blank.Id, blank => sheet.Format.Print(blank.Quantity.Length));
        answers[rail.Id] = sheet.Format.Print(rail.Quantity.Length - groove * 2);
        var marked = sheet.Mark(answers);
        var mistake = Assert.Single(marked.Mistakes);
        Assert.Equal(new Cause(SlipKind.LeftOut, "groove"), Assert.Single(mistake.Explanations[0].Causes));
        Assert.Empty(Answers.Of(marked.Mistakes, Telling.RightOrWrong, sheet.Format));
        var hint = Assert.Single(Answers.Of(marked.Mistakes, Telling.Hint, sheet.Format));
        Assert.Equal((null, null, 0), (hint.Missed, hint.Rule, hint.Work.Count));
        var rule = Assert.Single(Answers.Of(marked.Mistakes, Telling.Rule, sheet.Format));
        Assert.Equal("The grooves were left out.", rule.Missed);
        Assert.Empty(rule.Work);
        var work = Assert.Single(Assert.Single(Answers.Of(marked.Mistakes, Telling.All, sheet.Format)).Work);
        Assert.EndsWith($"= {answers[rail.Id]}", work.AsWorked, StringComparison.Ordinal);
        Assert.EndsWith($"= {sheet.Format.Print(rail.Quantity.Length)}", work.Right, StringComparison.Ordinal);
        Assert.Equal([new(SlipKind.LeftOut, "groove")], marked.Result().Causes);

        // The panel has a groove on each side too.
        foreach (var panel in sheet.Blanks.Where(blank => blank.Label.StartsWith("panel", StringComparison.Ordinal)))
        {
            var depth = panel.Quantity.Distinct().OfType<Given>().First(given => Subjects.Of(given) == "groove").Length;
            answers[panel.Id] = sheet.Format.Print(panel.Quantity.Length - depth * 2);
        }

        mistake = Assert.Single(sheet.Mark(answers).Mistakes);
        Assert.Equal(3, mistake.Blanks.Count);
        Assert.Equal(new Cause(SlipKind.LeftOut, "groove"), Assert.Single(mistake.Explanations[0].Causes));
    }

    [Fact]
    public void What_no_slip_explains_is_said_so_and_counted()
    {
        var sheet = RandomWorksheets.Of(Levels.Inch[0], 4, 2);
        var blank = sheet.Blanks.First();
        var marked = sheet.Mark(new Dictionary<string, string> { [blank.Id] = "77 61/64" });
        Assert.Empty(Assert.Single(marked.Mistakes).Explanations);
        Assert.Equal((1, 0, 1), (marked.Result().Unexplained, marked.Result().RightFigures, marked.Result().AllFigures));
        Assert.Contains("No single slip", Assert.Single(Answers.Of(marked.Mistakes, Telling.Rule, sheet.Format)).Missed, StringComparison.Ordinal);
    }
}
