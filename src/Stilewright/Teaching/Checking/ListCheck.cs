using Stilewright.Doors;
using Stilewright.Measure;

namespace Stilewright.Teaching.Checking;

/// <summary>How a number of a list stands.</summary>
public enum NumberStanding
{
    /// <summary>Within half the cutting step, or one step where the rule rounds down.</summary>
    Right,
    Wrong,

    /// <summary>Rightly worked from an earlier number that is wrong.</summary>
    Follows,
}

public enum ListMeasure
{
    Width,
    Length,
    Thickness,
}

/// <summary>One number of a list, checked.</summary>
/// <param name="Right">The right one, with its working.</param>
/// <param name="From">The wrong numbers it follows from.</param>
public sealed record CheckedNumber(
    ListLine Line, KeyItem Item, ListMeasure Measure, Worked Right, LengthEntry Told, NumberStanding Standing, IReadOnlyList<CheckedNumber> From)
{
    /// <summary>All items that the number is about, like the one that stands for them.</summary>
    public IReadOnlyList<KeyItem> Items { get; init; } = [Item];

    /// <summary>Told less right: negative where the piece would be too small.</summary>
    public Length Difference => Told.Value - Right.Length;

    /// <summary>As it was probably worked, where it is wrong by a slip or follows from one; null where nothing explains it.</summary>
    public Worked? AsWorked { get; init; }
}

/// <summary>One line of a list, checked.</summary>
/// <param name="Items">What it is about, like items gathered; empty for a line that goes with nothing.</param>
/// <param name="RightCount">How many of these are needed; null where the maker gave no count or the line goes with nothing.</param>
/// <param name="IsTurned">Whether length stands before width.</param>
public sealed record CheckedLine(ListLine Line, IReadOnlyList<KeyItem> Items, int? RightCount, bool IsTurned, IReadOnlyList<CheckedNumber> Numbers)
{
    public bool IsCountRight => RightCount is null || RightCount == Line.Count;
    public bool IsRight => Items.Count > 0 && IsCountRight && Numbers.All(number => number.Standing == NumberStanding.Right);
}

/// <summary>One slip that was probably made.</summary>
/// <param name="Cause">What was missed.</param>
/// <param name="Right">The step as it should be worked.</param>
/// <param name="AsWorked">The step as it was probably worked; null where only the number was written down wrongly.</param>
public sealed record MadeSlip(Cause Cause, Worked Right, Worked? AsWorked);

/// <summary>What explains the numbers of a mistake.</summary>
/// <param name="Slips">One per place of the working at which it was made.</param>
/// <param name="IsAsLikely">True where it is about as likely as the first.</param>
public sealed record Explanation(IReadOnlyList<Cause> Causes, IReadOnlyList<MadeSlip> Slips, bool IsAsLikely);

/// <summary>One mistake: wrong numbers that one explanation accounts for.</summary>
/// <param name="Numbers">The numbers it made wrong itself.</param>
/// <param name="Follow">Numbers that follow from these.</param>
/// <param name="Explanations">The likeliest first; empty where no slip that is known explains the numbers.</param>
public sealed record Mistake(IReadOnlyList<CheckedNumber> Numbers, IReadOnlyList<CheckedNumber> Follow, IReadOnlyList<Explanation> Explanations);

/// <summary>A maker's list, checked.</summary>
/// <param name="Missing">Parts that no line lists.</param>
public sealed record CheckedList(
    MakersList List, IReadOnlyList<CheckedLine> Lines, IReadOnlyList<KeyItem> Missing, IReadOnlyList<Mistake> Mistakes)
{
    /// <summary>Whether the list has more pieces than are matched, <see cref="ListCheck.MostPieces"/>; those past them stay unmatched.</summary>
    public bool IsCutOff { get; init; }

    public IEnumerable<CheckedNumber> Numbers => Lines.SelectMany(line => line.Numbers);
    public IEnumerable<CheckedLine> Surplus => Lines.Where(line => line.Items.Count == 0);
    public bool IsRight => Missing.Count == 0 && Lines.All(line => line.IsRight);
}

/// <summary>Checks a maker's own cut list against the right sizes, and finds which rules were missed.</summary>
public static class ListCheck
{
    /// <summary>How many pieces of one list are matched.</summary>
    public const int MostPieces = 1000;

    private sealed record Asked(MatchedLine Line, ListMeasure Measure, Worked Right, LengthEntry Told)
    {
        public Length Off => Told.Value - Right.Length;
    }

