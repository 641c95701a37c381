using System.Reflection;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CsCheck;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

public class ChangeWordsTests
{
    private static readonly JsonObject Before = Tree("""
        {
          "id": "autumn", "name": "Autumn course", "standard": "inch", "unit": "in",
          "designs": [{ "id": "cathedral", "name": "Cathedral", "construction": "cope-and-stick", "species": "cherry", "stock": "four-quarter", "cutters": "deep-groove" }],
          "projects": [
            { "id": "hall", "bench": 7, "name": "Hall cupboard", "pieces": [{ "id": "case", "name": "Case", "faces": [{ "id": "front", "side": "front",
              "layout": { "width": "34", "height": "36", "leftStile": { "width": "2" }, "rightStile": { "width": "2" }, "topRail": "2", "bottomRail": "2",
                "space": { "rows": { "member": "1 1/2", "spaces": [{}, { "opening": { "id": "high", "filling": { "kind": "drawers", "mount": "overlay", "design": "cathedral" } } }] } } },
              "openings": [{ "id": "low", "name": "Lower", "filling": { "kind": "doors", "mount": "overlay", "design": "cathedral", "leaves": [{ "hinge": "left" }] } }] }] }] }
          ]
        }
        """);

    private static readonly JsonObject Standard = Tree(
        """{ "id": "ours", "name": "Our shop", "unit": "in", "base": "in", "settings": { "cut.step": "1/32" }, "cutters": [{ "id": "set", "name": "Set 1" }] }""");

    [Theory]
    [InlineData("designs[0].topRail", "\"4\"", "Design “Cathedral”, top rail: as the standard says → 4")]
    [InlineData("designs[0].construction", "\"mortise-and-tenon\"", "Design “Cathedral”, construction: cope and stick → mortise and tenon")]
    [InlineData("designs[0].slabWhenTooLow", "true", "Design “Cathedral”, slab when too low for the frame: no → yes")]
    [InlineData("designs[0].stiles", """{ "hinge": "2 1/2" }""", "Design “Cathedral”, stile width, by the hinges: as the standard says → 2 1/2")]
    [InlineData("overrides", """{ "cut.step": { "value": "1/64", "source": "our rule" } }""", "Course, cutting step: as the standard says → 1/64 (from “our rule”)")]
    [InlineData("projects[0].bench", "8", "Bench 8, bench: 7 → 8")]
    [InlineData("projects[0].unit", "\"mm\"", "Bench 7, unit: the course's → millimetres")]
    [InlineData("projects[0].pieces[0].faces[0].layout.width", "\"35\"", "Bench 7, front of piece “Case”, face frame, width: 34 → 35")]
    [InlineData("projects[0].pieces[0].faces[0].layout.space.rows.spaces[0].size", "\"6\"", "Bench 7, front of piece “Case”, face frame, rows, space 1, size: its share → 6")]
    // Fronts are counted through the layout first, so the opening beside it is the second of its bench.
    [InlineData("projects[0].pieces[0].faces[0].openings[0].bead", "\"1/4\"", "Bench 7, opening 2 “Lower”, bead: none → 1/4")]
    [InlineData("projects[0].pieces[0].faces[0].openings[0].filling.leaves[0].hinge", "\"right\"", "Bench 7, opening 2 “Lower”, leaf 1, hinge side: left → right")]
    [InlineData("projects[0].pieces[0].faces[0].openings[0].filling.edges", """{ "left": { "kind": "fixed", "overlay": "1/2" } }""",
        "Bench 7, opening 2 “Lower”, left edge: the standard's overlay → fixed (overlay 1/2)")]
    [InlineData("projects[0].pieces[0].faces[0].openings[0].filling", """{ "kind": "drawers", "mount": "inset", "design": "cathedral", "count": 3 }""",
        "Bench 7, opening 2 “Lower”, filling: doors (overlay, 1 leaf, design “Cathedral”) → drawers (inset, design “Cathedral”, number of fronts 3)")]
    [InlineData("projects[0].pieces[0].faces[0].openings[0].beside", """{ "left": { "kind": "opening", "opening": "high", "member": "2" } }""",
        "Bench 7, opening 2 “Lower”, beyond the left edge: not told → another opening (opening 1, member 2)")]
    [InlineData("projects[0].pieces[0].faces[0].layout.space.rows.spaces", "[{}, {}, {}]", "Bench 7, front of piece “Case”, face frame, rows, spaces: 2 spaces → 3 spaces")]
    public void A_field_is_told_in_words(string place, string value, string sentence) =>
        Assert.Equal(sentence, Assert.Single(Told(Before, With(Before, place, value), typeof(Course))));

