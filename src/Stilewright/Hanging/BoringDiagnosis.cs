using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>Names the mistakes that explain where the cups of a leaf are, each by its signature: the difference that it makes.</summary>
/// <remarks>Differences of one cutting step count as none. Where several mistakes give the same places, all are told, the commonest first.</remarks>
public static class BoringDiagnosis
{
    /// <returns>Nothing where all is right, or where no known mistake gives these places.</returns>
    /// <exception cref="ArgumentException">The leaf has no cups, or hangs from a level edge.</exception>
    public static IReadOnlyList<BoringMistake> Of(HungLeaf leaf, BoredReading reading)
    {
        var wanted = BoredLeaf.Wanted(leaf) ?? throw new ArgumentException("Only a leaf with cups on an upright edge is looked at.", nameof(leaf));
        var bored = reading.On(leaf.Leaf.Height.Length);
        var tolerance = leaf.Standard[Settings.Step].Length;
        List<BoringMistake> mistakes = [];
        if (bored.Edge != wanted.Edge)
        {
            mistakes.Add(new(BoringMistakeKind.OtherEdge, null, null, $"The cups are on the stile across from the hinges: the sheet was not mirrored for this hand.",
                leaf.Hand.HasTop ? (FormattableString)$"It has a top, so turning it does not help: use it for a leaf of the other hand, or plug and bore again." : $"Turn it end for end where its cups then come right, or plug and bore again."));
        }

        List<BoringMistake> ofPlaces = [.. OfPlaces(leaf, bored, wanted, tolerance)];
        // What a named mistake explains is no stop that was off.
        mistakes.AddRange(ofPlaces.Count > 1 ? ofPlaces.Where(mistake => mistake.Kind != BoringMistakeKind.AllShifted) : ofPlaces);
        if (reading.Distance is { } measured)
            mistakes.AddRange(OfDistance(leaf, measured, tolerance));
        return mistakes;
    }

    private static IEnumerable<BoringMistake> OfDistance(HungLeaf leaf, Length measured, Length tolerance)
    {
        var (sheet, cup) = (leaf.Sheet!, leaf.Hinge.Cup!);
        var half = (HingeFit.Entered(leaf.Hinge, "cup/diameter", "cup", cup.Diameter) / 2).As("half of the cup", "hinge/cup.half");
        if (Near(measured, sheet.Distance.Length))
            yield break;
        if (Near(measured, (sheet.Distance - half).Length))
        {
            yield return new(BoringMistakeKind.DistanceTakenForCentre, sheet.Distance, sheet.Distance - half,
                $"The boring distance of {sheet.Distance} was set to the centre of the cup instead of to its edge: the cup breaks out of the stile's edge.", $"Make a new stile; an edge that is broken out holds no hinge.");
        }
        else if (Near(measured, sheet.CupCentre.Length))
        {
            yield return new(BoringMistakeKind.CentreTakenForDistance, sheet.Distance, sheet.Distance + half,
                $"The centre's {sheet.CupCentre} was set as the boring distance: the cup is half its width too far in, towards groove and panel.", $"Plug and bore again, or make a new stile.");
        }
        else
        {
            var off = measured - sheet.Distance.Length;
            var spare = (off.IsNegative ? leaf.Hinge.Adjustment?.Sideways?.Plus : leaf.Hinge.Adjustment?.Sideways?.Minus)?.Value ?? default;
            yield return new(BoringMistakeKind.DistanceOff, sheet.Distance, null,
                $"It is bored {Length.Abs(off)} too {(off.IsNegative ? "near to" : "far from")} the edge, and the overlay is {Length.Abs(off)} {(off.IsNegative ? "less" : "more")}: one for one.",
                Length.Abs(off) <= spare ? (FormattableString)$"The side screw takes that up." : $"Take a plate that is {Length.Abs(off)} {(off.IsNegative ? "lower" : "higher")}, or another hinge.");
        }

        bool Near(Length one, Length other) => Length.Abs(one - other) <= tolerance;
    }

