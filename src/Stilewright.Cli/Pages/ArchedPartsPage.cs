using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Drawing.Patterns;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>The arched parts of a course, as they are listed.</summary>
internal static class ArchedPartsPage
{
    public static Page Of(Breakdown breakdown, LengthFormat format)
    {
        var words = new TradeWords(format);
        ArchedPart[] all = [.. ArchedParts.Of(breakdown)];
        var page = new Page().Title($"{breakdown.Course.Name}: arched parts");
        return all.Length == 0
            ? page.Line("No leaf of this course has an arch.")
            : page.Line($"Spans and rises in {words.Unit}. `stilewright pattern FILE PLACE --out pattern.pdf` prints a leaf or a part.").Grid(
                [Column.Figure("bench"), "leaf", "part", "name", "arch", Column.Figure("span"), Column.Figure("rise")],
                all.Select(each => (IReadOnlyList<string>)
                [
                    each.Project.Project.Bench.ToString(CultureInfo.InvariantCulture), each.Leaf.Label, each.Part.Label, each.Part.Name,
                    .. Shape(each.Part, words),
                ]));
    }

    private static IEnumerable<string> Shape(Part part, TradeWords words)
    {
        var arch = part.Arch ?? part.TopArch ?? part.BottomArch;
        return [arch is null ? "" : $"{TradeWords.Words(arch.Family)}{(arch.OfPair is null ? "" : ", across the pair")}", words.Of(arch?.Span), words.Of(arch?.WholeRise)];
    }
}
