using System.Text.Json.Nodes;

namespace Stilewright.Cli.Tests;

/// <summary>A course that is still being measured: bench 3 lacks a height and a whole opening, bench 5 all but a diagonal.</summary>
public sealed class UnmeasuredTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    private string HalfMeasured() => HalfMeasured(folder.Sample());

    private static string HalfMeasured(string course)
    {
        var file = JsonNode.Parse(File.ReadAllText(course))!;
        Opening("display-doors")["readings"] = new JsonObject { ["widthTop"] = "33 3/4", ["widthMiddle"] = "33 11/16" };
        Opening("display-back-hole").Remove("readings");
        Opening("vanity-tilt")["readings"] = new JsonObject { ["rising"] = "26 7/8" };
        File.WriteAllText(course, file.ToJsonString());
        return course;

        JsonObject Opening(string id) => file["projects"]!.AsArray().SelectMany(project => project!["pieces"]!.AsArray())
            .SelectMany(piece => piece!["faces"]!.AsArray()).SelectMany(face => face!["openings"]?.AsArray() ?? [])
            .Select(opening => opening!.AsObject()).Single(opening => (string)opening["id"]! == id);
    }

    [Fact]
    public void Check_says_which_reading_is_missing_and_what_to_do()
    {
        var ran = Ran.With("check", HalfMeasured());
        Assert.Equal(ExitCode.CannotBuild, ran.Code);
        Assert.Contains("CANNOT BE BUILT: 3·1 (display-doors), readings/heightLeft. Its height is not read yet", ran.Output, StringComparison.Ordinal);
        Assert.Contains("CANNOT BE BUILT: 3·3 (display-back-hole), readings. Neither its width nor its height is read yet", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Diagonals alone make no size.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("5·2 (vanity-doors), column. Column vanity is kept in line without 5·1", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sizes", "3·1 Glass doors", "opening  not measured yet, height not read; width at the top 33 3/4; width in the middle 33 11/16")]
    [InlineData("sheet", "3·1 Glass doors", "front    size not known yet, overlay")]
    [InlineData("cutlist", "3·2·TR", "5·2L·TR")]
    [InlineData("draw", "display-front", "display-back")]
    public void Every_other_front_is_told_beside_what_is_known(string verb, params string[] told)
    {
        var ran = Ran.With(verb, HalfMeasured());
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Empty(ran.Error);
        Assert.All(told, text => Assert.Contains(text, ran.Output, StringComparison.Ordinal));
        Assert.DoesNotContain("3·1L", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("display-front", "3·2")]
    [InlineData("display-back", "3·3")]
    public void A_face_is_drawn_with_what_is_known(string face, string label)
    {
        var ran = Ran.With("draw", HalfMeasured(), face);
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains(label, ran.Output, StringComparison.Ordinal);
        Assert.Contains("not measured yet, ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_packet_is_printed_and_tells_what_is_left_out()
    {
        var course = HalfMeasured();
        var ran = Ran.With("packet", course, "--bench", "3", "--out", folder.File("bench-3.pdf"));
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.True(File.Exists(folder.File("bench-3.pdf")));
        Assert.Contains("Nothing has changed", Ran.With("changes", course, folder.File("bench-3.handed-out.json")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_handed_out_of_a_front_that_is_measured_anew_is_withheld()
    {
        var sample = folder.Sample();
        Assert.Equal(ExitCode.Good, Ran.With("packet", sample, "--bench", "3", "--out", folder.File("bench-3.pdf")).Code);
        Assert.Contains("3·1L·TR top rail, arched: withheld now", Ran.With("changes", HalfMeasured(sample), folder.File("bench-3.handed-out.json")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_says_that_there_is_nothing_yet()
    {
        var ran = Ran.With("work", HalfMeasured(), "5.1");
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains("front 5·1 Tilt-out has no figures yet. `stilewright check` tells what is missing.", ran.Error, StringComparison.Ordinal);
    }
}