    private static IEnumerable<BoringMistake> OfPlaces(HungLeaf leaf, BoredLeaf bored, BoredLeaf wanted, Length tolerance)
    {
        if (bored.FromTop.Count != wanted.FromTop.Count || Same(bored.FromTop, wanted.FromTop))
            yield break;
        var places = leaf.Set.Places.Reverse().ToList();
        Worked first = places[0].FromEnd;
        if (Same(bored.FromTop, [.. wanted.FromTop.Reverse().Select(each => wanted.Height - each)]))
        {
            yield return new(BoringMistakeKind.OtherEnd, first, places[^1].FromStart,
                $"The distances were laid off from the other end: the top mark was missed.", Turned(leaf));
        }

        if (leaf.Front.Edges.Count > 0 && leaf.Front.Mount is not null)
        {
            var (top, bottom) = (Reaches.Left(leaf.Front, leaf.Leaf, Side.Top), Reaches.Left(leaf.Front, leaf.Leaf, Side.Bottom));
            var sign = leaf.Front.Mount == Mount.Inset ? -1 : 1;
            var isOfOpening = leaf.Standard.Word(Settings.HingeFrom) == Settings.FromOpening;
            // All stand off one way, by the bottom overlay less the top one.
            if (isOfOpening && bottom.Length != top.Length
                && Same(bored.FromTop, OuterMoved((bottom.Length - top.Length) * sign, (top.Length - bottom.Length) * sign)))
            {
                yield return new(BoringMistakeKind.OverlaysSwapped, first, sign > 0 ? first + bottom - top : first - bottom + top,
                    $"The overlays of top and bottom were exchanged: the cups are {Length.Abs(top.Length - bottom.Length)} too {((top.Length > bottom.Length) == (sign > 0) ? "high" : "low")}, and the plates miss them.", $"Move the plates by the same amount; slots may take it up.");
            }

            var by = isOfOpening ? -1 : 1;
            if ((!top.Amount.IsZero || !bottom.Amount.IsZero) && Same(bored.FromTop, OuterMoved(top.Length * sign * by, bottom.Length * sign * by)))
            {
                yield return new(BoringMistakeKind.OpeningForLeaf, first, sign * by > 0 ? first + top : first - top,
                    isOfOpening ? (FormattableString)$"The distances were laid off from the ends of the leaf, and are meant from the opening." : $"The distances were laid off as from the opening, and are meant from the ends of the leaf.",
                    $"Set the plates to the cups as they are, and note it for the doors beside it.");
            }
        }

        var shifts = bored.FromTop.Zip(wanted.FromTop, (is_, should) => is_ - should).ToList();
        if (shifts.All(shift => Length.Abs(shift - shifts[0]) <= tolerance) && Length.Abs(shifts[0]) > tolerance)
        {
            yield return new(BoringMistakeKind.AllShifted, first, null,
                $"All cups are {Length.Abs(shifts[0])} too {(shifts[0].IsNegative ? "high" : "low")}: a stop was off by one, or the leaf did not lie against it.", $"Set the plates to the cups where the frame leaves room, else plug and bore again.");
        }

        bool Same(IReadOnlyList<Length> one, IReadOnlyList<Length> other) => one.Zip(other).All(pair => Length.Abs(pair.First - pair.Second) <= tolerance);

        // Inner cups between outer ones that were moved are spaced anew.
        List<Length> OuterMoved(Length topBy, Length bottomBy)
        {
            var (count, high, low) = (wanted.FromTop.Count, wanted.FromTop[0] + topBy, wanted.FromTop[^1] - bottomBy);
            return [.. Enumerable.Range(0, count).Select(i => i == 0 ? high : i == count - 1 ? low : high + ((low - high) * i / (count - 1)))];
        }
    }

    private static FormattableString Turned(HungLeaf leaf) =>
        $"{(leaf.Hand.HasTop ? "Set the plates to the cups where the frame leaves room, or plug and bore again." : "Set the plates to the cups, or turn it end for end for the other hand.")}";
}
