using System.Globalization;
using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>All slips that can be made in a working, found by looking at its steps: no formula is written here a second time.</summary>
internal sealed class SlipMaker
{
    /// <summary>Says of a cause that its term was not added but taken off.</summary>
    internal const string TakenOff = "taken off";

    // Terms that makers add where they do not belong.
    private static readonly HashSet<string> Movable = ["trim", "rough", "groove", "tenon", "clearance", "overlay", "rise", "gap", "reveal", "lap", "cut-back"];

    // Of one dimension and often taken for one another.
    private static readonly string[][] Alike =
    [
        ["stile", "rail", "mid rail", "mid stile"], ["groove", "tenon"], ["overlay", "reveal", "gap"], ["trim", "rough"],
    ];

    // Several of these may hold in one front, such as the usual overlay and that beside a shared member.
    private static readonly HashSet<string> TakenForEachOther = ["overlay", "gap", "clearance", "stile", "rail"];

    private readonly WorkedTable table;
    private readonly LengthUnit unit;
    private readonly List<Slip> slips = [];
    private readonly List<Term> terms = [];
    private readonly string[] subjects;
    private readonly string[]?[] tokens;
    private readonly List<int> quantities;
    private readonly bool[] matters;

    private sealed record Term(int Step, int Join, int Node, string Subject, bool Adds, double Count);

    private SlipMaker(WorkedTable table, IEnumerable<int> roots, LengthUnit unit)
    {
        this.table = table;
        this.unit = unit;
        tokens = [.. Enumerable.Range(0, table.Count).Select(index => KeyOf(table[index])?.Split('/', '.', '-'))];
        matters = table.Under(roots);
        subjects = [.. Enumerable.Range(0, table.Count).Select(index => Subjects.Of(table[index]))];
        quantities = [.. Enumerable.Range(0, table.Count).Where(index => table[index] is { Dimension: var dimension } and (Given or FromTable or Named) && dimension == Dimension.Length)];
    }

    /// <summary>Slips at the steps of the working of some quantities, and at what was read for it.</summary>
    /// <param name="roots">The quantities, as indexes into the table.</param>
    public static (IReadOnlyList<Slip> Slips, IReadOnlyList<(int Node, string Subject, double Sign)> MovableTerms) Of(WorkedTable table, IEnumerable<int> roots, LengthUnit unit)
    {
        var ends = roots.ToHashSet();
        var maker = new SlipMaker(table, ends, unit);
        for (var step = 0; step < table.Count; step++)
        {
            if (table[step] is Named || ends.Contains(step) && table[step] is not (Given or FromTable))
                maker.AddStep(step);
        }

        maker.AddReadings();
        // Of half an allowance the whole may stray too.
        var movable = maker.terms.Where(term => Movable.Contains(term.Subject))
            .SelectMany(term => table[term.Node] is Quotient ? new[] { term.Node, table.Operands(term.Node)[0] } : [term.Node], (term, node) => (Node: node, term.Subject, Sign: term.Adds ? 1.0 : -1))
            .DistinctBy(term => term.Node).ToList();
        return (maker.slips, movable);
    }

    private void Add(SlipKind kind, string subject, int step, double cost, params Edit[] edits) =>
        slips.Add(new(new(kind, subject), step, edits, cost));

