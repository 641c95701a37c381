using System.Globalization;
using CsCheck;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;

namespace Stilewright.Tests.Teaching;

public class DrillTests
{
    private static readonly DrillKind[] AllKinds = Enum.GetValues<DrillKind>();

    private static readonly Gen<Drill> AnyDrill =
        from unit in Gen.Enum<LengthUnit>()
        from index in Gen.Int[0, DrillSettings.FinestOf(unit).Count - 1]
        from count in Gen.Int[1, 8]
        from seed in Gen.ULong
        from bench in Gen.Int[1, 60]
        select DrillMaker.Of(new(unit, DrillSettings.FinestOf(unit)[index], AllKinds, count), seed, bench);

    /// <summary>Answers are worked out again from the printed question in decimals, which hold halves down to 1/32 and 25.4 exactly.</summary>
    [Fact]
    public void Answers_are_right() => AnyDrill.Sample(drill =>
    {
        foreach (var item in drill.Items)
        {
            decimal right = item.Kind switch
            {
                DrillKind.ReadRule => In(item.Answer, drill.Settings.Unit),
                DrillKind.Add => Parts(item, " + ", (one, other) => one + other),
                DrillKind.Subtract => Parts(item, " − ", (one, other) => one - other),
                DrillKind.Halve => Read(item.Question["half of ".Length..]) / 2,
                DrillKind.Twice => Read(item.Question["twice ".Length..]) * 2,
                DrillKind.InchToMillimetre => Math.Round(Read(item.Question[..^3]) * 25.4m * 2, MidpointRounding.AwayFromZero) / 2,
                _ => Math.Round(Read(item.Question[..^3]) / 25.4m * 32, MidpointRounding.AwayFromZero) / 32,
            };
            Assert.Equal(right, In(item.Answer, item.AnswerUnit));
            Assert.True(right > 0);
        }

        static decimal Parts(DrillItem item, string sign, Func<decimal, decimal, decimal> work)
        {
            var parts = item.Question.Split(sign);
            return work(Read(parts[0]), Read(parts[1]));
        }
    });

    [Fact]
    public void No_slip_is_right_and_each_is_told() => AnyDrill.Sample(drill =>
    {
        foreach (var item in drill.Items)
        {
            Assert.Equal(true, Mark(drill, item, LengthText(item.Answer, item.AnswerUnit)).IsRight);
            foreach (var slip in item.Slips)
            {
                var marked = Mark(drill, item, slip.Written);
                Assert.Equal((false, slip), (marked.IsRight, marked.Slip));
            }
        }
    });

    /// <summary>The slips are worked out again as NCEE 2010-4039, recommendation 3, describes them.</summary>
    [Fact]
    public void Slips_are_those_described() => AnyDrill.Where(drill => drill.Settings.Unit == LengthUnit.Inch).Sample(drill =>
    {
        foreach (var item in drill.Items.Where(item => item.Kind is DrillKind.Add))
        {
            var (one, other) = (Split(item.Question.Split(" + ")[0]), Split(item.Question.Split(" + ")[1]));
            if (one.Bottom == 1 || other.Bottom == 1)
                continue;
            var wholes = one.Whole + other.Whole;
            var topsAndBottoms = wholes + (decimal)(one.Top + other.Top) / (one.Bottom + other.Bottom);
            Assert.Contains(item.Slips, slip => slip.Kind == DrillSlipKind.TopsAndBottoms && Math.Abs(In(slip.Answer, LengthUnit.Inch) - topsAndBottoms) < 1e-20m);
            if (one.Bottom != other.Bottom)
            {
                Assert.Contains(item.Slips, slip => slip.Kind == DrillSlipKind.NoCommonDenominator
                    && In(slip.Answer, LengthUnit.Inch) == wholes + (decimal)(one.Top + other.Top) / Math.Max(one.Bottom, other.Bottom));
            }
        }
    });

