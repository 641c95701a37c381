using Fractions;
using Stilewright.Findings;

namespace Stilewright.Measure;

/// <summary>A value that somebody entered or that the program ships.</summary>
public sealed class Given : Worked
{
    public Given(string key, string label, Dimension dimension, Fraction amount, Origin origin)
        : base(dimension, amount, true, HashCode.Combine(key, amount, origin.Kind))
    {
        Key = key;
        Label = label;
        Origin = origin;
    }

    /// <summary>A given length.</summary>
    public Given(string key, string label, Length length, Origin origin)
        : this(key, label, Dimension.Length, length.Inches, origin)
    {
    }

    /// <summary>Which of its siblings this is, within the leaf or front, such as <c>leaf/stile.hinge.width</c>.</summary>
    public string Key { get; }

    /// <summary>What people call it, such as "stile width".</summary>
    public string Label { get; }

    public Origin Origin { get; }
    public override IReadOnlyList<Worked> Operands => [];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => this;

    private protected override bool HoldsTheSame(Worked other) =>
        other is Given given && given.Key == Key && given.Label == Label && given.Dimension == Dimension
        && given.Amount == Amount && given.Origin == Origin;
}

/// <summary>A value looked up in a published table.</summary>
public sealed class FromTable : Worked
{
    /// <param name="label">What people call the value.</param>
    /// <param name="table">The table, such as "hardwood thicknesses".</param>
    /// <param name="row">The row read, such as "4/4".</param>
    public FromTable(string label, string table, string row, Source source, Dimension dimension, Fraction amount)
        : base(dimension, amount, true, HashCode.Combine(table, row, label, amount))
    {
        Label = label;
        Table = table;
        Row = row;
        Source = source;
    }

    public string Label { get; }
    public string Table { get; }
    public string Row { get; }
    public Source Source { get; }
    public override IReadOnlyList<Worked> Operands => [];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => this;

    private protected override bool HoldsTheSame(Worked other) =>
        other is FromTable looked && looked.Table == Table && looked.Row == Row && looked.Label == Label
        && looked.Source == Source && looked.Dimension == Dimension && looked.Amount == Amount;
}

/// <summary>A number that belongs to the formula itself, such as the 2 of "2 × stile width".</summary>
public sealed class Number(Fraction value)
    : Worked(value.Denominator.IsOne ? Dimension.Count : Dimension.Ratio, value, true, HashCode.Combine(nameof(Number), value))
{
    public override IReadOnlyList<Worked> Operands => [];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => this;
    private protected override bool HoldsTheSame(Worked other) => other.Amount == Amount;
}

public sealed class Sum(Worked left, Worked right) : Worked(
    Dimension.OfSum(left.Dimension, right.Dimension), left.Amount + right.Amount,
    left.IsExact && right.IsExact, HashCode.Combine(nameof(Sum), left, right))
{
    public Worked Left { get; } = left;
    public Worked Right { get; } = right;
    public override IReadOnlyList<Worked> Operands => [Left, Right];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Sum(operands[0], operands[1]);
    private protected override bool HoldsTheSame(Worked other) => true;
}

public sealed class Difference(Worked left, Worked right) : Worked(
    Dimension.OfSum(left.Dimension, right.Dimension), left.Amount - right.Amount,
    left.IsExact && right.IsExact, HashCode.Combine(nameof(Difference), left, right))
{
    public Worked Left { get; } = left;
    public Worked Right { get; } = right;
    public override IReadOnlyList<Worked> Operands => [Left, Right];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Difference(operands[0], operands[1]);
    private protected override bool HoldsTheSame(Worked other) => true;
}

public sealed class Product(Worked left, Worked right) : Worked(
    left.Dimension * right.Dimension, left.Amount * right.Amount,
    left.IsExact && right.IsExact, HashCode.Combine(nameof(Product), left, right))
{
    public Worked Left { get; } = left;
    public Worked Right { get; } = right;
    public override IReadOnlyList<Worked> Operands => [Left, Right];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Product(operands[0], operands[1]);
    private protected override bool HoldsTheSame(Worked other) => true;
}

/// <exception cref="DivideByZeroException">The right side is zero.</exception>
public sealed class Quotient(Worked left, Worked right) : Worked(
    left.Dimension / right.Dimension,
    right.Amount.IsZero ? throw new DivideByZeroException() : left.Amount / right.Amount,
    left.IsExact && right.IsExact, HashCode.Combine(nameof(Quotient), left, right))
{
    public Worked Left { get; } = left;
    public Worked Right { get; } = right;
    public override IReadOnlyList<Worked> Operands => [Left, Right];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Quotient(operands[0], operands[1]);
    private protected override bool HoldsTheSame(Worked other) => true;
}

/// <summary>The least or the greatest of several quantities.</summary>
public abstract class Extreme : Worked
{
    private protected Extreme(IReadOnlyList<Worked> of, Worked extreme, string kind)
        : base(DimensionOf(of), extreme.Amount, of.All(each => each.IsExact), HashOf(kind, of)) => Of = [.. of];

    public IReadOnlyList<Worked> Of { get; }
    public override IReadOnlyList<Worked> Operands => Of;
    private protected override bool HoldsTheSame(Worked other) => true;

    private static Dimension DimensionOf(IReadOnlyList<Worked> of) =>
        of.Skip(1).Aggregate(of[0].Dimension, (dimension, each) => Dimension.OfSum(dimension, each.Dimension));

