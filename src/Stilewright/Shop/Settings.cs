using Stilewright.Findings;
using static Stilewright.Shop.SettingKind;

namespace Stilewright.Shop;

/// <summary>The constants of a house standard, each with its defaults and their source.</summary>
/// <remarks>
/// Where practice differs the default is a middle value and the source says so; a shop sets its own.
/// The millimetre defaults are the inch ones put on the nearest size that is usual in millimetres.
/// </remarks>
public static class Settings
{
    private static readonly Source Practice = Source.CommonPractice;

    public static Setting Overlay { get; } = new("overlay.usual", "overlay",
        "How far an overlay front laps over the frame on an edge that says nothing else",
        Length, "3/8", "10 mm", Source.Published("partial overlay of 3/8 to 1/2: overlay notes of a cabinet supplier; 3/8 is common practice"));

    public static Setting LeastOverlay { get; } = new("overlay.least", "least overlay",
        "The least a front may lap over the frame at any corner",
        Length, "1/4", "6 mm", Source.Published("smallest fixed overlay of wrap-around hinges: hinge guides of four suppliers"));

    public static Setting Reveal { get; } = new("overlay.reveal", "reveal",
        "Visible frame left beside a front that runs to the edge of the frame",
        Length, "1/4", "6 mm", Source.Published("1-1/4 overlay on a 1-1/2 stile leaves 1/4: overlay widths page of a supplier"));

    public static Setting GapBetweenNeighbours { get; } = new("gap.neighbours", "gap between neighbours",
        "Air between two overlay fronts that share a member of the frame",
        Length, "1/8", "3 mm", Practice);

    public static Setting GapOfPair { get; } = new("gap.pair", "gap of the pair",
        "Air between the meeting edges of overlay doors on one opening",
        Length, "1/8", "3 mm", Source.Published("1/8 typical: trade glossary, butt door"));

    public static Setting GapInBank { get; } = new("gap.bank", "gap in the bank",
        "Air between drawer fronts of one bank",
        Length, "1/8", "3 mm", Practice);

    public static Setting InsetGap { get; } = new("gap.inset", "inset gap",
        "Air between an inset front and the frame, on each edge",
        Length, "3/32", "2.5 mm", Source.Published("3/32 most quoted, 1/16 to 1/8 defended: public trade thread on inset door clearance, 2006"));

    public static Setting InsetGapOfPair { get; } = new("gap.inset-pair", "gap of the inset pair",
        "Air between the meeting edges of inset doors on one opening",
        Length, "3/32", "2.5 mm", Source.Published("pair: deduct 9/32 in all: public trade thread on inset door clearance, 2006"));

    public static Setting LipRabbet { get; } = new("lip.rabbet", "lip",
        "Width of the rabbet round the back of a lipped front",
        Length, "3/8", "10 mm", Source.Published("3/8 lip is standard: partial-inset measuring guide of a supplier"));

    public static Setting LipClearance { get; } = new("lip.clearance", "lip clearance",
        "Air between the rabbet of a lipped front and the opening, on each edge",
        Length, "1/8", "3 mm", Practice);

    public static Setting Lap { get; } = new("lap.meeting", "lap",
        "How far rabbeted meeting edges of a pair lap over one another",
        Length, "3/8", "10 mm", Practice);

    public static Setting Step { get; } = new("cut.step", "cutting step",
        "The finest step the shop cuts to; leaf sizes are put on it",
        Length, "1/32", "0.5 mm", Source.Published("finish to 1/32: public trade thread on sizing cabinet doors to tolerances, 2013"))
    { MayBeZero = false };

    public static Setting BankRemainder { get; } = new("cut.bank-remainder", "remainder of a bank",
        "Which front of a bank takes what is left over by the cutting step",
        Choice, "bottom", "bottom", Practice, Choices: ["top", "bottom"]);

    public static Setting LightRemainder { get; } = new("cut.light-remainder", "remainder of the lights",
        "Which light of a leaf takes what is left over by the cutting step when lights are equal",
        Choice, "bottom", "bottom", Practice, Choices: ["top", "bottom"]);

    public static Setting Stile { get; } = new("frame.stile", "stile width",
        "Finished width of door stiles, sticking included",
        Length, "2 1/4", "57 mm", Source.Published("2-1/4 stiles: arched and cathedral door template instructions"));

    public static Setting Rail { get; } = new("frame.rail", "rail width",
        "Finished width of door rails at their narrowest, sticking included",
        Length, "2 1/4", "57 mm", Source.Published("2-1/4 rails: arched and cathedral door template instructions"));