    private void AddStep(int step)
    {
        var own = new List<Term>();
        var operations = 0;
        var principal = Descend(table[step] is Named ? table.Operands(step)[0] : step);
        terms.AddRange(own);
        if (!matters[step])
            return;

        foreach (var group in own.GroupBy(term => (term.Subject, term.Adds)))
            AddTerms(step, [.. group]);
        foreach (var term in own)
            AddLike(term);
        if (table[step] is Named && operations > 1 && table[principal].Dimension == table[step].Dimension && table[principal] is Named or Given)
            Add(SlipKind.StepLeftOut, subjects[step], step, SlipCosts.StepLeftOut, new Edit(step, EditKind.Become, principal));
        if (own.Where(term => term.Count == 2).ToList() is { Count: > 1 } twos)
            Add(SlipKind.OneSideOnly, subjects[step], step, SlipCosts.OneSideOnly, [.. twos.Select(term => new Edit(term.Join, EditKind.ScaleRight, -1, 0.5))]);

        // Down the left sides to the first figure; the right sides are terms.
        int Descend(int node)
        {
            var under = table.Operands(node);
            switch (table[node])
            {
                case Sum or Difference:
                    operations++;
                    var first = Descend(under[0]);
                    AddTerm(node, under[1], table[node] is Sum);
                    if (matters[step] && table[under[0]] is Named or Given or FromTable)
                        AddLikeFirst(node, under[0]);
                    return first;
                case Quotient { Right: Number number }:
                    operations++;
                    AddDivision(node, number);
                    return Descend(under[0]);
                case Stepped:
                    return Descend(under[0]);
                case Least or Greatest or Chosen:
                    AddOthers(node);
                    return node;
                case Product { Left: Number }:
                    return Descend(under[1]);
                default:
                    return node;
            }
        }

        void AddTerm(int join, int node, bool adds)
        {
            var count = table[node] is Product { Left: Number number } ? number.Amount.ToDouble() : 1;
            own.Add(new(step, join, node, subjects[node], adds, count));
            if (table[node] is Quotient or Sum or Difference or Least or Greatest or Chosen)
                Descend(node);
        }

        void AddDivision(int node, Number number)
        {
            var by = number.Amount.ToDouble();
            if (by < 2 || !matters[step])
                return;
            var isTerm = Subjects.Of(table[node]) is "trim" or "rough";
            Add(SlipKind.NotDivided, isTerm ? subjects[node] : subjects[step], step, SlipCosts.NotDivided, new Edit(node, EditKind.NotDivided));
            if (table[table.Operands(node)[0]] is Sum or Difference)
                Add(SlipKind.DividedTooEarly, subjects[table.Operands(table.Operands(node)[0])[1]], step, SlipCosts.DividedTooEarly, new Edit(node, EditKind.DividedEarly));
            if (isTerm)
                return;
            Add(SlipKind.DividedByAnother, subjects[step], step, SlipCosts.DividedByOneMore, new Edit(node, EditKind.Scale, -1, by / (by + 1)));
            if (by > 2)
                Add(SlipKind.DividedByAnother, subjects[step], step, SlipCosts.DividedByOneLess, new Edit(node, EditKind.Scale, -1, by / (by - 1)));
        }

        void AddOthers(int node)
        {
            if (!matters[step])
                return;
            foreach (var other in table.Operands(node).Where(other => Differ(table.Value(other), table.Value(node))).DistinctBy(table.Value))
                Add(SlipKind.AnotherOfSeveral, subjects[step], step, SlipCosts.AnotherOfSeveral, new Edit(node, EditKind.Become, other));
        }

        void AddLikeFirst(int join, int node)
        {
            foreach (var other in LikeTo(node))
                slips.Add(new(new(SlipKind.LikeQuantity, subjects[node], subjects[other]), step, [new(join, EditKind.ReplaceLeft, other)], SlipCosts.LikeQuantity));
        }
    }

    // Terms of one subject in one step, such as the overlays of both sides, are missed together or one by one.
    private void AddTerms(int step, IReadOnlyList<Term> group)
    {
        var subject = group[0].Subject;
        Edit[] All(EditKind kind, double factor = 1) => [.. group.Select(term => new Edit(term.Join, kind, -1, factor))];
        Add(SlipKind.LeftOut, subject, step, SlipCosts.LeftOut, All(EditKind.KeepLeft));
        slips.Add(new(new(SlipKind.SignTurned, subject, group[0].Adds ? TakenOff : "added"), step, All(EditKind.TurnSign), SlipCosts.SignTurned));
        if (table[group[0].Node] is not Quotient)
            Add(SlipKind.CountedTwice, subject, step, SlipCosts.CountedTwice, All(EditKind.ScaleRight, 2));
        if (group.Count > 1)
        {
            foreach (var term in group)
            {
                Add(SlipKind.CountedOnce, subject, step, SlipCosts.CountedOnce, new Edit(term.Join, EditKind.KeepLeft));
                Add(SlipKind.OneTooMany, subject, step, SlipCosts.OneTooMany, new Edit(term.Join, EditKind.ScaleRight, -1, 2));
            }

            return;
        }

        var only = group[0];
        if (only.Count < 2)
            return;
        Add(SlipKind.CountedOnce, subject, step, SlipCosts.CountedOnce, new Edit(only.Join, EditKind.ScaleRight, -1, 1 / only.Count));
        Add(SlipKind.OneTooMany, subject, step, SlipCosts.OneTooMany, new Edit(only.Join, EditKind.ScaleRight, -1, (only.Count + 1) / only.Count));
        if (only.Count > 2)
            Add(SlipKind.OneTooFew, subject, step, SlipCosts.OneTooFew, new Edit(only.Join, EditKind.ScaleRight, -1, (only.Count - 1) / only.Count));
    }

