using System.Globalization;
using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>One number of a list beside the right one.</summary>
/// <param name="Leaf">The label of its leaf or front.</param>
/// <param name="Own">Slips of this number alone, as values: another stage, another part, exchanged.</param>
/// <param name="IsWrong">True where it is known to be wrong, however little it is off.</param>
internal sealed record ToldNumber(Worked Right, string Leaf, double Told, IReadOnlyList<(Cause Cause, double Value, double Cost)> Own, bool IsWrong = false)
{
    /// <summary>Whether it says how thick a piece is: no allowance strays into that, and no saw cut is lost from it.</summary>
    public bool IsThickness { get; init; }
}

/// <summary>Where wrong figures may have been taken from.</summary>
/// <param name="Quantities">Quantities besides those told.</param>
/// <param name="Step">The step to which figures are worked.</param>
internal sealed record FigurePool(IReadOnlyList<Worked> Quantities, Worked Step)
{
    public static FigurePool Of(ListKey key, IEnumerable<ToldNumber> told) => new([.. key.Pool(told.Select(number => number.Leaf))], key.Step);
}

/// <summary>What became of one told number.</summary>
internal enum Standing
{
    Right,
    Wrong,
    Follows,
}

/// <summary>One explanation of some wrong numbers: one cause, or two at once.</summary>
/// <param name="Slips">Per number the slips that make it.</param>
/// <param name="Cost">How rare it is.</param>
internal sealed record Explained(IReadOnlyList<Cause> Causes, IReadOnlyDictionary<int, IReadOnlyList<Slip>> Slips, double Cost);

/// <summary>Numbers that one explanation accounts for, the likeliest explanation first; empty where nothing explains them.</summary>
internal sealed record FoundMistake(IReadOnlyList<int> Numbers, IReadOnlyList<Explained> Explanations);

/// <summary>Finds the fewest causes that together explain every wrong number of a list.</summary>
internal sealed class Diagnosis
{
    private const int MostAlternatives = 24;
    private const double Hair = 1e-6;

    private readonly IReadOnlyList<ToldNumber> told;
    private readonly WorkedTable table;
    private readonly WorkedTable.Trial trial;
    private readonly LengthUnit unit;
    private readonly double step;
    private readonly int[] numbers;
    private readonly double[] tolerance;
    private readonly Dictionary<int, int> numberAt = [];
    private readonly Standing[] standing;
    private readonly List<int>[] from;
    private readonly List<Edit>[] earlier;
    private readonly HashSet<(int Number, Slip Slip)> fromEarlier = [];
    private readonly List<Slip> slips = [];
    private readonly Dictionary<Cause, Fit> fits = [];

    // What one cause explains: per number the best slip of it.
    private sealed class Fit
    {
        public Dictionary<int, Slip> Slips { get; } = [];
        public Dictionary<Slip, int> Harm { get; } = [];

        public double Cost(IEnumerable<int> covered)
        {
            var used = covered.Where(Slips.ContainsKey).Select(number => Slips[number]).Distinct().ToList();
            return used.Count == 0 ? double.PositiveInfinity
                : used.Min(slip => slip.Cost) + SlipCosts.AnotherPlace * (used.Count - 1) + SlipCosts.HarmedFigure * Math.Min(SlipCosts.MostHarmCounted, used.Sum(slip => Harm.GetValueOrDefault(slip)));
        }
    }

    private Diagnosis(IReadOnlyList<ToldNumber> told, FigurePool pool, LengthUnit unit)
    {
        this.told = told;
        this.unit = unit;
        step = pool.Step.Amount.ToDouble();
        table = new(pool.Quantities.Concat(told.Select(number => number.Right)).Append(pool.Step));
        numbers = new int[told.Count];
        tolerance = new double[told.Count];
        standing = new Standing[told.Count];
        from = new List<int>[told.Count];
        earlier = new List<Edit>[told.Count];
        for (var i = 0; i < told.Count; i++)
        {
            numbers[i] = table.AddNumber(told[i].Right);
            numberAt.Add(numbers[i], i);
            tolerance[i] = told[i].Right.Distinct().Any(node => node is Stepped { Direction: StepDirection.Down }) ? step : step / 2;
            from[i] = [];
            earlier[i] = [];
        }

        trial = new(table);
    }

    public IReadOnlyList<Standing> Standings => standing;

