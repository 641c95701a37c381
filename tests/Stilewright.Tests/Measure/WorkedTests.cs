using System.Reflection;
using CsCheck;
using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;

namespace Stilewright.Tests.Measure;

public class WorkedTests
{
    private static readonly LengthFormat Inches = new(LengthUnit.Inch, 64);
    private static readonly LengthFormat Millimetres = LengthFormat.MillimetresToTenth;

    private static Given Entry(string label, Fraction inches) => new(label, label, Length.FromInches(inches), Origin.Typed);
    private static Given Weight(string label, Fraction pounds) => new(label, label, Dimension.Weight, pounds, Origin.Typed);

    private static readonly Given A = Entry("a", new(49, 4));
    private static readonly Given B = Entry("b", new(9, 4));
    private static readonly Given C = Entry("c", 3);
    private static readonly Given Step = Entry("step", new(1, 2));
    private static readonly Given Load = Weight("load", 10);

    private static (Worked Node, Fraction Amount, bool IsExact, Dimension Dimension, Worked[] Operands)[] Kinds =>
    [
        (A, new(49, 4), true, Dimension.Length, []),
        (new FromTable("rough thickness", "thicknesses", "4/4", Source.CommonPractice, Dimension.Length, 1), 1, true, Dimension.Length, []),
        (new Number(2), 2, true, Dimension.Count, []),
        (new Number(new(1, 3)), new(1, 3), true, Dimension.Ratio, []),
        (new Sum(A, B), new(29, 2), true, Dimension.Length, [A, B]),
        (new Difference(A, B), 10, true, Dimension.Length, [A, B]),
        (new Product(A, B), new(441, 16), true, Dimension.Area, [A, B]),
        (new Product(Load, C), 30, true, Dimension.Moment, [Load, C]),
        (new Quotient(B, C), new(3, 4), true, Dimension.Ratio, [B, C]),
        (new Least([C, A, B]), new(9, 4), true, Dimension.Length, [C, A, B]),
        (new Greatest([C, A, B]), new(49, 4), true, Dimension.Length, [C, A, B]),
        (new Chosen("it is wider", C, B), 3, true, Dimension.Length, [C, B]),
        (new Stepped(A, Step, StepDirection.Down), 12, true, Dimension.Length, [A, Step]),
        (new Stepped(A, Step, StepDirection.Nearest), new(25, 2), true, Dimension.Length, [A, Step]),
        (new Stepped(B, Step, StepDirection.Up), new(5, 2), true, Dimension.Length, [B, Step]),
        (new SquareRoot(B * B), new(9, 4), true, Dimension.Length, [B * B]),
        (new SquareRoot(new Number(2)), Fraction.FromDouble(Math.Sqrt(2)), false, Dimension.Ratio, [new Number(2)]),
        (A.As("width", "leaf/width"), new(49, 4), true, Dimension.Length, [A]),
    ];

