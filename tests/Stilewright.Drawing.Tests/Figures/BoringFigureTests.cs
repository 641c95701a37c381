using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Drawing.Tests.Figures;

/// <summary>Boring sheets are true to scale, mirror images in pairs, and say which door they are for.</summary>
public sealed class BoringFigureTests
{
    private static readonly Scale Eighth = new(8);

    private static Course Hung(Course course, string hinge = "example-cup-compact") => course with
    {
        Overrides = course.Overrides.With(Settings.UsualHinge, new(hinge, default)),
    };

    private static HangingPlan Pair(string hinge = "example-cup-compact") => HangingPlan.Of(Breakdown.Of(Hung(Examples.Pair(), hinge), ShippedStandards.Inch));

    private static HangingPlan Sample() => HangingPlan.Of(Breakdown.Of(Drawn.SampleCourse(), ShippedStandards.Inch));

    public static TheoryData<int> Seeds => [.. Enumerable.Range(-1, 9)];

    // -1 is the sample; each leaf alone and each pair, at the scales it could be printed at, its detail below and beside.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_text_is_covered_and_every_dimension_is_true_to_scale(int seed)
    {
        var course = seed < 0 ? Drawn.SampleCourse() : Hung(RandomCourse.Of(seed));
        var plan = HangingPlan.Of(Breakdown.Of(course, ShippedStandards.For(course.Unit)));
        Assert.True(seed >= 0 || plan.Leaves.Count > 10);
        foreach (var (left, right) in plan.InPairs)
        {
            IReadOnlyList<HungLeaf> both = right is null ? [left] : [left, right];
            var format = new LengthFormat(left.Project.Unit ?? course.Unit);
            foreach (var scale in Scale.Of(format.Unit).Skip(3).Take(5))
            {
                Drawn.IsClean(BoringFigure.Draw(both, scale, format));
                Drawn.IsClean(BoringFigure.Draw([left], scale, format, isBeside: true));
            }
        }
    }

    // Seen from the back a left-hand door has its hinge edge on the right; its mirror image about the middle of the paper is the other's.
    [Fact]
    public void The_right_sheet_is_the_mirror_image_of_the_left_one()
    {
        var (left, right) = Assert.Single(Pair().InPairs);
        var (one, other) = (Lines(left), Lines(right!));
        var axis = one.Width;
        foreach (var style in new[] { LineStyle.Heavy, LineStyle.Visible, LineStyle.Edge, LineStyle.Centre })
        {
            var mirrored = one.Boxes(style).Select(box => Rounded(new(axis - box.Right, box.Top, box.Width, box.Height))).Order().ToList();
            Assert.NotEmpty(mirrored);
            Assert.Equal(mirrored, other.Boxes(style).Select(Rounded).Order());
        }

        Assert.NotEqual(one.Boxes(LineStyle.Heavy).Select(Rounded).Order(), other.Boxes(LineStyle.Heavy).Select(Rounded).Order());
    }

    // 30 1/4 high, two hinges 3 1/8 from the ends by the shipped standard: 3 1/8 and 27 1/8 from the top, the same from the bottom.
    [Theory]
    [InlineData("example-cup-compact", 4)]
    [InlineData("example-wrap-around", 2)]
    public void Places_are_dimensioned_from_both_ends_and_cups_from_the_edge(string hinge, int circles)
    {
        var leaf = Pair(hinge).Leaves[0];
        var scene = BoringFigure.Draw([leaf], Eighth, LengthFormat.InchesTo32);
        var marks = Drawn.Marks(scene).ToList();
        Assert.Equal(2, marks.Count(mark => mark.Text.Line.Text == "3 1/8"));
        Assert.Equal(2, marks.Count(mark => mark.Text.Line.Text == "27 1/8"));
        Assert.Contains(marks, mark => mark.Text.Line.Text == "30 1/4");
        Assert.Equal(leaf.Sheet is not null, marks.Any(mark => mark.Text.Line.Text.StartsWith("boring distance", StringComparison.Ordinal) && mark.Scale == Scale.FullSize));
        Assert.Equal(leaf.Sheet is not null, marks.Any(mark => mark.Text.Line.Text.StartsWith("centre", StringComparison.Ordinal) && mark.Value == leaf.Sheet!.CupCentre.Length));
        var holes = scene.Drawn.Select(one => one.Node).OfType<Shape>().Count(shape => shape.Outline.Segments.Any(segment => segment is ArcTo) && shape.Fill == Tone.Ink);
        Assert.Equal(leaf.Sheet is null ? 0 : circles + 2, holes);
    }

