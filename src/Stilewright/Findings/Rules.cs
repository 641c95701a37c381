using static Stilewright.Findings.Severity;

namespace Stilewright.Findings;

/// <summary>Every rule that is checked; the table in <c>docs/findings.md</c> is made from it.</summary>
public static class Rules
{
    private static readonly Source Practice = Source.CommonPractice;
    private static readonly Source Geometry = Source.Geometry;
    private static readonly Source Handbook = Source.Published("movement: FPL-GTR-190 (2010), Equations 13-2 and 13-3; moisture in service: Fig. 13-1 and Table 13-2, ranges from memory");
    private static readonly Source Aws = Source.Published("Architectural Woodwork Standards, 1st ed., 2009, section 10");
    private static readonly Source ShaperManuals = Source.Published("two shaper owner's manuals: 12 in without a fixture; 29 CFR 1910.213(m) for guarding");

    public static Rule NoRoom { get; } = new("layout.no-room", CannotBuild,
        "The spaces and members of a layout leave nothing for an opening", "Make a given space smaller", Geometry);

    public static Rule NotMeasured { get; } = new("opening.not-measured", CannotBuild,
        "Neither the tape nor a layout gives the width or the height of an opening", "Measure it and enter the reading, or enter the layout", Geometry);

    public static Rule LayoutDiffers { get; } = new("opening.layout-differs", Caution,
        "Tape readings differ from the layout by more than twice the tolerance of readings", "Measure again, or correct the layout", Practice);

    public static Rule ReadingsContradict { get; } = new("opening.readings-contradict", Caution,
        "Widths, heights and diagonals cannot all be true", "Measure the diagonals again, corner to corner", Geometry);

    public static Rule NoDiagonalsOverlay { get; } = new("opening.no-diagonals-overlay", Note,
        "An overlay opening was measured without diagonals", "Take both diagonals", Practice);

    public static Rule NoDiagonalsInset { get; } = new("opening.no-diagonals-inset", Caution,
        "An inset opening was measured without diagonals", "Take both diagonals before sizing an inset door",
        Source.Published("public trade threads on fitting inset doors, 2005 and 2011"));

    public static Rule Bowed { get; } = new("opening.bowed", Note,
        "A middle reading differs from the ends by more than the tolerance", "Straighten the member, or expect the gap to vary", Practice);

    public static Rule NeighboursUnknown { get; } = new("front.neighbours-unknown", Note,
        "Nothing says what lies beyond an edge of an overlay front", "Name the neighbour and the member between, or enter the layout", Practice);

    public static Rule NeighboursCollide { get; } = new("front.neighbours-collide", CannotBuild,
        "Two overlays and the gap are wider than the member between them", "Split the member evenly, or keep one side and reduce the other", Geometry);

    public static Rule BeyondFrame { get; } = new("front.beyond-frame", CannotBuild,
        "An overlay is wider than the frame member it laps over", "Reduce the overlay", Geometry);

    public static Rule MemberUnknown { get; } = new("front.member-unknown", CannotBuild,
        "An edge shares a member, or runs to the frame's edge, whose width nobody entered", "Enter the member's width, or a fixed overlay", Geometry);

    public static Rule NothingToShare { get; } = new("front.nothing-to-share", CannotBuild,
        "A member is narrower than the gap or reveal it must leave", "Leave a smaller gap, or use a fixed overlay", Geometry);

    public static Rule OverlayBelowLeast { get; } = new("front.overlay-below-least", Caution,
        "The overlay left at a corner is less than the standard's least", "Take more overlay, or square the opening", Practice);

    public static Rule OverlayUnexplained { get; } = new("front.overlay-unexplained", Note,
        "Opposite overlays differ and no member, wall or policy explains it", "Check which is meant", Practice);

    public static Rule WallClearance { get; } = new("front.wall-clearance", Caution,
        "Less than 1/2 in of frame is left between a door's hinge edge and a wall", "Keep at least 1/2 in so that the door can swing, more with pulls on the return", Practice);

