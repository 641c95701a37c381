using System.Globalization;
using Stilewright.Cli.Layout;
using Stilewright.Doors;
using Stilewright.Drawing.Figures;
using Stilewright.Measure;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>Finds arched parts by the names they are asked for.</summary>
internal static class ArchedParts
{
    /// <summary>All of a course, leaf by leaf.</summary>
    public static IEnumerable<ArchedPart> Of(Breakdown breakdown) =>
        from project in breakdown.Projects
        from leaf in project.Fronts.SelectMany(front => front.Leaves)
        where leaf.Parts.Any(part => part.Arch is not null)
        let detail = LeafDetail.Of(breakdown.Course, project, leaf)
        from part in detail.Curves.Rails.Select(rail => rail.Rail).Concat(detail.Curves.Panels.Select(panel => panel.Panel))
        select new ArchedPart(project, leaf, detail, part);

    /// <summary>The arched part of that name, or all of the leaf of that name.</summary>
    /// <exception cref="RefusalException">Nothing has that name, or it is not arched.</exception>
    public static IReadOnlyList<ArchedPart> Find(Breakdown breakdown, string typed)
    {
        ArchedPart[] all = [.. Of(breakdown)];
        ArchedPart[] found = [.. all.Where(each => PlaceName.Means(typed, each.Leaf.Path, each.Leaf.Label) || PlaceName.Means(typed, each.Part.Path, each.Part.Label))];
        if (found.Length > 0)
            return found;
        if (all.Length == 0)
            throw new RefusalException(ExitCode.WrongUse, "No leaf of this course has an arch, so that there is no pattern to print.");
        var known = breakdown.Leaves.Any(leaf => PlaceName.Means(typed, leaf.Path, leaf.Label)) || breakdown.Parts.Any(part => PlaceName.Means(typed, part.Path, part.Label));
        var names = all.SelectMany(each => new[] { each.Leaf.Label, each.Leaf.Path, each.Part.Label, each.Part.Path });
        throw new RefusalException(ExitCode.WrongUse,
            $"{(known ? $"{typed} has no arch" : $"There is no leaf or part {typed} in this course")}. {PlaceName.Suggest(typed, names)}".TrimEnd());
    }

    public static Page PageOf(Breakdown breakdown, LengthFormat format)
    {
        var words = new TradeWords(format);
        ArchedPart[] all = [.. Of(breakdown)];
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