    public static Setting MidRail { get; } = new("frame.mid-rail", "mid rail width",
        "Finished width of mid rails, sticking on both edges included",
        Length, "2 1/4", "57 mm", Practice);

    public static Setting MidStile { get; } = new("frame.mid-stile", "mid stile width",
        "Finished width of mid stiles, sticking on both edges included",
        Length, "2 1/4", "57 mm", Practice);

    public static Setting Tenon { get; } = new("joint.tenon", "tenon length",
        "Length of a rail's tenon from the sight line",
        Length, "1 1/4", "32 mm", Practice);

    public static Setting TrimWidth { get; } = new("trim.width", "trim allowance on width",
        "Whole allowance on a leaf's width, taken off after glue-up, half from each edge",
        Length, "1/8", "3 mm", Practice);

    public static Setting TrimHeight { get; } = new("trim.height", "trim allowance on height",
        "Whole allowance on a leaf's height, taken off after glue-up, half from each end",
        Length, "1/8", "3 mm", Practice);

    public static Setting ClearanceAcross { get; } = new("panel.clearance-across", "clearance across the grain",
        "Play left to a solid panel in each groove it can swell into, across its grain",
        Length, "1/8", "3 mm", Source.Published("1/8 on each side: magazine Q&A on seasonal movement in raised-panel doors; template instructions"));

    public static Setting ClearanceAlong { get; } = new("panel.clearance-along", "clearance along the grain",
        "Play left to a solid panel in each groove at the ends of its grain",
        Length, "1/16", "1.5 mm", Source.Published("1/16 along the grain: public trade thread on expansion in door panels, 2007"));

    /// <summary>The word of <see cref="ClearanceAtArch"/> for the clearance that the panel has at its straight ends.</summary>
    public const string AsAtTheEnds = "ends";

    public static Setting ClearanceAtArch { get; } = new("panel.clearance-arch", "clearance at an arch",
        "Play left to a solid panel in the groove of an arched rail, square to the curve; \"ends\" for the clearance of a straight end",
        Length, AsAtTheEnds, AsAtTheEnds, Practice, Choices: [AsAtTheEnds]);

    public static Setting SheetClearance { get; } = new("panel.clearance-sheet", "clearance of a sheet panel",
        "Play left to a sheet panel in each groove, both ways",
        Length, "1/16", "1.5 mm", Source.Published("plywood panel: magazine Q&A on cope-and-stick joints"));

    public static Setting GlassClearance { get; } = new("glass.clearance", "glass clearance",
        "Whole clearance of a pane, each way",
        Length, "1/8", "3 mm", Source.Published("1/8 in all: do-it-yourself glass insert guide"));

    public static Setting GlassThickness { get; } = new("glass.thickness", "glass thickness",
        "Thickness of a pane, for its weight",
        Length, "3/32", "2.5 mm", Practice)
    { MayBeZero = false };

    /// <summary>The word of <see cref="PanelPolicy"/> under which the season's movement gives a solid panel its width.</summary>
    public const string BySeason = "season";

    public static Setting PanelPolicy { get; } = new("panel.policy", "play of solid panels",
        "What gives a solid panel its width: the clearance across the grain, or the season's movement of its wood",
        Choice, "clearance", "clearance", Practice, Choices: ["clearance", BySeason]);

    public static Setting PanelRings { get; } = new("panel.rings", "rings of solid panels",
        "How the growth rings lie in solid panels and slabs; mixed is reckoned as flat",
        Choice, "flat", "flat", Source.Published("most boards are neither, so that flat overestimates their movement: FPL-GTR-190, p. 13-17"), Choices: ["flat", "quarter", "mixed"]);

    /// <summary>The word of <see cref="PanelHeld"/> for a panel that nothing holds in the middle.</summary>
    public const string Free = "free";

    public static Setting PanelHeld { get; } = new("panel.held", "hold of solid panels",
        "Whether a solid panel is pinned in the middle of its width, so that both edges share its movement, or free to slide",
        Choice, "pinned", "pinned", Source.Published("one pin or dab of glue at mid-width: magazine Q&A on raised-panel doors"), Choices: ["pinned", Free]);

    public static Setting PanelEngagement { get; } = new("panel.engagement", "engagement in service",
        "The least that a solid panel's edge may stand in its groove at the driest",
        Length, "1/8", "3 mm", Practice);

    public static Setting PanelAir { get; } = new("panel.air", "air at the wettest",
        "The least play that a solid panel may have in each groove at the wettest",
        Length, "1/32", "1 mm", Practice);

