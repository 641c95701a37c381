using Stilewright.Drawing.Letters;
using Stilewright.Drawing.Scenes;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Drawing.Packets;

/// <summary>Lays findings: the severity as a word first, then the problem, what to do, and the source.</summary>
internal sealed class FindingStrips(FindingWords words, LengthFormat format)
{
    private const double Indent = 4;
    private const double BarWidth = 1.6;
    private const double Air = 2.4;

    /// <summary>Worst first, otherwise in the order given.</summary>
    public IEnumerable<Strip> Of(IEnumerable<Finding> findings, double width) =>
        findings.OrderByDescending(finding => finding.Severity).SelectMany(finding => Of(finding, width));

    /// <summary>What makes a project or leaf impossible to build, in a heavy frame.</summary>
    public IEnumerable<Strip> Framed(string heading, IReadOnlyList<Finding> findings, double width)
    {
        const double Padding = 4;
        var inner = width - 2 * Padding;
        Strip[] strips =
        [
            .. Prose.Wrapped(heading, TextStyle.Heading, inner, 0, 1.5).Select(strip => strip with { KeepWithNext = true }),
            .. findings.SelectMany(finding => Of(finding, inner)),
        ];
        for (var i = 0; i < strips.Length; i++)
        {
            var strip = strips[i];
            var (isFirst, isLast) = (i == 0, i == strips.Length - 1);
            var above = isFirst ? Padding : strip.SpaceBefore;
            var height = above + strip.Height + (isLast ? Padding : 0);
            List<SceneNode> frame = [Strip.Rule(0, 0, 0, height, LineStyle.Heavy), Strip.Rule(width, 0, width, height, LineStyle.Heavy)];
            if (isFirst)
                frame.Add(Strip.Rule(0, 0, width, 0, LineStyle.Heavy));
            if (isLast)
                frame.Add(Strip.Rule(0, height, width, height, LineStyle.Heavy));
            yield return strip.Within(Padding, above, height, frame) with { SpaceBefore = isFirst ? 3 : 0 };
        }
    }

    private IEnumerable<Strip> Of(Finding finding, double width)
    {
        var isHeavy = finding.Severity >= Severity.Hazard;
        var body = TextStyle.Body;
        var inner = width - Indent;
        // The word stands first in bold, and the sentence runs on after it.
        List<Strip> strips =
            [.. Prose.Led(FindingWords.Word(finding), $"{words.LabelOf(finding.Place)}. {finding.ProblemText(format)}", body, inner)];
        strips.AddRange(Prose.Wrapped($"Do: {finding.AdviceText(format)}", body, inner, 0, 0.8));
        if (finding.AcceptedBecause is { } reason)
            strips.AddRange(Prose.Wrapped($"Accepted by the instructor: {reason}", body, inner, 0, 0.8));
        if (finding.AlsoAt.Count > 0)
            strips.AddRange(Prose.Wrapped($"Also at: {string.Join("; ", finding.AlsoAt.Select(words.LabelOf).Distinct())}", body, inner, 0, 0.8));
        strips.AddRange(Prose.Wrapped($"Rule {finding.Rule.Code}; source: {finding.Rule.Source}", TextStyle.Small, inner, 0, 0));

        for (var i = 0; i < strips.Count; i++)
        {
            var strip = strips[i];
            // A finding is short; it stays on one sheet unless it is longer than most.
            var keep = i < strips.Count - 1 && strips.Count <= 12;
            var bar = isHeavy
                ? new Shape(Outline.Box(new(0, 0, BarWidth, strip.Height)), null, Tone.Ink)
                : Strip.Rule(BarWidth / 2, 0, BarWidth / 2, strip.Height, LineStyle.Dimension);
            yield return strip.Within(Indent, 0, strip.Height, bar) with { SpaceBefore = i == 0 ? Air : 0, KeepWithNext = keep };
        }
    }
}
