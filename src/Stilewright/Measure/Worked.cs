using Fractions;

namespace Stilewright.Measure;

/// <summary>A value together with the expression that made it.</summary>
/// <remarks>
/// Immutable. Operands may be shared, so the whole is a graph, never walked once per path. Amount and hash are computed
/// once, at construction; equality compares reference, then hash, then structure.
/// The amount is in the base unit of the dimension: inches, square inches, pounds, degrees and so on.
/// </remarks>
public abstract class Worked : IEquatable<Worked>
{
    private readonly int hash;

    private protected Worked(Dimension dimension, Fraction amount, bool isExact, int hash)
    {
        Dimension = dimension;
        Amount = amount;
        IsExact = isExact;
        this.hash = hash;
    }

    public Dimension Dimension { get; }

    /// <summary>The value in base units: exact when <see cref="IsExact"/>, else the nearest double.</summary>
    public Fraction Amount { get; }

    /// <summary>False where an irrational step (a root, an angle) lies below; such figures print ≈.</summary>
    public bool IsExact { get; }

    /// <summary>The value as a length.</summary>
    /// <exception cref="InvalidOperationException">The quantity is not a length.</exception>
    public Length Length => Dimension == Dimension.Length
        ? Length.FromInches(Amount)
        : throw new InvalidOperationException($"A quantity of {Dimension} is not a length.");

    /// <summary>The quantities this one is made of, in reading order; empty for what was given.</summary>
    public abstract IReadOnlyList<Worked> Operands { get; }

    /// <summary>The same node over other operands, checked and computed anew.</summary>
    /// <exception cref="ArgumentException">The number of operands differs, or their dimensions do not go together.</exception>
    public Worked WithOperands(IReadOnlyList<Worked> operands)
    {
        if (operands.Count != Operands.Count)
            throw new ArgumentException($"{GetType().Name} takes {Operands.Count} operands, not {operands.Count}.", nameof(operands));
        return operands.Count == 0 ? this : Rebuild(operands);
    }

    private protected abstract Worked Rebuild(IReadOnlyList<Worked> operands);

    /// <summary>Equality of what the node itself holds, its operands aside; the other has the same type.</summary>
    private protected abstract bool HoldsTheSame(Worked other);

    /// <summary>Gives the quantity a name, so that later expressions quote it instead of repeating it.</summary>
    /// <param name="label">What people call it, such as "rail length".</param>
    /// <param name="key">A path within the leaf or front that tells it from its siblings, such as <c>leaf/rail.top.length</c>.</param>
    public Named As(string label, string key) => new(key, label, this);

    /// <summary>The same graph with every occurrence of a quantity replaced; what does not contain it is shared, not copied.</summary>
    public Worked Replace(Worked target, Worked replacement) =>
        Rewrite(node => node.Equals(target) ? replacement : null);

    /// <summary>Rewrites from the top down: where <paramref name="change"/> answers, its answer stands, else the operands are rewritten.</summary>
    /// <exception cref="ArgumentException">A rewritten node mixes dimensions that do not go together.</exception>
    public Worked Rewrite(Func<Worked, Worked?> change)
    {
        var done = new Dictionary<Worked, Worked>(ReferenceEqualityComparer.Instance);
        return Visit(this);

        Worked Visit(Worked node)
        {
            if (done.TryGetValue(node, out var known))
                return known;
            var result = change(node) ?? Descend(node);
            done.Add(node, result);
            return result;
        }

        Worked Descend(Worked node)
        {
            var operands = node.Operands;
            var rewritten = new Worked[operands.Count];
            var differs = false;
            for (var i = 0; i < rewritten.Length; i++)
            {
                rewritten[i] = Visit(operands[i]);
                differs |= !ReferenceEquals(rewritten[i], operands[i]);
            }

            return differs ? node.Rebuild(rewritten) : node;
        }
    }

    /// <summary>Every distinct quantity of the graph, operands before what they make, each once.</summary>
    public IEnumerable<Worked> Distinct()
    {
        var seen = new HashSet<Worked>(ReferenceEqualityComparer.Instance);
        var order = new List<Worked>();
        Visit(this);
        return order;

        void Visit(Worked node)
        {
            if (!seen.Add(node))
                return;
            foreach (var operand in node.Operands)
                Visit(operand);
            order.Add(node);
        }
    }

