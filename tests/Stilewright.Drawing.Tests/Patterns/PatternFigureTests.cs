using System.Globalization;
using System.Xml.Linq;
using Stilewright.Curves;
using Stilewright.Drawing.Patterns;
using Stilewright.Drawing.Scenes;
using Stilewright.Drawing.Tests.Figures;
using Stilewright.Drawing.Tests.Writing;
using Stilewright.Drawing.Writing;
using Stilewright.Projects;

namespace Stilewright.Drawing.Tests.Patterns;

public sealed class PatternFigureTests : IDisposable
{
    private const double DotsPerInch = 300;

    private readonly string folder = Directory.CreateTempSubdirectory("stilewright-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_arched_rail_and_what_lies_under_it_has_a_pattern_that_says_what_it_is()
    {
        Assert.True(PatternSamples.Sample.Count >= 16, $"{PatternSamples.Sample.Count}");
        foreach (var (pattern, drawn) in PatternSamples.Sample)
        {
            var texts = string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
            Assert.Contains(pattern.Part.Label, texts, StringComparison.Ordinal);
            Assert.Contains("show face", texts, StringComparison.Ordinal);
            Assert.Contains(PatternSamples.Revision, texts, StringComparison.Ordinal);
            Assert.Contains("between the crosses", texts, StringComparison.Ordinal);
            Assert.Contains("rise", texts, StringComparison.Ordinal);
            Assert.Contains("With a trammel", texts, StringComparison.Ordinal);
            var whole = new PaperBox(0, 0, pattern.Scene.WidthMillimetres, pattern.Scene.HeightMillimetres);
            Assert.All(Drawn.Texts(pattern.Scene), text => Assert.True(whole.Holds(text.Box), $"{pattern.Scene.Title}: {text.Line.Text}"));

            // The white ground of texts covers neither the curve nor the groove.
            var grounds = pattern.Scene.Drawn.Where(one => one.Node is Shape { Fill: Tone.Paper }).Select(one => ((Shape)one.Node).Outline.Shifted(one.At).Bounds).ToList();
            Assert.Equal(1 + pattern.Trammels.Count, grounds.Count);
            foreach (var line in pattern.Lines.Where(line => line.Name is not "finished rail"))
                Assert.All(line.Chain.Flattened(0.01).Select(pattern.At), point => Assert.DoesNotContain(grounds, ground => ground.Overlaps(new(point.X, point.Y, 0, 0))));

            // The crosses are as far apart as the dimension says, and it says a size of the part.
            Assert.Equal(Scale.FullSize.OnPaper(pattern.Overall), pattern.Crosses.From.DistanceTo(pattern.Crosses.To), 9);
            Assert.Contains(pattern.Overall, new[] { pattern.Part.VisibleBounds.Width, pattern.Part.Outline.Width, pattern.Part.Outline.Height });

            // The wide line is the curve of the leaf.
            var curve = drawn.Detail.Curves.Of(pattern.Part)?.Sight ?? drawn.Detail.Curves.Filling(pattern.Part)!.Edge;
            Assert.Equal(curve.Length, pattern.Lines[0].Chain.Length, 9);
            var wide = Drawn.Lines(pattern.Scene, LineStyle.Visible).Single();
            Assert.All(wide.Flattened(0.001), point => Assert.InRange(PatternSamples.Off(pattern, pattern.Lines[0].Chain, point), 0, 0.0011));
        }
    }

    // A trammel about each centre reaches both places that the centre stands between.
    [Fact]
    public void Radii_of_the_table_reach_from_their_centre_to_the_marks_on_both_sides()
    {
        foreach (var (pattern, _) in PatternSamples.Sample)
        {
            foreach (var (points, _) in pattern.Trammels)
            {
                for (var i = 0; i < points.Count; i++)
                {
                    if (points[i].RadiusInches is not { } radius)
                        continue;
                    Assert.Equal(radius, points[i].Place.DistanceTo(points[i - 1].Place), 9);
                    Assert.Equal(radius, points[i].Place.DistanceTo(points[i + 1].Place), 9);
                }

                Assert.Contains(points, point => point.RadiusInches is not null);
            }
        }
    }

    [Fact]
    public void A_centre_within_reach_is_drawn_with_its_radii_and_of_another_the_distance_is_told()
    {
        var (near, far) = (0, 0);
        foreach (var (pattern, _) in PatternSamples.Printed)
        {
            var texts = string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
            var lines = Drawn.Lines(pattern.Scene, LineStyle.Dimension).ToList();
            foreach (var (points, middles) in pattern.Trammels)
            {
                foreach (var i in Enumerable.Range(0, points.Count).Where(i => points[i].Mark == TrammelMark.Centre))
                {
                    foreach (var middle in middles)
                    {
                        var centre = pattern.At(points[i].Place + new CurvePoint(middle, 0));
                        foreach (var end in new[] { points[i - 1], points[i + 1] })
                        {
                            var from = pattern.At(end.Place + new CurvePoint(middle, 0));
                            var radius = lines.Where(line => line.Segments.Count == 1 && line.Start.DistanceTo(from) < 1e-6).Select(line => line.Segments[0].End)
                                .Where(tip => Math.Abs(tip.DistanceTo(from) + tip.DistanceTo(centre) - from.DistanceTo(centre)) < 1e-6).MinBy(tip => tip.DistanceTo(centre));
                            if (new PaperBox(0, 0, pattern.Scene.WidthMillimetres, pattern.Scene.HeightMillimetres).Holds(new(centre.X, centre.Y, 0, 0)) && radius.DistanceTo(centre) < 1e-6)
                            {
                                near++;
                                continue;
                            }

                            // A short piece that points to it, and the table says where it is.
                            far++;
                            Assert.Equal(12, radius.DistanceTo(from), 6);
                            Assert.Contains("centre, off the pattern:", texts, StringComparison.Ordinal);
                        }
                    }
                }
            }
        }

        Assert.True(near > 20 && far > 10, $"{near}, {far}");
    }

    [Fact]
    public void A_rail_with_several_arches_has_one_table_for_all_that_are_alike()
    {
        var pattern = PatternSamples.Sample.First(each => each.Pattern.Part.Arch?.Repeats == 2).Pattern;
        var (points, middles) = Assert.Single(pattern.Trammels);
        Assert.Equal(3, points.Count);
        Assert.Equal(2, middles.Count);
        Assert.Equal(-middles[0], middles[1], 9);
        // About both middles the points lie on the curve.
        foreach (var middle in middles)
            Assert.All(points.Where(point => point.Mark != TrammelMark.Centre), point => Assert.InRange(pattern.Lines[0].Chain.ClosestTo(point.Place + new CurvePoint(middle, 0)).Distance, 0, 1e-9));
        Assert.Contains("from the middle of each arch", string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_pattern_of_a_tall_panel_ends_below_its_curve_and_says_how_high_the_whole_is()
    {
        var cut = PatternSamples.Printed.Where(each => each.Pattern.CutBelow is not null).ToList();
        Assert.Contains(cut, each => each.Pattern.Part.BottomArch is not null && each.Pattern.IsTurnedOver);
        foreach (var (pattern, drawn) in cut)
        {
            var below = pattern.CutBelow!.Value;
            var panel = drawn.Detail.Curves.Filling(pattern.Part)!;
            var whole = PatternSamples.Sample.Single(each => each.Pattern.Part.Path == pattern.Part.Path).Pattern;
            // The same edge as far as the cut, where both sides are straight; the curve is all there.
            var edge = pattern.Lines[0].Chain;
            Assert.Equal(-CurveLength.Inches(below), edge.Start.Y, 9);
            Assert.Equal(-CurveLength.Inches(below), edge.End.Y, 9);
            Assert.Equal(panel.Edge.Box.Width, Math.Abs(edge.Start.X - edge.End.X), 9);
            if (!pattern.IsTurnedOver)
                Assert.All(edge.Flattened(0.01), place => Assert.InRange(whole.Lines[0].Chain.ClosestTo(place).Distance, 0, 1e-9));
            Assert.Equal(panel.Edge.Segments.OfType<ArcSegment>().Count(arc => arc.PointAt(arc.Length / 2).Y > CurveLength.Inches(panel.Light.Box.Y + panel.Light.Box.Height * new Fractions.Fraction(1, 2)) != pattern.IsTurnedOver),
                edge.Segments.OfType<ArcSegment>().Count());
            var texts = string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
            Assert.Contains($"{drawn.Format.Print(pattern.Part.Outline.Height)} high", texts, StringComparison.Ordinal);
            Assert.Contains($"squared across, {drawn.Format.Print(below)} from the spring line", texts, StringComparison.Ordinal);
            Assert.True(pattern.Scene.HeightMillimetres < whole.Scene.HeightMillimetres);
        }

        // A short one stays whole.
        Assert.Contains(PatternSamples.Printed, each => each.Pattern.Part.TopArch is not null && each.Pattern.CutBelow is null || each.Pattern.Part.Arch is not null);
    }

    [Fact]
    public void A_pattern_for_a_known_printer_is_stretched_and_says_so()
    {
        var pattern = PatternSamples.Rail(ArchFamily.Eyebrow);
        var plain = PatternSheet.Of(pattern.Scene, PrintCorrection.None);
        var corrected = PatternSheet.Of(pattern.Scene, new(1.01, 0.99));
        Assert.Equal(pattern.Scene.WidthMillimetres, plain.WidthMillimetres);
        Assert.Contains("no correction for the printer", string.Join(' ', Drawn.Texts(plain).Select(text => text.Line.Text)), StringComparison.Ordinal);
        Assert.Equal(pattern.Scene.WidthMillimetres * 1.01, corrected.WidthMillimetres, 9);
        Assert.Contains("corrected for the printer by +1.00 % across and −1.00 % along", string.Join(' ', Drawn.Texts(corrected).Select(text => text.Line.Text)), StringComparison.Ordinal);
        var (was, now) = (Drawn.Lines(plain, LineStyle.Visible).Single().Bounds, Drawn.Lines(corrected, LineStyle.Visible).Single().Bounds);
        Assert.Equal((was.Width * 1.01, was.Height * 0.99), (now.Width, now.Height), (one, other) => Math.Abs(one.Item1 - other.Item1) + Math.Abs(one.Item2 - other.Item2) < 1e-4);
    }

    [Fact]
    public void A_pattern_of_a_pair_says_that_it_serves_the_other_leaf_turned_over_and_does()
    {
        var pair = PatternSamples.Sample.Where(each => (each.Pattern.Part.Arch ?? each.Pattern.Part.TopArch)?.OfPair is not null).Select(each => each.Pattern).ToList();
        Assert.Equal(["5·2L·TR", "5·2L·P", "5·2R·TR", "5·2R·P"], pair.Select(pattern => pattern.Part.Label));
        Assert.All(pair, pattern => Assert.Contains("Turned over, it serves the other leaf", Said(pattern), StringComparison.Ordinal));
        foreach (var (left, right) in new[] { (pair[0], pair[2]), (pair[1], pair[3]) })
        {
            foreach (var (one, other) in left.Lines.Zip(right.Lines))
            {
                var mirrored = one.Chain.Mirrored(0);
                Assert.Equal(one.Name, other.Name);
                Assert.Equal(mirrored.Length, other.Chain.Length, 1e-9);
                Assert.All(Enumerable.Range(0, 101), k => Assert.InRange(other.Chain.ClosestTo(mirrored.PointAt(mirrored.Length * k / 100)).Distance, 0, 1e-9));
            }
        }

        Assert.All(PatternSamples.Sample.Where(each => !pair.Contains(each.Pattern)), each => Assert.DoesNotContain("other leaf", Said(each.Pattern), StringComparison.Ordinal));

        static string Said(FullSizePattern pattern) => string.Join(' ', Drawn.Texts(pattern.Scene).Select(text => text.Line.Text));
    }

    // Centre to centre the bearing and the cutter are one axis: the pattern's edge is bearing less cutter inside the wood.
    [Theory]
    [InlineData(ArchFamily.Eyebrow, "1/2", "3/8")]
    [InlineData(ArchFamily.Cathedral, "1/4", "3/8")]
    public void A_guide_for_a_bearing_lies_evenly_beside_the_edge(ArchFamily family, string bearing, string cutter)
    {
        var (_, drawn) = PatternSamples.Sample.First(each => each.Pattern.Part.Arch?.Family == family);
        var guide = new GuideBearing(Examples.In(bearing).Value, Examples.In(cutter).Value);
        var rail = drawn.Detail.Curves.Rails.First(curve => curve.Rail.Arch!.Family == family);
        var pattern = Assert.IsType<PatternResult.Drawn>(new PatternFigure(PatternSamples.Revision, drawn.Format).Of(rail, guide)).Pattern;
        var sight = pattern.Lines.Single(line => line.Name == "sight line").Chain;
        var line = pattern.Lines[0].Chain;
        Assert.Equal("guide line", pattern.Lines[0].Name);
        for (var i = 2; i < 19; i++)
            Assert.Equal(0.125, sight.ClosestTo(line.PointAt(line.Length * i / 20)).Distance, 8);
        Assert.Equal(guide.Inward.IsPositive, line.Box.Top > sight.Box.Top);
    }

    [Fact]
    public void A_bearing_that_cannot_follow_the_curve_is_refused_with_the_radius_that_can()
    {
        var (pattern, drawn) = PatternSamples.Sample.First(each => each.Pattern.Part.Arch?.Family == ArchFamily.Cathedral);
        var rail = drawn.Detail.Curves.Of(pattern.Part)!;
        var refused = Assert.IsType<PatternResult.Refused>(new PatternFigure(PatternSamples.Revision, drawn.Format)
            .Of(rail, new GuideBearing(Examples.In("5").Value, Examples.In("1/2").Value)));
        Assert.Contains("their radii must differ by less than", refused.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Curves_and_crosses_of_the_svg_are_where_they_are_computed()
    {
        foreach (var (pattern, _) in PatternSamples.Sample)
        {
            var svg = XDocument.Parse(SvgWriter.Text(pattern.Scene));
            Assert.Equal(pattern.Scene.WidthMillimetres, double.Parse(svg.Root!.Attribute("width")!.Value[..^2], CultureInfo.InvariantCulture), 0.0001);
            Assert.EndsWith("mm", svg.Root.Attribute("width")!.Value, StringComparison.Ordinal);
            var paths = SvgReading.Paths(svg).ToList();
            var (element, points) = paths.Single(path => path.Element.Attribute("class")?.Value == "visible");
            Assert.All(points, point => Assert.InRange(PatternSamples.Off(pattern, pattern.Lines[0].Chain, point), 0, PatternSamples.HeldMillimetres));

            // Arcs are told by their radii as well.
            var radii = pattern.Lines[0].Chain.Segments.OfType<ArcSegment>().Select(arc => arc.Radius * 25.4).ToList();
            var written = element.Attribute("d")!.Value.Split('A').Skip(1).Select(arc => double.Parse(arc.Split(' ')[0], CultureInfo.InvariantCulture)).ToList();
            Assert.NotEmpty(written);
            Assert.All(written, radius => Assert.Contains(radii, each => Math.Abs(each - radius) < PatternSamples.HeldMillimetres));
            var places = paths.Where(path => path.Element.Parent!.Attribute("class")?.Value == "dimension").SelectMany(path => path.Points).ToList();
            foreach (var cross in new[] { pattern.Crosses.From, pattern.Crosses.To })
                Assert.Contains(places, point => Math.Abs(point.DistanceTo(cross) - 4) < PatternSamples.HeldMillimetres);
        }
    }

    // 300 dots to the inch: the middle of the line, six dots wide, is found within a dot.
    [Theory]
    [InlineData(ArchFamily.Eyebrow)]
    [InlineData(ArchFamily.Cathedral)]
    [InlineData(ArchFamily.HalfRound)]
    [InlineData(ArchFamily.Pointed)]
    public void Printed_curves_lie_where_they_are_computed(ArchFamily family)
    {
        var pattern = PatternSamples.Rail(family);
        var file = Path.Combine(folder, "pattern.pdf");
        File.WriteAllBytes(file, PatternSamples.Pdf([pattern.Scene]));
        Installed.Run(["pdftoppm"], "-gray", "-singlefile", "-r", DotsPerInch.ToString(CultureInfo.InvariantCulture), file, Path.Combine(folder, "pattern"));
        var page = GreyPicture.Read(File.ReadAllBytes(Path.Combine(folder, "pattern.pgm")));
        Assert.Equal(pattern.Scene.WidthMillimetres / 25.4 * DotsPerInch, page.Width, 1.0);

        var chain = pattern.Lines[0].Chain;
        List<double> errors = [];
        for (var i = 0; i < 10; i++)
        {
            var along = chain.Length * (i + 0.37) / 10;
            var (place, normal) = (chain.PointAt(along), chain.DirectionAt(along).TurnedLeft());
            errors.Add(MiddleOfLine(pattern, page, place, normal));
        }

        Assert.All(errors, error => Assert.InRange(error, -1, 1));
    }

    // Along the normal, from the middle out to both sides until it is white; in dots.
    private static double MiddleOfLine(FullSizePattern pattern, GreyPicture page, CurvePoint place, CurvePoint normal)
    {
        const double Step = 0.1;
        return (Edge(1) - Edge(-1)) / 2;

        double Edge(int way)
        {
            var reach = 0.0;
            while (IsDark(reach * way) && reach < 20)
                reach += Step;
            Assert.InRange(reach, 0.5, 19);
            return reach;
        }

        bool IsDark(double dots)
        {
            var at = pattern.At(place + (normal * (dots / DotsPerInch)));
            var (x, y) = ((int)(at.X / 25.4 * DotsPerInch), (int)(at.Y / 25.4 * DotsPerInch));
            return page.Dots[y * page.Width + x] < 128;
        }
    }
}
