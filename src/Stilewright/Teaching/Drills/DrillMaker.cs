using Fractions;
using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>Draws the items of drills.</summary>
/// <remarks>
/// Items are drawn so that known slips (<see cref="DrillSlipKind"/>) show: sums have unlike denominators where the fineness allows it, every other
/// difference must borrow, every other half is of an odd number. The same settings, seed and bench give the same drill on every machine.
/// </remarks>
public static class DrillMaker
{
    private const int RuleInches = 4;
    private const int RuleCentimetres = 10;

    /// <summary>The length of the rules that are read: 4 in or 100 mm.</summary>
    public static Length RuleLength(LengthUnit unit) => unit == LengthUnit.Inch ? Length.FromInches(RuleInches) : Length.FromMillimetres(10 * RuleCentimetres);

    // Sets the rows of drills apart from those of worksheets.
    private const ulong Branch = 0xD;
    private const int MostDraws = 200;
    private const int MostInches = 12;

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

    /// <summary>A short drill whose kinds come in turn: the first item of each, then the second, and so on.</summary>
    /// <param name="count">How many items there are in all; as many of each kind as come to it, whatever the settings say.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is not positive, or takes more of a kind than a drill may have.</exception>
    public static Drill InTurn(DrillSettings settings, ulong seed, int bench, int count)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        var each = (count - 1) / settings.Kinds.Count + 1;
        ArgumentOutOfRangeException.ThrowIfGreaterThan(each, DrillSettings.MostOfKind, nameof(count));
        var drill = Of(new(settings.Unit, settings.Finest, settings.Kinds, each), seed, bench);
        return drill with
        {
            Items = [.. drill.Items.Select((item, i) => (item, Turn: i % each)).OrderBy(each => each.Turn).Take(count).Select((each, i) => each.item with { Number = i + 1 })],
        };
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
        private int MostWhole => IsInch ? MostInches : 400;

