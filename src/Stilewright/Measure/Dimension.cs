namespace Stilewright.Measure;

/// <summary>What a worked quantity measures, as powers of the base kinds; products and quotients follow from it.</summary>
/// <remarks>Base units: inch, pound, degree of angle, percent of moisture, degree Fahrenheit, unit of currency.
/// The default value is <see cref="Ratio"/>.</remarks>
public readonly record struct Dimension
{
    private readonly sbyte length, weight, angle, moisture, temperature, money;

    private Dimension(int length = 0, int weight = 0, int angle = 0, int moisture = 0, int temperature = 0, int money = 0, bool isCount = false)
    {
        this.length = (sbyte)length;
        this.weight = (sbyte)weight;
        this.angle = (sbyte)angle;
        this.moisture = (sbyte)moisture;
        this.temperature = (sbyte)temperature;
        this.money = (sbyte)money;
        IsCount = isCount;
    }

    public static Dimension Ratio => default;
    public static Dimension Count { get; } = new(isCount: true);
    public static Dimension Length { get; } = new(length: 1);
    public static Dimension Area { get; } = new(length: 2);
    public static Dimension Volume { get; } = new(length: 3);
    public static Dimension Weight { get; } = new(weight: 1);
    public static Dimension Moment { get; } = new(weight: 1, length: 1);
    public static Dimension Angle { get; } = new(angle: 1);
    public static Dimension Moisture { get; } = new(moisture: 1);
    public static Dimension Temperature { get; } = new(temperature: 1);
    public static Dimension Money { get; } = new(money: 1);

    /// <summary>True for whole numbers of things; a count times a count is a count, anything else with a count is not.</summary>
    public bool IsCount { get; private init; }

    /// <summary>How often length is a factor: 1 for a length or a moment, 2 for an area.</summary>
    public int PowerOfLength => length;

    /// <summary>True for ratios and counts, which have no unit.</summary>
    public bool IsPlainNumber => this with { IsCount = false } == Ratio;

    public static Dimension operator *(Dimension left, Dimension right) => new(
        left.length + right.length, left.weight + right.weight, left.angle + right.angle,
        left.moisture + right.moisture, left.temperature + right.temperature, left.money + right.money,
        left.IsCount && right.IsCount);

    public static Dimension operator /(Dimension left, Dimension right) => new(
        left.length - right.length, left.weight - right.weight, left.angle - right.angle,
        left.moisture - right.moisture, left.temperature - right.temperature, left.money - right.money);

    /// <summary>The dimension whose square this is: length for an area.</summary>
    /// <exception cref="ArgumentException">A power is odd.</exception>
    public Dimension SquareRoot()
    {
        ReadOnlySpan<sbyte> powers = [length, weight, angle, moisture, temperature, money];
        foreach (var power in powers)
        {
            if (power % 2 != 0)
                throw new ArgumentException($"The square root of a quantity of {this} is not a quantity.");
        }

        return new(length / 2, weight / 2, angle / 2, moisture / 2, temperature / 2, money / 2);
    }

    /// <summary>The dimension of a sum or difference of the two.</summary>
    /// <exception cref="ArgumentException">They do not measure the same thing.</exception>
    public static Dimension OfSum(Dimension left, Dimension right)
    {
        if (left == right)
            return left;
        if (left.IsPlainNumber && right.IsPlainNumber)
            return Ratio;
        throw new ArgumentException($"A quantity of {left} and one of {right} cannot be added, subtracted or compared.");
    }

    public override string ToString() => this switch
    {
        _ when this == Count => "count",
        _ when this == Ratio => "ratio",
        _ when this == Length => "length",
        _ when this == Area => "area",
        _ when this == Volume => "volume",
        _ when this == Weight => "weight",
        _ when this == Moment => "moment",
        _ when this == Angle => "angle",
        _ when this == Moisture => "moisture",
        _ when this == Temperature => "temperature",
        _ when this == Money => "money",
        _ => $"length^{length} weight^{weight} angle^{angle} moisture^{moisture} temperature^{temperature} money^{money}",
    };
}
