using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Tests.Doors;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;
using static Stilewright.Tests.Hanging.Hinged;

namespace Stilewright.Tests.Hanging;

internal static class HangingRuleCases
{
    public static IEnumerable<RuleCase> All =>
    [
        new(Rules.HingeUnknown, Caution, "hole", ["no hinge 'brass'"], () => Sized("15", "24", (Settings.UsualHinge, "brass")), () => Sized("15", "24", (Settings.UsualHinge, Wrap))),
        new(Rules.HingeUnknown, Caution, "hole/leaf", ["no table of hinge numbers 'ours'"],
            () => Sized("15", "24", (Settings.UsualHinge, Wrap), (Settings.HingeCountTable, "ours")), () => Sized("15", "24", (Settings.UsualHinge, Wrap)), "table"),
        new(Rules.HingeNoSide, Note, "hole", ["no leaf here has a hinge side"], () => OfFilling(Single(HingeSide.None)), () => OfFilling(Single())),
        new(Rules.HingeWrongMount, Caution, "hole/leaf", ["for overlay fronts; this one is inset"], () => OfFilling(Single(mount: Mount.Inset)), () => OfFilling(Single())),
        // A fixed overlay of 3/8 and no side screw: a cutting step of 1/32 does not show.
        new(Rules.HingeOverlay, Caution, "hole/leaf", ["is 7/16 in", "gives 3/8 in"], () => OfFilling(Single(), (Settings.Overlay, "7/16")), () => OfFilling(Single(), (Settings.Overlay, "13/32"))),
        // 6.5 + 3 mm is the least; the side screw moves 2 mm, so that 7.5 mm is within it.
        new(Rules.HingeOverlay, Caution, "hole/leaf", ["is 9/32 in", "bored at ≈1/8 in"],
            () => OfFilling(Single(), (Settings.UsualHinge, Compact), (Settings.Overlay, "9/32")), () => OfFilling(Single(), (Settings.UsualHinge, Compact), (Settings.Overlay, "19/64")), "cup"),
        // 1.5 mm too much is more than the 1 mm by which this screw takes back an overlay.
        new(Rules.HingeOverlay, Caution, "hole/leaf", ["is 5/16 in"],
            () => OfFilling(Single(), Minus("1 mm"), (Settings.UsualHinge, Compact), (Settings.Overlay, "5/16")),
            () => OfFilling(Single(), Minus("1.6 mm"), (Settings.UsualHinge, Compact), (Settings.Overlay, "5/16")), "side screw"),
        new(Rules.HingeDistance, Caution, "hole/leaf", ["takes ≈1/8 in to ≈1/4 in"],
            () => Sized("15", "24", (Settings.UsualHinge, Compact), (Settings.BoringDistance, "2.9 mm")), () => Sized("15", "24", (Settings.UsualHinge, Compact), (Settings.BoringDistance, "3 mm"))),
        new(Rules.HingeMember, Caution, "hole/leaf", ["is 23/32 in wide", "needs 3/4 in"], () => Beside("23/32"), () => Beside("3/4")),
        // 3 + 35 mm and a groove of 3/8 are 47.525 mm, between 1 55/64 and 1 7/8.
        new(Rules.HingeStile, Caution, "hole/leaf", ["is 1 27/32 in wide", "needs ≈1 7/8 in"], () => Stile("1 27/32"), () => Stile("1 7/8")),
        new(Rules.HingeStile, Caution, "hole/leaf", ["is 2 1/4 in wide", "needs 2 9/32 in"],
            () => OfFilling(Single(), Wider(hinge => hinge with { LeastStile = In("2 9/32") })), () => OfFilling(Single(), Wider(hinge => hinge with { LeastStile = In("2 1/4") })), "told by its sheet"),
        // 13/16 less 1/32 on each face.
        new(Rules.HingeThickness, Caution, "hole/leaf", ["is 3/4 in thick", "takes 25/32 in and more"],
            () => OfFilling(Single(), Wider(hinge => hinge with { ThinnestLeaf = In("25/32") })), () => OfFilling(Single(), Wider(hinge => hinge with { ThinnestLeaf = In("3/4") }))),
        new(Rules.HingeThickness, Caution, "hole/leaf", ["takes 23/32 in at most"],
            () => OfFilling(Single(), Wider(hinge => hinge with { ThickestLeaf = In("23/32") })), () => OfFilling(Single(), Wider(hinge => hinge with { ThickestLeaf = In("3/4") })), "thick"),
        new(Rules.HingeCupDeep, Caution, "hole/leaf", ["21/32 in deep leaves 3/32 in", "ends at 25/32 in"], () => Depth("21/32"), () => Depth("5/8")),
        new(Rules.HingeCupDeep, Caution, "hole/leaf", ["comes through a leaf 3/4 in thick"], () => Depth("3/4"), () => Depth("5/8"), "through"),
        // 3/4 less 12.5 mm is just over 1/4.
        new(Rules.HingeCupUnderMoulding, Caution, "hole/leaf", ["moulding 5/32 in deep", "leaves ≈3/32 in"], () => Moulded("3/8", "5/32"), () => Moulded("3/8", "1/8")),
        new(Rules.HingeCupUnderMoulding, Caution, "hole/leaf", ["how deep the moulding is nobody said"], () => Moulded("3/8", null), () => Moulded("1/16", null), "of unknown depth"),
        new(Rules.HingeCupInRabbet, Caution, "hole/leaf", ["rabbeted on the back"],
            () => OfFilling(Single(mount: Mount.Lipped), (Settings.UsualHinge, Compact)), () => OfFilling(Single(), (Settings.UsualHinge, Compact))),
        new(Rules.HingeSwing, Caution, "one/leaf", ["Only 7/32 in is left to the door beside it", "need 1/4 in"], () => BackToBack("31/32"), () => BackToBack("1")),
        new(Rules.HingeSwing, Caution, "two/leaf", ["3/32 in is left on its hinge side", "needs 1/8 in"], () => SideBySide("27/32"), () => SideBySide("7/8"), "one door"),
        // 900 mm lies between 35 13/32 and 35 7/16.
        new(Rules.HingeTooFew, Caution, "hole/leaf", ["gets 2 hinges; its table says 3"],
            () => Sized("15", "35 7/16", (Settings.UsualHinge, Wrap), (Settings.HingeNumber, "2")), () => Sized("15", "35 13/32", (Settings.UsualHinge, Wrap), (Settings.HingeNumber, "2"))),
        // 2400 mm lies between 94 15/32 and 94 1/2.
        new(Rules.HingeNumberUnknown, Caution, "hole/leaf", ["94 1/2 in long", "beyond the last row"], () => Sized("15", "94 1/2", (Settings.UsualHinge, Wrap)), () => Sized("15", "94 15/32", (Settings.UsualHinge, Wrap))),
        new(Rules.HingeNumberUnknown, Caution, "hole/leaf", ["goes by weight", "2 hinges are planned"],
            () => Of("driftwood"), () => Of("red oak"), "by weight"),
        // 24 − 2 × 3 1/8 = 17 3/4.
        new(Rules.HingeSpacing, Caution, "hole/leaf", ["stand 17 3/4 in apart, and it is 17 3/4 in wide"], () => Sized("17 3/4", "24", (Settings.UsualHinge, Wrap)), () => Sized("17 23/32", "24", (Settings.UsualHinge, Wrap))),
        // From 3 1/8 a hinge may go down to 1 1/2, or up to the middle at 5.
        new(Rules.HingeNoPlace, Caution, "hole/leaf", ["first hinge, 3 1/8 in along, meets a shelf"], () => Shelved("1 29/32"), () => Shelved("1 7/8")),
        // 2 × 3 1/8 and 2 between them.
        new(Rules.HingeLeafShort, Caution, "hole/leaf", ["8 7/32 in long", "2 1/32 in from the ends"], () => Slab("8 7/32"), () => Slab("8 1/4")),
    ];

