using System.Reflection;
using Stilewright.Findings;
using Stilewright.Tests.Doors;
using Stilewright.Tests.Hanging;

namespace Stilewright.Tests.Teaching;

public class MistakeTableTests
{
    private sealed record Row(string Symptom, string Signature, Type? In, string By, params object[] Begins)
    {
        public Rule? Rule { get; init; }
    }

    private static Row ByRule(string symptom, string signature, Rule rule) => new(symptom, signature, null, "") { Rule = rule };

    private static readonly Row[] All =
    [
        new("rail too short, tongues forgotten", "−2d", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "-3/4"),
        new("rail short, one tongue counted", "−d", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "-3/8"),
        new("rail too long, tongues added twice", "+2d", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "3/4"),
        new("rail very long, stiles not taken off", "+2s − 2d", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "3 3/4"),
        new("rail short by a stile", "−s", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "-2 1/4"),
        new("allowance added to the rail", "+A", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "1/8"),
        new("overlay taken off", "−2(oL + oR)", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Door_and_overlay), "-2"),
        new("overlay forgotten", "−(oL + oR)", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Door_and_overlay), "-1"),
        new("overlay on one side only", "−o", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Door_and_overlay), "-1/2"),
        new("gap of the pair forgotten", "+g/2", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Pair_and_gap), "1/16"),
        new("gap taken from each leaf", "−g/2", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Pair_and_gap), "-1/16"),
        new("two overlays for each leaf", "+o", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Pair_and_gap), "1/2"),
        new("doors collide over the member", "oL + oR − M", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Usual_overlay_over_a_shared_member)),
        new("not trimmed", "+A both ways", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Trim_not_done)),
        new("all the trim from one side", "stiles differ by A", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Trim_from_one_side)),
        new("inset gap on one side only", "+g", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Inset_gap_once)),
        new("panel cut to what is seen", "−2(d − c)", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Panel), "-1/2"),
        new("panel bottoms", "+2c", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Panel), "1/4"),
        new("panel rattles, clearance twice", "−2c", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Panel), "-1/4"),
        new("panel loose in thickness", "groove width − thickness", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Thickness), "flat"),
        new("height and width exchanged", "exchanged", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Panel_with_height_and_width_exchanged)),
        new("one inch short", "−1", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rail), "-1"),
        new("each piece shorter than the one before", "−n × kerf", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Kerf_of_every_cut_lost)),
        new("somebody else's size", "equals another line", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Sizes_of_another_door)),
        new("trapezoid, rails unequal", "one rail off", typeof(IfCutTests), nameof(IfCutTests.One_rail_too_long_holds_the_other_joints_open)),
        new("arch leaves a thin top", "−a", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Rise_left_out_of_the_blank)),
        new("one template for rail and panel", "d − c", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Panel_by_the_template_of_its_rail)),
        ByRule("collar does not follow", "radius < collar", Rules.InsideRadius),
        ByRule("raise meets in the middle", "field < 0", Rules.NoField),
        new("cup on the other stile", "from the other edge", typeof(BoredTests), nameof(BoredTests.The_other_stile_is_named)),
        new("distance read as the centre's, or the reverse", "17.5 mm", typeof(BoredTests), nameof(BoredTests.Distance_and_centre_confused_are_half_a_cup)),
        new("overlay off with the boring distance", "1 : 1", typeof(BoredTests), nameof(BoredTests.A_distance_that_is_off_moves_the_overlay_one_for_one)),
        new("overlays of top and bottom exchanged", "oT − oB", typeof(BoredTests), nameof(BoredTests.Overlays_exchanged_are_off_by_their_difference)),
        ByRule("cup through the face", "thickness − depth", Rules.HingeCupDeep),
        ByRule("hinge has no place beside shelf or rail", "spacing", Rules.HingeNoPlace),
        ByRule("too few hinges", "number by height and weight", Rules.HingeTooFew),
        new("hung upside down", "mirrored", typeof(BoredTests), nameof(BoredTests.Bored_from_the_other_end_is_mirrored)),
        new("opening measured again since", "equals an earlier size", typeof(KnownMistakesTests), nameof(KnownMistakesTests.Opening_changed_since)),
    ];

    public static TheoryData<string> Symptoms => [.. All.Select(row => row.Symptom)];

    [Theory]
    [MemberData(nameof(Symptoms))]
    public void Every_mistake_with_a_signature_has_its_case(string symptom)
    {
        var row = Assert.Single(All, each => each.Symptom == symptom);
        if (row.Rule is { } rule)
        {
            Assert.Contains(LeafRuleCases.All.Concat(PanelRuleCases.All).Concat(HangingRuleCases.All).Concat(MachineRuleCases.All), each => each.Rule == rule);
            return;
        }

        var test = row.In!.GetMethod(row.By)!;
        var cases = test.GetCustomAttributes<InlineDataAttribute>().Select(data => data.GetData(test).Single()).ToList();
        Assert.True(row.Begins.Length == 0 ? test.GetCustomAttributes<FactAttribute>().Any() : cases.Exists(each => each.Take(row.Begins.Length).SequenceEqual(row.Begins)), $"{row.By} has no case of {row.Symptom}");
    }
}
