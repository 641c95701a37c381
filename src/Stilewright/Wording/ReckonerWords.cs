using System.Globalization;
using Stilewright.Measure;
using Stilewright.Wood;

namespace Stilewright.Wording;

/// <summary>What the reckoner of moisture and movement says.</summary>
public static class ReckonerWords
{
    public const string AirSource = "FPL-GTR-190 (2010), Equation 4-5, one for all species";

    public const string Mixed = "Rings that are neither flat nor quarter are reckoned as flat, which likely overestimates it (FPL-GTR-190, p. 13-17).";

    /// <summary>Air and the moisture it brings wood to, as a sentence.</summary>
    public static string Air(double fahrenheit, double humidity, double moisture) => string.Create(CultureInfo.InvariantCulture,
        $"Wood in air of {fahrenheit:0.#} °F ({EquilibriumMoisture.Celsius(fahrenheit):0.#} °C) and {humidity:0.#} % relative humidity comes to {moisture:0.0} % moisture.");

    /// <summary>What a width does, as a sentence.</summary>
    public static string Moved(ReckonedMovement moved, TradeWords words)
    {
        ArgumentNullException.ThrowIfNull(moved);
        ArgumentNullException.ThrowIfNull(words);
        var change = moved.Change.Amount.IsNegative ? $"{words.Of(Length.FromInches(-moved.Change.Amount))} narrower" : $"{words.Of(moved.Change)} wider";
        return $"{moved.Species.Name}, {WoodWords.Rings(moved.Rings)}, {words.Of(moved.Width)} wide at {WoodWords.Percent(moved.From.Amount)}: at {WoodWords.Percent(moved.To.Amount)} {change}, {words.Of(moved.After)} ({words.Unit}).";
    }
}
