using CsCheck;
using Stilewright.Drawing.Writing;

namespace Stilewright.Drawing.Tests.Writing;

public sealed class ReadAheadTests
{
    // A sequence that is never given back would hold a test run for ever.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    [Fact]
    public void Items_come_in_their_order_and_at_most_so_many_are_held() =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[1, 6]).Sample(
            (count, most) =>
            {
                var (asked, given) = (0, 0);
                IEnumerable<int> Source()
                {
                    for (var i = 0; i < count; i++)
                    {
                        Interlocked.Increment(ref asked);
                        yield return i;
                    }
                }

                List<int> read = [];
                foreach (var item in ReadAhead.Of(Source(), most))
                {
                    // Those held, the one that waits for room, and the one in the reader's hands.
                    Assert.True(Volatile.Read(ref asked) <= given + most + 2);
                    given++;
                    read.Add(item);
                }

                Assert.Equal(Enumerable.Range(0, count), read);
            },
            iter: 60);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(20)]
    public void What_the_sequence_throws_comes_in_its_place(int before)
    {
        IEnumerable<int> Source()
        {
            for (var i = 0; i < before; i++)
                yield return i;
            throw new InvalidDataException("the third door");
        }

        List<int> read = [];
        var thrown = Assert.Throws<InvalidDataException>(() =>
        {
            foreach (var item in ReadAhead.Of(Source(), 4))
            {
                // Time for the sequence to have thrown long before.
                Thread.Sleep(1);
                read.Add(item);
            }
        });
        Assert.Equal("the third door", thrown.Message);
        Assert.Equal(Enumerable.Range(0, before), read);

        // The place in the sequence, not only that in the reader, is told.
        Assert.Contains(nameof(What_the_sequence_throws_comes_in_its_place), thrown.StackTrace, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(1, 4)]
    [InlineData(10, 4)]
    public async Task Leaving_early_stops_and_gives_back_the_sequence(int taken, int most)
    {
        var (asked, disposals) = (0, 0);
        IEnumerable<int> Source()
        {
            try
            {
                while (true)
                    yield return Interlocked.Increment(ref asked);
            }
            finally
            {
                Interlocked.Increment(ref disposals);
            }
        }

        var read = await Task.Run(() => ReadAhead.Of(Source(), most).Take(taken).ToList()).WaitAsync(Patience);
        Assert.Equal(Enumerable.Range(1, taken), read);
        Assert.Equal(taken == 0 ? 0 : 1, disposals);
        var until = asked;
        Assert.InRange(until, taken, taken + most + 1);
        await Task.Delay(20);
        Assert.Equal(until, asked);
    }

    [Fact]
    public async Task A_reader_that_throws_still_ends_the_sequence()
    {
        var disposals = 0;
        IEnumerable<int> Source()
        {
            try
            {
                for (var i = 0; ; i++)
                    yield return i;
            }
            finally
            {
                Interlocked.Increment(ref disposals);
            }
        }

        await Assert.ThrowsAsync<InvalidOperationException>(() => Task.Run(() =>
        {
            foreach (var item in ReadAhead.Of(Source(), 4))
            {
                if (item == 2)
                    throw new InvalidOperationException();
            }
        }).WaitAsync(Patience));
        Assert.Equal(1, disposals);
    }

    [Fact]
    public void Nothing_is_asked_for_before_the_first_is_read()
    {
        var asked = 0;
        IEnumerable<int> Source()
        {
            asked++;
            yield return 1;
        }

        var ahead = ReadAhead.Of(Source(), 4);
        Assert.Equal(0, asked);
        Assert.Equal([1], ahead);
    }

    [Fact]
    public async Task Many_at_once_do_not_wait_for_one_another()
    {
        // Sequences within sequences, as many as there may be threads and more.
        var sums = Enumerable.Range(0, 64).Select(_ => Task.Run(() =>
            ReadAhead.Of(ReadAhead.Of(Enumerable.Range(0, 50), 2).Select(item => item + 1), 3).Sum()));
        Assert.All(await Task.WhenAll(sums).WaitAsync(Patience), sum => Assert.Equal(1275, sum));
    }
}
