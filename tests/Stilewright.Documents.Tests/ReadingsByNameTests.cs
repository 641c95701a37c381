using System.Text.Json.Nodes;
using Stilewright.Doors;
using Stilewright.Prints;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

/// <summary>Version 1 of a course listed the readings of a kind; version 2 names each by its place.</summary>
public class ReadingsByNameTests
{
    private const string Named = "\"widthTop\": \"23 3/4\", \"widthBottom\": 23.75, \"heightLeft\": \"29 1/2\"";
    private static readonly string[] Places = ["widthTop", "widthMiddle", "widthBottom", "heightLeft", "heightMiddle", "heightRight"];

    private static string VersionOne(string readings) => Files.Course
        .Replace("\"version\": 2", "\"version\": 1", StringComparison.Ordinal)
        .Replace(Named, readings, StringComparison.Ordinal);

    private static Readings Read(string readings) => Files.Read(VersionOne(readings)).Projects[0].Pieces[0].Faces[0].Openings[0].Readings!;

    private static string?[] Texts(Readings readings) =>
    [
        readings.WidthTop?.Text, readings.WidthMiddle?.Text, readings.WidthBottom?.Text,
        readings.HeightLeft?.Text, readings.HeightMiddle?.Text, readings.HeightRight?.Text, readings.Rising?.Text, readings.Falling?.Text,
    ];

    public static TheoryData<string, string?[]> Lists => new()
    {
        { "\"widths\": [15.750], \"heights\": [\"2' 5 1/2\\\"\"]", ["15.750", null, null, "2' 5 1/2\"", null, null, null, null] },
        { "\"widths\": [1, 2], \"heights\": [4, 5, 6]", ["1", null, "2", "4", "5", "6", null, null] },
        { "\"rising\": 8, \"heights\": [4, 5], \"falling\": 9, \"widths\": [1, 2, 3]", ["1", "2", "3", "4", null, "5", "8", "9"] },
        // Version 1 refused an opening without heights; now it is one that is not measured.
        { "\"widths\": [1]", ["1", null, null, null, null, null, null, null] },
    };

    [Theory]
    [MemberData(nameof(Lists))]
    public void Listed_readings_are_named_by_their_place_and_stay_as_typed(string lists, string?[] expected) =>
        Assert.Equal(expected, Texts(Read(lists)));

    [Fact]
    public void The_way_an_opening_is_fitted_is_kept()
    {
        var text = VersionOne("\"widths\": [15], \"heights\": [20], \"fit\": \"plane-to-fit\"").Replace("overlay", "inset", StringComparison.Ordinal);
        Assert.Equal(OutOfSquareFit.PlaneToFit, Files.Read(text).Projects[0].Pieces[0].Faces[0].Openings[0].Readings!.Fit);
    }

    [Theory]
    [InlineData("\"widths\": [1, 2, 3, 4], \"heights\": [4]", "widths")]
    [InlineData("\"widths\": [], \"heights\": [4]", "widths")]
    [InlineData("\"widths\": 1, \"heights\": [4]", "widths")]
    [InlineData("\"widths\": [1], \"heights\": { \"left\": 4 }", "heights")]
    [InlineData("\"widths\": [1], \"widthTop\": 2, \"heights\": [4]", "widths")]
    [InlineData("\"widths\": [1], \"heights\": [4, null]", "heightRight")]
    [InlineData("\"widths\": [1], \"heights\": [\"tall\"]", "heightLeft")]
    public void What_version_1_refused_is_refused_at_its_place(string lists, string field)
    {
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(VersionOne(lists))));
        Assert.Equal($"$.projects[0].pieces[0].faces[0].openings[0].readings.{field}", error.Path);
    }

    // Openings stand in a face or anywhere among the spaces of a layout.
    [Fact]
    public void Every_opening_of_a_layout_is_brought_up()
    {
        JsonObject Space(int number) => new() { ["opening"] = new JsonObject { ["id"] = $"o-{number}", ["readings"] = new JsonObject { ["widths"] = new JsonArray(number), ["heights"] = new JsonArray(number, number + 1) } } };
        JsonObject file = new()
        {
            ["version"] = 1,
            ["projects"] = new JsonArray(new JsonObject
            {
                ["space"] = new JsonObject { ["columns"] = new JsonObject { ["spaces"] = new JsonArray(Space(1), new JsonObject { ["rows"] = new JsonObject { ["spaces"] = new JsonArray(Space(2), Space(3)) } }) } },
            }),
        };
        var text = Assert.IsType<DocumentResult<JsonObject>.Read>(Upgrades.Run(DocumentFormat.Course, 1, file)).Document.ToJsonString();
        Assert.DoesNotContain("widths", text, StringComparison.Ordinal);
        Assert.All([1, 2, 3], number => Assert.Contains($"\"readings\":{{\"widthTop\":{number},\"heightLeft\":{number},\"heightRight\":{number + 1}}}", text, StringComparison.Ordinal));
    }

    // Whatever the damage, a step may leave it to be refused, but not fall over it.
    [Theory]
    [InlineData("null")]
    [InlineData("1")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("[[1]]")]
    [InlineData("{\"widths\":null}")]
    [InlineData("{\"widths\":{}}")]
    [InlineData("[{\"readings\":\"x\"}]")]
    public void The_step_leaves_alone_what_it_does_not_know(string damage)
    {
        var file = $"{{\"version\":1,\"readings\":{damage},\"faces\":{damage}}}";
        var upgraded = Assert.IsType<DocumentResult<JsonObject>.Read>(Upgrades.Run(DocumentFormat.Course, 1, (JsonObject)JsonNode.Parse(file)!)).Document;
        Assert.Equal(file.Replace("\"version\":1", "\"version\":2", StringComparison.Ordinal), upgraded.ToJsonString());
    }

    /// <summary>The sample of version 1 and what was handed out of it by the program that wrote version 1; neither is ever changed.</summary>
    [Fact]
    public void The_sample_of_version_1_makes_the_parts_that_it_made_then()
    {
        string File1(string name) => Path.Combine(Files.Root, "tests/Stilewright.Documents.Tests/versions", name);
        var course = Files.Read(File.ReadAllText(File1("evening-course-1.json")));
        var then = Assert.IsType<DocumentResult<HandedOut>.Read>(DocumentReader.ReadHandedOut(File.ReadAllBytes(File1("evening-course-1.handed-out.json")))).Document;
        var breakdown = Breakdown.Of(course, ShippedStandards.Inch);
        var now = HandedOut.Of(breakdown, breakdown.Projects, HandedOutExtent.WholeCourse, Fingerprint.Of(breakdown), then.Program, then.Time);
        Assert.Equal(130, then.PartCount);
        Assert.Equal(then.Projects.Select(project => project.Id), now.Projects.Select(project => project.Id));
        Assert.Equal(then.Projects.SelectMany(project => project.Parts), now.Projects.SelectMany(project => project.Parts));
    }
}
