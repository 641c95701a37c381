using Stilewright.Documents;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Drawing.Tests.Figures;

/// <summary>A leaf with all that its figures take.</summary>
internal sealed record DrawnLeaf(SizedLeaf Leaf, LeafDetail Detail, LengthFormat Format)
{
    public IEnumerable<Scale> Scales => Scale.Of(Format.Unit).Skip(2).Take(5);
}

internal static class Drawn
{
    /// <summary>The leaves of a course made by chance.</summary>
    public static IEnumerable<DrawnLeaf> Leaves(int seed)
    {
        var course = RandomCourse.Of(seed);
        return Leaves(course, ShippedStandards.For(course.Unit));
    }

    public static IEnumerable<DrawnLeaf> Leaves(Course course, HouseStandard standard) =>
        from project in Breakdown.Of(course, standard).Projects
        from front in project.Fronts
        from leaf in front.Leaves
        select new DrawnLeaf(leaf, LeafDetail.Of(course, project, leaf), new(project.Project.Unit ?? course.Unit, project.Standard.Format.FinestDenominator));

    /// <summary>The leaves of the sample course: every construction, mount and kind of panel.</summary>
    public static IEnumerable<DrawnLeaf> Sample() => Leaves(SampleCourse(), ShippedStandards.Inch);

    public static Course SampleCourse()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Stilewright.slnx")))
            folder = folder.Parent!;
        var read = Assert.IsType<DocumentResult<Course>.Read>(
            DocumentReader.ReadCourse(File.ReadAllBytes(Path.Combine(folder.FullName, "samples", "evening-course.json"))));
        return read.Document;
    }

    /// <summary>Every group with the place of its own origin on the scene, outer ones first.</summary>
    public static IEnumerable<(SceneGroup Group, PaperPoint At)> Groups(Scene scene)
    {
        return Walk(scene.Nodes, default);

        static IEnumerable<(SceneGroup, PaperPoint)> Walk(IEnumerable<SceneNode> nodes, PaperPoint at) =>
            nodes.OfType<SceneGroup>().SelectMany(group => Walk(group.Children, at + group.At).Prepend((group, at + group.At)));
    }

    public static IEnumerable<Lettering> Texts(Scene scene) => scene.Drawn.Select(one => one.Node switch
    {
        Lettering text => text with { At = text.At + one.At },
        DimensionMark mark => mark.Text with { At = mark.Text.At + one.At },
        _ => null,
    }).OfType<Lettering>();

    public static IEnumerable<DimensionMark> Marks(Scene scene) => scene.Drawn.Select(one => one.Node).OfType<DimensionMark>();

    /// <summary>Outlines of a style, in millimetres on the scene.</summary>
    public static IEnumerable<Outline> Lines(Scene scene, LineStyle style) => scene.Drawn
        .Where(one => one.Node is Shape { Line: { } line } && line == style)
        .Select(one => ((Shape)one.Node).Outline.Shifted(one.At));

    /// <summary>Fails where texts overlap or anything leaves the scene.</summary>
    public static void IsClean(Scene scene)
    {
        const double Shrunk = 0.05;
        var sheet = new PaperBox(0, 0, scene.WidthMillimetres, scene.HeightMillimetres);
        Lettering[] texts = [.. Texts(scene)];
        for (var i = 0; i < texts.Length; i++)
        {
            var box = texts[i].Box;
            Assert.True(sheet.Holds(box), $"{scene.Title} at {scene.Scale}: '{texts[i].Line.Text}' leaves the scene.");
            Assert.True(texts[i].Line.Runs.All(run => run.Style.SizeMillimetres > 2.2 * 0.6), $"{scene.Title}: '{texts[i].Line.Text}' is too small.");
            for (var j = i + 1; j < texts.Length; j++)
            {
                Assert.False(box.Grown(-Shrunk).Overlaps(texts[j].Box.Grown(-Shrunk)),
                    $"{scene.Title} at {scene.Scale}: '{texts[i].Line.Text}' and '{texts[j].Line.Text}' overlap.");
            }
        }

        foreach (var (node, at) in scene.Drawn)
        {
            IEnumerable<Outline> outlines = node switch
            {
                Shape shape => [shape.Outline],
                DimensionMark mark => mark.Strokes,
                _ => [],
            };
            foreach (var outline in outlines)
                Assert.True(sheet.Holds(outline.Bounds.Shifted(at.X, at.Y)), $"{scene.Title} at {scene.Scale}: a line leaves the scene.");
        }

        foreach (var mark in Marks(scene))
            Assert.Equal(mark.Scale.OnPaper(mark.Value) * mark.Exaggeration, mark.From.DistanceTo(mark.To), 1e-6);
    }
}
