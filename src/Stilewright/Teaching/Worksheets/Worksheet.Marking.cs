using Stilewright.Measure;

namespace Stilewright.Teaching.Worksheets;

public sealed partial class Worksheet
{
    /// <summary>Marks answers: every blank right, following from a wrong figure before it, or wrong.</summary>
    /// <param name="answers">Texts by the ids of blanks; blanks without a text are not answered. Numbers without a unit are in that of the sheet.</param>
    /// <exception cref="ArgumentException">There is no such blank.</exception>
    public MarkedSheet Mark(IReadOnlyDictionary<string, string> answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        if (answers.Keys.FirstOrDefault(id => Blanks.All(blank => blank.Id != id)) is { } unknown)
            throw new ArgumentException($"The sheet has no blank \"{unknown}\".", nameof(answers));

        // What the maker found in earlier lines stands from there on for what the line should have found.
        Dictionary<Worked, Worked> found = [];
        List<MarkedLine> lines = [];
        foreach (var line in Lines.Where(line => line.Blanks.Count > 0))
        {
            var inLine = new Dictionary<Worked, Worked>(found);
            List<MarkedBlank> blanks = [];
            foreach (var blank in line.Blanks)
            {
                var follows = blank.IsResult ? Follow(line.Expression, inLine) : Follow(blank.Quantity, found);
                var (marked, written) = Mark(blank, answers.GetValueOrDefault(blank.Id), follows);
                blanks.Add(marked with { Written = written, Working = blank.IsResult && follows is not null ? new Named(line.Quantity.Key, line.Quantity.Label, follows) : follows });
                if (written is not { } amount)
                    continue;
                // Under its own key, so that it is still known what it is about.
                var given = new Given(KeyOf(blank.Quantity), WorkedText.Label(blank.Quantity), amount, Origin.Typed);
                if (!blank.IsResult)
                {
                    inLine[blank.Quantity] = given;
                    continue;
                }

                foreach (var quantity in line.Quantities)
                    found[quantity] = given;
            }

            lines.Add(new(line, blanks, line.HasMethodMark ? blanks.Where(each => !each.Blank.IsResult).All(each => each.Earns) : null,
                blanks.Single(each => each.Blank.IsResult).Earns));
        }

        return new(this, lines);
    }

    internal static string KeyOf(Worked quantity) => quantity switch
    {
        Named named => named.Key,
        Given given => given.Key,
        _ => WorkedText.Label(quantity),
    };

    private (MarkedBlank Marked, Length? Written) Mark(Blank blank, string? text, Worked? follows)
    {
        var through = follows is not null && !IsSame(follows.Length, blank.Quantity) ? follows : null;
        if (string.IsNullOrWhiteSpace(text))
            return (new(blank, null, BlankOutcome.NotAnswered, through), null);
        switch (LengthReader.Read(text, Format.Unit, allowNegative: true))
        {
            case ParseResult<Length>.Failed failed:
                return (new(blank, text, BlankOutcome.Unreadable, through, failed.Message), null);
            case ParseResult<Length>.Parsed { Value: var written }:
                var outcome = IsSame(written, blank.Quantity) ? BlankOutcome.Right
                    : through is not null && IsSame(written, through) ? BlankOutcome.Follows : BlankOutcome.Wrong;
                return (new(blank, text, outcome, through), written);
            default:
                throw new InvalidOperationException();
        }
    }

    // A figure that can only be printed rounded is right as it is printed.
    private bool IsSame(Length written, Worked right) => written == right.Length
        || !Format.IsExact(right.Length) && Format.Print(written).TrimStart('≈') == Format.Print(right.Length).TrimStart('≈');

    // Null where nothing can be worked from what was written, such as the root of a negative number.
    private static Worked? Follow(Worked expression, Dictionary<Worked, Worked> written)
    {
        try
        {
            return expression.Rewrite(node => written.GetValueOrDefault(node));
        }
        catch (Exception fault) when (fault is ArgumentException or DivideByZeroException)
        {
            return null;
        }
    }
}
