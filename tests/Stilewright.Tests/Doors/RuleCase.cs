using Stilewright.Doors;
using Stilewright.Findings;

namespace Stilewright.Tests.Doors;

/// <summary>A rule at its limit: the mildest case in which it speaks, and the nearest in which it is silent.</summary>
/// <param name="Variant">Tells cases of one rule apart.</param>
/// <param name="Path">Where the finding must be.</param>
/// <param name="Says">What problem and advice must say, figures first of all.</param>
internal sealed record RuleCase(
    Rule Rule, Severity Severity, string Path, IReadOnlyList<string> Says, Func<Breakdown> Speaks, Func<Breakdown> Silent, string Variant = "")
{
    public string Name => Variant.Length == 0 ? Rule.Code : $"{Rule.Code}, {Variant}";
}