    [Fact]
    public void Every_kind_tells_its_amount_exactness_dimension_and_operands()
    {
        foreach (var (node, amount, isExact, dimension, operands) in Kinds)
        {
            Assert.Equal((amount, isExact, dimension), (node.Amount, node.IsExact, node.Dimension));
            Assert.Equal(operands, node.Operands);
        }

        var kinds = typeof(Worked).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Worked)) && !type.IsAbstract);
        Assert.Empty(kinds.Except(Kinds.Select(kind => kind.Node.GetType())));
    }

    [Fact]
    public void Every_kind_is_equal_to_itself_built_again_and_to_no_other()
    {
        var (once, again) = (Kinds, Kinds);
        for (var i = 0; i < once.Length; i++)
        {
            Assert.Equal(once[i].Node, again[i].Node);
            Assert.Equal(once[i].Node.GetHashCode(), again[i].Node.GetHashCode());
            Assert.Equal(once[i].Node, once[i].Node.WithOperands(again[i].Operands));
            for (var j = 0; j < i; j++)
                Assert.True(once[i].Node != again[j].Node);
        }
    }

    [Fact]
    public void Operands_are_replaced_and_checked_anew()
    {
        var longer = Entry("a", 20);
        Assert.Equal(20 + new Fraction(9, 4), new Sum(A, B).WithOperands([longer, B]).Amount);
        Assert.Equal(StepDirection.Down, ((Stepped)new Stepped(A, Step, StepDirection.Down).WithOperands([longer, Step])).Direction);
        Assert.Equal("it is wider", ((Chosen)new Chosen("it is wider", C, B).WithOperands([longer, B])).Reason);
        Assert.Equal(("leaf/width", "width"), ((Named)A.As("width", "leaf/width").WithOperands([longer])) is var named ? (named.Key, named.Label) : default);
        foreach (var (node, _, _, _, operands) in Kinds)
            Assert.Throws<ArgumentException>(() => node.WithOperands([.. operands, A]));
        Assert.Throws<ArgumentException>(() => new Sum(A, B).WithOperands([A, Load]));
    }

    [Fact]
    public void Quantities_that_do_not_go_together_are_refused_when_built()
    {
        Action[] refused =
        [
            () => _ = A + Load, () => _ = A - Load, () => _ = new Least([A, Load]), () => _ = new Greatest([A, Load]),
            () => _ = new Chosen("why", A, Load), () => _ = new Stepped(A, Load, StepDirection.Up), () => _ = new SquareRoot(A),
            () => _ = new SquareRoot(new Number(-1)), () => _ = A + new Number(1), () => _ = new Least([]), () => _ = new Greatest([]), () => Worked.Total([]),
            () => A.On(Entry("step", 0), StepDirection.Down),
        ];
        Assert.All(refused, build => Assert.ThrowsAny<ArgumentException>(build));
        Assert.Throws<DivideByZeroException>(() => A / new Number(0));
        Assert.Contains("area", Assert.Throws<InvalidOperationException>(() => (A * B).Length).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_changed_afterwards_does_not_change_what_was_built_from_it()
    {
        Worked[] list = [A, B];
        Worked[] built = [new Least(list), new Greatest(list), new Chosen("why", C, list)];
        list[0] = C;
        Assert.All(built, node => Assert.Contains(A, node.Operands));
    }

    [Fact]
    public void Below_an_irrational_root_nothing_is_exact_until_it_is_put_on_a_step()
    {
        var root = new SquareRoot((A * A) + (B * B));
        foreach (var node in new Worked[] { root, root + A, A - root, 2 * root, root / 2, new Least([A, root]), root.As("diagonal", "d"), new Chosen("why", root, A) })
        {
            Assert.False(node.IsExact);
            Assert.StartsWith("≈", WorkedText.Figure(node, Inches), StringComparison.Ordinal);
        }

        Assert.True(root.On(Step, StepDirection.Nearest).IsExact);
    }

    public static TheoryData<Worked, string, string> Lines => new()
    {
        { A - (B + C), "a − (b + c)", "12 1/4 − (2 1/4 + 3) = 7" },
        { A - B - C, "a − b − c", "12 1/4 − 2 1/4 − 3 = 7" },
        { A - (B - C), "a − (b − c)", "12 1/4 − (2 1/4 − 3) = 13" },
        { 2 * (A + B), "2 × (a + b)", "2 × (12 1/4 + 2 1/4) = 29" },
        { (A + B) / 2, "(a + b) ÷ 2", "(12 1/4 + 2 1/4) ÷ 2 = 7 1/4" },
        { A + (B / 2), "a + b ÷ 2", "12 1/4 + 2 1/4 ÷ 2 = 13 3/8" },
        { A / (2 * new Number(3)), "a ÷ (2 × 3)", "12 1/4 ÷ (2 × 3) = ≈2 3/64" },
        { A / 2 / 3, "a ÷ 2 ÷ 3", "12 1/4 ÷ 2 ÷ 3 = ≈2 3/64" },
        { (B * B) - (C * C), "b² − c²", "(2 1/4)² − (3)² = −3.9375" },
        { (A + B) * (A + B), "(a + b)²", "(12 1/4 + 2 1/4)² = 210.25" },
        { new SquareRoot((A * A) + (B * B)), "√(a² + b²)", "√((12 1/4)² + (2 1/4)²) = ≈12 29/64" },
        { A.On(Step, StepDirection.Down), "a, down to a whole step", "12 1/4, down to a whole 1/2 = 12" },
        { (A - B).On(Step, StepDirection.Nearest), "a − b", "12 1/4 − 2 1/4 = 10" },
        { C + A.On(Step, StepDirection.Up), "c + (a, up to a whole step)", "3 + (12 1/4, up to a whole 1/2) = 15 1/2" },
        { A.On(2 * Step, StepDirection.Nearest), "a, to the nearest (2 × step)", "12 1/4, to the nearest (2 × 1/2) = 12" },
        { 2 * new Least([A, B + C]), "2 × the least of (a, b + c)", "2 × the least of (12 1/4, 2 1/4 + 3) = 10 1/2" },
        { new Greatest([A.On(Step, StepDirection.Down), B]), "the greatest of ((a, down to a whole step), b)", "the greatest of ((12 1/4, down to a whole 1/2), 2 1/4) = 12" },
        { new Chosen("it is wider", A, B) - C, "a − c", "12 1/4 − 3 = 9 1/4" },
        { (A - B).As("clear", "k") - C, "clear − c", "10 − 3 = 7" },
        { A - (B - C).As("play", "k"), "a − play", "12 1/4 − (−3/4) = 13" },
        { (B - C).As("play", "k").As("same play", "k2"), "play", "−3/4" },
        { A - (new Number(-2) * B), "a − (−2) × b", "12 1/4 − (−2) × 2 1/4 = 16 3/4" },
        { C, "c", "3" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void Formula_and_figures_take_parentheses_only_where_the_order_needs_them(Worked quantity, string formula, string arithmetic)
    {
        Assert.Equal(formula, WorkedText.Formula(quantity));
        Assert.Equal(arithmetic, WorkedText.Arithmetic(quantity, Inches));
        PrintedLine.AssertHolds(arithmetic, Inches);
        PrintedLine.AssertHolds(WorkedText.Arithmetic(quantity, Millimetres), Millimetres);
    }

    [Fact]
    public void What_lengths_enter_into_follows_the_unit_of_the_lengths()
    {
        var side = new Given("side", "side", 100.Millimetres, Origin.Typed);
        Assert.Equal("(100)² = 10000", WorkedText.Arithmetic(side * side, Millimetres));
        Assert.Equal("(100)² × 100 = 1000000", WorkedText.Arithmetic(side * side * side, Millimetres));
        Assert.Equal("10 × 100 = 1000", WorkedText.Arithmetic(Load * side, Millimetres));
        Assert.Equal("10 × 3 = 30", WorkedText.Arithmetic(Load * C, Inches));
    }

    [Fact]
    public void Two_sides_of_one_entry_are_twice_one_side_and_others_are_written_out()
    {
        var left = Entry("left stile", new(9, 4));
        var right = Entry("right stile", new(9, 4));
        Assert.Equal("2 × left stile", WorkedText.Formula(Worked.Both(left, left)));
        Assert.Equal("left stile + right stile", WorkedText.Formula(Worked.Both(left, right)));
        Assert.Equal("a − 2 × left stile", WorkedText.Formula(A.LessBoth(left, Entry("left stile", new(9, 4)))));
        Assert.Equal("a − left stile − right stile", WorkedText.Formula(A.LessBoth(left, right)));
        Assert.Equal("a + 2 × left stile", WorkedText.Formula(A.PlusBoth(left, left)));
        Assert.Equal("a + left stile + right stile", WorkedText.Formula(A.PlusBoth(left, right)));
        Assert.Equal("2 × left stile + a + 3 × b", WorkedText.Formula(Worked.Total([left, left, A, B, B, B])));
        // The same figure from another field is another entry.
        Assert.NotEqual(left, new Given("left stile", "left stile", Length.FromInches(new(9, 4)), new(OriginKind.Leaf, "leaf/stile")));
    }

    [Fact]
    public void A_sibling_is_changed_by_its_key_alone()
    {
        var left = new Given("leaf/stile.left.width", "stile width", Length.FromInches(2), Origin.Typed);
        var right = new Given("leaf/stile.right.width", "stile width", Length.FromInches(2), Origin.Typed);
        var clear = A.LessBoth(left, right).As("clear width", "leaf/clear.width");
        var changed = clear.Rewrite(node => node is Given { Key: "leaf/stile.right.width" } given
            ? new Given(given.Key, given.Label, Length.FromInches(3), given.Origin) : null);
        Assert.Equal("12 1/4 − 2 − 3 = 7 1/4", WorkedText.Arithmetic(changed, Inches));
        Assert.Equal("12 1/4 − 2 − 2 = 8 1/4", WorkedText.Arithmetic(clear, Inches));
    }

    [Fact]
    public void Replacing_shares_what_does_not_change()
    {
        var (one, other) = ((A + B).As("one", "one"), (C + Step).As("other", "other"));
        var whole = one + other;
        var changed = whole.Replace(B, Entry("b", 5));
        Assert.Equal(whole.Amount + 5 - B.Amount, changed.Amount);
        Assert.NotSame(one, changed.Operands[0]);
        Assert.Same(other, changed.Operands[1]);
        Assert.Same(whole, whole.Replace(Entry("absent", 1), A));
        Assert.Same(A, whole.Replace(whole, A));
    }

    [Fact]
    public void Steps_tell_each_named_quantity_once_in_working_order()
    {
        var clear = (A - (2 * B)).As("clear width", "clear");
        var again = (A - (2 * B)).As("clear width", "clear");
        var panel = (clear + new Chosen("it is wider", C, B)).As("panel width", "panel");
        var steps = WorkedText.Steps(Inches, panel, clear + again, again);
        Assert.Equal(["clear width", "panel width"], steps.Select(step => step.Quantity.Label));
        Assert.Equal([A, B], steps[0].Givens);
        Assert.Equal(["it is wider"], steps[1].Reasons);
        Assert.Equal([C, B], steps[1].Givens);
        Assert.Equal("7 3/4 + 3 = 10 3/4", steps[1].Arithmetic);
        Assert.Equal("clear width = a − 2 × b: 12 1/4 − 2 × 2 1/4 = 7 3/4", WorkedText.Line(clear, Inches));
        Assert.Equal("a 12 1/4", WorkedText.Line(A, Inches));
    }

    // A walk along every path would take 2 to the power of 200 steps and never end.
    [Fact]
    public void A_doubly_shared_graph_of_depth_200_is_walked_once_per_node()
    {
        var (one, other) = (Doubled(named: false, 1), Doubled(named: false, 1));
        Assert.Equal(one, other);
        Assert.True(one != Doubled(named: false, 2));
        Assert.Equal(201, one.Distinct().Count());
        var replaced = one.Replace(Entry("seed", 1), Entry("seed", 2));
        Assert.Equal(one.Amount * 2, replaced.Amount);
        Assert.Equal(201, replaced.Distinct().Count());
        var steps = WorkedText.Steps(Inches, Doubled(named: true, 1), Doubled(named: true, 1));
        Assert.Equal(200, steps.Count);
        Assert.Equal("1 + 1 = 2", steps[0].Arithmetic);

        static Worked Doubled(bool named, Fraction inches)
        {
            Worked x = Entry("seed", inches);
            for (var i = 0; i < 200; i++)
                x = named ? (x + x).As("double", $"double.{i}") : x + x;
            return x;
        }
    }

    [Fact]
    public void Distinct_tells_operands_before_what_they_make()
    {
        var half = A / 2;
        var whole = half + (half - B);
        var order = whole.Distinct().ToList();
        Assert.Equal(order.Count, order.Distinct().Count());
        foreach (var node in order)
            Assert.All(node.Operands, operand => Assert.True(order.IndexOf(operand) < order.IndexOf(node)));
    }

    private static readonly Gen<Worked> Leaves = Gen.OneOf(
        Gen.Int[-64, 2048].Select(n => (Worked)Entry("entry", new(n, 64))),
        Gen.Int[1, 300].Select(n => (Worked)Entry("third", new(n, 48))),
        Gen.Int[1, 3000].Select(n => (Worked)new Given("metric", "metric", Length.FromMillimetres(new(n, 2)), Origin.Typed)));

    private static readonly Worked[] Steppings =
        [Entry("step", new(1, 32)), Entry("step", new(1, 2)), new Given("step", "step", Length.FromMillimetres(new(1, 2)), Origin.Typed)];

    private static Gen<Worked> Expressions(int depth)
    {
        if (depth == 0)
            return Leaves;
        var inner = Expressions(depth - 1);
        var two = Gen.Select(inner, inner);
        return Gen.OneOf(
            Leaves,
            two.Select(pair => pair.Item1 + pair.Item2),
            two.Select(pair => pair.Item1 - pair.Item2),
            Gen.Select(Gen.Int[-3, 9], inner).Select(pair => pair.Item1 * pair.Item2),
            Gen.Select(inner, Gen.Int[1, 9]).Select(pair => pair.Item1 / pair.Item2),
            two.Select(pair => (Worked)new Least([pair.Item1, pair.Item2])),
            two.Select(pair => (Worked)new Greatest([pair.Item1, pair.Item2])),
            two.Select(pair => (Worked)new Chosen("why", pair.Item1, pair.Item2)),
            two.Select(pair => (Worked)new SquareRoot((pair.Item1 * pair.Item1) + (pair.Item2 * pair.Item2))),
            inner.Select(of => (Worked)of.As("named", "named")),
            Gen.Select(inner, Gen.Int[0, 2], Gen.Int[0, 2]).Select(drawn => drawn.Item1.On(Steppings[drawn.Item2], (StepDirection)drawn.Item3)));
    }

    [Fact]
    public void Every_printed_line_comes_to_its_printed_value() => Expressions(4).Sample(
        quantity =>
        {
            PrintedLine.AssertHolds(WorkedText.Arithmetic(quantity, Inches), Inches);
            PrintedLine.AssertHolds(WorkedText.Arithmetic(quantity, Millimetres), Millimetres);
        },
        iter: 1000);

    [Theory]
    [InlineData("2 × 2 1/4 = 4 1/4")]
    [InlineData("12 3/16 − 2 × 2 1/4 + 2 × 7/16 = 8 5/8")]
    [InlineData("≈2 1/3 × 2 = ≈4 3/4")]
    [InlineData("12 − (2 + 3) = 13")]
    public void A_wrong_line_is_found_out(string line) =>
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => PrintedLine.AssertHolds(line, Inches));

    // What is public here is handed about freely, between pages and threads.
    [Fact]
    public void Public_types_of_measure_cannot_be_changed_once_made()
    {
        var types = typeof(Worked).Assembly.GetExportedTypes()
            .Where(type => type.Namespace == "Stilewright.Measure" && !type.IsEnum && !type.Name.Contains('<', StringComparison.Ordinal)).ToList();
        Assert.Contains(typeof(Given), types);
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (var type in types)
        {
            Assert.All(type.GetFields(all), field => Assert.True(field.IsInitOnly || field.IsLiteral || field.Name.Contains("<>", StringComparison.Ordinal), $"{type.Name}.{field.Name}"));
            Assert.All(type.GetProperties(all).Where(property => property.SetMethod is { IsPublic: true }), property =>
                Assert.Contains(typeof(System.Runtime.CompilerServices.IsExternalInit), property.SetMethod!.ReturnParameter.GetRequiredCustomModifiers()));
        }
    }
}
