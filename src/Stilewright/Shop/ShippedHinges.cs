using Stilewright.Measure;
using Stilewright.Projects;

namespace Stilewright.Shop;

/// <summary>The hinges, the tables of hinge numbers and the boring machine that ship. Hinges and machine are examples of their kinds and no product's figures.</summary>
public static class ShippedHinges
{
    /// <summary>The table that holds where the shop names no other.</summary>
    internal const string UsualTable = "counts-chart";

    private const string Example = "example, not a product; enter your hinge's own sheet";
    private const string CupSource = $"{Example}; cup 35 mm, depths of 10.5 to 13 mm, distances of 3 to 8 mm and screws 45 apart, 9.5 behind: hinge catalogues; overlay = X + distance − plate: a hinge catalogue's quick reference";
    private const string TravelSource = "side +1/−3, depth +3/−1, height ±2 mm: a concealed-hinge catalogue, 2011";

    public static IReadOnlyList<HingeKind> Hinges { get; } =
    [
        new("example-wrap-around", "Wrap-around, 3/8 overlay (example)", HingeStyle.WrapAround, Mount.Overlay, In("3/8"), In("3/8"),
            Adjustment: new(Height: new(In("1/16"), In("1/16"))), LeastMember: In("3/4"), ThinnestLeaf: In("5/8"), ThickestLeaf: In("7/8"), OpensDegrees: 180,
            Source: $"{Example}; fixed overlays of 1/4, 3/8 and 1/2: hinge guides of four suppliers; slots of 1/16: from memory"),
        new("example-semi-concealed", "Semi-concealed, lipped (example)", HingeStyle.SemiConcealed, Mount.Lipped, In("1/8"), In("3/8"),
            ThinnestLeaf: In("5/8"), ThickestLeaf: In("7/8"), OpensDegrees: 180, Source: Example),
        new("example-cup-compact", "Cup, overlay built in (example)", HingeStyle.Cup, Mount.Overlay,
            Cup: new(Mm("35"), Mm("12.5"), Mm("3"), Mm("6"), Mm("6.5"), [], Mm("45"), Mm("9.5")),
            Adjustment: new(new(Mm("2"), Mm("2")), new(Mm("1.5"), Mm("1.5"))), LeastMember: In("1"), ThinnestLeaf: Mm("16"), ThickestLeaf: Mm("24"), OpensDegrees: 105,
            Source: $"{CupSource}; sideways and height only: magazine article on cup hinges, 2015, their amounts from memory"),
        new("example-cup-plate", "Cup with plate (example)", HingeStyle.Cup, Mount.Overlay,
            Cup: new(Mm("35"), Mm("12.5"), Mm("3"), Mm("7"), Mm("12"), [Plate("0"), Plate("2"), Plate("4"), Plate("6")], Mm("45"), Mm("9.5")),
            Adjustment: Travel(), LeastMember: In("1 1/4"), ThinnestLeaf: Mm("16"), ThickestLeaf: Mm("36"), OpensDegrees: 110, Gaps: CatalogueGaps(),
            Source: $"{CupSource}; {TravelSource}; least gaps: the same catalogue"),
        new("example-cup-inset", "Cup with plate, inset (example)", HingeStyle.Cup, Mount.Inset,
            Cup: new(Mm("35"), Mm("12.5"), Mm("3"), Mm("6"), Mm("1"), [Plate("6"), Plate("8")], Mm("45"), Mm("9.5")),
            Adjustment: Travel(), LeastMember: In("1 1/4"), ThinnestLeaf: Mm("16"), ThickestLeaf: Mm("24"), OpensDegrees: 105,
            Source: $"{CupSource}; {TravelSource}"),
        new("example-butt", "Butt, let in (example)", HingeStyle.Butt, Mount.Inset, In("1/32"), In("1/8"),
            ThinnestLeaf: In("5/8"), ThickestLeaf: In("1"), OpensDegrees: 180, Source: Example),
    ];

    public static IReadOnlyList<HingeCounts> Counts { get; } =
    [
        new(UsualTable, "Chart by height and weight",
            [new(Mm("900"), 2), new(Mm("1600"), 3), new(Mm("2000"), 4), new(Mm("2400"), 5)],
            [new(6, 2, Weighed), new(12, 3, Weighed), new(17, 4, FromMemory), new(22, 5, FromMemory)],
            WeightUnit.Kilogram, Mm("600"), "chart of a guide to cup-hinge types, doors to 600 mm wide"),
        new("counts-catalogue", "Catalogue guide by weight", [], [new(15, 2), new(30, 3), new(45, 4), new(60, 5)],
            Source: "quick reference of a hinge catalogue, by weight; its curve by height could not be read off"),
        new("counts-guide", "Web guide", [new(Mm("600"), 2), new(Mm("900"), 3)], [new(5, 2), new(9, 3), new(15, 4), new(22, 5)], WeightUnit.Kilogram,
            Source: "web guide to hinge numbers: to 5 kg, 6 to 9, 13 to 15 and 18 to 22; between two of its rows the larger number is taken"),
        new("counts-passage", "One for each 30 in", [new(In("60"), 2), new(In("90"), 3), new(In("120"), 4)], [],
            Source: "one for each 30 in or part of it, a rule for passage doors: several pages"),
    ];

    public static IReadOnlyList<BoringMachine> Machines { get; } =
    [
        new("example-boring-machine", "Boring machine with stops (example)",
            [new(StopSide.Left, Mm("80"), Mm("32"), 20, Mark: "L"), new(StopSide.Right, Mm("80"), Mm("32"), 20, Mark: "R")],
            LeastFence: Mm("2"), GreatestFence: Mm("8"), Bit: Mm("35"),
            Source: "example, not a product; enter your own machine's stops, its manual comes first; 80 mm and a pitch of 32: a public trade thread on boring for the 32 mm system, 2007"),
    ];

    private const string Weighed = "a hinge-count note, doors to 600 mm wide; to 650 one hinge more";
    private const string FromMemory = "from memory, not verified";

    // Thickness, gap at 3 mm and gap at 7 mm of boring distance.
    private static SwingGap[] CatalogueGaps() =>
    [
        new(Mm("24"), Mm("2.4")), new(Mm("24"), Mm("2"), Mm("7")),
        new(Mm("30"), Mm("5.4")), new(Mm("30"), Mm("4.2"), Mm("7")),
        new(Mm("36"), Mm("11.1")), new(Mm("36"), Mm("8.5"), Mm("7")),
    ];

    private static HingeAdjustment Travel() => new(new(Mm("3"), Mm("1")), new(Mm("2"), Mm("2")), new(Mm("1"), Mm("3")));

    private static PlateHeight Plate(string millimetres) => new(Mm(millimetres));

    private static LengthEntry In(string text) => new($"{text} in", LengthReader.ReadOwn(text, LengthUnit.Inch));

    private static LengthEntry Mm(string text) => new($"{text} mm", LengthReader.ReadOwn(text, LengthUnit.Millimetre));
}
