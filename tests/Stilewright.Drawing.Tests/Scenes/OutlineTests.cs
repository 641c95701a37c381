using CsCheck;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Tests.Scenes;

public sealed class OutlineTests
{
    private const double ToleranceMillimetres = 1e-5 * 25.4;

    private static readonly Gen<Outline> Arcs = Gen.Select(Gen.Double[0.5, 300], Gen.Double[-3.1, 3.1], Gen.Double[0.05, 6.2], Gen.Bool, (radius, start, turn, isClockwise) =>
    {
        var centre = new PaperPoint(100, 80);
        PaperPoint At(double angle) => centre + new PaperPoint(Math.Cos(angle), Math.Sin(angle)) * radius;
        return new Outline(At(start), [new ArcTo(At(start + (isClockwise ? turn : -turn)), centre, isClockwise)], false);
    });

    [Fact]
    public void Beziers_of_an_arc_stay_on_its_circle() => Arcs.Sample(outline =>
    {
        var arc = (ArcTo)outline.Segments[0];
        var radius = outline.Start.DistanceTo(arc.Centre);
        var from = outline.Start;
        foreach (var curve in outline.WithArcsAsBeziers().Segments.Cast<BezierTo>())
        {
            for (var i = 0; i <= 20; i++)
            {
                var (t, s) = (i / 20.0, 1 - i / 20.0);
                var point = from * (s * s * s) + curve.FirstControl * (3 * s * s * t) + curve.SecondControl * (3 * s * t * t) + curve.End * (t * t * t);
                Assert.Equal(radius, point.DistanceTo(arc.Centre), ToleranceMillimetres);
            }

            from = curve.End;
        }

        Assert.Equal(arc.End, from);
    });

    [Fact]
    public void Short_arcs_are_the_same_arc_in_quarters_at_most() => Arcs.Sample(outline =>
    {
        var whole = outline.Bounds;
        var split = outline.WithShortArcs();
        var arc = (ArcTo)outline.Segments[0];
        var radius = outline.Start.DistanceTo(arc.Centre);
        var from = outline.Start;
        foreach (var piece in split.Segments.Cast<ArcTo>())
        {
            Assert.Equal(arc.Centre, piece.Centre);
            Assert.Equal(radius, piece.End.DistanceTo(piece.Centre), 1e-9);
            Assert.InRange(from.DistanceTo(piece.End), 0, radius * Math.Sqrt(2) + 1e-9);
            from = piece.End;
        }

        Assert.Equal(arc.End, from);
        Assert.True(split.Bounds.Holds(whole, 1e-6) && whole.Holds(split.Bounds, 1e-6));
    });
}
