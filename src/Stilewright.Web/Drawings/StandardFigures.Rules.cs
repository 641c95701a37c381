using Stilewright.Doors;
using Stilewright.Drawing.Dimensions;
using Stilewright.Drawing.Scenes;
using Stilewright.Shop;

namespace Stilewright.Web.Drawings;

// Rules with their marks.
public sealed partial class StandardFigures
{
    private const double MillimetresPerInch = 25.4;

    // Marks 5 mm apart on paper, whatever the step is; made at full size, which alone is tried.
    private void Step(Sketch on)
    {
        const int Marks = 13;
        const double Apart = 5 / MillimetresPerInch, High = 0.55, Worked = 5.4;
        Rule(on, Marks * Apart, High);
        for (var mark = 1; mark < Marks; mark++)
            on.Line(on.At(mark * Apart, High), on.At(mark * Apart, High - (mark % 4 == 0 ? 0.4 : 0.25)), LineStyle.Visible);
        on.Line(on.At(Worked * Apart, High), on.At(Worked * Apart, High + 0.32), LineStyle.Dimension).Word("worked out", on.At(Worked * Apart + 0.46, High + 0.38));
        on.Line(on.At(5 * Apart, High), on.At(5 * Apart, High + 0.32), LineStyle.Heavy).Word("cut", on.At(5 * Apart - 0.2, High + 0.38), isStrong: true);
        on.Dimensions(on.Box(0, 0, Marks * Apart, High), new DimensionRow(Side.Bottom, [Named(on, Settings.Step, 8 * Apart, 9 * Apart, "step")]));
    }

    private void Finest(Sketch on)
    {
        const double Inch = 66 / MillimetresPerInch, High = 0.8, Lowest = 0.16;
        var finest = int.Parse(inForce.Word(Settings.FinestFraction), System.Globalization.CultureInfo.InvariantCulture);
        Rule(on, Inch, High);
        for (var mark = 1; mark < finest; mark++)
        {
            // Each halving has shorter marks.
            var halvings = int.Log2(finest) - System.Numerics.BitOperations.TrailingZeroCount(mark);
            on.Line(on.At(Inch * mark / finest, High), on.At(Inch * mark / finest, High - Math.Max(Lowest, 0.58 - halvings * 0.08)), LineStyle.Edge);
        }

        on.Word("1/2", on.At(Inch / 2, 0.13));
        var first = Inch / finest;
        on.Draw(Outline.Through(false, on.At(first, High), on.At(first, High + 0.2), on.At(first + 0.25, High + 0.2)), LineStyle.Dimension);
        on.Named(Settings.FinestFraction.Key, FormattableString.Invariant($"finest mark 1/{finest}"), on.At(first + 0.85, High + 0.2));
    }

    private static void Rule(Sketch on, double length, double high) => on.Draw(Box(on, 0, 0, length, high), LineStyle.Visible);
}