    public static Worked operator +(Worked left, Worked right) => new Sum(left, right);
    public static Worked operator -(Worked left, Worked right) => new Difference(left, right);
    public static Worked operator *(Worked left, Worked right) => new Product(left, right);
    public static Worked operator *(int count, Worked each) => new Product(new Number(count), each);

    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Worked operator /(Worked left, Worked right) => new Quotient(left, right);

    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Worked operator /(Worked whole, int count) => new Quotient(whole, new Number(count));

    /// <summary>The sum of two sides: <c>2 × side</c> when both come from one entry, both written out when not.</summary>
    public static Worked Both(Worked one, Worked other) => one.Equals(other) ? 2 * one : one + other;

    /// <summary>This less two sides: less <c>2 × side</c> when both come from one entry, each written out when not.</summary>
    public Worked LessBoth(Worked one, Worked other) => one.Equals(other) ? this - (2 * one) : this - one - other;

    /// <summary>This and two sides: <c>2 × side</c> when both come from one entry, each written out when not.</summary>
    public Worked PlusBoth(Worked one, Worked other) => one.Equals(other) ? this + (2 * one) : this + one + other;

    /// <summary>The sum of the terms, equal neighbours gathered into <c>n × term</c>.</summary>
    /// <exception cref="ArgumentException"><paramref name="terms"/> is empty.</exception>
    public static Worked Total(IReadOnlyList<Worked> terms)
    {
        if (terms.Count == 0)
            throw new ArgumentException("A total needs at least one term.", nameof(terms));
        Worked? total = null;
        for (var i = 0; i < terms.Count;)
        {
            var run = 1;
            while (i + run < terms.Count && terms[i + run].Equals(terms[i]))
                run++;
            var term = run == 1 ? terms[i] : run * terms[i];
            total = total is null ? term : total + term;
            i += run;
        }

        return total!;
    }

    /// <summary>The value put on a step of the measure, as a step of the working that can be seen.</summary>
    /// <exception cref="ArgumentException">The dimensions differ, or the step is not positive.</exception>
    public Worked On(Worked step, StepDirection direction) => new Stepped(this, step, direction);

    public static bool operator ==(Worked? left, Worked? right) => left is null ? right is null : left.Equals(right);
    public static bool operator !=(Worked? left, Worked? right) => !(left == right);

    public bool Equals(Worked? other)
    {
        if (ReferenceEquals(this, other))
            return true;
        if (other is null || !Alike(this, other))
            return false;
        return Operands.Count == 0 || SameStructure(this, other);
    }

    public override bool Equals(object? obj) => Equals(obj as Worked);

    public override int GetHashCode() => hash;

    private static bool Alike(Worked left, Worked right) =>
        left.hash == right.hash && left.GetType() == right.GetType() && left.HoldsTheSame(right);

    // Each pair of nodes is compared once, however many paths lead to it.
    private static bool SameStructure(Worked left, Worked right)
    {
        var compared = new HashSet<(Worked, Worked)>(PairsByReference.Instance);
        var open = new Stack<(Worked Left, Worked Right)>();
        open.Push((left, right));
        while (open.TryPop(out var pair))
        {
            if (ReferenceEquals(pair.Left, pair.Right) || !compared.Add(pair))
                continue;
            var leftOperands = pair.Left.Operands;
            var rightOperands = pair.Right.Operands;
            if (!Alike(pair.Left, pair.Right) || leftOperands.Count != rightOperands.Count)
                return false;
            for (var i = 0; i < leftOperands.Count; i++)
                open.Push((leftOperands[i], rightOperands[i]));
        }

        return true;
    }

    private sealed class PairsByReference : IEqualityComparer<(Worked, Worked)>
    {
        public static PairsByReference Instance { get; } = new();

        public bool Equals((Worked, Worked) x, (Worked, Worked) y) =>
            ReferenceEquals(x.Item1, y.Item1) && ReferenceEquals(x.Item2, y.Item2);

        public int GetHashCode((Worked, Worked) obj) => HashCode.Combine(
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj.Item1),
            System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj.Item2));
    }

    /// <summary>For debugging: the formula and the value in inches.</summary>
    public override string ToString() => WorkedText.Line(this, new LengthFormat(LengthUnit.Inch, 64));
}
