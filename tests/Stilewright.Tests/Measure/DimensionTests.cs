using Stilewright.Measure;

namespace Stilewright.Tests.Measure;

public class DimensionTests
{
    [Fact]
    public void Products_and_quotients_add_and_subtract_powers()
    {
        Assert.Equal(Dimension.Area, Dimension.Length * Dimension.Length);
        Assert.Equal(Dimension.Volume, Dimension.Area * Dimension.Length);
        Assert.Equal(Dimension.Moment, Dimension.Weight * Dimension.Length);
        Assert.Equal(Dimension.Length, Dimension.Moment / Dimension.Weight);
        Assert.Equal(Dimension.Ratio, Dimension.Length / Dimension.Length);
        Assert.Equal("length^-1 weight^1 angle^0 moisture^0 temperature^0 money^0", (Dimension.Weight / Dimension.Length).ToString());
        Assert.Equal([0, 1, 2, 3, 1, -1], new[] { Dimension.Ratio, Dimension.Length, Dimension.Area, Dimension.Volume, Dimension.Moment, Dimension.Money / Dimension.Length }
            .Select(dimension => dimension.PowerOfLength));
    }

    [Fact]
    public void Counts_stay_counts_only_among_counts()
    {
        Assert.Equal(Dimension.Count, Dimension.Count * Dimension.Count);
        Assert.Equal(Dimension.Length, Dimension.Count * Dimension.Length);
        Assert.Equal(Dimension.Ratio, Dimension.Count / Dimension.Count);
        Assert.Equal(Dimension.Count, Dimension.OfSum(Dimension.Count, Dimension.Count));
        Assert.Equal(Dimension.Ratio, Dimension.OfSum(Dimension.Count, Dimension.Ratio));
        Assert.True(Dimension.Count.IsPlainNumber);
        Assert.True(default(Dimension).IsPlainNumber);
        Assert.False(Dimension.Length.IsPlainNumber);
    }

    [Fact]
    public void Only_like_goes_with_like()
    {
        Dimension[] all =
        [
            Dimension.Length, Dimension.Area, Dimension.Volume, Dimension.Weight, Dimension.Moment, Dimension.Angle,
            Dimension.Moisture, Dimension.Temperature, Dimension.Money, Dimension.Ratio,
        ];
        Assert.Equal(all.Length, all.Distinct().Count());
        Assert.Equal(all.Length, all.Select(dimension => dimension.ToString()).Distinct().Count());
        foreach (var one in all)
        {
            Assert.Equal(one, Dimension.OfSum(one, one));
            foreach (var other in all.Where(other => other != one))
            {
                var error = Assert.Throws<ArgumentException>(() => Dimension.OfSum(one, other));
                Assert.Contains(one.ToString(), error.Message, StringComparison.Ordinal);
                Assert.Contains(other.ToString(), error.Message, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Square_roots_halve_even_powers()
    {
        Assert.Equal(Dimension.Length, Dimension.Area.SquareRoot());
        Assert.Equal(Dimension.Ratio, Dimension.Ratio.SquareRoot());
        Assert.Contains("volume", Assert.Throws<ArgumentException>(() => Dimension.Volume.SquareRoot()).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Dimension.Weight.SquareRoot());
    }
}
