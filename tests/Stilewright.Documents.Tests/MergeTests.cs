using System.Text.Json.Nodes;
using Stilewright.Documents.Changes;
using Stilewright.Projects;

namespace Stilewright.Documents.Tests;

/// <summary>Two people work on one course; each case says what becomes of both.</summary>
public class MergeTests
{
    private const string Opening = "projects[0].pieces[0].faces[0].openings[0]";
    private const string Openings = "projects[0].pieces[0].faces[0].openings";
    private const string Filling = """{ "kind": "doors", "mount": "overlay", "design": "shaker", "leaves": [{ "hinge": "left" }] }""";
    private static readonly JsonObject Base = JsonNode.Parse(Files.Course)!.AsObject();

    [Theory]
    // Different fields of one record.
    [InlineData("designs[0].name=\"Plain\"", "designs[0].species=\"oak\"", "designs[0].name=\"Plain\"; designs[0].species=\"oak\"")]
    // The same value in the same field.
    [InlineData("name=\"Spring\"", "name=\"Spring\"", "name=\"Spring\"")]
    // Different fields of a nested record that was not there, each made for the other.
    [InlineData("designs[0].stiles={\"hinge\":\"3\"}", "designs[0].stiles={\"pull\":\"2\"}", "designs[0].stiles={\"hinge\":\"3\",\"pull\":\"2\"}")]
    [InlineData(Opening + ".beside={\"left\":{\"kind\":\"wall\",\"member\":\"2\"}}", Opening + ".beside={\"top\":{\"kind\":\"wall\",\"member\":\"3\"}}",
        Opening + ".beside={\"left\":{\"kind\":\"wall\",\"member\":\"2\"},\"top\":{\"kind\":\"wall\",\"member\":\"3\"}}")]
    // Settings by key, whoever comes first.
    [InlineData("overrides={\"gap.pair\":\"1/8\"}", "overrides={\"overlay.usual\":\"1/2\"}", "overrides={\"overlay.usual\":\"1/2\",\"gap.pair\":\"1/8\"}")]
    // Items of a list without ids.
    [InlineData(Opening + ".filling.leaves[0].width=\"9\"", Opening + ".filling.leaves[1].hinge=\"left\"",
        Opening + ".filling.leaves[0].width=\"9\"; " + Opening + ".filling.leaves[1].hinge=\"left\"")]
    // An edit inside a list to which something was added.
    [InlineData(Opening + ".name=\"Lower\"", Openings + "+={\"id\":\"two\",\"filling\":" + Filling + "}", Opening + ".name=\"Lower\"; " + Openings + "+={\"id\":\"two\",\"filling\":" + Filling + "}")]
    // A field that both kinds of filling have.
    [InlineData(Opening + ".filling.mount=\"inset\"", Opening + ".filling.lapped=true", Opening + ".filling.mount=\"inset\"; " + Opening + ".filling.lapped=true")]
    // Both delete the same.
    [InlineData("projects=[]", "projects=[]", "projects=[]")]
    public void Both_are_kept(string mine, string theirs, string together)
    {
        var merged = Assert.IsType<MergeResult.Merged>(Merge(mine, theirs)).Tree;
        Assert.Empty(DocumentChanges.Between(Edited(together), merged, typeof(Course)));
        Assert.Empty(DocumentChanges.Between(merged, Assert.IsType<MergeResult.Merged>(Merge(theirs, mine)).Tree, typeof(Course)));
        // Both take theirs back, in either order, and nothing is left behind.
        foreach (var (first, last) in new[] { (mine, theirs), (theirs, mine) })
        {
            if (mine == theirs)
                continue;
            var half = Apply(merged, DocumentChanges.Inverse(Changes(first)));
            Assert.Equal(Base.ToJsonString(), Apply(half, DocumentChanges.Inverse(Changes(last))).ToJsonString());
        }
    }

