using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

internal static class LeafRuleCases
{
    private static readonly DoorDesign Plain = Design();
    private static readonly DoorDesign Mitred = Plain with { Construction = Construction.Mitred };
    private static readonly MidRails Even = new(1, null, []);

    public static IEnumerable<RuleCase> All =>
    [
        new(Rules.HingedToNothing, CannotBuild, "hole/leaf.middle", ["hinged on its left, where there is no frame", "\"hingedTo\": \"left\""], () => Three(null), () => Three("left")),
        new(Rules.HingedToNothing, CannotBuild, "hole/leaf.middle", ["hinged to right, which is not the leaf on that side"], () => Three("right"), () => Three("left"), "wrong leaf"),
        new(Rules.NoGapInPair, Caution, "hole", ["meet with 0 in", "gap of 1/8 in"], () => PairLeaf("12 1/2", Mount.Overlay), () => PairLeaf("12 15/32", Mount.Overlay)),
        new(Rules.NoGapInPair, Caution, "hole", ["meet with 0 in", "gap of 3/32 in"], () => PairLeaf("12 13/32", Mount.Inset), () => PairLeaf("12 3/8", Mount.Inset), "inset"),
        new(Rules.DesignMissing, CannotBuild, "hole/leaf", ["no door design 'plain'"], () => Door("15", "24", Plain with { Id = "other" }), () => Door("15", "24")),
        new(Rules.DesignMissing, CannotBuild, "hole/leaf", ["cutters or stock"], () => Door("15", "24", Plain with { Stock = "none" }), () => Door("15", "24"), "stock"),
        new(Rules.DesignMissing, CannotBuild, "hole/leaf", ["cutters or stock"], () => Door("15", "24", Plain with { Cutters = "none" }), () => Door("15", "24"), "cutters"),
        new(Rules.DesignMissing, CannotBuild, "hole/leaf", ["The panel names stock"],
            () => Door("15", "24", Plain with { Panel = Raised with { Stock = "none" } }), () => Door("15", "24"), "panel stock"),
        new(Rules.DesignMissing, CannotBuild, "hole/leaf", ["names stock"],
            () => Door("15", "24", Plain with { Construction = Construction.Slab, Stock = "none" }), () => Door("15", "24", Plain with { Construction = Construction.Slab }), "slab stock"),
        new(Rules.NarrowerThanFrame, CannotBuild, "hole/leaf", ["4 1/2 in × 24 in", "stiles take 4 1/2 in"], () => Door("4 1/2", "24"), () => Door("4 17/32", "24")),
        new(Rules.LightTooSmall, CannotBuild, "hole/leaf", ["31/32 in × 19 1/2 in", "least is 1 in"], () => Door("5 15/32", "24"), () => Door("5 1/2", "24")),
        // 13 − 4 1/2 − 6 9/16 = 1 15/16, which makes two lights of 31/32.
        new(Rules.LightTooSmall, CannotBuild, "hole/leaf", ["lights of row 1 come to 31/32 in"], () => Divided("13"), () => Divided("13 1/16"), "between mid stiles"),
        new(Rules.LightTooSmall, CannotBuild, "hole/leaf", ["Row 1 of lights", "31/32 in"], () => MidRailAt("3 7/32"), () => MidRailAt("3 1/4"), "below a mid rail"),
        // 2 × 1 1/2 + 2 × 1 1/4 + 1 + 2 × 1/8 − 2 × 3/8 = 6.
        new(Rules.DrawerTooLow, CannotBuild, "hole/front.1", ["5 31/32 in high", "at least 6 in"], () => Drawer("5 31/32", false), () => Drawer("6", false)),
        new(Rules.DrawerTooLow, CannotBuild, "hole/front.1", ["at least 6 in"], () => Drawer("5 31/32", false), () => Drawer("5 31/32", true), "made as a slab"),
        new(Rules.DrawerMadeSlab, Note, "hole/front.1", ["5 31/32 in high", "needs 6 in"], () => Drawer("5 31/32", true), () => Drawer("6", true)),
        new(Rules.StilesWithoutHand, Caution, "hole/leaf", ["2 1/4 in at the hinges and 2 in at the pull"], () => Handless("2"), () => Handless("2 1/4")),
        new(Rules.MidRailMisplaced, CannotBuild, "hole/leaf", ["Row 1 of lights", "comes to 0 in", "clear by 19 1/2 in"], () => MidRailAt("2 1/4"), () => MidRailAt("2 9/32")),
        new(Rules.NoSuchLight, CannotBuild, "hole/leaf", ["divides row 2", "has 1"],
            () => Door("24", "24", Plain with { MidStiles = [new(2, 1)] }), () => Door("24", "24", Plain with { MidStiles = [new(1, 1)] })),
        new(Rules.NoSuchLight, CannotBuild, "hole/leaf", ["fills light 2", "has 1"],
            () => Door("15", "24", Plain with { Lights = [new(2, Raised)] }), () => Door("15", "24", Plain with { Lights = [new(1, Raised)] }), "fills"),
        new(Rules.WideUndivided, Caution, "hole/leaf", ["24 1/32 in wide", "beyond 24 in"], () => Door("24 1/32", "30"), () => Door("24", "30")),
        new(Rules.TallUndivided, Caution, "hole/leaf", ["60 1/32 in high", "over 60 in"], () => Door("15", "60 1/32"), () => Door("15", "60")),
        new(Rules.TallUndivided, Caution, "hole/leaf", ["60 1/32 in high"], () => Door("15", "60 1/32"), () => Door("15", "60 1/32", Plain with { MidRails = Even }), "divided"),
        new(Rules.UnequalTrim, Caution, "hole/leaf", ["5/32 in on width and 1/8 in on height"],
            () => Door("15", "24", Mitred, (Settings.TrimWidth, "5/32")), () => Door("15", "24", Mitred)),
        new(Rules.UnequalMitre, Caution, "hole/leaf", ["2 1/4 in, 2 1/4 in, 2 9/32 in and 2 9/32 in"],
            () => Door("15", "24", Mitred with { TopRail = In("2 9/32"), BottomRail = In("2 9/32") }), () => Door("15", "24", Mitred)),
        new(Rules.ArchNeedsPair, CannotBuild, "hole/leaf.left", ["runs across a pair", "this front has 3 leaves"],
            () => Fronts(Across, HingeSide.Left, HingeSide.None, HingeSide.Right), () => Fronts(Plain with { TopArch = Eyebrow("2") }, HingeSide.Left, HingeSide.None, HingeSide.Right)),
        new(Rules.ArchNeedsPair, CannotBuild, "hole/leaf.left", ["hinged on its outer sides"],
            () => Fronts(Across, HingeSide.Top, HingeSide.Top), () => Fronts(Across, HingeSide.Left, HingeSide.Right), "hinges"),
        new(Rules.ArchNeedsPair, CannotBuild, "hole/leaf.left", ["two designs, plain and other"], () => TwoDesigns("other"), () => TwoDesigns("plain"), "two designs"),
        new(Rules.ArchOnOneLeaf, Note, "hole/leaf", ["has one leaf"], () => Fronts(Across, HingeSide.Left), () => Fronts(Across, HingeSide.Left, HingeSide.Right)),
        new(Rules.ArchOnOneLeaf, Note, "hole/front.1", ["has one leaf"],
            () => Break(Course(Across, SettingValues.None, Opening("24", "12", new DrawerFilling(Mount.Overlay, "plain")))), () => Fronts(Across, HingeSide.Left, HingeSide.Right), "drawer front"),
        // 40 + 2 × 3/8 in two leaves of 20 5/16: each clear by 15 13/16, and shoulders as long as that leave nothing in either.
        new(Rules.ArchCannotBeDrawn, CannotBuild, "hole/leaf.left", ["does not rise in this leaf"],
            () => Fronts(AcrossWith("15 13/16"), HingeSide.Left, HingeSide.Right), () => Fronts(AcrossWith("15 3/4"), HingeSide.Left, HingeSide.Right), "across a pair"),
        // 40 3/4 − 4 1/2 = 36 1/4, half of which is 18 1/8.
        new(Rules.ArchTooHigh, CannotBuild, "hole/leaf.left", ["of the pair", "rise at most 18 1/8 in"],
            () => Fronts(Across with { TopArch = Eyebrow("18 5/32") with { AcrossPair = PairCrown.MiddleOfPair } }, HingeSide.Left, HingeSide.Right),
            () => Fronts(Across with { TopArch = Eyebrow("18 1/8") with { AcrossPair = PairCrown.MiddleOfPair } }, HingeSide.Left, HingeSide.Right), "across a pair"),
        new(Rules.ArchOnMitre, CannotBuild, "hole/leaf", ["cannot take an arch"], () => Door("15", "24", Mitred with { TopArch = Eyebrow("2") }), () => Door("15", "24", Mitred)),
        // The span is 15 − 4 1/2 = 10 1/2; one arc rises at most half of it.
        new(Rules.ArchTooHigh, CannotBuild, "hole/leaf", ["rises 5 9/32 in over a span of 10 1/2 in", "at most 5 1/4 in"],
            () => Door("15", "24", Plain with { TopArch = Eyebrow("5 9/32") }), () => Door("15", "24", Plain with { TopArch = Eyebrow("5 1/4") })),
        // 10 − 4 1/2 = 5 1/2 between the rails, which two rises of 2 3/4 fill.
        new(Rules.ArchTooHigh, CannotBuild, "hole/leaf", ["together rise 5 1/2 in", "5 1/2 in high"], () => BothArched("2 3/4"), () => BothArched("2 23/32"), "two arches meet"),
        // 12 − 3 × 2 1/4 = 5 1/4 makes two lights of 2 5/8.
        new(Rules.ArchTooHigh, CannotBuild, "hole/leaf", ["top arch rises 2 5/8 in", "2 5/8 in high"], () => ArchOverMidRail("2 5/8"), () => ArchOverMidRail("2 19/32"), "meets a mid rail"),
        // A cathedral rises at most half the width between its shoulders: (10 1/2 − 2 × 1/4) / 2 = 5.
        new(Rules.ArchCannotBeDrawn, CannotBuild, "hole/leaf", ["cathedral of rise 5 1/32 in", "Let the rise be at most 5 in"],
            () => Arched(ArchFamily.Cathedral, "5 1/32", "1/4"), () => Arched(ArchFamily.Cathedral, "5", "1/4")),
        new(Rules.ArchCannotBeDrawn, CannotBuild, "hole/leaf", ["stepped arch has shoulders", "Let the shoulders be at least 1/32 in"],
            () => Arched(ArchFamily.Stepped, "2", null), () => Arched(ArchFamily.Stepped, "2", "1/32"), "without shoulders"),
        // Common practice: 3/4 of wood. A step of half the rise stands 1 high at the end of the shoulder: 11/32 and a cope of 3/8.
        new(Rules.ShortGrain, Caution, "hole/leaf/rail.top", ["grain runs 23/32 in", "less than 3/4 in", "shoulders be at least 3/8 in"],
            () => Arched(ArchFamily.Stepped, "2", "11/32"), () => Arched(ArchFamily.Stepped, "2", "3/8")),
        // R = 10 1/2² / (8 × 1 3/4) + 7/8 = 8 3/4.
        new(Rules.InsideRadius, Caution, "hole/leaf/rail.top", ["inside radius of 8 3/4 in", "moulding has 8 25/32 in", "collar's radius be at most 8 3/4 in"],
            () => Collared("8 25/32"), () => Collared("8 3/4")),
        // x = 5, a = 2 1/2: R1 = (5² + 2 1/2²) / 10 = 3 1/8 on the rail, and less by 3/8 − 1/16 on the panel.
        new(Rules.InsideRadius, Caution, "hole/leaf/panel", ["raised panel has an inside radius of 2 13/16 in", "raising has 2 27/32 in"],
            () => RaiseCollared("2 27/32"), () => RaiseCollared("2 13/16"), "panel"),
        new(Rules.InsideRadius, Caution, "hole/leaf/panel", ["raised panel has an inside radius of 2 13/16 in", "the back-cut has 2 27/32 in"],
            () => BackCut("2 27/32"), () => BackCut("2 13/16"), "back of the panel"),
        // x = 5, a = 2 1/2: R1 + R2 = 6 1/4; as 1 to 1 the crown has 3 1/8, as 1 to 4 it has 5.
        new(Rules.InsideRadius, Caution, "hole/leaf/rail.top", ["inside radius of 3 1/8 in", "reverse radius over the crown's"],
            () => Reversed(1, 1), () => Reversed(1, 4), "ratio"),
        // Over 10 1/2 from stile to stile a double curve rises at most 5 1/4.
        new(Rules.ArchCannotBeDrawn, CannotBuild, "hole/leaf", ["double curve of rise 5 9/32 in", "Let the rise be at most 5 1/4 in"],
            () => Arched(ArchFamily.DoubleCurve, "5 9/32", null), () => Arched(ArchFamily.DoubleCurve, "5 1/4", null), "double curve"),
        // 15 1/32 − 4 1/2 is 1/32 wider than the curve.
        new(Rules.ArchCannotBeDrawn, CannotBuild, "hole/leaf", ["drawn for a span of 10 1/2 in", "the span is 10 17/32 in", "Let the span be exactly 10 1/2 in"],
            () => DrawnOver("15 1/32", "5 1/4"), () => DrawnOver("15", "5 1/4"), "drawn"),
        new(Rules.ArchCannotBeDrawn, CannotBuild, "hole/leaf", ["In step 1 of the top arch, the three points of the arc lie in one line"],
            () => DrawnOver("15", "0"), () => DrawnOver("15", "5 1/4"), "step"),
        new(Rules.InsideRadius, Caution, "hole/leaf/rail.top", ["has an inside corner", "radius of 1/2 in"],
            () => Cornered(ArchFamily.Pointed), () => Cornered(ArchFamily.Eyebrow), "corner"),
        // x = a = 1 7/8: R2 = 15/16, and 5/16 more on the panel make 1 1/4, the width of the raise.
        new(Rules.RaiseClosesToPoint, Caution, "hole/leaf/panel", ["raise of 1 1/4 in closes to a point", "raise be at most 1 7/32 in"],
            () => RaisedBy("1 1/4"), () => RaisedBy("1 7/32")),
        // The span is 10 1/2; 10 3/32 and 11 1/16 of span are doors of 14 19/32 and 15 9/16.
        new(Rules.NoPatternFits, Caution, "hole/leaf/rail.top", ["span of 10 1/2 in", "door 14 19/32 in wide for pattern Low, or 15 9/16 in wide for pattern Wide"],
            () => OnRack("9", "10 3/32"), () => OnRack("9", "10 1/2")),
        new(Rules.PatternFits, Note, "hole/leaf/rail.top", ["Pattern Low fits this span of 10 1/2 in", "leaves the curve that the design says"],
            () => OnRack("9", "10 1/2"), () => OnRack("9", "10 15/32")),
        // R = 12² / (8 × 1 1/2) + 3/4 = 12 3/4; over 10 1/2 that rises 12 3/4 − √(12 3/4² − 5 1/4²) = 1.131, nearest 1 1/8.
        new(Rules.PatternFits, Note, "hole/leaf/rail.top", ["Over this span it rises", "1 1/8 in, and the design says 1 1/2 in; change the design"],
            () => OnRack("10 1/2", "12"), () => OnRack("10 17/32", "12"), "another rise"),
        // Shoulders of 2 over 12 are 1 1/4 over 10 1/2; as the design says, 1 1/2, they are over 11, which is a door of 15 1/2.
        new(Rules.PatternFits, Note, "hole/leaf/rail.top",
            ["its shoulders are 1 1/4 in, and the design says 1 1/2 in", "reverse radius over the crown's is 0.5, and the design says 1", "A door 15 1/2 in wide has the shoulders of the design"],
            () => Cathedrals("9"), () => Cathedrals("10 17/32"), "other shoulders and radii"),
        // A published example: narrowest 2 1/2, rise 1 1/2 and 1/4 of waste need a blank of 4 1/4 (a woodworking magazine on arched raised panels).
        new(Rules.BlankWiderThanStock, Caution, "hole/leaf/rail.top", ["4 1/4 in wide in the rough, 1 1/2 in of it for the rise", "widest board of '4/4 solid' is 4 7/32 in", "rise be at most 1 15/32 in"],
            () => Boards("4 7/32"), () => Boards("4 1/4")),
        // x = 5, a = 2 1/2: at the inflection the flank leans 53° 8', 2 1/2 + 3/16 from the middle, and moves 1/8 × 2 11/16 / 5 1/2.
        new(Rules.FlankBottoms, Caution, "hole/leaf/panel", ["Grown by 1/4 in", "groove of the top rail beside the arch", "it has 1/32 in of clearance", "clearance at an arch be at least 1/16 in"],
            () => Flanked(ArchFamily.Cathedral, "2 1/2", "1/4", "1/32"), () => Flanked(ArchFamily.Cathedral, "2 1/2", "1/4", "1/16")),
        new(Rules.FlankBottoms, Caution, "hole/leaf/panel", ["clearance at an arch be at least 1/8 in"],
            () => Flanked(ArchFamily.HalfRound, null, null, "ends"), () => Flanked(ArchFamily.HalfRound, null, null, "1/8"), "upright flank"),
        new(Rules.FlankBottoms, Caution, "hole/leaf/panel", ["groove of the bottom rail"],
            () => Lying("3/32"), () => Lying("1/8"), "level grain"),
        new(Rules.CrownThin, Caution, "hole/leaf/rail.top", ["1 3/32 in at its narrowest", "leaves 23/32 in", "less than 3/4 in", "at least 1 1/8 in"],
            () => Door("15", "24", Plain with { TopRail = In("1 3/32"), TopArch = Eyebrow("2") }), () => Door("15", "24", Plain with { TopRail = In("1 1/8"), TopArch = Eyebrow("2") })),
        new(Rules.MidStileUnderArch, CannotBuild, "hole/leaf/stile.mid.1", ["stands 9 in from the stile", "top rail"], () => Shouldered("9 31/32"), () => Shouldered("10")),
        new(Rules.CopeTooLong, CannotBuild, "hole/leaf", ["13/32 in long", "3/8 in deep"], () => Coped("13/32"), () => Coped("3/8")),
        new(Rules.JointTooLong, CannotBuild, "hole/leaf", ["left stile is 2 1/4 in wide", "joint 2 9/32 in long"], () => Tenoned("2 9/32"), () => Tenoned("2 1/4")),
        new(Rules.StockOutsideCutters, CannotBuild, "hole/leaf", ["planed to 13/16 in", "27/32 in to 7/8 in"], () => Thinnest("27/32"), () => Thinnest("13/16")),
        new(Rules.StockOutsideCutters, CannotBuild, "hole/leaf", ["planed to 13/16 in", "11/16 in to 25/32 in"], () => Thickest("25/32"), () => Thickest("13/16"), "thickest"),
        // 13/16 less 1/32 from the face leaves 25/32; the back may lose 1/32 more.
        new(Rules.FinalTooThin, Caution, "hole/leaf", ["ends at 23/32 in", "least of 3/4 in", "Plane to 27/32 in"], () => Sanded("1/16"), () => Sanded("1/32")),
    ];