    public static Rule OutOfLine { get; } = new("front.out-of-line", Caution,
        "Edges of fronts in one column stand out of line", "Give the fronts one column name so that they are kept in line", Practice);

    public static Rule ColumnNotMeasured { get; } = new("front.column-not-measured", Caution,
        "A front is kept in line with one whose opening is not measured", "Measure the other opening before this front is cut", Geometry);

    public static Rule ToeNotchCovered { get; } = new("front.toe-notch-covered", Caution,
        "A front reaches down over the toe notch of the outer stile", "Raise the bottom edge, or lower the notch", Geometry);

    public static Rule LipCoversNothing { get; } = new("front.lip-covers-nothing", CannotBuild,
        "The lip is no wider than its clearance", "Make the rabbet wider, or the clearance less", Geometry);

    public static Rule NothingLeft { get; } = new("front.nothing-left", CannotBuild,
        "Nothing is left of a front after its gaps", "Check the opening and the gaps", Geometry);

    public static Rule BankTooTall { get; } = new("bank.too-tall", CannotBuild,
        "The heights given in a bank leave nothing for its other fronts", "Reduce a given height", Geometry);

    public static Rule HingedToNothing { get; } = new("leaf.hinged-to-nothing", CannotBuild,
        "A leaf is hinged where there is neither frame nor a named leaf", "Hinge it to the frame or name the leaf beside it", Geometry);

    public static Rule NoGapInPair { get; } = new("leaf.no-gap", Caution,
        "Leaves meet without air", "Leave a gap, or lap the meeting edges", Practice);

    public static Rule DesignMissing { get; } = new("leaf.design-missing", CannotBuild,
        "A design, cutter set or stock that is named does not exist", "Name one that exists", Practice);

    public static Rule NarrowerThanFrame { get; } = new("leaf.narrower-than-frame", CannotBuild,
        "The stiles or rails are wider than the leaf", "Use narrower members or a slab", Geometry);

    public static Rule LightTooSmall { get; } = new("leaf.light-too-small", CannotBuild,
        "A light is clear by less than the standard's least", "Use narrower members, fewer lights or a slab", Practice);

    public static Rule DrawerTooLow { get; } = new("drawer.too-low", CannotBuild,
        "A drawer front is too low for its frame", "Make it a slab, or at least as high as stated",
        Source.Published("minimum door and drawer front dimensions, supplier sheet: about 1 in of field must remain"));

    public static Rule DrawerMadeSlab { get; } = new("drawer.made-slab", Note,
        "A drawer front too low for its frame is made as a slab, as the design says", "Match its grain to the fronts around it", Practice);

    public static Rule StilesWithoutHand { get; } = new("leaf.stiles-without-hand", Caution,
        "Stile widths go by hinge and pull side on a leaf that has no left or right hand", "Give such leaves a design with equal stiles", Practice);

    public static Rule MidRailMisplaced { get; } = new("leaf.mid-rail-misplaced", CannotBuild,
        "A mid rail lies over another rail or outside the leaf", "Move it", Geometry);

    public static Rule NoSuchLight { get; } = new("leaf.no-such-light", CannotBuild,
        "A design speaks of a row or light that the leaf does not have", "Count rows from the bottom and lights from the bottom left", Geometry);

    public static Rule WideUndivided { get; } = new("leaf.wide-undivided", Caution,
        "An undivided door is wider than common practice holds", "Divide it, or make a pair",
        Source.Published("guarantee pages of two door plants: none above 24 wide; public trade thread on wide glass doors, 2007"));

    public static Rule TallUndivided { get; } = new("leaf.tall-undivided", Caution,
        "A door over 60 in has no mid rail", "Add a mid rail", Aws);

    public static Rule UnequalTrim { get; } = new("mitre.unequal-trim", Caution,
        "A mitred frame has different trim allowances for width and height", "Give both the same; unequal trimming walks the mitre off the corner", Geometry);

