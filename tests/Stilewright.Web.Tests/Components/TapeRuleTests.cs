using Bunit;
using Stilewright.Measure;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Tests.Components;

public sealed class TapeRuleTests
{
    [Fact]
    public async Task The_rule_stands_at_the_length_and_its_marks_can_be_read_off()
    {
        await using var page = new BunitContext();
        var rule = page.Render<TapeRule>(set => set.Add(it => it.Value, LengthReader.ReadOwn("23 1/2", LengthUnit.Inch)).Add(it => it.Unit, LengthUnit.Inch));
        var marks = rule.Find(".rule").GetAttribute("data-marks")!.Split('|');
        Assert.Equal(33, marks.Length);
        Assert.Equal("23 1/2", marks[16]);
        Assert.Equal(33, rule.FindAll(".tick").Count);
        Assert.Equal(["23", "24"], rule.FindAll("text").Select(each => each.TextContent));
        // In the middle of 320.
        Assert.StartsWith("M160 ", rule.Find(".here").GetAttribute("d"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_nothing_is_typed_there_is_no_mark()
    {
        await using var page = new BunitContext();
        var rule = page.Render<TapeRule>(set => set.Add(it => it.Value, null).Add(it => it.Unit, LengthUnit.Millimetre));
        Assert.Empty(rule.FindAll(".here"));
        Assert.StartsWith("0|1|2|", rule.Find(".rule").GetAttribute("data-marks"), StringComparison.Ordinal);
    }
}
