using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CsCheck;
using Stilewright.Doors;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

public class CourseTreeTests
{
    private static readonly Gen<Course> Courses = Gen.Select(Gen.Int, Gen.Int[1, 4], (seed, size) => RandomCourse.Of(seed, size));

    [Fact]
    public void A_course_is_the_same_after_it_was_split_and_put_together() => Courses.Sample(course =>
    {
        var whole = Tree(course);
        var (alone, projects) = CourseTree.Split(whole);
        Assert.False(alone.ContainsKey("projects"));
        Assert.Equal(course.Projects.Count, projects.Count);
        Assert.All(projects, project => Assert.Null(project.Parent));
        Assert.Equal(whole.ToJsonString(), CourseTree.Assemble(alone, projects.Reverse()).ToJsonString());
        Assert.Equal(DocumentWriter.Write(course), DocumentWriter.Write(Read(CourseTree.Assemble(alone, projects))));
    }, iter: 100);

    [Fact]
    public void Errors_of_a_tree_tell_no_lines()
    {
        var tree = JsonNode.Parse(Files.Course)!.AsObject();
        tree["unit"] = "ell";
        var error = Assert.Single(Files.Errors(DocumentReader.ReadCourse(tree)));
        Assert.Equal("$.unit", error.Path);
        Assert.Null(error.Line);
    }

    [Fact]
    public void What_is_no_course_is_not_split() =>
        Assert.Throws<ArgumentException>(() => CourseTree.Split(new JsonObject { ["projects"] = "none" }));

    [Fact]
    public void A_copy_with_fresh_ids_is_built_alike_and_shares_no_id() => Gen.Select(Courses, Gen.Int).Sample((course, seed) =>
    {
        var whole = Tree(course);
        var copied = CourseTree.WithFreshIds(whole, new FreshIds([], new(seed)));
        var copy = Read(copied);
        Assert.Empty(Ids(whole).Intersect(Ids(copied)));
        Assert.Equal(Ids(whole).Count, Ids(copied).Count);
        Assert.Equal(Tree(course).ToJsonString(), whole.ToJsonString());

        var standard = ShippedStandards.For(course.Unit);
        Assert.Empty(References.Check(copy, standard));
        var (before, after) = (Breakdown.Of(course, standard), Breakdown.Of(copy, standard));
        Assert.Equal(before.Parts.Select(Told), after.Parts.Select(Told));
        Assert.Equal(before.Findings.Select(finding => finding.Rule.Code), after.Findings.Select(finding => finding.Rule.Code));
        // The same numbers give the same copy.
        Assert.Equal(copied.ToJsonString(), CourseTree.WithFreshIds(whole, new FreshIds([], new(seed))).ToJsonString());
    }, iter: 60);

    [Fact]
    public void References_and_paths_follow_their_records()
    {
        var text = Files.Course.Replace("\"readings\"", "\"beside\": { \"left\": { \"kind\": \"opening\", \"opening\": \"opening-2\", \"member\": \"2\" } }, \"readings\"", StringComparison.Ordinal)
            .Replace("{ \"id\": \"opening-1\"", "{ \"id\": \"opening-2\", \"readings\": { \"widthTop\": \"9\", \"heightLeft\": \"9\" }, \"filling\": { \"kind\": \"drawers\", \"mount\": \"overlay\", \"design\": \"shaker\" } }, { \"id\": \"opening-1\"", StringComparison.Ordinal)
            .Replace("\"name\": \"Hall cupboard\",", "\"name\": \"Hall cupboard\", \"accepted\": [{ \"rule\": \"machine.short\", \"place\": \"opening-1/leaf.left/rail.top\", \"reason\": \"sled\" }, { \"rule\": \"machine.short\", \"place\": \"opening-10/leaf\", \"reason\": \"sled\" }],", StringComparison.Ordinal);
        var copy = Read(CourseTree.WithFreshIds(JsonNode.Parse(text)!.AsObject(), new FreshIds([], new(7))));
        var openings = copy.Projects[0].Pieces[0].Faces[0].Openings;
        Assert.Equal(openings[0].Id, Assert.IsType<NextOpening>(openings[1].Beside!.Left).Opening);
        Assert.Equal(copy.Designs[0].Id, openings[0].Filling is DrawerFilling drawers ? drawers.Design : null);
        Assert.Equal([openings[1].Id + "/leaf.left/rail.top", "opening-10/leaf"], copy.Projects[0].Accepted.Select(accepted => accepted.Place));
        // What belongs to the house standard keeps its name.
        Assert.Equal(("four-quarter", "cope-and-stick"), (copy.Designs[0].Stock, copy.Designs[0].Cutters));
    }

    [Fact]
    public void Fresh_ids_are_short_and_never_taken() => Gen.Int.Sample(seed =>
    {
        var first = new FreshIds([], new(seed));
        var ids = Enumerable.Range(0, 50).Select(_ => first.Next()).ToList();
        Assert.All(ids, id => Assert.Matches("^[a-z][a-z2-9]{5}$", id));
        Assert.All(ids, id => Assert.DoesNotMatch("[aeioulsz015]", id));
        var second = new FreshIds(ids.Take(20), new(seed));
        second.Take(ids[20]);
        Assert.Equal(ids.Skip(21), Enumerable.Range(0, 29).Select(_ => second.Next()));
    }, iter: 50);

    private static string Told(Part part) => $"{part.Label} {part.Name} {part.Finished.Width.Length} {part.Finished.Length.Length} {part.GlueUp.Width.Length} {part.GlueUp.Length.Length}";

    private static List<string> Ids(JsonObject tree) =>
        [.. Regex.Matches(tree.ToJsonString(), "\"id\":\"([^\"]+)\"").Select(match => match.Groups[1].Value)];

    private static JsonObject Tree(Course course) => JsonNode.Parse(DocumentWriter.Write(course))!.AsObject();

    private static Course Read(JsonObject tree) => DocumentReader.ReadCourse(tree) switch
    {
        DocumentResult<Course>.Read read => read.Document,
        DocumentResult<Course>.Refused refused => throw new InvalidOperationException(string.Join('\n', refused.Errors)),
        _ => throw new InvalidOperationException(),
    };
}
