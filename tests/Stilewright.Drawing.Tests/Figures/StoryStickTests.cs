using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Drawing.Tests.Figures;

public class StoryStickTests
{
    private const double Tolerance = 1e-6;

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 30)];

    // Places from the left end: stile 2 1/4, tongue 7/16, groove 7/16, panel clear of the groove's bottom by 1/8 across and 1/16 along.
    [Fact]
    public void Worked_pair_is_marked_where_its_figures_say()
    {
        var drawn = Drawn.Leaves(Examples.Pair(), ShippedStandards.Inch).First();
        string[] Told(StickDirection direction) =>
            [.. StoryStick.Marks(drawn.Leaf, drawn.Detail, direction).Select(mark => $"{drawn.Format.Print(mark.At)}: {string.Join("; ", mark.Names)}")];

        Assert.Equal(
        [
            "0: left edge",
            "1 13/16: groove bottom, left stile; tongue end, rails",
            "1 7/8: panel edge, raised panel",
            "2 1/4: sight line, left stile; shoulder, rails",
            "9 15/16: sight line, right stile; shoulder, rails",
            "10 5/16: panel edge, raised panel",
            "10 3/8: groove bottom, right stile; tongue end, rails",
            "12 3/16: right edge",
        ], Told(StickDirection.Across));
        Assert.Equal(
        [
            "0: bottom edge",
            "1 13/16: groove bottom, bottom rail",
            "1 7/8: panel edge, raised panel",
            "2 1/4: sight line, bottom rail",
            "28: sight line, top rail",
            "28 3/8: panel edge, raised panel",
            "28 7/16: groove bottom, top rail",
            "30 1/4: top edge",
        ], Told(StickDirection.Up));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Strips_are_clean_and_their_marks_stand_where_they_say(int seed)
    {
        const double Usable = 180;
        foreach (var drawn in Drawn.Leaves(seed))
        {
            foreach (var direction in Enum.GetValues<StickDirection>())
            {
                var marks = StoryStick.Marks(drawn.Leaf, drawn.Detail, direction);
                Assert.Equal(direction == StickDirection.Across ? drawn.Leaf.Width.Length : drawn.Leaf.Height.Length, marks[^1].At);
                var whole = StoryStick.Draw(drawn.Leaf, drawn.Detail, drawn.Format)[(int)direction];
                Drawn.IsClean(whole);
                var places = MarkLines(whole);
                Assert.Equal(marks.Count, places.Count);
                for (var i = 0; i < marks.Count; i++)
                    Assert.Equal(Scale.FullSize.OnPaper(marks[i].At), places[i] - places[0], Tolerance);
            }

            foreach (var strip in StoryStick.Strips(drawn.Leaf, drawn.Detail, drawn.Format, Usable))
            {
                Drawn.IsClean(strip);
                Assert.InRange(strip.WidthMillimetres, 0, Usable);
            }
        }
    }

    // Laid cross on cross, the strips give the whole stick again.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Strips_laid_cross_on_cross_make_the_stick(int seed)
    {
        foreach (var drawn in Drawn.Leaves(seed))
        {
            foreach (var direction in Enum.GetValues<StickDirection>())
            {
                var strips = StoryStick.Strips(drawn.Leaf, drawn.Detail, drawn.Format, 160)
                    .Where(strip => strip.Title.Contains(direction == StickDirection.Across ? " across, " : " up, ", StringComparison.Ordinal)).ToList();
                SortedSet<double> places = [];
                var shift = 0.0;
                for (var i = 0; i < strips.Count; i++)
                {
                    var crosses = Crosses(strips[i]);
                    if (i > 0)
                    {
                        var before = Crosses(strips[i - 1]);
                        shift += before[^1] - crosses[0];
                    }

                    foreach (var at in MarkLines(strips[i]))
                        places.Add(Math.Round(at + shift, 5));
                }

                var expected = StoryStick.Marks(drawn.Leaf, drawn.Detail, direction).Select(mark => Scale.FullSize.OnPaper(mark.At)).ToList();
                var found = places.Select(at => at - places.Min).ToList();
                // A mark in an overlap is found twice, a rounding apart.
                Assert.All(expected, at => Assert.Contains(found, one => Math.Abs(one - at) < 1e-4));
                Assert.All(found, one => Assert.Contains(expected, at => Math.Abs(one - at) < 1e-4));
            }
        }
    }

    private static List<double> MarkLines(Scene scene) =>
        [.. scene.Drawn.Where(one => one.Node is Shape { Line: LineStyle.Edge or LineStyle.Hidden } shape && shape.Outline.Bounds is { Width: < Tolerance, Height: > 6.5 })
            .Select(one => ((Shape)one.Node).Outline.Start.X + one.At.X).Order()];

    private static List<double> Crosses(Scene scene)
    {
        var stick = Assert.IsType<SceneGroup>(Assert.Single(scene.Nodes));
        return [.. stick.Children.OfType<SceneGroup>().Where(group => group.Title?.StartsWith("match mark", StringComparison.Ordinal) == true)
            .Select(group => group.Children.OfType<Shape>().First().Outline.Bounds.Centre.X + stick.At.X).Order()];
    }
}
