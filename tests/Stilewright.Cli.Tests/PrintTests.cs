using Stilewright.Cli.Files;
using Stilewright.Documents;
using Stilewright.Shop;

namespace Stilewright.Cli.Tests;

public sealed class PrintTests : IDisposable
{
    private readonly Folder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_packet_is_written_with_a_record_of_what_it_tells()
    {
        var course = folder.Sample();
        var ran = Ran.With("packet", course, "--bench", "2", "--out", folder.File("two.pdf"));
        Assert.Equal((ExitCode.Good, ""), (ran.Code, ran.Output));
        Assert.Contains("packet of bench 2, ", ran.Error, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", File.ReadAllText(folder.File("two.pdf")), StringComparison.Ordinal);
        var record = HandedOutFile.Read(folder.File("two.handed-out.json"));
        Assert.Equal((2, 23), (Assert.Single(record.Projects).Bench, record.PartCount));
        Assert.Equal(ExitCode.Good, Ran.With("changes", course, folder.File("two.handed-out.json")).Code);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(course)!, "*.part"));
    }

    [Fact]
    public void The_same_course_and_time_give_the_same_bytes()
    {
        var course = folder.Small();
        var clock = new FixedClock(new(2026, 3, 14, 18, 5, 0, TimeSpan.Zero));
        foreach (var name in new[] { "one.pdf", "other.pdf" })
            Assert.Equal(ExitCode.Good, Ran.At(clock, default, "packet", course, "--story-sticks", "--out", folder.File(name)).Code);
        Assert.Equal(File.ReadAllBytes(folder.File("one.pdf")), File.ReadAllBytes(folder.File("other.pdf")));
        Assert.Equal(File.ReadAllBytes(folder.File("one.handed-out.json")), File.ReadAllBytes(folder.File("other.handed-out.json")));
    }

    [Fact]
    public void A_packet_has_worksheets_and_their_key_only_where_they_are_asked_for()
    {
        var course = folder.Sample();
        int Sheets(string name, params string[] more)
        {
            var ran = Ran.With(["packet", course, "--bench", "2", "--out", folder.File(name), .. more]);
            Assert.Equal(ExitCode.Good, ran.Code);
            return int.Parse(System.Text.RegularExpressions.Regex.Match(ran.Error, @"packet of bench 2, (\d+) sheets").Groups[1].Value, null);
        }

        var plain = Sheets("plain.pdf");
        var without = Sheets("without.pdf", "--worksheet", "1");
        Assert.True(without > plain);
        Assert.True(Sheets("with.pdf", "--worksheet", "1", "--worksheet-key") > without);
    }

    [Fact]
    public void A_packet_of_the_whole_course_says_what_has_no_parts()
    {
        // Two stiles of 20 leave nothing between them in a leaf of 12 3/16.
        var course = folder.Small();
        File.WriteAllText(course, File.ReadAllText(course).Replace("\"cutters\": \"deep-groove\"", "\"cutters\": \"deep-groove\", \"stiles\": { \"both\": \"20\" }", StringComparison.Ordinal));
        var ran = Ran.With("packet", course, "--out", folder.File("all.pdf"));
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("Without parts because they cannot be built: 7·1L, 7·1R", ran.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUse, Ran.With("labels", course, "--out", folder.File("l.pdf")).Code);
        Assert.False(File.Exists(folder.File("l.pdf")));
    }

    [Fact]
    public void Files_that_are_there_are_kept_unless_replacing_is_asked_for()
    {
        var course = folder.Small();
        var pdf = folder.Write("packet.pdf", "mine");
        var refused = Ran.With("packet", course, "--out", pdf);
        Assert.Equal(ExitCode.FileFailed, refused.Code);
        Assert.Contains("--replace", refused.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(pdf));
        Assert.False(File.Exists(folder.File("packet.handed-out.json")));
        Assert.Equal(ExitCode.Good, Ran.With("packet", course, "--out", pdf, "--replace").Code);
        Assert.NotEqual("mine", File.ReadAllText(pdf));

        // The record alone is enough to refuse: it tells what somebody has in hand.
        File.Delete(pdf);
        Assert.Equal(ExitCode.FileFailed, Ran.With("packet", course, "--out", pdf).Code);
        Assert.False(File.Exists(pdf));
    }

    [Fact]
    public void A_packet_that_is_stopped_leaves_nothing_and_keeps_what_was_there()
    {
        var course = folder.Sample();
        var pdf = folder.Write("packet.pdf", "mine");
        using var stop = new CancellationTokenSource();
        var before = Directory.GetFiles(Path.GetDirectoryName(course)!).Order().ToList();
        var ran = Ran.At(new StoppingClock(stop), stop.Token, "packet", course, "--out", pdf, "--replace");
        Assert.Equal(ExitCode.Stopped, ran.Code);
        Assert.Contains("Stopped", ran.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(pdf));
        Assert.Equal(before, Directory.GetFiles(Path.GetDirectoryName(course)!).Order());
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named()
    {
        var ran = Ran.With("packet", folder.Small(), "--out", folder.File(Path.Combine("nowhere", "packet.pdf")));
        Assert.Equal(ExitCode.FileFailed, ran.Code);
        Assert.Contains("There is no folder ", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(".part", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("letter-30")]
    [InlineData("a4-21")]
    public void Labels_are_printed_on_any_sheet_that_ships(string sheet)
    {
        var ran = Ran.With("labels", folder.Small(), "--label-sheet", sheet, "--first-label", "18", "--right", "1.5", "--down", "-0.5", "--out", folder.File("labels.pdf"));
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains(sheet == "letter-30" ? "10 labels on 1 sheet" : "10 labels on 2 sheets", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Labels_are_printed_on_a_sheet_of_ones_own()
    {
        File.WriteAllBytes(folder.File("ours.json"), DocumentWriter.Write(ShippedLabelSheets.All[1] with { Id = "ours", Name = "our own sheet" }));
        var ran = Ran.With("labels", folder.Small(), "--leaf", "7.1L", "--label-sheet", folder.File("ours.json"), "--out", folder.File("labels.pdf"));
        Assert.Equal(ExitCode.Good, ran.Code);
        Assert.Contains("5 labels on 1 sheet, our own sheet", ran.Error, StringComparison.Ordinal);
        Assert.Contains("sound label sheet", Ran.With("check", folder.File("ours.json")).Output, StringComparison.Ordinal);

        File.WriteAllText(folder.File("ours.json"), File.ReadAllText(folder.File("ours.json")).Replace("\"columns\": 3", "\"columns\": 9", StringComparison.Ordinal));
        var refused = Ran.With("labels", folder.Small(), "--label-sheet", folder.File("ours.json"), "--out", folder.File("labels.pdf"), "--replace");
        Assert.Equal(ExitCode.FileFailed, refused.Code);
        Assert.Contains("$.width", refused.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Name the PDF to write with --out", "packet")]
    [InlineData("--worksheet takes a level from 1 to 6, not \"7\"", "packet", "--out", "x.pdf", "--worksheet", "7")]
    [InlineData("ask for them with --worksheet and a level", "packet", "--out", "x.pdf", "--worksheet-key")]
    [InlineData("--paper takes letter or a4", "packet", "--out", "x.pdf", "--paper", "a5")]
    [InlineData("There is no label sheet and no file nope", "labels", "--out", "x.pdf", "--label-sheet", "nope")]
    [InlineData("--first-label 99 is not on the sheet plain-letter: it has 16 labels", "labels", "--out", "x.pdf", "--first-label", "99")]
    [InlineData("--first-label takes a number from 1", "labels", "--out", "x.pdf", "--first-label", "0")]
    [InlineData("--right takes millimetres from -50 to 50", "labels", "--out", "x.pdf", "--right", "wide")]
    public void Wrong_use_is_told_with_the_fix(string words, string verb, params string[] arguments)
    {
        var ran = Ran.With([verb, folder.Small(), .. arguments]);
        Assert.Equal(ExitCode.WrongUse, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists("x.pdf"));
    }

    [Fact]
    public void Help_names_every_label_sheet_that_ships()
    {
        var help = Ran.With("labels", "--help").Output;
        Assert.All(ShippedLabelSheets.All, sheet => Assert.Contains(sheet.Id, help, StringComparison.Ordinal));
    }

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }

    // The first look at the clock comes when everything has been read and the writing begins.
    private sealed class StoppingClock(CancellationTokenSource stop) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow()
        {
            stop.Cancel();
            return DateTimeOffset.UnixEpoch;
        }
    }
}