    /// <param name="others">Parts of the course besides those of the key, whose sizes may have got into the list.</param>
    public static CheckedList Check(MakersList list, ListKey key, LengthUnit unit, IReadOnlyList<KeyItem>? others = null)
    {
        var match = ListMatch.Of(list, key);
        var asked = new List<Asked>();
        foreach (var line in match.Matched)
        {
            foreach (var measure in Enum.GetValues<ListMeasure>())
            {
                if (line.Told(measure) is { } entry && line.Item.Of(measure) is { } right)
                    asked.Add(new(line, measure, right, entry));
            }
        }

        var trims = TrimsOf(asked, key);
        var told = asked.Select(each => new ToldNumber(each.Right, each.Line.Item.Leaf, each.Told.Value.Inches.ToDouble(), [.. Own(each.Line, each.Measure, key, others), .. OneSided(each, asked, trims), .. OfThickness(each, key)])
        {
            IsThickness = each.Measure == ListMeasure.Thickness,
        }).ToList();
        var diagnosis = Diagnosis.Of(told, FigurePool.Of(key, told), unit);

        var numbers = new CheckedNumber[asked.Count];
        var slipsOf = diagnosis.Mistakes.Where(mistake => mistake.Explanations.Count > 0)
            .SelectMany(mistake => mistake.Explanations[0].Slips).ToDictionary(made => made.Key, made => made.Value);
        // A number follows from numbers of nodes below its own, so those are made first.
        foreach (var i in Enumerable.Range(0, asked.Count).OrderBy(i => diagnosis.From[i].Count == 0 ? 0 : Depth(i)))
        {
            var (line, measure, right, entry) = asked[i];
            numbers[i] = new(line.Line, line.Item, measure, right, entry, (NumberStanding)diagnosis.Standings[i], [.. diagnosis.From[i].Select(j => numbers[j])])
            {
                Items = line.Items,
                AsWorked = slipsOf.TryGetValue(i, out var made) ? diagnosis.Rework(i, made)
                    : diagnosis.Standings[i] == Standing.Follows ? diagnosis.Rework(i, []) : null,
            };
        }

        int Depth(int i) => 1 + diagnosis.From[i].Max(j => diagnosis.From[j].Count == 0 ? 0 : Depth(j));

        var mistakes = diagnosis.Mistakes.Select(mistake => new Mistake(
            [.. mistake.Numbers.Select(i => numbers[i])],
            [.. Enumerable.Range(0, asked.Count).Where(i => ComesFrom(i, mistake.Numbers)).Select(i => numbers[i])],
            [.. mistake.Explanations.Select(explained => diagnosis.Told(explained, mistake.Explanations[0].Cost))]))
            .OrderByDescending(mistake => mistake.Numbers.Count + mistake.Follow.Count).ToList();

        bool ComesFrom(int i, IReadOnlyList<int> some) => diagnosis.From[i].Any(j => some.Contains(j) || ComesFrom(j, some));

        var lines = list.Lines.Select(line =>
        {
            var own = match.Matched.Where(each => each.Line == line).ToList();
            var items = own.SelectMany(each => each.Items).ToList();
            var alsoNeeded = match.Missing.Count(item => own.Any(each => IsAlike(each.Item, item)) && FirstFor(item) == line);
            int? rightCount = line.Count is null || items.Count == 0 ? null : items.Count + alsoNeeded;
            return new CheckedLine(line, items, rightCount, own.Any(each => each.IsTurned), [.. numbers.Where(number => number.Line == line)]);
        }).ToList();

        // Pieces that a line of like ones is short of are told there, not as missing parts.
        ListLine? FirstFor(KeyItem item) => match.Matched.FirstOrDefault(each => each.Line.Count is not null && IsAlike(each.Item, item))?.Line;
        var missing = match.Missing.Where(item => FirstFor(item) is null).ToList();
        return new(list, lines, missing, mistakes) { IsCutOff = match.IsCutOff };
    }

    // The trim allowances of each leaf that has a wrong width.
    private static Dictionary<string, HashSet<Length>> TrimsOf(IReadOnlyList<Asked> asked, ListKey key) =>
        asked.Where(each => each.Measure == ListMeasure.Width && !each.Off.IsZero).Select(each => each.Line.Item.Leaf).Distinct().ToDictionary(leaf => leaf, leaf =>
            key.Pool([leaf]).SelectMany(quantity => quantity.Distinct()).OfType<Given>().Where(given => Subjects.Of(given) == "trim").Select(given => given.Length).ToHashSet());

