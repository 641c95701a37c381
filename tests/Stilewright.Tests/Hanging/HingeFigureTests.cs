using Fractions;
using Stilewright.Doors;
using Stilewright.Hanging;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;
using static Stilewright.Tests.Hanging.Hinged;

namespace Stilewright.Tests.Hanging;

/// <summary>Figures of hinges against published tables: how many, and where the cup lies for an overlay.</summary>
public class HingeFigureTests
{
    private static readonly StandardInForce Inches = new(ShippedStandards.Inch);

    private static HingeKind Cup(string constant, params string[] plates) => new(
        "cup", "Cup", HingeStyle.Cup, Mount.Overlay, Cup: new(Mm("35"), Mm("12.5"), Mm("3"), Mm("8"), Mm(constant), [.. plates.Select(plate => new PlateHeight(Mm(plate)))]));

    private static StandardInForce Bored(string distance) => Inches.With(OriginKind.Course, "course", Set((Settings.BoringDistance, distance)));

    private static Worked Reach(Length length) => new Given("front/overlay", "overlay", length, Origin.Typed);

    // Quick reference of a hinge catalogue: boring distance to the centre of a cup of 35 mm.
    [Theory]
    [InlineData("3", "20.5")]
    [InlineData("4", "21.5")]
    [InlineData("5", "22.5")]
    [InlineData("6", "23.5")]
    [InlineData("7", "24.5")]
    [InlineData("8", "25.5")]
    public void The_centre_of_a_cup_lies_half_a_cup_behind_its_edge(string distance, string centre) =>
        Assert.Equal(Mm(centre).Value, HingeFit.Of(Cup("10"), Reach(15.Millimetres), Bored($"{distance} mm")).CupCentre!.Length);

    // The same reference: overlay = X + boring distance − plate.
    [Theory]
    [InlineData("13", "3", "0", "16")]
    [InlineData("13", "5", "0", "18")]
    [InlineData("13", "5", "2", "16")]
    [InlineData("6.5", "3", null, "9.5")]
    public void Overlay_is_constant_and_distance_less_plate(string constant, string distance, string? plate, string overlay)
    {
        var hinge = plate is null ? Cup(constant) : Cup(constant, plate);
        Assert.Equal(Mm(overlay).Value, HingeFit.Of(hinge, Reach(20.Millimetres), Bored($"{distance} mm")).Comes.Length);
    }

    // A second catalogue, 2023: plate = boring distance + K + gap for inset.
    [Theory]
    [InlineData("1", "3", "6", "2")]
    [InlineData("0.5", "4", "6", "1.5")]
    public void An_inset_gap_is_plate_less_distance_and_constant(string constant, string distance, string plate, string gap) =>
        Assert.Equal(Mm(gap).Value, HingeFit.Of(Cup(constant, plate) with { Mount = Mount.Inset }, Reach(Mm("2").Value), Bored($"{distance} mm")).Comes.Length);

    [Fact]
    public void A_millimetre_of_distance_is_a_millimetre_of_overlay_and_one_of_plate_takes_it_back()
    {
        var at = (string distance, string plate) => HingeFit.Of(Cup("12", plate), Reach(15.Millimetres), Bored($"{distance} mm")).Comes.Length;
        Assert.Equal(at("3", "0") + 1.Millimetres, at("4", "0"));
        Assert.Equal(at("3", "0"), at("4", "1"));
    }

    [Fact]
    public void To_suit_takes_the_plate_and_the_distance_that_come_nearest()
    {
        // 3/8 is 9.525 mm; with the plate of 6 that asks for 9.525 + 6 − 12 = 3.525 mm, which is put on 1/32 in.
        var fit = HingeFit.Of(Cup("12", "0", "2", "4", "6"), Reach(In("3/8").Value), Inches);
        Assert.Equal(6.Millimetres, fit.Plate!.Length);
        Assert.True(Length.Abs(fit.Error) <= In("1/64").Value);
        Assert.Equal(fit.Comes.Length, 12.Millimetres + fit.Distance!.Length - 6.Millimetres);
    }

    // Boring distance, cup and groove of 9.5 mm (follows from the geometry): 47.5 mm at 3, 50.5 mm at 6.
    [Theory]
    [InlineData("3 mm", "47.4 mm", true)]
    [InlineData("3 mm", "47.5 mm", false)]
    [InlineData("6 mm", "50.4 mm", true)]
    [InlineData("6 mm", "50.5 mm", false)]
    public void A_stile_holds_cup_and_groove(string distance, string stile, bool isTooNarrow)
    {
        var standard = Cutters(set => set with { GrooveDepth = In("9.5 mm"), CopeLength = In("9.5 mm") });
        var course = DoorOf("15", "24", Design() with { Stiles = new(In(stile)) }, (Settings.UsualHinge, Compact), (Settings.BoringDistance, distance));
        Assert.Equal(isTooNarrow, Breakdown.Of(course, standard).Findings.Any(finding => finding.Rule == Stilewright.Findings.Rules.HingeStile));
    }

