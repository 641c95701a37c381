using CsCheck;
using Fractions;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

/// <summary>An opening is measured one reading at a time.</summary>
public class ReadingsTests
{
    private static readonly Gen<Fraction> Off = Gen.Int[-24, 24].Select(off => new Fraction(off, 64));
    private static readonly (Mount Mount, OutOfSquareFit Fit)[] AllFits =
    [
        (Mount.Overlay, OutOfSquareFit.Upright), (Mount.Lipped, OutOfSquareFit.Upright), (Mount.Inset, OutOfSquareFit.Upright), (Mount.Inset, OutOfSquareFit.PlaneToFit),
    ];

    private static readonly Gen<(Mount Mount, OutOfSquareFit Fit)> Fits = Gen.Int[0, AllFits.Length - 1].Select(i => AllFits[i]);

    private static LengthEntry? Entry(Fraction? inches) => inches is { } value ? new($"{value} in", Length.FromInches(value)) : null;

    private static SizedFront Front(Fraction?[] widths, Fraction?[] heights, (Fraction, Fraction)? diagonals, (Mount Mount, OutOfSquareFit Fit) fit) =>
        Break(Course(Design(), SettingValues.None, Hole(Single(mount: fit.Mount)) with
        {
            Readings = new(Entry(widths[0]), Entry(widths[1]), Entry(widths[2]), Entry(heights[0]), Entry(heights[1]), Entry(heights[2]),
                Entry(diagonals?.Item1), Entry(diagonals?.Item2), fit.Fit),
        })).Fronts.Single();

    private static void Matches(ListedReadings expected, SizedFront front)
    {
        var figure = front.Figure!;
        Assert.Equal((expected.Width, expected.Height), (figure.Width.Amount, figure.Height.Amount));
        Assert.Equal((expected.X, expected.Y), (figure.Offset.X.Inches, figure.Offset.Y.Inches));
        Assert.Equal(expected.Lean, figure.Lean?.Amount);
        Assert.Equal(expected.Corners, figure.Corners.Select(corner => (corner.X.Inches, corner.Y.Inches)));
    }

    private static bool IsAround((Mount Mount, OutOfSquareFit Fit) fit) => fit.Mount != Mount.Inset || fit.Fit == OutOfSquareFit.PlaneToFit;

    private static Gen<(Fraction, Fraction)?> Diagonals => Gen.Select(Gen.Bool, Off, Off, (read, one, two) => read ? (25 + one, 25 + two) : ((Fraction, Fraction)?)null);

    // One, two or three in a list meant the top, both ends, or both ends and the middle.
    [Fact]
    public void What_lists_could_say_comes_to_the_same_figure() =>
        Gen.Select(Off.Array[1, 3], Off.Array[1, 3], Diagonals, Fits).Sample((across, up, diagonals, fit) =>
        {
            Fraction[] widths = [.. across.Select(off => 15 + off)], heights = [.. up.Select(off => 20 + off)];
            Matches(ListedReadings.Of(widths, heights, diagonals, IsAround(fit)), Front(Named(widths), Named(heights), diagonals, fit));

            static Fraction?[] Named(Fraction[] listed) => listed.Length switch
            {
                1 => [listed[0], null, null],
                2 => [listed[0], null, listed[1]],
                _ => [.. listed.Cast<Fraction?>()],
            };
        }, iter: 1000);

