using Fractions;
using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>Worked quantities laid out for fast evaluation under many edits, in doubles; what is told is worked again exactly.</summary>
internal sealed class WorkedTable
{
    private readonly List<Worked> nodes = [];
    private readonly Dictionary<Worked, int> indexOf = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Worked, int> indexOfEqual = [];
    private readonly List<int[]> operands = [];
    private readonly List<double> values = [];
    private readonly List<double> unrounded = [];
    private List<int>[] users = [];
    private readonly Dictionary<int, int[]> above = [];

    public WorkedTable(IEnumerable<Worked> roots)
    {
        foreach (var root in roots)
        {
            foreach (var node in root.Distinct())
                Put(node);
        }

        BindUsers();
    }

    public int Count => nodes.Count;
    public Worked this[int index] => nodes[index];
    public IReadOnlyList<int> Operands(int index) => operands[index];

    /// <summary>The right value in inches or the base unit of the node's dimension.</summary>
    public double Value(int index) => values[index];

    /// <summary>The value where nothing had been put on the cutting step.</summary>
    public double Unrounded(int index) => unrounded[index];

    /// <summary>Where a quantity stands; equal quantities stand once.</summary>
    public int IndexOf(Worked quantity) => indexOfEqual[quantity];

    /// <summary>A node of its own for a number that is told, so that a slip can change it and nothing else.</summary>
    public int AddNumber(Worked quantity)
    {
        var under = IndexOf(quantity);
        nodes.Add(quantity);
        operands.Add([under]);
        values.Add(values[under]);
        unrounded.Add(unrounded[under]);
        Array.Resize(ref users, nodes.Count);
        users[^1] = [];
        users[under].Add(nodes.Count - 1);
        return nodes.Count - 1;
    }

    private bool IsNumber(int index) => operands[index] is [var under] && ReferenceEquals(nodes[index], nodes[under]);

    private void Put(Worked node)
    {
        if (indexOf.ContainsKey(node))
            return;
        if (indexOfEqual.TryGetValue(node, out var equal))
        {
            indexOf.Add(node, equal);
            return;
        }

        var under = new int[node.Operands.Count];
        for (var i = 0; i < under.Length; i++)
            under[i] = indexOf[node.Operands[i]];
        indexOf.Add(node, nodes.Count);
        indexOfEqual.Add(node, nodes.Count);
        nodes.Add(node);
        operands.Add(under);
        values.Add(node.Amount.ToDouble());
        unrounded.Add(node.Operands.Count == 0 ? values[^1] : Work(nodes.Count - 1, unrounded, rounds: false));
    }

    private void BindUsers()
    {
        users = new List<int>[nodes.Count];
        for (var i = 0; i < users.Length; i++)
            users[i] = [];
        for (var i = 0; i < nodes.Count; i++)
        {
            foreach (var operand in operands[i])
            {
                if (!users[operand].Contains(i))
                    users[operand].Add(i);
            }
        }
    }

    /// <summary>The node and all that is made of it, operands before what they make.</summary>
    public int[] Above(int index)
    {
        if (above.TryGetValue(index, out var known))
            return known;
        var found = new SortedSet<int> { index };
        var open = new Stack<int>([index]);
        while (open.TryPop(out var node))
        {
            foreach (var user in users[node])
            {
                if (found.Add(user))
                    open.Push(user);
            }
        }

        int[] sorted = [.. found];
        above.Add(index, sorted);
        return sorted;
    }

    /// <summary>Which nodes are one of the roots or lie under one.</summary>
    public bool[] Under(IEnumerable<int> roots)
    {
        var under = new bool[Count];
        foreach (var root in roots)
            under[root] = true;
        // Operands stand before what they make.
        for (var i = Count - 1; i >= 0; i--)
        {
            if (!under[i])
                continue;
            foreach (var operand in operands[i])
                under[operand] = true;
        }

        return under;
    }

    /// <summary>Whether a node is the other or lies under it.</summary>
    public bool IsUnder(int index, int root) => Array.BinarySearch(Above(index), root) >= 0;

    /// <summary>Values under edits; only nodes above a target differ from <see cref="Value"/>.</summary>
    public sealed class Trial(WorkedTable table)
    {
        private readonly List<double> now = [.. table.values];
        private readonly List<int> touched = [];

        public double this[int index] => now[index];

        /// <summary>Works out what the edits change; earlier edits are undone first.</summary>
        /// <returns>The nodes that were worked anew.</returns>
        public IReadOnlyList<int> Run(IReadOnlyList<Edit> edits)
        {
            foreach (var index in touched)
                now[index] = table.values[index];
            touched.Clear();
            if (edits.Count == 1)
            {
                touched.AddRange(table.Above(edits[0].Target));
            }
            else
            {
                foreach (var edit in edits)
                    touched.AddRange(table.Above(edit.Target));
                touched.Sort();
                var kept = 0;
                for (var i = 0; i < touched.Count; i++)
                {
                    if (i == 0 || touched[i] != touched[i - 1])
                        touched[kept++] = touched[i];
                }

                touched.RemoveRange(kept, touched.Count - kept);
            }

            foreach (var index in touched)
            {
                var value = table.operands[index].Length == 0 ? table.values[index] : table.Work(index, now, rounds: true);
                foreach (var edit in edits)
                {
                    if (edit.Target == index)
                        value = table.Edited(edit, value, now);
                }

                now[index] = value;
            }

            return touched;
        }
    }

