using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Teaching.Checking;

namespace Stilewright.Teaching.IfCut;

/// <summary>A leaf of another size, and what its edges leave.</summary>
internal sealed partial class CutLeaf
{
    private static LaidPart[] SlabLaid(Part slab, bool isAcross) => [Moved(slab, isAcross, default, default)];

    private Fault Strip(FaultKind kind, bool isAcross, Length at, Length off) =>
        new(kind, isAcross, new(at, default), new(at, off), default, isAcross ? leaf.Height.Length : leaf.Width.Length);

    // Strips along both edges of the leaf, each by how much it is over there.
    private IEnumerable<Fault> SideStrips(bool isAcross, Length low, Length high)
    {
        if (!low.IsZero)
            yield return Strip(low.IsPositive ? FaultKind.TooMuch : FaultKind.Missing, isAcross, default, -low);
        if (!high.IsZero)
            yield return Strip(high.IsPositive ? FaultKind.TooMuch : FaultKind.Missing, isAcross, isAcross ? leaf.Width.Length : leaf.Height.Length, high);
    }

    private void AddSize(List<Consequence> found, bool isAcross, Length change, IReadOnlyList<CheckedNumber> numbers, IReadOnlyList<Part> parts, IReadOnlyList<LaidPart> laid)
    {
        if (change.IsZero)
            return;
        var (low, high) = Ends(isAcross, change, laid);
        IReadOnlyList<LaidPart> shown = parts is [{ Kind: PartKind.Slab } slab] ? [Moved(slab, isAcross, -low, high)] : laid;
        found.Add(Size(isAcross, change, numbers, parts, leaf.Name, isAcross ? leaf.Width.Length : leaf.Height.Length) with { Laid = shown, Faults = [.. SideStrips(isAcross, low, high)] });
    }

    // How far each end of the leaf goes out: as its outer members lie, else half each.
    private (Length Low, Length High) Ends(bool isAcross, Length change, IReadOnlyList<LaidPart> laid)
    {
        var end = isAcross ? leaf.Width.Length : leaf.Height.Length;
        var low = laid.Select(each => isAcross ? each.Left : each.Bottom).Where(edge => edge.At.IsZero && !edge.Off.IsZero).Select(edge => -edge.Off).FirstOrDefault();
        var high = laid.Select(each => isAcross ? each.Right : each.Top).Where(edge => edge.At == end && !edge.Off.IsZero).Select(edge => edge.Off).FirstOrDefault();
        return low + high == change ? (low, high) : (change / 2, change / 2);
    }

    private Consequence Size(bool isAcross, Length change, IReadOnlyList<CheckedNumber> numbers, IReadOnlyList<Part> parts, string what, Length right)
    {
        var edges = EdgesOf(isAcross, change);
        var word = (isAcross, change.IsNegative) switch { (true, false) => "wider", (true, true) => "narrower", (false, false) => "higher", _ => "lower" };
        return new(ConsequenceKind.LeafSize, leaf, numbers, parts, Length.Abs(change), $"The {what} comes out {Length.Abs(change)} {word}, {right + change:figure} instead of {right}{Left(isAcross, change, edges)}.") { Edges = edges };
    }

    // Leaves beside or above one another share what lies between them.
    private bool IsShared(bool isAcross) => front.Leaves.Count > 1 && (leaf.IsDrawerFront ? !isAcross : isAcross);

    private List<EdgeChange> EdgesOf(bool isAcross, Length change)
    {
        if (IsShared(isAcross))
            return [];
        Side[] sides = isAcross ? [Side.Left, Side.Right] : [Side.Top, Side.Bottom];
        return
        [
            .. front.Edges.Where(edge => sides.Contains(edge.Side)).Select(edge => new EdgeChange(edge.Side, edge.Reach, edge.Reach + change / 2,
                edge.Neighbours.Count > 0 && edge.Reveal is { } reveal ? Length.Greatest(default, (change / 2) - reveal) : default)),
        ];
    }