    [Fact]
    public void Hard_cases_occur() => AnyDrill.Where(drill => drill.Settings is { Unit: LengthUnit.Inch, Finest: > 2 }).Sample(drill =>
    {
        Assert.All(drill.Items.Where(item => item.Kind == DrillKind.Add), item =>
            Assert.NotEqual(Split(item.Question.Split(" + ")[0]).Bottom, Split(item.Question.Split(" + ")[1]).Bottom));
        var first = drill.Items.First(item => item.Kind == DrillKind.Subtract).Question.Split(" − ");
        Assert.True(Read(first[0]) % 1 < Read(first[1]) % 1, "The first difference borrows.");
        Assert.True(Split(drill.Items.First(item => item.Kind == DrillKind.Halve).Question["half of ".Length..]).Whole % 2 == 1, "The first half is of an odd number.");
    });

    [Fact]
    public void Nothing_is_finer_than_asked() => AnyDrill.Sample(drill => Assert.All(
        drill.Items.Where(item => item.Kind is not (DrillKind.InchToMillimetre or DrillKind.MillimetreToInch or DrillKind.Halve)),
        item => Assert.True((item.Answer / drill.Settings.Step).Reduce().Denominator.IsOne)));

    [Fact]
    public void Rules_are_pointed_at_between_numbers_and_within_their_length() => AnyDrill.Sample(drill => Assert.All(drill.Items.Where(item => item.Kind == DrillKind.ReadRule), item =>
    {
        Assert.InRange(item.Answer.Inches, 0, DrillMaker.RuleLength(drill.Settings.Unit).Inches);
        Assert.NotEqual(0m, In(item.Answer, drill.Settings.Unit) % (drill.Settings.Unit == LengthUnit.Inch ? 1 : 10));
    }));

    /// <summary>Conversions by 1 in = 25.4 mm, international yard and pound agreement, 1959.</summary>
    [Theory]
    [InlineData(DrillKind.InchToMillimetre)]
    [InlineData(DrillKind.MillimetreToInch)]
    public void Conversions_are_right_within_the_tolerance_alone(DrillKind kind)
    {
        var drill = DrillMaker.Of(new(LengthUnit.Inch, 16, [kind], 10), 4, 1);
        foreach (var item in drill.Items)
        {
            foreach (var (off, isRight) in new[] { (1, true), (-1, true), (1.02m, false), (-1.02m, false) })
            {
                var written = In(item.Exact, item.AnswerUnit) + off * In(item.Tolerance, item.AnswerUnit);
                // Near the edge a decimal of eight places is near enough, except on it.
                if (Math.Abs(off) == 1)
                    written -= off * 0.000001m;
                Assert.Equal(isRight, Mark(drill, item, written.ToString("0.000000", CultureInfo.InvariantCulture)).IsRight);
            }
        }
    }

    [Fact]
    public void The_same_seed_and_bench_repeat_a_drill()
    {
        var settings = new DrillSettings(LengthUnit.Inch, 16, AllKinds, 6);
        Assert.Equal(Told(DrillMaker.Of(settings, 5, 3)), Told(DrillMaker.Of(settings, 5, 3)));
        Assert.Equal(24, Enumerable.Range(1, 24).Select(bench => string.Join(';', Told(DrillMaker.Of(settings, 5, bench)))).Distinct().Count());
        // Printed drills are repeated by their seeds, so these may never change.
        Assert.Equal(["7 13/16 + 4 7/8", "9 7/16 + 3 7/8"], DrillMaker.Of(new(LengthUnit.Inch, 16, [DrillKind.Add], 2), 7, 1).Items.Select(item => item.Question));

        static IEnumerable<string> Told(Drill drill) => drill.Items.Select(item => $"{item.Question}{item.Answer}");
    }

    [Fact]
    public void A_kind_is_the_same_whatever_stands_beside_it() => Assert.Equal(
        DrillMaker.Of(new(LengthUnit.Inch, 8, [DrillKind.Halve], 3), 5, 3).Items.Select(item => item.Question),
        DrillMaker.Of(new(LengthUnit.Inch, 8, AllKinds, 3), 5, 3).Items.Where(item => item.Kind == DrillKind.Halve).Select(item => item.Question));

    [Fact]
    public void What_cannot_be_read_is_told()
    {
        var drill = DrillMaker.Of(new(LengthUnit.Inch, 8, [DrillKind.Add], 2), 5, 3);
        var marked = drill.Mark(new Dictionary<int, string> { [1] = "three" });
        Assert.Equal(false, marked[0].IsRight);
        Assert.Contains("three", marked[0].Fault, StringComparison.Ordinal);
        Assert.Null(marked[1].IsRight);
        Assert.Throws<ArgumentException>(() => drill.Mark(new Dictionary<int, string> { [3] = "1" }));
    }