    /// <summary>The wrong numbers that each number follows from.</summary>
    public IReadOnlyList<IReadOnlyList<int>> From => from;

    public IReadOnlyList<FoundMistake> Mistakes { get; private set; } = [];

    public static Diagnosis Of(IReadOnlyList<ToldNumber> told, FigurePool pool, LengthUnit unit)
    {
        var diagnosis = new Diagnosis(told, pool, unit);
        diagnosis.Stand();
        diagnosis.Mistakes = diagnosis.Explain();
        return diagnosis;
    }

    /// <summary>Every single slip that can be made in the working of these numbers, and what each number becomes by it.</summary>
    public static IEnumerable<(Slip Slip, IReadOnlyList<double> Values)> Possible(IReadOnlyList<ToldNumber> told, FigurePool pool, LengthUnit unit)
    {
        var diagnosis = new Diagnosis(told, pool, unit);
        diagnosis.MakeSlips(all: true);
        foreach (var slip in diagnosis.slips)
        {
            diagnosis.trial.Run(slip.Edits);
            yield return (slip, [.. diagnosis.numbers.Select(number => diagnosis.trial[number])]);
        }
    }

    /// <summary>Values under several slips at once.</summary>
    public static IReadOnlyList<double> Together(IReadOnlyList<ToldNumber> told, FigurePool pool, LengthUnit unit, IReadOnlyList<Slip> made)
    {
        var diagnosis = new Diagnosis(told, pool, unit);
        diagnosis.trial.Run([.. made.SelectMany(slip => slip.Edits)]);
        return [.. diagnosis.numbers.Select(number => diagnosis.trial[number])];
    }

    /// <summary>The working of a number with slips in it, from what was told earlier where it follows from that; null where it cannot be worked.</summary>
    public Worked? Rework(int number, IReadOnlyList<Slip> made) => table.Rework(numbers[number], EditsOf(number, made));

    private List<Edit> EditsOf(int number, IReadOnlyList<Slip> made) =>
        [.. made.Count == 0 || made.Any(slip => fromEarlier.Contains((number, slip))) ? earlier[number] : [], .. made.SelectMany(slip => slip.Edits)];

    /// <summary>An explanation as it is told, with every step worked again.</summary>
    /// <param name="best">The cost of the likeliest one.</param>
    public Explanation Told(Explained explained, double best) => new(
        explained.Causes,
        [
            .. explained.Slips.SelectMany(made => made.Value.Select(slip => (Number: made.Key, Slip: slip, All: made.Value))).DistinctBy(made => made.Slip)
                .Select(made => new MadeSlip(made.Slip.Cause, StepOf(made.Slip), ReworkStep(made.Slip, made.Number, made.All) is { } worked && worked != StepOf(made.Slip) ? worked : null)),
        ],
        explained.Cost - best < SlipCosts.AboutAsLikely);

    /// <summary>The quantity of the step in which a slip happens.</summary>
    public Worked StepOf(Slip slip) => table[slip.Step];

    /// <summary>The step of a slip as it was worked with all slips of a number; a term too many shows in the number itself.</summary>
    public Worked? ReworkStep(Slip slip, int number, IReadOnlyList<Slip> made) =>
        table.Rework(slip.Edits[0].Kind == EditKind.Add ? numbers[number] : slip.Step, EditsOf(number, made));

    private bool Fits(int number, double value, double more = 0) => Math.Abs(value - told[number].Told) <= tolerance[number] + more + Hair;

    // Right, wrong, or rightly reckoned from an earlier wrong number.
    private void Stand()
    {
        var wrong = new List<int>();
        for (var i = 0; i < told.Count; i++)
        {
            var isRight = !told[i].IsWrong && (Fits(i, table.Value(numbers[i])) || Math.Abs(table.Unrounded(numbers[i]) - told[i].Told) <= step / 2 + Hair);
            standing[i] = isRight ? Standing.Right : Standing.Wrong;
            if (!isRight)
                wrong.Add(i);
        }

        foreach (var i in wrong)
        {
            var below = wrong.Where(j => Under(j) != Under(i) && table[Under(j)] is Named or Given && table.IsUnder(Under(j), Under(i)))
                .DistinctBy(Under).ToList();
            if (below.Count == 0)
                continue;
            Edit Told(int j) => new(Under(j), EditKind.Set, -1, told[j].Told);
            earlier[i] = [.. below.Select(Told)];
            foreach (var some in below.Select(j => new List<int> { j }).Append(below))
            {
                trial.Run([.. some.Select(Told)]);
                // What was told may be rounded, and what follows from it worked from the figure before.
                if (!Fits(i, trial[numbers[i]], step / 2))
                    continue;
                standing[i] = Standing.Follows;
                from[i] = some;
                earlier[i] = [.. some.Select(Told)];
                break;
            }
        }
    }