    public static Rule UnequalMitre { get; } = new("mitre.unequal-members", Caution,
        "Members of a mitred frame differ in width, so the mitre is not 45°", "Use one width for all four members", Geometry);

    public static Rule ArchOnMitre { get; } = new("arch.on-mitre", CannotBuild,
        "A mitred frame is given an arch", "Use another construction",
        Source.Published("door-terminology page of a supplier: mitred doors cannot take arches"));

    public static Rule ArchTooHigh { get; } = new("arch.too-high", CannotBuild,
        "An arch rises more than its span or the light beside it allows", "Lower the rise", Geometry);

    public static Rule ArchCannotBeDrawn { get; } = new("arch.cannot-be-drawn", CannotBuild,
        "No arch of the family has the span, rise and shoulders that are asked for", "Take the nearest value that is told", Geometry);

    public static Rule CrownThin { get; } = new("arch.crown-thin", Caution,
        "Too little wood is left between the crown's groove and the rail's edge", "Use a wider rail or a lower rise", Practice);

    public static Rule ShortGrain { get; } = new("arch.short-grain", Caution,
        "The grain runs short in the ends of an arched rail, which break there", "Lengthen the shoulder, or lower the rise", Practice);

    public static Rule InsideRadius { get; } = new("arch.inside-radius", Caution,
        "An arch has an inside radius smaller than the collar that must follow it", "Use a smaller collar, or a rounder curve", Geometry);

    public static Rule RaiseClosesToPoint { get; } = new("arch.no-field", Caution,
        "The raise of an arched panel closes to a point, or leaves less field under the curve than the standard's least", "Use a narrower raise, or a rounder curve", Geometry);

    public static Rule FlankBottoms { get; } = new("arch.flank-bottoms", Caution,
        "A panel that has grown by all its play across the grain would press into the groove beside an arch", "Leave more clearance at the arch, or use a flatter curve", Geometry);

    public static Rule BlankWiderThanStock { get; } = new("arch.blank-wider-than-stock", Caution,
        "An arched rail needs a blank wider than the stock's widest board", "Lower the rise, or glue the blank up", Source.Shop);

    public static Rule PatternFits { get; } = new("arch.pattern-fits", Note,
        "A hard pattern of the rack serves an arch of its family over this span", "Use it, where its rise will do", Source.Shop);

    public static Rule NoPatternFits { get; } = new("arch.no-pattern-fits", Caution,
        "The rack has hard patterns of an arch's family, and none serves this span", "Make the door as wide as a pattern serves, or make a pattern", Source.Shop);

    public static Rule ArchNeedsPair { get; } = new("arch.no-pair", CannotBuild,
        "An arch is to run across a pair, and the leaves are no pair of one design hinged on its outer sides", "Let each leaf have its own arch, or make a pair", Geometry);

    public static Rule ArchOnOneLeaf { get; } = new("arch.one-leaf", Note,
        "An arch is to run across a pair, and the front has one leaf", "Look at its rise over the narrower span", Geometry);

    public static Rule MidStileUnderArch { get; } = new("arch.mid-stile", CannotBuild,
        "A mid stile meets an arched rail where it is not straight", "Give each light its own arch, or move the mid stile under a straight shoulder", Geometry);

    public static Rule CopeTooLong { get; } = new("cutters.cope-too-long", CannotBuild,
        "The cope's tongue is longer than the groove is deep", "Correct the cutter set", Geometry);

    public static Rule JointTooLong { get; } = new("frame.joint-too-long", CannotBuild,
        "A member is narrower than the tongue or tenon it must take", "Use a shorter joint or a wider member", Geometry);

    public static Rule StockOutsideCutters { get; } = new("cutters.stock-range", CannotBuild,
        "The stock is thinner or thicker than the cutters take", "Choose other stock or cutters", Source.Shop);

    public static Rule NoRaise { get; } = new("cutters.no-raise", CannotBuild,
        "A raised panel is asked of cutters that raise none", "Choose cutters with a raise, or a flat panel", Source.Shop);