    // Every choice of places that leaves one of a kind.
    [Fact]
    public void An_end_that_is_not_read_is_the_nearest_reading() =>
        Gen.Select(Off.Array[3], Off.Array[3], Gen.Int[1, 7], Gen.Int[1, 7], Diagonals, Fits).Sample((across, up, wide, high, diagonals, fit) =>
        {
            var (widths, heights) = (Known(15, across, wide), Known(20, up, high));
            Matches(ListedReadings.Of(Listed(widths), Listed(heights), diagonals, IsAround(fit)), Front(widths, heights, diagonals, fit));

            static Fraction?[] Known(int size, Fraction[] offs, int known) =>
                [.. offs.Select((off, i) => (known & (1 << i)) == 0 ? (Fraction?)null : size + off)];

            // Written out: which two readings stand for the ends of each choice.
            static Fraction[] Listed(Fraction?[] read) => read switch
            {
                [{ } top, { } middle, { } bottom] => [top, middle, bottom],
                [{ } top, { } middle, null] => [top, middle],
                [{ } top, null, { } bottom] => [top, bottom],
                [null, { } middle, { } bottom] => [middle, bottom],
                _ => [read.OfType<Fraction>().Single()],
            };
        }, iter: 1000);

    [Fact]
    public void Top_and_middle_make_a_taper_and_no_bow()
    {
        var front = Front([15, new(121, 8), null], [20, null, null], null, (Mount.Overlay, OutOfSquareFit.Upright));
        Assert.Equal(new Fraction(121, 8), front.Figure!.Width.Amount);
        Assert.Equal(new(1, 16), front.Figure.Corners[3].X.Inches);
        Assert.False(HasBow(front));
        Assert.True(HasBow(Front([15, new(121, 8), 15], [20, null, null], null, (Mount.Overlay, OutOfSquareFit.Upright))));

        static bool HasBow(SizedFront front) => front.Figure!.Width.Distinct().OfType<Named>().Any(named => named.Label == "bow");
    }

    public static TheoryData<Readings, string, string, string> BesideALayout => new()
    {
        // The layout leaves 15 × 17.
        { new(WidthTop: In("15 1/16")), "15 1/16", "17", "width as measured, height by the layout; squareness not read" },
        { new(HeightMiddle: In("16 15/16")), "15", "16 15/16", "height as measured, width by the layout; squareness not read" },
        { new(WidthMiddle: In("15 1/16"), HeightRight: In("17 1/16")), "15 1/16", "17 1/16", "as measured; squareness not read" },
        { new(), "15", "17", "by the layout" },
        // Both diagonals alike: square, whatever they are.
        { new(Rising: In("22 11/16"), Falling: In("22 11/16")), "15", "17", "by the layout, and square" },
        // (23² − 22²) / (4 × 15) = 45 / 60 = 3/4.
        { new(Rising: In("23"), Falling: In("22")), "15 3/4", "17", "the smallest upright rectangle round the opening; by the layout" },
    };

    [Theory]
    [MemberData(nameof(BesideALayout))]
    public void Where_nothing_of_a_kind_is_read_the_layout_holds(Readings readings, string width, string height, string reason)
    {
        var figure = Break(Faces(SettingValues.None, Face("face", Layout("18", "20", new(Opening: Hole(Single()) with { Readings = readings }))))).Fronts.Single().Figure!;
        Assert.Equal((In(width).Value, In(height).Value, reason), (figure.Width.Length, figure.Height.Length, figure.Reason));
    }

    [Fact]
    public void Only_the_front_that_is_not_measured_has_no_size()
    {
        var breakdown = Break(Course(Design(), SettingValues.None,
            Hole(Pair(), "one") with { Readings = new(WidthMiddle: In("15"), Rising: In("25")) }, Opening("15", "24", Single(), "two"), Hole(Single(), "three")));
        var (one, two, three) = (breakdown.Fronts.First(), breakdown.Fronts.ElementAt(1), breakdown.Fronts.Last());
        Assert.All([one, three], front => Assert.Equal((null, null, null, 0), (front.Figure, front.Width, front.Height, front.Leaves.Count)));
        Assert.Equal(["width in the middle", "rising diagonal"], one.Unmeasured!.Read.Select(reading => reading.Label));
        Assert.Equal((false, true), (one.Unmeasured.LacksWidth, one.Unmeasured.LacksHeight));
        Assert.Empty(three.Unmeasured!.Read);
        Assert.Equal((true, true), (three.Unmeasured.LacksWidth, three.Unmeasured.LacksHeight));
        Assert.Null(two.Unmeasured);
        Assert.Equal(5, two.Leaves.Single().Parts.Count);
        Assert.Equal(["one", "three"], breakdown.Findings.Where(finding => finding.Severity == Severity.CannotBuild).Select(finding => finding.Place.Path));
    }

