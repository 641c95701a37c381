using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Drawing.Tests.Figures;

public sealed class ElevationTests
{
    private const double Tolerance = 1e-6;
    private const int SeedCount = 20;

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, SeedCount)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Faces_made_by_chance_are_readable_and_true(int seed)
    {
        foreach (var project in Work(seed))
            CheckFaces(project);
    }

    [Fact]
    public void Runs_made_by_chance_are_readable_and_true()
    {
        // About one course in fifteen has a run.
        var projects = Enumerable.Range(1, 200).SelectMany(Work).Where(project => project.Breakdown.Runs.Any()).ToList();
        Assert.True(projects.Count > 8);
        foreach (var project in projects)
            CheckRuns(project);
    }

    [Fact]
    public void Faces_and_runs_of_the_sample_are_readable_and_true()
    {
        var projects = Projects(Drawn.SampleCourse(), ShippedStandards.Inch);
        Assert.Contains(projects, project => project.Breakdown.Runs.Any());
        foreach (var project in projects)
        {
            CheckFaces(project);
            CheckRuns(project);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Openings_that_are_not_measured_are_told_under_the_drawing(bool withAnother)
    {
        var course = Examples.Pair();
        var face = course.Projects[0].Pieces[0].Faces[0];
        var unread = face.Openings[0] with { Id = "unread", Name = "Doors below", Readings = new(HeightRight: face.Openings[0].Readings!.HeightLeft) };
        course = course with { Projects = [course.Projects[0] with { Pieces = [course.Projects[0].Pieces[0] with { Faces = [face with { Openings = withAnother ? [face.Openings[0], unread] : [unread] }] }] }] };
        var scene = FaceElevation.Draw("Face", Breakdown.Of(course, ShippedStandards.Inch).Projects.Single().Faces.Single(), new(8), LengthFormat.InchesTo32, 200);
        Assert.All([scene.Description, string.Join(' ', Drawn.Texts(scene).Select(text => text.Line.Text))],
            text => Assert.Contains($"7·{(withAnother ? 2 : 1)} Doors below: not measured yet, width not read; height at the right 30 1/4.", text, StringComparison.Ordinal));
        Assert.All(Drawn.Texts(scene), text => Assert.True(text.Box is { Left: > -Tolerance, Top: > -Tolerance } box && box.Right < scene.WidthMillimetres + Tolerance && box.Bottom < scene.HeightMillimetres + Tolerance));
        Assert.Equal(withAnother, scene.Description.Contains("Leaves: 7·1L 12 3/16 × 30 1/4", StringComparison.Ordinal));
    }

    [Fact]
    public void Chance_makes_chains_and_leaves_too_small_for_their_labels()
    {
        var all = Enumerable.Range(1, SeedCount).SelectMany(Work).ToList();
        var scenes = all.SelectMany(project => Faces(project.Breakdown).SelectMany(face => Scales(project.Format, scale => Draw(face, scale, project.Format)))).ToList();
        Assert.Contains(scenes, scene => scene.Description.Contains("Too small", StringComparison.Ordinal));
        Assert.True(scenes.Sum(scene => Groups(scene).Sum(group => Marks.ChainsAddUp(Measured(group), ""))) > 40);
    }

    [Fact]
    public void Fronts_of_one_size_have_their_labels_in_one_place()
    {
        var course = Examples.Pair();
        var (project, piece) = (course.Projects[0], course.Projects[0].Pieces[0]);
        var face = piece.Faces[0] with { Openings = [.. piece.Faces[0].Openings, piece.Faces[0].Openings[0] with { Id = "second-hole" }] };
        var work = Projects(course with { Projects = [project with { Pieces = [piece with { Faces = [face] }] }] }, ShippedStandards.Inch).Single();
        var scene = Draw(Faces(work.Breakdown).Single(), new(16), work.Format);
        var leaves = work.Breakdown.Fronts.SelectMany(front => front.Leaves).ToList();
        Assert.Equal(4, leaves.Count);
        var places = leaves.Select(leaf =>
        {
            var (group, at) = Drawn.Groups(scene).Single(one => one.Group.Path == leaf.Path);
            var label = Drawn.Texts(scene).Single(text => text.Line.Text == leaf.Label).Box.Centre;
            return label - (at + ((Shape)group.Children[0]).Outline.Start);
        });
        Assert.All(places.Chunk(2), pair => Assert.Equal(places.First().Y, pair[0].Y, Tolerance));
    }

    private static void CheckFaces(Drawable project)
    {
        foreach (var face in Faces(project.Breakdown))
        {
            foreach (var scene in Scales(project.Format, scale => Draw(face, scale, project.Format)))
                Check(scene, [.. face.Fronts.SelectMany(front => front.Leaves)], project.Format);
        }
    }

    private static void CheckRuns(Drawable project)
    {
        foreach (var run in project.Breakdown.Runs)
        {
            SizedLeaf[] leaves = [.. run.Items.OfType<RunFigureFace>().SelectMany(item => item.Face.Fronts).Where(front => front.Place is not null).SelectMany(front => front.Leaves)];
            foreach (var scene in Scales(project.Format, scale => RunElevation.Draw("Run", run, scale, project.Format)))
            {
                Check(scene, leaves, project.Format);
                Assert.Contains(Drawn.Marks(scene), mark => mark.Value == run.Width);
            }
        }
    }

    private static void Check(Scene scene, SizedLeaf[] leaves, LengthFormat format)
    {
        Drawn.IsClean(scene);
        var where = $"{scene.Title} at {scene.Scale}";
        foreach (var group in Groups(scene))
        {
            var marks = Measured(group);
            if (marks.Length == 0)
                continue;
            var shapes = Shapes(group.Children.Where(node => node is not DimensionMark)).ToList();
            Marks.AreClean(marks, shapes.Aggregate((one, other) => one.With(other)), format, where);
            Marks.ChainsAddUp(marks, where);
        }

        var boxes = Drawn.Groups(scene).Where(one => one.Group.Path is not null).ToLookup(one => one.Group.Path);
        var texts = Drawn.Texts(scene).ToList();
        var hands = Drawn.Lines(scene, LineStyle.Hand).ToList();
        var expected = 0;
        foreach (var leaf in leaves.Where(FrontPainter.IsThere))
        {
            var (group, at) = Assert.Single(boxes[leaf.Path]);
            var box = Assert.IsType<Shape>(group.Children[0]).Outline.Shifted(at).Bounds;
            Assert.Equal(scene.Scale!.Value.OnPaper(leaf.Width.Length), box.Width, Tolerance);
            Assert.Equal(scene.Scale!.Value.OnPaper(leaf.Height.Length), box.Height, Tolerance);
            Assert.True(texts.Any(text => text.Line.Text == leaf.Label && box.Holds(text.Box)) || TooSmall(scene).Contains(leaf.Label),
                $"{where}: leaf {leaf.Label} has no label.");
            PaperPoint? apex = leaf.Hinge switch
            {
                HingeSide.Left => new(box.Left, box.Centre.Y),
                HingeSide.Right => new(box.Right, box.Centre.Y),
                HingeSide.Top => new(box.Centre.X, box.Top),
                HingeSide.Bottom => new(box.Centre.X, box.Bottom),
                _ => null,
            };
            if (apex is not { } hinge)
                continue;
            // Two lines from there to the corners furthest away.
            var own = hands.Where(line => line.Start.DistanceTo(hinge) < Tolerance && box.Holds(line.Bounds)).Select(line => line.Segments[^1].End).ToList();
            PaperPoint[] corners = [box.TopLeft, new(box.Right, box.Top), new(box.Left, box.Bottom), new(box.Right, box.Bottom)];
            Assert.True(own.Count >= 2, $"{where}: leaf {leaf.Label} has no hand.");
            Assert.All(own, end => Assert.Contains(corners, corner => corner.DistanceTo(end) < Tolerance
                && (leaf.Hinge is HingeSide.Left or HingeSide.Right ? Math.Abs(corner.X - hinge.X) : Math.Abs(corner.Y - hinge.Y)) > Tolerance));
            expected += 2;
        }

        Assert.Equal(expected, hands.Count);
        IsNotPaintedOver(scene, where);
    }

    // What is drawn later and filled hides what is beneath.
    private static void IsNotPaintedOver(Scene scene, string where)
    {
        List<Lettering> beneath = [];
        foreach (var (node, at) in scene.Drawn)
        {
            if (node is Lettering text)
                beneath.Add(text with { At = text.At + at });
            else if (node is Shape { Fill: not Tone.None } shape && shape.Outline.Shifted(at).Bounds is var box)
                Assert.All(beneath, each => Assert.False(each.Box.Grown(-0.05).Overlaps(box), $"{where}: '{each.Line.Text}' is painted over."));
        }
    }

    private static string[] TooSmall(Scene scene) =>
        scene.Description.Split("Too small at this scale for their labels: ") is [_, var names] ? names.TrimEnd('.').Split(", ") : [];

    private static IEnumerable<SceneGroup> Groups(Scene scene) => Drawn.Groups(scene).Select(one => one.Group);

    private static DimensionMark[] Measured(SceneGroup group) => [.. group.Children.OfType<DimensionMark>()];

    private static IEnumerable<PaperBox> Shapes(IEnumerable<SceneNode> nodes) => nodes.SelectMany(node => node switch
    {
        SceneGroup group => Shapes(group.Children).Select(box => box.Shifted(group.At.X, group.At.Y)),
        Shape shape => [shape.Outline.Bounds],
        _ => [],
    });

    private static IEnumerable<FaceBreakdown> Faces(ProjectBreakdown project) =>
        project.Faces.Where(face => face.Frame is not null || face.Fronts.Any(front => front.Leaves.Any(FrontPainter.IsThere)));

    private static Scene Draw(FaceBreakdown face, Scale scale, LengthFormat format) =>
        FaceElevation.Draw($"Face {face.Face.Id}", face, scale, format, Paper.Letter.Printed.Width);

    /// <summary>At the largest standard scale that fits Letter paper and the two below it.</summary>
    private static IEnumerable<Scene> Scales(LengthFormat format, Func<Scale, Scene> draw)
    {
        var room = Paper.Letter.Printed;
        var largest = Fit.Largest(format.Unit, room.Width, room.Height, draw).Scene;
        return [largest, .. Scale.Of(format.Unit).SkipWhile(scale => scale != largest.Scale).Skip(1).Take(2).Select(draw)];
    }

    private static List<Drawable> Work(int seed)
    {
        var course = RandomCourse.Of(seed);
        return Projects(course, ShippedStandards.For(course.Unit));
    }

    private static List<Drawable> Projects(Course course, HouseStandard standard) =>
        [.. Breakdown.Of(course, standard).Projects.Select(project => new Drawable(project, new(project.Project.Unit ?? course.Unit, project.Standard.Format.FinestDenominator)))];

    private sealed record Drawable(ProjectBreakdown Breakdown, LengthFormat Format);
}