    public static Rule FinalTooThin { get; } = new("stock.final-too-thin", Caution,
        "Sanding leaves less than the least final thickness", "Plane thicker, or sand less", Aws);

    public static Rule ShortForCoping { get; } = new("rail.short-for-coping", Hazard,
        "A rail is shorter than the shaper's least for coping",
        "Cope a double-wide blank, stick both edges, then rip in two; or use a sled with clamp and backer. A longer blank cut afterwards helps sticking only, never coping",
        ShaperManuals);

    public static Rule ShortForSticking { get; } = new("part.short-for-sticking", Hazard,
        "A member is shorter than the shaper's least for sticking", "Stick a longer blank and cut it to length afterwards, or use a holder", ShaperManuals);

    public static Rule ShortForMachine { get; } = new("part.short-for-machine", Caution,
        "A rough piece is shorter than the jointer's or planer's least", "Joint and plane it as one longer blank and crosscut afterwards",
        Source.Published("jointer and planer manuals: 8 to 14 in; 29 CFR 1910.213(j) and (n) for guarding"));

    public static Rule NarrowForMachine { get; } = new("part.narrow-for-machine", Hazard,
        "A member is narrower than a machine's least", "Work a wider blank and rip it afterwards, or use a holder with featherboards",
        Source.Published("jointer manuals; push blocks below 3 in wide; 29 CFR 1910.213(j), (m) and (n) for guarding"));

    public static Rule ShortForRaising { get; } = new("panel.small-for-raising", Hazard,
        "A panel is smaller than about 10 in a side for raising by hand", "Use a holder, or raise a larger blank and cut it afterwards", Practice);

    public static Rule WiderThanMachine { get; } = new("panel.wider-than-machine", Caution,
        "A panel is wider than the planer or sander takes", "Glue it up in halves that fit and join them last, or flatten by hand", Source.Shop);

    public static Rule WiderThanPractice { get; } = new("panel.wider-than-practice", Caution,
        "A solid panel is wider than common practice holds", "Divide the light, or use sheet",
        Source.Published("public trade thread on raised panel door widths: near 22; on expansion in door panels, 2007: under 16"));

    public static Rule NoField { get; } = new("panel.no-field", CannotBuild,
        "A raised panel keeps less field than the standard's least", "Use a flat panel, narrower members or a slab",
        Source.Published("minimum door and drawer front dimensions, supplier sheet: about 1 in of field must remain"));

    public static Rule NoClearance { get; } = new("panel.no-clearance", CannotBuild,
        "A solid panel has no clearance", "Leave play both ways; only sheet may be glued in",
        Source.Published("public trade thread on expansion in door panels, 2007"));

    public static Rule ClearanceFillsGroove { get; } = new("panel.clearance-fills-groove", CannotBuild,
        "The clearance is as deep as the groove, so nothing holds the panel", "Reduce the clearance or cut a deeper groove", Geometry);

    public static Rule SpeciesUnknown { get; } = new("wood.species-unknown", Note,
        "Nothing is known of how a solid panel's or slab's wood moves", "Correct its name, or add it to the house standard", Practice);

    public static Rule ClimateUnknown { get; } = new("wood.climate-unknown", Caution,
        "A climate is named that the house standard does not have", "Name one that it has, or add it", Practice);

    public static Rule PanelBottoms { get; } = new("panel.bottoms-wettest", Caution,
        "A solid panel has less than its least air at the wettest", "Cut it narrower within the range that works, or change groove, stock or lights", Handbook);

    public static Rule PanelLoose { get; } = new("panel.loose-driest", Caution,
        "An edge of a solid panel stands too little in its groove at the driest", "Cut it wider within the range that works, pin it, or cut a deeper groove", Handbook);

    public static Rule TongueShort { get; } = new("panel.tongue-short", Caution,
        "A raise begins before its tongue is as deep in the groove as it can get", "Raise it with a wider flat on the tongue", Geometry);