    private int Under(int number) => table.Operands(numbers[number])[0];

    private IReadOnlyList<FoundMistake> Explain()
    {
        var open = Enumerable.Range(0, told.Count).Where(i => standing[i] == Standing.Wrong).ToHashSet();
        if (open.Count == 0)
            return [];
        MakeSlips(all: false);
        TrySlips(open);
        TryReckoning(open);
        return Cover(open);
    }

    private void MakeSlips(bool all)
    {
        var (made, movable) = SlipMaker.Of(table, Enumerable.Range(0, told.Count).Where(i => all || standing[i] == Standing.Wrong).Select(Under), unit);
        // What is written down wrongly is told of the number, not of the step that ends in it.
        var ends = Enumerable.Range(0, told.Count).Where(i => standing[i] == Standing.Wrong).Select(Under).ToHashSet();
        slips.AddRange(all ? made : made.Where(slip => !IsOfReading(slip.Cause.Kind) || !ends.Contains(slip.Step)));
        for (var i = 0; i < told.Count; i++)
        {
            if (!all && standing[i] != Standing.Wrong)
                continue;
            if (!told[i].IsThickness)
                slips.AddRange(SlipMaker.StrayTerms(table, numbers[i], movable));
            slips.AddRange(told[i].Own.Select(own => OfNumber(i, own.Cause, own.Value, own.Cost)));
            slips.AddRange(Written(i, table.Value(numbers[i])));
        }

        if (!all)
            slips.AddRange(LostKerfs());
    }

    private Slip OfNumber(int number, Cause cause, double value, double cost) =>
        new(cause, Under(number), [new(numbers[number], EditKind.Set, -1, value)], cost);

    // Slips of writing the number down. A habit, such as a tape read from one, is one cause wherever it shows.
    private IEnumerable<Slip> Written(int number, double value)
    {
        foreach (var variant in ReadingSlips.Of(value, unit))
        {
            var isHabit = variant.Kind is not (SlipKind.FractionMisread or SlipKind.DigitsTransposed);
            yield return OfNumber(number, new(variant.Kind, Subjects.Written, isHabit ? "" : WorkedText.Label(told[number].Right)), variant.Value, variant.Cost);
        }

        foreach (var coarse in unit == LengthUnit.Inch ? (double[])[1 / 16.0, 1 / 8.0] : [1 / 25.4, 5 / 25.4])
        {
            var rounded = WorkedTable.OnStep(value, coarse, StepDirection.Nearest);
            if (coarse > step + Hair && Math.Abs(rounded - value) > Hair)
                yield return OfNumber(number, new(SlipKind.RoundedCoarsely, Subjects.Written), rounded, coarse < 0.1 ? SlipCosts.RoundedToNextFraction : SlipCosts.RoundedCoarsely);
        }
    }

    // Pieces of one length cut one after another from marks along a board: the n-th is short by n kerfs.
    private IEnumerable<Slip> LostKerfs()
    {
        // The kerf of a usual table saw blade; common practice, no source.
        const double kerf = 0.125;
        var chains = Enumerable.Range(0, told.Count).Where(i => !told[i].IsThickness).GroupBy(i => told[i].Right).Where(chain => chain.Count() > 1);
        foreach (var chain in chains)
        {
            foreach (var i in chain.Where(i => standing[i] == Standing.Wrong))
            {
                var lost = (table.Value(numbers[i]) - told[i].Told) / kerf;
                var whole = Math.Round(lost);
                if (whole is >= 1 and <= 12 && Math.Abs(lost - whole) * kerf <= tolerance[i] + Hair)
                    yield return OfNumber(i, new(SlipKind.KerfLost, Subjects.Written), table.Value(numbers[i]) - whole * kerf, SlipCosts.KerfLost);
            }
        }
    }

