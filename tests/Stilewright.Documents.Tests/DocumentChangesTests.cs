using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using Stilewright.Documents.Changes;
using Stilewright.Projects;
using Stilewright.Shop;
using Stilewright.Testing;

namespace Stilewright.Documents.Tests;

public class DocumentChangesTests
{
    private static readonly Gen<JsonObject> Courses = Gen.Select(Gen.Int, Gen.Int[1, 4], (seed, size) => Tree(RandomCourse.Of(seed, size)));

    /// <summary>Ids of random courses are counted, so that two of them share many ids of records that are otherwise unlike.</summary>
    private static readonly Gen<(JsonObject Before, JsonObject After)> Pairs = Gen.Select(Gen.Int, Gen.Int, Gen.Int[1, 4], (one, other, size) =>
        (Tree(RandomCourse.Of(one, size) with { Id = "course" }), Tree(RandomCourse.Of(other, size) with { Id = "course" })));

    private static readonly Gen<(JsonObject Before, JsonObject After)> Edits = Gen.Select(Courses, Gen.Int, Gen.Int[1, 12], (course, seed, count) =>
        (course, new RandomEdits(new(seed)).Some(course, count)));

    [Fact]
    public void Changes_between_two_courses_lead_from_one_to_the_other() => Pairs.Sample(pair =>
    {
        LeadThereAndBack(pair.Before, pair.After, typeof(Course));
        var merged = Merged(pair.Before, DocumentChanges.Between(pair.Before, pair.After, typeof(Course)), typeof(Course));
        Assert.Equal(Written(pair.After), Written(merged));
    }, iter: 300);

    [Fact]
    public void Changes_between_a_course_and_its_edited_copy_lead_from_one_to_the_other() =>
        Edits.Sample(pair => LeadThereAndBack(pair.Before, pair.After, typeof(Course)), iter: 600);

    [Fact]
    public void Changes_of_standards_and_projects_lead_from_one_to_the_other() => Gen.Select(Courses, Gen.Int, Gen.Int[1, 6]).Sample((course, seed, count) =>
    {
        foreach (var project in CourseTree.Split(course).Projects)
            LeadThereAndBack(project, new RandomEdits(new(seed)).Some(project, count), typeof(Project));
        var standard = Tree(DocumentWriter.Write(seed % 2 == 0 ? ShippedStandards.Inch : ShippedStandards.Millimetre));
        LeadThereAndBack(standard, new RandomEdits(new(seed)).Some(standard, count), typeof(HouseStandard));
    }, iter: 100);

    [Fact]
    public void A_course_does_not_differ_from_itself() => Courses.Sample(course =>
        Assert.Empty(DocumentChanges.Between(course, (JsonObject)course.DeepClone(), typeof(Course))), iter: 100);

    [Fact]
    public void Edits_of_different_places_always_merge_and_their_order_does_not_matter() => Gen.Select(Courses, Gen.Int).Sample((course, seed) =>
    {
        var (mine, theirs) = new RandomEdits(new(seed)).Apart(course);
        var (my, their) = (DocumentChanges.Between(course, mine, typeof(Course)), DocumentChanges.Between(course, theirs, typeof(Course)));
        Assert.Equal(Merged(theirs, my, typeof(Course)).ToJsonString(), Merged(mine, their, typeof(Course)).ToJsonString());
        // Taking mine back leaves theirs alone.
        Assert.Equal(theirs.ToJsonString(), Merged(Merged(mine, their, typeof(Course)), DocumentChanges.Inverse(my), typeof(Course)).ToJsonString());
    }, iter: 1000);

    [Fact]
    public void Changes_are_the_same_after_they_were_kept() => Pairs.Sample(pair =>
    {
        var changes = DocumentChanges.Between(pair.Before, pair.After, typeof(Course));
        var text = ChangeJson.Write(changes).ToJsonString();
        var again = ChangeJson.Read(JsonNode.Parse(text)!.AsArray());
        Assert.Equal(text, ChangeJson.Write(again).ToJsonString());
        Assert.Equal(pair.After.ToJsonString(), Merged(pair.Before, again, typeof(Course)).ToJsonString());
        Assert.Equal(pair.Before.ToJsonString(), Merged(pair.After, DocumentChanges.Inverse(again), typeof(Course)).ToJsonString());
    }, iter: 100);

    [Fact]
    public void The_head_and_the_changes_are_left_as_they_are() => Edits.Sample(pair =>
    {
        var changes = DocumentChanges.Between(pair.Before, pair.After, typeof(Course));
        var (head, kept) = (pair.Before.ToJsonString(), ChangeJson.Write(changes).ToJsonString());
        var merged = Merged(pair.Before, changes, typeof(Course));
        new RandomEdits(new(1)).Some(merged, 3);
        Assert.Equal(head, pair.Before.ToJsonString());
        Assert.Equal(kept, ChangeJson.Write(changes).ToJsonString());
    }, iter: 50);

    private static void LeadThereAndBack(JsonObject before, JsonObject after, Type root)
    {
        var changes = DocumentChanges.Between(before, after, root);
        Assert.Equal(after.ToJsonString(), Merged(before, changes, root).ToJsonString());
        Assert.Equal(before.ToJsonString(), Merged(after, DocumentChanges.Inverse(changes), root).ToJsonString());
        // Doing it again changes nothing: what is there already is no conflict.
        Assert.Equal(changes.Count == 0, before.ToJsonString() == after.ToJsonString());
    }

    private static JsonObject Merged(JsonObject head, IReadOnlyList<Change> changes, Type root) => DocumentChanges.Apply(head, changes, root) switch
    {
        MergeResult.Merged merged => merged.Tree,
        MergeResult.Conflicts conflicts => throw new InvalidOperationException(string.Join('\n', conflicts.Found.Select(conflict =>
            $"{conflict.Reason}: {ChangeJson.Write([conflict.Change]).ToJsonString()} against {conflict.Theirs?.ToJsonString()}"))),
        _ => throw new InvalidOperationException(),
    };

    private static JsonObject Tree(Course course) => Tree(DocumentWriter.Write(course));

    private static JsonObject Tree(byte[] file) => JsonNode.Parse(file)!.AsObject();

    private static string Written(JsonObject tree) =>
        Encoding.UTF8.GetString(DocumentWriter.Write(Assert.IsType<DocumentResult<Course>.Read>(DocumentReader.ReadCourse(tree)).Document));
}
