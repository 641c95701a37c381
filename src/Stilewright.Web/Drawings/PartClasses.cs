using Stilewright.Doors;

namespace Stilewright.Web.Drawings;

/// <summary>What the things of a drawing are made of, by their paths, for the page's colours.</summary>
public static class PartClasses
{
    /// <returns>The class of a path: <c>leaf</c>, <c>panel</c> or <c>glass</c>; null for frames and openings.</returns>
    public static Func<string, string?> Of(ProjectBreakdown project)
    {
        Dictionary<string, string> classes = new(StringComparer.Ordinal);
        foreach (var leaf in project.Fronts.SelectMany(front => front.Leaves))
        {
            classes[leaf.Path] = "leaf";
            foreach (var part in leaf.Parts)
            {
                classes[part.Path] = part.Kind switch
                {
                    PartKind.Panel => "panel",
                    PartKind.Glass => "glass",
                    _ => "member",
                };
            }
        }

        return path => classes.GetValueOrDefault(path);
    }
}