    private void TrySlips(HashSet<int> open)
    {
        foreach (var slip in slips)
        {
            var harm = 0;
            List<int>? explained = null;
            foreach (var index in trial.Run(slip.Edits))
            {
                if (!numberAt.TryGetValue(index, out var number))
                    continue;
                if (standing[number] == Standing.Right)
                    harm += Fits(number, trial[index]) ? 0 : 1;
                else if (open.Contains(number) && Fits(number, trial[index]))
                    (explained ??= []).Add(number);
            }

            Note(slip, explained, harm);
        }

        // A number may be reckoned from an earlier wrong one, with a slip of its own.
        foreach (var number in open.Where(number => earlier[number].Count > 0))
        {
            foreach (var slip in slips.Where(slip => slip.Edits.Any(edit => table.IsUnder(edit.Target, numbers[number]))))
            {
                trial.Run([.. earlier[number], .. slip.Edits]);
                if (!Fits(number, trial[numbers[number]]) || fits.GetValueOrDefault(slip.Cause)?.Slips.ContainsKey(number) == true)
                    continue;
                Note(slip, [number], 0);
                fromEarlier.Add((number, slip));
            }
        }
    }

    private void Note(Slip slip, List<int>? explained, int harm)
    {
        // A slip that more right numbers contradict than wrong ones bear out was not made.
        if (explained is null || harm > explained.Count)
            return;
        if (!fits.TryGetValue(slip.Cause, out var fit))
            fits.Add(slip.Cause, fit = new());
        fit.Harm[slip] = harm;
        foreach (var number in explained)
        {
            // The slip that harms no right number stands for the cause.
            if (!fit.Slips.TryGetValue(number, out var known) || fit.Harm[known] > harm)
                fit.Slips[number] = slip;
        }
    }

    // One slip of reckoning at a step that several numbers share, by the same amount.
    private void TryReckoning(HashSet<int> open)
    {
        for (var node = 0; node < table.Count; node++)
        {
            if (table[node] is not Named named || numberAt.ContainsKey(node))
                continue;
            var over = open.Where(number => table.IsUnder(node, numbers[number])).ToList();
            if (over.Select(number => told[number].Right).Distinct().Count() < 2)
                continue;
            foreach (var by in over.Select(number => told[number].Told - table.Value(numbers[number])).SelectMany(off => (double[])[off, 2 * off, off / 2, -off]).Distinct().ToList())
            {
                var slip = new Slip(new(SlipKind.Reckoning, Subjects.Of(named), named.Label, by.ToString("0.#####", CultureInfo.InvariantCulture)), node, [new(node, EditKind.Set, -1, table.Value(node) + by)], SlipCosts.Reckoning);
                trial.Run(slip.Edits);
                var explained = over.Where(number => Fits(number, trial[numbers[number]])).ToList();
                if (explained.Select(number => told[number].Right).Distinct().Count() > 1)
                    Note(slip, explained, 0);
            }
        }
    }

    private IReadOnlyList<FoundMistake> Cover(HashSet<int> open)
    {
        if (Single(open) is { } single)
            return [single];
        var pairs = Pairs(open);
        if (open.Count > 1 && Best(OfTwo(open, pairs)) is { } two)
            return Apart(two, open);
        // No two causes explain all: take what explains the most for its cost, and go on with the rest.
        List<FoundMistake> mistakes = [];
        var rest = open.ToHashSet();
        while (rest.Count > 0)
        {
            var one = fits.Select(fit => (Causes: (Cause[])[fit.Key], Covered: rest.Where(fit.Value.Slips.ContainsKey).ToList()))
                .Where(some => some.Covered.Count > 0)
                .Select(some => (some.Covered, Ratio: fits[some.Causes[0]].Cost(some.Covered) / some.Covered.Count))
                .OrderBy(some => some.Ratio).FirstOrDefault();
            var both = pairs.Select(pair => (Covered: rest.Where(pair.Slips.ContainsKey).ToList(), pair.Cost))
                .Where(some => some.Covered.Count > 0).Select(some => (some.Covered, Ratio: (some.Cost + SlipCosts.SecondCause) / some.Covered.Count))
                .OrderBy(some => some.Ratio).FirstOrDefault();
            if (one.Covered is not null && (both.Covered is null || one.Ratio <= both.Ratio))
            {
                mistakes.Add(Single([.. one.Covered])!);
                rest.ExceptWith(one.Covered);
            }
            else if (both.Covered is not null)
            {
                mistakes.Add(new(both.Covered, Ranked(pairs.Where(pair => both.Covered.All(pair.Slips.ContainsKey)).Select(pair => Of(pair, both.Covered)))));
                rest.ExceptWith(both.Covered);
            }
            else
            {
                mistakes.AddRange(rest.Order().GroupBy(number => told[number].Right).Select(alike => new FoundMistake([.. alike], [])));
                break;
            }
        }

        return mistakes;
    }

