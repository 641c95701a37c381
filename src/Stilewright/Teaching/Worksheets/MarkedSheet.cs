using Stilewright.Measure;
using Stilewright.Teaching.ClassView;

namespace Stilewright.Teaching.Worksheets;

/// <summary>What became of one blank.</summary>
public enum BlankOutcome
{
    NotAnswered,

    /// <summary>The text is no length.</summary>
    Unreadable,

    Wrong,

    /// <summary>Rightly worked from a wrong figure before it; earns its mark.</summary>
    Follows,

    Right,
}

/// <summary>One blank, marked.</summary>
/// <param name="Text">What was written; null where nothing was.</param>
/// <param name="FollowThrough">What would have been right after the maker's own figures before it; null where that is the right figure itself, or nothing follows.</param>
/// <param name="Fault">Why the text could not be read, with the fix; null where it could.</param>
public sealed record MarkedBlank(Blank Blank, string? Text, BlankOutcome Outcome, Worked? FollowThrough = null, string? Fault = null)
{
    /// <summary>The length that was written; null where none can be read.</summary>
    public Length? Written { get; init; }

    /// <summary>What was to be worked here, after the maker's own figures before it; null where nothing can be worked from these.</summary>
    public Worked? Working { get; init; }

    public bool Earns => Outcome is BlankOutcome.Right or BlankOutcome.Follows;
}

/// <summary>One line, marked.</summary>
/// <param name="Method">Whether the method mark is earned; null where the line has none.</param>
/// <param name="Answer">Whether the answer mark is earned.</param>
public sealed record MarkedLine(WorksheetLine Line, IReadOnlyList<MarkedBlank> Blanks, bool? Method, bool Answer)
{
    public int Earned => (Method == true ? 1 : 0) + (Answer ? 1 : 0);
}

/// <summary>A worksheet, marked.</summary>
public sealed class MarkedSheet
{
    private IReadOnlyList<SheetMistake>? mistakes;

    internal MarkedSheet(Worksheet sheet, IReadOnlyList<MarkedLine> lines) => (Sheet, Lines) = (sheet, lines);

    public Worksheet Sheet { get; }

    /// <summary>The lines that have blanks, in their order.</summary>
    public IReadOnlyList<MarkedLine> Lines { get; }

    public IEnumerable<MarkedBlank> Blanks => Lines.SelectMany(line => line.Blanks);
    public int Earned => Lines.Sum(line => line.Earned);
    public int Marks => Lines.Sum(line => line.Line.Marks);

    /// <summary>What is behind the wrong blanks, in the order of the sheet.</summary>
    public IReadOnlyList<SheetMistake> Mistakes => mistakes ??= SheetDiagnosis.Of(this);

    /// <summary>What became of the sheet.</summary>
    public ExerciseResult Result() =>
        new(ExerciseKind.Worksheet, Sheet.Bench, Sheet.Level.Words, Sheet.Format.Unit, Sheet.Seed, Earned, Marks,
            [.. Blanks.Where(blank => blank.Outcome == BlankOutcome.Wrong).Select(blank => $"{blank.Blank.Id}, {blank.Blank.Label}: {blank.Text}")])
        {
            LevelNumber = Sheet.Level.Number,
            RightFigures = Blanks.Count(blank => blank.Earns),
            AllFigures = Blanks.Count(blank => blank.Outcome is not (BlankOutcome.NotAnswered or BlankOutcome.Unreadable)),
            Causes = [.. Mistakes.Where(mistake => mistake.Explanations.Count > 0).SelectMany(mistake => mistake.Explanations[0].Causes).Select(cause => new MissedCause(cause.Kind, cause.Subject)).Distinct()],
            Unexplained = Mistakes.Count(mistake => mistake.Explanations.Count == 0),
        };
}
