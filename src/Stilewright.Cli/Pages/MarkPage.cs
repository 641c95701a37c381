using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Documents.Lists;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Teaching.Reuse;
using Stilewright.Teaching.Telling;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>The answer to a maker's list.</summary>
internal static class MarkPage
{
    private const int MostOptions = 6;
    private const int MostLabels = 4;
    private const int MostColumns = 5;

    public static Page Of(Breakdown breakdown, MarkedList marked, LengthFormat format)
    {
        var answer = marked.Answer;
        var page = new Page().Title($"{breakdown.Course.Name}: your list for {marked.For}");
        page.Line($"Sizes: {MakersListReader.Words(marked.Found.List.Stage) switch { "clamps" => "into the clamps", var word => word }}; a bare number is in {(marked.Read.Unit == LengthUnit.Inch ? "inches" : "millimetres")}.{NotRead(marked.Read.Unread)}");
        var thick = answer.Lines.Any(line => line.Line.Thickness is not null);
        page.Grid(
            [Column.Figure("line"), "part", "taken for", Column.Figure("count"), Column.Figure("width"), Column.Figure("length"), .. thick ? [Column.Figure("thickness")] : Array.Empty<Column>(), "answer", Column.Figure("right size")],
            answer.Lines.Select(line => (IReadOnlyList<string>)
            [
                line.Line.Number.ToString(CultureInfo.InvariantCulture),
                line.Line.Name,
                line.What,
                line.Line.Count?.ToString(CultureInfo.InvariantCulture) ?? "",
                line.Line.Width?.Text ?? "",
                line.Line.Length?.Text ?? "",
                .. thick ? [line.Line.Thickness?.Text ?? ""] : Array.Empty<string>(),
                AnswerWords.Verdict(line),
                AnswerWords.RightSize(line),
            ]));
        foreach (var line in answer.Lines)
        {
            foreach (var remark in line.Remarks)
                page.Line($"Line {line.Line.Number}, {line.Line.Name}: {remark}", Tone.Caution, 2);
        }

        if (answer.Missing.Count > 0)
            page.Line($"Missing: {string.Join(", ", answer.Missing)}.", Tone.Caution, 2);
        page.Line("").Line(answer.Summary);
        for (var i = 0; i < answer.Mistakes.Count; i++)
            AddMistake(page, answer.Mistakes[i], answer.Mistakes.Count == 1 ? "The mistake" : $"Mistake {i + 1}");
        foreach (var (line, advice) in marked.Reuses)
        {
            page.Heading($"Line {line.Number}, {line.Name} {format.Print(advice.Piece.Width)} × {format.Print(advice.Piece.Length)}{(advice.Piece.IsWorked ? ", worked" : "")}: what the wood can still become");
            AddReuse(page, advice, format);
        }

        if (marked.Reuses.Count > 0)
            page.Line("").Line(Remarks.Machines, Tone.Quiet);
        return page.Footnotes();
    }

    private static string NotRead(IReadOnlyList<string> columns) => columns.Count == 0 ? ""
        : $" Not read: {string.Join(", ", columns.Take(MostColumns))}{(columns.Count > MostColumns ? $" and {columns.Count - MostColumns} more columns" : "")}.";

    private static void AddMistake(Page page, MistakeAnswer mistake, string heading)
    {
        page.Heading($"{heading}: {mistake.About}");
        AddCause(page, mistake);
    }

    /// <summary>What is told of wrong figures that one explanation accounts for.</summary>
    internal static void AddCause(Page page, CauseAnswer mistake)
    {
        void Add(string? text)
        {
            if (!string.IsNullOrEmpty(text))
                page.Line(text, Tone.Plain, 2);
        }

        Add(mistake.Missed ?? mistake.Hint);
        Add(mistake.Rule);
        foreach (var formula in mistake.Formulas)
            page.Line(formula, Tone.Plain, 4);
        foreach (var work in mistake.Work)
        {
            if (work.AsWorked.Length > 0)
                page.Line($"as worked: {work.AsWorked}", Tone.Quiet, 4);
            page.Line($"right:     {work.Right}", Tone.Plain, 4);
        }

        Add(mistake.Question);
        Add(mistake.Following);
    }

    private static void AddReuse(Page page, ReuseAdvice advice, LengthFormat format)
    {
        // Remaking it is the last of the list and always told.
        foreach (var option in advice.Options.SkipLast(1).Take(MostOptions).Append(advice.Options[^1]))
        {
            page.Line($"{Rung(option.Rung)}{For(option)}: {Steps(option, format)}", Tone.Plain, 2);
            foreach (var limit in option.Limits)
                AddLimit(page, limit, format);
        }

        if (advice.Options.Count - 1 > MostOptions)
            page.Line($"{advice.Options.Count - 1 - MostOptions} more like these would take more off.", Tone.Quiet, 2);
        if (advice.Unsafe.Count == 0)
            return;
        page.Line("The sizes would also allow, and a machine does not:", Tone.Plain, 2);
        foreach (var option in advice.Unsafe.Take(MostOptions))
        {
            page.Line($"{Rung(option.Rung)}{For(option)}", Tone.Plain, 4);
            foreach (var limit in option.Limits)
                AddLimit(page, limit, format);
        }

        if (advice.Unsafe.Count > MostOptions)
            page.Line($"and {advice.Unsafe.Count - MostOptions} more.", Tone.Quiet, 4);
    }

    private static string Rung(ReuseRung rung) => rung switch
    {
        ReuseRung.AsItIs => "As it is",
        ReuseRung.CutSmaller => "Cut smaller",
        ReuseRung.AddEdging => "With a strip glued on",
        _ => "Make it again",
    };

    private static string For(ReuseOption option) => option.Rung == ReuseRung.Remake ? ""
        : $", for {string.Join(" or ", option.Parts.Take(MostLabels).Select(part => part.Label))}{(option.Parts.Count > MostLabels ? $" or {option.Parts.Count - MostLabels} more" : "")} ({string.Join(" / ", option.Parts.Select(part => part.Name).Distinct())})";

    public static string Steps(ReuseOption option, LengthFormat format) => string.Join(" ", option.Steps.Select(step => FindingText.Say(step, format)));

    private static void AddLimit(Page page, Finding limit, LengthFormat format)
    {
        page.Line($"{FindingWords.Word(limit)}: {limit.ProblemText(format)} {(limit.AcceptedBecause is { } reason ? $"Accepted by the instructor: {reason}" : limit.AdviceText(format))}",
            limit.Severity == Severity.Hazard ? Tone.Danger : Tone.Caution, 6);
        page.Line($"Rule {limit.Rule.Code}; source: {limit.Rule.Source}", Tone.Quiet, 6);
    }
}
