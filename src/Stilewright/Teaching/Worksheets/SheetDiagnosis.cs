using Fractions;
using Stilewright.Measure;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.Worksheets;

/// <summary>Finds what is behind the wrong blanks of a worksheet, by the same slips as those of a list.</summary>
/// <remarks>
/// A blank is looked at in its own line only, with the maker's own figures put in for what was found before: a line says what it takes, so no slip
/// of another line can be behind it. One cause that is behind several lines is one mistake.
/// </remarks>
public static class SheetDiagnosis
{
    private const double Hair = 1e-6;

    internal static IReadOnlyList<SheetMistake> Of(MarkedSheet marked)
    {
        List<MarkedBlank> wrong = [.. marked.Blanks.Where(blank => blank.Outcome == BlankOutcome.Wrong)];
        List<MarkedBlank> known = [.. wrong.Where(blank => blank.Working is not null)];
        List<SheetMistake> mistakes = [.. wrong.Except(known).Select(blank => new SheetMistake([blank], []))];
        if (known.Count > 0)
        {
            var found = Diagnosis.Of([.. known.Select(blank => Told(marked.Sheet, blank))], Pool(marked.Sheet), marked.Sheet.Format.Unit);
            mistakes.AddRange(found.Mistakes.Select(mistake => new SheetMistake(
                [.. mistake.Numbers.Select(number => known[number])],
                [.. mistake.Explanations.Select(explained => found.Told(explained, mistake.Explanations[0].Cost))])));
        }

        return [.. mistakes.OrderBy(mistake => wrong.IndexOf(mistake.Blanks[0]))];
    }

    /// <summary>What one blank becomes by each slip that can be made in it, where all before it is right: to practise on and to test by.</summary>
    /// <returns>Figures that can be written exactly and are wrong.</returns>
    public static IEnumerable<(Cause Cause, Length Figure)> Planted(Worksheet sheet, Blank blank)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var answers = sheet.Blanks.TakeWhile(each => each != blank).Append(blank).ToDictionary(each => each.Id, each => sheet.Format.Print(each.Quantity.Length).TrimStart('≈'));
        var right = sheet.Mark(answers).Blanks.Single(each => each.Blank == blank);
        foreach (var (slip, values) in Diagnosis.Possible([Told(sheet, right)], Pool(sheet), sheet.Format.Unit))
        {
            // The blank's own figure read otherwise is the same as written otherwise, and told so.
            if (!double.IsFinite(values[0]) || slip.Cause is { Variant.Length: > 0, Instead: var read } && read == WorkedText.Label(right.Working!))
                continue;
            var step = sheet.Format.FinestStep;
            var figure = step * new Fraction((long)Math.Round(values[0] / step.Inches.ToDouble()));
            if (figure.IsPositive && figure != blank.Quantity.Length && Math.Abs(figure.Inches.ToDouble() - values[0]) < Hair
                && LengthReader.Read(sheet.Format.Print(figure), sheet.Format.Unit) is ParseResult<Length>.Parsed)
                yield return (slip.Cause, figure);
        }
    }

    private static ToldNumber Told(Worksheet sheet, MarkedBlank blank) => new(
        Flat(sheet, blank.Working!), sheet.Leaf.Label, blank.Written!.Value.Inches.ToDouble(), blank.Blank.IsResult ? [] : [.. OtherFigures(sheet, blank.Working!)], IsWrong: blank.Outcome == BlankOutcome.Wrong);

    // What the sheet tells is not worked by the maker, so nothing under it can be missed.
    private static Worked Flat(Worksheet sheet, Worked working)
    {
        HashSet<Worked> found = [.. sheet.Lines.SelectMany(line => line.Quantities)];
        Worked Below(Worked quantity) => quantity.Rewrite(node => node is Named told && !found.Contains(told) ? new Given(told.Key, told.Label, told.Dimension, told.Amount, Origin.Typed) : null);
        return working is Named step ? new Named(step.Key, step.Label, Below(step.Inner)) : Below(working);
    }

    // What may be put in a figure's place: another figure of the sheet, or twice as much.
    private static IEnumerable<(Cause, double, double)> OtherFigures(Worksheet sheet, Worked right)
    {
        var subject = Subjects.Of(right);
        foreach (var other in sheet.Givens.Select(given => given.Quantity).Concat(sheet.Lines.Select(line => line.Quantity))
            .Where(other => other.Dimension == Dimension.Length && other.Amount != right.Amount).DistinctBy(other => (Subjects.Of(other), other.Amount)))
        {
            yield return (new(SlipKind.LikeQuantity, subject, Subjects.Of(other), WorkedText.Label(other)), other.Amount.ToDouble(), SlipCosts.LikeQuantity);
        }

        yield return (new(SlipKind.CountedTwice, subject), 2 * right.Amount.ToDouble(), SlipCosts.CountedTwice);
    }

    private static FigurePool Pool(Worksheet sheet) => new(
        [.. ListKey.Of(sheet.Project, sheet.Leaf, CutStage.Finished).Pool([sheet.Leaf.Label])],
        new Given("cut.step", "step", sheet.Format.FinestStep, Origin.Typed));
}