    private static Arch Eyebrow(string rise) => new(ArchFamily.Eyebrow, In(rise));

    private static Breakdown Tenoned(string tenon) => Door("15", "24", Plain with { Construction = Construction.MortiseAndTenon, Tenon = In(tenon) });

    private static Breakdown Three(string? middle) => Break(Course(Plain, SettingValues.None, Opening("45", "24", new DoorFilling(Mount.Overlay,
        [Leaf(HingeSide.Left), Leaf(HingeSide.Left) with { HingedTo = middle }, Leaf(HingeSide.Right)], "plain"))));

    private static Breakdown PairLeaf(string each, Mount mount)
    {
        LeafEntry Sized(HingeSide hinge) => Leaf(hinge) with { Width = In(each) };
        return Break(Course(Plain, Set((Settings.Overlay, "0")), Opening("25", "24", Pair(mount) with { Leaves = [Sized(HingeSide.Left), Sized(HingeSide.Right)] })));
    }

    private static Breakdown Divided(string width) => Door(width, "24", Plain with { Panel = new(PanelKind.Open), MidStiles = [new(1, 1, In("6 9/16"))] });

    private static Breakdown MidRailAt(string bottomEdge) => Door("15", "24", Plain with
    {
        MidRails = new(null, null, [new(In(bottomEdge), MeasuredTo.BottomEdge)]),
        Panel = new(PanelKind.Open),
    });

