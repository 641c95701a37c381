using System.Text.Json;
using System.Text.Json.Nodes;
using Stilewright.Documents.Changes;
using Stilewright.Documents.Shapes;
using Stilewright.Projects;

namespace Stilewright.Documents;

/// <summary>Courses as JSON trees, whole or kept as one document for the course and one for each project.</summary>
/// <remarks>All trees are of the newest version: older ones are upgraded first, whole.</remarks>
public static class CourseTree
{
    /// <summary>The list of a course that holds its projects.</summary>
    public const string ProjectsKey = "projects";

    private const string BenchKey = "bench";

    /// <summary>The course with its projects in the order of their benches; projects of one bench, and those whose bench cannot be read, stay as they come.</summary>
    /// <param name="courseWithoutProjects">Projects that stand in it are not kept. It is not altered, nor are the projects.</param>
    public static JsonObject Assemble(JsonObject courseWithoutProjects, IEnumerable<JsonObject> projects)
    {
        ArgumentNullException.ThrowIfNull(courseWithoutProjects);
        ArgumentNullException.ThrowIfNull(projects);
        var course = WithoutProjects(courseWithoutProjects);
        JsonArray list = [.. projects.OrderBy(BenchOf).Select(project => project.DeepClone())];
        if (list.Count > 0)
            FieldOrder.Put(course, Shape.Of(typeof(Course)), ProjectsKey, list);
        return course;
    }

    /// <summary>The course without its projects, and each project as a tree of its own, in their order.</summary>
    /// <param name="course">It is not altered.</param>
    /// <exception cref="ArgumentException">Something other than projects stands in its list: it is no course that was read.</exception>
    public static (JsonObject Course, IReadOnlyList<JsonObject> Projects) Split(JsonObject course)
    {
        ArgumentNullException.ThrowIfNull(course);
        var projects = course[ProjectsKey] switch
        {
            null => [],
            JsonArray list when list.All(project => project is JsonObject) => list,
            _ => throw new ArgumentException("The tree is not that of a course.", nameof(course)),
        };
        return (WithoutProjects(course), [.. projects.Select(project => (JsonObject)project!.DeepClone())]);
    }

    /// <summary>A copy in which every record has an id of its own, so that it can stand beside the course it was made from.</summary>
    /// <remarks>What names a record of the course follows it; what names the house standard stays.</remarks>
    /// <param name="course">A whole course; it is not altered.</param>
    /// <param name="fresh">Where the ids come from; those of the course are not given out either.</param>
    public static JsonObject WithFreshIds(JsonObject course, FreshIds fresh)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(fresh);
        var root = (RecordShape)Shape.Of(typeof(Course));
        var ids = TreeIndex.Within(root, course).Select(one => one.Id).Distinct().ToList();
        foreach (var id in ids)
            fresh.Take(id);
        var made = ids.ToDictionary(id => id, _ => fresh.Next(), StringComparer.Ordinal);
        var own = root.RecordsWithin().Select(record => record.Type).ToHashSet();
        var copy = (JsonObject)course.DeepClone();
        Rename(root, copy);
        return copy;

        void Rename(Shape shape, JsonNode? node)
        {
            if (shape is ListShape list)
            {
                foreach (var item in node as JsonArray ?? [])
                    Rename(list.Item, item);
                return;
            }

            if (shape.RecordOf(node) is not { } record)
                return;
            foreach (var field in record.Fields)
            {
                var content = node![field.Key];
                if (JsonParts.TextOf(content) is not { } text)
                    Rename(field.Shape, content);
                else if (field.IsId || (field.RefersTo is { } type && own.Contains(type)))
                    node[field.Key] = made.GetValueOrDefault(text, text);
                else if (field.BeginsWithId && text.Split('/', 2) is [var id, .. var rest] && made.TryGetValue(id, out var other))
                    node[field.Key] = string.Join('/', [other, .. rest]);
            }
        }
    }

    /// <summary>The id of every record in a course.</summary>
    public static IReadOnlyList<string> IdsOf(JsonObject course) =>
        [.. TreeIndex.Within((RecordShape)Shape.Of(typeof(Course)), course).Select(one => one.Id).Distinct()];

    private static JsonObject WithoutProjects(JsonObject course) =>
        new(course.Where(field => field.Key != ProjectsKey).Select(field => KeyValuePair.Create(field.Key, field.Value?.DeepClone())));

    private static int BenchOf(JsonObject project) =>
        project[BenchKey] is JsonValue bench && bench.GetValueKind() == JsonValueKind.Number && bench.TryGetValue<int>(out var number) ? number : int.MaxValue;
}