    private static int HashOf(string kind, IReadOnlyList<Worked> of)
    {
        var hash = new HashCode();
        hash.Add(kind);
        foreach (var each in of)
            hash.Add(each);
        return hash.ToHashCode();
    }
}

/// <exception cref="ArgumentException">Nothing is given, or the dimensions differ.</exception>
public sealed class Least(IReadOnlyList<Worked> of)
    : Extreme(of, of.MinBy(each => each.Amount) ?? throw new ArgumentException("Nothing to take the least of."), nameof(Least))
{
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Least(operands);
}

/// <exception cref="ArgumentException">Nothing is given, or the dimensions differ.</exception>
public sealed class Greatest(IReadOnlyList<Worked> of)
    : Extreme(of, of.MaxBy(each => each.Amount) ?? throw new ArgumentException("Nothing to take the greatest of."), nameof(Greatest))
{
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Greatest(operands);
}

/// <summary>One of several possible quantities, taken for a reason.</summary>
public sealed class Chosen : Worked
{
    /// <param name="reason">Why it was taken, as the end of a sentence that begins "taken because".</param>
    /// <exception cref="ArgumentException">The dimensions differ.</exception>
    public Chosen(string reason, Worked taken, params IReadOnlyList<Worked> others)
        : base(others.Aggregate(taken.Dimension, (dimension, each) => Dimension.OfSum(dimension, each.Dimension)),
            taken.Amount, taken.IsExact, HashCode.Combine(nameof(Chosen), reason, taken, others.Count))
    {
        Reason = reason;
        Taken = taken;
        Others = [.. others];
    }

    public string Reason { get; }
    public Worked Taken { get; }
    public IReadOnlyList<Worked> Others { get; }
    public override IReadOnlyList<Worked> Operands => [Taken, .. Others];

    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) =>
        new Chosen(Reason, operands[0], operands.Skip(1).ToArray());

    private protected override bool HoldsTheSame(Worked other) =>
        other is Chosen chosen && chosen.Reason == Reason && chosen.Others.Count == Others.Count;
}

/// <summary>A quantity put on a step of the measure: a rounding that can be seen.</summary>
/// <exception cref="ArgumentException">The dimensions differ, or the step is not positive.</exception>
public sealed class Stepped(Worked inner, Worked step, StepDirection direction) : Worked(
    Dimension.OfSum(inner.Dimension, step.Dimension), Round(inner, step, direction), true,
    HashCode.Combine(nameof(Stepped), inner, step, direction))
{
    public Worked Inner { get; } = inner;
    public Worked Step { get; } = step;
    public StepDirection Direction { get; } = direction;

    /// <summary>False where the quantity lay on the step already, so that there is nothing to tell.</summary>
    public bool Moves => Amount != Inner.Amount;

    public override IReadOnlyList<Worked> Operands => [Inner, Step];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Stepped(operands[0], operands[1], Direction);
    private protected override bool HoldsTheSame(Worked other) => other is Stepped stepped && stepped.Direction == Direction;

    private static Fraction Round(Worked inner, Worked step, StepDirection direction) => step.Amount.IsPositive
        ? Length.FromInches(inner.Amount).OnStep(Length.FromInches(step.Amount), direction).Inches
        : throw new ArgumentException("A step must be positive.", nameof(step));
}

/// <summary>The square root; exact where the root is rational, else marked.</summary>
public sealed class SquareRoot : Worked
{
    /// <exception cref="ArgumentException">The quantity is negative or no square, such as a weight.</exception>
    public SquareRoot(Worked of)
        : this(of, Root(of.Amount))
    {
    }

    private SquareRoot(Worked of, (Fraction Value, bool IsExact) root)
        : base(of.Dimension.SquareRoot(), root.Value, of.IsExact && root.IsExact, HashCode.Combine(nameof(SquareRoot), of)) => Of = of;

    public Worked Of { get; }
    public override IReadOnlyList<Worked> Operands => [Of];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new SquareRoot(operands[0]);
    private protected override bool HoldsTheSame(Worked other) => true;

    private static (Fraction Value, bool IsExact) Root(Fraction square)
    {
        if (square.IsNegative)
            throw new ArgumentException("A negative quantity has no square root.", nameof(square));
        var root = Fraction.FromDouble(Math.Sqrt(square.ToDouble()));
        var rational = Fraction.FromDoubleRounded(Math.Sqrt(square.ToDouble()));
        return rational * rational == square ? (rational, true) : (root, false);
    }
}

/// <summary>A quantity with a name: one step of the working.</summary>
public sealed class Named(string key, string label, Worked inner)
    : Worked(inner.Dimension, inner.Amount, inner.IsExact, HashCode.Combine(key, label, inner))
{
    /// <summary>Which of its siblings this is, within the leaf or front, such as <c>leaf/rail.top.length</c>.</summary>
    public string Key { get; } = key;

    /// <summary>What people call it, such as "rail length".</summary>
    public string Label { get; } = label;

    public Worked Inner { get; } = inner;
    public override IReadOnlyList<Worked> Operands => [Inner];
    private protected override Worked Rebuild(IReadOnlyList<Worked> operands) => new Named(Key, Label, operands[0]);
    private protected override bool HoldsTheSame(Worked other) => other is Named named && named.Key == Key && named.Label == Label;
}