    private static Breakdown Drawer(string height, bool slab) => Break(Course(
        Plain with { TopRail = In("1 1/2"), BottomRail = In("1 1/2"), SlabWhenTooLow = slab }, Set((Settings.Overlay, "0")),
        Opening("20", height, new DrawerFilling(Mount.Overlay, "plain"))));

    private static Breakdown Handless(string pull) => Break(Course(Plain with { Stiles = new(null, In("2 1/4"), In(pull)) }, SettingValues.None,
        Opening("15", "24", Single(HingeSide.None))));

    private static DoorDesign Across => Plain with { TopArch = Eyebrow("2") with { AcrossPair = PairCrown.MiddleOfPair } };

    private static DoorDesign AcrossWith(string shoulder) => Plain with { TopArch = new(ArchFamily.Cathedral, In("1/2"), In(shoulder), AcrossPair: PairCrown.MiddleOfPair) };

    private static Breakdown Fronts(DoorDesign design, params HingeSide[] hinges) =>
        Break(Course(design, SettingValues.None, Opening("40", "30", new DoorFilling(Mount.Overlay, [.. hinges.Select(Leaf)], "plain"))));

    private static Breakdown TwoDesigns(string design)
    {
        var course = Course(Across, SettingValues.None, Opening("40", "30", new DoorFilling(Mount.Overlay, [Leaf(HingeSide.Left) with { Design = "plain" }, Leaf(HingeSide.Right) with { Design = design }], "plain")));
        return Break(course with { Designs = [Across, Across with { Id = "other" }] });
    }

