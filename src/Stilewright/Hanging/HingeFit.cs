using Stilewright.Measure;
using Stilewright.Shop;

namespace Stilewright.Hanging;

/// <summary>How a hinge gives a leaf its overlay, or its gap where it is inset.</summary>
/// <param name="Wanted">The overlay or gap that the front was sized for.</param>
/// <param name="Comes">What the hinge gives.</param>
/// <param name="Distance">Boring distance, from the leaf's edge to the near edge of the cup; null without a cup.</param>
/// <param name="CupCentre">From the leaf's edge to the centre of the cup; null without a cup.</param>
/// <param name="Plate">Height of the mounting plate; null where there is none to choose.</param>
public sealed record HingeFit(Worked Wanted, Worked Comes, Worked? Distance, Worked? CupCentre, Worked? Plate)
{
    /// <summary>What the side screw must make good: positive where the leaf laps too far, or its gap is too wide.</summary>
    public Length Error => Comes.Length - Wanted.Length;

    /// <summary>The fit that comes nearest; of equal ones the lowest plate.</summary>
    /// <remarks>Overlay = constant + boring distance − plate (quick reference of a hinge catalogue); inset gap = plate − boring distance −
    /// constant (a second catalogue, 2023: plate = boring distance + constant + gap).</remarks>
    public static HingeFit Of(HingeKind hinge, Worked wanted, StandardInForce standard)
    {
        var usual = standard.LengthOrWord(Settings.BoringDistance);
        if (hinge.Cup is not { } cup)
            return new(wanted, WithinRange(hinge, wanted), null, null, null);
        if (cup.Constant is not { } constantEntry || !hinge.HasLaw)
        {
            var distance = usual ?? Entered(hinge, "cup/leastDistance", "least boring distance", cup.LeastDistance).As("boring distance", "hinge/distance");
            return new(wanted, WithinRange(hinge, wanted), distance, Centre(hinge, distance), null);
        }

        var constant = Entered(hinge, "cup/constant", "the hinge's constant", constantEntry);
        Worked?[] plates = cup.Plates.Count == 0 ? [null] : [.. cup.Plates.Select((plate, i) => Entered(hinge, $"cup/plates/{i}/height", "plate", plate.Height))];
        return plates.Select(Try).MinBy(fit => (Length.Abs(fit.Error).Inches, fit.Plate?.Amount ?? Fractions.Fraction.Zero))!;

        HingeFit Try(Worked? plate)
        {
            var distance = usual ?? ToSuit(plate);
            Worked comes;
            if (hinge.KeepsGap)
                comes = (plate! - distance - constant).As("gap that it gives", "hinge/gap");
            else
                comes = (plate is null || plate.Amount.IsZero ? constant + distance : constant + distance - plate).As("overlay that it gives", "hinge/overlay");
            return new(wanted, comes, distance, Centre(hinge, distance), plate);
        }

        // What the overlay asks for, on the cutting step, within the hinge's range.
        Worked ToSuit(Worked? plate)
        {
            var asked = hinge.KeepsGap
                ? plate! - constant - wanted
                : plate is null || plate.Amount.IsZero ? wanted - constant : wanted - constant + plate;
            Worked least = Entered(hinge, "cup/leastDistance", "least boring distance", cup.LeastDistance);
            Worked greatest = Entered(hinge, "cup/greatestDistance", "greatest boring distance", cup.GreatestDistance);
            var stepped = asked.On(standard[Settings.Step], StepDirection.Nearest);
            Worked within = stepped.Amount < least.Amount ? new Chosen("the hinge is bored no nearer to the edge", least, stepped)
                : stepped.Amount > greatest.Amount ? new Chosen("the hinge is bored no further from the edge", greatest, stepped)
                : stepped;
            return within.As("boring distance", "hinge/distance");
        }
    }

    private static Worked WithinRange(HingeKind hinge, Worked wanted)
    {
        var what = hinge.KeepsGap ? "gap" : "overlay";
        // A hinge is told by its range, or by the law of its cup.
        var least = Entered(hinge, "least", $"least {what} of the hinge", hinge.Least!.Value);
        var greatest = Entered(hinge, "greatest", $"greatest {what} of the hinge", hinge.Greatest!.Value);
        return wanted.Amount < least.Amount ? least : wanted.Amount > greatest.Amount ? greatest : wanted;
    }

    private static Worked Centre(HingeKind hinge, Worked distance) =>
        (distance + (Entered(hinge, "cup/diameter", "cup", hinge.Cup!.Diameter) / 2)).As("centre of the cup from the edge", "hinge/cup.centre");

    internal static Given Entered(HingeKind hinge, string field, string label, LengthEntry entry) =>
        new($"hinge/{field}", label, entry.Value, new(OriginKind.Standard, $"standard/hinges/{hinge.Id}/{field}"));
}
