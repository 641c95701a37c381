using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;

namespace Stilewright.Drawing.Tests.Writing;

/// <summary>Scenes made by chance: the same seed gives the same scene. Every kind of node occurs; all texts lie on the sheet,
/// since a text that lies wholly beside its page is not written.</summary>
internal sealed class RandomScene
{
    private static readonly string[] Texts =
    [
        "12 3/16", "Rail 127 31/32 in", "≈ 309.6 mm", "a & b < c > \"d\"", "the hinge’s 1/2 × 3/4", "  spaces  kept  ", "Éclair, Maß",
        "7/8", "1/2/3", "]]> <!-- -->",
    ];

    private readonly Random random;

    private RandomScene(int seed) => random = new(seed);

    public static Scene Of(int seed)
    {
        var made = new RandomScene(seed);
        return new(
            $"Bench {seed} & \"more\"", "What is < seen >", made.Measure(270, 300), made.Measure(270, 300),
            [.. made.Nodes(depth: 0, path: "b")])
        {
            Scale = Scale.FullSize,
        };
    }

    private IEnumerable<SceneNode> Nodes(int depth, string path)
    {
        var count = random.Next(1, 8);
        for (var i = 0; i < count; i++)
            yield return Node(depth, $"{path}/part.{i % 5}");
    }

    private SceneNode Node(int depth, string path) => random.Next(depth < 4 ? 7 : 5) switch
    {
        0 => new Shape(Curve(), Line(), Tone()),
        1 => new Hatch(Outline.Box(new(Measure(0, 50), Measure(0, 50), Measure(0.5, 30), Measure(0.5, 30))), Measure(-180, 180), Measure(0.5, 4)),
        2 => new Lettering(Point(), Typesetter.Set(Text(), Style()), random.Next(3) > 0),
        3 => Dimension(path),
        4 => new CellGrid(new(Measure(0, 50), Measure(0, 50), Measure(2, 30), Measure(2, 30)),
            [.. Enumerable.Range(0, random.Next(1, 9)).Select(_ => (IReadOnlyList<bool>)[.. Enumerable.Range(0, 8).Select(_ => random.Next(2) == 0)])]),
        _ => new SceneGroup(random.Next(4) == 0 ? null : path, random.Next(2) == 0 ? null : Text(), [.. Nodes(depth + 1, path)])
        {
            At = random.Next(3) == 0 ? default : new(Measure(-9, 9), Measure(-9, 9)),
        },
    };

    private DimensionMark Dimension(string path)
    {
        var (from, to) = (Point(), Point());
        return new(
            Length.FromMillimetres(10), Scale.FullSize, from, to, [Outline.Line(from, to), Outline.Line(from, Point())],
            new(Point(), Typesetter.Set(Text(), TextStyle.Figure), random.Next(2) == 0))
        {
            Path = random.Next(2) == 0 ? null : path,
        };
    }

    private Outline Curve()
    {
        var at = Point();
        var start = at;
        List<Segment> segments = [];
        var count = random.Next(1, 5);
        for (var i = 0; i < count; i++)
        {
            Segment segment = random.Next(3) switch
            {
                0 => new LineTo(Point()),
                1 => Arc(at),
                _ => new BezierTo(Point(), Point(), Point()),
            };
            segments.Add(segment);
            at = segment.End;
        }

        return new(start, segments, random.Next(2) == 0);
    }

    private ArcTo Arc(PaperPoint from)
    {
        var (radius, start, end) = (Measure(0.5, 40), Measure(0, 6), Measure(0, 6));
        var centre = from - new PaperPoint(Math.Cos(start), Math.Sin(start)) * radius;
        return new(centre + new PaperPoint(Math.Cos(end + 0.1), Math.Sin(end + 0.1)) * radius, centre, random.Next(2) == 0);
    }

    private LineStyle? Line() => random.Next(5) == 0 ? null : random.GetItems(Enum.GetValues<LineStyle>(), 1)[0];

    private Tone Tone() => random.GetItems(Enum.GetValues<Tone>(), 1)[0];

    private TextStyle Style() => random.GetItems(
        [TextStyle.Small, TextStyle.Body, TextStyle.Figure, TextStyle.Heading, TextStyle.Title, TextStyle.Body.Bold], 1)[0];

    private string Text() => random.GetItems(Texts, 1)[0];

    private PaperPoint Point() => new(Measure(90, 140), Measure(90, 140));

    private double Measure(double from, double to) => from + random.NextDouble() * (to - from);
}
