using Fractions;
using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>Draws the items of drills.</summary>
/// <remarks>
/// Items are drawn so that known slips (<see cref="SlipKind"/>) show: sums have unlike denominators where the fineness allows it, every other
/// difference must borrow, every other half is of an odd number. The same settings, seed and bench give the same drill on every machine.
/// </remarks>
public static class DrillMaker
{
    /// <summary>The length of the rules that are read: 6 in or 150 mm.</summary>
    public static Length RuleLength(LengthUnit unit) => unit == LengthUnit.Inch ? Length.FromInches(6) : Length.FromMillimetres(150);

    // Sets the rows of drills apart from those of worksheets.
    private const ulong Branch = 0xD;
    private const int MostDraws = 200;

    private static readonly Length HalfMillimetre = Length.FromMillimetres(new(1, 2));
    private static readonly Length ThirtySecond = Length.FromInches(new(1, 32));

    public static Drill Of(DrillSettings settings, ulong seed, int bench)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bench);
        List<DrillItem> items = [];
        foreach (var kind in settings.Kinds)
        {
            var maker = new Maker(settings, SplitMix64.Of(seed, Branch, (ulong)settings.Unit, (ulong)settings.Finest, (ulong)kind, (ulong)bench));
            HashSet<(string, Length)> asked = [];
            for (var i = 0; i < settings.EachCount; i++)
            {
                var item = maker.Draw(kind, items.Count + 1, i);
                // A coarse rule has few places; only then is one asked again.
                for (var draw = 0; draw < MostDraws && !asked.Add((item.Question, item.Exact)); draw++)
                    item = maker.Draw(kind, items.Count + 1, i);
                items.Add(item);
            }
        }

        return new(settings, seed, bench, items);
    }

    /// <summary>A whole number and a proper fraction in lowest terms, in the drill's unit.</summary>
    private readonly record struct Mixed(int Whole, int Top, int Bottom)
    {
        public Fraction Fraction => new(Top, Bottom);
        public Fraction Value => Whole + Fraction;
    }

    private sealed class Maker(DrillSettings settings, SplitMix64 random)
    {
        private readonly LengthFormat format = new(settings.Unit, 64);
        private bool IsInch => settings.Unit == LengthUnit.Inch;
        private int MostWhole => IsInch ? 12 : 400;

        public DrillItem Draw(DrillKind kind, int number, int index) => kind switch
        {
            DrillKind.ReadRule => Rule(number),
            DrillKind.Add => Sum(number),
            DrillKind.Subtract => Difference(number, mustBorrow: index % 2 == 0),
            DrillKind.Halve => Half(number, isOdd: index % 2 == 0),
            DrillKind.Double => Twice(number),
            DrillKind.InchToMillimetre => ToMillimetres(number),
            DrillKind.MillimetreToInch => ToInches(number),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

        private DrillItem Rule(int number)
        {
            // Between numbers: a pointer at a number asks nothing.
            var perNumber = IsInch ? settings.Finest : 10 * settings.Finest;
            var (whole, marks) = (random.Below(IsInch ? 6 : 15), random.Between(1, perNumber - 1));
            var step = settings.Step;
            Length At(int tens, Length past) => step * perNumber * tens + past;
            var answer = At(whole, step * marks);
            return Item(number, DrillKind.ReadRule, "", answer,
                (SlipKind.OtherMarks, At(whole, step * marks * 2)), (SlipKind.OtherMarks, At(whole, step * marks / 2)),
                (SlipKind.FromTheOtherSide, At(whole, step * (perNumber - marks)))) with { RuleStep = step };
        }

        private DrillItem Sum(int number)
        {
            var (one, other) = (Draw(settings.Finest, 1), Draw(settings.Finest, 0));
            while (one.Bottom == other.Bottom && settings.Finest > 2)
                other = Draw(settings.Finest, 0);
            var wholes = one.Whole + other.Whole;
            return Item(number, DrillKind.Add, $"{Print(one)} + {Print(other)}", Of(one.Value + other.Value), FractionSlips(
                (SlipKind.TopsAndBottoms, wholes + new Fraction(one.Top + other.Top, one.Bottom + other.Bottom)),
                (SlipKind.NoCommonDenominator, wholes + new Fraction(one.Top + other.Top, Math.Max(one.Bottom, other.Bottom))),
                (SlipKind.WholesOnly, wholes + one.Fraction)));
        }

        private DrillItem Difference(int number, bool mustBorrow)
        {
            Mixed one, other;
            do
                (one, other) = (Draw(settings.Finest, 2), Draw(settings.Finest, 0));
            while (one.Whole <= other.Whole || one.Fraction < other.Fraction != mustBorrow && settings.Finest > 2);
            var wholes = one.Whole - other.Whole;
            List<(SlipKind, Fraction)> slips =
            [
                (SlipKind.SmallerFromLarger, wholes + (one.Fraction - other.Fraction).Abs()),
                (SlipKind.NoCommonDenominator, wholes + new Fraction(Math.Abs(one.Top - other.Top), Math.Max(one.Bottom, other.Bottom))),
                (SlipKind.WholesOnly, wholes + one.Fraction),
            ];
            if (one.Bottom != other.Bottom)
                slips.Insert(0, (SlipKind.TopsAndBottoms, wholes + new Fraction(Math.Abs(one.Top - other.Top), Math.Abs(one.Bottom - other.Bottom))));
            return Item(number, DrillKind.Subtract, $"{Print(one)} − {Print(other)}", Of(one.Value - other.Value), FractionSlips([.. slips]));
        }

        // Of what is one step coarser than the finest, so that the half is no finer.
        private DrillItem Half(int number, bool isOdd)
        {
            Mixed whole;
            do
                whole = settings.Finest > 2 ? Draw(settings.Finest / 2, 1) : new(random.Between(1, MostWhole), 0, 1);
            while (int.IsOddInteger(whole.Whole) != (isOdd && settings.Finest > 1));
            return Item(number, DrillKind.Halve, $"half of {Print(whole)}", Of(whole.Value / 2), FractionSlips(
                (SlipKind.WrongWay, new Fraction(whole.Whole, 2) + 2 * whole.Fraction),
                (SlipKind.FractionLeft, new Fraction(whole.Whole, 2) + whole.Fraction)));
        }

        private DrillItem Twice(int number)
        {
            var whole = Draw(settings.Finest, 0);
            return Item(number, DrillKind.Double, $"twice {Print(whole)}", Of(2 * whole.Value), FractionSlips(
                (SlipKind.WrongWay, 2 * whole.Whole + whole.Fraction / 2),
                (SlipKind.FractionLeft, 2 * whole.Whole + whole.Fraction)));
        }

        private DrillItem ToMillimetres(int number)
        {
            var finest = IsInch ? settings.Finest : 16;
            var inches = Draw(finest, 0).Value;
            var exact = Length.FromInches(inches);
            return new(number, DrillKind.InchToMillimetre, $"{new LengthFormat(LengthUnit.Inch, 64).PrintWithUnit(exact)} in millimetres",
                exact.OnStep(HalfMillimetre, StepDirection.Nearest), LengthUnit.Millimetre, exact, HalfMillimetre / 2,
                Slips(exact, HalfMillimetre / 2, [(SlipKind.RoundInch, Length.FromMillimetres(inches * 25).OnStep(HalfMillimetre, StepDirection.Nearest))]));
        }

        private DrillItem ToInches(int number)
        {
            var millimetres = random.Between(12, 300);
            var exact = Length.FromMillimetres(millimetres);
            return new(number, DrillKind.MillimetreToInch, $"{LengthFormat.MillimetresToTenth.PrintWithUnit(exact)} in inches",
                exact.OnStep(ThirtySecond, StepDirection.Nearest), LengthUnit.Inch, exact, ThirtySecond / 2,
                Slips(exact, ThirtySecond / 2, [(SlipKind.RoundInch, Length.FromInches(new(millimetres, 25)).OnStep(ThirtySecond, StepDirection.Nearest))]));
        }

        private Mixed Draw(int finest, int leastWhole)
        {
            var bottom = finest;
            while (bottom > 2 && random.Below(3) == 0)
                bottom /= 2;
            return bottom == 1 ? new(random.Between(Math.Max(leastWhole, 1), MostWhole), 0, 1)
                : new(random.Between(leastWhole, MostWhole), 2 * random.Below(bottom / 2) + 1, bottom);
        }

        private Length Of(Fraction value) => IsInch ? Length.FromInches(value) : Length.FromMillimetres(value);

        private string Print(Mixed value) => format.Print(Of(value.Value));

        // Millimetres are written with a decimal, where the slips of fractions do not happen.
        private (SlipKind, Length)[] FractionSlips(params (SlipKind Kind, Fraction Value)[] slips) =>
            IsInch ? [.. slips.Select(slip => (slip.Kind, Of(slip.Value)))] : [];

        private DrillItem Item(int number, DrillKind kind, string question, Length answer, params (SlipKind, Length)[] slips) =>
            new(number, kind, question, answer, settings.Unit, answer, default, Slips(answer, default, slips));

        private static Slip[] Slips(Length answer, Length tolerance, (SlipKind Kind, Length Answer)[] slips) =>
            [.. slips.Where(slip => slip.Answer.IsPositive && Length.Abs(slip.Answer - answer) > tolerance).DistinctBy(slip => slip.Answer).Select(slip => new Slip(slip.Kind, slip.Answer))];
    }
}