    private static Breakdown BothArched(string rise) => Door("15", "10", Plain with { TopArch = Eyebrow(rise), BottomArch = Eyebrow(rise), Panel = new(PanelKind.Open) });

    private static Breakdown ArchOverMidRail(string rise) => Door("15", "12", Plain with { TopArch = Eyebrow(rise), MidRails = Even, Panel = new(PanelKind.Open) });

    // 33 1/2 − 4 1/2 = 29 is three lights of 9 and two mid stiles of 1, from 9 to 10 and from 19 to 20.
    private static Breakdown Shouldered(string shoulder) => Door("33 1/2", "24", Plain with
    {
        TopArch = new(ArchFamily.Cathedral, In("2"), In(shoulder)),
        MidStiles = [new(1, 2, In("1"))],
    });

    private static DoorDesign Archway(ArchFamily family, string rise, string? shoulder) =>
        Plain with { TopArch = new(family, In(rise), shoulder is null ? null : In(shoulder)) };

    private static Breakdown Arched(ArchFamily family, string rise, string? shoulder) => Door("15", "24", Archway(family, rise, shoulder));

    private static Breakdown Collared(string radius) =>
        Breakdown.Of(DoorOf("15", "24", Archway(ArchFamily.Eyebrow, "1 3/4", null)), Cutters(set => set with { CollarRadius = In(radius) }));

