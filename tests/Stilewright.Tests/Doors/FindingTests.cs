using System.Reflection;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

public class FindingTests
{
    private static readonly Dictionary<string, RuleCase> Cases =
        new[] { OpeningRuleCases.All, FrontRuleCases.All, LeafRuleCases.All, MachineRuleCases.All, PanelRuleCases.All, WoodRuleCases.All, Hanging.HangingRuleCases.All }
            .SelectMany(cases => cases).ToDictionary(each => each.Name);

    public static TheoryData<string> CaseNames => new(Cases.Keys);

    [Theory]
    [MemberData(nameof(CaseNames))]
    public void A_rule_speaks_past_its_limit_with_place_and_figures(string name)
    {
        var expected = Cases[name];
        var breakdown = expected.Speaks();
        var finding = breakdown.Findings.FirstOrDefault(finding => finding.Rule == expected.Rule && finding.Place.Path == expected.Path);
        Assert.True(finding is not null, $"Silent at {expected.Path}; heard: {string.Join("; ", breakdown.Findings.Select(each => $"{each.Rule.Code} at {each.Place.Path}"))}");
        Assert.Equal(expected.Severity, finding.Severity);
        var text = $"{finding.ProblemText(LengthFormat.InchesTo32)} {finding.AdviceText(LengthFormat.InchesTo32)}";
        Assert.All(expected.Says, figure => Assert.Contains(figure, text, StringComparison.Ordinal));
        Assert.False(NamesInches(finding.ProblemText(LengthFormat.MillimetresToTenth)), "A reader of millimetres is told inches.");
        Assert.False(NamesInches(finding.AdviceText(LengthFormat.MillimetresToTenth)), "A reader of millimetres is told inches.");

        static bool NamesInches(string text) => text.Split(' ') is var words
            && words.Zip(words.Skip(1)).Any(pair => pair.First is [.., >= '0' and <= '9'] && pair.Second.TrimEnd('.', ',', ';', ':') == "in");
    }

    [Theory]
    [MemberData(nameof(CaseNames))]
    public void A_rule_is_silent_at_its_limit(string name)
    {
        var expected = Cases[name];
        Assert.DoesNotContain(expected.Silent().Findings, finding => finding.Rule == expected.Rule && finding.Place.Path == expected.Path);
    }

    [Fact]
    public void Every_rule_has_a_case() =>
        Assert.Empty(Rules.All.Except(Cases.Values.Select(each => each.Rule)).Select(rule => rule.Code));

    [Fact]
    public void Codes_are_unique_and_no_rule_is_left_out_of_the_list()
    {
        Assert.Equal(Rules.All.Count, Rules.All.Select(rule => rule.Code).Distinct().Count());
        var declared = typeof(Rules).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType == typeof(Rule)).Select(property => (Rule)property.GetValue(null)!);
        Assert.Equal(declared.Select(rule => rule.Code).Order(), Rules.All.Select(rule => rule.Code).Order());
    }

    [Theory]
    [InlineData("1 1/2", "3/4", "3/4", "11/16", "3/4", "5/8")]
    // (1 17/32 − 1/8) / 2 = 45/64, rounded down to 11/16.
    [InlineData("1 17/32", "3/4", "3/4", "11/16", "3/4", "21/32")]
    // 1/2 − 1/8 − 3/4 is less than nothing.
    [InlineData("1/2", "1/4", "3/4", "3/16", "3/4", "0")]
    public void Colliding_neighbours_get_both_answers_on_the_step(string member, string one, string two, string even, string kept, string reduced)
    {
        var finding = Assert.Single(FrontRuleCases.Neighbours(one, two, member).Findings, finding => finding.Rule == Rules.NeighboursCollide);
        Assert.Equal($"Let both lap {even} in, or keep the neighbour's {kept} in and let this one lap {reduced} in.", finding.AdviceText(LengthFormat.InchesTo32));
    }

    // 1/2 over a member of 1/2, with 1/8 of air and an inset gap of 3/32 beyond: at most 1/2 − 1/8 + 3/32 = 15/32.
    [Fact]
    public void Overlay_beside_an_inset_neighbour_is_told_its_own_limit()
    {
        var space = new Space(Columns: new(
            [new(Opening: Hole(Single(), "one")), new(Opening: Hole(Single(HingeSide.Right, Mount.Inset), "two"))], In("1/2"), []));
        var breakdown = Break(Faces(Set((Settings.Overlay, "1/2")), Face("face", Layout("40", "30", space))));
        var finding = Assert.Single(breakdown.Findings, finding => finding.Rule == Rules.NeighboursCollide);
        Assert.Equal("Let 7·1 lap at most 15/32 in; its neighbour is inset.", finding.AdviceText(LengthFormat.InchesTo32));
    }

    [Fact]
    public void Both_leaves_of_a_collision_are_withheld_and_no_other()
    {
        var breakdown = FrontRuleCases.Neighbours("3/4", "3/4");
        Assert.Equal(["one/leaf", "two/leaf"], breakdown.Leaves.Where(leaf => leaf.IsWithheld).Select(leaf => leaf.Path));
        Assert.All(breakdown.Leaves, leaf => Assert.Equal(leaf.IsWithheld, leaf.Parts.Count == 0));
        Assert.DoesNotContain(FrontRuleCases.Neighbours("11/16", "11/16").Leaves, leaf => leaf.IsWithheld);
    }

    [Fact]
    public void What_cannot_be_built_withholds_its_own_leaf_only()
    {
        var pair = Pair();
        var breakdown = Break(Course(Design(), SettingValues.None,
            Opening("30", "24", pair with { Leaves = [pair.Leaves[0], pair.Leaves[1] with { Design = "unknown" }] }), Opening("15", "24", Single(), "beside")));
        Assert.Equal("hole/leaf.right", Assert.Single(breakdown.Leaves, leaf => leaf.IsWithheld).Path);
        Assert.Equal(["hole/leaf.left", "beside/leaf"], breakdown.Leaves.Where(leaf => leaf.Parts.Count == 5).Select(leaf => leaf.Path));
    }

    [Fact]
    public void An_accepted_hazard_stays_and_carries_the_reason()
    {
        var course = DoorOf("15", "24", Design());
        Assert.All(Break(course).Findings, finding => Assert.Null(finding.AcceptedBecause));
        // The rails share one finding; naming either of them accepts it.
        foreach (var place in new[] { "hole/leaf/rail.bottom", "hole/leaf/rail.top" })
        {
            var breakdown = Break(Accepting(course, Rules.ShortForCoping.Code, place, "The sled is used."));
            var finding = Assert.Single(breakdown.Findings, finding => finding.Rule == Rules.ShortForCoping);
            Assert.Equal("The sled is used.", finding.AcceptedBecause);
            Assert.Equal(Severity.Hazard, finding.Severity);
            Assert.Equal(5, breakdown.Parts.Count());
        }
    }

    [Fact]
    public void Only_hazards_can_be_accepted()
    {
        var breakdown = Break(Accepting(DoorOf("15", "24", Design("unknown")), Rules.DesignMissing.Code, "hole/leaf", "Never mind."));
        Assert.All(breakdown.Findings, finding => Assert.Null(finding.AcceptedBecause));
        Assert.Contains(breakdown.Findings, finding => finding.Rule == Rules.AcceptedNothing);
        Assert.Empty(breakdown.Parts);
    }
}