    [Theory]
    [InlineData("name=\"Spring\"", "name=\"Summer\"", ConflictReason.ChangedSince, "\"Autumn course\"", "\"Spring\"", "\"Summer\"")]
    [InlineData("designs[0].cutters-", "designs[0].cutters=\"deep-groove\"", ConflictReason.ChangedSince, "\"cope-and-stick\"", null, "\"deep-groove\"")]
    [InlineData("overrides={\"gap.pair\":\"1/8\"}", "overrides={\"gap.pair\":\"1/4\"}", ConflictReason.ChangedSince, null, "\"1/8\"", "\"1/4\"")]
    // A nested record of which something must be said is entered whole.
    [InlineData("designs[0].topArch={\"family\":\"eyebrow\",\"rise\":\"1\"}", "designs[0].topArch={\"family\":\"eyebrow\",\"rise\":\"2\"}", ConflictReason.ChangedSince,
        null, "{\"family\":\"eyebrow\",\"rise\":\"1\"}", "{\"family\":\"eyebrow\",\"rise\":\"2\"}")]
    // Editing what was deleted, or what it stood in.
    [InlineData(Opening + ".name=\"Lower\"", "projects=[]", ConflictReason.DeletedSince, null, "\"Lower\"", null)]
    [InlineData("designs[0].panel.grain=\"horizontal\"", "designs[0].panel-", ConflictReason.DeletedSince, null, "\"horizontal\"", null)]
    [InlineData(Openings + "+={\"id\":\"two\",\"filling\":{}}", "projects=[]", ConflictReason.DeletedSince, null, "{\"id\":\"two\",\"filling\":{}}", null)]
    // Deleting what was edited.
    [InlineData("designs=[]", "designs[0].name=\"Plain\"", ConflictReason.ChangedSince,
        "{\"id\":\"shaker\",\"name\":\"Shaker\",\"construction\":\"cope-and-stick\",\"species\":\"cherry\",\"stock\":\"four-quarter\",\"cutters\":\"cope-and-stick\",\"panel\":{\"kind\":\"flat-sheet\",\"stock\":\"ply\"}}", null,
        "{\"id\":\"shaker\",\"name\":\"Plain\",\"construction\":\"cope-and-stick\",\"species\":\"cherry\",\"stock\":\"four-quarter\",\"cutters\":\"cope-and-stick\",\"panel\":{\"kind\":\"flat-sheet\",\"stock\":\"ply\"}}")]
    // The second of two leaves is not the second of three.
    [InlineData(Opening + ".filling.leaves[1].width=\"9\"", Opening + ".filling.leaves+={\"hinge\":\"right\"}", ConflictReason.ListChangedSince,
        null, "\"9\"", "[{\"hinge\":\"left\"},{\"hinge\":\"right\"},{\"hinge\":\"right\"}]")]
    // One id for two records, in one list and in two.
    [InlineData("designs+={\"id\":\"two\",\"name\":\"a\"}", "designs+={\"id\":\"two\",\"name\":\"b\"}", ConflictReason.IdTaken, null, "{\"id\":\"two\",\"name\":\"a\"}", "{\"id\":\"two\",\"name\":\"b\"}")]
    [InlineData("projects[0].designs=[{\"id\":\"two\",\"name\":\"a\"}]", "designs+={\"id\":\"two\",\"name\":\"b\"}", ConflictReason.IdTaken, null, "{\"id\":\"two\",\"name\":\"a\"}", "{\"id\":\"two\",\"name\":\"b\"}")]
    public void One_stands_against_the_other(string mine, string theirs, ConflictReason reason, string? was, string? my, string? their)
    {
        var head = Edited(theirs);
        var text = head.ToJsonString();
        var other = Changes("projects[0].name=\"Bookcase\"");
        if (theirs != "projects=[]")
            other = [.. other, .. Changes(mine)];
        else
            other = Changes(mine);
        var conflicts = Assert.IsType<MergeResult.Conflicts>(DocumentChanges.Apply(head, other, typeof(Course)));
        var conflict = Assert.Single(conflicts.Found);
        Assert.Equal(reason, conflict.Reason);
        Assert.Equal(was, conflict.Base?.ToJsonString());
        Assert.Equal(my, conflict.Mine?.ToJsonString());
        Assert.Equal(their, conflict.Theirs?.ToJsonString());
        // Nothing is half applied, and what would merge does.
        Assert.Equal(text, head.ToJsonString());
        var rest = Apply(head, conflicts.Others);
        if (theirs != "projects=[]")
            Assert.Equal("Bookcase", rest["projects"]![0]!["name"]!.GetValue<string>());
    }

    [Fact]
    public void What_follows_a_record_that_is_gone_goes_to_the_end()
    {
        var three = Edited(Openings + "+={\"id\":\"two\",\"filling\":{}}; " + Openings + "+={\"id\":\"three\",\"filling\":{}}");
        var four = Edited(Openings + "+={\"id\":\"two\",\"filling\":{}}; " + Openings + "+={\"id\":\"four\",\"filling\":{}}; " + Openings + "+={\"id\":\"three\",\"filling\":{}}");
        var withoutTwo = Edited(Openings + "+={\"id\":\"three\",\"filling\":{}}");
        var merged = Apply(withoutTwo, DocumentChanges.Between(three, four, typeof(Course)));
        Assert.Equal(["opening-1", "three", "four"], merged["projects"]![0]!["pieces"]![0]!["faces"]![0]!["openings"]!.AsArray().Select(one => one!["id"]!.GetValue<string>()));
    }