    // Paper is measured, not the text: the cup's middle lies where the sheet says, from the top and from the hinge edge.
    [Fact]
    public void Cups_are_drawn_where_they_are_bored()
    {
        foreach (var leaf in Sample().Leaves.Where(leaf => leaf.Sheet is not null && leaf.IsUpright))
        {
            var scene = BoringFigure.Draw([leaf], Eighth, LengthFormat.InchesTo32);
            var edge = Drawn.Lines(scene, LineStyle.Heavy).First(line => line.Bounds.Height > 0 && Math.Abs(line.Bounds.Height - Eighth.OnPaper(leaf.Leaf.Height.Length)) < 1e-6).Bounds;
            var radius = Eighth.OnPaper(leaf.Hinge.Cup!.Diameter.Value) / 2;
            var cups = Drawn.Lines(scene, LineStyle.Visible).Where(line => line.Segments is [ArcTo, ArcTo]).Select(line => line.Bounds).Where(box => Math.Abs(box.Width - 2 * radius) < 1e-6).OrderBy(box => box.Top).ToList();
            Assert.Equal(leaf.Bores.Count, cups.Count);
            foreach (var (cup, bore) in cups.Zip(leaf.Bores))
            {
                Assert.Equal(Eighth.OnPaper(bore.FromFirst.Length), cup.Centre.Y - edge.Top, 1e-6);
                var inward = leaf.Leaf.Hinge == HingeSide.Right ? cup.Centre.X - edge.Left : edge.Left - cup.Centre.X;
                Assert.Equal(Eighth.OnPaper(leaf.Sheet!.CupCentre.Length), inward, 1e-6);
            }
        }
    }

    [Fact]
    public void The_hand_the_hinge_edge_and_the_top_are_written_on_every_sheet()
    {
        foreach (var leaf in Sample().Leaves)
        {
            var texts = Drawn.Texts(BoringFigure.Draw([leaf], new(16), LengthFormat.InchesTo32)).Select(text => text.Line.Text).ToList();
            var words = string.Join(' ', texts);
            Assert.Contains(leaf.Leaf.Hinge switch { HingeSide.Left => "LEFT-HAND DOOR", HingeSide.Right => "RIGHT-HAND DOOR", HingeSide.Top => "HINGED AT THE TOP", _ => "HINGED AT THE BOTTOM" }, words, StringComparison.Ordinal);
            Assert.Contains("SEEN FROM THE BACK", words, StringComparison.Ordinal);
            Assert.Contains("TOP", texts);
            Assert.Contains("hinge edge", texts);
            Assert.Contains(leaf.Hand.HasTop ? "It has a top" : "Either way round will do", words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_pair_that_does_not_fit_side_by_side_is_drawn_leaf_by_leaf()
    {
        var (left, right) = Assert.Single(Pair().InPairs);
        var wide = BoringFigure.DrawPair(left, right, LengthFormat.InchesTo32, 190, 240);
        Assert.Equal(2, Assert.Single(wide).Leaves.Count);
        var narrow = BoringFigure.DrawPair(left, right, LengthFormat.InchesTo32, 110, 240);
        Assert.Equal([left, right!], narrow.Select(one => Assert.Single(one.Leaves)));
        Assert.All(wide.Concat(narrow), one => Assert.True(one.Drawn.Fits));
    }

    private static (double Width, Func<LineStyle, IEnumerable<PaperBox>> Boxes) Lines(HungLeaf leaf)
    {
        var scene = BoringFigure.Draw([leaf], Eighth, LengthFormat.InchesTo32);
        // Of the leaf alone: its own outline is the frame of reference.
        var heavy = Drawn.Lines(scene, LineStyle.Heavy).MaxBy(line => line.Bounds.Height)!.Bounds;
        var width = Eighth.OnPaper(leaf.Leaf.Width.Length);
        var left = leaf.Edge == Side.Left ? heavy.Left : heavy.Left - width;
        PaperBox inside = new(left - 0.01, heavy.Top - 0.01, width + 0.02, heavy.Height + 0.02);
        return (width, style => Drawn.Lines(scene, style).Select(line => line.Bounds).Where(box => inside.Holds(box)).Select(box => box.Shifted(-left, -heavy.Top)));
    }

    private static (double, double, double, double) Rounded(PaperBox box) =>
        (Near(box.Left), Near(box.Top), Near(box.Width), Near(box.Height));

    // Off the half, where the two ways of reckoning a place would be rounded apart.
    private static double Near(double millimetres) => Math.Round(millimetres + 1e-7, 4) + 0.0;
}