    private static Breakdown Sized(string width, string height, params (Setting Setting, string Value)[] settings) => Door(width, height, null, settings);

    private static Breakdown OfFilling(Filling filling, params (Setting Setting, string Value)[] settings) => OfFilling(filling, ShippedStandards.Inch, settings);

    private static Breakdown OfFilling(Filling filling, HouseStandard standard, params (Setting Setting, string Value)[] settings) => Breakdown.Of(
        Course(Design(), Set([.. settings.Any(each => each.Setting == Settings.UsualHinge) ? [] : new[] { (Settings.UsualHinge, Wrap) }, .. settings]), Opening("15", "24", filling)), standard);

    private static HouseStandard Wider(Func<HingeKind, HingeKind> change) => Changed(Wrap, change);

    private static HouseStandard Minus(string travel) => Changed(Compact, hinge => hinge with { Adjustment = new(new(In(travel), In("0"))) });

    private static Breakdown Beside(string member) => Break(Course(Design(), Set((Settings.UsualHinge, Wrap)),
        Opening("15", "24", Single()) with { Beside = new(new FrameEdge(In(member))) }));

    private static Breakdown Stile(string width) => Door("15", "24", Design() with { Stiles = new(In(width)) }, (Settings.UsualHinge, Compact), (Settings.BoringDistance, "3 mm"));

    private static Breakdown Depth(string depth) => OfFilling(Single(), Changed(Compact, hinge => hinge with { Cup = hinge.Cup! with { Depth = In(depth) } }), (Settings.UsualHinge, Compact));

    // A leaf weighs what its woods weigh, where their density is known.
    private static Breakdown Of(string species) => Door("15", "24", Design() with { Species = species }, (Settings.UsualHinge, Wrap), (Settings.HingeCountTable, "counts-catalogue"));

    private static Breakdown Moulded(string width, string? depth) => Door("15", "24", Design() with { EdgeWidth = In(width), EdgeDepth = depth is null ? null : In(depth) }, (Settings.UsualHinge, Compact), (Settings.BoringDistance, "3 mm"));

    private static Breakdown BackToBack(string member) => Columns(member, HingeSide.Right, HingeSide.Left);

    private static Breakdown SideBySide(string member) => Columns(member, HingeSide.Left, HingeSide.Left);

    // Each laps 3/8 over the member; the hinge asks for 1/8 on its own side.
    private static Breakdown Columns(string member, HingeSide one, HingeSide two) => Breakdown.Of(
        Faces(Set((Settings.UsualHinge, Wrap), (Settings.GapBetweenNeighbours, "1/16")), Face("face", Layout("40", "30",
            new(Columns: new([new(Opening: Hole(Single(one), "one")), new(Opening: Hole(Single(two), "two"))], In(member), []))))),
        Changed(Wrap, hinge => hinge with { Gaps = [new(In("3/4"), In("1/8"))] }));

    private static DoorDesign Board => Design() with { Construction = Construction.Slab, Cutters = null, Panel = null };

    private static Breakdown Slab(string height) => Door("6", height, Board, (Settings.UsualHinge, Wrap));

    private static Breakdown Shelved(string clear) => Break(Course(Board, Set((Settings.UsualHinge, Wrap), (Settings.Overlay, "0"), (Settings.HingeClear, clear)),
        Opening("6", "10", Single()) with { Shelves = [new(In("3 1/8"))] }));
}
