using CsCheck;
using Fractions;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

/// <summary>Frames and runs as they are drawn: figures by hand, and what must hold of every one.</summary>
public class FrameFigureTests
{
    private static readonly Gen<Breakdown> Breakdowns = Gen.OneOf(
        Gen.Select(Gen.Int, Gen.Int[2, 4], Random),
        Gen.Int[0, 9999].Array[240].Select(choices => new CourseMaker(choices).Make()).Select(made => Breakdown.Of(made.Item1, made.Item2)));

    private static Breakdown Random(int seed, int size)
    {
        var course = RandomCourse.Of(seed, size);
        return Breakdown.Of(course, ShippedStandards.For(course.Unit));
    }

    private static void Hold(Action<Breakdown> property) => Breakdowns.Sample(property, iter: 150);

    private static IEnumerable<FaceBreakdown> Framed(Breakdown breakdown) =>
        breakdown.Projects.SelectMany(project => project.Faces).Where(face => face.Frame is not null);

    private static Rectangle Box(decimal x, decimal y, decimal width, decimal height) => new(Exactly(x), Exactly(y), Exactly(width), Exactly(height));

    private static Length Exactly(decimal inches) => Length.FromInches(Fraction.FromDecimal(inches));

    // Common practice, no source. Left: 36 × 30 with a 2 in wall stile; inside it x runs from 2 to 34 1/2 and y from 0 to 28.
    private static Breakdown TwoFaces()
    {
        var overOpen = new Space(Rows: new(
            [new(In("6"), Hole(Single() with { Edges = new(Right: new ShareMember()) }, "upper")), new()], In("1"), []));
        var left = new FaceLayout(In("36"), In("30"),
            new(In("2"), OuterEdge.Wall, Below: In("4"), Scribe: In("1/4"), ToeNotch: In("3 1/2")), new(In("1 1/2"), Above: In("3"), Scribe: In("0")),
            In("2"), In("0"), new(Columns: new([new(In("12"), Hole(Single(), "door") with { Bead = In("1/4") }), overOpen], In("1 1/2"), [])));
        var right = Layout("18", "30", new(Opening: Hole(Single() with { Edges = new(Left: new ShareMember()) }, "beside"))) with { LeftStile = new(In("1 1/2"), Scribe: In("1/2")) };
        var course = Faces(Set((Settings.Overlay, "1/2")), Face("left", left), Face("right", right), Face("measured", null, Opening("15", "20", Single(), "alone")));
        return Break(course with
        {
            Projects = [course.Projects[0] with
            {
                Runs =
                [
                    new("run", [new RunFace("left"), new RunFiller(In("3/4")), new RunFace("right")]),
                    new("unknown", [new RunFace("left"), new RunFace("measured")]),
                ],
            }],
        });
    }

    [Fact]
    public void Common_practice_no_source_members_and_openings_of_a_frame()
    {
        var frame = TwoFaces().Projects[0].Faces.First().Frame!;
        Assert.Equal((36.Inches, 30.Inches), (frame.Width, frame.Height));
        Assert.Equal<FrameMember>(
        [
            new("left stile", FrameMemberKind.OuterStile, Box(0, -4, 2, 34), Exactly(0.25m), Exactly(3.5m)),
            new("right stile", FrameMemberKind.OuterStile, Box(34.5m, 0, 1.5m, 33)),
            new("top rail", FrameMemberKind.OuterRail, Box(2, 28, 32.5m, 2)),
            new("mullion", FrameMemberKind.Mullion, Box(14, 0, 1.5m, 28)),
            new("rail between", FrameMemberKind.RailBetween, Box(15.5m, 21, 19, 1)),
        ], frame.Members);
        Assert.Equal<FrameOpening>(
        [
            new("door", Box(2, 0, 12, 28), Box(2.25m, 0.25m, 11.5m, 27.5m)),
            new("upper", Box(15.5m, 22, 19, 6), Box(15.5m, 22, 19, 6)),
            new(null, Box(15.5m, 0, 19, 21), Box(15.5m, 0, 19, 21)),
        ], frame.Openings);
    }

    [Fact]
    public void Common_practice_no_source_a_run_stands_edge_to_edge_after_scribing()
    {
        var project = TwoFaces().Projects[0];
        // The run with a face that is only measured is left out.
        var run = Assert.Single(project.Runs);
        // 36 − 1/4, 3/4, and 18 − 1/2.
        Assert.Equal(54.Inches, run.Width);
        Assert.Equal([(Exactly(0), Exactly(35.75m)), (Exactly(35.75m), Exactly(0.75m)), (Exactly(36.5m), Exactly(17.5m))], run.Items.Select(item => (item.X, item.Width)));
        var faces = run.Items.OfType<RunFigureFace>().ToList();
        Assert.Equal([Exactly(-0.25m), Exactly(36)], faces.Select(face => face.FrameX));
        // They share 1 1/2 + 3/4 + 1 = 3 1/4; less 1/8, halved, each laps 1 9/16: 34 1/2 + 1 9/16 − 1/4 and 36 + 1 1/2 − 1 9/16.
        var (one, other) = (faces[0].Face.Fronts.Single(front => front.Path == "upper"), faces[1].Face.Fronts.Single());
        Assert.Equal(Exactly(35.8125m), faces[0].FrameX + one.Place!.Value.Right);
        Assert.Equal(Exactly(35.9375m), faces[1].FrameX + other.Place!.Value.X);
    }