    private static Breakdown RaiseCollared(string radius) =>
        Breakdown.Of(DoorOf("15", "24", Archway(ArchFamily.Cathedral, "2 1/2", "1/4")), Cutters(set => set with { RaiseCollarRadius = In(radius) }));

    private static Breakdown BackCut(string radius) =>
        Breakdown.Of(DoorOf("15", "24", Archway(ArchFamily.Cathedral, "2 1/2", "1/4")), Cutters(set => set with { BackCutCollarRadius = In(radius) }));

    private static Breakdown Reversed(int reverse, int crown) => Breakdown.Of(
        DoorOf("15", "24", Plain with { TopArch = new(ArchFamily.Cathedral, In("2 1/2"), In("1/4"), ReverseToCrown: new(reverse, crown)) }),
        Cutters(set => set with { CollarRadius = In("4") }));

    private static Breakdown DrawnOver(string width, string via) => Door(width, "24", Plain with
    {
        TopArch = new(ArchFamily.Drawn, Curve: [new ArcStep(In(via), In(via == "0" ? "0" : "2"), In("10 1/2"), In("0"))]),
    });

    private static Breakdown OnRack(string least, string greatest) => Breakdown.Of(
        DoorOf("15", "24", Plain with { TopArch = Eyebrow("1 1/2") }), ShippedStandards.Inch with
        {
            Patterns =
            [
                new("wide", "Wide", ArchFamily.Eyebrow, In("2"), In("11 1/16"), In("16")),
                new("low", "Low", ArchFamily.Eyebrow, In("1 1/2"), In(least), In(greatest)),
                new("other", "Other", ArchFamily.Cathedral, In("2"), In("9"), In("16")),
            ],
        });

