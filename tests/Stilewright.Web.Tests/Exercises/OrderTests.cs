using CsCheck;
using Microsoft.AspNetCore.WebUtilities;
using Stilewright.Measure;
using Stilewright.Teaching.Drills;
using Stilewright.Teaching.Worksheets;
using Stilewright.Web.Features.Drills;
using Stilewright.Web.Features.Worksheets;

namespace Stilewright.Web.Tests.Exercises;

/// <summary>An address holds all of what is wanted, so that a sheet on a maker's screen is the one on paper.</summary>
public sealed class OrderTests
{
    private static readonly Gen<WorksheetOrder> AnyWorksheets =
        from unit in Gen.Enum<LengthUnit>()
        from level in Gen.Int[1, 6]
        from seed in Gen.ULong[1, Seeds.Largest]
        from isRandom in Gen.Bool
        from features in Gen.Enum<ProblemFeature>().HashSet[0, 5]
        from changes in Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool)
        from step in Gen.Int[0, 3]
        from style in Gen.Enum<BlankStyle>()
        select new WorksheetOrder(unit, level, isRandom ? seed : null)
        {
            Features = isRandom && changes.Item1 ? [.. features.Order()] : null,
            Readings = isRandom && changes.Item2 ? WorksheetOrder.ReadingsFor(unit)[step] : null,
            Blanks = changes.Item3 ? style : null,
        };

    [Fact]
    public void Worksheets_are_read_from_their_address_as_they_were_wanted() => AnyWorksheets.Sample(order =>
    {
        var read = ReadWorksheets(order.Query, order.Unit);
        Assert.Equal((order.LevelNumber, order.Seed, order.Readings, order.Blanks), (read.LevelNumber, read.Seed, read.Readings, read.Blanks));
        Assert.Equal(order.Features, read.Features);
        Assert.Equal(order.Query, read.Query);
        Assert.Equal(order.Level.Words, read.Level.Words);
    }, iter: 300);

    [Theory]
    [InlineData("?level=9&seed=0&with=wings&readings=2&blanks=none", "?level=1&unit=in&seed=5&with=single")]
    [InlineData("?level=x&seed=-7&readings=", "?level=1&unit=in&seed=5")]
    [InlineData("?seed=999999999999999999999", "?level=1&unit=in&seed=5")]
    public void What_an_address_cannot_say_is_as_the_level_says(string query, string meant) => Assert.Equal(meant, ReadWorksheets(query, LengthUnit.Inch).Query);

    [Fact]
    public void Drills_are_read_from_their_address_as_they_were_wanted() => Gen.Select(
        Gen.Enum<LengthUnit>(), Gen.Int[0, 1], Gen.Enum<DrillKind>().HashSet[1, 7], Gen.ULong[1, Seeds.Largest]).Sample((unit, finest, kinds, seed) =>
    {
        var order = new DrillOrder(unit, DrillSettings.FinestOf(unit)[finest], [.. kinds.Order()], seed);
        var values = QueryHelpers.ParseQuery(order.Query);
        var read = DrillOrder.Read(unit, int.Parse(values["finest"]!, null), values.TryGetValue("kinds", out var some) ? some : (string?)null, values["seed"], 5);
        Assert.Equal(order.Query, read.Query);
        Assert.Equal(order.Kinds, read.Kinds);
    }, iter: 200);

    [Fact]
    public void Benches_are_left_out_and_put_back()
    {
        var none = new BenchesChosen(new HashSet<int>(), null);
        Assert.Equal([2, 5], none.With(5, false).With(2, false).LeftOut.Order());
        Assert.Empty(none.With(5, false).With(5, true).LeftOut);
        Assert.Equal(BenchesChosen.MostCount, BenchesChosen.Counted("5000"));
        Assert.Equal(1, BenchesChosen.Counted("-3"));
        Assert.Equal(BenchesChosen.UsualCount, BenchesChosen.Counted("many"));
    }

    private static WorksheetOrder ReadWorksheets(string query, LengthUnit unit)
    {
        var values = QueryHelpers.ParseQuery(query);
        string? Of(string name) => values.TryGetValue(name, out var value) ? (string?)value : null;
        return WorksheetOrder.Read(unit, int.TryParse(Of("level"), out var level) ? level : null, Of("from"), Of("seed"), Of("with"), Of("readings"), Of("blanks"), 5);
    }
}
