using System.Globalization;
using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Packets;
using Stilewright.Drawing.Scenes;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;

namespace Stilewright.Drawing.Worksheets;

/// <summary>A rule at full size from 0, with an arrow at the place to be read.</summary>
/// <remarks>The coarser a mark, the longer its line, as on bench rules: common practice, no source.</remarks>
public static class RuleFigure
{
    private const double ArrowHeight = 6;
    private const double ArrowHalfWidth = 1.1;
    private const double RuleHeight = 13;
    private const double BeyondEnds = 4;
    private static readonly TextStyle Numbers = new(3.6);

    // Lengths of marks in millimetres, from whole numbers to the finest.
    private static readonly double[] InchMarks = [9, 7.2, 5.8, 4.6, 3.5, 2.5];
    private const double CentimetreMark = 8;
    private const double FiveMillimetreMark = 6;
    private const double MillimetreMark = 4;
    private const double HalfMillimetreMark = 2.4;

    /// <param name="item">One that is read off a rule.</param>
    /// <exception cref="ArgumentException">The item has no rule.</exception>
    public static Scene Draw(DrillItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        if (item.RuleStep is not { } step)
            throw new ArgumentException("The item is not read off a rule.", nameof(item));
        var unit = item.AnswerUnit;
        var whole = unit == LengthUnit.Inch ? 1.Inches : 10.Millimetres;
        var length = DrillMaker.RuleLength(unit);
        var width = Scale.FullSize.OnPaper(length);
        double X(Length at) => BeyondEnds + Scale.FullSize.OnPaper(at);

        List<SceneNode> nodes = [new Shape(Outline.Box(new(0, ArrowHeight, width + 2 * BeyondEnds, RuleHeight)), LineStyle.Edge)];
        var count = (int)(length / step).ToDecimal();
        for (var i = 0; i <= count; i++)
        {
            var at = step * i;
            nodes.Add(Strip.Rule(X(at), ArrowHeight, X(at), ArrowHeight + MarkLength(at, unit), LineStyle.Rule));
            var number = at / whole;
            if (!number.Reduce().Denominator.IsOne)
                continue;
            var set = Typesetter.Set(Number(number.ToDecimal(), unit), Numbers);
            nodes.Add(Strip.Put(set, X(at) - set.Width / 2, ArrowHeight + RuleHeight - set.Height));
        }

        var tip = new PaperPoint(X(item.Answer), ArrowHeight);
        nodes.Add(Strip.Rule(tip.X, 0, tip.X, ArrowHeight - 2, LineStyle.Visible));
        nodes.Add(new Shape(Outline.Through(true, tip, new(tip.X - ArrowHalfWidth, tip.Y - 2.6), new(tip.X + ArrowHalfWidth, tip.Y - 2.6)), null, Tone.Ink));
        return new("Rule", $"A rule of {new LengthFormat(unit).PrintWithUnit(length)} with an arrow at the place to be read.", width + 2 * BeyondEnds, ArrowHeight + RuleHeight, nodes)
        {
            Scale = Scale.FullSize,
        };
    }

    // Millimetre rules are numbered in millimetres.
    private static string Number(decimal number, LengthUnit unit) => (unit == LengthUnit.Inch ? number : 10 * number).ToString("0", CultureInfo.InvariantCulture);

    private static double MarkLength(Length at, LengthUnit unit)
    {
        if (unit == LengthUnit.Millimetre)
        {
            var millimetres = at.Millimetres;
            return (millimetres / 10).Reduce().Denominator.IsOne ? CentimetreMark : (millimetres / 5).Reduce().Denominator.IsOne ? FiveMillimetreMark
                : millimetres.Reduce().Denominator.IsOne ? MillimetreMark : HalfMillimetreMark;
        }

        var halvings = 0;
        for (var bottom = (int)at.Inches.Reduce().Denominator; bottom > 1; bottom /= 2)
            halvings++;
        return InchMarks[halvings];
    }
}
