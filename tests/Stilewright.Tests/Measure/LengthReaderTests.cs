using System.Globalization;
using CsCheck;
using Fractions;
using Stilewright.Measure;

namespace Stilewright.Tests.Measure;

public class LengthReaderTests
{
    private static readonly Gen<int> Finest = Gen.Int[3, 6].Select(power => 1 << power);

    private static readonly Gen<LengthFormat> Formats = Gen.Select(
        Gen.Enum<LengthUnit>(), Finest, (unit, finest) => new LengthFormat(unit, finest));

    private static readonly Gen<string> TroublesomeText = Gen.Frequency(
        (5, Gen.Char["0123456789"]),
        (4, Gen.Char["/⁄∕.,'\"′″’”-−–—‐~≈+ \u00A0\u2009\u202F\t\r\n"]),
        (2, Gen.Char["½⅓⅛⅞↉⁰⁹₀₉²inftmcINFTeE"]),
        (1, Gen.Char)).Array[0, 48].Select(characters => new string(characters));

    [Theory]
    [InlineData("27 1/2", 55, 2)]
    [InlineData("8 9/16", 137, 16)]
    [InlineData("11/16", 11, 16)]
    [InlineData("1/64", 1, 64)]
    [InlineData("27", 27, 1)]
    [InlineData("0", 0, 1)]
    [InlineData("120", 120, 1)]
    [InlineData("−1/8", -1, 8)]
    [InlineData("−3 3/4", -15, 4)]
    public void Inches_read_and_print_both_ways(string text, int numerator, int denominator)
    {
        var length = Length.FromInches(new Fraction(numerator, denominator));
        var format = new LengthFormat(LengthUnit.Inch, 64);
        Assert.Equal(length, Parsed(text, LengthUnit.Inch, allowNegative: true));
        Assert.Equal(text, format.Print(length));
        Assert.Equal(length, Parsed(text + " in", LengthUnit.Millimetre, allowNegative: true));
        Assert.Equal(text + " in", format.PrintWithUnit(length));
    }

    [Theory]
    [InlineData("698.5", 6985, 10)]
    [InlineData("12", 12, 1)]
    [InlineData("0.1", 1, 10)]
    [InlineData("0", 0, 1)]
    [InlineData("3048", 3048, 1)]
    [InlineData("−1.5", -3, 2)]
    public void Millimetres_read_and_print_both_ways(string text, int numerator, int denominator)
    {
        var length = Length.FromMillimetres(new Fraction(numerator, denominator));
        var format = LengthFormat.MillimetresToTenth;
        Assert.Equal(length, Parsed(text, LengthUnit.Millimetre, allowNegative: true));
        Assert.Equal(text, format.Print(length));
        Assert.Equal(length, Parsed(text + " mm", LengthUnit.Inch, allowNegative: true));
        Assert.Equal(text + " mm", format.PrintWithUnit(length));
    }

    [Theory]
    [InlineData("27-1/2")]
    [InlineData("27–1/2")]
    [InlineData("27‐1/2")]
    [InlineData("27\u20111/2")]
    [InlineData("27-½")]
    [InlineData("27½")]
    [InlineData("27 ½")]
    [InlineData("27\u00A0½")]
    [InlineData("27\u2009½")]
    [InlineData("27\u202F1/2")]
    [InlineData("  27   1/2  ")]
    [InlineData("27\t1/2\r\n")]
    [InlineData("27 1⁄2")]
    [InlineData("27 1∕2")]
    [InlineData("27¹⁄₂")]
    [InlineData("27 ¹⁄₂")]
    [InlineData("27 ¹/2")]
    [InlineData("27 8/16")]
    [InlineData("027 01/02")]
    [InlineData("55/2")]
    [InlineData("27.5")]
    [InlineData("27,5")]
    [InlineData("27.50000")]
    [InlineData("27,5000")]
    public void Bare_numbers_that_are_27_and_a_half(string text)
    {
        Assert.Equal(Length.FromInches(new Fraction(55, 2)), Parsed(text, LengthUnit.Inch));
        Assert.Equal(Length.FromInches(new Fraction(55, 2)), Parsed(text + "\"", LengthUnit.Millimetre));
    }

