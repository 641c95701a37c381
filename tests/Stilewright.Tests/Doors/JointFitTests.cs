using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using static Stilewright.Tests.Doors.Samples;

namespace Stilewright.Tests.Doors;

/// <summary>Frames whose members would meet or pass through one another. Plain geometry, no source.</summary>
public class JointFitTests
{
    private static Breakdown Door(DoorDesign design) =>
        Break(Course(design, Set((Settings.Overlay, "0")), Opening("20", "30", Single())));

    private static IEnumerable<string> Codes(Breakdown breakdown) => breakdown.Findings.Select(finding => finding.Rule.Code);

    // Clear height 25 1/2; one mid rail of 2 1/4 leaves two lights of 11 5/8.
    [Theory]
    [InlineData("7", "7", true, true)]
    [InlineData("7", null, true, true)]
    [InlineData("11", "11", true, true)]
    [InlineData("11 5/8", null, true, false)]
    [InlineData("12", null, false, true)]
    [InlineData("12 3/4", "12 3/4", false, false)]
    [InlineData("12", "12", false, true)]
    public void An_arch_stops_short_of_the_mid_rail_and_of_the_other_arch(string top, string? bottom, bool midRail, bool fits)
    {
        var breakdown = Door(Design() with
        {
            TopArch = new(ArchFamily.Pointed, In(top)),
            BottomArch = bottom is null ? null : new(ArchFamily.Pointed, In(bottom)),
            MidRails = midRail ? new(1, null, []) : null,
        });
        Assert.Equal(fits, !Codes(breakdown).Contains("arch.too-high"));
        Assert.Equal(fits, breakdown.Parts.Any());
    }

    [Theory]
    [InlineData(Construction.MortiseAndTenon, "2 1/4", true)]
    [InlineData(Construction.MortiseAndTenon, "2 9/32", false)]
    [InlineData(Construction.Dowelled, "2 9/32", true)]
    public void A_tenon_is_no_longer_than_the_stile_is_wide(Construction construction, string tenon, bool fits)
    {
        var breakdown = Door(Design() with { Construction = construction, Tenon = In(tenon) });
        Assert.Equal(fits ? 0 : 2, Codes(breakdown).Count(code => code == "frame.joint-too-long"));
        Assert.Equal(fits, breakdown.Parts.Any());
    }

    [Fact]
    public void A_mid_stile_tenon_is_no_longer_than_the_rails_are_wide()
    {
        var design = Design() with { Construction = Construction.MortiseAndTenon, BottomRail = In("4"), TopRail = In("1"), MidStiles = [new(1, 1)] };
        var finding = Assert.Single(Door(design).Findings, finding => finding.Rule.Code == "frame.joint-too-long");
        Assert.Equal("The top rail is 1 in wide and must take a joint 1 1/4 in long.", finding.ProblemText(LengthFormat.InchesTo32));
        Assert.DoesNotContain("frame.joint-too-long", Codes(Door(design with { MidStiles = [] })));
    }
}