    // What a neighbour will lap is known before its opening is measured.
    [Fact]
    public void Frame_seen_beside_an_opening_that_is_not_measured_is_reckoned_with_what_is_asked_for()
    {
        Opening Beside(Readings? readings) => Hole(Single(), "two") with { Readings = readings };
        var one = Opening("15", "20", Single(), "one") with { Beside = new(Right: new NextOpening("two", In("2"))) };
        SizedFront Of(Readings? readings) => Break(Course(Design(), SettingValues.None, one, Beside(readings))).Fronts.First();
        var before = Of(null).Edges.Single(edge => edge.Side == Side.Right);
        Assert.Equal(In("1 1/4").Value, before.Reveal);
        Assert.Equal(before.Reveal, Of(new(In("15"), HeightLeft: In("20"))).Edges.Single(edge => edge.Side == Side.Right).Reveal);
    }

    public static TheoryData<Readings, string, string?> Fields => new()
    {
        { new(), "opening.not-measured", "readings" },
        { new(HeightLeft: In("20")), "opening.not-measured", "readings/widthTop" },
        { new(WidthTop: In("20")), "opening.not-measured", "readings/heightLeft" },
        { new(In("15"), In("15 1/4"), In("15"), In("20")), "opening.bowed", "readings/widthMiddle" },
        { new(In("15"), null, null, In("20"), In("20 1/4"), In("20")), "opening.bowed", "readings/heightMiddle" },
        { new(In("15"), HeightLeft: In("20")), "opening.no-diagonals-overlay", "readings/rising" },
        { new(In("15"), HeightLeft: In("20"), Rising: In("25")), "opening.no-diagonals-overlay", "readings/falling" },
        { new(In("15"), HeightLeft: In("20"), Rising: In("26"), Falling: In("26")), "opening.readings-contradict", "readings" },
    };

    [Theory]
    [MemberData(nameof(Fields))]
    public void A_finding_names_the_field_that_was_or_will_be_entered(Readings readings, string rule, string? field) =>
        Assert.Equal(field, Assert.Single(Break(Course(Design(), SettingValues.None, Hole(Single()) with { Readings = readings })).Findings,
            finding => finding.Rule.Code == rule).Place.Field);

    [Fact]
    public void Every_reading_is_named_by_its_place_and_leads_to_its_field()
    {
        var opening = Hole(Single()) with
        {
            Readings = new(In("15"), In("15 1/4"), In("15 1/8"), In("20"), In("20 1/4"), In("20 1/8"), In("25"), In("25 1/4")),
        };
        var front = Break(Course(Design(), SettingValues.None, opening)).Fronts.Single();
        var givens = new[] { front.Width!, front.Height! }.SelectMany(quantity => quantity.Distinct()).OfType<Given>()
            .Where(given => given.Origin.Path.Contains("readings", StringComparison.Ordinal)).Select(given => (given.Label, given.Key, given.Origin.Path)).Distinct();
        (string, string)[] places =
        [
            ("width at the top", "widthTop"), ("width in the middle", "widthMiddle"), ("width at the bottom", "widthBottom"),
            ("height at the left", "heightLeft"), ("height in the middle", "heightMiddle"), ("height at the right", "heightRight"),
            ("rising diagonal", "rising"), ("falling diagonal", "falling"),
        ];
        Assert.Equal(places.Select(place => (place.Item1, $"opening/{place.Item2}", $"hole/readings/{place.Item2}")).Order(), givens.Order());
    }
}