        public DrillItem Draw(DrillKind kind, int number, int index) => kind switch
        {
            DrillKind.ReadRule => Rule(number),
            DrillKind.Add => Sum(number),
            DrillKind.Subtract => Difference(number, mustBorrow: index % 2 == 0),
            DrillKind.Halve => Half(number, isOdd: index % 2 == 0),
            DrillKind.Twice => Twice(number),
            DrillKind.InchToMillimetre => ToMillimetres(number),
            DrillKind.MillimetreToInch => ToInches(number),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

        private DrillItem Rule(int number)
        {
            // Between numbers: a pointer at a number asks nothing.
            var perNumber = IsInch ? settings.Finest : 10 * settings.Finest;
            var (whole, marks) = (random.Below(IsInch ? RuleInches : RuleCentimetres), random.Between(1, perNumber - 1));
            var step = settings.Step;
            Length At(Length past) => step * perNumber * whole + past;
            return Item(number, DrillKind.ReadRule, "", At(step * marks),
                [
                    .. 2 * marks < perNumber ? [Told(DrillSlipKind.OtherMarks, At(step * marks * 2))] : Array.Empty<DrillSlip>(), Told(DrillSlipKind.OtherMarks, At(step * marks / 2)),
                    Told(DrillSlipKind.FromTheOtherSide, At(step * (perNumber - marks))),
                ]) with
            { RuleStep = step };
        }

        private DrillItem Sum(int number)
        {
            var (one, other) = (Draw(1), Draw(0));
            while (one.Bottom == other.Bottom && settings.Finest > 2)
                other = Draw(0);
            var wholes = one.Whole + other.Whole;
            return Item(number, DrillKind.Add, $"{Print(one)} + {Print(other)}", Of(one.Value + other.Value), AreFractions(one, other)
                ?
                [
                    Written(DrillSlipKind.TopsAndBottoms, wholes, one.Top + other.Top, one.Bottom + other.Bottom),
                    Written(DrillSlipKind.NoCommonDenominator, wholes, one.Top + other.Top, Math.Max(one.Bottom, other.Bottom)),
                    Written(DrillSlipKind.WholesOnly, wholes, one.Top, one.Bottom),
                ]
                : []);
        }

        private DrillItem Difference(int number, bool mustBorrow)
        {
            Mixed one, other;
            do
                (one, other) = (Draw(2), Draw(0));
            while (one.Whole <= other.Whole || one.Fraction < other.Fraction != mustBorrow && settings.Finest > 1);
            var wholes = one.Whole - other.Whole;
            var answer = Of(one.Value - other.Value);
            var smaller = Told(DrillSlipKind.SmallerFromLarger, Of(wholes + (one.Fraction - other.Fraction).Abs()));
            return Item(number, DrillKind.Subtract, $"{Print(one)} − {Print(other)}", answer, !IsInch ? [] : !AreFractions(one, other) ? [smaller] :
            [
                smaller,
                .. one.Bottom == other.Bottom ? Array.Empty<DrillSlip>()
                    : [Written(DrillSlipKind.TopsAndBottoms, wholes, Math.Abs(one.Top - other.Top), Math.Abs(one.Bottom - other.Bottom))],
                Written(DrillSlipKind.NoCommonDenominator, wholes, Math.Abs(one.Top - other.Top), Math.Max(one.Bottom, other.Bottom)),
                Written(DrillSlipKind.WholesOnly, wholes, one.Top, one.Bottom),
            ]);
        }

        // Of what is one step coarser than the finest, so that the half is no finer.
        private DrillItem Half(int number, bool isOdd)
        {
            Mixed whole;
            do
                whole = settings.Finest > 2 ? Draw(1, settings.Finest / 2) : new(random.Between(1, MostWhole), 0, 1);
            while (int.IsOddInteger(whole.Whole) != (isOdd && settings.Finest > 1));
            return Item(number, DrillKind.Halve, $"half of {Print(whole)}", Of(whole.Value / 2), AreFractions(whole)
                ?
                [
                    Told(DrillSlipKind.WrongWay, Of(new Fraction(whole.Whole, 2) + 2 * whole.Fraction)),
                    Told(DrillSlipKind.FractionLeft, Of(new Fraction(whole.Whole, 2) + whole.Fraction)),
                ]
                : []);
        }

        private DrillItem Twice(int number)
        {
            var whole = Draw(0);
            return Item(number, DrillKind.Twice, $"twice {Print(whole)}", Of(2 * whole.Value), AreFractions(whole)
                ?
                [
                    Written(DrillSlipKind.WrongWay, 2 * whole.Whole, whole.Top, 2 * whole.Bottom),
                    Written(DrillSlipKind.FractionLeft, 2 * whole.Whole, whole.Top, whole.Bottom),
                ]
                : []);
        }

        private DrillItem ToMillimetres(int number)
        {
            var sixteenths = random.Between(1, MostInches * ConversionFinest);
            var exact = Length.FromInches(new(sixteenths, ConversionFinest));
            var slip = Length.FromMillimetres(exact.Inches * 25).OnStep(HalfMillimetre, StepDirection.Nearest);
            return new(number, DrillKind.InchToMillimetre, new LengthFormat(LengthUnit.Inch, 64).PrintWithUnit(exact),
                exact.OnStep(HalfMillimetre, StepDirection.Nearest), LengthUnit.Millimetre, exact, HalfMillimetre / 2,
                Showing(exact, HalfMillimetre / 2, new DrillSlip(DrillSlipKind.RoundInch, slip, LengthFormat.MillimetresToTenth.Print(slip))));
        }

        private DrillItem ToInches(int number)
        {
            var millimetres = random.Between(12, 300);
            var exact = Length.FromMillimetres(millimetres);
            var slip = Length.FromInches(new(millimetres, 25)).OnStep(ThirtySecond, StepDirection.Nearest);
            return new(number, DrillKind.MillimetreToInch, LengthFormat.MillimetresToTenth.PrintWithUnit(exact),
                exact.OnStep(ThirtySecond, StepDirection.Nearest), LengthUnit.Inch, exact, ThirtySecond / 2,
                Showing(exact, ThirtySecond / 2, new DrillSlip(DrillSlipKind.RoundInch, slip, LengthFormat.InchesTo32.Print(slip))));
        }

        // Of the inches that are turned into millimetres.
        private int ConversionFinest => IsInch ? settings.Finest : 16;

        private Mixed Draw(int leastWhole, int? finest = null)
        {
            var bottom = finest ?? settings.Finest;
            while (bottom > (settings.Finest == 2 ? 1 : 2) && random.Below(3) == 0)
                bottom /= 2;
            return bottom == 1 ? new(random.Between(Math.Max(leastWhole, 1), MostWhole), 0, 1)
                : new(random.Between(leastWhole, MostWhole), 2 * random.Below(bottom / 2) + 1, bottom);
        }

        private Length Of(Fraction value) => IsInch ? Length.FromInches(value) : Length.FromMillimetres(value);

        private string Print(Mixed value) => format.Print(Of(value.Value));

        // Millimetres are written with a decimal, where the slips of fractions do not happen.
        private bool AreFractions(params ReadOnlySpan<Mixed> numbers)
        {
            foreach (var number in numbers)
            {
                if (!IsInch || number.Top == 0)
                    return false;
            }

            return true;
        }

        private DrillSlip Told(DrillSlipKind kind, Length answer) => new(kind, answer, format.Print(answer));

        // Not in lowest terms, which a slip does not bring about by itself.
        private DrillSlip Written(DrillSlipKind kind, int whole, int top, int bottom)
        {
            (whole, top) = (whole + top / bottom, top % bottom);
            var words = (whole, top) switch
            {
                (_, 0) => $"{whole}",
                (0, _) => $"{top}/{bottom}",
                _ => $"{whole} {top}/{bottom}",
            };
            return new(kind, Of(whole + new Fraction(top, bottom)), words);
        }

        private DrillItem Item(int number, DrillKind kind, string question, Length answer, params DrillSlip[] slips) =>
            new(number, kind, question, answer, settings.Unit, answer, default, Showing(answer, default, slips));

        // A slip that gives a right answer cannot be told from it, and nobody writes quarters of a millimetre.
        private static DrillSlip[] Showing(Length exact, Length tolerance, params DrillSlip[] slips) =>
            [.. slips.Where(slip => slip.Answer.IsPositive && !slip.Written.StartsWith(LengthFormat.RoundedMark, StringComparison.Ordinal) && Length.Abs(slip.Answer - exact) > tolerance).DistinctBy(slip => slip.Answer)];
    }
}
