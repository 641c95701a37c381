using System.Globalization;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Worksheets;

namespace Stilewright.Teaching.Telling;

/// <summary>Tells a checked list in plain words, as much of it as is wished.</summary>
public static class Answers
{
    public static Answer Of(CheckedList found, Telling telling, LengthFormat format)
    {
        var shows = telling == Telling.All;
        var numbers = found.Numbers.ToDictionary(number => number, number => new NumberAnswer(number, number.Told.Text, number.Standing switch
        {
            NumberStanding.Right => "right",
            NumberStanding.Follows => telling == Telling.RightOrWrong ? "not right" : "follows from an earlier figure",
            _ => "not right",
        }, shows ? WorkedText.Figure(number.Right, format) : null, shows && number.Standing != NumberStanding.Right ? Off(number.Difference, format) : null));
        return new(telling, Summary(found),
            [.. found.Lines.Select(line => new LineAnswer(line.Line, What(line), line.IsRight, [.. line.Numbers.Select(number => numbers[number])], Remarks(line, telling)))],
            [.. found.Missing.GroupBy(item => (item.Leaf, item.Name, item.Width, item.Length)).Select(alike => alike.Count() == 1 ? $"{alike.First().Name} of {alike.Key.Leaf}" : $"{alike.Count()} × {alike.Key.Name} of {alike.Key.Leaf}")],
            telling == Telling.RightOrWrong ? [] : [.. found.Mistakes.Select(mistake => Tell(mistake, telling, format))]);
    }

    private static string Summary(CheckedList found) => !found.IsCutOff ? SummaryOfMatched(found)
        : $"{SummaryOfMatched(found)} The list has more than {ListCheck.MostPieces.ToString("#,0", CultureInfo.InvariantCulture)} pieces, and only so many are matched: check the rest in a list of its own.";

    private static string SummaryOfMatched(CheckedList found)
    {
        var (right, all) = (found.Numbers.Count(number => number.Standing == NumberStanding.Right), found.Numbers.Count());
        if (all == 0)
            return "None of these lines could be matched to a part. Name each part as the trade does, and give its width and length.";
        if (found.IsRight)
            return all == 1 ? "The figure is right." : $"All {all} figures are right.";
        var mistakes = found.Mistakes.Count switch
        {
            0 => "",
            1 => " One mistake explains the rest.",
            var count => $" {count} mistakes are behind the rest.",
        };
        return right == all ? $"All {all} figures are right, but the list is not complete or has something too many."
            : $"{right} of {all} figures are right.{(found.Mistakes.Any(mistake => mistake.Explanations.Count == 0) ? "" : mistakes)}";
    }

    private static string What(CheckedLine line) => line.Items.Count switch
    {
        0 => "",
        1 => $"{line.Items[0].Name}, {line.Items[0].Label}",
        var count => $"{count} × {Plural(line.Items)}",
    };

    // Names that differ only in place are told by their kind.
    private static string Plural(IReadOnlyList<KeyItem> items)
    {
        var (one, many) = items[0].Kind switch
        {
            ItemKind.Stile => ("stile", "stiles"),
            ItemKind.Rail => ("rail", "rails"),
            ItemKind.MidRail => ("mid rail", "mid rails"),
            ItemKind.MidStile => ("mid stile", "mid stiles"),
            ItemKind.Panel => ("panel", "panels"),
            ItemKind.Glass => ("glass", "panes"),
            ItemKind.Slab => ("slab", "slabs"),
            ItemKind.Leaf => ("door", "doors"),
            ItemKind.DrawerFront => ("drawer front", "drawer fronts"),
            _ => ("front", "fronts"),
        };
        return items.Select(item => item.Name).Distinct().Count() == 1 && items[0].Name.Contains(one, StringComparison.Ordinal)
            ? items[0].Name.Replace(one, many, StringComparison.Ordinal) : many;
    }

    private static List<string> Remarks(CheckedLine line, Telling telling)
    {
        List<string> remarks = [];
        if (line.Items.Count == 0)
            remarks.Add("Nothing here goes with this line. Is it named and sized as you meant?");
        if (!line.IsCountRight)
            remarks.Add(telling == Telling.RightOrWrong ? "The number of pieces is not right." : $"{line.RightCount} are needed, not {line.Line.Count}.");
        if (line.IsTurned)
            remarks.Add("Length stands before width here; the trade writes width first.");
        if (line is { Items.Count: > 0, Line.Thickness: not null } && line.Items.All(item => item.Thickness is null))
            remarks.Add("Its thickness is not looked at.");
        return remarks;
    }

    private static string Off(Length difference, LengthFormat format) =>
        $"{format.Print(Length.Abs(difference))} {(difference.IsNegative ? "short" : "over")}";

    /// <summary>What is told of the mistakes of a worksheet, in the order of its blanks; nothing where only right and wrong are told.</summary>
    public static IReadOnlyList<CauseAnswer> Of(IReadOnlyList<SheetMistake> mistakes, Telling telling, LengthFormat format) => telling == Telling.RightOrWrong ? []
        : [.. mistakes.Select(mistake => Tell(mistake.Explanations, [.. mistake.Blanks.Select(each => (each.Working ?? each.Blank.Quantity, each.Text!))],
            string.Join("; ", mistake.Blanks.Select(each => $"{each.Blank.Id}, {each.Blank.Label}")), null, telling, format))];

