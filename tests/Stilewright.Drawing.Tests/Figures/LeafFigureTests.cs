using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Drawing.Tests.Figures;

public class LeafFigureTests
{
    private const double Tolerance = 1e-6;

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 25)];

    private static IEnumerable<(DrawnLeaf Drawn, Scene Front, Scene Back)> Views(IEnumerable<DrawnLeaf> leaves) =>
        from drawn in leaves
        from scale in drawn.Scales
        select (drawn, LeafFigure.Front(drawn.Leaf, drawn.Detail, scale, drawn.Format), LeafFigure.Back(drawn.Leaf, drawn.Detail, scale, drawn.Format));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_text_covers_another_and_nothing_leaves_the_scene(int seed)
    {
        foreach (var (_, front, back) in Views(Drawn.Leaves(seed)))
        {
            Drawn.IsClean(front);
            Drawn.IsClean(back);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_line_is_drawn_over_a_label(int seed)
    {
        foreach (var (_, front, back) in Views(Drawn.Leaves(seed)))
        {
            foreach (var scene in new[] { front, back })
            {
                List<PaperBox> labels = [];
                foreach (var (node, at) in scene.Drawn)
                {
                    if (node is not Shape shape)
                        continue;
                    if (shape.Fill == Tone.Paper)
                        labels.Add(shape.Outline.Shifted(at).Bounds.Grown(-0.3));
                    else if (shape.Line is { } style and not LineStyle.Dimension)
                        Assert.DoesNotContain(labels, label => Marks.Crosses(shape.Outline.Shifted(at), label));
                }
            }
        }
    }

    [Fact]
    public void Sample_leaves_are_clean_at_every_scale()
    {
        var views = Views(Drawn.Sample()).ToList();
        Assert.NotEmpty(views);
        foreach (var (_, front, back) in views)
        {
            Drawn.IsClean(front);
            Drawn.IsClean(back);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Chains_add_up_to_the_leaf(int seed)
    {
        foreach (var (drawn, front, _) in Views(Drawn.Leaves(seed)))
        {
            var leaf = drawn.Leaf;
            var level = Drawn.Marks(front).Where(mark => mark.From.Y == mark.To.Y).GroupBy(mark => mark.From.Y).ToList();
            var upright = Drawn.Marks(front).Where(mark => mark.From.X == mark.To.X).GroupBy(mark => mark.From.X).ToList();
            Assert.All(level, row => Assert.Equal(leaf.Width.Length, row.Aggregate(Length.Zero, (sum, mark) => sum + mark.Value)));
            Assert.All(upright, row => Assert.Equal(leaf.Height.Length, row.Aggregate(Length.Zero, (sum, mark) => sum + mark.Value)));
            Assert.Equal(LightGrid.Of(leaf) is null ? 1 : 2, upright.Count);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Hand_lines_meet_at_the_middle_of_the_hinge_edge(int seed)
    {
        foreach (var (drawn, front, back) in Views(Drawn.Leaves(seed)))
        {
            CheckHand(drawn.Leaf, front, drawn.Leaf.Hinge);
            CheckHand(drawn.Leaf, back, drawn.Leaf.Hinge switch { HingeSide.Left => HingeSide.Right, HingeSide.Right => HingeSide.Left, var other => other });
        }

        static void CheckHand(SizedLeaf leaf, Scene scene, HingeSide seen)
        {
            var lines = Drawn.Lines(scene, LineStyle.Hand).ToList();
            if (leaf.IsDrawerFront || leaf.Hinge == HingeSide.None)
            {
                Assert.Empty(lines);
                return;
            }

            var box = LeafBox(leaf, scene);
            PaperPoint apex = seen switch
            {
                HingeSide.Left => new(box.Left, box.Centre.Y),
                HingeSide.Right => new(box.Right, box.Centre.Y),
                HingeSide.Top => new(box.Centre.X, box.Top),
                _ => new(box.Centre.X, box.Bottom),
            };
            Assert.Equal(2, lines.Count);
            Assert.All(lines, line => Assert.InRange(line.Start.DistanceTo(apex), 0, Tolerance));
        }
    }

    // The last box in wide line is the outline of the leaf.
    private static PaperBox LeafBox(SizedLeaf leaf, Scene scene)
    {
        var box = Drawn.Lines(scene, LineStyle.Visible).Select(line => line.Bounds).MaxBy(bounds => bounds.Width * bounds.Height);
        Assert.Equal(scene.Scale!.Value.OnPaper(leaf.Width.Length), box.Width, Tolerance);
        Assert.Equal(scene.Scale!.Value.OnPaper(leaf.Height.Length), box.Height, Tolerance);
        return box;
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Front_and_back_are_mirror_images(int seed)
    {
        foreach (var (drawn, front, back) in Views(Drawn.Leaves(seed)))
        {
            var (one, other) = (LeafBox(drawn.Leaf, front), LeafBox(drawn.Leaf, back));
            foreach (var part in drawn.Leaf.Parts.Where(part => part.Kind is not (PartKind.Panel or PartKind.Glass or PartKind.Slab)))
            {
                var (seen, behind) = (Face(front, part.Path).Shifted(-one.Left, -one.Top), Face(back, part.Path).Shifted(-other.Left, -other.Top));
                Assert.Equal(one.Width - seen.Right, behind.Left, Tolerance);
                Assert.Equal(one.Width - seen.Left, behind.Right, Tolerance);
                Assert.Equal(seen.Top, behind.Top, Tolerance);
                Assert.Equal(seen.Bottom, behind.Bottom, Tolerance);
            }
        }

        static PaperBox Face(Scene scene, string path)
        {
            var leaf = Assert.IsType<SceneGroup>(Assert.Single(scene.Nodes));
            var part = leaf.Children.OfType<SceneGroup>().Single(group => group.Path == path);
            return part.Children.OfType<Shape>().First(shape => shape.Line == LineStyle.Visible).Outline.Bounds.Shifted(leaf.At.X, leaf.At.Y);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_part_has_one_group_and_its_label(int seed)
    {
        foreach (var (drawn, front, back) in Views(Drawn.Leaves(seed)))
        {
            foreach (var scene in new[] { front, back })
            {
                var groups = Assert.IsType<SceneGroup>(Assert.Single(scene.Nodes)).Children.OfType<SceneGroup>().ToList();
                Assert.Equal(drawn.Leaf.Parts.Select(part => part.Path).Order(), groups.Select(group => group.Path).Order());
                foreach (var part in drawn.Leaf.Parts)
                    Assert.Contains(groups.Single(group => group.Path == part.Path).Children.OfType<Lettering>(), text => text.Line.Text == part.ShortLabel);
            }
        }
    }

    [Fact]
    public void Back_says_so_and_shows_no_moulding_or_raise()
    {
        var drawn = Drawn.Leaves(Examples.Pair(), ShippedStandards.Inch).First();
        var back = LeafFigure.Back(drawn.Leaf, drawn.Detail, new(4), drawn.Format);
        Assert.Contains("seen from the back", back.Title);
        // Only the two strokes of the grain arrow's heads and its shaft remain.
        Assert.Equal(3, Drawn.Lines(back, LineStyle.Edge).Count());
        Assert.True(Drawn.Lines(LeafFigure.Front(drawn.Leaf, drawn.Detail, new(4), drawn.Format), LineStyle.Edge).Count() > 10);
    }

    [Fact]
    public void Withheld_leaf_shows_outline_hand_and_size()
    {
        var sized = Drawn.Leaves(Examples.Pair(), ShippedStandards.Inch).First();
        var leaf = sized.Leaf with { Parts = [], IsWithheld = true };
        foreach (var scale in sized.Scales)
        {
            var scene = LeafFigure.Front(leaf, sized.Detail, scale, sized.Format);
            Drawn.IsClean(scene);
            Assert.Contains(Drawn.Texts(scene), text => text.Line.Text == "cannot be built");
            Assert.Equal(2, Drawn.Lines(scene, LineStyle.Hand).Count());
            Assert.Equal(["12 3/16", "30 1/4"], Drawn.Marks(scene).Select(mark => mark.Text.Line.Text).Order());
        }
    }

    [Fact]
    public void Rabbets_of_a_lipped_front_are_hidden_before_and_seen_behind()
    {
        var drawn = Drawn.Sample().First(one => one.Detail.Rabbets.Count > 1);
        var scale = new Scale(4);
        var front = LeafFigure.Front(drawn.Leaf, drawn.Detail, scale, drawn.Format);
        var back = LeafFigure.Back(drawn.Leaf, drawn.Detail, scale, drawn.Format);
        var box = LeafBox(drawn.Leaf, back);
        // A rabbet of 3/8 in at a quarter of full size.
        Assert.Contains(Drawn.Lines(back, LineStyle.Visible), line => Math.Abs(line.Bounds.Left - box.Left - 25.4 * 3 / 8 / 4) < Tolerance && line.Bounds.Width < Tolerance);
        Assert.Equal(drawn.Detail.Rabbets.Count, Drawn.Lines(front, LineStyle.Hidden).Count());
    }

    // Worked by hand: (24 1/2 − 1/8) ÷ 2 = 12 3/16; 12 3/16 − 2 × 2 1/4 = 7 11/16, with two tongues of 7/16 8 9/16;
    // panel 8 9/16 − 2 × 1/16 = 8 7/16 and 25 3/4 + 2 × 7/16 − 2 × 1/16 = 26 1/2. Common practice, no source.
    [Fact]
    public void Worked_pair_is_drawn_where_its_figures_say()
    {
        var drawn = Drawn.Leaves(Examples.Pair(), ShippedStandards.Inch).First();
        var scale = new Scale(4);
        var scene = LeafFigure.Front(drawn.Leaf, drawn.Detail, scale, drawn.Format);
        string[] sizes = [.. Drawn.Marks(scene).Select(mark => mark.Text.Line.Text)];
        Assert.Equal(["2 1/4", "7 11/16", "2 1/4", "12 3/16", "2 1/4", "25 3/4", "2 1/4", "30 1/4"], sizes);

        // In quarters of full size from the leaf's corner: stile to 2 1/4, rail with its tongues 8 9/16 long, panel 8 7/16 × 26 1/2.
        var box = LeafBox(drawn.Leaf, scene);
        double Paper(double inches) => inches * 25.4 / 4;
        var hidden = Drawn.Lines(scene, LineStyle.Hidden).Select(line => line.Bounds.Shifted(-box.Left, -box.Top)).ToList();
        Assert.Contains(hidden, line => Same(line, new(Paper(1.875), Paper(1.875), Paper(8.4375), Paper(26.5))));
        // A tongue 3/8 long at each end of the top rail, 8 9/16 from end to end.
        Assert.Contains(hidden, line => Same(line, new(Paper(1.8125), 0, Paper(0.4375), Paper(2.25))));
        Assert.Contains(hidden, line => Same(line, new(Paper(9.9375), 0, Paper(0.4375), Paper(2.25))));

        static bool Same(PaperBox one, PaperBox other) =>
            one.Holds(other, Tolerance) && other.Holds(one, Tolerance);
    }
}
