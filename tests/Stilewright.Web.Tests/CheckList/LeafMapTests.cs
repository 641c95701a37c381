using Stilewright.Drawing.Scenes;
using Stilewright.Web.Features.CheckList;
using Stilewright.Web.Tests.Running;

namespace Stilewright.Web.Tests.CheckList;

public sealed class LeafMapTests
{
    private static List<string> Drawn(string width, string height)
    {
        var course = Courses.Measured(width, height);
        var leaf = Doors.Breakdown.Of(course, Shop.ShippedStandards.Inch).Projects[0].Fronts.First().Leaves[0];
        var scene = LeafMap.Of(leaf, new Dictionary<string, PartMark> { [leaf.Parts[0].Path] = PartMark.Wrong })!;
        return [$"{scene.WidthMillimetres} {scene.HeightMillimetres}", .. scene.Drawn.Select(each => each.Node switch
        {
            Shape shape => $"{shape.Line} {shape.Outline.Bounds}",
            Lettering letters => $"{letters.At} {letters.Line.Text}",
            var other => throw new InvalidOperationException(other.GetType().Name),
        })];
    }

    [Fact]
    public void Leaves_of_any_size_have_one_map_so_that_no_size_can_be_taken_from_it()
    {
        var one = Drawn("12 3/16", "40");
        Assert.Equal(one, Drawn("24", "18"));
        Assert.Contains(one, line => line.EndsWith(" TR", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_part_of_the_sample_has_its_own_place()
    {
        await using var server = await TestServer.OpenAsync();
        var leaves = (await server.SampleAsync()).Projects.SelectMany(project => project.Worked.Fronts).SelectMany(front => front.Leaves).Where(leaf => leaf.Parts.Count > 0).ToList();
        Assert.True(leaves.Count > 10);
        foreach (var leaf in leaves)
        {
            var scene = LeafMap.Of(leaf, new Dictionary<string, PartMark>())!;
            var groups = ((SceneGroup)Assert.Single(scene.Nodes)).Children.Cast<SceneGroup>().ToList();
            Assert.Equal(leaf.Parts.Select(part => part.Path).Order(), groups.Select(group => group.Path!).Order());
            var boxes = groups.Select(group => ((Shape)group.Children[0]).Outline.Bounds).ToList();
            Assert.All(boxes, box => Assert.True(box.Width > 10 && box.Height > 10, $"{leaf.Label}: {box}"));
        }
    }
}
