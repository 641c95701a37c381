using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Drawing.Tests.Figures;

public class PartFigureTests
{
    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 25)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Parts_are_clean_and_measure_what_they_say(int seed)
    {
        foreach (var drawn in Drawn.Leaves(seed))
        {
            foreach (var scale in drawn.Scales)
            {
                foreach (var part in drawn.Leaf.Parts)
                {
                    var scene = PartFigure.Draw(part, drawn.Detail, scale, drawn.Format);
                    Drawn.IsClean(scene);
                    Assert.Contains(Drawn.Texts(scene), text => text.Line.Text == part.Label || text.Line.Text == part.ShortLabel);
                    Assert.Contains(Drawn.Marks(scene), mark => mark.Value == part.GlueUp.Length.Length);
                    Assert.Contains(Drawn.Texts(scene), text => text.Line.Text.EndsWith(drawn.Format.Print(part.GlueUp.Width.Length), StringComparison.Ordinal));
                    if (part.Rough is { } rough)
                        Assert.Contains(Drawn.Marks(scene), mark => mark.Value == rough.Length.Length);
                }
            }
        }
    }

    // An arch's blank and all else: the outline that is drawn is the finished size.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Outline_has_the_finished_size(int seed)
    {
        foreach (var drawn in Drawn.Leaves(seed))
        {
            foreach (var part in drawn.Leaf.Parts)
            {
                var scene = PartFigure.Draw(part, drawn.Detail, Scale.FullSize, drawn.Format);
                var box = Drawn.Lines(scene, LineStyle.Visible).First().Bounds;
                double[] drawnSizes = [box.Width, box.Height];
                double[] sizes = [Scale.FullSize.OnPaper(part.Finished.Width.Length), Scale.FullSize.OnPaper(part.Finished.Length.Length)];
                Assert.Equal(sizes.Order().First(), drawnSizes.Order().First(), 1e-6);
                Assert.Equal(sizes.Order().Last(), drawnSizes.Order().Last(), 1e-6);
            }
        }
    }

    // Trim allowances of 1/8, rough allowances of 1/4 and 1 in: the shipped standard, common practice.
    [Fact]
    public void Stile_of_the_worked_pair_lies_level_in_three_sizes()
    {
        var drawn = Drawn.Leaves(Examples.Pair(), ShippedStandards.Inch).First();
        var stile = drawn.Leaf.Parts.Single(part => part.ShortLabel == "LS");
        var scene = PartFigure.Draw(stile, drawn.Detail, new(8), drawn.Format);
        Assert.Equal(
            ["finished 30 1/4", "clamps 30 3/8", "rough 31 3/8", "finished 2 1/4"],
            Drawn.Marks(scene).Select(mark => mark.Text.Line.Text));
        // Too narrow at this scale for three dimension lines: the finished width is measured, the others stand below it.
        Assert.Equal(["clamps 2 5/16", "rough 2 9/16"], Drawn.Texts(scene).Select(text => text.Line.Text).TakeLast(2));
        Assert.All(Drawn.Marks(scene).Take(3), mark => Assert.Equal(mark.From.Y, mark.To.Y));
        // Trimmed along its outer edge alone: finished and glued outlines share the inner edge, below on paper.
        var finished = Drawn.Lines(scene, LineStyle.Visible).Single().Bounds;
        var glued = Drawn.Lines(scene, LineStyle.Adjacent).Last().Bounds;
        Assert.Equal(finished.Bottom, glued.Bottom, 1e-6);
        Assert.Equal(25.4 / 16 / 8, finished.Top - glued.Top, 1e-6);
    }

    [Fact]
    public void Rail_of_the_worked_pair_is_dimensioned_shoulder_to_shoulder()
    {
        var drawn = Drawn.Leaves(Examples.Pair(), ShippedStandards.Inch).First();
        var rail = drawn.Leaf.Parts.Single(part => part.ShortLabel == "TR");
        var scene = PartFigure.Draw(rail, drawn.Detail, new(4), drawn.Format);
        Assert.Equal(["7/16", "shoulder to shoulder 7 11/16", "7/16", "finished, clamps 8 9/16"],
            Drawn.Marks(scene).Select(mark => mark.Text.Line.Text).Take(4));
    }
}
