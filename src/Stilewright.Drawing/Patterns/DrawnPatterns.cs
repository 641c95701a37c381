using Stilewright.Drawing.Writing;
using Stilewright.Measure;

namespace Stilewright.Drawing.Patterns;

/// <summary>The patterns of some arched parts, and why any of them has none.</summary>
/// <param name="Refusals">With the label of the part that each is about.</param>
public sealed record DrawnPatterns(IReadOnlyList<FullSizePattern> Patterns, IReadOnlyList<string> Refusals)
{
    /// <param name="revision">Of the project, as its packet tells it.</param>
    /// <param name="isWhole">Whether the pattern of a tall panel is drawn whole.</param>
    /// <param name="onePattern">Whether the shop saws rail and panel by one pattern, even where none of its rack serves.</param>
    /// <param name="guide">For patterns that guide a bearing; null for the true lines.</param>
    public static DrawnPatterns Of(
        IEnumerable<ArchedPart> parts, string revision, LengthFormat format, bool isWhole = false, bool onePattern = false, GuideBearing? guide = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        List<FullSizePattern> drawn = [];
        List<string> refusals = [];
        foreach (var each in parts)
        {
            var figure = new PatternFigure(revision, format) { IsWhole = isWhole, OnePattern = each.OnePattern(onePattern) };
            foreach (var result in figure.Of(each.Detail.Curves, each.Part, guide))
            {
                if (result is PatternResult.Drawn(var pattern))
                    drawn.Add(pattern);
                else if (result is PatternResult.Refused(var problem))
                    refusals.Add($"{each.Part.Label}: {problem}");
            }
        }

        return new(drawn, refusals);
    }

    /// <summary>The sheets to print them on.</summary>
    /// <param name="footnote">Bench, project and revision, for every sheet.</param>
    public IEnumerable<PdfPage> Pages(PatternPaper paper, PrintCorrection correction, LengthUnit unit, string footnote) =>
        new Tiling(paper, correction, unit).Lay(Patterns, footnote).SelectMany(laid => laid.Tiled.Sheets
            .Select((sheet, i) => new PdfPage(sheet, i == 0 ? [.. laid.Titles.Select(each => new Bookmark(each, 1))] : [])));

    /// <summary>What the printed patterns say of themselves.</summary>
    /// <param name="course">Its name.</param>
    /// <param name="place">The leaf or the part, as it was asked for.</param>
    /// <param name="program">The version of the program.</param>
    public static PdfFacts Facts(string course, string place, string program, DateTimeOffset now) => new(
        $"{course}: patterns of {place}", "Full-size patterns of arched parts", null, "arch, pattern, full size", $"Stilewright {program}", now.ToUniversalTime());
}
