using Stilewright.Doors;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Worksheets;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;
using Stilewright.Testing;

namespace Stilewright.Drawing.Tests.Worksheets;

public class AnswerPrintTests
{
    private static readonly DateTimeOffset Now = new(2026, 11, 28, 9, 0, 0, TimeSpan.Zero);

    private static Scene[] Pages(Breakdown breakdown, ProjectBreakdown project, CheckedList found, Telling telling, LengthFormat format, Paper paper) =>
        [.. AnswerPrint.Of(breakdown, project, found, Answers.Of(found, telling, format), format, paper, "0", Now).Pages.Select(page => page.Scene)];

    private static string Words(IEnumerable<Scene> pages) => string.Join("\n", pages.SelectMany(Drawn.Texts).Select(text => text.Line.Text));

    // Rails of 8 9/16 made 8: the right length, and how far off it is, stand on paper only where everything is told.
    [Theory]
    [InlineData(Telling.RightOrWrong)]
    [InlineData(Telling.Hint)]
    [InlineData(Telling.Rule)]
    [InlineData(Telling.All)]
    public void Only_where_all_is_told_are_right_sizes_and_drawings_printed(Telling telling)
    {
        var breakdown = Breakdown.Of(Examples.Pair(), ShippedStandards.Inch);
        var project = breakdown.Projects[0];
        var found = ListCheck.Check(new(CutStage.Finished, [new(1, "rails", 2, Examples.In("2 1/4"), Examples.In("8"))]), ListKey.Of(project, project.Fronts.First().Leaves[0], CutStage.Finished), LengthUnit.Inch);
        var words = Words(Pages(breakdown, project, found, telling, LengthFormat.InchesTo32, Paper.Letter));
        Assert.Contains("length not right", words, StringComparison.Ordinal);
        foreach (var leak in new[] { "8 9/16", "9/16", "9/32", "If it were cut so" })
            Assert.Equal(telling == Telling.All, words.Contains(leak, StringComparison.Ordinal));
    }

    [Fact]
    public void Sheets_of_random_lists_are_clean_on_both_papers()
    {
        var sheets = 0;
        foreach (var planted in PlantedLists.TwoSlips(25, 4000).Concat(PlantedLists.OneSlip(10, 5000, lines: 6)))
        {
            var breakdown = Breakdown.Of(planted.Course, ShippedStandards.For(planted.Unit));
            foreach (var paper in new[] { Paper.Letter, Paper.A4 })
            {
                foreach (var page in Pages(breakdown, planted.Project, planted.Check(), Telling.All, new(planted.Unit, planted.Project.Standard.Format.FinestDenominator), paper))
                {
                    Drawn.IsClean(page);
                    sheets++;
                }
            }
        }

        Assert.True(sheets > 60, $"{sheets}");
    }
}