    private static Explained Of(Explained pair, IReadOnlyList<int> covered) =>
        pair with { Slips = pair.Slips.Where(slip => covered.Contains(slip.Key)).ToDictionary() };

    private static Explained? Best(IEnumerable<Explained> some) => some.MinBy(explained => explained.Cost);

    private static List<Explained> Ranked(IEnumerable<Explained> some) => [.. some.OrderBy(explained => explained.Cost).Take(MostAlternatives)];

    private FoundMistake? Single(HashSet<int> covered)
    {
        var found = Ranked(fits.Where(fit => covered.All(fit.Value.Slips.ContainsKey)).Select(fit => new Explained([fit.Key],
            covered.ToDictionary(number => number, number => (IReadOnlyList<Slip>)[fit.Value.Slips[number]]), fit.Value.Cost(covered))));
        return found.Count == 0 ? null : new([.. covered.Order()], found);
    }

    // Two causes that share no number are two mistakes; where one number needs both, they are told together.
    private IReadOnlyList<FoundMistake> Apart(Explained two, HashSet<int> open)
    {
        if (two.Slips.Values.Any(made => made.Count > 1))
            return [new([.. open.Order()], Ranked(OfTwo(open, Pairs(open)).Where(other => other.Slips.Values.Any(made => made.Count > 1))))];
        return [.. two.Causes.Select(cause => Single([.. two.Slips.Where(made => made.Value[0].Cause == cause).Select(made => made.Key)])).OfType<FoundMistake>()];
    }

    private IEnumerable<Explained> OfTwo(HashSet<int> open, IReadOnlyList<Explained> pairs)
    {
        var causes = fits.Where(fit => open.Any(fit.Value.Slips.ContainsKey)).ToList();
        for (var i = 0; i < causes.Count; i++)
        {
            for (var j = i + 1; j < causes.Count; j++)
            {
                if (open.All(number => causes[i].Value.Slips.ContainsKey(number) || causes[j].Value.Slips.ContainsKey(number)))
                    yield return Joined(causes[i], causes[j]);
            }
        }

        foreach (var pair in pairs)
        {
            var slipsOf = pair.Slips.ToDictionary();
            foreach (var number in open)
            {
                if (slipsOf.ContainsKey(number))
                    continue;
                if (pair.Causes.Select(cause => fits.GetValueOrDefault(cause)?.Slips.GetValueOrDefault(number)).OfType<Slip>().FirstOrDefault() is { } slip)
                    slipsOf.Add(number, [slip]);
            }

            if (slipsOf.Count == open.Count)
                yield return pair with { Slips = slipsOf };
        }

        Explained Joined(KeyValuePair<Cause, Fit> one, KeyValuePair<Cause, Fit> other)
        {
            // A number that both explain goes to the cause that explains more of the list.
            var (more, less) = open.Count(one.Value.Slips.ContainsKey) >= open.Count(other.Value.Slips.ContainsKey) ? (one, other) : (other, one);
            var ofMore = open.Where(more.Value.Slips.ContainsKey).ToList();
            var ofLess = open.Except(ofMore).ToList();
            var made = open.ToDictionary(number => number, number => (IReadOnlyList<Slip>)[more.Value.Slips.GetValueOrDefault(number) ?? less.Value.Slips[number]]);
            return new([more.Key, less.Key], made, more.Value.Cost(ofMore) + less.Value.Cost(ofLess));
        }
    }

    private IReadOnlyList<Explained>? pairsFound;

