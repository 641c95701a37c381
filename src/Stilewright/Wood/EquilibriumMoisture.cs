namespace Stilewright.Wood;

/// <summary>The moisture content that wood comes to in air of a temperature and a humidity, and the other way round.</summary>
/// <remarks>FPL-GTR-190 (2010), Equation 4-5, after Hailwood and Horrobin; one equation for any species. The handbook's Table 4-2 is
/// made from it, for 30 to 270 °F.</remarks>
public static class EquilibriumMoisture
{
    /// <summary>Two humidities closer than this, % RH, are one.</summary>
    private const double SameHumidity = 1e-9;

    /// <summary>Equilibrium moisture content, % of the oven-dry weight.</summary>
    /// <param name="fahrenheit">Temperature of the air, °F.</param>
    /// <param name="humidity">Relative humidity, %, 0 to 100.</param>
    /// <exception cref="ArgumentOutOfRangeException">The humidity is outside 0 to 100 %.</exception>
    public static double Percent(double fahrenheit, double humidity)
    {
        if (humidity is not (>= 0 and <= 100))
            throw new ArgumentOutOfRangeException(nameof(humidity), humidity, "A relative humidity is from 0 to 100 %.");
        var t = Celsius(fahrenheit);
        var h = humidity / 100;
        var w = 349 + (1.29 * t) + (0.0135 * t * t);
        var k = 0.805 + (0.000736 * t) - (0.00000273 * t * t);
        var k1 = 6.27 - (0.00938 * t) - (0.000303 * t * t);
        var k2 = 1.91 + (0.0407 * t) - (0.000293 * t * t);
        var kh = k * h;
        return 1800 / w * ((kh / (1 - kh)) + (((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh))));
    }

    /// <summary>The relative humidity, %, that holds wood at a moisture content; null where none up to 100 % does.</summary>
    /// <param name="percent">Moisture content, %.</param>
    public static double? Humidity(double fahrenheit, double percent)
    {
        if (percent < 0 || percent > Percent(fahrenheit, 100))
            return null;
        // Moisture rises with humidity at every temperature, so halving finds it.
        var (low, high) = (0.0, 100.0);
        while (high - low > SameHumidity)
        {
            var middle = (low + high) / 2;
            if (Percent(fahrenheit, middle) < percent)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    public static double Celsius(double fahrenheit) => (fahrenheit - 32) * 5 / 9;

    public static double Fahrenheit(double celsius) => (celsius * 9 / 5) + 32;
}
