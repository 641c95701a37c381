using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Findings;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>The rules that are checked.</summary>
internal static class RulesPage
{
    public static Page Of() => new Page()
        .Title($"{Rules.All.Count.ToString(CultureInfo.InvariantCulture)} rules, in the order of the work")
        .Grid(["rule", "severity", "speaks when", "advice", "source"], Rules.All.Select(rule => (IReadOnlyList<string>)
        [
            rule.Code,
            rule.Severity == Severity.CannotBuild ? "cannot be built" : TradeWords.Words(rule.Severity),
            rule.Condition,
            rule.Advice,
            rule.Source.Text,
        ]));
}
