using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Tests.Figures;

/// <summary>Arches in drawings, held against the curves of the leaf.</summary>
public class ArchFigureTests
{
    private const double Tolerance = 1e-6;

    private static readonly Scale Quarter = new(4);

    private static List<DrawnLeaf> Arched { get; } =
        [.. Drawn.Sample().Concat(Enumerable.Range(1, 60).SelectMany(Drawn.Leaves)).Where(drawn => drawn.Leaf.Parts.Any(part => part.Arch is not null))];

    [Fact]
    public void Leaves_show_every_sight_line_true_from_both_sides()
    {
        Assert.True(Arched.Count > 15, $"{Arched.Count}");
        foreach (var drawn in Arched)
        {
            foreach (var isBack in new[] { false, true })
            {
                var scene = isBack ? LeafFigure.Back(drawn.Leaf, drawn.Detail, Quarter, drawn.Format) : LeafFigure.Front(drawn.Leaf, drawn.Detail, Quarter, drawn.Format);
                Drawn.IsClean(scene);
                var width = CurveLength.Inches(drawn.Leaf.Width.Length);
                var height = CurveLength.Inches(drawn.Leaf.Height.Length);
                foreach (var rail in drawn.Detail.Curves.Rails)
                {
                    var (group, at) = Drawn.Groups(scene).Single(one => one.Group.Path == rail.Rail.Path);
                    var outline = group.Children.OfType<Shape>().First(shape => shape.Line == LineStyle.Visible).Outline;
                    var leaf = Drawn.Groups(scene).First();
                    Assert.Equal(leaf.At, at);
                    Follows(outline, rail.Seen, point => new(
                        Quarter.InchesOnPaper(isBack ? width - point.X : point.X), Quarter.InchesOnPaper(height - point.Y)));
                }
            }
        }
    }

    [Fact]
    public void Parts_show_their_own_outline_and_the_rise()
    {
        var panels = 0;
        foreach (var drawn in Arched)
        {
            foreach (var rail in drawn.Detail.Curves.Rails)
            {
                var scene = PartFigure.Draw(rail.Rail, drawn.Detail, Quarter, drawn.Format);
                Drawn.IsClean(scene);
                Follows(First(scene), rail.Outline, InPart(rail.Rail, isTurned: false));
                Assert.Contains(Drawn.Marks(scene), mark => mark.Value == rail.Rail.Arch!.Rise.Length && mark.From.X == mark.To.X);
                Assert.True(Drawn.Lines(scene, LineStyle.Centre).Count() >= 2);
                Assert.All(Drawn.Lines(scene, LineStyle.Centre), line => Assert.Equal(0, Math.Min(line.Bounds.Width, line.Bounds.Height), Tolerance));
            }

            foreach (var panel in drawn.Detail.Curves.Panels)
            {
                var scene = PartFigure.Draw(panel.Panel, drawn.Detail, Quarter, drawn.Format);
                Drawn.IsClean(scene);
                var isTurned = panel.Panel.Outline.Height > panel.Panel.Outline.Width * 3;
                Follows(First(scene), panel.Edge, InPart(panel.Panel, isTurned));
                panels++;
            }
        }

        Assert.True(panels > 10, $"{panels}");

        static Outline First(Scene scene) => ((Shape)scene.Drawn.First(one => one.Node is Shape { Line: LineStyle.Visible }).Node).Outline;
    }

    // A panel's label lies in the room below the spring line, so no arc of the sight line meets it.
    [Fact]
    public void Labels_of_arched_lights_keep_clear_of_the_curve()
    {
        foreach (var drawn in Arched)
        {
            var scene = LeafFigure.Front(drawn.Leaf, drawn.Detail, Quarter, drawn.Format);
            var height = CurveLength.Inches(drawn.Leaf.Height.Length);
            foreach (var panel in drawn.Detail.Curves.Panels)
            {
                var (group, _) = Drawn.Groups(scene).Single(one => one.Group.Path == panel.Panel.Path);
                var text = group.Children.OfType<Lettering>().Single().Box;
                var points = panel.Sight.Flattened(0.001).Select(point => new PaperPoint(Quarter.InchesOnPaper(point.X), Quarter.InchesOnPaper(height - point.Y)));
                Assert.DoesNotContain(points, point => text.Holds(new(point.X, point.Y, 0, 0)));
            }
        }
    }

    // 26 3/4 high, rails 2 1/4, rise 1 3/4: the crown at 24 1/2, the spring line at 22 3/4. Follows from the sizes of the sample.
    [Fact]
    public void A_story_stick_marks_spring_line_and_crown()
    {
        var drawn = Drawn.Sample().First(one => one.Leaf.Path == "hall-doors/leaf.left");
        var marks = StoryStick.Marks(drawn.Leaf, drawn.Detail, StickDirection.Up);
        Assert.Equal("22 3/4", drawn.Format.Print(marks.Single(mark => mark.Names.Any(name => name.StartsWith("spring line", StringComparison.Ordinal))).At));
        Assert.Equal("24 1/2", drawn.Format.Print(marks.Single(mark => mark.Names.Any(name => name.StartsWith("crown", StringComparison.Ordinal))).At));
    }

    private static Func<CurvePoint, PaperPoint> InPart(Part part, bool isTurned) => point =>
    {
        var (right, up) = (point.X - CurveLength.Inches(part.Outline.X), point.Y - CurveLength.Inches(part.Outline.Y));
        return isTurned ? new(Quarter.InchesOnPaper(up), Quarter.InchesOnPaper(right))
            : new(Quarter.InchesOnPaper(right), Quarter.InchesOnPaper(CurveLength.Inches(part.Outline.Height) - up));
    };

    // Ends, centres and the middle of every arc lie where the curve has them, and no arc is drawn the long way round.
    private static void Follows(Outline outline, Chain chain, Func<CurvePoint, PaperPoint> at)
    {
        Near(at(chain.Start), outline.Start);
        Assert.InRange(outline.Segments.Count, chain.Segments.Count - 1, chain.Segments.Count);
        var box = chain.Segments.SelectMany(segment => Enumerable.Range(0, 65).Select(i => at(segment.PointAt(segment.Length * i / 64)))).ToList();
        var from = outline.Start;
        foreach (var (drawn, curve) in outline.Segments.Zip(chain.Segments))
        {
            Near(at(curve.End), drawn.End);
            if (curve is ArcSegment arc)
            {
                var to = Assert.IsType<ArcTo>(drawn);
                Near(at(arc.Centre), to.Centre);
                var middle = new Outline(from, [to], false).Flattened(0.0001);
                Assert.InRange(middle.Min(point => point.DistanceTo(at(arc.PointAt(arc.Length / 2)))), 0, 1);
            }

            from = drawn.End;
        }

        Assert.Equal(box.Min(point => point.Y), outline.Bounds.Top, 0.02);
        Assert.Equal(box.Max(point => point.Y), outline.Bounds.Bottom, 0.02);

        static void Near(PaperPoint expected, PaperPoint found) => Assert.InRange(expected.DistanceTo(found), 0, Tolerance);
    }
}
