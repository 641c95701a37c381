using Stilewright.Curves;
using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Tests.Curves;

/// <summary>Set-down of one pattern for rail and panel, held against straight lines between close places of the curve.</summary>
public class SetDownTests
{
    [Theory]
    [InlineData(ArchFamily.Eyebrow, 1.5, 0)]
    [InlineData(ArchFamily.Eyebrow, 4, 0)]
    [InlineData(ArchFamily.Cathedral, 1.75, 0.75)]
    [InlineData(ArchFamily.Pointed, 2.5, 0)]
    [InlineData(ArchFamily.HalfRound, 5.5, 0)]
    [InlineData(ArchFamily.Stepped, 1, 1.5)]
    public void Least_and_greatest_engagement_are_those_of_close_places(ArchFamily family, double rise, double shoulder)
    {
        var arch = Shapes.Drawn(ArchFamilies.Draw(family, new(11, rise, shoulder)));
        var (d, clearance, step) = (Inch(7, 16), Inch(1, 16), Inch(1, 32));
        var depth = SetDown.Settable(arch, d, clearance, step);
        Assert.True(depth.IsPositive && depth < d);
        Assert.Equal(depth, depth.OnStep(step, StepDirection.Nearest));
        var lift = CurveLength.Inches(d - depth);
        var found = SetDown.Of(arch, lift, 0.4375, 0.0625);

        var dense = arch.Chain.Flattened(1e-6);
        var sampled = Between(arch.Chain.Flattened(1e-4)).Select(place => Distance(dense, place + new CurvePoint(0, lift))).ToList();
        // Between its places, 32 to a segment, the engagement moves by no more.
        Assert.Equal(sampled.Min(), found.Least, 3);
        Assert.Equal(sampled.Max(), found.Greatest, 3);
        Assert.False(found.Bottoms);
    }

    // A published trace offset of 3/16 in for a groove of 3/8 in (a woodworking magazine on arched raised panels) is a set-down of 3/16.
    [Fact]
    public void A_published_trace_offset_is_a_set_down_of_what_is_left_of_the_groove()
    {
        var arch = Shapes.Drawn(ArchFamilies.Eyebrow(new(12, 1.5)));
        Assert.Equal(0.1875, SetDown.Of(arch, 0.1875, 0.375, 0.09375).Inches, 12);
        // Its lift is the deepest the panel stands: at the crown, not at one of the ends.
        Assert.Equal(0, SetDown.Of(arch, 0.1875, 0.375, 0.09375).GreatestPlace.X, 9);
    }

    // On a coarse step the nearest may be nothing, or all of the groove: neither can be set.
    [Fact]
    public void A_set_down_is_never_nothing_and_never_the_whole_groove()
    {
        var arch = Shapes.Drawn(ArchFamilies.Eyebrow(new(12, 1.5)));
        Assert.Equal(Inch(1, 4), SetDown.Settable(arch, Inch(7, 16), Inch(1, 16), Inch(1, 4)));
        Assert.Equal(Inch(1, 4), SetDown.Settable(arch, Inch(1, 2), Inch(15, 32), Inch(1, 4)));

        // By hand: at its ends the arc leans 11.25 in 12.75, so that lift × (1 + 0.882) / 2 = 3/8; 7/16 less 0.398 is nearest to 1/32.
        Assert.Equal(Inch(1, 32), SetDown.Settable(arch, Inch(7, 16), Inch(1, 16), Inch(1, 32)));
    }

    private static Length Inch(int over, int under) => Length.FromInches(new Fractions.Fraction(over, under));

    private static IEnumerable<CurvePoint> Between(IReadOnlyList<CurvePoint> places)
    {
        for (var i = 0; i + 1 < places.Count; i++)
        {
            for (var k = 0; k < 16; k++)
                yield return places[i] + ((places[i + 1] - places[i]) * (k / 16.0));
        }

        yield return places[^1];
    }

    private static double Distance(IReadOnlyList<CurvePoint> line, CurvePoint place)
    {
        var least = double.PositiveInfinity;
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var step = line[i + 1] - line[i];
            var along = Math.Clamp((place - line[i]).Dot(step) / step.Dot(step), 0, 1);
            least = Math.Min(least, place.DistanceTo(line[i] + (step * along)));
        }

        return least;
    }
}