    [Theory]
    [InlineData("27 1/2\"")]
    [InlineData("27 1/2 \"")]
    [InlineData("27 1/2″")]
    [InlineData("27 1/2”")]
    [InlineData("27 1/2''")]
    [InlineData("27 1/2′′")]
    [InlineData("27 1/2’’")]
    [InlineData("27½in")]
    [InlineData("27 1/2 in.")]
    [InlineData("27 1/2 IN")]
    [InlineData("27.5 inches")]
    [InlineData("27,5 Inch")]
    [InlineData("2' 3 1/2\"")]
    [InlineData("2'3½\"")]
    [InlineData("2′ 3 1/2″")]
    [InlineData("2’ 3 1/2”")]
    [InlineData("2' 3 1/2''")]
    [InlineData("2'-3 1/2\"")]
    [InlineData("2'-3-1/2\"")]
    [InlineData("2' 3 1/2")]
    [InlineData("2' 3.5")]
    [InlineData("2 ft 3 1/2 in")]
    [InlineData("2ft 3 1/2in")]
    [InlineData("2 ft. 3 1/2 in.")]
    [InlineData("2 foot 3 1/2 inches")]
    [InlineData("2 feet 3,5 inches")]
    [InlineData("55/24 ft")]
    [InlineData("698.5 mm")]
    [InlineData("698,5mm")]
    [InlineData("69.85 cm")]
    [InlineData("0.6985 m")]
    [InlineData("698.5 mm.")]
    [InlineData("698.5 millimetres")]
    [InlineData("698.5 millimeters")]
    [InlineData("69.85 Centimetres")]
    [InlineData("69.85 centimeter")]
    [InlineData("0.6985 metre")]
    [InlineData("0.6985 meters")]
    public void A_written_unit_decides_whatever_the_default(string text)
    {
        Assert.Equal(Length.FromInches(new Fraction(55, 2)), Parsed(text, LengthUnit.Inch));
        Assert.Equal(Length.FromInches(new Fraction(55, 2)), Parsed(text, LengthUnit.Millimetre));
    }

    [Theory]
    [InlineData(".5", 1, 2)]
    [InlineData(",5", 1, 2)]
    [InlineData("0,125", 1, 8)]
    [InlineData("0.125", 1, 8)]
    [InlineData("012,125", 97, 8)]
    [InlineData("1.125", 9, 8)]
    [InlineData("1,2000", 6, 5)]
    [InlineData("⁹⁄₁₆", 9, 16)]
    [InlineData("⁹/₁₆", 9, 16)]
    [InlineData("¹²³⁄₂₄₆", 1, 2)]
    [InlineData("⅓", 1, 3)]
    [InlineData("⅚", 5, 6)]
    [InlineData("⅒", 1, 10)]
    [InlineData("17/3 in", 17, 3)]
    [InlineData("17/3", 17, 3)]
    [InlineData("2'", 24, 1)]
    [InlineData("2 ft", 24, 1)]
    [InlineData("2 1/2 ft", 30, 1)]
    [InlineData("2.5'", 30, 1)]
    [InlineData("2' 0\"", 24, 1)]
    [InlineData("2' ¾\"", 99, 4)]
    [InlineData("2' 11 63/64\"", 2303, 64)]
    [InlineData("2''", 2, 1)]
    [InlineData("0 0/5", 0, 1)]
    [InlineData("10'", 120, 1)]
    public void Read_as_inches(string text, int numerator, int denominator) =>
        Assert.Equal(Length.FromInches(new Fraction(numerator, denominator)), Parsed(text, LengthUnit.Inch));

