using Stilewright.Measure;
using Stilewright.Web.Features.CheckList;

namespace Stilewright.Web.Tests.CheckList;

public sealed class TypedLineTests
{
    private static TypedLine Line(string part, string count, string width, string length)
    {
        var line = new TypedLine(1);
        foreach (var (column, text) in new[] { (ListColumn.Part, part), (ListColumn.Count, count), (ListColumn.Width, width), (ListColumn.Length, length) })
            line.Typed(column, text);
        return line;
    }

    [Fact]
    public void A_line_is_read_in_the_unit_of_the_page()
    {
        var read = Line(" top rail ", "2", "2 1/4", "200 mm").Read(3, LengthUnit.Inch)!;
        Assert.Equal((3, "top rail", 2), (read.Number, read.Name, read.Count));
        Assert.Equal((Length.FromInches(new(9, 4)), Length.FromMillimetres(200)), (read.Width!.Value.Value, read.Length!.Value.Value));
        Assert.Null(Line("panel", "", "8", "").Read(1, LengthUnit.Millimetre)!.Count);
    }

    [Theory]
    [InlineData("", "1", "2", "8", ListColumn.Part)]
    [InlineData("rail", "two", "2", "8", ListColumn.Count)]
    [InlineData("rail", "0", "2", "8", ListColumn.Count)]
    [InlineData("rail", "401", "2", "8", ListColumn.Count)]
    [InlineData("rail", "1", "2 1/", "8", ListColumn.Width)]
    [InlineData("rail", "1", "2", "0", ListColumn.Length)]
    [InlineData("rail", "1", "", "", ListColumn.Width)]
    public void What_cannot_be_taken_is_said_at_its_field_and_nothing_is_guessed(string part, string count, string width, string length, ListColumn place)
    {
        var line = Line(part, count, width, length);
        Assert.Null(line.Read(1, LengthUnit.Inch));
        Assert.Equal([place], Enum.GetValues<ListColumn>().Where(column => line.ProblemOf(column) is not null));
        line.Typed(place, "1");
        Assert.Null(line.ProblemOf(place));
    }

    [Theory]
    [InlineData("57 mm", LengthUnit.Inch, "57 mm")]
    [InlineData("2 1/4", LengthUnit.Inch, "2 1/4")]
    [InlineData("2 1/4", LengthUnit.Millimetre, "2 1/4 in")]
    public void A_size_of_a_file_says_the_same_in_the_field(string text, LengthUnit unit, string shown)
    {
        Assert.IsType<ParseResult<Length>.Parsed>(LengthReader.Read(text, LengthUnit.Inch));
        var entry = new LengthEntry(text, ((ParseResult<Length>.Parsed)LengthReader.Read(text, LengthUnit.Inch)).Value);
        var line = TypedLine.Of(7, new(1, "rail", 2, entry, null), unit);
        Assert.Equal(shown, line[ListColumn.Width]);
        Assert.Equal(entry.Value, line.Read(1, unit)!.Width!.Value.Value);
    }
}