    public static Rule GluedAcross { get; } = new("panel.glued-across", CannotBuild,
        "A solid panel is glued in across its grain", "Let it float; one dab or pin in the middle at most", Handbook);

    public static Rule GapCloses { get; } = new("front.gap-closes", Caution,
        "A gap of a front closes at the wettest, finish included", "Leave more air, or use narrower or quartersawn stock", Handbook);

    public static Rule OverlayShrinks { get; } = new("front.overlay-shrinks", Caution,
        "A slab keeps less than the least overlay at the driest", "Take more overlay, or make a framed door", Handbook);

    public static Rule NoSafetyGlazing { get; } = new("glass.no-safety-note", Caution,
        "Nothing says whether the glass is safety glazing", "Decide and note it: tempered or laminated where children are or below the waist; ask the local official",
        Source.Published("16 CFR 1201 and local codes leave cabinet doors open: home-inspection magazine, 2008; tempered as a default is common practice"));

    public static Rule EndNotched { get; } = new("end.toe-notch", Note,
        "An applied end that runs to the floor meets the toe space", "Notch the front stile for the toe after squaring", Practice);

    public static Rule AcceptedNothing { get; } = new("hazard.accepted-nothing", Note,
        "A hazard is accepted that is not there", "Remove the acceptance, or correct its place", Practice);

    private static readonly Source HingeSheet = Source.Published("the hinge's own sheet, as entered in the standard");
    private static readonly Source OverlayLaw = Source.Published("overlay = constant + boring distance − plate: quick reference of a hinge catalogue; plate = boring distance + constant + gap for inset: a second catalogue, 2023");

    public static Rule HingeUnknown { get; } = new("hinge.unknown", Caution,
        "A setting names a hinge or a table of hinge numbers that the standard does not have", "Name one of the standard, or enter it there", Geometry);

    public static Rule HingeNoSide { get; } = new("hinge.no-side", Note,
        "A hinge is chosen for an opening whose doors have no hinge side", "Say where the door is hinged, or choose no hinge for fixed panels", Practice);

    public static Rule HingeWrongMount { get; } = new("hinge.wrong-mount", Caution,
        "A hinge for fronts of one mount is to hang a front of another", "Choose a hinge for that mount", HingeSheet);

    public static Rule HingeOverlay { get; } = new("hinge.overlay", Caution,
        "The hinge cannot give the overlay or the gap, even with its side screw", "Change the overlay, the boring distance or the plate, or choose another hinge", OverlayLaw);

    public static Rule HingeDistance { get; } = new("hinge.boring-distance", Caution,
        "The boring distance is outside the hinge's range", "Bore within the range, or choose another hinge", HingeSheet);

    public static Rule HingeMember { get; } = new("hinge.member-narrow", Caution,
        "The frame member on the hinge side is narrower than the hinge needs", "Choose another hinge, or a wider member", HingeSheet);

    public static Rule HingeStile { get; } = new("hinge.stile-narrow", Caution,
        "The stile does not hold the cup clear of groove and panel, or is narrower than the hinge needs", "Make the stile wider, bore nearer to the edge, or choose a smaller cup",
        Source.Published("follows from the geometry: stile at least boring distance + cup + groove depth; 2 in as the comfortable width: public trade thread, 2014"));

    public static Rule HingeThickness { get; } = new("hinge.leaf-thickness", Caution,
        "The leaf is thinner or thicker than the hinge takes", "Choose another hinge or other stock", HingeSheet);

    public static Rule HingeCupDeep { get; } = new("hinge.cup-deep", Caution,
        "Too little wood is left between the bottom of the cup and the face", "Use thicker stock or a shallower cup, and set the depth stop on scrap", Geometry);

    public static Rule HingeCupUnderMoulding { get; } = new("hinge.cup-under-moulding", Caution,
        "The cup is bored where the moulding of the edge thins the leaf", "Bore further from the edge, use a smaller moulding, or try it on scrap with both cuts first", Geometry);

