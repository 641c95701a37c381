using System.Text;
using Stilewright.Measure;
using Stilewright.Projects;
using Stilewright.Shop;

namespace Stilewright.Documents.Tests;

/// <summary>Hinges, tables of their numbers, boring machines and shelves in documents.</summary>
public class HingeDocumentTests
{
    private const string Cup = """{ "id": "shop-cup", "name": "Ours", "style": "cup", "mount": "overlay", "cup": { "diameter": "35 mm", "depth": "12 mm", "leastDistance": "3 mm", "greatestDistance": "6 mm", "constant": "13 mm", "plates": [ { "height": "2 mm" } ] } }""";

    private static string With(string fields) => Files.Standard.Replace("\"base\": \"in\"", $"\"base\": \"in\", {fields}", StringComparison.Ordinal);

    private static HouseStandard Read(string fields) => Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(With(fields))).Document;

    private static DocumentError Refused(string fields) => Assert.Single(Assert.IsType<DocumentResult<HouseStandard>.Refused>(DocumentReader.ReadStandard(With(fields))).Errors);

    [Fact]
    public void A_hinge_is_written_as_it_was_read()
    {
        var standard = Read($$"""
            "hinges": [{{Cup}}], "settings": { "hinge.usual": "shop-cup", "hinge.boring-distance": "4 mm" },
            "boringMachines": [{ "id": "borer", "name": "the borer", "stops": [{ "side": "left", "origin": "80 mm", "pitch": "32 mm", "count": 9, "mark": "L" }], "fence": "cup-centre" }]
            """);
        var again = Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(DocumentWriter.Write(standard))).Document;
        foreach (var read in new[] { standard, again })
        {
            var hinge = Assert.Single(read.Hinges);
            Assert.Equal(("35 mm", 35.Millimetres), (hinge.Cup!.Diameter.Text, hinge.Cup.Diameter.Value));
            Assert.Equal(2.Millimetres, Assert.Single(hinge.Cup.Plates).Height.Value);
            Assert.Equal("shop-cup", new StandardInForce(read).Word(Settings.UsualHinge));
            Assert.Equal(4.Millimetres, new StandardInForce(read).LengthOrWord(Settings.BoringDistance)!.Length);
            var row = Assert.Single(Assert.Single(read.BoringMachines).Stops);
            Assert.Equal(("L9", 32.Millimetres), (row.NameOf(8), row.Pitch.Value));
            Assert.Equal(ShippedStandards.Inch.HingeCounts.Count, read.HingeCounts.Count);
        }
    }

    [Fact]
    public void Without_hinges_of_its_own_a_standard_has_the_examples() =>
        Assert.Equal(ShippedHinges.Hinges.Select(hinge => hinge.Id), Assert.IsType<DocumentResult<HouseStandard>.Read>(DocumentReader.ReadStandard(Files.Standard)).Document.Hinges.Select(hinge => hinge.Id));

    public static TheoryData<string, string, string, string> Faults { get; } = new()
    {
        { $$"""
            "hinges": [{{Cup}}], "settings": { "hinge.usual": "shop-cap" }
            """, "$.settings['hinge.usual']", "no hinge \"shop-cap\" in this standard", "did you mean shop-cup? known here: none, shop-cup" },
        { """
            "settings": { "hinge.count-table": "counts-chrt" }
            """, "$.settings['hinge.count-table']", "no table of hinge numbers", "did you mean counts-chart?" },
        { $$"""
            "hinges": [{{Cup.Replace("\"mount\"", "\"countTable\": \"counts-gide\", \"mount\"", StringComparison.Ordinal)}}]
            """, "$.hinges[0].countTable", "no table of hinge numbers \"counts-gide\"", "did you mean counts-guide?" },
        { $$"""
            "hinges": [{{Cup.Replace("\"constant\": \"13 mm\", ", "", StringComparison.Ordinal)}}]
            """, "$.hinges[0].least", "nothing says what overlay the hinge gives", "the constant of its cup" },
        { $$"""
            "hinges": [{{Cup.Replace("overlay", "inset", StringComparison.Ordinal).Replace(", \"plates\": [ { \"height\": \"2 mm\" } ]", "", StringComparison.Ordinal)}}]
            """, "$.hinges[0].least", "nothing says what gap the hinge gives", "with its plates" },
        { $$"""
            "hinges": [{{Cup.Replace("\"mount\"", "\"least\": \"3/8\", \"mount\"", StringComparison.Ordinal)}}]
            """, "$.hinges[0].greatest", "one end of the overlays", "give both" },
        { $$"""
            "hinges": [{{Cup.Replace("\"mount\"", "\"least\": \"3/8\", \"greatest\": \"1/4\", \"mount\"", StringComparison.Ordinal)}}]
            """, "$.hinges[0].least", "the least overlay is more than the greatest", "exchange" },
        { $$"""
            "hinges": [{{Cup.Replace("\"style\": \"cup\"", "\"style\": \"butt\"", StringComparison.Ordinal)}}]
            """, "$.hinges[0].cup", "has a cup but is no cup hinge", "leave \"cup\" out" },
        { """
            "hinges": [{ "id": "shop-cup", "name": "Ours", "style": "cup", "mount": "inset", "least": "1/16", "greatest": "1/8" }]
            """, "$.hinges[0].cup", "a cup hinge has no cup", "give its cup" },
        { $$"""
            "hinges": [{{Cup.Replace("\"mount\"", "\"thinnestLeaf\": \"1\", \"thickestLeaf\": \"3/4\", \"mount\"", StringComparison.Ordinal)}}]
            """, "$.hinges[0].thinnestLeaf", "thicker than the thickest", "exchange" },
        { $$"""
            "hinges": [{{Cup.Replace("\"3 mm\"", "\"7 mm\"", StringComparison.Ordinal)}}]
            """, "$.hinges[0].cup.leastDistance", "more than the greatest", "exchange" },
        { """
            "hingeCounts": [{ "id": "counts-chart", "name": "Ours" }]
            """, "$.hingeCounts[0].byHeight", "the table has no rows", "by height, by weight or both" },
        { """
            "hingeCounts": [{ "id": "counts-chart", "name": "Ours", "byHeight": [{ "to": "60", "count": 3 }, { "to": "90", "count": 2 }] }]
            """, "$.hingeCounts[0].byHeight[1]", "does not go on", "lowest leaves first" },
        { """
            "hingeCounts": [{ "id": "counts-chart", "name": "Ours", "byWeight": [{ "below": 15, "count": 2 }, { "below": 15, "count": 3 }] }]
            """, "$.hingeCounts[0].byWeight[1]", "does not go on", "lightest leaves first" },
        { """
            "boringMachines": [{ "id": "borer", "name": "the borer" }]
            """, "$.boringMachines[0].stops", "no row of stops", "its first stop" },
        { """
            "boringMachines": [{ "id": "borer", "name": "the borer", "leastFence": "1", "greatestFence": "1/2", "stops": [{ "side": "left", "origin": "3", "pitch": "1", "count": 9 }] }]
            """, "$.boringMachines[0].leastFence", "more than the greatest", "exchange" },
        { """
            "boringMachines": [{ "id": "example-butt", "name": "the borer", "stops": [{ "side": "left", "origin": "3", "pitch": "1", "count": 9 }] }]
            """, "$.boringMachines[0].id", "already used in the shipped standard", "choose another id" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_is_told_with_its_place_and_the_fix(string fields, string path, string problem, string fix)
    {
        var error = Refused(fields);
        Assert.Equal(path, error.Path);
        Assert.Contains(problem, error.Problem, StringComparison.Ordinal);
        Assert.Contains(fix, error.Fix, StringComparison.Ordinal);
    }

    [Fact]
    public void A_course_names_hinges_of_its_standard()
    {
        Course Of(string hinge) => Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(Encoding.UTF8.GetBytes(
            Files.Course.Replace("\"designs\": [", $"\"overrides\": {{ \"hinge.usual\": \"{hinge}\" }}, \"designs\": [", StringComparison.Ordinal)))).Document;
        Assert.Empty(References.Check(Of("example-cup-plate"), ShippedStandards.Inch));
        var error = Assert.Single(References.Check(Of("example-cup-plat"), ShippedStandards.Inch));
        Assert.Equal("$.overrides['hinge.usual']", error.Path);
        Assert.Contains("did you mean example-cup-plate?", error.Fix, StringComparison.Ordinal);
    }

    [Fact]
    public void Shelves_stand_in_an_opening_and_are_written_as_read()
    {
        var course = Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(Encoding.UTF8.GetBytes(
            Files.Course.Replace("\"readings\":", "\"shelves\": [{ \"height\": \"11 1/4\", \"thickness\": \"3/4\" }], \"readings\":", StringComparison.Ordinal)))).Document;
        Assert.Equal("11 1/4", Assert.Single(course.Projects[0].Pieces[0].Faces[0].Openings[0].Shelves).Height.Text);
        var again = Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(DocumentWriter.Write(course))).Document;
        Assert.Equal(course.Projects[0].Pieces[0].Faces[0].Openings[0].Shelves, again.Projects[0].Pieces[0].Faces[0].Openings[0].Shelves);
    }
}