    [Fact]
    public void Records_are_told_by_their_names()
    {
        const string openings = "projects[0].pieces[0].faces[0].openings";
        var opening = """{ "id": "top", "name": "Top drawer", "filling": { "kind": "drawers", "mount": "overlay", "design": "cathedral" } }""";
        var low = Before["projects"]![0]!["pieces"]![0]!["faces"]![0]!["openings"]![0]!.ToJsonString();
        var two = With(Before, openings, $"[{low}, {opening}]");
        Assert.Equal("Bench 7: opening 3 “Top drawer” added", Assert.Single(Told(Before, two, typeof(Course))));
        Assert.Equal("Bench 7: opening 3 “Top drawer” removed", Assert.Single(Told(two, Before, typeof(Course))));
        var turned = With(Before, openings, $"[{opening}, {low}]");
        Assert.Contains("Bench 7: opening ", Assert.Single(Told(two, turned, typeof(Course))), StringComparison.Ordinal);
        Assert.EndsWith("moved to the first place", Assert.Single(Told(turned, two, typeof(Course))), StringComparison.Ordinal);
        Assert.Equal("Design “Cathedral” removed", Assert.Single(Told(Before, With(Before, "designs", "[]"), typeof(Course))));
        Assert.Equal("Bench 7 “Hall cupboard” cleared", Assert.Single(Told(Before, With(Before, "projects", "[]"), typeof(Course))));
    }

    [Fact]
    public void A_project_by_itself_is_told_without_its_bench()
    {
        var project = CourseTree.Split(Before).Projects[0];
        Assert.Equal("Opening 2 “Lower”, bead: none → 1/4", Assert.Single(Told(project, With(project, "pieces[0].faces[0].openings[0].bead", "\"1/4\""), typeof(Project))));
        Assert.Equal("Bench 7, name: “Hall cupboard” → “Bookcase”", Assert.Single(Told(project, With(project, "name", "\"Bookcase\""), typeof(Project))));
        Assert.Equal("Opening 2 “Lower” removed", Assert.Single(Told(project, With(project, "pieces[0].faces[0].openings", "[]"), typeof(Project))));
    }

    [Theory]
    [InlineData("settings", """{ "cut.step": "1/16" }""", "Standard, cutting step: 1/32 → 1/16")]
    [InlineData("settings", """{ "cut.step": "1/32", "gap.pair": "1/8" }""", "Standard, gap of the pair: as shipped → 1/8")]
    [InlineData("cutters[0].grooveFromFace", "\"1/4\"", "Cutter set “Set 1”, groove from the face: none → 1/4")]
    public void A_standard_is_told_in_words(string place, string value, string sentence) =>
        Assert.Equal(sentence, Assert.Single(Told(Standard, With(Standard, place, value), typeof(HouseStandard))));

    [Fact]
    public void Conflicts_tell_all_three_values()
    {
        const string bead = "projects[0].pieces[0].faces[0].openings[0].bead";
        var changes = DocumentChanges.Between(With(Before, bead, "\"1/4\""), With(Before, bead, "\"3/8\""), typeof(Course));
        var theirs = With(Before, bead, "\"1/2\"");
        Assert.Equal("Bench 7, opening 2 “Lower”, bead: you put 3/8, but 1/2 stands there now; it was 1/4", Told(theirs, changes));
        var gone = With(Before, "projects", "[]");
        Assert.Equal("Bench 7, opening 2 “Lower”, bead: you put 3/8, but what it belongs to has been deleted", Told(gone, changes));

        static string Told(JsonObject head, IReadOnlyList<Change> changes) =>
            new ChangeWords(typeof(Course), head, Before).Of(Assert.Single(Assert.IsType<MergeResult.Conflicts>(DocumentChanges.Apply(head, changes, typeof(Course))).Found));
    }

