namespace Stilewright.Teaching.Worksheets;

/// <summary>The openings of one bench among all that the limits allow: widths and heights are numbered, mixed by the seed, and dealt out like cards.</summary>
/// <remarks>So no bench has to know what others have drawn. Numbers are mixed by n → (a n + c) mod count with a prime to the count, which hits each once.</remarks>
internal readonly struct OpeningShare
{
    /// <summary>How many benches the openings are dealt to; after them the row begins anew.</summary>
    public const int Shares = 100;

    // Sets the mixing apart from the rows of benches.
    private const ulong Branch = 0x0;

    private readonly int heights;
    private readonly int count;
    private readonly int first;
    private readonly long times;
    private readonly long plus;

    /// <param name="widths">How many widths there are; with the heights less than 2³¹ openings.</param>
    /// <param name="heights">How many heights there are.</param>
    /// <param name="bench">From 1.</param>
    public OpeningShare(int widths, int heights, ulong seed, int bench)
    {
        this.heights = heights;
        count = widths * heights;
        var random = SplitMix64.Of(seed, Branch, (ulong)count);
        do
            times = random.Between(1, count);
        while (System.Numerics.BigInteger.GreatestCommonDivisor(times, count) != 1);
        plus = random.Below(count);
        // Where there are fewer openings than shares, they are dealt again.
        first = (bench - 1) % Math.Min(Shares, count);
    }

    /// <summary>How many openings the bench has; at least one.</summary>
    public int Count => (count - first - 1) / Shares + 1;

    /// <summary>One of them, by the number of its width and of its height from 0.</summary>
    /// <param name="index">From 0, less than <see cref="Count"/>.</param>
    public (int Width, int Height) At(int index)
    {
        var number = (int)((times * (first + (long)index * Shares) + plus) % count);
        return (number / heights, number % heights);
    }
}
