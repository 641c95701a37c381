using System.Text;
using System.Text.Json;
using CsCheck;
using Json.Schema;
using Stilewright.Measure;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

/// <summary>JsonSchema.Net, an implementation of draft 2020-12 that is not ours, judges by the schema; the reader must agree.</summary>
public class SchemaTests
{
    private static readonly JsonSchema Course = JsonSchema.FromText(DocumentSchema.ForCourse());
    private static readonly JsonSchema OfLabelSheet = JsonSchema.FromText(DocumentSchema.ForLabelSheet());
    private static readonly JsonSchema OfHandedOut = JsonSchema.FromText(DocumentSchema.ForHandedOut());
    private static readonly JsonSchema OfMakersList = JsonSchema.FromText(DocumentSchema.ForMakersList());
    private static readonly JsonSchema OfPrinter = JsonSchema.FromText(DocumentSchema.ForPrinter());
    private static readonly JsonSchema Standard = JsonSchema.FromText(DocumentSchema.ForStandard());

    [Fact]
    public void The_schema_of_courses_is_checked_in() => Files.AssertCheckedIn("docs/schema/course.schema.json", DocumentSchema.ForCourse());

    [Fact]
    public void The_schema_of_standards_is_checked_in() => Files.AssertCheckedIn("docs/schema/standard.schema.json", DocumentSchema.ForStandard());

    [Fact]
    public void The_schema_of_label_sheets_is_checked_in() => Files.AssertCheckedIn("docs/schema/label-sheet.schema.json", DocumentSchema.ForLabelSheet());

    [Fact]
    public void The_schema_of_what_was_handed_out_is_checked_in() => Files.AssertCheckedIn("docs/schema/handed-out.schema.json", DocumentSchema.ForHandedOut());

    [Fact]
    public void The_schema_of_printers_is_checked_in() => Files.AssertCheckedIn("docs/schema/printer.schema.json", DocumentSchema.ForPrinter());

    [Fact]
    public void The_schema_of_makers_lists_is_checked_in() => Files.AssertCheckedIn("docs/schema/makers-list.schema.json", DocumentSchema.ForMakersList());

    [Fact]
    public void Schemas_are_schemas()
    {
        Assert.True(Accepts(MetaSchemas.Draft202012, DocumentSchema.ForMakersList()));
        Assert.True(Accepts(MetaSchemas.Draft202012, DocumentSchema.ForPrinter()));
        Assert.True(Accepts(MetaSchemas.Draft202012, DocumentSchema.ForHandedOut()));
        Assert.True(Accepts(MetaSchemas.Draft202012, DocumentSchema.ForLabelSheet()));
        Assert.True(Accepts(MetaSchemas.Draft202012, DocumentSchema.ForCourse()));
        Assert.True(Accepts(MetaSchemas.Draft202012, DocumentSchema.ForStandard()));
    }

    [Fact]
    public void Every_course_that_is_written_is_valid() => Gen.Select(Gen.Int, Gen.Int[1, 3], (seed, size) => RandomCourse.Of(seed, size))
        .Sample(course => Assert.True(Accepts(Course, Encoding.UTF8.GetString(DocumentWriter.Write(course)))), iter: 100);

    [Fact]
    public void Every_record_of_what_was_handed_out_is_valid() => Gen.Select(Gen.Int, Gen.Int[1, 3], (seed, size) => RandomCourse.HandedOutOf(seed, size))
        .Sample(handedOut => Assert.True(Accepts(OfHandedOut, Encoding.UTF8.GetString(DocumentWriter.Write(handedOut)))), iter: 50);

    [Theory]
    [InlineData(LengthUnit.Inch)]
    [InlineData(LengthUnit.Millimetre)]
    public void Every_standard_that_is_written_is_valid(LengthUnit unit)
    {
        Assert.True(Accepts(Standard, Encoding.UTF8.GetString(DocumentWriter.Write(ShippedStandards.For(unit)))));
        Assert.True(Accepts(Standard, Encoding.UTF8.GetString(DocumentWriter.Write(StandardInFull.Of(ShippedStandards.For(unit))))));
    }

