using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Stilewright.Doors;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

public class HandedOutTests
{
    private static readonly Gen<(int Seed, int Size)> Seeds = Gen.Select(Gen.Int, Gen.Int[1, 4]);

    [Fact]
    public void What_is_read_is_what_was_written() => Seeds.Sample((seed, size) =>
    {
        var written = RandomCourse.HandedOutOf(seed, size);
        var bytes = DocumentWriter.Write(written);
        var read = Read(Encoding.UTF8.GetString(bytes));
        Assert.Equal(written with { Projects = [] }, read with { Projects = [] });
        Assert.Equal(written.Projects.Select(project => project with { Parts = [] }), read.Projects.Select(project => project with { Parts = [] }), Alike);
        Assert.Equal(written.Projects.SelectMany(project => project.Parts), read.Projects.SelectMany(project => project.Parts));
        Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(DocumentWriter.Write(read)));
    }, iter: 100);

    /// <summary>Thirds, sevenths and sums of entries of many digits, above what a person may type.</summary>
    [Fact]
    public void Any_exact_length_reads_back() => Gen.Select(Gen.Long[1, long.MaxValue], Gen.Long[1, long.MaxValue], Gen.Int[0, 12], Gen.Bool, Gen.Bool)
        .Sample((top, bottom, power, isWhole, isMetric) =>
        {
            Fractions.Fraction value = isWhole ? new(top % 100_000, 10) : Fractions.Fraction.Pow(new(top, bottom), power);
            var length = isMetric ? Length.FromMillimetres(value) : Length.FromInches(value);
            if (!length.IsPositive)
                return;
            var handedOut = WithGlue(length);
            Assert.Equal(length, Glue(Read(Encoding.UTF8.GetString(DocumentWriter.Write(handedOut)))));
            Assert.Equal(length, Glue(Read(Encoding.UTF8.GetString(DocumentWriter.Write(handedOut with { Unit = LengthUnit.Millimetre })))));
        }, iter: 200);

    [Fact]
    public void A_record_made_by_hand_is_read_and_written_as_it_stands()
    {
        var read = Read(Files.HandedOut);
        Assert.Equal("packets of benches 3 and 5", read.What);
        Assert.Equal(new DateTimeOffset(2026, 3, 14, 18, 5, 0, TimeSpan.Zero), read.Time);
        var rail = read.Projects[0].Parts[0];
        Assert.Equal(Length.FromInches(new(137, 16)), rail.Finished.Length);
        Assert.Equal(Length.FromInches(new(55, 24)), rail.GlueUp.Width);
        Assert.Equal(130.Inches, rail.Rough!.Width);
        Assert.Equal(Length.FromInches(new(13, 16)), rail.Thickness!.Planed);
        var glass = read.Projects[1].Parts[0];
        Assert.Equal(Length.FromMillimetres(new(435, 2)), glass.Finished.Width);
        Assert.Equal(Length.FromInches(new(1, 3)), glass.Finished.Length);
        Assert.Null(glass.Rough);
        Assert.Null(glass.Thickness);
        Assert.Equal(Files.HandedOut, Encoding.UTF8.GetString(DocumentWriter.Write(read)));
    }

    /// <summary>Files of version 1 are read for ever; this one is never changed.</summary>
    [Fact]
    public void Version_1_is_read()
    {
        var file = File.ReadAllText(Path.Combine(Files.Root, "tests/Stilewright.Documents.Tests/versions/handed-out-1.json"));
        Assert.Equal("autumn", Read(file).Course);
        Assert.Equal(2, Read(file).PartCount);
    }

    [Theory]
    [InlineData("\"8 9/16 in\"", "\"8 9/16\"")]
    [InlineData("\"8 9/16 in\"", "8.5625")]
    [InlineData("\"8 9/16 in\"", "\"137/16 in\"")]
    [InlineData("\"8 9/16 in\"", "\"8.5625 in\"")]
    public void Lengths_edited_by_hand_are_read_as_in_other_documents(string written, string edited) =>
        Assert.Equal(Length.FromInches(new(137, 16)), Read(Replaced(written, edited)).Projects[0].Parts[0].Finished.Length);

    [Theory]
    [InlineData("\"8 9/16 in\"", "\"long\"", "$.projects[0].parts[0].finished.length")]
    [InlineData("\"8 9/16 in\"", "\"0 in\"", "$.projects[0].parts[0].finished.length")]
    [InlineData("\"8 9/16 in\"", "\"8 9/0 in\"", "$.projects[0].parts[0].finished.length")]
    [InlineData("\"8 9/16 in\"", "\"-8 in\"", "$.projects[0].parts[0].finished.length")]
    [InlineData("\"8 9/16 in\"", "true", "$.projects[0].parts[0].finished.length")]
    [InlineData("\"2026-03-14T18:05:00Z\"", "\"yesterday\"", "$.time")]
    [InlineData("\"2026-03-14T18:05:00Z\"", "\"2026-02-30T18:05:00Z\"", "$.time")]
    [InlineData("\"2026-03-14T18:05:00Z\"", "\"2026-03-14T18:05:00+1\"", "$.time")]
    [InlineData("\"2026-03-14T18:05:00Z\"", "20260314", "$.time")]
    [InlineData("\"extent\": \"benches\"", "\"extent\": \"bench\"", "$.extent")]
    [InlineData("\"bench\": 5", "\"bench\": 3", "$.projects[1].bench")]
    [InlineData("\"id\": \"bench-5\"", "\"id\": \"bench-3\"", "$.projects[1].id")]
    [InlineData("\"opening-2/leaf/glass.1\"", "\"opening-1/leaf.left/rail.top\"", "$.projects[1].parts[0].path")]
    [InlineData("\"program\": \"0.1.0\",", "", "$.program")]
    [InlineData("\"program\": \"0.1.0\"", "\"program\": \"0.1.0\", \"notes\": 1", "$.notes")]
    public void A_fault_is_told_with_its_place(string sound, string faulty, string path)
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadHandedOut(Replaced(sound, faulty))));
        Assert.Equal(path, error.Path);
        Assert.NotNull(error.Line);
    }

    [Fact]
    public void All_faults_are_told()
    {
        var text = Files.HandedOut.Replace("\"8 9/16 in\"", "\"long\"", StringComparison.Ordinal).Replace("18:05", "28:05", StringComparison.Ordinal);
        Assert.Equal(["$.time", "$.projects[0].parts[0].finished.length", "$.projects[0].parts[0].glueUp.length"],
            Files.Errors(DocumentReader.ReadHandedOut(text)).Select(error => error.Path));
    }

    [Fact]
    public void The_same_content_has_the_same_revision_whatever_the_spacing_and_the_order_of_keys() => Seeds.Sample((seed, size) =>
    {
        var course = RandomCourse.WithBenches(seed, size);
        var shuffled = Shuffled(JsonNode.Parse(DocumentWriter.Write(course))!, new Random(seed)).ToJsonString();
        var again = Files.Read(shuffled);
        Assert.Equal(course.Projects.Select(project => Fingerprint.Of(course, project)), again.Projects.Select(project => Fingerprint.Of(again, project)));
    }, iter: 100);

    [Fact]
    public void A_revision_is_of_its_own_bench_alone() => Seeds.Sample((seed, size) =>
    {
        var course = RandomCourse.WithBenches(seed, size + 1);
        var (first, others) = (course.Projects[0], course.Projects.Skip(1).ToList());
        var edited = course with { Projects = [first with { Name = first.Name + ", again" }, .. others] };
        Assert.NotEqual(Fingerprint.Of(course, first), Fingerprint.Of(edited, edited.Projects[0]));
        Assert.Equal(others.Select(project => Fingerprint.Of(course, project)), others.Select(project => Fingerprint.Of(edited, project)));
        var renamed = course with { Overrides = Wider(course.Overrides) };
        Assert.All(course.Projects, project => Assert.NotEqual(Fingerprint.Of(course, project), Fingerprint.Of(renamed, project)));
    }, iter: 50);

    [Fact]
    public void A_revision_is_eight_hexadecimal_digits_of_the_file_and_differs_with_any_setting()
    {
        var inch = Fingerprint.Of(ShippedStandards.Inch);
        Assert.Equal(Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(DocumentWriter.Write(ShippedStandards.Inch)))[..8], inch, ignoreCase: true);
        Assert.Equal(8, inch.Length);
        Assert.All(inch, digit => Assert.True(char.IsAsciiHexDigitLower(digit)));
        Assert.NotEqual(inch, Fingerprint.Of(ShippedStandards.Millimetre));
        Assert.NotEqual(inch, Fingerprint.Of(ShippedStandards.Inch with { Settings = Wider(ShippedStandards.Inch.Settings) }));
        Assert.Equal(inch, Fingerprint.Of(ShippedStandards.Inch with { Cutters = [], Machines = [], Stocks = [] }));
    }

    /// <summary>What is handed out, written, read and compared with the same course has not changed.</summary>
    [Fact]
    public void Nothing_differs_from_itself() => Seeds.Sample((seed, size) =>
    {
        var course = RandomCourse.WithBenches(seed, size);
        var breakdown = Breakdown.Of(course, ShippedStandards.For(course.Unit));
        var then = Read(Encoding.UTF8.GetString(DocumentWriter.Write(RandomCourse.HandedOutOf(seed, size))));
        var differences = Differences.Since(then, breakdown, Fingerprint.Of(breakdown), then.Program);
        Assert.Empty(differences.OnPaper);
        Assert.Empty(differences.Origins);
    }, iter: 100);

    private static bool Alike(HandedOutProject one, HandedOutProject other) =>
        (one.Id, one.Bench, one.Name, one.Unit, one.Revision) == (other.Id, other.Bench, other.Name, other.Unit, other.Revision);

    private static SettingValues Wider(SettingValues settings) => new(new Dictionary<Setting, SettingValue>(settings.Values)
    {
        [Settings.GapOfPair] = new("5/16 in", Length.FromInches(new(5, 16))),
    });

    private static HandedOut Read(string text)
    {
        var result = DocumentReader.ReadHandedOut(text);
        Assert.Equal("", string.Join('\n', Files.Errors(result)));
        return Assert.IsType<DocumentResult<HandedOut>.Read>(result).Document;
    }

    private static HandedOut WithGlue(Length width)
    {
        var handedOut = Read(Files.HandedOut);
        var project = handedOut.Projects[0];
        return handedOut with { Projects = [project with { Parts = [project.Parts[0] with { GlueUp = new(width, width) }] }] };
    }

    private static Length Glue(HandedOut handedOut) => handedOut.Projects[0].Parts[0].GlueUp.Width;

    private static string Replaced(string sound, string other)
    {
        var at = Files.HandedOut.IndexOf(sound, StringComparison.Ordinal);
        return Files.HandedOut.Remove(at, sound.Length).Insert(at, other);
    }

    private static JsonNode Shuffled(JsonNode node, Random random)
    {
        switch (node)
        {
            case JsonObject fields:
                var all = fields.Select(field => KeyValuePair.Create(field.Key, (JsonNode?)Shuffled(field.Value!, random))).ToArray();
                random.Shuffle(all);
                return new JsonObject(all);
            case JsonArray items:
                return new JsonArray([.. items.Select(item => Shuffled(item!, random))]);
            default:
                return node.DeepClone();
        }
    }
}
