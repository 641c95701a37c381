using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

internal static class PanelRuleCases
{
    public static IEnumerable<RuleCase> All =>
    [
        // Minimum door and drawer front dimensions, supplier sheet: 1 of field; 7 1/2 − 4 − 2 × 1 1/4 = 1.
        new(Rules.NoField, CannotBuild, "hole/leaf/panel", ["raise of 1 1/4 in", "field of 31/32 in", "least is 1 in", "1/32 in wider"],
            () => Door("7 15/32", "24"), () => Door("7 1/2", "24")),
        new(Rules.NoRaise, CannotBuild, "hole/leaf/panel", ["'Straight groover' raises no panels"], () => Grooved(PanelKind.Raised), () => Grooved(PanelKind.FlatSolid)),
        new(Rules.NoClearance, CannotBuild, "hole/leaf/panel", ["0 in of play across the grain and 1/16 in along it"], () => Across("0"), () => Across("1/32")),
        new(Rules.NoClearance, CannotBuild, "hole/leaf/panel", ["0 in of play across"], () => Across("0"), () => Sheet("0", true), "sheet may be glued in"),
        new(Rules.ClearanceFillsGroove, CannotBuild, "hole/leaf/panel", ["clearance of 3/8 in", "groove of 3/8 in"], () => Across("3/8"), () => Across("11/32")),
        new(Rules.ClearanceFillsGroove, CannotBuild, "hole/leaf/panel", ["clearance of 3/8 in"], () => Sheet("3/8", false), () => Sheet("11/32", false), "sheet"),
        new(Rules.NoSafetyGlazing, Caution, "hole/leaf/glass", ["safety glazing", "local official"], () => Glass(null), () => Glass("tempered")),
        new(Rules.FinalTooThin, Caution, "hole/leaf", ["'Panel stock, solid' ends at 19/32 in", "least of 5/8 in"], () => PanelSanded("1/16"), () => PanelSanded("1/32"), "panel"),
    ];

    private static Breakdown Grooved(PanelKind kind) => Door("15", "24", Design() with { Cutters = "plain-groove", Panel = Raised with { Kind = kind } });

    private static Breakdown Across(string clearance) => Door("15", "24", null, (Settings.ClearanceAcross, clearance));

    private static Breakdown Sheet(string clearance, bool gluedIn) => Door("15", "24",
        Design() with { Panel = new(PanelKind.FlatSheet, Stock: "ply", GluedIn: gluedIn) }, (Settings.SheetClearance, clearance));

    private static Breakdown Glass(string? decided) => Door("15", "24", Design() with { Panel = new(PanelKind.Glass, SafetyGlazing: decided) });

    private static Breakdown PanelSanded(string back) => Breakdown.Of(DoorOf("15", "24", Design()),
        Stocks(stock => stock.Id == "panel" ? stock with { BackLoss = In(back) } : stock));
}