    // Two slips at once in one number, gathered over the numbers by their causes.
    private IReadOnlyList<Explained> Pairs(HashSet<int> open)
    {
        if (pairsFound is not null)
            return pairsFound;
        var found = new Dictionary<(Cause, Cause), (Dictionary<int, IReadOnlyList<Slip>> Slips, double Cost)>();
        foreach (var number in open.Where(number => !fits.Any(fit => fit.Value.Slips.ContainsKey(number))))
        {
            // From the right figures, or where nothing explains it so, from the wrong ones told before.
            var ofNumber = PairsOf(number, []).ToList();
            if (ofNumber.Count == 0 && earlier[number].Count > 0)
            {
                ofNumber = [.. PairsOf(number, earlier[number])];
                foreach (var (one, other) in ofNumber)
                    fromEarlier.UnionWith([(number, one), (number, other)]);
            }

            foreach (var (one, other) in ofNumber)
            {
                var key = (one.Cause, other.Cause);
                var cost = one.Cost + other.Cost;
                if (found.TryGetValue(key, out var known))
                {
                    known.Slips.TryAdd(number, [one, other]);
                    found[key] = (known.Slips, Math.Min(known.Cost, cost));
                }
                else
                {
                    found.Add(key, (new() { [number] = [one, other] }, cost));
                }
            }
        }

        return pairsFound = [.. found.Select(pair => new Explained([pair.Key.Item1, pair.Key.Item2], pair.Value.Slips, pair.Value.Cost))];
    }

    private IEnumerable<(Slip One, Slip Other)> PairsOf(int number, IReadOnlyList<Edit> before)
    {
        var index = numbers[number];
        trial.Run(before);
        var start = trial[index];
        var wanted = told[number].Told - start;
        var moves = new List<(Slip Slip, double By, int Order)>();
        foreach (var slip in slips.Where(slip => slip.Edits.Any(edit => table.IsUnder(edit.Target, index))))
        {
            trial.Run([.. before, .. slip.Edits]);
            if (Math.Abs(trial[index] - start) > Hair)
                moves.Add((slip, trial[index] - start, moves.Count));
        }

        moves.Sort((one, other) => one.By.CompareTo(other.By));
        var by = moves.Select(move => move.By).ToArray();
        var loose = tolerance[number] + step + Hair;
        for (var i = 0; i < moves.Count; i++)
        {
            var one = moves[i].Slip;
            if (IsDivision(one.Cause.Kind))
            {
                foreach (var move in moves.Where(move => move.Slip != one))
                {
                    if (Together(one, move.Slip) is { } pair)
                        yield return pair;
                }

                continue;
            }

            // Slips that add up: the other's move is what is wanted besides.
            var at = Array.BinarySearch(by, wanted - by[i] - loose);
            for (var j = at < 0 ? ~at : at; j < moves.Count && by[j] <= wanted - by[i] + loose; j++)
            {
                if (j > i && Together(one, moves[j].Slip) is { } pair)
                    yield return pair;
            }
        }

        // A slip of working, and what came of it written down wrongly.
        foreach (var (slip, move, _) in moves.Where(move => !IsOfReading(move.Slip.Cause.Kind)))
        {
            foreach (var written in Written(number, start + move))
            {
                if (Fits(number, written.Edits[0].Factor) && slip.Cost + written.Cost <= SlipCosts.MostOfPair)
                    yield return (slip, written);
            }
        }

        (Slip, Slip)? Together(Slip one, Slip other)
        {
            if (one.Cause == other.Cause || one.Cost + other.Cost > SlipCosts.MostOfPair || IsOfReading(one.Cause.Kind) && IsOfReading(other.Cause.Kind)
                || one.Edits.Any(edit => other.Edits.Any(second => Meet(edit, second) || Meet(second, edit))))
                return null;
            trial.Run([.. before, .. one.Edits, .. other.Edits]);
            if (!Fits(number, trial[index]))
                return null;
            return string.CompareOrdinal(one.Cause.ToString(), other.Cause.ToString()) <= 0 ? (one, other) : (other, one);
        }
    }

    // Two changes of one node, or of the sum that the other divides early.
    private bool Meet(Edit one, Edit other) =>
        one.Target == other.Target || one.Kind == EditKind.DividedEarly && table.Operands(one.Target)[0] == other.Target;

    private static bool IsDivision(SlipKind kind) =>
        kind is SlipKind.NotDivided or SlipKind.DividedTooEarly or SlipKind.DividedByAnother or SlipKind.StepLeftOut;

    private static bool IsOfReading(SlipKind kind) => kind >= SlipKind.AnotherStage;
}
