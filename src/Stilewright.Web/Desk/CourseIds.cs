using System.Text.Json.Nodes;
using Stilewright.Documents;
using Stilewright.Projects;

namespace Stilewright.Web.Desk;

/// <summary>New ids for what is added to a course.</summary>
public static class CourseIds
{
    /// <summary>A source of ids that nothing in the course has.</summary>
    public static FreshIds FreshFor(Course course) =>
        new(CourseTree.IdsOf((JsonObject)JsonNode.Parse(DocumentWriter.Write(course))!), Random.Shared);
}
