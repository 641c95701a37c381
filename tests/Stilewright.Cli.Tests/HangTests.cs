using System.Text.Json;
using System.Xml.Linq;

namespace Stilewright.Cli.Tests;

/// <summary>The pair 7·1 of the small course on cup hinges whose overlay is built in: leaves of 12 3/16 × 30 1/4 in, 3/8 overlay.</summary>
public sealed class HangTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    private string Course(string hinge = "example-cup-compact") => folder.Write("hung.json", File.ReadAllText(folder.Small())
        .Replace("\"unit\": \"in\"", $"\"unit\": \"in\", \"overrides\": {{ \"hinge.usual\": \"{hinge}\" }}", StringComparison.Ordinal));

    // 3 1/8 from each end, so 30 1/4 − 3 1/8 from the other; 3/8 less the hinge's 6.5 mm is 0.119 in, 1/8 on the cutting step.
    [Fact]
    public void Hinges_are_listed_with_count_reason_places_and_distance()
    {
        var ran = Ran.With("hang", Course());
        Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Error));
        Assert.Contains("7·1L, left-hand door: Cup, overlay built in (example)", ran.Output, StringComparison.Ordinal);
        Assert.Contains("7·1R, right-hand door", ran.Output, StringComparison.Ordinal);
        Assert.Contains("2 hinges. Chart by height and weight. hinges by height to 900 mm: 2", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Boring distance 1/8, centre of the cup ≈13/16", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Seen from the back its hinge edge is the right one. Either way round will do", ran.Output, StringComparison.Ordinal);
        Assert.Matches(@"1 +3 1/8 +27 1/8 +L1 from the top", ran.Output);
        Assert.Matches(@"2 +27 1/8 +3 1/8 +R1 from the bottom", ran.Output);
        Assert.DoesNotContain("30 1/4 − 3 1/8", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_and_steps_are_told_when_asked_for()
    {
        var ran = Ran.With("hang", Course(), "--leaf", "7.1L", "--work", "--steps");
        Assert.Contains("30 1/4 − 3 1/8 = 27 1/8", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Ledger: Clamp a straight ledger to the frame, its upper edge 3/8 in below the opening", ran.Output, StringComparison.Ordinal);
        Assert.Contains("and no further: a stripped hole holds nothing", ran.Output, StringComparison.Ordinal);
        Assert.Contains("29 CFR 1910.213", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Bumpers", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("7·1R", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_holds_exact_fractions_of_inches()
    {
        var leaf = JsonDocument.Parse(Ran.With("hang", Course(), "--json").Output).RootElement.GetProperty("leaves")[0];
        Assert.Equal(("7·1L", "left", "right", 2), (leaf.GetProperty("leaf").GetString(), leaf.GetProperty("hinged").GetString(), leaf.GetProperty("edgeSeenFromBack").GetString(), leaf.GetProperty("count").GetInt32()));
        Assert.Equal("1/8", leaf.GetProperty("boringDistance").GetString());
        var place = leaf.GetProperty("places")[0];
        Assert.Equal(("25/8", "217/8"), (place.GetProperty("fromTop").GetString(), place.GetProperty("fromBottom").GetString()));
        Assert.Equal("L1", place.GetProperty("stops")[0].GetProperty("stop").GetString());
    }

    // From the back the hinge edge of a left-hand door is the right one.
    [Theory]
    [InlineData("right", "3 1/8,27 1/8", null, ExitCode.Good, "It is bored right: a door hinged on its left")]
    [InlineData("left", "3 1/8,27 1/8", null, ExitCode.BoredWrong, "It is bored as a door hinged on its right")]
    [InlineData("left", "3 1/8,27 1/8", null, ExitCode.BoredWrong, "Turn it end for end: it looks the same, and its cups come right.")]
    [InlineData("left", "3 1/8,27 1/8", null, ExitCode.BoredWrong, "Use it as 7·1R")]
    [InlineData("right", "3 1/8,27 1/8", "13/16", ExitCode.BoredWrong, "was set as the boring distance")]
    [InlineData("right", "3 5/8,27 5/8", null, ExitCode.BoredWrong, "All cups are 1/2 in too low")]
    public void What_is_bored_is_told_as_the_door_that_it_now_is(string edge, string at, string? distance, int code, string says)
    {
        var ran = Ran.With(["bored", Course(), "7.1L", "--edge", edge, "--at", at, .. distance is null ? Array.Empty<string>() : ["--distance", distance]]);
        Assert.Equal((code, ""), (ran.Code, ran.Error));
        Assert.Contains(says, ran.Output, StringComparison.Ordinal);
    }

    // Seen from the front and measured from the bottom the same borings are the same door.
    [Fact]
    public void Face_and_end_are_heard()
    {
        Assert.Equal(ExitCode.Good, Ran.With("bored", Course(), "7.1L", "--edge", "left", "--seen-from", "front", "--from", "bottom", "--at", "27 1/8,3 1/8").Code);
    }

    [Theory]
    [InlineData("--edge takes left or right; name the edge", "--at", "3 1/8")]
    [InlineData("--edge takes left or right, not \"top\"", "--edge", "top", "--at", "3 1/8")]
    [InlineData("--at takes the distance of each cup", "--edge", "left")]
    [InlineData("--at takes a length", "--edge", "left", "--at", "3 1/8,far")]
    [InlineData("99 in is no place on 7·1L, which is 30 1/4 in high", "--edge", "left", "--at", "3 1/8,99")]
    [InlineData("Two cups have one distance", "--edge", "left", "--at", "3,3")]
    [InlineData("--seen-from takes front or back", "--edge", "left", "--at", "3", "--seen-from", "above")]
    public void A_reading_that_cannot_be_is_refused_with_its_fix(string says, params string[] options)
    {
        var ran = Ran.With(["bored", Course(), "7.1L", .. options]);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_no_hinges_or_no_cups_is_told()
    {
        var small = folder.Small();
        foreach (var ran in new[] { Ran.With("hang", small), Ran.With("bored", small, "7.1L", "--edge", "left", "--at", "3"), Ran.With("draw", small, "7.1L", "--view", "boring") })
        {
            Assert.Equal(ExitCode.WrongUse, ran.Code);
            Assert.Contains("hinge.usual", ran.Error, StringComparison.Ordinal);
        }

        Assert.Contains("no cups", Ran.With("bored", Course("example-wrap-around"), "7.1L", "--edge", "left", "--at", "3").Error, StringComparison.Ordinal);
        Assert.Contains("--json writes everything", Ran.With("hang", Course(), "--json", "--work").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boring_sheet_is_drawn()
    {
        var path = folder.File("boring.svg");
        var ran = Ran.With("draw", Course(), "7.1L", "--view", "boring", "--out", path);
        Assert.Equal(ExitCode.Good, ran.Code);
        var text = XDocument.Load(path).ToString();
        Assert.Contains("LEFT-HAND DOOR", text, StringComparison.Ordinal);
        Assert.Contains("its hinge edge is the right one", text, StringComparison.Ordinal);
    }
}
