using CsCheck;
using Stilewright.Teaching;

namespace Stilewright.Tests.Teaching;

public class SplitMix64Tests
{
    /// <summary>Published check values: Rosetta Code, "Pseudo-random numbers/Splitmix64", for the seed 1234567.</summary>
    [Fact]
    public void Gives_the_published_row()
    {
        var random = new SplitMix64(1234567);
        Assert.Equal(
            [6457827717110365317UL, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821],
            Enumerable.Range(0, 5).Select(_ => random.Next()));
    }

    [Fact]
    public void Stays_within_its_bounds() => Gen.Select(Gen.ULong, Gen.Int[1, 1000]).Sample((seed, bound) =>
    {
        var random = new SplitMix64(seed);
        for (var i = 0; i < 20; i++)
            Assert.InRange(random.Below(bound), 0, bound - 1);
    });

    [Fact]
    public void Every_number_comes_about_as_often()
    {
        var random = new SplitMix64(1);
        var counts = new int[7];
        for (var i = 0; i < 70_000; i++)
            counts[random.Below(7)]++;
        // Ten standard deviations of a count are 926.
        Assert.All(counts, count => Assert.InRange(count, 9_000, 11_000));
    }

    [Fact]
    public void Branches_of_one_seed_differ()
    {
        var rows = from level in Enumerable.Range(1, 6) from bench in Enumerable.Range(1, 60) select SplitMix64.Of(7, (ulong)level, (ulong)bench).Next();
        Assert.Equal(360, rows.Distinct().Count());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    public void Refuses_a_bound_that_leaves_nothing(int bound) => Assert.Throws<ArgumentOutOfRangeException>(() => new SplitMix64(1).Below(bound));
}
