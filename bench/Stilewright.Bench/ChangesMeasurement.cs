using System.Globalization;
using System.Text.Json.Nodes;
using Stilewright.Documents;
using Stilewright.Documents.Changes;
using Stilewright.Projects;

namespace Stilewright.Bench;

/// <summary>Two people's edits of a large course: differences, a merge and the sentences, from trees at hand and from texts.</summary>
internal static class ChangesMeasurement
{
    private const int Benches = 60;

    public static void Run()
    {
        var file = DocumentWriter.Write(SampleCourses.Of(Benches, 250));
        var (before, mine, theirs) = (Tree(file), Tree(file), Tree(file));
        for (var bench = 0; bench < Benches; bench += 7)
            mine["projects"]![bench]!["name"] = "Bookcase";
        theirs["name"] = "Spring course";
        var texts = (Before: before.ToJsonString(), Mine: mine.ToJsonString(), Theirs: theirs.ToJsonString());
        var changes = DocumentChanges.Between(before, mine, typeof(Course));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"changes: {Benches} benches, 250 leaves, {file.Length:N0} bytes, {changes.Count} changes, warm"));
        Tell("differences of two trees at hand", () => DocumentChanges.Between(before, mine, typeof(Course)));
        Tell("merge onto a tree at hand", () => Merge(theirs, changes));
        Tell("sentences", () => _ = changes.Select(new ChangeWords(typeof(Course), mine, before).Of).ToList());
        Tell("three texts read, differences, merge", () =>
            Merge(JsonNode.Parse(texts.Theirs)!.AsObject(), DocumentChanges.Between(JsonNode.Parse(texts.Before)!.AsObject(), JsonNode.Parse(texts.Mine)!.AsObject(), typeof(Course))), goalMilliseconds: 20);
    }

    private static void Tell(string what, Action work, double goalMilliseconds = 10)
    {
        var timing = Timing.Of(200, 51, work);
        Console.WriteLine($"  {what}: {timing.Against(goalMilliseconds)}; {timing.Processor}");
    }

    private static void Merge(JsonObject head, IReadOnlyList<Change> changes)
    {
        if (DocumentChanges.Apply(head, changes, typeof(Course)) is not MergeResult.Merged)
            throw new InvalidOperationException("The measured changes do not merge.");
    }

    private static JsonObject Tree(byte[] file) => JsonNode.Parse(file)!.AsObject();
}
