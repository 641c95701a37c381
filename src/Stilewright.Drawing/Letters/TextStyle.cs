namespace Stilewright.Drawing.Letters;

public enum Weight
{
    Regular,
    Strong,
}

/// <summary>Size and weight of text.</summary>
/// <param name="SizeMillimetres">Type size (em) in millimetres; capitals are 0.66 of it high.</param>
public sealed record TextStyle(double SizeMillimetres, Weight Weight = Weight.Regular)
{
    /// <summary>Notes and sources: capitals 1.8 mm high, about 8 points.</summary>
    public static TextStyle Small { get; } = new(2.8);

    /// <summary>Running text, about 10 points.</summary>
    public static TextStyle Body { get; } = new(3.5);

    /// <summary>Figures of dimensions and tables, read at arm's length: capitals 2.6 mm high, the 2.5 mm of ISO 3098 or more.</summary>
    public static TextStyle Figure { get; } = new(4);

    public static TextStyle Heading { get; } = new(4.8, Weight.Strong);

    public static TextStyle Title { get; } = new(7, Weight.Strong);

    public TextStyle Bold => this with { Weight = Weight.Strong };

    // What a record writes of itself would name Bold, which has a Bold.
    public override string ToString() => FormattableString.Invariant($"{SizeMillimetres} mm {Weight}");
}
