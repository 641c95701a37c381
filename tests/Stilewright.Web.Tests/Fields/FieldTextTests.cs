using Stilewright.Measure;
using Stilewright.Web.Fields;

namespace Stilewright.Web.Tests.Fields;

public sealed class FieldTextTests
{
    private static readonly FieldText InchesRead = new(LengthUnit.Inch, LengthFormat.InchesTo32);
    private static readonly FieldText InchesInMillimetres = new(LengthUnit.Inch, LengthFormat.MillimetresToTenth);
    private static readonly FieldText MillimetresInInches = new(LengthUnit.Millimetre, LengthFormat.InchesTo32);

    [Theory]
    // 1 in = 25.4 mm by definition.
    [InlineData("23 1/2", "596.9")]
    [InlineData("23.50", "596.9")]
    // No tenth of a millimetre: as it was typed, with its unit.
    [InlineData("29 1/4", "29 1/4 in")]
    [InlineData("29 1/4\"", "29 1/4\"")]
    public void An_inch_document_read_in_millimetres_shows_what_is_exact(string typed, string shown) =>
        Assert.Equal(shown, InchesInMillimetres.Of(Entry(typed, LengthUnit.Inch)));

    [Theory]
    [InlineData("254", "10")]
    [InlineData("600", "600 mm")]
    public void A_millimetre_document_read_in_inches_shows_what_is_exact(string typed, string shown) =>
        Assert.Equal(shown, MillimetresInInches.Of(Entry(typed, LengthUnit.Millimetre)));

    [Fact]
    public void In_its_own_unit_a_text_stands_as_it_was_typed()
    {
        Assert.Equal("23.50", InchesRead.Of(Entry("23.50", LengthUnit.Inch)));
        Assert.Equal("", InchesRead.Of(null));
    }

    [Theory]
    [InlineData("600", "600 mm")]
    [InlineData(" 600 ", "600 mm")]
    [InlineData("600mm", "600mm")]
    [InlineData("23 1/2 in", "23 1/2 in")]
    [InlineData("23 1/2\"", "23 1/2\"")]
    public void What_is_typed_in_the_other_unit_says_so(string typed, string kept)
    {
        var read = Assert.IsType<ParseResult<LengthEntry>.Parsed>(InchesInMillimetres.Read(typed)).Value;
        Assert.Equal(kept, read.Text);
        Assert.Equal(read.Value, LengthReader.ReadOwn(kept, LengthUnit.Inch));
    }

    [Fact]
    public void What_cannot_be_read_is_told_with_its_place() =>
        Assert.Contains("\"12 3/\"", Assert.IsType<ParseResult<LengthEntry>.Failed>(InchesRead.Read("12 3/")).Message, StringComparison.Ordinal);

    // Whatever is shown is read back as the very same length, in either unit.
    [Theory]
    [InlineData("23 5/16", LengthUnit.Inch)]
    [InlineData("17 1/3", LengthUnit.Inch)]
    [InlineData("0.1", LengthUnit.Inch)]
    [InlineData("12 mm", LengthUnit.Inch)]
    [InlineData("0.1", LengthUnit.Millimetre)]
    [InlineData("17 1/3 in", LengthUnit.Millimetre)]
    public void Nothing_is_lost_by_showing_and_reading(string typed, LengthUnit own)
    {
        foreach (var format in new[] { LengthFormat.InchesTo32, LengthFormat.MillimetresToTenth })
        {
            var text = new FieldText(own, format);
            var entry = Entry(typed, own);
            Assert.Equal(entry.Value, Assert.IsType<ParseResult<LengthEntry>.Parsed>(text.Read(text.Of(entry))).Value.Value);
        }
    }

    private static LengthEntry Entry(string text, LengthUnit unit) => new(text, LengthReader.ReadOwn(text, unit));
}