    /// <summary>A change of an older document, or of a record that no tree holds, is told as well as it can be.</summary>
    [Fact]
    public void What_is_not_known_is_told_by_its_key() => Assert.Equal(
        "Something that is gone, old key: none → 4",
        new ChangeWords(typeof(Course), Before).Of(new FieldSet("nobody", "deep/oldKey", null, "4")));

    [Fact]
    public void No_sentence_holds_JSON_or_camel_case() => Gen.Select(Gen.Int, Gen.Int, Gen.Int[1, 3]).Sample((one, other, size) =>
    {
        var before = Tree(RandomCourse.Of(one, size) with { Id = "course" });
        var after = Tree(RandomCourse.Of(other, size) with { Id = "course" });
        foreach (var sentence in Told(before, after, typeof(Course)).Concat(Told(before, new RandomEdits(new(one)).Some(before, 5), typeof(Course))))
        {
            Assert.DoesNotMatch("[{}\\[\\]]|[a-z][A-Z]|null", sentence);
            Assert.Matches("^[A-Z“]", sentence);
            Assert.DoesNotContain("something", sentence, StringComparison.OrdinalIgnoreCase);
        }
    }, iter: 100);

    [Theory]
    [InlineData(typeof(Course))]
    [InlineData(typeof(Project))]
    [InlineData(typeof(HouseStandard))]
    public void Every_field_and_record_has_a_label_for_people(Type root)
    {
        HashSet<Type> records = [];
        Collect(root, records);
        foreach (var record in records)
        {
            Assert.Matches("^[a-z][a-z' ,]+$", FieldLabels.Of(record));
            foreach (var parameter in Parameters(record))
            {
                var label = FieldLabels.Of(record, char.ToLowerInvariant(parameter.Name![0]) + parameter.Name[1..]);
                Assert.True(Regex.IsMatch(label, "^[a-z][a-z' ,]+$"), $"{record.Name}.{parameter.Name} is called \"{label}\"");
            }
        }
    }

    [Fact]
    public void A_field_that_is_not_there_has_no_label() =>
        Assert.Throws<ArgumentException>(() => FieldLabels.Of(typeof(Course), "depth"));

    private static void Collect(Type type, HashSet<Type> records)
    {
        if (type.IsGenericType)
            Collect(type.GetGenericArguments()[0], records);
        foreach (var one in type.GetCustomAttributes<CaseAttribute>(inherit: false))
            Collect(one.Type, records);
        if (!type.IsClass || type.IsAbstract || type.Assembly != typeof(Course).Assembly || type == typeof(SettingValues) || !records.Add(type))
            return;
        foreach (var parameter in Parameters(type))
            Collect(parameter.ParameterType, records);
    }

    private static ParameterInfo[] Parameters(Type record) => Assert.Single(record.GetConstructors()).GetParameters();

    private static IEnumerable<string> Told(JsonObject before, JsonObject after, Type root) =>
        DocumentChanges.Between(before, after, root).Select(new ChangeWords(root, after, before).Of);

    private static JsonObject Tree(string json) => JsonNode.Parse(json)!.AsObject();

    private static JsonObject Tree(Course course) => JsonNode.Parse(DocumentWriter.Write(course))!.AsObject();

    /// <summary>A copy with another value at a place such as <c>designs[0].name</c>.</summary>
    private static JsonObject With(JsonObject tree, string place, string json)
    {
        var copy = (JsonObject)tree.DeepClone();
        JsonNode at = copy;
        var steps = place.Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.');
        foreach (var step in steps[..^1])
            at = int.TryParse(step, out var index) ? at[index]! : at[step]!;
        at[steps[^1]] = JsonNode.Parse(json);
        return copy;
    }
}