    private void AddLike(Term term)
    {
        var each = table[term.Node] is Product { Left: Number } ? table.Operands(term.Node)[1] : term.Node;
        if (table[each] is not (Given or FromTable or Named))
            return;
        foreach (var other in LikeTo(each))
            slips.Add(new(new(SlipKind.LikeQuantity, term.Subject, subjects[other]), term.Step, [new(term.Join, EditKind.ReplaceRight, other, term.Count)], SlipCosts.LikeQuantity));
    }

    // Quantities of other value that are named alike or stand for the like.
    private IEnumerable<int> LikeTo(int node)
    {
        // What is nought is as good as left out.
        var seen = new HashSet<double> { table.Value(node), 0 };
        foreach (var other in quantities)
        {
            if (other != node && AreAlike(node, other) && !table.IsUnder(node, other) && seen.Add(table.Value(other)))
                yield return other;
        }
    }

    private bool AreAlike(int one, int other)
    {
        var (first, second) = (subjects[one], subjects[other]);
        if (first == second ? TakenForEachOther.Contains(first) : Alike.Any(group => group.Contains(first) && group.Contains(second)))
            return true;
        return tokens[one] is { } key && tokens[other] is { } otherKey && DifferInOneToken(key, otherKey);
    }

    private static string? KeyOf(Worked quantity) => quantity switch
    {
        Given given => given.Key,
        Named named => named.Key,
        _ => null,
    };

    private static bool DifferInOneToken(string[] first, string[] second)
    {
        if (first.Length != second.Length || first[0] != second[0])
            return false;
        var differ = 0;
        for (var i = 0; i < first.Length; i++)
            differ += first[i] == second[i] ? 0 : 1;
        return differ == 1;
    }

    private void AddReadings()
    {
        // Nobody reads the cutting step off a tape.
        foreach (var node in quantities.Where(node => matters[node] && subjects[node] != "step"))
        {
            var deeper = table[node] is Named ? SlipCosts.CarriedOver : SlipCosts.ReadForWorking;
            foreach (var variant in ReadingSlips.Of(table.Value(node), unit))
                slips.Add(new(new(variant.Kind, subjects[node], WorkedText.Label(table[node]), variant.Value.ToString("0.#####", CultureInfo.InvariantCulture)), node, [new(node, EditKind.Set, -1, variant.Value)], variant.Cost + deeper));
        }
    }

    /// <summary>Slips of one number alone: a term that does not belong.</summary>
    public static IEnumerable<Slip> StrayTerms(WorkedTable table, int number, IReadOnlyList<(int Node, string Subject, double Sign)> movable)
    {
        var under = table.Operands(number)[0];
        var present = new HashSet<string>();
        Gather(table[under] is Named ? table.Operands(under)[0] : under);
        // Of like allowances the one on width goes with what is reckoned from the leaf's width.
        var axis = table[under].Distinct().Any(step => KeyOf(step) == "leaf/width") ? "width" : "height";
        var likely = movable.Where(term => !present.Contains(term.Subject))
            .GroupBy(term => (table.Value(term.Node), term.Subject, term.Sign))
            .Select(alike => alike.OrderByDescending(term => WorkedText.Formula(table[term.Node]).Contains(axis, StringComparison.Ordinal)).First());
        foreach (var (node, subject, sign) in likely)
        {
            var cost = subject == "trim" ? SlipCosts.TrimStrays : SlipCosts.TermStrays;
            yield return new(new(SlipKind.DoesNotBelong, subject), under, [new(number, EditKind.Add, node, sign)], cost);
            yield return new(new(SlipKind.DoesNotBelong, subject, TakenOff), under, [new(number, EditKind.Add, node, -sign)], cost + SlipCosts.StrayTakenOff);
        }

        void Gather(int node)
        {
            present.Add(Subjects.Of(table[node]));
            if (table[node] is Named or Given or FromTable)
                return;
            foreach (var operand in table.Operands(node))
                Gather(operand);
        }
    }

    private static bool Differ(double one, double other) => Math.Abs(one - other) > 1e-9;
}
