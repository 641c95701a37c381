using System.Text.Json;
using Stilewright.Cli.Files;
using Stilewright.Documents;
using Stilewright.Prints;

namespace Stilewright.Cli.Tests;

public sealed class ChangesTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Nothing_changed_is_said_with_the_code_of_success()
    {
        var course = folder.Small();
        var ran = Ran.With("changes", course, HandOut(course));
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Contains("changes since the packet of bench 7 was handed out, 2026-03-14 18:05 UTC", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Nothing has changed: 10 parts are as handed out.", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("revision", ran.Output, StringComparison.Ordinal);
    }

    // Arithmetic: with an opening of 24 each leaf is 1/8 wider, and so are its rails: 8 9/16 becomes 8 11/16.
    [Fact]
    public void A_new_reading_is_told_for_each_part_with_a_code_of_its_own()
    {
        var handedOut = HandOut(folder.Small());
        var ran = Ran.With("changes", folder.Small(width: "24"), handedOut);
        Assert.Equal(ExitCode.Changed, ran.Code);
        Assert.Contains("7·1L·TR top rail: handed out at 2 1/4 × 8 9/16 in, now 2 1/4 × 8 11/16 in (finished)", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("stile", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Bench 7, Hall, lower: handed out from revision ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("≈217.5 mm, now ≈57.2 × ≈220.7 mm", Ran.With("changes", folder.Small(width: "24"), handedOut, "--mm").Output, StringComparison.Ordinal);
        Assert.Contains("≈8 5/8 in, now 2 1/4 × ≈8 3/4 in", Ran.With("changes", folder.Small(width: "24"), handedOut, "--finest", "8").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_accepted_hazard_is_another_revision_and_changes_no_part()
    {
        var handedOut = HandOut(folder.Small());
        const string accepted = """[ { "rule": "rail.short-for-coping", "place": "hall-lower", "reason": "In the sled." } ]""";
        var ran = Ran.With("changes", folder.Small(accepted: accepted), handedOut);
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("without a change to a part", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Bench 7, Hall, lower: handed out from revision ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_another_course_is_refused()
    {
        var course = folder.Small();
        var handedOut = HandOut(course);
        File.WriteAllText(course, File.ReadAllText(course).Replace("\"id\": \"small\"", "\"id\": \"spring\"", StringComparison.Ordinal));
        var ran = Ran.With("changes", course, handedOut);
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains("was handed out of the course small", ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public void Every_fault_of_the_file_is_told()
    {
        var course = folder.Small();
        var handedOut = HandOut(course);
        File.WriteAllText(handedOut, File.ReadAllText(handedOut).Replace("8 9/16 in", "long", StringComparison.Ordinal));
        var ran = Ran.With("changes", course, handedOut);
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains("$.projects[0].parts[", ran.Error, StringComparison.Ordinal);
        Assert.True(ran.Error.Split("the length \"long\" cannot be read").Length > 4);
        Assert.Contains("this is another kind of file, stilewright/course", Ran.With("changes", course, course).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_stands_beside_the_packet_and_is_not_replaced_unasked()
    {
        Assert.Equal(folder.File("bench-3.handed-out.json"), HandedOutFile.Beside(folder.File("bench-3.pdf")));
        var course = folder.Small();
        var path = HandOut(course);
        Assert.Throws<RefusalException>(() => HandedOutFile.Write(path, HandedOutFile.Read(path), replace: false));
        HandedOutFile.Write(path, HandedOutFile.Read(path) with { Program = "9.9.9" }, replace: true);
        Assert.Contains("Program: handed out by version 9.9.9, now version", Ran.With("changes", course, path).Output, StringComparison.Ordinal);
        Assert.Equal(["small.handed-out.json", "small.json"], Directory.GetFiles(Path.GetDirectoryName(path)!).Select(Path.GetFileName).Order());
    }

    [Fact]
    public void Check_and_schema_know_the_kind()
    {
        Assert.Contains("sound record of what was handed out: packet of bench 7.", Ran.With("check", HandOut(folder.Small())).Output, StringComparison.Ordinal);
        using var schema = JsonDocument.Parse(Ran.With("schema", "handed-out").Output);
        Assert.Equal("stilewright/handed-out", schema.RootElement.GetProperty("properties").GetProperty("format").GetProperty("const").GetString());
    }

    [Fact]
    public void Help_tells_the_verb_its_example_and_its_code()
    {
        var help = Ran.With("changes", "--help").Output;
        Assert.Contains("stilewright changes evening-course.json bench-3.handed-out.json", help, StringComparison.Ordinal);
        Assert.Contains("4   changes: something is no longer as it was handed out", help, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUse, Ran.With("changes", folder.Small()).Code);
    }

    private static string HandOut(string course)
    {
        var breakdown = CourseFile.Open(course);
        var path = HandedOutFile.Beside(Path.ChangeExtension(course, "pdf"));
        HandedOutFile.Write(path, HandedOut.Of(breakdown, breakdown.Projects, HandedOutExtent.Benches, Fingerprint.Of(breakdown), ProgramVersion.Text,
            new(2026, 3, 14, 18, 5, 0, TimeSpan.Zero)), replace: false);
        return path;
    }
}