    public static Setting FinishBuild { get; } = new("finish.build", "finish thickness",
        "Thickness of the finish on each surface; it takes from the gap between two",
        Length, "0.004", "0.1 mm", Source.Published("a cured film of 3 to 5 thousandths of an inch: from memory"));

    public static Setting Moisture { get; } = new("wood.moisture", "moisture at making",
        "Moisture content of solid wood when its parts are cut to size",
        Percent, "8 %", "8 %", Source.Published("kiln-dried to 6 to 8 % for furniture and cabinets: FPL-GTR-190, p. 13-13"));

    public static Setting Climate { get; } = new("wood.climate", "climate in service",
        "Where the work will stand: the id of a region that ships, or of a climate of the standard",
        Reference, Wood.ClimateTable.Usual, Wood.ClimateTable.Usual, Source.Published("FPL-GTR-190, Fig. 13-1 and Table 13-2; ranges of single pieces from memory"))
    { Names = SettingNames.Climate };

    /// <summary>The word of <see cref="Driest"/> and <see cref="Wettest"/> for what the climate says.</summary>
    public const string AsTheClimate = "climate";

    public static Setting Driest { get; } = new("wood.driest", "driest in service",
        "The lowest moisture content of wood in service; \"climate\" for what the climate says",
        Percent, AsTheClimate, AsTheClimate, Practice, Choices: [AsTheClimate]);

    public static Setting Wettest { get; } = new("wood.wettest", "wettest in service",
        "The highest moisture content of wood in service; \"climate\" for what the climate says",
        Percent, AsTheClimate, AsTheClimate, Practice, Choices: [AsTheClimate]);

    public static Setting RoughLength { get; } = new("rough.length", "rough length allowance",
        "Added to the length into the clamps for the rough crosscut",
        Length, "1", "25 mm", Practice);

    public static Setting RoughWidth { get; } = new("rough.width", "rough width allowance",
        "Added to the width into the clamps for the rough rip",
        Length, "1/4", "6 mm", Practice);

    public static Setting FinestFraction { get; } = new("print.finest", "finest fraction",
        "The denominator of the finest fraction printed, a count; millimetres print to 0.1",
        Count, "32", "32", Practice, Overridable: false, Choices: ["8", "16", "32", "64"]);

    public static Setting LeastField { get; } = new("limit.field", "least field",
        "The least flat field that a raised panel may keep, either way",
        Length, "1", "25 mm", Source.Published("about 1 in of field must remain: minimum door and drawer front dimensions, supplier sheet"), Overridable: false);

    public static Setting LeastLight { get; } = new("limit.light", "least clear width of a light",
        "The least clear width or height that a light of a frame may keep",
        Length, "1", "25 mm", Practice, Overridable: false);

    public static Setting WidestPanel { get; } = new("limit.panel-width", "widest panel",
        "Solid panels wider than this across the grain are beyond common practice",
        Length, "22", "560 mm", Source.Published("caps near 22: public trade thread on raised panel door widths"), Overridable: false);

    public static Setting WidestDoor { get; } = new("limit.door-width", "widest undivided door",
        "Undivided doors wider than this are beyond common practice",
        Length, "24", "610 mm", Source.Published("24 and more, makers stop guaranteeing: public trade thread on wide glass doors, 2007; guarantee pages of two door plants"), Overridable: false);

    public static Setting TallestUndivided { get; } = new("limit.undivided-height", "tallest door without a mid rail",
        "Doors taller than this need a mid rail",
        Length, "60", "1524 mm", Source.Published("Architectural Woodwork Standards, 1st ed., 2009, section 10: over 60 in an intermediate rail"), Overridable: false);

    public static Setting LeastCrown { get; } = new("limit.crown", "least wood at the crown",
        "The least wood that may stand between the groove of an arched rail and its outer edge",
        Length, "3/4", "19 mm", Practice, Overridable: false);

    public static Setting LeastShortGrain { get; } = new("limit.short-grain", "least wood at a shoulder",
        "The least run of grain in the ends of an arched rail, taken as high above the spring line",
        Length, "3/4", "19 mm", Practice, Overridable: false);

    public static Setting LeastEngagement { get; } = new("limit.engagement", "least engagement",
        "The least that a panel's arched edge may stand in its groove where one pattern serves rail and panel",
        Length, "3/16", "5 mm", Source.Published("a panel traced 3/16 outside of the rail's edge, for a groove of 3/8: woodworking magazine on arched raised panels"), Overridable: false);

    public static Setting LineTolerance { get; } = new("tolerance.line", "tolerance of a column",
        "How far edges of fronts in one column may stand out of line",
        Length, "1/32", "1 mm", Practice, Overridable: false);