    [Fact]
    public void A_layout_without_room_has_no_frame()
    {
        var full = new Space(Columns: new([new(In("10"), Hole(Single(), "one")), new(In("10"), Hole(Single(), "two"))], In("1 1/2"), []));
        var beaded = new Space(Opening: Hole(Single(), "three") with { Bead = In("2") });
        var breakdown = Break(Faces(SettingValues.None, Face("no-space", Layout("24", "30", full)), Face("no-clear", Layout("24", "6", beaded)), Face("no-inside", Layout("24", "3", beaded))));
        Assert.All(breakdown.Projects[0].Faces, face => Assert.Null(face.Frame));
        Assert.Equal(3, breakdown.Findings.Count(finding => finding.Rule == Stilewright.Findings.Rules.NoRoom));
    }

    // The properties below say nothing about what is never made.
    [Fact]
    public void Random_courses_have_every_kind_of_member_and_runs_with_fillers()
    {
        var breakdowns = Enumerable.Range(0, 80).Select(seed => Random(seed, 4)).ToList();
        var frames = breakdowns.SelectMany(Framed).Select(face => face.Frame!).ToList();
        var members = frames.SelectMany(frame => frame.Members).ToList();
        Assert.Equal(Enum.GetValues<FrameMemberKind>(), members.Select(member => member.Kind).Distinct().Order());
        Assert.Contains(members, member => member.Place.Y.IsNegative);
        Assert.Contains(members, member => member.Scribe is not null);
        Assert.Contains(members, member => member.ToeNotch is not null);
        Assert.Contains(frames.SelectMany(frame => frame.Openings), opening => opening.Path is null);
        Assert.Contains(frames.SelectMany(frame => frame.Openings), opening => opening.Clear != opening.Outline);
        Assert.Contains(breakdowns.SelectMany(breakdown => breakdown.Projects).SelectMany(project => project.Runs), run => run.Items.Any(item => item is RunFigureFiller));
    }

    [Fact]
    public void Members_and_openings_tile_the_frame() => Hold(breakdown =>
    {
        foreach (var frame in Framed(breakdown).Select(face => face.Frame!))
        {
            var tiles = frame.Members.Select(member => Within(frame, member.Place)).Concat(frame.Openings.Select(opening => opening.Outline)).ToList();
            Assert.All(tiles, tile => Assert.False(tile.X.IsNegative || tile.Y.IsNegative || tile.Right > frame.Width || tile.Top > frame.Height));
            for (var i = 0; i < tiles.Count; i++)
            {
                for (var j = 0; j < i; j++)
                    Assert.False(Overlap(tiles[i], tiles[j]), $"{tiles[i]} and {tiles[j]}");
            }

            Assert.Equal(frame.Width.Inches * frame.Height.Inches, tiles.Aggregate(Fraction.Zero, (sum, tile) => sum + (tile.Width.Inches * tile.Height.Inches)));
        }

        // Stiles reach above and below the frame; only what lies in it is a tile.
        static Rectangle Within(FrameFigure frame, Rectangle place)
        {
            var bottom = Length.Greatest(default, place.Y);
            return place with { Y = bottom, Height = Length.Least(frame.Height, place.Top) - bottom };
        }

        static bool Overlap(Rectangle one, Rectangle other) =>
            one.X < other.Right && other.X < one.Right && one.Y < other.Top && other.Y < one.Top;
    });

    [Fact]
    public void Fronts_lie_over_their_openings_by_the_overlays_told() => Hold(breakdown =>
    {
        foreach (var face in Framed(breakdown))
        {
            var openings = face.Frame!.Openings.Where(opening => opening.Path is not null).ToDictionary(opening => opening.Path!);
            Assert.Equal(openings.Keys, face.Fronts.Take(openings.Count).Select(front => front.Path));
            foreach (var front in face.Fronts.Where(front => front is { Place: not null, Leaves.Count: > 0 }))
            {
                var clear = openings[front.Path].Clear;
                var used = new Rectangle(clear.X + front.Figure!.Offset.X, clear.Y + front.Figure.Offset.Y, front.Figure.Width.Length, front.Figure.Height.Length);
                if (front.Figure.Reason == "by the layout")
                    Assert.Equal(clear, used);
                var reach = front.Edges.ToDictionary(edge => edge.Side, edge => edge.Reach);
                Assert.Equal(new(used.X - reach[Side.Left], used.Y - reach[Side.Bottom],
                    used.Width + reach[Side.Left] + reach[Side.Right], used.Height + reach[Side.Bottom] + reach[Side.Top]), front.Place!.Value);
            }
        }
    });

    [Fact]
    public void Items_of_a_run_adjoin_and_leave_the_reveals_told() => Gen.Int.Select(seed => Random(seed, 4)).Sample(breakdown =>
    {
        foreach (var run in breakdown.Projects.SelectMany(project => project.Runs))
        {
            Assert.Equal(run.Run.Items.Count, run.Items.Count);
            Assert.Equal(run.Items.Select(item => item.X).Append(run.Width), run.Items.Select(item => item.X + item.Width).Prepend(default));
            // A measured opening on a face with a layout can be the neighbour across a run too, but it has no place. An opening of the layout
            // that the tape found larger or smaller stands on the frame as the layout has it, while the frame seen is told by the members.
            var placed = run.Items.OfType<RunFigureFace>()
                .SelectMany(face => face.Face.Fronts.Where(front => front is { Place: not null, Leaves.Count: > 0, Figure.Reason: "by the layout" })
                    .Select(front => (Front: front, Place: front.Place!.Value.Shifted(face.FrameX, default))))
                .ToDictionary(each => each.Front.Path);
            foreach (var (front, place) in placed.Values)
            {
                var edge = front.Edges.Single(edge => edge.Side == Side.Right);
                if (edge.Neighbours.Count == 1 && placed.TryGetValue(edge.Neighbours[0], out var next))
                    Assert.Equal(edge.Reveal, next.Place.X - place.Right);
            }
        }
    }, iter: 150);
}
