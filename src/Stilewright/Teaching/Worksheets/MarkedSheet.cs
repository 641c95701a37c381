using Stilewright.Measure;

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
/// <param name="Lines">Those that have blanks, in their order.</param>
public sealed record MarkedSheet(IReadOnlyList<MarkedLine> Lines)
{
    public IEnumerable<MarkedBlank> Blanks => Lines.SelectMany(line => line.Blanks);
    public int Earned => Lines.Sum(line => line.Earned);
    public int Marks => Lines.Sum(line => line.Line.Marks);

    /// <summary>What became of the sheet it marks.</summary>
    public ExerciseResult Result(Worksheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(ExerciseKind.Worksheet, sheet.Bench, sheet.Level.Words, sheet.Format.Unit, sheet.Seed, Earned, Marks,
            [.. Blanks.Where(blank => blank.Outcome == BlankOutcome.Wrong).Select(blank => $"{blank.Blank.Id}, {blank.Blank.Label}: {blank.Text}")]);
    }
}