    private static MistakeAnswer Tell(Mistake mistake, Telling telling, LengthFormat format) => new(mistake, Tell(
        mistake.Explanations, [.. mistake.Numbers.Select(number => (number.Right, number.Told.Text))], About(mistake.Numbers),
        mistake.Follow.Count == 0 ? null : $"{About(mistake.Follow)} {(mistake.Follow.Count == 1 ? "is" : "are")} rightly worked from that and will come right with it.", telling, format));

    private static CauseAnswer Tell(
        IReadOnlyList<Explanation> explanations, IReadOnlyList<(Worked Right, string Told)> figures, string about, string? following, Telling telling, LengthFormat format)
    {
        if (explanations is not [var first, ..])
        {
            var steps = figures.Select(figure => figure.Right).Distinct().ToList();
            return new(about, "Work it once more from the start, and say each figure and what it is for aloud.",
                telling < Telling.Rule ? null : "No single slip that is known makes this figure, nor do two at once.", null,
                telling < Telling.Rule ? [] : [.. steps.Select(Formula).OfType<string>().Distinct()],
                telling < Telling.All ? [] : [.. steps.Select(step => new WorkAnswer("", WorkedText.Line(step, format))).Distinct()],
                null, following);
        }

        var causes = first.Causes.Select(cause => CauseWords.Of(cause, first.Slips)).ToList();
        var likely = explanations.Where(other => other.IsAsLikely).ToList();
        return new(about, string.Join(" ", causes.Select(words => words.Hint).Distinct()),
            telling < Telling.Rule ? null : string.Join(" ", causes.Select(words => words.Missed)),
            telling < Telling.Rule ? null : string.Join(" ", causes.Select(words => words.Rule).Distinct()),
            telling < Telling.Rule ? [] : [.. first.Slips.Where(slip => slip.Cause.Subject != Subjects.Written).Select(slip => Formula(slip.Right)).OfType<string>().Distinct()],
            telling < Telling.All ? [] : [.. Work(figures, first, format)],
            telling < Telling.Rule || likely.Count < 2 ? null : Question(likely), following);
    }

    private static string? Formula(Worked step) =>
        step is Named { Inner.Operands.Count: > 0 } named ? $"{named.Label} = {WorkedText.Formula(named)}" : null;

    private static IEnumerable<WorkAnswer> Work(IReadOnlyList<(Worked Right, string Told)> figures, Explanation first, LengthFormat format)
    {
        var told = first.Slips.Where(slip => slip.AsWorked is not null)
            .Select(slip => new WorkAnswer(WorkedText.Line(slip.AsWorked!, format), WorkedText.Line(slip.Right, format))).Distinct().ToList();
        foreach (var work in told)
            yield return work;
        // What was written down wrongly has no step of its own.
        if (first.Slips.Any(slip => slip.AsWorked is null))
        {
            foreach (var work in figures.Select(figure => new WorkAnswer($"{WorkedText.Label(figure.Right)} {figure.Told}", WorkedText.Line(figure.Right, format))).Distinct())
                yield return work;
        }
    }

    private static string Question(IReadOnlyList<Explanation> likely)
    {
        var asked = likely.Take(3).Select(other => string.Join(" and ", other.Causes.Select(cause => CauseWords.Of(cause, other.Slips).Ask))).Distinct().ToList();
        return asked.Count < 2 ? "Say how you worked it, figure by figure." : $"The figures alone cannot tell: did you {string.Join(", or did you ", asked)}?";
    }

    /// <summary>"Length of the rails of 7·2L; width and length of the panel of 7·2L".</summary>
    private static string About(IReadOnlyList<CheckedNumber> numbers)
    {
        var isOneLeaf = numbers.SelectMany(number => number.Items).Select(item => item.Leaf).Distinct().Count() == 1;
        var told = numbers.GroupBy(number => number.Line).Select(line =>
        {
            var items = line.SelectMany(number => number.Items).Distinct().ToList();
            var measures = line.Select(number => MeasureWord(number)).Distinct();
            var isMany = line.Key.Count is > 1 || items.Count > 1;
            return $"{string.Join(" and ", measures)} of the {(isMany ? Plural(items) : items[0].Name).Split(',')[0]}{(isOneLeaf ? "" : $" of {string.Join(", ", items.Select(item => item.Leaf).Distinct())}")}";
        }).Distinct();
        var text = string.Join("; ", told);
        return char.ToUpperInvariant(text[0]) + text[1..];
    }

    private static string MeasureWord(CheckedNumber number) => number.Measure != ListMeasure.Length ? number.Measure.ToString().ToLowerInvariant()
        : number.Item.Kind is ItemKind.Leaf or ItemKind.DrawerFront or ItemKind.Front or ItemKind.Glass ? "height" : "length";
}
