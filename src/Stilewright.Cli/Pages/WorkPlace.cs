using Stilewright.Doors;
using Stilewright.Wording;

namespace Stilewright.Cli.Pages;

/// <summary>A front, leaf or part whose working was asked for.</summary>
/// <param name="Words">What it is, with its label.</param>
internal sealed record WorkPlace(string Path, string Words, IReadOnlyList<NamedFigure> Figures)
{
    /// <summary>Everything that the typed label or path means; a single leaf stands for its front where both share a label.</summary>
    /// <exception cref="RefusalException">Nothing has that name; the nearest names are told.</exception>
    public static IReadOnlyList<WorkPlace> Find(Breakdown breakdown, string typed)
    {
        bool Means(string path, string label) => PlaceName.Means(typed, path, label);

        WorkPlace[] parts =
        [
            .. breakdown.Parts.Where(part => Means(part.Path, part.Label))
                .Select(part => new WorkPlace(part.Path, $"{part.Label}, {part.Name}", NamedFigures.Of(part))),
        ];
        if (parts.Length > 0)
            return parts;
        WorkPlace[] leaves =
        [
            .. breakdown.Leaves.Where(leaf => Means(leaf.Path, leaf.Label))
                .Select(leaf => new WorkPlace(leaf.Path, $"{leaf.Label}, {leaf.Name}", NamedFigures.Of(leaf))),
        ];
        if (leaves.Length > 0)
            return leaves;
        WorkPlace[] fronts =
        [
            .. breakdown.Fronts.Where(front => Means(front.Path, front.Label))
                .Select(front => new WorkPlace(front.Path, $"front {front.Label} {front.Name}".TrimEnd(), NamedFigures.Of(front))),
        ];
        if (fronts.Length > 0)
            return fronts;

        var names = breakdown.Parts.SelectMany(part => new[] { part.Path, part.Label })
            .Concat(breakdown.Leaves.SelectMany(leaf => new[] { leaf.Path, leaf.Label }))
            .Concat(breakdown.Fronts.SelectMany(front => new[] { front.Path, front.Label }));
        throw new RefusalException(ExitCode.WrongUse, $"There is no part, leaf or front {typed} in this course. {PlaceName.Suggest(typed, names)}".TrimEnd());
    }
}
