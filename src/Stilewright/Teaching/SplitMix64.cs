namespace Stilewright.Teaching;

/// <summary>A small generator of random numbers that gives the same row from the same seed on every machine and under every version.</summary>
/// <remarks>
/// SplitMix64: G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014, in the form that
/// S. Vigna published. The library's own generator does not promise the same row over versions. Not for secrets.
/// </remarks>
public sealed class SplitMix64(ulong seed)
{
    private const ulong GoldenGamma = 0x9E3779B97F4A7C15;

    private ulong state = seed;

    /// <summary>A row of its own for each combination of numbers, such as seed, level and bench.</summary>
    public static SplitMix64 Of(ulong seed, params ReadOnlySpan<ulong> branch)
    {
        foreach (var number in branch)
            seed = new SplitMix64(seed ^ number).Next();
        return new(seed);
    }

    /// <summary>The next 64 bits.</summary>
    public ulong Next()
    {
        unchecked
        {
            state += GoldenGamma;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A whole number from 0 up to, but not, <paramref name="bound"/>, each as likely as any other.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="bound"/> is not positive.</exception>
    public int Below(int bound)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(bound);
        // The last, incomplete turn through the numbers would make the low ones likelier.
        var limit = ulong.MaxValue - ulong.MaxValue % (ulong)bound;
        ulong drawn;
        do
        {
            drawn = Next();
        }
        while (drawn >= limit);

        return (int)(drawn % (ulong)bound);
    }

    /// <summary>A whole number from the least to the most, both included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The most is below the least.</exception>
    public int Between(int least, int most) => least + Below(most - least + 1);

    /// <exception cref="ArgumentOutOfRangeException">There is none.</exception>
    public T OneOf<T>(IReadOnlyList<T> some) => some[Below(some.Count)];

    /// <summary>Each is kept or left out, like a coin for each.</summary>
    public IEnumerable<T> SomeOf<T>(IEnumerable<T> all)
    {
        foreach (var each in all)
        {
            if (Below(2) == 0)
                yield return each;
        }
    }
}