    private static HingeNumber Number(string table, Length height, Fraction? pounds = null, string width = "15") => HingeNumber.Of(
        ShippedStandards.Inch.CountTable(table), Reach(height), Reach(In(width).Value), pounds is { } weight ? Pounds(weight) : null, Inches);

    // A guide to cup-hinge types, chart by height: to 900, 1600, 2000 and 2400 mm.
    [Theory]
    [InlineData(900, 2)]
    [InlineData(901, 3)]
    [InlineData(1600, 3)]
    [InlineData(1601, 4)]
    [InlineData(2000, 4)]
    [InlineData(2001, 5)]
    [InlineData(2400, 5)]
    public void The_chart_numbers_by_height(int millimetres, int hinges)
    {
        var number = Number("counts-chart", millimetres.Millimetres);
        Assert.Equal(hinges, number.Count.Amount);
        Assert.False(number.IsBeyond);
        Assert.Contains("guide to cup-hinge types", number.ByHeight!.Source.Text, StringComparison.Ordinal);
    }

    // Quick reference of a hinge catalogue: under 15 lb 2, 15 to 30 3, 30 to 45 4, 45 to 60 5.
    [Theory]
    [InlineData("29/2", 2)]
    [InlineData("15", 3)]
    [InlineData("59/2", 3)]
    [InlineData("30", 4)]
    [InlineData("45", 5)]
    public void The_catalogue_numbers_by_weight(string pounds, int hinges) =>
        Assert.Equal(hinges, Number("counts-catalogue", In("20").Value, Fraction.FromString(pounds, System.Globalization.CultureInfo.InvariantCulture)).Count.Amount);

    // One for each 30 in or part of it, a rule for passage doors: several pages.
    [Theory]
    [InlineData("60", 2)]
    [InlineData("60 1/8", 3)]
    [InlineData("90", 3)]
    [InlineData("120", 4)]
    public void One_for_each_thirty_inches(string height, int hinges) => Assert.Equal(hinges, Number("counts-passage", In(height).Value).Count.Amount);

    // 6 kg are 13.2277 lb: an exact pound is 0.45359237 kg (international yard and pound agreement, 1959).
    [Fact]
    public void The_larger_of_height_and_weight_holds()
    {
        Assert.Equal(2, Number("counts-chart", In("30").Value, new Fraction(132, 10)).Count.Amount);
        Assert.Equal(3, Number("counts-chart", In("30").Value, new Fraction(133, 10)).Count.Amount);
        Assert.Equal(4, Number("counts-chart", In("70").Value, new Fraction(133, 10)).Count.Amount);
        Assert.Equal("the greatest of (hinges by height, hinges by weight)", WorkedText.Formula(((Named)Number("counts-chart", In("30").Value, 14).Count).Inner is Named table ? table : null!));
    }

    [Fact]
    public void What_is_from_memory_says_so() =>
        Assert.Equal("from memory, not verified", Number("counts-chart", In("30").Value, 35).ByWeight!.Source.Text);

    // The same note: doors to 600 mm wide; to 650 one hinge more.
    [Fact]
    public void A_leaf_wider_than_the_table_gets_one_more()
    {
        // 600 mm lie between the two.
        Assert.Equal(2, Number("counts-chart", In("30").Value, width: "23 19/32").Count.Amount);
        Assert.Equal(3, Number("counts-chart", In("30").Value, width: "23 5/8").Count.Amount);
    }

    [Fact]
    public void A_weight_from_outside_counts()
    {
        var course = DoorOf("15", "24", Design(), (Settings.UsualHinge, Wrap));
        Assert.Equal(2, Assert.Single(Plan(course).Leaves).Set.Places.Count);
        var heavy = Assert.Single(Plan(course, weight: _ => Pounds(14)).Leaves);
        Assert.Equal(3, heavy.Set.Places.Count);
        Assert.Equal("Chart by height and weight", heavy.Set.Number.ByWeight!.Table);
    }

    // Every shipped hinge says that it is an example, and every shipped figure where it comes from.
    [Fact]
    public void Shipped_hinges_are_marked_as_examples()
    {
        Assert.All(ShippedHinges.Hinges, hinge => Assert.StartsWith("example, not a product", hinge.Source, StringComparison.Ordinal));
        Assert.All(ShippedHinges.Hinges, hinge => Assert.EndsWith("(example)", hinge.Name, StringComparison.Ordinal));
        Assert.All(ShippedHinges.Counts, table => Assert.NotNull(table.Source));
    }
}
