using CsCheck;
using SkiaSharp;
using Stilewright.Drawing.Letters;

namespace Stilewright.Drawing.Tests.Letters;

public sealed class TypesetterTests
{
    private const double RelativeTolerance = 0.001;
    private const char FractionSlash = '\u2044';

    private static readonly Gen<string> Words = Gen.OneOf(
        Gen.String[Gen.Char["abcdefgMWiléß&<\"’×"], 1, 12], Gen.Int[0, 400].Select(i => $"{i}"),
        Gen.Select(Gen.Int[1, 63], Gen.Int[1, 6], (numerator, power) => $"{numerator}/{1 << power}"));

    private static readonly Gen<string> Texts = Words.Array[0, 25].Select(words => string.Join(' ', words));
    private static readonly Gen<TextStyle> Styles = Gen.OneOf(
        Gen.Const(TextStyle.Small), Gen.Const(TextStyle.Body), Gen.Const(TextStyle.Figure), Gen.Const(TextStyle.Title));

    [Fact]
    public void Runs_follow_one_another_to_the_end_of_the_line() => Gen.Select(Texts, Styles).Sample((text, style) =>
    {
        var line = Typesetter.Set(text, style);
        var right = 0.0;
        foreach (var run in line.Runs)
        {
            // Beside the slash of a fraction there is a little air.
            Assert.InRange(run.Right - right, -1e-9, 0.05 * style.SizeMillimetres);
            right = run.Right + run.Width;
        }

        Assert.Equal(line.Width, right, 1e-9);
        Assert.Equal(text.Replace('/', FractionSlash), string.Concat(line.Runs.Select(run => run.Text)));
    });

    [Theory]
    [InlineData("12 3/16", "12| |3|⁄|16")]
    [InlineData("(7/8)", "(|7|⁄|8|)")]
    [InlineData("1/2 1/4", "1|⁄|2| |1|⁄|4")]
    [InlineData("Rail 2 1/4 in", "Rail 2| |1|⁄|4| in")]
    [InlineData("and/or 1/2/3 a1/2 3/4b 10-1/2", "and/or 1/2/3 a1/2 3/4b 10-1/2")]
    public void Fractions_are_set_and_nothing_else(string text, string runs) =>
        Assert.Equal(runs, string.Join('|', Typesetter.Set(text, TextStyle.Figure).Runs.Select(run => run.Text)));

    [Theory]
    [InlineData(4)]
    [InlineData(7)]
    public void A_fraction_is_as_high_as_the_figures_beside_it_and_legible(double sizeMillimetres)
    {
        var runs = Typesetter.Set("12 13/16", new(sizeMillimetres)).Runs;
        var (whole, numerator, denominator) = (Ink(runs[0]), Ink(runs[2]), Ink(runs[4]));
        Assert.Equal(whole.Top, numerator.Top, 0.02 * sizeMillimetres);
        Assert.Equal(whole.Bottom, denominator.Bottom, 0.02 * sizeMillimetres);

        // Common practice, no source: figures of fractions no lower than 1.6 mm are read at arm's length.
        Assert.True(numerator.Top - numerator.Bottom >= 1.6);
    }

    [Fact]
    public void The_letters_of_a_fraction_do_not_run_into_each_other()
    {
        foreach (var text in new[] { "1/2", "15/16", "7/8", "31/64", "11/32" })
        {
            var runs = Typesetter.Set(text, TextStyle.Figure).Runs;
            using var numerator = Shape(runs[0]);
            using var slash = Shape(runs[1]);
            using var denominator = Shape(runs[2]);
            Assert.False(Meet(numerator, slash), text);
            Assert.False(Meet(slash, denominator), text);
            Assert.False(Meet(numerator, denominator), text);
        }
    }

    [Fact]
    public void Wrapping_keeps_every_word_and_the_width() => Gen.Select(Texts, Styles, Gen.Double[30, 120]).Sample((text, style, width) =>
    {
        var lines = Typesetter.Wrap(text, style, width);
        Assert.All(lines, line => Assert.InRange(line.Width, 0, width));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal),
            string.Concat(lines.Select(line => line.Text)).Replace(" ", "", StringComparison.Ordinal));
    });

    [Fact]
    public void Words_that_fit_are_not_broken() => Gen.Select(Texts, Gen.Double[60, 120]).Sample((text, width) =>
        Assert.Equal(
            text.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            Typesetter.Wrap(text, TextStyle.Small, width).SelectMany(line => line.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries))));

    [Fact]
    public void Mixed_numbers_are_never_torn() => Gen.Select(Gen.String[Gen.Char["abcWi"], 1, 9], Gen.Int[1, 99], Gen.Int[15, 60]).Sample((word, whole, width) =>
    {
        var text = string.Join(' ', Enumerable.Repeat($"{word}, ({whole} 3/16 × ≈{whole} 7/8", 6));
        foreach (var line in Typesetter.Wrap(text, TextStyle.Body, width))
        {
            Assert.False(line.Text.StartsWith("3/16", StringComparison.Ordinal), line.Text);
            Assert.False(line.Text.StartsWith("7/8", StringComparison.Ordinal), line.Text);
        }
    });

    [Fact]
    public void A_word_wider_than_the_line_is_broken_within_it()
    {
        var lines = Typesetter.Wrap(new string('W', 40), TextStyle.Body, 20);
        Assert.True(lines.Count > 1);
        Assert.All(lines, line => Assert.InRange(line.Width, 1, 20));
        Assert.Equal(40, lines.Sum(line => line.Text.Length));
    }

    [Fact]
    public void Widths_are_those_of_Skia() => Gen.Select(Texts, Styles).Sample((text, style) =>
    {
        // Skia rounds the advances of small fonts; at a thousand times the size that no longer counts.
        using var font = Font(style with { SizeMillimetres = 1000 * style.SizeMillimetres });
        var reference = font.MeasureText(text) / 1000;
        Assert.Equal(reference, Typesetter.Width(text, style), RelativeTolerance * Math.Max(1, reference));
    });

    [Theory]
    [InlineData(Weight.Regular)]
    [InlineData(Weight.Strong)]
    public void Figures_have_one_width(Weight weight) =>
        Assert.Single("0123456789".Select(figure => Typesetter.Width(figure.ToString(), new(10, weight))).Distinct());

    private static SKFont Font(TextStyle style) => new(Typesetter.Face(style.Weight), (float)style.SizeMillimetres)
    {
        Subpixel = true,
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
    };

    private static (double Top, double Bottom) Ink(LetterRun run)
    {
        using var path = Shape(run);
        return (-path.TightBounds.Top, -path.TightBounds.Bottom);
    }

    private static SKPath Shape(LetterRun run)
    {
        using var font = Font(run.Style);
        return font.GetTextPath(run.Text, new SKPoint((float)run.Right, (float)-run.Up));
    }

    private static bool Meet(SKPath one, SKPath other)
    {
        using var both = one.Op(other, SKPathOp.Intersect);
        return !both.IsEmpty;
    }
}
