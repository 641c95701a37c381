using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

internal static class WoodRuleCases
{
    public static IEnumerable<RuleCase> All =>
    [
        // Red oak, flat, 8 to 10 %: 0.00369 × 2 = 0.00738 of the width. A light of 27 1/2 has a panel of 28 3/4 less 2 × 3/16 = 27 7/8,
        // which grows 0.2057 of its 0.375 of play. At 11 % it grows 0.309 and leaves 0.066, just 1/32 in each; at 12 %, 0.411.
        new(Rules.PanelBottoms, Caution, "hole/leaf/panel", ["At 12 %", "more than the light and its grooves"], () => Wet("12 %"), () => Wet("11 %")),
        new(Rules.PanelBottoms, Caution, "hole/leaf/panel", ["No width works, by", "deeper", "quartersawn stock", "two lights", "use sheet"],
            () => Door("30", "24", null, (Settings.Wettest, "13 %"), (Settings.Driest, "5 %")), () => Door("12", "24", null, (Settings.Wettest, "13 %"), (Settings.Driest, "5 %")), "no width works"),
        // A panel of 11 1/2 + 1/2 = 12 shrinks 0.00738 × 12 = 0.0886: free, it keeps 12 − 0.0886 − 11 1/2 − 3/8 = 0.036 at one edge; pinned, 0.206.
        new(Rules.PanelLoose, Caution, "hole/leaf/panel", ["At 6 %", "free", "stand only 1/32 in in its groove", "1/8 in is the least"],
            () => Door("16", "24", null, (Settings.PanelHeld, Settings.Free)), () => Door("16", "24")),
        new(Rules.TongueShort, Caution, "hole/leaf/panel", ["flat for 1/4 in only"], () => Flat("1/4"), () => Flat("5/16")),
        new(Rules.GluedAcross, CannotBuild, "hole/leaf/panel", ["glued into its groove", "by ≈3/16 in over the year"],
            () => Door("16", "24", Design() with { Panel = Raised with { GluedIn = true } }), () => Door("16", "24")),
        new(Rules.SpeciesUnknown, Note, "hole/leaf/panel", ["No wood is known by the name 'cherrie'", "Cherry is known"],
            () => Door("16", "24", Design() with { Panel = Raised with { Species = "cherrie" } }), () => Door("16", "24", Design() with { Panel = Raised with { Species = "cherry" } })),
        new(Rules.SpeciesUnknown, Note, "hole/leaf/slab", ["How far Aspen, bigtooth moves is not known"], () => Slab("15", Mount.Overlay, "Aspen, bigtooth"), () => Slab("15", Mount.Overlay, "aspen"), "slab"),
        new(Rules.ClimateUnknown, Caution, "hole/leaf", ["no climate 'the-moon'", "most-areas, dry-southwest, damp-coast"],
            () => Door("16", "24", null, (Settings.Climate, "the-moon")), () => Door("16", "24", null, (Settings.Climate, "damp-coast"))),
        // Slabs of red oak, inset, hinged on the left: 0.00738 of their width and 2 × 0.004 of finish against 3/32 at the pull: 11.6 wide at most.
        new(Rules.GapCloses, Caution, "hole/leaf", ["gap on the right, 3/32 in at making", "nothing is left at the wettest"], () => Slab("11 13/16", Mount.Inset), () => Slab("11 11/16", Mount.Inset)),
        // Two of 9 inset: 2 × 0.0664 and 0.008 against 3/32 between them; two frames: 2 × 4 1/2 × 0.00738 = 0.066 and 0.008.
        new(Rules.GapCloses, Caution, "hole/leaf.left", ["gap between the leaves"], () => InsetPair(SlabDesign()), () => InsetPair(Design()), "pair"),
        // An overlay of 5/16 and a least of 1/4: a slab of 8 5/8 loses 0.0637 of the 1/16 between, one of 7 5/8 only 0.0563.
        new(Rules.OverlayShrinks, Caution, "hole/leaf", ["least is 1/4 in", "make it a framed door"], () => Slab("8", Mount.Overlay), () => Slab("7", Mount.Overlay)),
    ];

    private static Breakdown Wet(string wettest) => Door("32", "24", null, (Settings.ClearanceAcross, "3/16"), (Settings.Wettest, wettest), (Settings.Driest, "8 %"));

    // Pinned, 8 to 10 %: a panel of 12 grows 0.0443 on each side of its 1/8 of play, so its edge stands 3/8 − 0.081 = 0.294 deep.
    private static Breakdown Flat(string flat) => Breakdown.Of(DoorOf("16", "24", Design()), Cutters(set => set with { TongueFlat = In(flat) }));

    private static DoorDesign SlabDesign(string species = "red oak") => Design() with { Construction = Construction.Slab, Cutters = null, Panel = null, Species = species };

    private static Breakdown Slab(string width, Mount mount, string species = "red oak") => Break(Course(SlabDesign(species),
        Set((Settings.Overlay, "5/16")), Opening(width, "24", Single(HingeSide.Left, mount))));

    private static Breakdown InsetPair(DoorDesign design) => Break(Course(design, SettingValues.None, Opening("18 1/4", "24", Pair(Mount.Inset))));
}
