using CsCheck;
using NetTopologySuite.Geometries;
using Stilewright.Drawing.Scenes;

namespace Stilewright.Drawing.Tests.Scenes;

/// <summary>Hatching against NetTopologySuite, which cuts the same lines its own way.</summary>
public sealed class HatchTests
{
    private const double ToleranceMillimetres = 1e-6;
    private static readonly GeometryFactory Factory = new();

    private static readonly Gen<Outline> Outlines = Gen.Select(Gen.Double[5, 40].Array[3, 12], Gen.Double[0, 6], (radii, turn) =>
        Outline.Through(true, [.. radii.Select((radius, i) =>
        {
            var angle = turn + 2 * Math.PI * i / radii.Length;
            return new PaperPoint(60 + radius * Math.Cos(angle), 50 + radius * Math.Sin(angle));
        })]));

    [Fact]
    public void Lines_fill_the_outline_evenly_and_stay_within_it() =>
        Gen.Select(Outlines, Gen.Double[-180, 180], Gen.Double[0.4, 6]).Sample((outline, angleDegrees, spacing) =>
        {
            var hatch = new Hatch(outline, angleDegrees, spacing);
            var polygon = Polygon(outline.Flattened(0.01));
            var (sine, cosine) = Math.SinCos(angleDegrees * Math.PI / 180);
            var rows = hatch.Lines.ToLookup(line => Math.Round((line.From.X * sine + line.From.Y * cosine) / spacing));
            Assert.All(hatch.Lines, line =>
            {
                foreach (var end in new[] { line.From, line.To })
                {
                    var row = (end.X * sine + end.Y * cosine) / spacing;
                    Assert.Equal(Math.Round(row), row, ToleranceMillimetres);
                }
            });

            foreach (var row in Enumerable.Range(-60, 600 / 2))
            {
                var middle = new PaperPoint(sine, cosine) * (row * spacing);
                var along = new PaperPoint(cosine, -sine) * 500;
                var (from, to) = (middle - along, middle + along);
                var reference = polygon.Intersection(Factory.CreateLineString([new(from.X, from.Y), new(to.X, to.Y)])).Length;
                Assert.Equal(reference, rows[row].Sum(line => line.From.DistanceTo(line.To)), 1e-5);
            }

            var near = polygon.Buffer(ToleranceMillimetres * 10);
            Assert.All(hatch.Lines, line =>
                Assert.True(near.Covers(Factory.CreateLineString([new(line.From.X, line.From.Y), new(line.To.X, line.To.Y)]))));
        }, iter: 60);

    [Fact]
    public void Every_row_that_crosses_the_outline_has_its_line()
    {
        var lines = new Hatch(Outline.Box(new(0, 0.5, 30, 20)), 0, 2).Lines;
        Assert.Equal(Enumerable.Range(1, 10).Select(i => 2.0 * i), lines.Select(line => line.From.Y));
        Assert.All(lines, line => Assert.Equal(30, line.To.X - line.From.X, ToleranceMillimetres));
    }

    private static Polygon Polygon(IReadOnlyList<PaperPoint> corners) =>
        Factory.CreatePolygon([.. corners.Append(corners[0]).Select(corner => new Coordinate(corner.X, corner.Y))]);
}
