using Stilewright.Documents.Lists;
using Stilewright.Teaching.Checking;
using Stilewright.Teaching.Telling;

namespace Stilewright.Web.Features.Api;

/// <summary>The answer to a maker's list. What the level of telling withholds is absent or empty.</summary>
/// <param name="Tell">How much is told.</param>
/// <param name="Unread">Headings of columns in which nothing was read.</param>
/// <param name="Missing">Parts that no line lists.</param>
public sealed record CheckAnswer(
    string Stage, string Tell, bool IsRight, string Summary, IReadOnlyList<string> Unread, IReadOnlyList<CheckLineAnswer> Lines, IReadOnlyList<string> Missing,
    IReadOnlyList<CheckMistakeAnswer> Mistakes)
{
    public static CheckAnswer Of(CheckedList found, ReadList list, Answer answer) => new(
        MakersListReader.Words(found.List.Stage), Word(answer.Telling), found.IsRight, answer.Summary, list.Unread,
        [.. answer.Lines.Select(line => new CheckLineAnswer(line.Line.Number, line.Line.Name, line.Line.Count, line.What, line.IsRight,
            [.. line.Numbers.Select(number => new CheckFigureAnswer(number.Number.Item.Label, number.Number.Measure.ToString().ToLowerInvariant(), number.Told, number.Mark, number.Right, number.Off))],
            line.Remarks))],
        answer.Missing,
        [.. answer.Mistakes.Select(mistake => new CheckMistakeAnswer(mistake.About, mistake.Hint, mistake.Missed, mistake.Rule, mistake.Formulas,
            [.. mistake.Work.Select(work => new CheckWorkAnswer(work.AsWorked, work.Right))], mistake.Question, mistake.Following))]);

    internal static string Word(Telling telling) => telling switch
    {
        Telling.RightOrWrong => "right-or-wrong",
        _ => telling.ToString().ToLowerInvariant(),
    };
}

/// <summary>The answer to one line.</summary>
/// <param name="TakenFor">What the line was taken for; empty where it goes with nothing.</param>
public sealed record CheckLineAnswer(
    int Line, string Part, int? Count, string TakenFor, bool IsRight, IReadOnlyList<CheckFigureAnswer> Figures, IReadOnlyList<string> Remarks);

/// <summary>The answer to one figure.</summary>
/// <param name="Of">The label of what it is the size of.</param>
/// <param name="Measure">width or length.</param>
/// <param name="Answer">right, not right, or follows from an earlier figure.</param>
public sealed record CheckFigureAnswer(string Of, string Measure, string Told, string Answer, string? Right, string? Off);

/// <summary>One mistake: figures that one explanation accounts for.</summary>
/// <param name="About">The figures it made wrong.</param>
/// <param name="Hint">A question that leads to the rule.</param>
/// <param name="Question">Where several explanations are about as likely: what to ask to tell them apart.</param>
/// <param name="Following">Figures that are wrong only because of these.</param>
public sealed record CheckMistakeAnswer(
    string About, string Hint, string? Missed, string? Rule, IReadOnlyList<string> Formulas, IReadOnlyList<CheckWorkAnswer> Work, string? Question, string? Following);

/// <summary>One step as it was probably worked, and as it should be.</summary>
public sealed record CheckWorkAnswer(string AsWorked, string Right);
