using Stilewright.Measure;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Tests.Fields;

public sealed class RuleMarkTests
{
    [Fact]
    public void Marks_are_sixteenths_and_lie_round_the_length()
    {
        var marks = RuleMark.Round(Inches("23 11/16"), LengthUnit.Inch);
        Assert.Equal(33, marks.Count);
        Assert.Equal("22 11/16", marks[0].Text);
        Assert.Equal("23 11/16", marks[16].Text);
        Assert.Equal("24 11/16", marks[32].Text);
        Assert.Equal(["23", "24"], marks.Where(mark => mark.Name is not null).Select(mark => mark.Name!));
        Assert.Equal(0, marks[0].X);
        Assert.Equal(1, marks[32].X);
    }

    [Fact]
    public void Marks_are_as_long_as_on_a_rule()
    {
        // From the whole inch down to the sixteenth each kind is shorter.
        var marks = RuleMark.Round(Inches("1"), LengthUnit.Inch).ToDictionary(mark => mark.Text);
        string[] falling = ["1", "1/2", "1/4", "1/8", "1/16"];
        Assert.Equal(falling, falling.OrderByDescending(text => marks[text].Height));
        Assert.Equal(marks["1/4"].Height, marks["3/4"].Height);
        Assert.Equal(marks["1/16"].Height, marks["15/16"].Height);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("0")]
    [InlineData("1/2")]
    public void A_rule_begins_at_zero(string? text)
    {
        Length? value = text is null ? null : Inches(text);
        Assert.Equal("0", RuleMark.Round(value, LengthUnit.Inch)[0].Text);
        Assert.Equal("0", RuleMark.Round(value, LengthUnit.Millimetre)[0].Text);
    }

    [Fact]
    public void Millimetres_are_named_by_the_ten()
    {
        var marks = RuleMark.Round(Length.FromMillimetres(600), LengthUnit.Millimetre);
        Assert.Equal(["580", "590", "600", "610", "620"], marks.Where(mark => mark.Name is not null).Select(mark => mark.Name!));
        Assert.Equal(41, marks.Count);
    }

    [Theory]
    [InlineData("0", 0)]
    [InlineData("1/2", 0.25)]
    [InlineData("1", 0.5)]
    [InlineData("23 1/2", 0.5)]
    // Between marks: half a sixteenth on is half a mark of 32.
    [InlineData("23 17/32", 0.5 - (0.5 / 32))]
    public void A_length_stands_at_its_place(string text, double place) =>
        Assert.Equal(place, RuleMark.PlaceOf(Inches(text), LengthUnit.Inch)!.Value, 9);

    [Fact]
    public void No_length_has_no_place() => Assert.Null(RuleMark.PlaceOf(null, LengthUnit.Inch));

    private static Length Inches(string text) => LengthReader.ReadOwn(text, LengthUnit.Inch);
}