    [Theory]
    [InlineData("-1/8", -1, 8)]
    [InlineData("−1/8", -1, 8)]
    [InlineData("- 1/8", -1, 8)]
    [InlineData("-2' 3\"", -27, 1)]
    [InlineData("-120", -120, 1)]
    [InlineData("-0", 0, 1)]
    public void Negative_where_it_is_allowed(string text, int numerator, int denominator)
    {
        Assert.Equal(Length.FromInches(new Fraction(numerator, denominator)), Parsed(text, LengthUnit.Inch, allowNegative: true));
        Assert.Equal("this length cannot be negative; leave out the minus sign", Failed(text, LengthUnit.Inch).Expected);
    }

    [Theory]
    [InlineData("", 0, "nothing is written here; write a length, such as 27 1/2 in or 698 mm")]
    [InlineData(" \t ", 0, "nothing is written here; write a length, such as 27 1/2 in or 698 mm")]
    [InlineData("11111111111111111111111111111111111111111", 40, "at most 40 characters; write the length alone, such as 27 1/2 in or 698 mm")]
    [InlineData(" -5", 1, "this length cannot be negative; leave out the minus sign")]
    [InlineData("≈8", 0, "a rounded figure; enter the exact one")]
    [InlineData("~8", 0, "a rounded figure; enter the exact one")]
    [InlineData("2' ≈8", 3, "inches or nothing more after the feet, as in 2' 3 1/2\"")]
    [InlineData("in", 0, "a number, such as 27 1/2 or 698")]
    [InlineData("+5", 0, "a number, such as 27 1/2 or 698")]
    [InlineData("/2", 0, "a number before the slash, such as 11/16")]
    [InlineData("27.", 2, "digits after the point, such as 27.5")]
    [InlineData("27. in", 2, "digits after the point, such as 27.5")]
    [InlineData("27,", 2, "digits after the comma, such as 27,5")]
    [InlineData(".", 0, "digits after the point, such as 27.5")]
    [InlineData("1,200", 1, "a comma before three digits may mean thousands; write 1200 or 1.2")]
    [InlineData("27,500", 2, "a comma before three digits may mean thousands; write 1200 or 1.2")]
    [InlineData("120,000 mm", 3, "a comma before three digits may mean thousands; write 1200 or 1.2")]
    [InlineData("1,200,000", 5, "one decimal mark only, and no mark between thousands")]
    [InlineData("1.2.3", 3, "one decimal mark only, and no mark between thousands")]
    [InlineData("1,200.5", 5, "a comma or a point, not both; write 1200.5")]
    [InlineData("1.200,5", 5, "a comma or a point, not both; write 1200.5")]
    [InlineData("1 200", 2, "no space inside a number; write 1200, or a fraction as in 27 1/2")]
    [InlineData("1\u00A0200 mm", 2, "no space inside a number; write 1200, or a fraction as in 27 1/2")]
    [InlineData("27 1", 3, "no space inside a number; write 1200, or a fraction as in 27 1/2")]
    [InlineData("27 .5", 3, "only a unit after the number, such as 27 1/2 in")]
    [InlineData("27 - 1/2", 3, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("27 -1/2", 3, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("27- 1/2", 2, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("27−1/2", 2, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("27—1/2", 2, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("2' - 3\"", 3, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("2' -3\"", 3, "this dash may be a minus sign; write 27 1/2 or 27-1/2 for a whole number and a fraction")]
    [InlineData("27-5", 3, "a fraction after the dash, such as 27-1/2")]
    [InlineData("27-", 3, "a fraction after the dash, such as 27-1/2")]
    [InlineData("27-x", 3, "a fraction after the dash, such as 27-1/2")]
    [InlineData("27 17/3", 3, "a fraction below 1 after a whole number, such as 27 1/2")]
    [InlineData("1 31/24 ft", 2, "a fraction below 1 after a whole number, such as 27 1/2")]
    [InlineData("27-2/2", 3, "a fraction below 1 after a whole number, such as 27 1/2")]
    [InlineData("27 1/2/3", 6, "one slash only, such as 11/16")]
    [InlineData("1//2", 2, "one slash only, such as 11/16")]
    [InlineData("½/2", 1, "one slash, with a whole number on each side, such as 11/16")]
    [InlineData("1.5/2", 3, "one slash, with a whole number on each side, such as 11/16")]
    [InlineData("1/2.5", 3, "whole numbers above and below the slash, such as 11/16")]
    [InlineData("1/", 2, "a whole number after the slash, such as 11/16")]
    [InlineData("1/x", 2, "a whole number after the slash, such as 11/16")]
    [InlineData("1 /2", 2, "no space about the slash; write 11/16")]
    [InlineData("1/ 2", 2, "no space about the slash; write 11/16")]
    [InlineData("1/0", 2, "a number other than zero below the slash")]
    [InlineData("27 1/00", 5, "a number other than zero below the slash")]
    [InlineData("¹⁄₀", 2, "a number other than zero below the slash")]
    [InlineData("⁹", 1, "a slash and the number below it, such as ⁹⁄₁₆ or 9/16")]
    [InlineData("10³", 3, "a slash and the number below it, such as ⁹⁄₁₆ or 9/16")]
    [InlineData("27.5 1/2", 5, "only a unit after a decimal; write 27.5 or 27 1/2")]
    [InlineData("27.5½", 4, "only a unit after a decimal; write 27.5 or 27 1/2")]
    [InlineData("27.5-1/2", 4, "only a unit after a decimal; write 27.5 or 27 1/2")]
    [InlineData("27,5 3", 5, "only a unit after a decimal; write 27.5 or 27 1/2")]
    [InlineData("½½", 1, "only a unit after the number, such as 27 1/2 in")]
    [InlineData("27 1/2 1/2", 7, "only a unit after the number, such as 27 1/2 in")]
    [InlineData("27 1/2 - 3", 7, "only a unit after the number, such as 27 1/2 in")]
    [InlineData("1e3", 1, "a plain number without an exponent")]
    [InlineData("2.5E-2", 3, "a plain number without an exponent")]
    [InlineData("27 yd", 3, "this is not a unit of length; the units are in, ft, mm, cm and m")]
    [InlineData("27 1/2 x", 7, "this is not a unit of length; the units are in, ft, mm, cm and m")]
    [InlineData("27;", 2, "a unit or nothing more; the units are in, ft, mm, cm and m")]
    [InlineData("27 × 30", 3, "a unit or nothing more; the units are in, ft, mm, cm and m")]
    [InlineData("27\u0000", 2, "a unit or nothing more; the units are in, ft, mm, cm and m")]
    [InlineData("27 in mm", 6, "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"")]
    [InlineData("27 mm 3 in", 6, "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"")]
    [InlineData("3\" 2'", 3, "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"")]
    [InlineData("27 in 1/2", 6, "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"")]
    [InlineData("5 m²", 3, "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"")]
    [InlineData("2' 3\" wide", 6, "nothing more after the unit; use one unit, or feet and then inches as in 2' 3 1/2\"")]
    [InlineData("2' 3'", 4, "only inches can follow feet, as in 2' 3 1/2\"")]
    [InlineData("2 ft 3 mm", 7, "only inches can follow feet, as in 2' 3 1/2\"")]
    [InlineData("2' wide", 3, "inches or nothing more after the feet, as in 2' 3 1/2\"")]
    [InlineData("2' 12\"", 3, "less than 12 in after the feet; 2' 14\" is written 3' 2\"")]
    [InlineData("2' 14 1/2", 3, "less than 12 in after the feet; 2' 14\" is written 3' 2\"")]
    [InlineData("2.5' 3\"", 5, "no inches after feet that have a fraction of their own; write 2' 6\" or 2.5'")]
    [InlineData("2½' 3\"", 4, "no inches after feet that have a fraction of their own; write 2' 6\" or 2.5'")]
    [InlineData("27 1/2 mm", 3, "metric lengths are written with decimals, such as 27.5 mm; for a fraction use inches")]
    [InlineData("½ cm", 0, "metric lengths are written with decimals, such as 27.5 mm; for a fraction use inches")]
    [InlineData("1/2 m", 0, "metric lengths are written with decimals, such as 27.5 mm; for a fraction use inches")]
    [InlineData("698", 0, "over 120 in; did you mean 698 mm?")]
    [InlineData(" 698,5", 1, "over 120 in; did you mean 698,5 mm?")]
    [InlineData("120.001", 0, "over 120 in; did you mean 120.001 mm?")]
    [InlineData("5000", 0, "over 120 in (3048 mm); check the number and its unit")]
    [InlineData("120 1/64", 0, "over 120 in (3048 mm); check the number and its unit")]
    [InlineData("698 in", 0, "over 120 in (3048 mm); check the number and its unit")]
    [InlineData("10' 1\"", 0, "over 120 in (3048 mm); check the number and its unit")]
    [InlineData("3048.1 mm", 0, "over 120 in (3048 mm); check the number and its unit")]
    [InlineData("9999999999999999999999999999999999999999", 0, "over 120 in (3048 mm); check the number and its unit")]
    public void Refused_with_inches_as_default(string text, int position, string expected)
    {
        var failed = Failed(text, LengthUnit.Inch);
        Assert.Equal((text, position, expected), (failed.Text, failed.Position, failed.Expected));
    }

    [Theory]
    [InlineData("27 1/2", 3, "millimetres are written with decimals; did you mean inches? Then add in")]
    [InlineData("27½", 2, "millimetres are written with decimals; did you mean inches? Then add in")]
    [InlineData("17/3", 0, "millimetres are written with decimals; did you mean inches? Then add in")]
    [InlineData("3048,1", 0, "over 120 in (3048 mm); check the number and its unit")]
    [InlineData("1,200", 1, "a comma before three digits may mean thousands; write 1200 or 1.2")]
    public void Refused_with_millimetres_as_default(string text, int position, string expected)
    {
        var failed = Failed(text, LengthUnit.Millimetre);
        Assert.Equal((text, position, expected), (failed.Text, failed.Position, failed.Expected));
    }

    [Theory]
    [InlineData("-698", 1, "over 120 in; did you mean -698 mm?")]
    [InlineData("--5", 1, "a number, such as 27 1/2 or 698")]
    [InlineData("-≈8", 1, "a rounded figure; enter the exact one")]
    [InlineData("-", 1, "a number, such as 27 1/2 or 698")]
    public void Refused_although_negative_is_allowed(string text, int position, string expected)
    {
        var failed = Assert.IsType<ParseResult<Length>.Failed>(LengthReader.Read(text, LengthUnit.Inch, allowNegative: true));
        Assert.Equal((position, expected), (failed.Position, failed.Expected));
    }

    [Fact]
    public void The_message_is_one_short_line_with_the_text_the_place_and_the_fix()
    {
        Assert.Equal("\"27 1/0\", at character 6: a number other than zero below the slash", Failed("27 1/0", LengthUnit.Inch).Message);
        Assert.Equal("\"2 x \", at character 3: this is not a unit of length; the units are in, ft, mm, cm and m", Failed("2\nx\u001B", LengthUnit.Inch).Message);
        Assert.InRange(Failed(new string('1', 1_000_000), LengthUnit.Inch).Message.Length, 100, 200);
    }

    // The Unicode Standard, blocks Latin-1 Supplement and Number Forms: the vulgar fractions and their numeric values.
    [Fact]
    public void One_character_fractions_have_the_value_Unicode_gives_them()
    {
        for (var character = char.MinValue; character <= '⅞'; character++)
        {
            var value = CharUnicodeInfo.GetNumericValue(character);
            if (character is (>= '¼' and <= '¾') or >= '⅐')
                Assert.Equal(value, Parsed(character.ToString(), LengthUnit.Inch).Inches.ToDouble(), tolerance: 1e-9);
        }
    }

    [Fact]
    public void Reading_what_was_printed_exactly_gives_the_length_back() =>
        Gen.Select(Formats, Gen.Int[-30_480, 30_480]).Sample((format, count) =>
        {
            var length = format.Unit == LengthUnit.Inch
                ? Length.FromInches(new Fraction(count % (120 * format.FinestDenominator + 1), format.FinestDenominator))
                : Length.FromMillimetres(new Fraction(count, 10));
            var other = format.Unit == LengthUnit.Inch ? LengthUnit.Millimetre : LengthUnit.Inch;
            Assert.True(format.IsExact(length));
            Assert.Equal(length, Parsed(format.Print(length), format.Unit, allowNegative: true));
            Assert.Equal(length, Parsed(format.PrintWithUnit(length), other, allowNegative: true));
        }, iter: 5_000);

    [Fact]
    public void A_rounded_figure_is_never_read_back_as_exact() =>
        Gen.Select(Formats, Gen.Int[-350, 350], Gen.Int[3, 999]).Sample((format, numerator, denominator) =>
        {
            var length = Length.FromInches(new Fraction(numerator, denominator));
            var isRead = LengthReader.Read(format.Print(length), format.Unit, allowNegative: true) is ParseResult<Length>.Parsed;
            return isRead == format.IsExact(length);
        }, iter: 2_000);

    [Fact]
    public void No_text_throws_and_every_fault_lies_in_the_text() =>
        Gen.Select(TroublesomeText, Gen.Enum<LengthUnit>(), Gen.Bool).Sample((text, unit, allowNegative) =>
            LengthReader.Read(text, unit, allowNegative) switch
            {
                ParseResult<Length>.Parsed { Value: var length } => text.Length <= LengthReader.MostCharacters
                    && Length.Abs(length) <= LengthReader.Limit && (allowNegative || !length.IsNegative),
                ParseResult<Length>.Failed failed => failed.Text == text && failed.Position >= 0
                    && failed.Position <= text.Length && failed.Expected.Length > 0 && failed.Message.Length > 0,
                _ => false,
            }, iter: 20_000);

    [Fact]
    public void Text_over_40_characters_fails_there() => Gen.Char.Array[41, 200].Sample(characters =>
        LengthReader.Read(new string(characters), LengthUnit.Inch) is ParseResult<Length>.Failed { Position: 40 });

    [Fact]
    public void A_null_text_is_the_programmers_mistake() =>
        Assert.Throws<ArgumentNullException>(() => LengthReader.Read(null!, LengthUnit.Inch));

    [Fact]
    public void The_programs_own_text_is_a_length_or_a_programmers_mistake()
    {
        Assert.Equal(Length.FromInches(new Fraction(9, 4)), LengthReader.ReadOwn("2 1/4", LengthUnit.Inch));
        var mistake = Assert.Throws<FormatException>(() => LengthReader.ReadOwn("2 1/0", LengthUnit.Inch));
        Assert.Equal("\"2 1/0\", at character 5: a number other than zero below the slash", mistake.Message);
    }

    private static Length Parsed(string text, LengthUnit unit, bool allowNegative = false) =>
        LengthReader.Read(text, unit, allowNegative) switch
        {
            ParseResult<Length>.Parsed { Value: var length } => length,
            ParseResult<Length>.Failed failed => throw new Xunit.Sdk.XunitException(failed.Message),
            _ => throw new Xunit.Sdk.XunitException("neither case"),
        };

    private static ParseResult<Length>.Failed Failed(string text, LengthUnit unit) =>
        Assert.IsType<ParseResult<Length>.Failed>(LengthReader.Read(text, unit));
}
