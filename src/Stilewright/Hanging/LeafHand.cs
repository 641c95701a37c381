using Stilewright.Doors;
using Stilewright.Projects;

namespace Stilewright.Hanging;

/// <summary>Whether a leaf that is not bored yet has a top, and why.</summary>
/// <param name="HasTop">False where it looks the same turned end for end, so that either way round will do until it is bored.</param>
/// <param name="Reasons">What tells its top or its hand; empty where nothing does.</param>
public sealed record LeafHand(bool HasTop, IReadOnlyList<FormattableString> Reasons)
{
    private static readonly FormattableString Either =
        $"Either way round will do: turned end for end it is the same. Mark a top before boring all the same, or let the figure of the panel decide.";

    public FormattableString Words => HasTop ? $"It has a top. Mark it on the back before boring." : Either;

    public static LeafHand Of(SizedLeaf leaf)
    {
        if (leaf.Parts.Count == 0 || LeafShape.IsSameEndForEnd(leaf))
            return new(false, []);
        List<FormattableString> reasons = [];
        Part? Named(string end) => leaf.Parts.FirstOrDefault(part => part.Path.EndsWith(end, StringComparison.Ordinal));
        var (top, bottom) = (Named("/rail.top"), Named("/rail.bottom"));
        if (top?.Arch is { OfPair: not null } || bottom?.Arch is { OfPair: not null })
            reasons.Add($"it has half of an arch across a pair");
        else if (top?.Arch is not null && bottom?.Arch is null)
            reasons.Add($"its arch is at the top");
        else if (bottom?.Arch is not null && top?.Arch is null)
            reasons.Add($"its arch is at the bottom");
        if (top is not null && bottom is not null && top.VisibleBounds.Height is var high && bottom.VisibleBounds.Height is var low && high != low)
            reasons.Add($"its rails are {high} at the top and {low} at the bottom");
        if (Named("/stile.left") is { } left && Named("/stile.right") is { } right && left.Finished.Width.Length != right.Finished.Width.Length)
        {
            reasons.Add(leaf.Hinge is HingeSide.Left or HingeSide.Right
                ? (FormattableString)$"its stiles are {(leaf.Hinge == HingeSide.Left ? left : right).Finished.Width.Length} at the hinges and {(leaf.Hinge == HingeSide.Left ? right : left).Finished.Width.Length} at the pull"
                : $"its stiles are {left.Finished.Width.Length} and {right.Finished.Width.Length} wide");
        }

        var middles = leaf.Parts.Where(part => part.Kind == PartKind.MidRail).Select(part => part.VisibleBounds).ToList();
        if (!middles.Select(box => (box.Y, box.Top)).ToHashSet().SetEquals(middles.Select(box => (leaf.Height.Length - box.Top, leaf.Height.Length - box.Y))))
            reasons.Add($"a mid rail is off its middle");
        if (leaf.Rabbeted.Contains(Side.Left) != leaf.Rabbeted.Contains(Side.Right))
            reasons.Add($"one long edge is rabbeted");
        if (leaf.Tapers.Values.Any(taper => !taper.IsZero))
            reasons.Add($"it is planed to its opening");
        if (reasons.Count == 0)
            reasons.Add($"its lights or their filling differ from end to end");
        return new(true, reasons);
    }
}