    public static Rule HingeCupInRabbet { get; } = new("hinge.cup-in-rabbet", Caution,
        "The edge of the leaf is rabbeted where the cup is bored", "Use a hinge for lipped fronts", Geometry);

    public static Rule HingeSwing { get; } = new("hinge.swing", Caution,
        "The gap on the hinge side is less than the leaf needs to swing; two doors on one member need twice that", "Leave a wider gap, bore at a greater distance, or ease the back edge",
        Source.Published("least joint by thickness and boring distance: two hinge catalogues, 2011; twice the single one for two doors on a member: hinge gap note"));

    public static Rule HingeTooFew { get; } = new("hinge.too-few", Caution,
        "A leaf is given fewer hinges than its table says", "Take the table's number, or try a hanging with the real leaf", Practice);

    public static Rule HingeNumberUnknown { get; } = new("hinge.number-unknown", Caution,
        "The table tells no number for this leaf: it is beyond its rows, or goes by a weight that is not known", "Divide the leaf, choose another table, or try a hanging with the real leaf", Practice);

    public static Rule HingeSpacing { get; } = new("hinge.spacing-below-width", Caution,
        "The outer hinges stand no further apart than the leaf is wide", "Set the hinges nearer to the ends, or make a pair of it",
        Source.Published("top-to-bottom spacing must exceed the width: quick reference of a hinge catalogue"));

    public static Rule HingeNoPlace { get; } = new("hinge.no-place", Caution,
        "A hinge meets a shelf or the joint of a rail, and no place near is free", "Move the shelf or the rail, or keep hinges clear by less", Practice);

    public static Rule HingeLeafShort { get; } = new("hinge.leaf-short", Caution,
        "The leaf is too short for its hinges at the usual distance from its ends", "Use smaller hinges nearer to the ends", Practice);

    /// <summary>All rules, in the order of the work.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        NoRoom, NotMeasured, LayoutDiffers, ReadingsContradict, NoDiagonalsOverlay, NoDiagonalsInset, Bowed,
        NeighboursUnknown, NeighboursCollide, BeyondFrame, MemberUnknown, NothingToShare, OverlayBelowLeast, OverlayUnexplained,
        WallClearance, OutOfLine, ColumnNotMeasured, ToeNotchCovered, LipCoversNothing, NothingLeft, BankTooTall,
        HingedToNothing, NoGapInPair, DesignMissing, NarrowerThanFrame, LightTooSmall, DrawerTooLow, DrawerMadeSlab,
        StilesWithoutHand, MidRailMisplaced, NoSuchLight, WideUndivided, TallUndivided, UnequalTrim, UnequalMitre,
        ArchOnMitre, ArchTooHigh, ArchCannotBeDrawn, CrownThin, ShortGrain, InsideRadius, RaiseClosesToPoint, FlankBottoms, BlankWiderThanStock, PatternFits, NoPatternFits, ArchNeedsPair, ArchOnOneLeaf, MidStileUnderArch, CopeTooLong, JointTooLong, StockOutsideCutters, NoRaise, FinalTooThin,
        ShortForCoping, ShortForSticking, ShortForMachine, NarrowForMachine, ShortForRaising,
        WiderThanMachine, WiderThanPractice, NoField, NoClearance, ClearanceFillsGroove,
        SpeciesUnknown, ClimateUnknown, PanelBottoms, PanelLoose, TongueShort, GluedAcross, GapCloses, OverlayShrinks,
        NoSafetyGlazing, EndNotched, AcceptedNothing,
        HingeUnknown, HingeNoSide, HingeWrongMount, HingeOverlay, HingeDistance, HingeMember, HingeStile, HingeThickness, HingeCupDeep, HingeCupUnderMoulding, HingeCupInRabbet,
        HingeSwing, HingeTooFew, HingeNumberUnknown, HingeSpacing, HingeNoPlace, HingeLeafShort,
    ];
}