    private double Edited(Edit edit, double value, List<double> now)
    {
        var under = operands[edit.Target];
        return edit.Kind switch
        {
            EditKind.KeepLeft or EditKind.NotDivided => now[under[0]],
            EditKind.TurnSign => nodes[edit.Target] is Sum ? now[under[0]] - now[under[1]] : now[under[0]] + now[under[1]],
            EditKind.ScaleRight => Joined(edit.Target, now[under[0]], edit.Factor * now[under[1]]),
            EditKind.ReplaceRight => Joined(edit.Target, now[under[0]], edit.Factor * values[edit.Other]),
            EditKind.ReplaceLeft => Joined(edit.Target, values[edit.Other], now[under[1]]),
            EditKind.DividedEarly => Joined(under[0], now[operands[under[0]][0]] / now[under[1]], now[operands[under[0]][1]]),
            EditKind.Scale => edit.Factor * value,
            EditKind.Become => now[edit.Other],
            EditKind.Add => value + (edit.Factor * values[edit.Other]),
            _ => edit.Factor,
        };
    }

    private double Joined(int index, double left, double right) => nodes[index] switch
    {
        Sum => left + right,
        Difference => left - right,
        Product => left * right,
        Quotient => left / right,
        Named or Stepped => right,
        _ => double.NaN,
    };

    private double Work(int index, List<double> now, bool rounds)
    {
        var under = operands[index];
        switch (nodes[index])
        {
            case var _ when IsNumber(index):
                return now[under[0]];
            case Sum:
                return now[under[0]] + now[under[1]];
            case Difference:
                return now[under[0]] - now[under[1]];
            case Product:
                return now[under[0]] * now[under[1]];
            case Quotient:
                return now[under[0]] / now[under[1]];
            case Least:
                return under.Min(operand => now[operand]);
            case Greatest:
                return under.Max(operand => now[operand]);
            case Stepped stepped:
                return rounds ? OnStep(now[under[0]], now[under[1]], stepped.Direction) : now[under[0]];
            case SquareRoot:
                return Math.Sqrt(now[under[0]]);
            default:
                // Named, and Chosen whose first operand was taken.
                return now[under[0]];
        }
    }

    /// <summary>A value on a step, a hair's breadth of double arithmetic forgiven.</summary>
    public static double OnStep(double value, double step, StepDirection direction)
    {
        const double hair = 1e-7;
        var steps = value / step;
        return step * direction switch
        {
            StepDirection.Down => Math.Floor(steps + hair),
            StepDirection.Up => Math.Ceiling(steps - hair),
            _ => Math.Floor(steps + 0.5 + hair),
        };
    }

    /// <summary>The quantity as it was worked with the slips, exactly; null where it cannot be worked so, such as the root of less than nothing.</summary>
    public Worked? Rework(int index, IReadOnlyList<Edit> edits)
    {
        var done = new Dictionary<int, Worked>();
        try
        {
            return Build(index);
        }
        catch (Exception e) when (e is ArgumentException or DivideByZeroException)
        {
            return null;
        }

        Worked Build(int at)
        {
            if (done.TryGetValue(at, out var known))
                return known;
            var under = operands[at].Select(Build).ToArray();
            var made = IsNumber(at) ? under[0] : nodes[at].WithOperands(under);
            foreach (var edit in edits)
            {
                if (edit.Target == at)
                    made = Edited(edit, made, under, Build);
            }

            done.Add(at, made);
            return made;
        }
    }

    private Worked Edited(Edit edit, Worked made, Worked[] under, Func<int, Worked> build)
    {
        switch (edit.Kind)
        {
            case EditKind.KeepLeft or EditKind.NotDivided:
                return under[0];
            case EditKind.TurnSign:
                return made is Sum ? under[0] - under[1] : under[0] + under[1];
            case EditKind.ScaleRight:
                return made.WithOperands([under[0], Times(edit.Factor, under[1])]);
            case EditKind.ReplaceRight:
                var right = Times(edit.Factor, nodes[edit.Other]);
                return made is Named or Stepped ? right : made.WithOperands([under[0], right]);
            case EditKind.ReplaceLeft:
                return made.WithOperands([nodes[edit.Other], under[1]]);
            case EditKind.DividedEarly:
                var whole = under[0];
                // Another slip may have left out what would be taken after dividing.
                if (whole is not (Sum or Difference))
                    return whole / under[1];
                return whole.WithOperands([whole.Operands[0] / under[1], whole.Operands[1]]);
            case EditKind.Scale when made is Quotient { Right: Number by }:
                return under[0] / new Number(Exact(by.Amount.ToDouble() / edit.Factor));
            case EditKind.Scale:
                return Times(edit.Factor, made);
            case EditKind.Become:
                var taken = build(edit.Other);
                return made is Named named ? new Named(named.Key, named.Label, taken) : taken;
            case EditKind.Add:
                // Inside the name, so that the step shows the term too many.
                var added = Times(Math.Abs(edit.Factor), nodes[edit.Other]);
                Worked Joined(Worked to) => edit.Factor < 0 ? to - added : to + added;
                return made is Named into ? new Named(into.Key, into.Label, Joined(into.Inner)) : Joined(made);
            default:
                var value = Exact(edit.Factor);
                return made switch
                {
                    Named step => new Named(step.Key, step.Label, new Given(step.Key, step.Label, step.Dimension, value, Origin.Typed)),
                    Given given => new Given(given.Key, given.Label, given.Dimension, value, Origin.Typed),
                    _ => new Given("told", WorkedText.Label(made), made.Dimension, value, Origin.Typed),
                };
        }
    }

    private static Worked Times(double factor, Worked term) => (term, factor) switch
    {
        (_, 1) => term,
        (Product { Left: Number number, Right: var each }, _) => Counted(number.Amount * Exact(factor), each),
        _ => Counted(Exact(factor), term),
    };

    private static Worked Counted(Fraction count, Worked each) => count == Fraction.One ? each : new Number(count) * each;

    private static Fraction Exact(double value) => Fraction.FromDoubleRounded(value);
}
