using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

internal static class FrontRuleCases
{
    private static readonly Surroundings WideFrame = new(Edge("2"), Edge("2"), Edge("2"), Edge("2"));

    public static IEnumerable<RuleCase> All =>
    [
        new(Rules.NeighboursUnknown, Note, "hole", ["beyond its bottom edge"], () => Beside(WideFrame with { Bottom = null }), () => Beside(WideFrame)),
        new(Rules.NeighboursCollide, CannotBuild, "one/leaf", ["need 1 19/32 in", "both lap 11/16 in", "keep the neighbour's 23/32 in", "lap 21/32 in"],
            () => Neighbours("3/4", "23/32"), () => Neighbours("11/16", "11/16")),
        new(Rules.BeyondFrame, CannotBuild, "hole/leaf", ["On the left it laps 3/8 in", "11/32 in wide", "at most 11/32 in"],
            () => Beside(WideFrame with { Left = Edge("11/32") }), () => Beside(WideFrame with { Left = Edge("3/8") })),
        new(Rules.MemberUnknown, CannotBuild, "hole", ["left edge shares a member"],
            () => Ruled(new(Left: new ShareMember()), null), () => Ruled(new(Left: new ShareMember()), WideFrame)),
        new(Rules.MemberUnknown, CannotBuild, "hole", ["top edge runs to the frame's edge"],
            () => Ruled(new(Top: new ToFrameEdge()), null), () => Ruled(new(Top: new ToFrameEdge()), WideFrame), "to the edge"),
        new(Rules.NothingToShare, CannotBuild, "hole", ["left is 3/32 in wide", "leave 1/8 in"],
            () => Ruled(new(Left: new ShareMember()), WideFrame with { Left = Edge("3/32") }),
            () => Ruled(new(Left: new ShareMember()), WideFrame with { Left = Edge("1/8") })),
        new(Rules.NothingToShare, CannotBuild, "hole", ["left is 7/32 in wide", "leave 1/4 in"],
            () => Ruled(new(Left: new ToFrameEdge()), WideFrame with { Left = Edge("7/32") }),
            () => Ruled(new(Left: new ToFrameEdge()), WideFrame with { Left = Edge("1/4") }), "to the edge"),
        new(Rules.OverlayBelowLeast, Caution, "hole", ["only 7/32 in laps", "the least is 1/4 in", "Take 1/32 in more"], () => Overlay("7/32"), () => Overlay("1/4")),
        new(Rules.OverlayUnexplained, Note, "hole", ["laps 13/32 in on the left and 3/8 in on the right"],
            () => Ruled(new(Left: new FixedOverlay(In("13/32"))), WideFrame), () => Ruled(new(Left: new FixedOverlay(In("3/8"))), WideFrame)),
        new(Rules.OverlayUnexplained, Note, "hole", ["laps 1/2 in on the left and 3/8 in on the right"],
            () => Ruled(new(Left: new FixedOverlay(In("1/2"))), WideFrame),
            () => Ruled(new(Left: new FixedOverlay(In("1/2"))), WideFrame with { Left = Edge("2 1/8") }), "members differ"),
        new(Rules.WallClearance, Caution, "hole/leaf", ["Only 15/32 in", "at least 1/2 in"], () => Wall("27/32"), () => Wall("7/8")),
        new(Rules.WallClearance, Caution, "hole/leaf", ["Only 3/8 in"],
            () => Wall("3/4"), () => Wall("3/4", HingeSide.Right), "hinged away from the wall"),
        // Upper edges: 15 + 3/8 against 14 15/16 + 3/8.
        new(Rules.OutOfLine, Caution, "upper", ["1/16 in out of line with 7·2"], () => Column("14 15/16"), () => Column("14 31/32")),
        new(Rules.ColumnNotMeasured, Caution, "upper", ["without 7·2", "Measure 7·2"],
            () => InColumn(new(WidthTop: In("15"))), () => InColumn(new(WidthTop: In("15"), HeightLeft: In("20")))),
        // The front's edge lies 1 1/2 − 3/8 = 1 1/8 above the frame's, the notch ends at its height less 4.
        new(Rules.ToeNotchCovered, Caution, "hole/leaf", ["hangs 1/32 in below"], () => Toe("5 5/32"), () => Toe("5 1/8")),
        new(Rules.LipCoversNothing, CannotBuild, "hole", ["lip of 1/8 in less 1/8 in"], () => Lip("1/8"), () => Lip("5/32")),
        new(Rules.NothingLeft, CannotBuild, "hole", ["comes to 0 in × 23 13/16 in"], () => Inset("3/16", "24"), () => Inset("7/32", "24")),
        // 13/64 less two gaps of 3/32 is 1/64, which the cutting step takes.
        new(Rules.NothingLeft, CannotBuild, "hole", ["0 in high"], () => Inset("15", "13/64"), () => Inset("15", "7/32"), "the step takes the height"),
        new(Rules.NothingLeft, CannotBuild, "hole", ["narrowest comes to 0 in wide"], () => TypedPair("29 7/8"), () => TypedPair("29 27/32"), "given width"),
        new(Rules.NothingLeft, CannotBuild, "end", ["comes to 0 in"], () => End("1"), () => End("31/32"), "applied end"),
        new(Rules.BankTooTall, CannotBuild, "hole", ["bank is 20 in high"], () => Bank("19 7/8"), () => Bank("19 27/32")),
        new(Rules.EndNotched, Note, "end", ["4 in high"], () => End("0"), () => End("0", EndReach.Toe)),
        new(Rules.EndNotched, Note, "end", ["1/32 in high"], () => End("0", toe: "1/32"), () => End("0", toe: "0"), "no toe space"),
    ];