    // Opposite members of one leaf, one over and one short by half the allowance.
    private static IEnumerable<(Cause, double, double)> OneSided(Asked one, IReadOnlyList<Asked> all, Dictionary<string, HashSet<Length>> trims)
    {
        if (one.Measure != ListMeasure.Width || one.Off.IsZero)
            yield break;
        foreach (var other in all)
        {
            if (other != one && other.Measure == one.Measure && other.Line.Item is var item && item.Kind == one.Line.Item.Kind && item.Leaf == one.Line.Item.Leaf
                && item.Kind is ItemKind.Stile or ItemKind.Rail && (one.Off + other.Off).IsZero
                && trims[item.Leaf].Contains(Length.Abs(one.Off) * 2))
            {
                yield return (new(SlipKind.TrimmedOneSide, "trim"), one.Told.Value.Inches.ToDouble(), SlipCosts.TrimmedOneSide);
                yield break;
            }
        }
    }

    private static bool IsAlike(KeyItem one, KeyItem other) =>
        one.Kind == other.Kind && one.Width.Equals(other.Width) && one.Length.Equals(other.Length);

    // What this number alone may have been taken for.
    private static List<(Cause, double, double)> Own(MatchedLine line, ListMeasure measure, ListKey key, IReadOnlyList<KeyItem>? others)
    {
        List<(Cause, double, double)> own = [];
        void Add(SlipKind kind, string instead, Worked? value, double cost)
        {
            if (value is not null)
                own.Add((new(kind, Subjects.Written, instead), value.Amount.ToDouble(), cost));
        }

        if (line.IsExchanged && measure != ListMeasure.Thickness)
            Add(SlipKind.Exchanged, "", measure == ListMeasure.Width ? line.Item.Length : line.Item.Width, SlipCosts.Exchanged);
        if (line.Item.Part is { } part)
        {
            foreach (var stage in Enum.GetValues<CutStage>().Where(stage => stage != key.Stage))
                Add(SlipKind.AnotherStage, stage.ToString(), At(part, stage), SlipCosts.AnotherStage);
        }

        if (key.Earlier?.Items.FirstOrDefault(item => item.Path == line.Item.Path) is { } before)
            Add(SlipKind.EarlierSize, key.Changed, before.Of(measure), SlipCosts.EarlierSize);

        // The whole line must be the other part's, or the likeness is chance.
        foreach (var other in key.Items.Concat(others ?? []).Where(other => other.Kind == line.Item.Kind || other.MustBeListed && line.Item.MustBeListed))
        {
            if (IsTold(other.Width, line.Width) && IsTold(other.Length, line.Length) && !IsAlike(other, line.Item))
                Add(SlipKind.AnotherPart, other.Label, other.Of(measure), SlipCosts.AnotherPart);
        }

        return own;

        Worked? At(Part of, CutStage stage) => measure switch
        {
            ListMeasure.Width => ListKey.At(of, stage).Width,
            ListMeasure.Length => ListKey.At(of, stage).Length,
            _ => ListKey.ThicknessAt(of, stage),
        };

        static bool IsTold(Worked right, LengthEntry? told) => told is { } entry && Math.Abs((right.Amount - entry.Value.Inches).ToDouble()) < 0.01;
    }

    // A panel and the groove it stands in; the stock of the frame for that of the panel.
    private static IEnumerable<(Cause, double, double)> OfThickness(Asked one, ListKey key)
    {
        if (one.Measure != ListMeasure.Thickness || one.Off.IsZero)
            yield break;
        var (item, told) = (one.Line.Item, one.Told.Value);
        var isPanel = item.Kind == ItemKind.Panel;
        if (item.Groove is { } groove)
        {
            if (told < groove.Length && one.Off.IsNegative)
                yield return (new(SlipKind.ThinnerThanGroove, Subjects.Thickness), told.Inches.ToDouble(), SlipCosts.ThinnerThanGroove);
            if (told > groove.Length && one.Right.Length <= groove.Length)
                yield return (new(SlipKind.ThickerThanGroove, Subjects.Thickness), told.Inches.ToDouble(), SlipCosts.ThickerThanGroove);
            yield return (new(SlipKind.LikeQuantity, Subjects.Thickness, "groove width"), groove.Amount.ToDouble(), SlipCosts.GrooveForSheet);
        }

        foreach (var other in key.Items.Where(other => other.Leaf == item.Leaf && (other.Kind == ItemKind.Panel) != isPanel).Select(other => other.Thickness).OfType<Worked>().Distinct())
            yield return (new(SlipKind.AnotherStock, Subjects.Thickness, isPanel ? "frame" : "panel"), other.Amount.ToDouble(), SlipCosts.AnotherStock);
    }
}