    [Fact]
    public void Settings_are_held_to_what_there_is()
    {
        Assert.Throws<ArgumentException>(() => new DrillSettings(LengthUnit.Inch, 3, AllKinds));
        Assert.Throws<ArgumentException>(() => new DrillSettings(LengthUnit.Millimetre, 4, AllKinds));
        Assert.Throws<ArgumentException>(() => new DrillSettings(LengthUnit.Inch, 8, []));
        Assert.Throws<ArgumentException>(() => new DrillSettings(LengthUnit.Inch, 8, [DrillKind.Add, DrillKind.Add]));
        Assert.Throws<ArgumentException>(() => new DrillSettings(LengthUnit.Inch, 8, AllKinds, 41));
    }

    private static MarkedItem Mark(Drill drill, DrillItem item, string text) =>
        drill.Mark(new Dictionary<int, string> { [item.Number] = text })[item.Number - 1];

    private static string LengthText(Length length, LengthUnit unit) => In(length, unit).ToString(CultureInfo.InvariantCulture);

    private static decimal In(Length length, LengthUnit unit) => (unit == LengthUnit.Inch ? length.Inches : length.Millimetres).ToDecimal();

    private static (int Whole, int Top, int Bottom) Split(string mixed)
    {
        var words = mixed.Split(' ');
        var fraction = words[^1].Split('/');
        if (fraction.Length == 1)
            return (int.Parse(words[0], CultureInfo.InvariantCulture), 0, 1);
        return (words.Length == 2 ? int.Parse(words[0], CultureInfo.InvariantCulture) : 0,
            int.Parse(fraction[0], CultureInfo.InvariantCulture), int.Parse(fraction[1], CultureInfo.InvariantCulture));
    }

    private static decimal Read(string figure)
    {
        if (figure.Contains('.', StringComparison.Ordinal))
            return decimal.Parse(figure, CultureInfo.InvariantCulture);
        var (whole, top, bottom) = Split(figure);
        return whole + (decimal)top / bottom;
    }

    [Fact]
    public void A_short_drill_takes_its_kinds_in_turn()
    {
        DrillKind[] kinds = [DrillKind.ReadRule, DrillKind.Halve, DrillKind.Add];
        var drill = DrillMaker.InTurn(new(LengthUnit.Inch, 16, kinds), 5, 3, 10);
        Assert.Equal(Enumerable.Range(1, 10), drill.Items.Select(item => item.Number));
        Assert.Equal(Enumerable.Range(0, 10).Select(i => kinds[i % 3]), drill.Items.Select(item => item.Kind));
        Assert.Equal(10, drill.Items.Select(item => (item.Question, item.Exact)).Distinct().Count());
        Assert.Equal(drill.Items.Select(item => item.Exact), DrillMaker.InTurn(new(LengthUnit.Inch, 16, kinds), 5, 3, 10).Items.Select(item => item.Exact));
        Assert.Throws<ArgumentOutOfRangeException>(() => DrillMaker.InTurn(new(LengthUnit.Inch, 16, [DrillKind.Add]), 1, 1, DrillSettings.MostOfKind + 1));
    }

    [Fact]
    public void A_result_names_the_slips_it_knows()
    {
        var drill = DrillMaker.InTurn(new(LengthUnit.Inch, 16, [DrillKind.Halve]), 5, 3, 3);
        var slip = drill.Items[0].Slips[0];
        var marked = drill.Mark(new Dictionary<int, string> { [1] = slip.Written, [2] = "99", [3] = new LengthFormat(LengthUnit.Inch, 64).Print(drill.Items[2].Answer) });
        var result = drill.Result(marked);
        Assert.Equal((Stilewright.Teaching.ExerciseKind.Drill, "drill to 1/16 in", 1, 3), (result.Kind, result.Level, result.Earned, result.Marks));
        Assert.Equal([$"Halve: {marked[0].Slip!.Advice}", "Halve: not right."], result.Slips);
    }
}