    /// <summary>The schema may let pass what the reader refuses, never the other way round.</summary>
    [Fact]
    public void What_the_schema_refuses_the_reader_refuses()
    {
        FuzzedFiles files = new(2);
        var refused = 0;
        for (var number = 0; number < 1500; number++)
        {
            var file = files.Case(number);
            JsonDocument document;
            try
            {
                document = JsonDocument.Parse(file);
            }
            catch (JsonException)
            {
                continue;
            }

            using (document)
            {
                if (!IsWithinDecimals(document.RootElement))
                    continue;
                var (isValid, isRead) = Accepts(document.RootElement, Encoding.UTF8.GetString(file));
                if (isValid)
                    continue;
                refused++;
                Assert.False(isRead, $"case {number}: the schema refuses what the reader reads");
            }
        }

        Assert.True(refused > 300, $"only {refused} files were refused by the schema");
    }

    [Theory]
    [InlineData("\"name\": \"Autumn course\"", "\"name\": 5")]
    [InlineData("\"name\": \"Autumn course\",", "")]
    [InlineData("\"bench\": 1", "\"bench\": 1000")]
    [InlineData("\"side\": \"front\"", "\"side\": \"LeftEnd\"")]
    [InlineData("\"side\": \"front\"", "\"side\": \"front\", \"a b\": 1")]
    [InlineData("\"kind\": \"doors\"", "\"kind\": \"dors\"")]
    [InlineData("\"id\": \"shaker\"", "\"id\": \"Shaker\"")]
    [InlineData("\"29 1/2\"", "true")]
    [InlineData("\"29 1/2\"", "-29")]
    [InlineData("\"designs\": [", "\"overrides\": { \"gap.pairs\": 1 }, \"designs\": [")]
    [InlineData("\"designs\": [", "\"overrides\": { \"limit.field\": \"2\" }, \"designs\": [")]
    [InlineData("\"version\": 2", "\"version\": 1")]
    public void The_schema_sees_faults_of_form(string sound, string faulty)
    {
        var at = Files.Course.IndexOf(sound, StringComparison.Ordinal);
        Assert.False(Accepts(Course, Files.Course.Remove(at, sound.Length).Insert(at, faulty)));
    }

    [Fact]
    public void Every_record_and_word_says_what_it_means_where_its_attributes_do()
    {
        var text = DocumentSchema.ForCourse();
        Assert.Contains("\"description\": \"Rise above the spring line; a half-round has half the span. Above 0 in, at most 60 in\"", text, StringComparison.Ordinal);
        Assert.Contains("cope-and-stick: Rails coped over the moulded edge of the stiles", text, StringComparison.Ordinal);
        Assert.Contains("The id of a door design", text, StringComparison.Ordinal);
        Assert.All(Settings.All.Where(setting => setting.Overridable), setting => Assert.Contains($"\"{setting.Key}\"", text, StringComparison.Ordinal));
        Assert.All(Settings.All.Where(setting => !setting.Overridable), setting => Assert.DoesNotContain($"\"{setting.Key}\"", text, StringComparison.Ordinal));
    }

    private static (bool IsValid, bool IsRead) Accepts(JsonElement element, string text) =>
        (element.ValueKind == JsonValueKind.Object && element.TryGetProperty("format", out var format) && format.ValueKind == JsonValueKind.String ? format.GetString() : null) switch
        {
            "stilewright/standard" => (Accepts(Standard, text), DocumentReader.ReadStandard(text) is DocumentResult<HouseStandard>.Read),
            "stilewright/handed-out" => (Accepts(OfHandedOut, text), DocumentReader.ReadHandedOut(text) is DocumentResult<HandedOut>.Read),
            "stilewright/label-sheet" => (Accepts(OfLabelSheet, text), DocumentReader.ReadLabelSheet(text) is DocumentResult<LabelSheet>.Read),
            "stilewright/makers-list" => (Accepts(OfMakersList, text), DocumentReader.ReadWrittenList(text) is DocumentResult<Lists.WrittenList>.Read),
            "stilewright/printer" => (Accepts(OfPrinter, text), DocumentReader.ReadPrinter(text) is DocumentResult<Printer>.Read),
            _ => (Accepts(Course, text), DocumentReader.ReadCourse(text) is DocumentResult<Course>.Read),
        };

    /// <summary>The reference throws for numbers that no decimal can hold.</summary>
    private static bool IsWithinDecimals(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Number => element.TryGetDecimal(out _),
        JsonValueKind.Array => element.EnumerateArray().All(IsWithinDecimals),
        JsonValueKind.Object => element.EnumerateObject().All(field => IsWithinDecimals(field.Value)),
        _ => true,
    };

    private static bool Accepts(JsonSchema schema, string text)
    {
        using var document = JsonDocument.Parse(text);
        return schema.Evaluate(document.RootElement).IsValid;
    }
}