    [Fact]
    public void Few_records_are_moved()
    {
        var before = Edited(string.Join("; ", Enumerable.Range(0, 9).Select(n => $"designs+={{\"id\":\"d{n}\",\"name\":\"n\"}}")));
        var after = (JsonObject)before.DeepClone();
        var list = after["designs"]!.AsArray();
        var last = list[^1];
        list.RemoveAt(list.Count - 1);
        list.Insert(0, last);
        Assert.Equal(new RecordMoved("autumn", "designs", "d8", "d7", null), Assert.Single(DocumentChanges.Between(before, after, typeof(Course))));
    }

    [Fact]
    public void An_opening_can_go_from_a_list_into_the_layout_and_back()
    {
        var layout = """{ "width": "30", "height": "30", "leftStile": { "width": "2" }, "rightStile": { "width": "2" }, "topRail": "2", "bottomRail": "2", "space": {} }""";
        var before = Edited($"projects[0].pieces[0].faces[0].layout={layout}");
        var after = (JsonObject)before.DeepClone();
        var face = after["projects"]![0]!["pieces"]![0]!["faces"]![0]!;
        var opening = face["openings"]![0]!;
        face.AsObject().Remove("openings");
        face["layout"]!["space"]!["opening"] = opening.DeepClone();
        var changes = DocumentChanges.Between(before, after, typeof(Course));
        Assert.Equal(after.ToJsonString(), Apply(before, changes).ToJsonString());
        Assert.Empty(DocumentChanges.Between(before, Apply(after, DocumentChanges.Inverse(changes)), typeof(Course)));
    }

    [Fact]
    public void Trees_of_different_documents_are_not_compared() =>
        Assert.Throws<ArgumentException>(() => DocumentChanges.Between(Base, Edited("id=\"other\""), typeof(Course)));

    [Theory]
    [InlineData("""[{ "paint": "low" }]""")]
    [InlineData("""[{ "set": "low" }]""")]
    [InlineData("""[{ "set": "low", "at": "a//b" }]""")]
    [InlineData("""[{ "set": "low", "at": "a/2:2/b" }]""")]
    [InlineData("""[{ "set": "low", "at": "a", "wraps": -1 }]""")]
    [InlineData("""[{ "add": "low", "list": "openings" }]""")]
    [InlineData("""[{ "remove": "low", "list": "openings", "record": { "name": "no id" } }]""")]
    [InlineData("""[{ "move": "low", "list": "openings" }]""")]
    [InlineData("[7]")]
    [InlineData("[{}]")]
    public void Changes_that_were_damaged_are_refused(string json) =>
        Assert.Contains("Item 1", Assert.Throws<FormatException>(() => ChangeJson.Read(JsonNode.Parse(json)!.AsArray())).Message, StringComparison.Ordinal);

    [Fact]
    public void Kept_changes_are_small() => Assert.Equal(
        """[{"set":"opening-1","at":"filling/leaves/1:2/width","is":"9"}]""",
        ChangeJson.Write(Changes(Opening + ".filling.leaves[1].width=\"9\"")).ToJsonString());

    private static MergeResult Merge(string mine, string theirs) => DocumentChanges.Apply(Edited(theirs), Changes(mine), typeof(Course));

    private static JsonObject Apply(JsonObject head, IReadOnlyList<Change> changes) =>
        Assert.IsType<MergeResult.Merged>(DocumentChanges.Apply(head, changes, typeof(Course))).Tree;

    private static IReadOnlyList<Change> Changes(string edits) => DocumentChanges.Between(Base, Edited(edits), typeof(Course));

    /// <summary>A copy of the shortest course with edits: <c>place=value</c>, <c>list+=item</c> or <c>place-</c>, separated by semicolons.</summary>
    private static JsonObject Edited(string edits)
    {
        var copy = (JsonObject)Base.DeepClone();
        foreach (var edit in edits.Split("; "))
        {
            var isAdded = edit.Contains("+=", StringComparison.Ordinal);
            var place = edit.Split(isAdded ? "+=" : "=", 2)[0];
            JsonNode at = copy;
            var steps = place.TrimEnd('-').Replace("[", ".", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal).Split('.');
            foreach (var step in steps[..^1])
                at = int.TryParse(step, out var index) ? at[index]! : at[step]!;
            if (edit.EndsWith('-'))
                at.AsObject().Remove(steps[^1]);
            else if (isAdded)
                at[steps[^1]]!.AsArray().Add(JsonNode.Parse(edit.Split("+=", 2)[1]));
            else
                at[steps[^1]] = JsonNode.Parse(edit.Split('=', 2)[1]);
        }

        return copy;
    }
}
