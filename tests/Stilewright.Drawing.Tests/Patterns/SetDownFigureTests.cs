using Stilewright.Curves;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Drawing.Tests.Patterns;

public class SetDownFigureTests
{
    private static readonly Length Step = Examples.In("1/32").Value;
    private static readonly Length Least = Examples.In("3/16").Value;

    [Fact]
    public void The_set_down_of_a_panel_is_drawn_and_told_with_what_it_leaves()
    {
        var (pattern, leaf) = Panel(ArchFamily.Cathedral, [], isAsked: true);
        var (d, found) = (leaf.Detail.Cutters!.GrooveDepth.Value, Assert.Single(pattern.SetDowns));
        var panel = leaf.Detail.Curves.Filling(pattern.Part)!;
        var depth = SetDown.Settable(panel.Light.Arched.Top, d, d - (pattern.Part.Outline.Top - pattern.Part.VisibleBounds.Top), Step);
        Assert.Equal(CurveLength.Inches(depth), found.Inches, 12);
        var texts = string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
        Assert.Contains($"set it down {new LengthFormat(LengthUnit.Inch, 64).PrintWithUnit(depth)}", texts, StringComparison.Ordinal);
        Assert.Contains("rounded to the shop's cutting step of 1/32", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("Caution", texts, StringComparison.Ordinal);

        // In both details the arrow from sight line to edge is as long as the engagement, at the scale that is told, with 5 mm beyond.
        Assert.Contains("least in the groove, 2:1", texts, StringComparison.Ordinal);
        var details = Drawn.Groups(pattern.Scene).Select(each => each.Group).Where(group => group.Clip is not null).ToList();
        Assert.Equal(2, details.Count);
        foreach (var (detail, engagement) in details.Zip([found.Least, found.Greatest]))
        {
            var arrow = Assert.Single(detail.Children.OfType<Shape>(), shape => shape.Line == LineStyle.Dimension).Outline;
            Assert.Equal(engagement * 25.4 * 2 + 5, arrow.Start.DistanceTo(arrow.Segments[0].End), 6);
            // Sight line, groove, true edge and the edge that the one pattern leaves.
            Assert.Equal([LineStyle.Edge, LineStyle.Hidden, LineStyle.Centre, LineStyle.Visible], detail.Children.OfType<Shape>().Take(4).Select(shape => shape.Line!.Value));
        }
    }

    [Fact]
    public void Without_being_asked_it_is_told_where_a_pattern_of_the_rack_serves()
    {
        var narrow = new HardPattern("N", ArchFamily.Cathedral, 1.75, 6, 10, 0.75);
        var wide = new HardPattern("W", ArchFamily.Cathedral, 2, 10, 12, 1);
        Assert.Empty(Panel(ArchFamily.Cathedral, [narrow], isAsked: false).Pattern.SetDowns);
        var (pattern, _) = Panel(ArchFamily.Cathedral, [narrow, wide], isAsked: false);
        Assert.Single(pattern.SetDowns);
        var texts = string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
        Assert.Contains("Pattern W of the rack (here it rises 2, and the drawn curve 1 3/4)", texts, StringComparison.Ordinal);
    }

    // The flanks of a half round stand upright: moved straight, the edge hardly enters the groove beside them.
    [Fact]
    public void Too_little_engagement_is_a_caution()
    {
        var (pattern, _) = Panel(ArchFamily.HalfRound, [], isAsked: true);
        Assert.InRange(pattern.SetDowns[0].Least, 0, CurveLength.Inches(Least));
        Assert.Contains("give the panel a pattern of its own", string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text)), StringComparison.Ordinal);
    }

    private static (FullSizePattern Pattern, DrawnLeaf Leaf) Panel(ArchFamily family, IReadOnlyList<HardPattern> rack, bool isAsked)
    {
        var leaf = PatternSamples.Sample.First(each => each.Pattern.Part.TopArch?.Family == family).Leaf;
        var panel = leaf.Detail.Curves.Panels.First(each => each.Panel.TopArch?.Family == family);
        var figure = new PatternFigure(PatternSamples.Revision, new(LengthUnit.Inch, 32))
        {
            OnePattern = new(leaf.Detail.Cutters!.GrooveDepth.Value, Step, Least, rack, isAsked),
        };
        return (Assert.IsType<PatternResult.Drawn>(figure.Of(panel)[0]).Pattern, leaf);
    }
}