    public static Setting ReadingTolerance { get; } = new("tolerance.readings", "tolerance of readings",
        "How far tape readings of one opening may contradict each other before they are questioned",
        Length, "1/16", "1.5 mm", Practice, Overridable: false);

    /// <summary>The word of <see cref="UsualHinge"/> for a shop that has not said.</summary>
    public const string NoHinge = "none";

    public static Setting UsualHinge { get; } = new("hinge.usual", "hinge",
        "The hinge of every leaf that is hinged on its side, top or bottom: the id of a hinge of the standard, or \"none\" where nothing is bored",
        Reference, NoHinge, NoHinge, Practice, Choices: [NoHinge])
    { Names = SettingNames.Hinge };

    public static Setting HingeFromEnd { get; } = new("hinge.from-end", "hinge from the end",
        "From an end of the leaf, or of the opening, to the centre of the outer hinge",
        Length, "3 1/8", "80 mm", Source.Published("2 to 4 in in how-to articles; 3 in, 80 mm and 62.5 mm in a public trade thread on boring for the 32 mm system, 2007"))
    { MayBeZero = false };

    public const string FromDoor = "door", FromOpening = "opening";

    public static Setting HingeFrom { get; } = new("hinge.from", "hinge measured from",
        "Whether the outer hinges are measured from the ends of the leaf, or from the opening, so that plates stand alike where top and bottom overlay differ",
        Choice, FromDoor, FromDoor, Practice, Choices: [FromDoor, FromOpening]);

    /// <summary>The word of <see cref="HingeNumber"/> for the number that the table gives.</summary>
    public const string ByTable = "table";

    public static Setting HingeNumber { get; } = new("hinge.number", "number of hinges",
        "How many hinges a leaf gets: a count, or \"table\" for what the table says",
        Choice, ByTable, ByTable, Practice, Choices: [ByTable, "2", "3", "4", "5", "6"]);

    public static Setting HingeCountTable { get; } = new("hinge.count-table", "table of hinge numbers",
        "The table that says how many hinges a leaf gets, by its id in the standard",
        Reference, ShippedHinges.UsualTable, ShippedHinges.UsualTable, Source.Published("a cup-hinge guide's chart by height, and a hinge-count note by weight; figures are guides, make a trial hanging: hinge question page of a supplier"))
    { Names = SettingNames.CountTable };

    /// <summary>The word of <see cref="BoringDistance"/> for the distance that gives the overlay.</summary>
    public const string ToSuit = "to-suit";

    public static Setting BoringDistance { get; } = new("hinge.boring-distance", "boring distance",
        "From the leaf's edge to the near edge of the cup; \"to-suit\" for what the overlay or the gap asks for, within the hinge's range",
        Length, ToSuit, ToSuit, Practice, Choices: [ToSuit]);

    public static Setting HingeClear { get; } = new("hinge.clear", "hinge kept clear by",
        "From a hinge's centre to the nearest shelf, and of a cup hinge to a mid rail or to a rail with a deep joint",
        Length, "3/4", "20 mm", Practice);

    public static Setting LeastUnderCup { get; } = new("limit.cup-floor", "least wood under a cup",
        "The least wood that may stand between the bottom of a cup and the face",
        Length, "1/8", "3 mm", Practice, Overridable: false);

    /// <summary>All settings, in the order in which a standard is read.</summary>
    public static IReadOnlyList<Setting> All { get; } =
    [
        Overlay, LeastOverlay, Reveal, GapBetweenNeighbours, GapOfPair, GapInBank, InsetGap, InsetGapOfPair,
        LipRabbet, LipClearance, Lap, Step, BankRemainder, LightRemainder, Stile, Rail, MidRail, MidStile, Tenon,
        TrimWidth, TrimHeight, ClearanceAcross, ClearanceAlong, ClearanceAtArch, SheetClearance,
        PanelPolicy, PanelRings, PanelHeld, PanelEngagement, PanelAir, Moisture, Climate, Driest, Wettest, FinishBuild, GlassClearance, GlassThickness, RoughLength, RoughWidth,
        FinestFraction, LeastField, LeastLight, WidestPanel, WidestDoor, TallestUndivided, LeastCrown, LeastShortGrain, LeastEngagement,
        LineTolerance, ReadingTolerance,
        UsualHinge, HingeFromEnd, HingeFrom, HingeNumber, HingeCountTable, BoringDistance, HingeClear, LeastUnderCup,
    ];

    private static readonly Dictionary<string, Setting> ByKey = All.ToDictionary(setting => setting.Key);

    /// <summary>The setting of that key, or null.</summary>
    public static Setting? Find(string key) => ByKey.GetValueOrDefault(key);
}
