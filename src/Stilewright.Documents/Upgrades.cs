using System.Text.Json.Nodes;

namespace Stilewright.Documents;

/// <summary>Brings the tree of an older file up to the version that is read. The file itself is never rewritten.</summary>
public static class Upgrades
{
    /// <summary>Runs the steps from <paramref name="version"/> up to <see cref="DocumentFormat.Version"/> of <paramref name="format"/>.</summary>
    /// <param name="document">The tree as read; it is not changed.</param>
    /// <returns>The upgraded tree, or why it cannot be upgraded.</returns>
    public static DocumentResult<JsonObject> Run(DocumentFormat format, int version, JsonObject document)
    {
        ArgumentNullException.ThrowIfNull(format);
        ArgumentNullException.ThrowIfNull(document);

        var steps = format.Upgrades.ToDictionary(step => step.From);
        var gaps = Enumerable.Range(version, Math.Max(0, format.Version - version)).Where(from => !steps.ContainsKey(from)).ToList();
        if (gaps.Count > 0)
        {
            return new DocumentResult<JsonObject>.Refused([.. gaps.Select(from => new DocumentError(
                "$.version",
                $"this file is of version {version}, and this program has no step from version {from} to {from + 1}",
                "open and save it with a program that reads it"))]);
        }

        var tree = (JsonObject)document.DeepClone();
        for (var from = version; from < format.Version; from++)
        {
            try
            {
                tree = steps[from].Apply(tree);
            }
            catch (Exception exception) when (exception is InvalidOperationException or FormatException or ArgumentException or KeyNotFoundException)
            {
                // What the accessors of a JSON tree throw when a value is not of the type that the step asks for.
                return new DocumentResult<JsonObject>.Refused([new DocumentError(
                    "$", $"this file of version {version} does not have the form of version {from}", "restore it from a copy that was not edited by hand")]);
            }

            tree["version"] = from + 1;
        }

        return new DocumentResult<JsonObject>.Read(tree);
    }
}
