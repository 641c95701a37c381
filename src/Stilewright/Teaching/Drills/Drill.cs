using System.Globalization;
using Stilewright.Measure;

namespace Stilewright.Teaching.Drills;

/// <summary>A sheet of short items: rules to read, fractions to work, inches and millimetres to turn into one another.</summary>
/// <param name="Seed">Repeats it, with the bench and the settings.</param>
public sealed record Drill(DrillSettings Settings, ulong Seed, int Bench, IReadOnlyList<DrillItem> Items)
{
    /// <param name="answers">Texts by the numbers of items. Numbers without a unit are in the unit of the answer.</param>
    public IReadOnlyList<MarkedItem> Mark(IReadOnlyDictionary<int, string> answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        if (answers.Keys.FirstOrDefault(number => number < 1 || number > Items.Count) is var unknown && unknown != 0)
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"The drill has no item {unknown}."), nameof(answers));
        return [.. Items.Select(item => Mark(item, answers.GetValueOrDefault(item.Number)))];
    }

    /// <summary>What became of it, with every slip that is known by its answer and every kind of the other wrong ones.</summary>
    public ExerciseResult Result(IReadOnlyList<MarkedItem> marked)
    {
        ArgumentNullException.ThrowIfNull(marked);
        return new(ExerciseKind.Drill, Bench, $"drill {DrillWords.Fineness(Settings)}", Settings.Unit, Seed, marked.Count(each => each.IsRight == true), marked.Count,
            [.. marked.Where(each => each is { IsRight: false, Fault: null }).Select(each => $"{DrillWords.Heading(each.Item.Kind)}: {(each.Slip is { } slip ? slip.Advice : "not right.")}")])
        {
            RightFigures = marked.Count(each => each.IsRight == true),
            AllFigures = marked.Count(each => each.IsRight is not null && each.Fault is null),
            Shares = Shares(marked),
        };
    }

    /// <summary>Per kind how many were asked and how many are right.</summary>
    public static IReadOnlyList<DrillShare> Shares(IEnumerable<MarkedItem> marked) =>
        [.. marked.GroupBy(each => each.Item.Kind).Select(kind => new DrillShare(kind.Key, kind.Count(), kind.Count(each => each.IsRight == true)))];

    /// <summary>Marks one item.</summary>
    public static MarkedItem Mark(DrillItem item, string? text)
    {
        ArgumentNullException.ThrowIfNull(item);
        if (string.IsNullOrWhiteSpace(text))
            return new(item, null, null);
        return LengthReader.Read(text, item.AnswerUnit, allowNegative: true) switch
        {
            ParseResult<Length>.Parsed { Value: var written } when Length.Abs(written - item.Exact) <= item.Tolerance => new(item, text, true),
            ParseResult<Length>.Parsed { Value: var written } => new(item, text, false, item.Slips.FirstOrDefault(slip => slip.Answer == written)),
            ParseResult<Length>.Failed failed => new(item, text, false, null, failed.Message),
            _ => throw new InvalidOperationException(),
        };
    }
}
