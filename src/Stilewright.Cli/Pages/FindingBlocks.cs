using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Findings;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>Findings as pages tell them: severity, place, problem, advice, source.</summary>
internal sealed class FindingBlocks(Breakdown breakdown, TradeWords figures)
{
    private readonly FindingWords words = new(breakdown);

    /// <summary>Worst first, otherwise in the order given.</summary>
    public void AddTo(Page page, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings.OrderByDescending(finding => finding.Severity))
        {
            var format = figures.Format;
            page.Line($"{FindingWords.Word(finding)}: {words.PlaceOf(finding.Place)}. {finding.ProblemText(format)}", ToneOf(finding), 2);
            page.Line($"Do: {finding.AdviceText(format)}", Tone.Plain, 6);
            if (finding.AcceptedBecause is { } reason)
                page.Line($"Accepted by the instructor: {reason}", Tone.Plain, 6);
            if (finding.AlsoAt.Count > 0)
                page.Line($"Also at: {string.Join("; ", finding.AlsoAt.Select(words.PlaceOf))}", Tone.Plain, 6);
            page.Line($"Rule {finding.Rule.Code}; source: {finding.Rule.Source}", Tone.Quiet, 6);
        }
    }

    private static Tone ToneOf(Finding finding) => finding.Severity switch
    {
        Severity.CannotBuild or Severity.Hazard => Tone.Danger,
        Severity.Caution => Tone.Caution,
        _ => Tone.Plain,
    };
}
