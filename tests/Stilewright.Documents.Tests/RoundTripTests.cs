using System.Collections;
using System.Text;
using CsCheck;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

public class RoundTripTests
{
    private static readonly Gen<Course> Courses = Gen.Select(Gen.Int, Gen.Int[1, 4], (seed, size) => RandomCourse.Of(seed, size));

    [Fact]
    public void Writing_what_was_read_gives_the_same_bytes() => Courses.Sample(course =>
    {
        var bytes = DocumentWriter.Write(course);
        Assert.Equal("", string.Join('\n', Files.Errors(DocumentReader.ReadCourse(bytes))));
        var again = DocumentWriter.Write(Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(bytes)).Document);
        Assert.Equal(Encoding.UTF8.GetString(bytes), Encoding.UTF8.GetString(again));
    }, iter: 300);

    /// <summary>The writer leaves out what is as when absent; this looks at the records themselves.</summary>
    [Fact]
    public void What_is_read_is_what_was_written() => Courses.Sample(course =>
        SameFacts(course, Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(DocumentWriter.Write(course))).Document), iter: 100);

    [Fact]
    public void References_of_random_courses_hold() => Courses.Sample(course =>
        Assert.Empty(References.Check(course, course.Standard == "inch" ? ShippedStandards.Inch : ShippedStandards.Millimetre)), iter: 100);

    [Fact]
    public void The_shortest_course_is_read()
    {
        var course = Files.Read(Files.Course);
        var opening = course.Projects[0].Pieces[0].Faces[0].Openings[0];
        Assert.Equal(Length.FromInches(new(95, 4)), opening.Readings!.WidthTop!.Value.Value);
        Assert.Equal(2, Assert.IsType<DoorFilling>(opening.Filling).Leaves.Count);
        Assert.Same(SettingValues.None, opening.Overrides);
        Assert.Empty(course.Projects[0].Runs);
    }

    [Theory]
    [InlineData("\"23 3/4\"")]
    [InlineData("\"23-3/4\"")]
    [InlineData("\"23¾\"")]
    [InlineData("\"1' 11 3/4\\\"\"")]
    [InlineData("\"23.750\"")]
    [InlineData("\"603.25 mm\"")]
    public void Lengths_stay_as_typed(string text)
    {
        var written = Write(Files.Course.Replace("\"23 3/4\"", text, StringComparison.Ordinal));
        Assert.Contains(text, written, StringComparison.Ordinal);
    }

    [Fact]
    public void A_length_written_as_a_number_keeps_its_digits() =>
        Assert.Contains("\"23.7500\"", Write(Files.Course.Replace("23.75,", "23.7500,", StringComparison.Ordinal)), StringComparison.Ordinal);

    [Fact]
    public void The_nearest_unit_holds_whatever_the_order_of_keys()
    {
        var text = Files.Course.Replace("\"name\": \"Hall cupboard\",", "\"name\": \"Hall cupboard\", \"overrides\": { \"gap.pair\": \"3\" },", StringComparison.Ordinal)
            .Replace("\"29 1/2\" }", "\"740\" }", StringComparison.Ordinal)
            .Replace("\"23 3/4\", \"widthBottom\": 23.75", "600.5", StringComparison.Ordinal)
            .Replace("            ] }\n          ]\n        }", "            ], \"unit\": \"mm\" }\n          ]\n        }", StringComparison.Ordinal)
            .Replace("\n    ] }\n  ]\n}", "\n    ], \"unit\": \"mm\" }\n  ]\n}", StringComparison.Ordinal);
        var project = Files.Read(text).Projects[0];
        Assert.Equal(LengthUnit.Millimetre, project.Unit);
        Assert.Equal(Length.FromMillimetres(new(1201, 2)), project.Pieces[0].Faces[0].Openings[0].Readings!.WidthTop!.Value.Value);
        Assert.Equal(3.Millimetres, project.Overrides.Find(Settings.GapOfPair)!.Amount);
    }

    /// <summary>A value moved between documents of different units keeps its length, not its digits.</summary>
    [Fact]
    public void A_text_that_would_read_otherwise_is_written_with_its_unit()
    {
        var course = Files.Read(Files.Course) with { Unit = LengthUnit.Millimetre };
        var again = Files.Read(Encoding.UTF8.GetString(DocumentWriter.Write(course)));
        var readings = again.Projects[0].Pieces[0].Faces[0].Openings[0].Readings!;
        Assert.Equal("23 3/4 in", readings.WidthTop!.Value.Text);
        Assert.Equal(Length.FromInches(new(95, 4)), readings.WidthBottom!.Value.Value);
    }

    [Fact]
    public void Odd_lengths_are_written_exactly()
    {
        Length third = Length.FromInches(new(17, 3));
        var course = Files.Read(Files.Course);
        var design = course.Designs[0] with { TopRail = new LengthEntry("17/3 in", third) };
        var again = Files.Read(Encoding.UTF8.GetString(DocumentWriter.Write(course with { Designs = [design] })));
        Assert.Equal(third, again.Designs[0].TopRail!.Value.Value);
    }

    [Fact]
    public void Written_files_are_plain_text_for_people()
    {
        var text = Encoding.UTF8.GetString(DocumentWriter.Write(Files.Read(Files.Course.Replace("Autumn course", "Herbst – “Türen” ½ 木 🪚", StringComparison.Ordinal))));
        Assert.StartsWith("{\n  \"format\": \"stilewright/course\",\n  \"version\": 2,\n  \"id\": \"autumn\",\n  \"name\": \"Herbst – “Türen” ½ 木 🪚\",\n", text, StringComparison.Ordinal);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', text);
        Assert.DoesNotContain("null", text, StringComparison.Ordinal);
        Assert.DoesNotContain("[]", text, StringComparison.Ordinal);
    }

    /// <summary>Only what JSON must escape is escaped, and what looks like an escape stays a text.</summary>
    [Theory]
    [InlineData("🪚🪵", "🪚🪵")]
    [InlineData("\\ud83e\\ude9a", "\\\\ud83e\\\\ude9a")]
    [InlineData("a\\🪚", "a\\\\🪚")]
    [InlineData("\"<&>'", "\\\"<&>'")]
    [InlineData("a\nb\u0001", "a\\nb\\u0001")]
    public void Texts_are_written_as_they_are(string name, string written)
    {
        var text = Encoding.UTF8.GetString(DocumentWriter.Write(Files.Read(Files.Course) with { Name = name }));
        Assert.Contains($"\"name\": \"{written}\"", text, StringComparison.Ordinal);
        Assert.Equal(name, Files.Read(text).Name);
    }

    [Fact]
    public void A_byte_order_mark_is_accepted() => Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse("\uFEFF" + Files.Course));

    [Fact]
    public void Settings_keep_their_sources_and_are_written_in_the_order_of_the_catalogue()
    {
        var text = Files.Standard.Replace("\"base\": \"in\"", "\"base\": \"in\", \"settings\": { \"print.finest\": \"64\", \"overlay.usual\": { \"source\": \"our hinges\", \"value\": 0.5 }, \"cut.step\": \"1/64\" }", StringComparison.Ordinal);
        var standard = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(text)).Document;
        Assert.Equal("our hinges", standard.Settings.Find(Settings.Overlay)!.Source);
        Assert.Equal(Length.FromInches(new(1, 64)), standard.Settings.Find(Settings.Step)!.Amount);
        var written = Encoding.UTF8.GetString(DocumentWriter.Write(standard));
        Assert.Contains("""
              "settings": {
                "overlay.usual": {
                  "value": "0.5",
                  "source": "our hinges"
                },
                "cut.step": "1/64",
                "print.finest": 64
              },
            """, written, StringComparison.Ordinal);
    }

    // A setting that is a length or a word is written back as whichever was read.
    [Theory]
    [InlineData("\"ends\"", "ends", null)]
    [InlineData("\"3/32\"", "3/32", 3)]
    [InlineData("0.09375", "0.09375", 3)]
    public void The_clearance_at_an_arch_is_a_length_or_a_word(string written, string text, int? thirtySeconds)
    {
        var standard = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(
            Files.Standard.Replace("\"base\": \"in\"", $"\"base\": \"in\", \"settings\": {{ \"panel.clearance-arch\": {written} }}", StringComparison.Ordinal))).Document;
        Assert.Contains($"\"panel.clearance-arch\": \"{text}\"", Encoding.UTF8.GetString(DocumentWriter.Write(standard)), StringComparison.Ordinal);
        Assert.Equal(thirtySeconds is { } count ? Length.FromInches(new(count, 32)) : null, new StandardInForce(standard).LengthOrWord(Settings.ClearanceAtArch)?.Length);
    }

    [Fact]
    public void Patterns_of_the_rack_are_written_as_read_and_none_ship()
    {
        const string Rack = "\"patterns\": [{ \"id\": \"tall\", \"name\": \"Tall\", \"family\": \"cathedral\", \"rise\": \"1 3/4\", \"leastSpan\": \"8\", \"greatestSpan\": \"12\", \"shoulder\": \"3/4\", \"reverseToCrown\": { \"reverse\": 2, \"crown\": 3 } }]";
        var standard = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(
            Files.Standard.Replace("\"base\": \"in\"", $"\"base\": \"in\", {Rack}", StringComparison.Ordinal))).Document;
        var again = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(DocumentWriter.Write(standard))).Document;
        Assert.Equal(Assert.Single(standard.Patterns), Assert.Single(again.Patterns));
        Assert.Equal("1 3/4", again.Patterns[0].Rise.Text);
        Assert.Empty(ShippedStandards.Inch.Patterns);
        Assert.Empty(ShippedStandards.Millimetre.Patterns);
    }

    [Fact]
    public void A_standard_without_lists_has_those_of_its_base()
    {
        var standard = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(Files.Standard)).Document;
        Assert.Equal(ShippedStandards.Inch.Cutters, standard.Cutters);
        Assert.Equal(ShippedStandards.Inch.Machines, standard.Machines);
        Assert.Equal(ShippedStandards.Inch.Stocks, standard.Stocks);
    }

    [Fact]
    public void A_standard_in_one_unit_on_the_base_of_the_other_keeps_the_lengths()
    {
        var standard = StandardInFull.Of(ShippedStandards.Inch with { Unit = LengthUnit.Millimetre, Id = "ours" });
        var again = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(DocumentWriter.Write(standard))).Document;
        Assert.Equal(Length.FromInches(new(3, 8)), again.Settings.Find(Settings.Overlay)!.Amount);
        Assert.Equal(Length.FromInches(new(7, 16)), again.Cutter("deep-groove")!.CopeLength.Value);
    }

    [Theory]
    [InlineData("samples/standard-inch.json", LengthUnit.Inch)]
    [InlineData("samples/standard-millimetre.json", LengthUnit.Millimetre)]
    public void The_shipped_standards_are_in_the_samples_in_full(string path, LengthUnit unit)
    {
        var full = StandardInFull.Of(ShippedStandards.For(unit));
        Files.AssertCheckedIn(path, Encoding.UTF8.GetString(DocumentWriter.Write(full)));
        var read = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(File.ReadAllBytes(Path.Combine(Files.Root, path)))).Document;
        Assert.Equal(Settings.All.Count, read.Settings.Values.Count);
        Assert.All(Settings.All, setting => Assert.Equal(setting.Source.Text, read.Settings.Find(setting)!.Source));
    }

    public static TheoryData<string> Samples { get; } = [.. Directory.GetFiles(Path.Combine(Files.Root, "samples"), "*.json").Select(Path.GetFileName).OfType<string>().Order()];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_sample_is_read_and_names_what_there_is(string name)
    {
        var file = File.ReadAllBytes(Path.Combine(Files.Root, "samples", name));
        if (DocumentReader.FormatOf(file) == DocumentFormat.Standard)
        {
            Assert.Empty(Files.Errors(DocumentReader.ReadStandard(file)));
            return;
        }

        Assert.Equal("", string.Join('\n', Files.Errors(DocumentReader.ReadCourse(file))));
        var course = Files.Read(Encoding.UTF8.GetString(file));
        Assert.Empty(References.Check(course, course.Standard == ShippedStandards.Millimetre.Id ? ShippedStandards.Millimetre : ShippedStandards.Inch));
    }

    /// <summary>Files of version 1 are read for ever; these two are never changed.</summary>
    [Fact]
    public void Version_1_is_read()
    {
        var folder = Path.Combine(Files.Root, "tests/Stilewright.Documents.Tests/versions");
        var course = Files.Read(File.ReadAllText(Path.Combine(folder, "course-1.json")));
        Assert.Equal("version-one", course.Id);
        Assert.Equal(2, course.Projects.Count);
        Assert.Equal(LengthUnit.Millimetre, course.Projects[1].Unit);
        Assert.Equal(Length.FromInches(new(95, 4)), course.Projects[0].Pieces[0].Faces[0].Openings[0].Readings!.WidthTop!.Value.Value);
        var standard = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(File.ReadAllBytes(Path.Combine(folder, "standard-1.json")))).Document;
        Assert.Equal("1/2", standard.Settings.Find(Settings.Overlay)!.Text);
        Assert.Equal(Length.FromInches(new(7, 16)), standard.Cutter("our-cutters")!.GrooveDepth.Value);
    }

    /// <summary>Files of version 2 are read for ever; this one is never changed.</summary>
    [Fact]
    public void Version_2_is_read()
    {
        var course = Files.Read(File.ReadAllText(Path.Combine(Files.Root, "tests/Stilewright.Documents.Tests/versions/course-2.json")));
        Assert.Equal("version-two", course.Id);
        var readings = course.Projects[0].Pieces[0].Faces[0].Openings[0].Readings!;
        Assert.Equal(("23 3/4", "23.75", null), (readings.WidthTop?.Text, readings.WidthMiddle?.Text, readings.WidthBottom?.Text));
        Assert.Equal((null, null, "2' 5 1/2\""), (readings.HeightLeft?.Text, readings.HeightMiddle?.Text, readings.HeightRight?.Text));
    }

    private static string Write(string text) => Encoding.UTF8.GetString(DocumentWriter.Write(Files.Read(text)));

    private static void SameFacts(object? expected, object? actual, string place = "course")
    {
        switch (expected)
        {
            case null or string or ValueType and not LengthEntry:
                Assert.True(Equals(expected, actual), $"{place}: {expected} was read as {actual}");
                break;
            case LengthEntry entry:
                var read = Assert.IsType<LengthEntry>(actual);
                Assert.Equal((place, entry.Text, entry.Value), (place, read.Text, read.Value));
                break;
            case SettingValues settings:
                Assert.Equivalent(settings.Values.Select(one => (one.Key.Key, one.Value.Text, one.Value.Amount, one.Value.Source)).Order(),
                    ((SettingValues)actual!).Values.Select(one => (one.Key.Key, one.Value.Text, one.Value.Amount, one.Value.Source)).Order(), strict: true);
                break;
            case IEnumerable items:
                var (left, right) = (items.Cast<object>().ToList(), ((IEnumerable)actual!).Cast<object>().ToList());
                Assert.Equal((place, left.Count), (place, right.Count));
                for (var index = 0; index < left.Count; index++)
                    SameFacts(left[index], right[index], $"{place}[{index}]");
                break;
            default:
                Assert.Equal(expected.GetType(), actual!.GetType());
                foreach (var property in expected.GetType().GetProperties())
                    SameFacts(property.GetValue(expected), property.GetValue(actual), $"{place}.{property.Name}");
                break;
        }
    }
}