    public static Breakdown Neighbours(string one, string two, string member = "1 1/2") => Break(Course(Design(), SettingValues.None,
        Opening("15", "24", Single() with { Edges = new(Right: new FixedOverlay(In(one))) }, "one") with { Beside = new(Right: new NextOpening("two", In(member))) },
        Opening("15", "24", Single() with { Edges = new(Left: new FixedOverlay(In(two))) }, "two") with { Beside = new(Left: new NextOpening("one", In(member))) },
        Opening("15", "24", Single(), "three")));

    private static FrameEdge Edge(string member) => new(In(member));

    private static Breakdown Beside(Surroundings beside) =>
        Break(Course(Design(), SettingValues.None, Opening("15", "24", Single()) with { Beside = beside }));

    private static Breakdown Ruled(EdgeRules edges, Surroundings? beside) =>
        Break(Course(Design(), SettingValues.None, Opening("15", "24", Single() with { Edges = edges }) with { Beside = beside }));

    private static Breakdown Overlay(string overlay) =>
        Break(Course(Design(), Set((Settings.Overlay, overlay)), Opening("15", "24", Single())));

    private static Breakdown Wall(string member, HingeSide hinge = HingeSide.Left) =>
        Break(Course(Design(), SettingValues.None, Opening("15", "24", Single(hinge)) with { Beside = new(Left: new WallBeyond(In(member))) }));

    private static Breakdown Column(string lower) => Break(Faces(SettingValues.None, Face("face", Layout("18", "40", new(Rows: new(
        [new(Opening: Opening("15", "17 3/4", Single(), "upper")), new(Opening: Opening(lower, "17 3/4", Single(), "lower"))], In("1 1/2"), []))))));

    private static Breakdown Toe(string notch)
    {
        var layout = Layout("18", "27", new(Opening: Hole(Single())));
        return Break(Faces(SettingValues.None, Face("face", layout with { LeftStile = layout.LeftStile with { Below = In("4"), ToeNotch = In(notch) } })));
    }

    private static Breakdown Lip(string rabbet) =>
        Break(Course(Design(), Set((Settings.LipRabbet, rabbet)), Opening("15", "24", Single(mount: Mount.Lipped))));

    private static Breakdown Inset(string width, string height) => Break(Course(Design() with { Construction = Construction.Slab }, SettingValues.None,
        Opening(width, height, Single(mount: Mount.Inset))));

    private static Breakdown TypedPair(string left) => Break(Course(Design(), Set((Settings.Overlay, "0")),
        Opening("30", "24", Pair() with { Leaves = [Leaf(HingeSide.Left) with { Width = In(left) }, Leaf(HingeSide.Right)] })));

    private static Breakdown Bank(string first) => Break(Course(Design(), Set((Settings.Overlay, "0")),
        Opening("20", "20", new DrawerFilling(Mount.Overlay, "plain", 2, new GivenHeights([new(In(first)), new()])))));

    private static Breakdown End(string frameEdge, EndReach reach = EndReach.Floor, string toe = "4") => Break(Faces(SettingValues.None,
        new Face("face", FaceSide.LeftEnd, null, [], [new AppliedEnd("end", In(frameEdge == "0" ? "24" : "1"), In("34"), In(frameEdge), "plain", null, null, SettingValues.None, reach, In(toe))])));

    private static Breakdown InColumn(Readings lower) => Break(Course(Design(), SettingValues.None,
        Opening("15", "20", Single(), "upper") with { Column = "a" }, Hole(Single(), "lower") with { Column = "a", Readings = lower }));
}
