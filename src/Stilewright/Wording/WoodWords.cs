using System.Globalization;
using Fractions;
using Stilewright.Findings;
using Stilewright.Measure;
using Stilewright.Shop;
using Stilewright.Wood;

namespace Stilewright.Wording;

/// <summary>What is said of wood that moves and of what it weighs.</summary>
public static class WoodWords
{
    private const decimal KilogramsPerPound = 0.45359237m;
    private const decimal SquareInchesPerFoot = 144;
    private const decimal SquareInchesPerMetre = 1_000_000m / 25.4m / 25.4m;

    public static string Percent(Fraction percent) => $"{percent.ToDecimal().ToString("0.#", CultureInfo.InvariantCulture)} %";

    public static string Pounds(Fraction pounds) =>
        $"{pounds.ToDecimal().ToString("0.0", CultureInfo.InvariantCulture)} lb ({(pounds.ToDecimal() * KilogramsPerPound).ToString("0.00", CultureInfo.InvariantCulture)} kg)";

    /// <summary>A face in square feet or square metres.</summary>
    public static string Area(Fraction squareInches, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{(squareInches.ToDecimal() / SquareInchesPerFoot).ToString("0.00", CultureInfo.InvariantCulture)} ft²"
        : $"{(squareInches.ToDecimal() / SquareInchesPerMetre).ToString("0.00", CultureInfo.InvariantCulture)} m²";

    /// <summary>A place that was measured off shapes, to 1/8 in or a millimetre.</summary>
    public static string About(double inches, LengthFormat format)
    {
        ArgumentNullException.ThrowIfNull(format);
        var step = format.Unit == LengthUnit.Inch ? Length.FromInches(new Fraction(1, 8)) : 1.Millimetres;
        return format.Print(Length.FromInches(Fraction.FromDoubleRounded(inches, 6)).OnStep(step, StepDirection.Nearest));
    }

    /// <summary>What a weight leaves out, to follow it; empty where it is whole.</summary>
    public static string Without(IReadOnlyList<string> unknown) =>
        unknown.Count == 0 ? "" : $", without {string.Join(" and ", unknown)}, of which nothing is known";

    public static string Moisture(ServiceMoisture moisture)
    {
        ArgumentNullException.ThrowIfNull(moisture);
        return $"Made at {Percent(moisture.Making.Amount)}; in service {Percent(moisture.Driest.Amount)} to {Percent(moisture.Wettest.Amount)}.";
    }

    /// <summary>Where the moisture contents come from, as a sentence.</summary>
    public static string MoistureSource(StandardInForce standard)
    {
        ArgumentNullException.ThrowIfNull(standard);
        var climate = ServiceMoisture.Of(standard).Climate ?? ClimateTable.Find(standard.Standard, ClimateTable.Usual)!;
        var making = standard.Find(Settings.Moisture).Origin;
        var typed = new[] { Settings.Driest, Settings.Wettest }.Select(setting => (setting, standard.Find(setting))).Where(each => each.Item2.Value.Text != Settings.AsTheClimate)
            .Select(each => $"{each.setting.Label} from the {each.Item2.Origin.Words}");
        return string.Join("; ", [$"Moisture at making from the {making.Words}{(making.Kind == OriginKind.Shipped ? $" ({Settings.Moisture.Source})" : "")}",
            $"climate {climate.Name} from the {standard.Find(Settings.Climate).Origin.Words} ({climate.Source ?? "no source given"})", .. typed]) + ".";
    }

    /// <summary>Where a wood's coefficients come from, with what they were held to.</summary>
    public static string MovementSource(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return species.Movement is not { } movement ? $"Nothing is known of how {species.Name} moves."
            : $"{species.Name}: tangential {Number(movement.Tangential)}, radial {Number(movement.Radial)} for each % of moisture; {movement.Source}{(movement.Check is { Length: > 0 } check ? $"; {check}" : "")}.";
    }

    public static string Rings(RingOrientation rings) => rings switch
    {
        RingOrientation.Quarter => "quartersawn",
        RingOrientation.Mixed => "rings mixed",
        _ => "flatsawn",
    };

    public static string Held(bool isPinned) => isPinned ? "pinned in its middle" : "free";

    /// <summary>Whether a panel fits, as a sentence without a subject.</summary>
    public static string Judged(PanelFit fit) => fit switch
    {
        { Bottoms: true, IsLoose: true } => "too wide at the wettest and too narrow at the driest.",
        { Bottoms: true } => "too wide at the wettest.",
        { IsLoose: true } => "too narrow at the driest.",
        { Wedges: true } => "its tongue is flat for less than its edge enters.",
        _ => "fits through the year.",
    };

    /// <summary>Which widths work, or by how much none does and what would help.</summary>
    public static string Range(PanelFit fit, TradeWords words)
    {
        ArgumentNullException.ThrowIfNull(fit);
        ArgumentNullException.ThrowIfNull(words);
        return fit.Range switch
        {
            PanelRange.Some(var least, var greatest) => $"Widths that work at making: {words.Of(least)} to {words.Of(greatest)}.",
            PanelRange.None none => $"No width works: short by {words.Of(none.ShortBy)}. What would: {string.Join("; ", none.Remedies.Select(remedy => FindingText.Say(remedy.Advice, words.Format)))}.",
            _ => throw new InvalidOperationException("A range is some or none."),
        };
    }

    private static string Number(Fraction number) => number.ToDecimal().ToString("0.#####", CultureInfo.InvariantCulture);
}