    private FormattableString Left(bool isAcross, Length change, List<EdgeChange> edges)
    {
        if (IsShared(isAcross))
        {
            return front.Gap is not { } gap ? (FormattableString)$": it laps {Length.Abs(change)} {(change.IsNegative ? "less" : "more")} over its neighbour"
                : gap.Length - change is var left && left.IsNegative
                    ? (FormattableString)$": the {gap.Length} between the leaves is gone, and they bind by {-left}"
                    : (FormattableString)$": the gap between the leaves becomes {left:figure} instead of {gap.Length}";
        }

        if (edges.Count == 0)
            return $"";
        var collides = edges.Max(edge => edge.Collides);
        FormattableString runs = collides.IsPositive ? (FormattableString)$", and it runs {collides} into its neighbour" : $"";
        var alike = edges.All(edge => edge.Right == edges[0].Right);
        var first = edges[0];
        FormattableString told = front.Mount == Mount.Inset
            ? first.IfCut.IsPositive ? (FormattableString)$": it does not go into the opening, being {first.IfCut * 2} too large"
                : alike ? $": a gap of {-first.IfCut:figure} is left at each edge instead of {-first.Right}" : (FormattableString)$": each gap changes by {Length.Abs(change) / 2}"
            : edges.MinBy(edge => edge.IfCut) is { IfCut.IsNegative: true } open && !open.Right.IsNegative ? (FormattableString)$": it leaves {-open.IfCut} of the opening uncovered at {(alike ? "each edge" : $"the {Word(open.Side)}")}"
            : alike ? $": it laps {first.IfCut:figure} over the frame at each edge instead of {first.Right}"
            : (FormattableString)$": it laps {edges[0].IfCut} over at the {Word(edges[0].Side)} and {edges[^1].IfCut} at the {Word(edges[^1].Side)}";
        return $"{told}{runs}";
    }

    private static string Word(Side side) => side switch { Side.Left => "left", Side.Right => "right", Side.Top => "top", _ => "bottom" };

    // Sizes of the leaf and front that the list states itself.
    private void OwnSizes(List<Consequence> found)
    {
        foreach (var isAcross in new[] { true, false })
        {
            foreach (var (path, what, count) in new[] { (leaf.Path, leaf.Name, 1), (front.Path, "front", IsShared(isAcross) ? front.Leaves.Count : 1) })
            {
                if (path == front.Path && (path == leaf.Path || !ReferenceEquals(front.Leaves[0], leaf)) || offs.GetValueOrDefault((path, isAcross)) is not { } off)
                    continue;
                // Parts that follow from a wrong leaf make the same leaf.
                var same = found.FindIndex(other => other.Kind == ConsequenceKind.LeafSize && other.Faults[0].IsAcross == isAcross && other.Amount == Length.Abs(off.Raw) && Grows(other) == off.Raw.IsPositive);
                if (same >= 0 && count == 1)
                {
                    found[same] = found[same] with { Numbers = [.. found[same].Numbers, off.Number] };
                    continue;
                }

                var each = off.Raw / count;
                found.Add(Size(isAcross, each, [off.Number], [], leaf.Name, isAcross ? leaf.Width.Length : leaf.Height.Length) with { Faults = [.. SideStrips(isAcross, each / 2, each / 2)] });
            }
        }

        static bool Grows(Consequence size) => size.Faults[0].Kind == FaultKind.TooMuch;
    }

    // What is over comes off with the allowance, and what is short is made up from it.
    private IEnumerable<Consequence> Allowances()
    {
        foreach (var group in offs.Where(each => !each.Value.Allowance.IsZero && each.Value.Finished.IsZero).GroupBy(each => (each.Value.Number, each.Key.IsAcross)))
        {
            var off = group.First().Value;
            Part[] parts = [.. leaf.Parts.Where(part => group.Any(each => each.Key.Path == part.Path))];
            if (parts.Length == 0)
                continue;
            var (isAcross, amount) = (group.Key.IsAcross, Length.Abs(off.Raw));
            var what = Names(parts);
            yield return new(ConsequenceKind.WithinAllowance, leaf, [off.Number], parts, amount, off.Raw.IsPositive
                ? (FormattableString)$"The {what} can still be made: {off.Allowance + off.Raw} comes off where {off.Allowance} was allowed."
                : (FormattableString)$"The {what} can still be made, with {off.Allowance + off.Raw} left to come off where {off.Allowance} was allowed.")
            {
                Faults = [.. parts.Select(part => OuterStrip(part, isAcross, off.Raw))],
            };
        }
    }

    private static Fault OuterStrip(Part part, bool isAcross, Length off)
    {
        var box = part.VisibleBounds;
        var isLow = isAcross && part.Kind == PartKind.Stile && box.X.IsZero || !isAcross && part.Kind == PartKind.Rail && box.Y.IsZero;
        var at = (isAcross, isLow) switch { (true, true) => box.X, (true, false) => box.Right, (false, true) => box.Y, _ => box.Top };
        return new(off.IsNegative ? FaultKind.Missing : FaultKind.TooMuch, isAcross, new(at, default), new(at, isLow ? -off : off), isAcross ? box.Y : box.X, isAcross ? box.Top : box.Right);
    }
}
