using Fractions;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Drawing.Tests.Figures;

public class WoodFigureTests
{
    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 12)];

    private static IEnumerable<(DrawnLeaf Drawn, PanelFit Fit)> Fits(IEnumerable<DrawnLeaf> leaves) =>
        from drawn in leaves
        from fit in PanelFit.Of(drawn.Leaf)
        from held in new[] { fit.Held(true), fit.Held(false) }
        select (drawn, held);

    private static IEnumerable<(DrawnLeaf Drawn, GlueUp GlueUp)> GlueUps(IEnumerable<DrawnLeaf> leaves) =>
        from drawn in leaves
        from part in drawn.Leaf.Parts
        where part.Work.Contains(EdgeWork.JoinStaves)
        let result = GlueUp.Of(part, drawn.Leaf.Standard, GlueUpOrder.Usual)
        where result is GlueUpResult.Planned
        select (drawn, ((GlueUpResult.Planned)result).GlueUp);

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Panels_in_their_grooves_are_clean_and_true_to_scale(int seed)
    {
        foreach (var (drawn, fit) in Fits(Drawn.Leaves(seed)))
        {
            foreach (var scale in Scale.EnlargedOf(drawn.Format.Unit))
            {
                var scene = PanelFitFigure.Draw(fit, drawn.Leaf, scale, drawn.Format);
                Drawn.IsClean(scene);
                // Play and what stands in make up the groove, on both sides, in all three states.
                foreach (var (group, _) in Drawn.Groups(scene).Where(each => each.Group.Title is "driest" or "at making" or "wettest"))
                {
                    var marks = group.Children.OfType<DimensionMark>().Where(mark => mark.From.Y > 0).ToList();
                    var whole = marks.Where(mark => Word(mark) is "play" or "in").Aggregate(Length.Zero, (sum, mark) => sum + mark.Value);
                    Assert.Equal(fit.Depth.Length * 2, whole);
                }
            }
        }
    }

    [Fact]
    public void Drawn_edges_stand_where_play_and_engagement_say()
    {
        var seen = 0;
        foreach (var (drawn, fit) in Fits(Drawn.Sample()))
        {
            var scene = PanelFitFigure.Draw(fit, drawn.Leaf, new(1, 4), drawn.Format);
            foreach (var (name, width) in new[] { ("driest", fit.WidthAtDriest.Length), ("at making", fit.Width.Length), ("wettest", fit.WidthAtWettest.Length) })
            {
                var group = Drawn.Groups(scene).Single(each => each.Group.Title == name).Group;
                // Of each member and panel the outline, the panel's being white beneath it; the sight lines are where the members end.
                var panels = group.Children.OfType<Shape>().Where(shape => shape.Fill == Tone.Paper).Select(shape => shape.Outline.Bounds).ToList();
                Assert.Equal(2, panels.Count);
                var members = group.Children.OfType<Shape>().Where(shape => shape.Line == LineStyle.Visible).Select(shape => shape.Outline.Bounds).ToList();
                var (leftSight, rightSight) = (members.MinBy(box => box.Left).Right, members.MaxBy(box => box.Right).Left);
                var (left, right) = (leftSight - panels.Min(box => box.Left), panels.Max(box => box.Right) - rightSight);
                // What is broken out of the middle is the same wherever the panel lies.
                Assert.Equal(4 * 25.4 * (width - fit.Clear.Length).Inches.ToDouble(), left + right, 1e-6);
                Assert.Equal(fit.IsPinned ? right : 4 * 25.4 * fit.Depth.Amount.ToDouble(), left, 1e-6);
                seen++;
            }
        }

        Assert.True(seen > 20);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Charts_are_clean_and_name_their_limits(int seed)
    {
        foreach (var (drawn, fit) in Fits(Drawn.Leaves(seed)))
        {
            var scene = PlayChart.Draw(fit, drawn.Format);
            Drawn.IsClean(scene);
            var texts = Drawn.Texts(scene).Select(text => text.Line.Text).ToList();
            Assert.Contains(texts, text => text.StartsWith("least engagement", StringComparison.Ordinal));
            Assert.Contains(texts, text => text.StartsWith("0: it bottoms", StringComparison.Ordinal));
            Assert.Contains("Jan", texts);
            Assert.Contains("Dec", texts);
            Assert.Contains("cosine", string.Join(' ', texts), StringComparison.Ordinal);
        }
    }

    // A play's place over the zero line, as a share of another's, is the share that their lengths have.
    [Fact]
    public void Chart_is_true_to_its_axis()
    {
        foreach (var (drawn, fit) in Fits(Drawn.Sample()))
        {
            var scene = PlayChart.Draw(fit, drawn.Format);
            var curves = Drawn.Lines(scene, LineStyle.Visible).Where(line => line.Segments.Count == 11).ToList();
            Assert.Equal(2, curves.Count);
            var zero = Drawn.Lines(scene, LineStyle.Visible).Single(line => line.Segments.Count == 1).Start.Y;
            var months = fit.PlayOverYear();
            var (play, engagement) = (Heights(curves[0]), Heights(curves[1]));
            var perInch = engagement[0] / months[0].Engagement.Inches.ToDouble();
            for (var month = 0; month < 12; month++)
            {
                Assert.Equal(months[month].Play.Inches.ToDouble() * perInch, play[month], 1e-6);
                Assert.Equal(months[month].Engagement.Inches.ToDouble() * perInch, engagement[month], 1e-6);
            }

            double[] Heights(Outline curve) => [zero - curve.Start.Y, .. curve.Segments.Select(segment => zero - segment.End.Y)];
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Glue_ups_are_clean_and_their_staves_add_up(int seed)
    {
        foreach (var (drawn, glueUp) in GlueUps(Drawn.Leaves(seed)))
        {
            var scene = GlueUpFigure.Draw(glueUp, drawn.Format, 180, 160).Scene;
            Drawn.IsClean(scene);
            var marks = Drawn.Marks(scene).ToList();
            Assert.Equal(glueUp.Width, marks.Where(mark => Word(mark).Length == 0).Aggregate(Length.Zero, (sum, mark) => sum + mark.Value));
            Assert.Equal([glueUp.Part.GlueUp.Width.Length, glueUp.Part.GlueUp.Length.Length], marks.Where(mark => Word(mark) == "cut to").Select(mark => mark.Value));
            // Three rings on every end.
            Assert.Equal(3 * glueUp.Staves.Count, Drawn.Lines(scene, LineStyle.Rule).Count(line => line.Segments is [ArcTo]));
        }
    }

    [Fact]
    public void Rings_bulge_to_the_bark_and_the_last_joint_is_heavy()
    {
        var (drawn, glueUp) = GlueUps(Drawn.Sample()).First(each => each.GlueUp.Staves.Count > 1);
        var scene = GlueUpFigure.Draw(glueUp, new(8), drawn.Format);
        Assert.Empty(Drawn.Lines(scene, LineStyle.Heavy));
        var arcs = Drawn.Lines(scene, LineStyle.Rule).Where(line => line.Segments is [ArcTo]).ToList();
        Assert.All(glueUp.Staves, stave => Assert.Equal(stave.BarkUp, arcs[3 * (stave.Number - 1)].Bounds.Top < arcs[3 * (stave.Number - 1)].Start.Y - 1e-9));
        Assert.Contains(glueUp.Staves, stave => !stave.BarkUp);

        // A planer that takes half of it makes two sections.
        var standard = drawn.Leaf.Standard.Standard;
        var half = new LengthEntry("half and an inch", (glueUp.Width / 2) + 1.Inches);
        var small = new StandardInForce(standard with { Machines = [.. standard.Machines.Select(machine => machine.Kind is MachineKind.Planer ? machine with { Widest = half } : machine)] });
        var halves = Assert.IsType<GlueUpResult.Planned>(GlueUp.Of(glueUp.Part, small, GlueUpOrder.Usual)).GlueUp;
        Assert.Equal(2, halves.Sections);
        Assert.Single(Drawn.Lines(GlueUpFigure.Draw(halves, new(8), drawn.Format), LineStyle.Heavy));
        Assert.Contains(GlueUpCaution.Of(halves, small), caution => FormattableString.Invariant(caution.Problem).StartsWith("Glued up whole", StringComparison.Ordinal));
    }

    // 12 in and 3 in: jointer and planer manuals, push blocks below 3 in.
    [Fact]
    public void Short_and_narrow_staves_are_cautioned_with_a_source()
    {
        var (drawn, glueUp) = GlueUps(Drawn.Sample()).First();
        var standard = drawn.Leaf.Standard;
        var fine = glueUp with { Length = 14.Inches, Staves = [new(1, 3.Inches, Length.FromInches(new Fraction(23, 8)), true, 1)], Limit = null };
        Assert.Empty(GlueUpCaution.Of(fine, standard));
        var shorter = GlueUpCaution.Of(fine with { Length = Length.FromInches(new Fraction(95, 8)) }, standard);
        Assert.Equal(2, shorter.Count);
        Assert.All(shorter, caution => Assert.Contains("1910.213", caution.Source.Text, StringComparison.Ordinal));
        var narrow = Assert.Single(GlueUpCaution.Of(fine with { Staves = [new(1, Length.FromInches(new Fraction(47, 16)), 2.Inches, true, 1)] }, standard));
        Assert.Contains("push blocks", FormattableString.Invariant(narrow.Advice), StringComparison.Ordinal);
    }

    private static string Word(DimensionMark mark)
    {
        var text = mark.Text.Line.Text;
        return new[] { "play", "in", "out", "too wide", "groove", "tongue flat", "cut to", "glued up", "staves" }.FirstOrDefault(word => text.StartsWith($"{word} ", StringComparison.Ordinal)) ?? "";
    }
}
