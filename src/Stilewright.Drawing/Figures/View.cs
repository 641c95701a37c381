using Stilewright.Curves;
using Stilewright.Doors;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Drawing.Figures;

/// <summary>Turns places on a face, Y upwards, into places on paper at a scale, Y downwards.</summary>
/// <param name="Left">What lies at X = 0 on paper.</param>
/// <param name="Top">What lies at Y = 0 on paper.</param>
internal sealed record View(Scale Scale, Length Left, Length Top)
{
    public double X(Length x) => Scale.OnPaper(x - Left);
    public double Y(Length y) => Scale.OnPaper(Top - y);
    public PaperPoint At(Point point) => new(X(point.X), Y(point.Y));
    public PaperPoint At(CurvePoint point) => new(
        Scale.InchesOnPaper(point.X - CurveLength.Inches(Left)), Scale.InchesOnPaper(CurveLength.Inches(Top) - point.Y));
    public PaperBox Box(Rectangle place) => new(X(place.X), Y(place.Top), Scale.OnPaper(place.Width), Scale.OnPaper(place.Height));
    public Outline Polygon(IEnumerable<Point> corners) => Outline.Through(true, [.. corners.Select(At)]);

    /// <summary>Dashed lines from the corners away from the hinges to the middle of the hinge edge; none where there are no hinges.</summary>
    public static IEnumerable<SceneNode> Hand(PaperBox leaf, HingeSide hinge)
    {
        PaperPoint[] points = hinge switch
        {
            HingeSide.Left => [new(leaf.Right, leaf.Top), new(leaf.Left, leaf.Centre.Y), new(leaf.Right, leaf.Bottom)],
            HingeSide.Right => [new(leaf.Left, leaf.Top), new(leaf.Right, leaf.Centre.Y), new(leaf.Left, leaf.Bottom)],
            HingeSide.Top => [new(leaf.Left, leaf.Bottom), new(leaf.Centre.X, leaf.Top), new(leaf.Right, leaf.Bottom)],
            HingeSide.Bottom => [new(leaf.Left, leaf.Top), new(leaf.Centre.X, leaf.Bottom), new(leaf.Right, leaf.Top)],
            _ => [],
        };
        // From the apex outwards on both lines, so that the dashes meet there.
        return points.Length == 0 ? []
            : [new Shape(Outline.Line(points[1], points[0]), LineStyle.Hand), new Shape(Outline.Line(points[1], points[2]), LineStyle.Hand)];
    }
}