    private static Breakdown Cathedrals(string least) => Breakdown.Of(
        DoorOf("15", "24", Archway(ArchFamily.Cathedral, "1 1/2", "1 1/2")), ShippedStandards.Inch with
        {
            Patterns = [new("hall", "Hall", ArchFamily.Cathedral, In("1 1/2"), In(least), In("12"), In("2"), new(1, 2))],
        });

    private static Breakdown Boards(string widest) => Breakdown.Of(
        DoorOf("15", "24", Archway(ArchFamily.Eyebrow, "1 1/2", null) with { TopRail = In("2 1/2") }, (Settings.TrimHeight, "0")),
        Stocks(stock => stock.Id == "four-quarter" ? stock with { WidestBoard = In(widest) } : stock));

    private static Breakdown Flanked(ArchFamily family, string? rise, string? shoulder, string clearance) => Door("15", "24",
        Plain with { TopArch = new(family, rise is null ? null : In(rise), shoulder is null ? null : In(shoulder)) }, (Settings.ClearanceAtArch, clearance));

    private static Breakdown Lying(string clearance) => Door("15", "24",
        Plain with { BottomArch = Eyebrow("1 1/2"), Panel = Raised with { Grain = GrainDirection.Horizontal } }, (Settings.ClearanceAtArch, clearance));

    private static Breakdown Cornered(ArchFamily family) =>
        Breakdown.Of(DoorOf("15", "24", Archway(family, "2", null)), Cutters(set => set with { CollarRadius = In("1/2") }));

    private static Breakdown RaisedBy(string width) =>
        Breakdown.Of(DoorOf("15", "24", Archway(ArchFamily.Cathedral, "1 7/8", "3 3/8")), Cutters(set => set with { RaiseWidth = In(width) }));

    private static Breakdown Coped(string cope) => Breakdown.Of(DoorOf("15", "24", Plain), Cutters(set => set with { CopeLength = In(cope) }));

    private static Breakdown Thinnest(string thinnest) => Breakdown.Of(DoorOf("15", "24", Plain), Cutters(set => set with { ThinnestStock = In(thinnest) }));

    private static Breakdown Thickest(string thickest) => Breakdown.Of(DoorOf("15", "24", Plain), Cutters(set => set with { ThickestStock = In(thickest) }));

    private static Breakdown Sanded(string back) => Breakdown.Of(DoorOf("15", "24", Plain),
        Stocks(stock => stock.Id == "four-quarter" ? stock with { BackLoss = In(back) } : stock));
}
