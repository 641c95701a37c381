using Stilewright.Measure;

namespace Stilewright.Shop;

/// <summary>The two house standards that ship: one in inches, one in millimetres.</summary>
public static class ShippedStandards
{
    private const string GrooveSource = "groove 1/4 wide, 3/8 deep: magazine article on cope-and-stick joints; router handbook on panel stock";
    private const string RaiseSource = "raise of 1 to 1-1/2: common practice, no source";
    private const string ShaperSource = "12 in without a fixture: two shaper owner's manuals; width is common practice, no source";
    private const string JointerSource = "12 in and 3/4 in among the figures of four jointer manuals";
    private const string PlanerSource = "12 in: a planer manual; widths are common practice, no source";
    private const string SanderSource = "9 in: a school drum-sander page; width is common practice, no source";
    private const string StockSource = "4/4 finishes 3/4 to 13/16: common practice, no source; least 3/4: Architectural Woodwork Standards, 1st ed., 2009, section 10; boards over 8 in are scarce: common practice, no source";
    private const string ThickStockSource = "starts at 7/8 and is not sanded below 0.8; boards over 8 in are scarce: common practice, no source";

    public static HouseStandard Inch { get; } = new(
        "inch", "House standard, inches", LengthUnit.Inch, LengthUnit.Inch, SettingValues.None,
        [
            new("cope-and-stick", "Cope-and-stick cutters",
                In("3/8"), In("3/8"), In("1/4"), In("1/4"), In("3/8"), In("11/16"), In("7/8"), In("1 1/4"), Source: $"{GrooveSource}; {RaiseSource}"),
            new("deep-groove", "Deep-groove cutters",
                In("7/16"), In("7/16"), In("1/4"), In("9/32"), In("7/16"), In("3/4"), In("1"), In("1 1/2"), Source: $"grooves of 7/16 exist: public trade thread on dimensioning door tenons, 2005; {RaiseSource}"),
            new("plain-groove", "Straight groover",
                In("3/8"), In("3/8"), In("1/4"), In("1/4"), In("0"), In("5/8"), In("1"), Source: GrooveSource),
        ],
        [
            new("shaper", "the shaper", MachineKind.Shaper, In("12"), In("1 1/2"), Source: ShaperSource),
            new("jointer", "the jointer", MachineKind.Jointer, In("12"), In("3/4"), In("8"), Source: JointerSource),
            new("planer", "the planer", MachineKind.Planer, In("12"), In("3/4"), In("20"), Source: PlanerSource),
            new("sander", "the drum sander", MachineKind.Sander, In("9"), null, In("25"), Source: SanderSource),
        ],
        [
            new("four-quarter", "4/4 solid", StockKind.Solid, In("13/16"), "4/4", In("1/32"), In("1/32"), In("3/4"), In("8"), StockSource),
            new("full-four-quarter", "4/4 solid, left thick", StockKind.Solid, In("7/8"), "4/4", In("1/32"), In("1/32"), In("0.8"), In("8"), ThickStockSource),
            new("panel", "Panel stock, solid", StockKind.Solid, In("11/16"), "4/4", In("1/32"), In("1/32"), In("5/8"), Source: "5/8 gives a field flush with a 3/4 frame: router handbook on panel stock"),
            new("thin-panel", "Thin panel stock, solid", StockKind.Solid, In("5/16"), "5/8", In("1/32"), In("1/32"), In("1/4"), Source: "1/4 in the groove: common practice, no source"),
            new("ply", "1/4 plywood", StockKind.Sheet, In("7/32"), Source: "real plywood is 0.20 to 0.23: common practice, no source"),
        ],
        Hinges: ShippedHinges.Hinges, HingeCounts: ShippedHinges.Counts, BoringMachines: ShippedHinges.Machines);

    public static HouseStandard Millimetre { get; } = new(
        "millimetre", "House standard, millimetres", LengthUnit.Millimetre, LengthUnit.Millimetre, SettingValues.None,
        [
            new("cope-and-stick", "Cope-and-stick cutters",
                Mm("10"), Mm("10"), Mm("6"), Mm("6.5"), Mm("10"), Mm("18"), Mm("22"), Mm("32"), Source: $"inch figures put on whole millimetres: {GrooveSource}; {RaiseSource}"),
            new("plain-groove", "Straight groover",
                Mm("10"), Mm("10"), Mm("6"), Mm("6.5"), Mm("0"), Mm("16"), Mm("25"), Source: $"inch figures put on whole millimetres: {GrooveSource}"),
        ],
        [
            new("shaper", "the shaper", MachineKind.Shaper, Mm("305"), Mm("38"), Source: ShaperSource),
            new("jointer", "the jointer", MachineKind.Jointer, Mm("305"), Mm("19"), Mm("203"), Source: JointerSource),
            new("planer", "the planer", MachineKind.Planer, Mm("305"), Mm("19"), Mm("508"), Source: PlanerSource),
            new("sander", "the drum sander", MachineKind.Sander, Mm("230"), null, Mm("635"), Source: SanderSource),
        ],
        [
            new("four-quarter", "4/4 solid", StockKind.Solid, Mm("20.5"), "4/4", Mm("0.5"), Mm("0.5"), Mm("19"), Mm("200"), StockSource),
            new("panel", "Panel stock, solid", StockKind.Solid, Mm("17"), "4/4", Mm("0.5"), Mm("0.5"), Mm("16"), Source: "5/8 gives a field flush with a 3/4 frame: router handbook on panel stock"),
            new("thin-panel", "Thin panel stock, solid", StockKind.Solid, Mm("7.5"), "5/8", Mm("0.5"), Mm("0.5"), Mm("6"), Source: "6 mm in the groove: common practice, no source"),
            new("ply", "6 mm plywood", StockKind.Sheet, Mm("5.5"), Source: "sheets run under their name: common practice, no source"),
        ],
        Hinges: ShippedHinges.Hinges, HingeCounts: ShippedHinges.Counts, BoringMachines: ShippedHinges.Machines);

    public static HouseStandard For(LengthUnit unit) => unit == LengthUnit.Inch ? Inch : Millimetre;

    private static LengthEntry In(string text) => Read(text, LengthUnit.Inch);

    private static LengthEntry Mm(string text) => Read(text, LengthUnit.Millimetre);

    private static LengthEntry Read(string text, LengthUnit unit) => new(text, LengthReader.ReadOwn(text, unit));
}
