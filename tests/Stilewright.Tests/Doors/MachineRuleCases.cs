using Stilewright.Doors;
using Stilewright.Findings;
using static Stilewright.Findings.Severity;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

internal static class MachineRuleCases
{
    public static IEnumerable<RuleCase> All =>
    [
        // Two shaper owner's manuals: 12 without a fixture. Rails are the leaf less 4 1/2, plus 3/4 of copes.
        new(Rules.ShortForCoping, Hazard, "hole/leaf/rail.top", ["Rails are 11 31/32 in long", "nothing under 12 in", "double-wide blank", "never coping"],
            () => Door("15 23/32", "24"), () => Door("15 3/4", "24")),
        // Stiles go into the clamps 1/8 longer than the leaf is high.
        new(Rules.ShortForSticking, Hazard, "hole/leaf/stile.left", ["Stiles are 11 31/32 in long", "nothing under 12 in"], () => Door("15 3/4", "11 27/32"), () => Door("15 3/4", "11 7/8")),
        // Four jointer manuals: 12 among the figures. The rough crosscut adds 1.
        new(Rules.ShortForMachine, Caution, "hole/leaf/rail.top", ["11 31/32 in long in the rough", "the jointer and the planer take nothing under 12 in"], () => Door("14 23/32", "24"), () => Door("14 3/4", "24")),
        // Half the trim allowance of 1/8 makes a stile of 1 7/16 just wide enough for the shaper's 1 1/2.
        new(Rules.NarrowForMachine, Hazard, "hole/leaf/stile.left", ["Stiles are 1 15/32 in wide", "narrower than 1 1/2 in"], () => Stiles("1 13/32"), () => Stiles("1 7/16")),
        // Common practice, no source: 10. The panel is the leaf less 4 1/2, plus 3/4 of grooves, less 1/4 of play.
        new(Rules.ShortForRaising, Hazard, "hole/leaf/panel", ["9 31/32 in × ", "under 10 in"], () => Door("13 31/32", "24"), () => Door("14", "24")),
        new(Rules.WiderThanMachine, Caution, "hole/leaf/panel", ["20 1/32 in wide", "the planer takes 20 in"], () => Door("24 1/32", "30"), () => Door("24", "30")),
        new(Rules.WiderThanPractice, Caution, "hole/leaf/panel", ["22 1/32 in wide", "beyond the 22 in"], () => Door("26 1/32", "30"), () => Door("26", "30")),
        new(Rules.AcceptedNothing, Note, "hole/leaf/rail.top", ["rail.short-for-coping"], () => Accepted("15 3/4"), () => Accepted("15 23/32")),
    ];

    private static Breakdown Stiles(string width) => Door("20", "24", Design() with { Stiles = new(In(width)) });

    private static Breakdown Accepted(string width) =>
        Break(Accepting(DoorOf(width, "24", Design()), Rules.ShortForCoping.Code, "hole/leaf/rail.top", "The sled with clamp and backer is used."));
}
