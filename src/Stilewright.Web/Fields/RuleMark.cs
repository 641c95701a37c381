using Fractions;
using Stilewright.Measure;

namespace Stilewright.Web.Fields;

/// <summary>One mark of a drawn rule.</summary>
/// <param name="X">Its place, as a share of the rule's width.</param>
/// <param name="Height">As a share of the longest mark.</param>
/// <param name="Text">What is entered when it is touched.</param>
/// <param name="Name">What stands beside it; null for all but whole inches and centimetres.</param>
public sealed record RuleMark(double X, double Height, string Text, string? Name)
{
    private const int SixteenthsShown = 32;
    private const int MillimetresShown = 40;

    /// <summary>The marks within an inch, or 20 mm, of a length, from left to right; of zero where none is typed.</summary>
    public static IReadOnlyList<RuleMark> Round(Length? value, LengthUnit unit)
    {
        var isInch = unit == LengthUnit.Inch;
        var (step, shown) = isInch ? (new Fraction(1, 16), SixteenthsShown) : (Fraction.One, MillimetresShown);
        var amount = value is { } length ? isInch ? length.Inches : length.Millimetres : Fraction.Zero;
        var middle = Fraction.Round(amount / step, 0, MidpointRounding.AwayFromZero).ToInt64();
        var first = Math.Max(0, middle - (shown / 2));
        var format = isInch ? LengthFormat.InchesTo32 : LengthFormat.MillimetresToTenth;
        return [.. Enumerable.Range(0, shown + 1).Select(index =>
        {
            var count = first + index;
            var at = isInch ? Length.FromInches(count * step) : Length.FromMillimetres(count * step);
            var isNamed = count % (isInch ? 16 : 10) == 0;
            return new RuleMark((double)index / shown, isInch ? InchHeight(count) : MillimetreHeight(count), format.Print(at), isNamed ? format.Print(at) : null);
        })];
    }

    /// <summary>Where a length stands among marks, as a share of their width; null where it is beyond them.</summary>
    public static double? PlaceOf(Length? value, LengthUnit unit)
    {
        if (value is not { } length)
            return null;
        var (amount, step, shown) = unit == LengthUnit.Inch ? (length.Inches, new Fraction(1, 16), SixteenthsShown) : (length.Millimetres, Fraction.One, MillimetresShown);
        var middle = Fraction.Round(amount / step, 0, MidpointRounding.AwayFromZero).ToInt64();
        var share = ((amount / step) - Math.Max(0, middle - (shown / 2))).ToDouble() / shown;
        return share is >= 0 and <= 1 ? share : null;
    }

    private static double InchHeight(long sixteenths) => (sixteenths % 16) switch
    {
        0 => 1,
        8 => 0.78,
        4 or 12 => 0.6,
        2 or 6 or 10 or 14 => 0.44,
        _ => 0.3,
    };

    private static double MillimetreHeight(long millimetres) => millimetres % 10 == 0 ? 1 : millimetres % 5 == 0 ? 0.65 : 0.38;
}
